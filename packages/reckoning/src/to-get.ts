import type { Book, Day, Id, StoreUnit } from '#boat-book';
import { addDays, localAt, minuteOfClock } from '#units';
import type { Outcome, Problem } from '#workplan';
import { assumedArrival_clock, firstMorning, storeOfLine } from './plan-stores.ts';
import { amountInWords, type Bought, bought, countInWords } from './store-amounts.ts';
import { type StoreStanding, storeStandings } from './store-standing.ts';
import { localMinute } from './when-in-words.ts';

/** A thing that open work needs and that is not there, or not enough of it: one of each, with all the jobs it is for. */
export interface ToGet {
  readonly store: Id;
  readonly name: string;
  /** the heaviest first; `takes`: how much of it, `22 ml`, null where not said */
  readonly jobs: readonly {
    readonly job: Id;
    readonly title: string;
    readonly inPlan: boolean;
    readonly takes: string | null;
    /** the part of what is got that it takes. 0 to 1; null: not known */
    readonly share: number | null;
  }[];
  /** how much is to be got, rounded up to what it is sold in; null: not said */
  readonly buy: (Bought & { readonly unit: StoreUnit }) | null;
  /** why what is there does not do: `2 there, and the jobs take 6`, `opened 14 months ago: …`; null: nothing is there */
  readonly because: string | null;
  /** where it is to be had; null: not said */
  readonly from: string | null;
  /** what all that is to be got of it costs, in the boat's currency; null: no price or amount is known */
  readonly price: number | null;
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
 * hand, is past its date, or does not reach for all its jobs; each once, however many jobs it is for. What is late stands first, then by the day to order, then by the day it must be here.
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
  const uses = planned === null ? new Map<Id, number>() : firstUses(planned.outcome, planned.problem, book);
  const inPlan = new Set(
    planned?.outcome.plan.steps.map(({ step }) => book.steps[step]?.job).filter((id) => id !== undefined),
  );
  const standings = storeStandings(book, today);
  const wanted = new Map<Id, Day | null>();
  for (const [id, step] of Object.entries(book.steps)) {
    const job = book.jobs[step.job];
    if (job?.state !== 'open' || step.progress.kind !== 'open') continue;
    for (const store of step.stores) {
      if (!standings.get(store)?.needs.some((each) => each.short && each.job === step.job)) continue;
      wanted.set(store, sooner(wanted.get(store) ?? null, latestDay(book, id, planned?.problem ?? null)));
    }
  }
  const lines = [...wanted].map(([store, latest]): ToGet => {
    const buys = buying(book, store, standings.get(store)!);
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
      jobs: jobsOf(standings.get(store)!, buys.buy, inPlan),
      ...buys,
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

/** The jobs that wait for a thing, the heaviest first. */
function jobsOf({ needs, unit }: StoreStanding, buy: ToGet['buy'], inPlan: ReadonlySet<Id>): ToGet['jobs'] {
  const short = needs.filter((each) => each.short);
  const all = short.reduce((sum, { amount }) => sum + (amount ?? 0), 0);
  const bears = buy === null || short.some(({ amount }) => amount === null) ? null : Math.max(all, buy.amount);
  return short.map(({ job, title, amount }) => ({
    job,
    title,
    inPlan: inPlan.has(job),
    takes: amount === null || unit === null ? null : amountInWords(amount, unit),
    share: bears === null || bears === 0 || amount === null ? null : amount / bears,
  }));
}

/** How much to get, why, where and for what price. */
function buying(
  book: Book,
  id: Id,
  { unit, toGet: missing, there, reserved, keeps }: StoreStanding,
): Pick<ToGet, 'buy' | 'because' | 'from' | 'price'> {
  const { pack = null, from, price = null, onHand } = book.stores[id]!;
  const buy = missing === null || unit === null ? null : { ...bought(missing, unit, pack), unit };
  const because =
    onHand && keeps?.past
      ? keeps.words
      : onHand && there !== null && there > 0 && reserved !== null && unit !== null
        ? `${countInWords(there, unit)} there, and the open jobs take ${countInWords(reserved, unit)}`
        : null;
  return {
    buy,
    because,
    from: from?.trim() ? from.trim() : null,
    price: buy === null || price === null ? null : price * (buy.packs ?? buy.amount),
  };
}

/** The first minute at which a step still to do uses each store, or of one that is partly there, what is to come of it. */
function firstUses({ plan }: Outcome, problem: Problem, book: Book): Map<Id, number> {
  const stores = new Map(problem.steps.map((step) => [step.id, step.stores]));
  const partly = new Set(
    problem.stores.flatMap(({ id }) => (storeOfLine(id, book) === id ? [] : [storeOfLine(id, book)])),
  );
  const first = new Map<Id, number>();
  for (const planned of plan.steps) {
    if (planned.day === null) continue;
    for (const line of stores.get(planned.step) ?? []) {
      if (partly.has(line)) continue;
      const store = storeOfLine(line, book);
      first.set(store, Math.min(first.get(store) ?? planned.start, planned.start));
    }
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
