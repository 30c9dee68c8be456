/** The ladders of each kind of relaxation, for a set of jobs that are to come in. */
import { addDays, daysBetween, instantAt, localAt } from '#units';
import type { Minute, Problem, ProblemDay, ProblemStep } from '../problem.ts';
import type { Ladder } from './ladder.ts';
import type { Relaxation } from './relaxation.ts';

const quarter = 15;
/** a job day begins so much sooner, or ends so much later, at most. [min] Our judgement */
const assumedLongest_min = 180;
/** a date is moved by so many days at most. Our judgement */
const assumedLatest_days = 14;

export function earlierStart(problem: Problem, day: ProblemDay): Ladder {
  const before = Math.max(problem.now, 0, ...problem.days.map(({ to }) => (to <= day.from ? to : 0)));
  // from quarter hour to quarter hour
  const first = Math.ceil(day.from / quarter) * quarter - quarter;
  const least = Math.max(before, day.from - assumedLongest_min);
  const rungs = day.from <= problem.now || first < least ? 0 : Math.floor((first - least) / quarter) + 1;
  return {
    rungs,
    at(rung): Relaxation {
      const from = first - rung * quarter;
      return { kind: 'earlier start', day: day.id, minutes: day.from - from, from };
    },
  };
}

export function laterEnd(problem: Problem, day: ProblemDay): Ladder {
  const after = Math.min(problem.horizon, ...problem.days.map(({ from }) => (from >= day.to ? from : problem.horizon)));
  const first = Math.floor(day.to / quarter) * quarter + quarter;
  const most = Math.min(after, day.to + assumedLongest_min);
  const rungs = first > most ? 0 : Math.floor((most - first) / quarter) + 1;
  return {
    rungs,
    at(rung): Relaxation {
      const to = first + rung * quarter;
      return { kind: 'later end', day: day.id, minutes: to - day.to, to };
    },
  };
}

/** From the last quarter hour of a day back to its first. */
export function secondHand(problem: Problem, day: ProblemDay): Ladder {
  const last = Math.ceil(day.to / quarter) * quarter - quarter;
  const first = Math.max(day.from, problem.now);
  const rungs = last < first ? 0 : Math.ceil((last - first) / quarter) + 1;
  return {
    rungs,
    at(rung): Relaxation {
      return { kind: 'second hand', day: day.id, from: Math.max(first, last - rung * quarter), to: day.to };
    },
  };
}

/**
 * Days on which stores may come, from the last on which it is any use back to today.
 *
 * @param arrival_clock  from when on its day what comes is counted on, at the place. `HH:MM`
 */
export function storesBy(problem: Problem, stores: readonly string[], arrival_clock: string): Ladder {
  const startMs = Date.parse(problem.startsAt);
  const dayAt = (minute: Minute) => localAt(startMs + minute * 60_000, problem.timeZone).day;
  const arrival = (day: string) => Math.round((instantAt(day, arrival_clock, problem.timeZone) - startMs) / 60_000);
  const lastDay = problem.days.at(-1);
  if (lastDay === undefined || stores.length === 0) return { rungs: 0, at: never };
  const today = dayAt(problem.now);
  const last = dayAt(lastDay.to - 1);
  const later = problem.stores.filter(({ id }) => stores.includes(id)).map(({ from }) => from ?? problem.horizon);
  const current = Math.max(...later);
  const days: Minute[] = [];
  for (let back = 0; back <= daysBetween(today, last); back++) {
    const by = Math.max(0, arrival(addDays(last, -back)));
    if (by < current && by < lastDay.to) days.push(by);
  }
  return { rungs: days.length, at: (rung) => ({ kind: 'stores by', stores, by: days[rung]! }) };
}

export function moreOfTool(tool: string, most: number): Ladder {
  return { rungs: most, at: (rung) => ({ kind: 'tool', tool, more: rung + 1 }) };
}

export function laterDate(problem: Problem, job: string): Ladder {
  const deadline = problem.jobs.find(({ id }) => id === job)?.deadline ?? null;
  if (deadline === null) return { rungs: 0, at: never };
  const rungs = Math.max(0, Math.min(assumedLatest_days, Math.ceil((problem.horizon - deadline) / 1440)));
  return {
    rungs,
    at(rung): Relaxation {
      const later = Math.min(problem.horizon, deadline + (rung + 1) * 1440);
      return { kind: 'later date', job, days: rung + 1, deadline: later };
    },
  };
}

/** A job day more on a date, of one hour more at each rung, up to as long as the day it is like. */
export function anotherDay(
  problem: Problem,
  like: ProblemDay,
  days: number,
  needs: Extract<Relaxation, { kind: 'another day' }>['needs'],
): Ladder {
  const from = like.from + days * 1440;
  const least = Math.floor((like.setOut_min + like.clearUp_min) / 60) + 1;
  const free = problem.days.every((day) => day.to <= from || day.from >= from + (like.to - like.from));
  const most = Math.floor((like.to - like.from) / 60);
  const sound = free && from >= problem.now && from + most * 60 <= problem.horizon + 1440;
  return {
    rungs: sound ? Math.max(0, most - least + 1) : 0,
    at: (rung) => ({ kind: 'another day', like: like.id, from, to: from + (least + rung) * 60, needs }),
  };
}

/**
 * Dates for a job day more, each as so many days after one there is: the first free one after the last job day, the
 * first from `notBefore` on, and the latest free one before the deadline. At most so many.
 */
export function freeDates(
  problem: Problem,
  { notBefore, before, most }: { readonly notBefore: Minute; readonly before: Minute; readonly most: number },
): { readonly like: ProblemDay; readonly days: number }[] {
  const like = problem.days.at(-1);
  if (like === undefined) return [];
  const isFree = (days: number) => {
    const [from, to] = [like.from + days * 1440, like.to + days * 1440];
    return (
      from >= problem.now &&
      to <= problem.horizon + 1440 &&
      problem.days.every((day) => day.to <= from || to <= day.from)
    );
  };
  const first = Math.ceil((Math.max(problem.now, 0) - like.from) / 1440);
  const last = Math.floor(Math.min(before - like.to, problem.horizon + 1440 - like.to) / 1440);
  const free: number[] = [];
  for (let days = first; days <= last; days++) if (isFree(days)) free.push(days);
  const chosen = [
    free.find((days) => days > 0),
    free.find((days) => like.from + days * 1440 >= notBefore),
    free.findLast((days) => days < 0),
    free.at(-1),
  ];
  return [...new Set(chosen)].flatMap((days) => (days === undefined ? [] : [{ like, days }])).slice(0, most);
}

/** Stores of some steps that are not on hand at `now`. */
export function storesNotThere(problem: Problem, steps: readonly ProblemStep[]): string[] {
  const used = new Set(steps.flatMap(({ stores }) => stores));
  return problem.stores
    .filter(({ id, from }) => used.has(id) && (from === null || from > problem.now))
    .map(({ id }) => id);
}

function never(): never {
  throw new RangeError('a ladder without rungs has none to ask for');
}
