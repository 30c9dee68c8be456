import type { At, Book, Id, SetUp } from '#boat-book';
import { localAt } from '#units';
import type { PlanHour, Problem, ProblemJob, ProblemStep } from '#workplan';
import { setUpChangeInWords } from './change-in-words.ts';
import { withSkyCooling } from './coat-before-dew.ts';
import { doneStepsThatMatter } from './done-steps.ts';
import { jobDates } from './job-dates.ts';
import { type DatedJobDay, datedJobDays, jobDaysAhead } from './job-days-ahead.ts';
import { jobWeight } from './job-weight.ts';
import { jobsToPlan } from './jobs-to-plan.ts';
import { daylightSpans, handsPresent, problemDays, problemSetUps } from './plan-days.ts';
import { planHours } from './plan-hours.ts';
import { planInForce } from './plan-in-force.ts';
import { type PlanNote, planNote } from './plan-note.ts';
import { longestPlan_days, planSpan } from './plan-span.ts';
import { storesToPlan } from './plan-stores.ts';
import { planTools } from './plan-tools.ts';
import { plannedSteps } from './planned-steps.ts';
import { dayInWords } from './when-in-words.ts';
import { withTins } from './with-tins.ts';

const msInMinute = 60_000;
const msInHour = 3_600_000;
const msInDay = 86_400_000;

export type PlanMatter =
  | { readonly kind: 'problem'; readonly problem: Problem; readonly notes: readonly PlanNote[] }
  | {
      readonly kind: 'nothing to plan';
      readonly because: 'no job days ahead' | 'no open jobs';
      readonly words: string;
      readonly notes: readonly PlanNote[];
    };

/**
 * The book as a plan problem: what is open, begun and still curing, over the job days that are not over yet.
 *
 * The plan starts at the local midnight of today, or of the day the oldest wait still running or step under way
 * began (at most 60 days back), and ends at the midnight after the last job day, outing or date, or when the longest
 * wait begun at the end of the last job day is over, whichever is later; at most 90 days in all. Hours without
 * weather take the cautious climate value (`cautiousClimate`). How each thing is read is in the README.
 *
 * @param now     the instant the plan is made at; nothing open is planned before it
 * @param afresh  the plan now in force is forgotten: nothing is moved from where it had it
 * @returns    the problem with notes in whole sentences, or that there is nothing to plan
 * @throws RangeError  where a day, clock time or instant of the book cannot be read (a checked book has none)
 */
export function problemFrom(
  written: Book,
  { now, afresh = false }: { readonly now: At; readonly afresh?: boolean },
): PlanMatter {
  const book = withTins(written);
  const nowMs = Date.parse(now);
  if (Number.isNaN(nowMs)) throw new RangeError(`now must be an instant such as 2026-05-09T10:40:00Z, got '${now}'`);
  const dated = datedJobDays(book);
  const notes: PlanNote[] = [...dated.notes];
  const ahead = jobDaysAhead(dated.days, nowMs, nowMs + (longestPlan_days - 1) * msInDay);
  notes.push(...ahead.notes);
  const toPlan = jobsToPlan(book);
  notes.push(...toPlan.notes);
  const open = toPlan.jobs.flatMap((job) => job.steps);
  const hoursOf = (fromMs: number, count: number) => planHours(book, dated.days, fromMs, count);
  const done = doneStepsThatMatter(book, open, nowMs, hoursOf);
  // what still cures is kept in sight also after the last open step
  if (toPlan.jobs.length === 0 && !done.some((step) => step.waiting))
    return { kind: 'nothing to plan', because: 'no open jobs', words: 'No open job has a step left to do.', notes };
  if (ahead.days.length === 0)
    return {
      kind: 'nothing to plan',
      because: 'no job days ahead',
      words: 'There is no job day ahead. Add one with its hours and place.',
      notes,
    };

  const timeZone = ahead.days[0]!.place.timeZone;
  const today = localAt(nowMs, timeZone).day;
  const jobs = toPlan.jobs.map(({ id, job, steps }) => ({
    id,
    job,
    steps,
    ...jobDates(book, id, job, { nowMs, timeZone, notes }),
  }));

  const span = planSpan({ open, done, jobs, ahead: ahead.days, nowMs, today, timeZone, hoursOf });
  const minute = (ms: number) => Math.round((ms - span.startsMs) / msInMinute);
  const nowMinute = Math.ceil((nowMs - span.startsMs) / msInMinute);
  const days = problemDays(ahead.days, minute);
  const hands = handsPresent(book, ahead.days, open, minute, span.horizon);
  const hours = hoursOf(span.startsMs, span.horizon / 60);
  const planned = plannedSteps({ book, jobs, done, days, hours, nowMinute, minute, notes });
  notes.push(...leavingNotes(book, ahead.days, nowMs), ...weatherNotes(hours, ahead.days, span.startsMs));
  const daylight = daylightSpans(dated.days, span.startsMs, span.horizon);
  const coats = planned.steps.some(({ needs }) => needs.dewMargin_min_C !== undefined);
  const stores = storesToPlan(book, planned.steps, { today, now: nowMs, timeZone, minute, notes });
  const problem: Problem = {
    format: 1,
    startsAt: new Date(span.startsMs).toISOString(),
    timeZone,
    horizon: span.horizon,
    now: nowMinute,
    days,
    hands,
    tools: planTools(book, { horizon: span.horizon, today, timeZone, minute, notes }),
    zones: Object.entries(book.zones).map(([id, zone]) => ({
      id,
      name: zone.name,
      room: zone.room,
      inside: zone.inside,
      near: zone.near.filter((other) => other !== id && book.zones[other] !== undefined),
    })),
    aspects: problemSetUps(book),
    mixes: Object.entries(book.mixes).map(([id, { name, mixing_min, potLife_min }]) => ({
      id,
      name,
      mixing_min,
      potLife_min,
    })),
    stores: stores.lines,
    hours: coats ? withSkyCooling(hours, daylight) : hours,
    daylight,
    jobs: [
      ...jobs.map(
        ({ id, job, deadlineMs, needed }): ProblemJob => ({
          id,
          title: job.title,
          weight: jobWeight(job, book.weights, today),
          deadline: deadlineMs === null ? null : Math.min(minute(deadlineMs), span.horizon),
          optional: !needed,
        }),
      ),
      ...planned.finishedJobs.map(
        (id): ProblemJob => ({
          id,
          title: book.jobs[id]!.title,
          weight: jobWeight(book.jobs[id]!, book.weights, today),
          deadline: null,
          optional: true,
        }),
      ),
    ],
    steps: stores.steps,
    precedence: planned.precedence,
    previous: afresh ? [] : previousStarts(book, planned.steps, span.startsMs, span.horizon),
  };
  return { kind: 'problem', problem, notes };
}

/** Starts of the plan kept last, in minutes of this one, of the steps still open. */
function previousStarts(
  book: Book,
  steps: readonly ProblemStep[],
  startsMs: number,
  horizon: number,
): Problem['previous'] {
  const kept = planInForce(book);
  if (kept === null) return [];
  const shift = (Date.parse(kept.startsAt) - startsMs) / msInMinute;
  const open = new Set(steps.filter((step) => step.progress.kind === 'open').map((step) => step.id));
  return kept.plan.steps
    .map(({ step, start }) => ({ step, start: Math.round(start + shift) }))
    .filter(({ step, start }) => open.has(step) && start >= 0 && start < horizon);
}

/** On the day itself: a set-up that is not yet as the day must end in. A plan sees to it only where it has work left. */
function leavingNotes(book: Book, days: readonly DatedJobDay[], nowMs: number): PlanNote[] {
  return days
    .filter((day) => day.from <= nowMs)
    .flatMap(({ id, record }) =>
      record.endsIn.flatMap(({ setUp, state }) => {
        const known = book.setUps[setUp];
        if (!known || known.now === state) return [];
        const change = setUpChangeInWords(known.name, stateOf(known, known.now), stateOf(known, state));
        return [
          planNote('to be left so', `Before you leave today: ${change}, also if nothing else fits in any more.`, {
            day: id,
          }),
        ];
      }),
    );
}

function stateOf(setUp: SetUp, id: Id): string {
  return setUp.states.find((state) => state.id === id)?.name ?? id;
}

function weatherNotes(hours: readonly PlanHour[], days: readonly DatedJobDay[], startsMs: number): PlanNote[] {
  const assumed = hours.filter((hour) => hour.basis === 'climate');
  if (assumed.length === 0) return [];
  const coolest = Math.round(Math.min(...assumed.map((hour) => hour.air_C)));
  const warmest = Math.round(Math.max(...assumed.map((hour) => hour.air_C)));
  const notes = [
    planNote(
      'weather assumed',
      `${assumed.length} of the plan's ${hours.length} hours have no weather entered, nights included. They count as wet and damp, with 15 knots of wind and ${coolest} to ${warmest} °C: our cautious assumption for the latitude and the time of year.`,
    ),
  ];
  for (const day of days) {
    const first = Math.floor((day.from - startsMs) / msInHour);
    const last = Math.ceil((day.to - startsMs) / msInHour);
    const missing = hours.slice(first, last).filter((hour) => hour.basis === 'climate').length;
    if (missing > 0)
      notes.push(
        planNote(
          'weather assumed',
          missing === last - first
            ? `${dayInWords(day.record.date)} has no weather entered: it counts as wet all day.`
            : `${dayInWords(day.record.date)} has no weather for ${missing} of its ${last - first} hours: those count as wet.`,
          { day: day.id },
        ),
      );
  }
  return notes;
}
