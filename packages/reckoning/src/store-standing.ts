/** How each thing in the stores stands to the open work: what is there, which jobs it is reserved for, what is free. */
import type { Book, Day, Id, StorePack, StoreRecord, StoreUnit } from '#boat-book';
import { jobWeight } from './job-weight.ts';
import { type KeepsUntil, keepsUntil } from './keeps-until.ts';
import { converted } from './store-amounts.ts';
import { takesByTin } from './takes-by-tin.ts';

export interface JobNeed {
  readonly job: Id;
  readonly title: string;
  /** what its open steps take, in `unit`, waste counted in; null: not said */
  readonly amount: number | null;
  /** what is there does not reach for it, after the jobs that weigh more */
  readonly short: boolean;
}

export interface StoreStanding {
  /** what everything here is told in; null: no amount is known in any unit */
  readonly unit: StoreUnit | null;
  /** on hand and fit to be used, in `unit`; null: not counted */
  readonly there: number | null;
  /** the jobs whose open steps name it, the heaviest first */
  readonly needs: readonly JobNeed[];
  /** what the jobs take together, as far as it is known; null: no job says how much */
  readonly reserved: number | null;
  /** what no job has reserved; null: not counted, or a job does not say how much */
  readonly free: number | null;
  /** what is still to be got, in `unit`; null: nothing is, or it is not known how much */
  readonly toGet: number | null;
  /** something of it is to be got for open work */
  readonly short: boolean;
  /** its dates; null: nothing is known of how long it keeps */
  readonly keeps: KeepsUntil | null;
  /** what was taken for granted or could not be held together, in whole sentences */
  readonly said: readonly string[];
}

/**
 * How every store stands. Jobs get what is there in the order of their weight, a job all it takes or none of it: half
 * the bolts hold no plate. A thing past its date counts as not there.
 *
 * @param today  for what is past its date, and for the weights
 */
export function storeStandings(book: Book, today: Day): ReadonlyMap<Id, StoreStanding> {
  const wanted = new Map<Id, Map<Id, Wanted[]>>();
  for (const step of Object.values(book.steps)) {
    if (step.progress.kind === 'done' || book.jobs[step.job]?.state !== 'open') continue;
    for (const store of new Set(step.stores)) {
      if (book.stores[store] === undefined) continue;
      const jobs = wanted.get(store) ?? new Map<Id, Wanted[]>();
      const take = takesByTin(book, step).find((each) => each.store === store);
      // what a step under way takes is in hand already
      if (step.progress.kind === 'under way' && book.stores[store].onHand && take === undefined) continue;
      jobs.set(step.job, [...(jobs.get(step.job) ?? []), take ?? null]);
      wanted.set(store, jobs);
    }
  }
  return new Map(
    Object.entries(book.stores).map(([id, store]) => [id, standing(book, store, wanted.get(id) ?? new Map(), today)]),
  );
}

type Wanted = { readonly amount: number; readonly unit: StoreUnit } | null;

function standing(
  book: Book,
  store: StoreRecord,
  wanted: ReadonlyMap<Id, readonly Wanted[]>,
  today: Day,
): StoreStanding {
  const unit = store.unit ?? [...wanted.values()].flat().find((each) => each !== null)?.unit ?? null;
  const said = new Set<string>();
  const weight = (job: Id) => jobWeight(book.jobs[job]!, book.weights, today);
  const jobs = [...wanted]
    .map(([job, takes]) => ({
      job,
      title: book.jobs[job]!.title,
      amount: together(takes, { unit, name: store.name, pack: store.pack ?? null, said }),
    }))
    .sort((a, b) => weight(b.job) - weight(a.job) || (a.title < b.title ? -1 : 1));
  const dated = keepsUntil(store, today);
  const fit = store.onHand && !(dated?.past ?? false);
  const there = fit ? (store.amount ?? null) : 0;
  let left = there;
  const needs = jobs.map((each): JobNeed => {
    if (left === null) return { ...each, short: false };
    // of an amount that nobody said, something must be there
    const short = each.amount === null ? left <= 0 : each.amount > left + 1e-9;
    if (!short && each.amount !== null) left = tidy(left - each.amount);
    return { ...each, short };
  });
  const known = jobs.flatMap(({ amount }) => (amount === null ? [] : [amount]));
  const reserved = known.length === 0 ? null : tidy(known.reduce((all, each) => all + each, 0));
  const allKnown = known.length === jobs.length;
  return {
    unit,
    there,
    needs,
    reserved,
    free: there === null || !allKnown ? null : Math.max(0, tidy(there - (reserved ?? 0))),
    toGet: there === null || reserved === null || reserved <= there + 1e-9 ? null : tidy(reserved - there),
    short: needs.some((each) => each.short),
    keeps: dated,
    said: [...said],
  };
}

/** What several steps take together, in one unit; null where one does not say, or what it says cannot be compared. */
function together(
  takes: readonly Wanted[],
  {
    unit,
    name,
    pack,
    said,
  }: {
    readonly unit: StoreUnit | null;
    readonly name: string;
    readonly pack: StorePack | null;
    readonly said: Set<string>;
  },
): number | null {
  let sum = 0;
  let known = true;
  for (const take of takes) {
    if (take === null || unit === null) {
      known = false;
      continue;
    }
    const same = converted(take.amount, { from: take.unit, to: unit, name, pack });
    if (same.kind === 'not comparable') {
      known = false;
      said.add(
        `${name} is counted in ${word(unit)} here and asked for in ${word(take.unit)}: see yourself that it is enough.`,
      );
    } else {
      sum += same.amount;
      if (same.assumed !== null) said.add(`Counted so: ${same.assumed}.`);
    }
  }
  return known ? tidy(sum) : null;
}

const word = (unit: StoreUnit) => (unit === '' ? 'pieces' : unit);

/** Without the dust of binary fractions. */
const tidy = (amount: number): number => Math.round(amount * 1e6) / 1e6;
