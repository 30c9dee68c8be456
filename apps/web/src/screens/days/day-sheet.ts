/** What stands on a printed job day: its rows in order of time, and what to carry down in order of use. Pure. */
import type { Book } from '#boat-book';
import { changeInWords, conditionsInWords, setUpInWords } from '#reckoning';
import type { Plan, PlannedChange, PlannedStep, Problem, ProblemDay } from '#workplan';
import { capital, minutesInWords } from '../../parts/in-words.ts';
import { clockAt, whenInWords } from './place-time.ts';
import { workOfDay } from './plan-drawing/day-column.ts';

export type SheetRow =
  | { readonly kind: 'quiet'; readonly key: string; readonly time: string; readonly name: string }
  | {
      readonly kind: 'step' | 'change';
      readonly key: string;
      readonly time: string;
      readonly name: string;
      /** minutes, job and zone */
      readonly about: string;
      /** set-ups and weather it needs, abrading, the batch it shares */
      readonly needs: string;
      readonly who: string;
      readonly danger: boolean;
      readonly cautions: readonly string[];
      readonly waits: readonly string[];
    };

export function sheetRows(problem: Problem, plan: Plan, book: Book, day: ProblemDay): SheetRow[] {
  const { steps, changes } = workOfDay(problem, plan, day);
  const span = (from: number, to: number) => `${clockAt(problem, from)}–${clockAt(problem, to)}`;
  const quiet = (name: string, from: number, to: number) =>
    to > from
      ? [{ at: from, row: { kind: 'quiet' as const, key: `${name}-${from}`, time: span(from, to), name } }]
      : [];
  const rows: { readonly at: number; readonly row: SheetRow }[] = [
    ...quiet('set out', day.from, day.from + day.setOut_min),
    ...day.breaks.flatMap((b) => quiet('break', b.from, b.to)),
    ...quiet('clear up', day.to - day.clearUp_min, day.to),
    ...steps.map((s) => ({ at: s.start, row: stepRow(problem, plan, book, s, span(s.start, s.finish)) })),
    ...changes.map((c) => ({ at: c.start, row: changeRow(problem, book, c, span(c.start, c.finish)) })),
  ];
  return rows.sort((a, b) => a.at - b.at).map(({ row }) => row);
}

function stepRow(problem: Problem, plan: Plan, book: Book, planned: PlannedStep, time: string): SheetRow {
  const step = problem.steps.find((s) => s.id === planned.step);
  const job = step && book.jobs[step.job];
  const zone = step?.zone ? book.zones[step.zone]?.name : undefined;
  const weather = step ? conditionsInWords(step.needs) : '';
  const batch = planned.batchOf === null ? undefined : problem.steps.find((s) => s.id === planned.batchOf);
  const needs = [
    ...(step?.setUps.map((need) => setUpInWords(problem, need.aspect, need.states)) ?? []),
    weather === '' ? null : `weather: ${weather}`,
    step?.notAlone ? 'not alone' : null,
    planned.abrade_min > 0 ? `abrade first, ${minutesInWords(planned.abrade_min)}` : null,
    batch ? `from the batch mixed for '${batch.title}'` : null,
  ].filter((part) => part !== null);
  return {
    kind: 'step',
    key: planned.step,
    time,
    name: step?.title ?? planned.step,
    about: [
      minutesInWords(planned.finish - planned.start),
      job && job.title !== step?.title ? job.title : null,
      zone ?? null,
    ]
      .filter((part) => part !== null)
      .join(' · '),
    needs: needs.join('; '),
    who: whoInWords(problem, planned.hands),
    danger: job?.consequence === 'danger',
    cautions: book.steps[planned.step]?.cautions ?? [],
    waits: plan.waits
      .filter((w) => w.step === planned.step && w.finish > w.start)
      .map((w) => {
        const title = step?.waits.find((x) => x.id === w.wait)?.title ?? 'wait';
        return `${capital(title)}: until ${whenInWords(problem, w.finish, planned.start)}${w.tooCold ? '; too cold for part of it' : ''}`;
      }),
  };
}

function changeRow(problem: Problem, book: Book, planned: PlannedChange, time: string): SheetRow {
  const change = book.setUps[planned.aspect]?.changes.find((c) => c.from === planned.from && c.to === planned.to);
  const weather = change ? conditionsInWords(change.needs) : '';
  return {
    kind: 'change',
    key: `${planned.aspect}-${planned.start}`,
    time,
    name: capital(changeInWords(planned, problem)),
    about: minutesInWords(planned.finish - planned.start),
    needs: weather === '' ? '' : `weather: ${weather}`,
    who: whoInWords(problem, planned.hands),
    danger: false,
    cautions: change?.cautions ?? [],
    waits: [],
  };
}

function whoInWords(problem: Problem, hands: readonly string[]): string {
  if (hands.length === 0) return 'by itself';
  return hands.map((id) => problem.hands.find((h) => h.id === id)?.name ?? id).join(', ');
}

export interface Carried {
  readonly name: string;
  readonly keptAt: string;
  /** why it is not there to carry; null: it is */
  readonly absent: string | null;
}

/** Tools, then stores, of each step in the order the day takes them; each thing once. */
export function carryDown(problem: Problem, plan: Plan, book: Book, day: ProblemDay): Carried[] {
  const carried = new Map<string, Carried>();
  const steps = [...workOfDay(problem, plan, day).steps].sort((a, b) => a.start - b.start);
  for (const planned of steps) {
    const step = problem.steps.find((s) => s.id === planned.step);
    if (!step || step.progress.kind === 'done') continue;
    for (const { tool, count } of step.tools) {
      const known = book.tools[tool];
      if (known && !carried.has(tool))
        carried.set(tool, {
          name: count > 1 ? `${known.name}, ${count}` : known.name,
          keptAt: known.keptAt,
          absent: null,
        });
    }
    for (const id of step.stores) {
      const known = book.stores[id];
      if (known && !carried.has(id))
        carried.set(id, {
          name: known.name,
          keptAt: known.keptAt,
          absent: known.onHand ? null : known.expected ? `expected ${known.expected}` : 'to get',
        });
    }
  }
  return [...carried.values()];
}
