/** What stands on a printed job day: its rows in order of time. Pure. */
import type { Book } from '#boat-book';
import { changeInWords, conditionsInWords } from '#reckoning';
import type { Plan, PlannedChange, PlannedStep, Problem, ProblemDay } from '#workplan';
import { capital, listInWords, minutesInWords } from '../../parts/in-words.ts';
import { clockAt, whenInWords } from './place-time.ts';
import { workOfDay } from './plan-drawing/day-column.ts';
import { setUpStretches } from './plan-drawing/set-up-lines.ts';

export type SheetRow =
  | { readonly kind: 'quiet'; readonly key: string; readonly time: string; readonly name: string }
  | {
      readonly kind: 'step' | 'change';
      readonly key: string;
      readonly time: string;
      readonly name: string;
      /** minutes, job and zone */
      readonly about: string;
      /** weather it needs, abrading, the batch it shares */
      readonly needs: string;
      readonly who: string;
      readonly danger: boolean;
      readonly cautions: readonly string[];
      readonly waits: readonly string[];
    };

export function sheetRows(problem: Problem, plan: Plan, book: Book, day: ProblemDay): SheetRow[] {
  const { steps, changes } = workOfDay(problem, plan, day);
  const quiet = (name: string, from: number, to: number) =>
    to > from
      ? [
          {
            at: from,
            row: {
              kind: 'quiet' as const,
              key: `${name}-${from}`,
              time: clockAt(problem, from),
              name: `${name}, until ${clockAt(problem, to)}`,
            },
          },
        ]
      : [];
  const rows: { readonly at: number; readonly row: SheetRow }[] = [
    ...quiet('set out', day.from, day.from + day.setOut_min),
    ...day.breaks.flatMap((b) => quiet('break', b.from, b.to)),
    ...quiet('clear up', day.to - day.clearUp_min, day.to),
    ...steps.map((s) => ({ at: s.start, row: stepRow(problem, plan, book, s) })),
    ...changes.map((c) => ({ at: c.start, row: changeRow(problem, book, c) })),
  ];
  return saidOnce(rows.sort((a, b) => a.at - b.at).map(({ row }) => row));
}

/** A caution is written out where it first holds; later rows say where it stands, so that a page holds the day. */
function saidOnce(rows: readonly SheetRow[]): SheetRow[] {
  const said = new Map<string, string>();
  return rows.map((row) => {
    if (row.kind === 'quiet') return row;
    const again = [...new Set(row.cautions.flatMap((caution) => said.get(caution) ?? []))];
    const fresh = row.cautions.filter((caution) => !said.has(caution));
    for (const caution of fresh) said.set(caution, row.time);
    return { ...row, cautions: again.length === 0 ? fresh : [...fresh, `as at ${listInWords(again)}`] };
  });
}

function stepRow(problem: Problem, plan: Plan, book: Book, planned: PlannedStep): SheetRow {
  const step = problem.steps.find((s) => s.id === planned.step);
  const job = step && book.jobs[step.job];
  const zone = step?.zone ? book.zones[step.zone]?.name : undefined;
  const weather = step ? conditionsInWords(step.needs) : '';
  const batch = planned.batchOf === null ? undefined : problem.steps.find((s) => s.id === planned.batchOf);
  const needs = [
    weather === '' ? null : `weather: ${weather}`,
    step?.notAlone ? 'not alone' : null,
    planned.abrade_min > 0 ? `abrade first, ${minutesInWords(planned.abrade_min)}` : null,
    batch ? `from the batch mixed for '${batch.title}'` : null,
  ].filter((part) => part !== null);
  return {
    kind: 'step',
    key: planned.step,
    time: clockAt(problem, planned.start),
    name: step?.title ?? planned.step,
    about: [
      minutesInWords(planned.finish - planned.start),
      job && job.title !== step?.title ? job.title : null,
      zone && !job?.title.toLowerCase().includes(zone.toLowerCase()) ? zone : null,
    ]
      .filter((part) => part !== null)
      .join(' · '),
    needs: needs.join('; '),
    who: step?.progress.kind === 'done' ? 'done' : whoInWords(problem, planned.hands),
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

function changeRow(problem: Problem, book: Book, planned: PlannedChange): SheetRow {
  const change = book.setUps[planned.aspect]?.changes.find((c) => c.from === planned.from && c.to === planned.to);
  const weather = change ? conditionsInWords(change.needs) : '';
  return {
    kind: 'change',
    key: `${planned.aspect}-${planned.start}`,
    time: clockAt(problem, planned.start),
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

/** How she stands at a minute of the plan: `mast down, cover on`. A set-up under change then is left out. */
export function standsInWords(problem: Problem, plan: Plan, minute: number): string {
  return setUpStretches(problem, plan)
    .filter((s) => s.from <= minute && minute < s.to)
    .map((s) => s.name)
    .join(', ');
}
