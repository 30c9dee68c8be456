import type { Day } from '#boat-book';
import { cureFinish } from '#materials';
import { addDays, instantAt, localAt } from '#units';
import type { PlanHour } from '#workplan';
import { type DoneStep, lookBackDays } from './done-steps.ts';
import type { DatedJob } from './job-dates.ts';
import type { DatedJobDay } from './job-days-ahead.ts';
import type { LinkedStep } from './plan-steps.ts';

const msInMinute = 60_000;
const msInHour = 3_600_000;
const msInDay = 86_400_000;
/** The most a plan spans. Whole days from its first midnight. */
export const longestPlan_days = 90;
/** A wait begun on the last job day is followed for so long; one that takes longer is left out with its reason. */
const assumedLongestWait_days = 30;

/** First midnight and length of the plan. */
export function planSpan(matter: {
  readonly open: readonly LinkedStep[];
  readonly done: readonly DoneStep[];
  readonly jobs: readonly DatedJob[];
  readonly ahead: readonly DatedJobDay[];
  readonly nowMs: number;
  readonly today: Day;
  readonly timeZone: string;
  readonly hoursOf: (fromMs: number, count: number) => readonly PlanHour[];
}): { readonly startsMs: number; readonly horizon: number } {
  const { open, done, jobs, ahead, nowMs, today, timeZone, hoursOf } = matter;
  const midnightOf = (ms: number) => wholeHour(instantAt(localAt(ms, timeZone).day, '00:00', timeZone));
  const begun = [
    ...done.filter((step) => step.waiting || step.timed).map((step) => step.started),
    ...open.flatMap(({ record }) =>
      record.progress.kind === 'under way' ? [Date.parse(record.progress.started)] : [],
    ),
  ].filter((ms) => ms <= nowMs);
  // one minute to spare, so that a step done before the plan can stand in minute 0 to 1
  const earliest = Math.min(midnightOf(nowMs - msInMinute), ...begun.map(midnightOf));
  const lastDayEnds = ahead.at(-1)!.to;
  const latest = nowMs + (longestPlan_days - 1) * msInDay;
  const after = Math.ceil(lastDayEnds / msInHour) * msInHour;
  const hours = hoursOf(after, assumedLongestWait_days * 24);
  const waits_min = open.flatMap(({ record }) =>
    record.progress.kind === 'done' ? [] : record.waits.map((wait) => cureFinish(wait.law, hours, 0).finish ?? 0),
  );
  const ends = [
    instantAt(addDays(today, 1), '00:00', timeZone),
    after + Math.max(0, ...waits_min) * msInMinute,
    ...jobs.flatMap(({ deadlineMs }) => (deadlineMs === null ? [] : [deadlineMs])),
  ].map((ms) => Math.min(ms, latest));
  const endDay = localAt(Math.max(...ends) - 1, timeZone).day;
  // where midnight is no whole hour of the world's clock, rounding must not carry the end, and so the start, past now
  const endsMs = Math.min(
    Math.ceil(instantAt(addDays(endDay, 1), '00:00', timeZone) / msInHour) * msInHour,
    wholeHour(nowMs - msInMinute) + longestPlan_days * msInDay,
  );
  const startsMs = Math.max(earliest, wholeHour(nowMs - lookBackDays * msInDay), endsMs - longestPlan_days * msInDay);
  return { startsMs, horizon: (endsMs - startsMs) / msInMinute };
}

const wholeHour = (ms: number) => Math.floor(ms / msInHour) * msInHour;
