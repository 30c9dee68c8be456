import type { Book, Day, Id } from '#boat-book';
import type { Plan, PlannedStep, Problem, ProblemDay } from '#workplan';
import { storeOfLine } from './plan-stores.ts';
import { amountInWords } from './store-amounts.ts';
import { keptAboard, keptInWords } from './stowage-path.ts';
import { takesByTin } from './takes-by-tin.ts';
import { dayNear } from './to-get-in-words.ts';
import { listInWords, localMinute } from './when-in-words.ts';

/** A thing to carry down for a job day. */
export interface Carried {
  /** one for each thing, whatever day: to keep a tick by */
  readonly key: string;
  readonly kind: 'tool' | 'store' | 'mix';
  readonly id: Id;
  readonly name: string;
  /** how many are in use at once at the most; 1 for stores and mixes */
  readonly count: number;
  /** where it is kept; null: not written down, or for a mix, which is made on the spot */
  readonly keptAt: string | null;
  /** it is kept on board, so it is there already; null: not known */
  readonly aboard: boolean | null;
  /** how much of it the day's steps take: `22 ml`; null: not said */
  readonly takes: string | null;
  /** when it is first used */
  readonly first: number;
  /** titles of the steps that use it, in the day's order */
  readonly uses: readonly string[];
  /** a store that is not on hand: the day it is expected, or null where there is none. null: it is there to carry */
  readonly absent: { readonly expected: Day | null } | null;
}

/** Things fetched from one place in one go. */
export interface CarryStop {
  /** null: no place is written down for these */
  readonly keptAt: string | null;
  readonly things: readonly Carried[];
}

/**
 * Everything the rest of a job day touches, tools, stores and mixes, each once, in order of first use.
 *
 * Things kept at the same place are put together only where that does not change the order of first use: neighbours
 * in the list, and things first used in the same minute.
 */
export function carryDown(problem: Problem, plan: Plan, book: Book, day: ProblemDay): CarryStop[] {
  const steps = new Map(problem.steps.map((step) => [step.id, step]));
  const things = new Map<string, Carried>();
  const put = (thing: Omit<Carried, 'uses' | 'key'>, use: string) => {
    const key = `${thing.kind} ${thing.id}`;
    const known = things.get(key);
    if (known === undefined) things.set(key, { ...thing, key, uses: [use] });
    else
      things.set(key, {
        ...known,
        count: Math.max(known.count, thing.count),
        uses: known.uses.includes(use) ? known.uses : [...known.uses, use],
      });
  };
  const placeOf = (kept: { readonly keptAt: string; readonly stowage?: Id | null }) => ({
    keptAt: keptInWords(book.stowages, kept),
    aboard: keptAboard(book.stowages, kept),
  });
  const planned = stepsOfDay(plan, problem, day);
  const ofDay = new Set(planned.map(({ step }) => step));
  for (const { step: stepId, start: first } of planned) {
    const step = steps.get(stepId)!;
    for (const { tool: id, count } of step.tools) {
      const tool = book.tools[id];
      if (tool)
        put(
          {
            kind: 'tool',
            id,
            name: tool.name,
            count,
            ...placeOf(tool),
            takes: null,
            first,
            absent: null,
          },
          step.title,
        );
    }
    for (const line of step.stores) {
      const id = storeOfLine(line, book);
      const store = book.stores[id];
      if (!store) continue;
      const absent = store.onHand && line === id ? null : { expected: store.expected };
      const takes = takesInWords(book, id, ofDay);
      put({ kind: 'store', id, name: store.name, count: 1, ...placeOf(store), takes, first, absent }, step.title);
    }
    const mix = step.mix === null ? undefined : book.mixes[step.mix];
    if (mix && step.mix !== null)
      put(
        {
          kind: 'mix',
          id: step.mix,
          name: mix.name,
          count: 1,
          keptAt: null,
          aboard: null,
          takes: null,
          first,
          absent: null,
        },
        step.title,
      );
  }
  return inStops([...things.values()].sort((a, b) => a.first - b.first));
}

/** Steps of the day still to do or under way, in order of their start. */
function stepsOfDay(plan: Plan, problem: Problem, day: ProblemDay): PlannedStep[] {
  const done = new Set(problem.steps.filter(({ progress }) => progress.kind === 'done').map(({ id }) => id));
  return plan.steps
    .filter(
      ({ step, day: its, start, finish }) =>
        !done.has(step) && (its === day.id || (its === null && start < day.to && finish > day.from)),
    )
    .sort((a, b) => a.start - b.start || (a.step < b.step ? -1 : 1));
}

/** Puts together what is fetched from one place; only things first used in the same minute change their order. */
function inStops(things: readonly Carried[]): CarryStop[] {
  const stops: { keptAt: string | null; things: Carried[] }[] = [];
  for (let from = 0; from < things.length; ) {
    let to = from;
    while (to < things.length && things[to]!.first === things[from]!.first) to++;
    const together = things.slice(from, to);
    const last = stops.at(-1);
    const places = [...new Set([last?.keptAt, ...together.map(({ keptAt }) => keptAt)])];
    for (const place of places) {
      const here = together.filter(({ keptAt }) => keptAt === place);
      if (here.length === 0) continue;
      const open = stops.at(-1);
      if (open !== undefined && open.keptAt === place) open.things.push(...here);
      else stops.push({ keptAt: place ?? null, things: here });
    }
    from = to;
  }
  return stops;
}

/** What the steps of the day take of a store together; null where one of them does not say, or their units differ. */
function takesInWords(book: Book, store: Id, steps: ReadonlySet<Id>): string | null {
  const takes = [...steps].flatMap((id) => {
    const step = book.steps[id];
    return step?.stores.includes(store) ? [takesByTin(book, step).find((take) => take.store === store) ?? null] : [];
  });
  const unit = takes[0]?.unit;
  if (unit === undefined || takes.some((take) => take?.unit !== unit)) return null;
  return amountInWords(
    takes.reduce((sum, take) => sum + (take?.amount ?? 0), 0),
    unit,
  );
}

/** A thing in words: `2 × clamp` and `10:20, for 'Clamp the batten'`, or that it is not there to carry. */
export function carriedInWords(
  thing: Carried,
  problem: Problem,
  today: Day,
): { readonly name: string; readonly about: string } {
  const uses = listInWords(thing.uses.map((title) => `'${title}'`));
  const clock = localMinute(thing.first, problem).clock;
  const when = thing.kind === 'mix' ? `to be mixed ${clock}, for ${uses}` : `${clock}, for ${uses}`;
  const absent =
    thing.absent === null
      ? ''
      : thing.absent.expected === null
        ? '; not there yet, to get'
        : `; not there yet, expected ${dayNear(thing.absent.expected, today)}`;
  const name = thing.count > 1 ? `${thing.count} × ${thing.name}` : thing.name;
  return { name: thing.takes === null ? name : `${name}, ${thing.takes}`, about: `${when}${absent}` };
}
