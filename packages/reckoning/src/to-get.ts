import type { Book, Day, Id } from '#boat-book';
import { addDays, localAt, minuteOfClock } from '#units';
import type { Outcome, Problem } from '#workplan';
import { jobWeight } from './job-weight.ts';
import { assumedArrival_clock, firstMorning } from './plan-stores.ts';
import { localMinute } from './when-in-words.ts';

/** A thing that open work needs and that is not on hand: one of each, with all the jobs it is for. */
export interface ToGet {
  readonly store: Id;
  readonly name: string;
  /** the heaviest first */
  readonly jobs: readonly { readonly job: Id; readonly title: string; readonly inPlan: boolean }[];
  /** start of the first planned step that uses it; null: nothing in the plan does */
  readonly use: { readonly day: Day; readonly clock: string } | null;
  /**
   * The day on whose morning it must be here: for that step; or for a job left out, for it to be done in the job
   * days there are and by its date. null: no day hangs on it
   */
  readonly hereBy: Day | null;
  /** null: not ordered */
  readonly expected: Day | null;
  /** whole days from ordering to having it; null: not said */
  readonly lead_days: number | null;
  /** the last day on which to order it; null: it is ordered, or its lead time or the day it must be here is not known */
  readonly orderBy: Day | null;
  /**
   * `overdue`: its day has gone by and it is not marked as here; `too late`: the soonest it can be here is after
   * `hereBy`. Either holds up its jobs
   */
  readonly late: 'overdue' | 'too late' | null;
  /** the soonest morning it can be here: the day it is expected, or if ordered today; null: not known */
  readonly soonest: Day | null;
}

/**
 * What must be got, by when, and by when it must be ordered: every store that an open step needs and that is not on
 * hand. What is late stands first, then by the day to order, then by the day it must be here.
 *
 * A thing is here from the morning of its day (`assumedArrival_clock`), so for a step that starts earlier in the day
 * it must be here the day before. Order by = the day it must be here less its lead time.
 *
 * @param planned  the plan and its problem, made from this book; null where there is none
 * @param now      epoch ms
 * @param timeZone the place's, for what day it is
 */
export function toGet(
  book: Book,
  {
    planned,
    now,
    timeZone,
  }: {
    readonly planned: { readonly outcome: Outcome; readonly problem: Problem } | null;
    readonly now: number;
    readonly timeZone: string;
  },
): ToGet[] {
  const today = localAt(now, timeZone).day;
  const uses = planned === null ? new Map<Id, number>() : firstUses(planned.outcome, planned.problem);
  const inPlan = new Set(
    planned?.outcome.plan.steps.map(({ step }) => book.steps[step]?.job).filter((id) => id !== undefined),
  );
  const wanted = new Map<Id, { jobs: Set<Id>; latest: Day | null }>();
  for (const [id, step] of Object.entries(book.steps)) {
    const job = book.jobs[step.job];
    if (job?.state !== 'open' || step.progress.kind !== 'open') continue;
    for (const store of step.stores) {
      if (book.stores[store] === undefined || book.stores[store].onHand) continue;
      const line = wanted.get(store) ?? { jobs: new Set(), latest: null };
      line.jobs.add(step.job);
      line.latest = sooner(line.latest, latestDay(book, id, planned?.problem ?? null));
      wanted.set(store, line);
    }
  }
  const lines = [...wanted].map(([store, { jobs, latest }]): ToGet => {
    const { name, expected, lead_days } = book.stores[store]!;
    const minute = uses.get(store);
    const used = minute === undefined || planned === null ? null : localMinute(minute, planned.problem);
    const hereBy = used === null ? latest : morningBefore(used);
    const overdue = expected !== null && expected < today;
    const soonest = overdue
      ? null
      : (expected ?? (lead_days === null ? null : firstMorning(addDays(today, lead_days), now, timeZone)));
    return {
      store,
      name,
      jobs: [...jobs]
        .map((job) => ({ job, title: book.jobs[job]!.title, inPlan: inPlan.has(job) }))
        .sort((a, b) => weightOf(book, b.job, today) - weightOf(book, a.job, today) || (a.title < b.title ? -1 : 1)),
      use: used === null ? null : { day: used.day, clock: used.clock },
      hereBy,
      expected,
      lead_days,
      orderBy: expected !== null || lead_days === null || hereBy === null ? null : addDays(hereBy, -lead_days),
      late: overdue ? 'overdue' : hereBy !== null && soonest !== null && soonest > hereBy ? 'too late' : null,
      soonest,
    };
  });
  const byDay = (line: ToGet) => line.orderBy ?? line.hereBy ?? '9999-12-31';
  return lines.sort(
    (a, b) =>
      Number(b.late !== null) - Number(a.late !== null) ||
      byDay(a).localeCompare(byDay(b)) ||
      a.name.localeCompare(b.name),
  );
}

/** The first minute at which a step still to do uses each store. */
function firstUses({ plan }: Outcome, problem: Problem): Map<Id, number> {
  const stores = new Map(problem.steps.map((step) => [step.id, step.stores]));
  const first = new Map<Id, number>();
  for (const planned of plan.steps) {
    if (planned.day === null) continue;
    for (const store of stores.get(planned.step) ?? [])
      first.set(store, Math.min(first.get(store) ?? planned.start, planned.start));
  }
  return first;
}

/** The last morning from which a step could still be done: before the last job day ends and before its job's date. */
function latestDay(book: Book, id: Id, problem: Problem | null): Day | null {
  const job = book.jobs[book.steps[id]!.job]!;
  const step = problem?.steps.find((each) => each.id === id);
  if (problem === null || step === undefined) {
    const outing = job.outing === null ? undefined : book.outings[job.outing]?.date;
    return sooner(job.due, outing === undefined ? null : addDays(outing, -1));
  }
  const last = problem.days.at(-1);
  const deadline = problem.jobs.find((each) => each.id === step.job)?.deadline ?? null;
  const ends = [last === undefined ? null : last.to - last.clearUp_min, deadline].filter((end) => end !== null);
  return ends.length === 0 ? null : morningBefore(localMinute(Math.min(...ends) - step.minutes, problem));
}

/** The last day by whose morning a thing must be here to be used at a time. */
function morningBefore({ day, clock }: { readonly day: Day; readonly clock: string }): Day {
  return minuteOfClock(clock) < minuteOfClock(assumedArrival_clock) ? addDays(day, -1) : day;
}

function sooner(a: Day | null, b: Day | null): Day | null {
  return a === null || (b !== null && b < a) ? b : a;
}

function weightOf(book: Book, id: Id, today: Day): number {
  return jobWeight(book.jobs[id]!, book.weights, today);
}
