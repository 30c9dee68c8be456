/** Hours of a job day that would have to be fit: as few as can be found, in a row, next to those that are. */
import { type Condition, type Conditions, unmetConditions } from '#sky';
import type { Plan } from '../plan.ts';
import type { Minute, Problem, ProblemDay, ProblemStep, Wait } from '../problem.ts';
import { violations } from '../violations.ts';
import { attempt, type Footing, type Work } from './attempt.ts';
import type { Found } from './ladder.ts';
import { type Relaxation, relaxed } from './relaxation.ts';

type FitHours = Extract<Relaxation, { kind: 'fit hours' }>;

/** windows of one length that are tried at most */
const mostWindows = 4;

/** The strictest of what some steps, their waits and the set-up changes they may need ask of the weather. */
export function conditionsOf(problem: Problem, steps: readonly ProblemStep[]): Conditions {
  const inside = new Set(problem.zones.filter((zone) => zone.inside).map(({ id }) => id));
  const aspects = new Set(steps.flatMap(({ setUps }) => setUps.map(({ aspect }) => aspect)));
  const all = [
    ...steps.map((step): Conditions => {
      const { dry, ...rest } = step.needs;
      return dry && !(step.zone !== null && inside.has(step.zone)) ? { ...rest, dry } : rest;
    }),
    ...steps.flatMap(({ zone, waits }) => waits.map((wait) => asConditions(wait, zone !== null && inside.has(zone)))),
    ...problem.aspects.filter(({ id }) => aspects.has(id)).flatMap(({ changes }) => changes.map(({ needs }) => needs)),
  ];
  return all.reduce<Conditions>((strict, needs) => strictest(strict, needs), {});
}

function asConditions({ needs: { beforeDew, ...needs } }: Wait, roofed: boolean): Conditions {
  return beforeDew === undefined || roofed ? needs : { ...needs, dewMargin_min_C: beforeDew.dewMargin_min_C };
}

function strictest(a: Conditions, b: Conditions): Conditions {
  const least = (key: 'wind_max_kn' | 'air_max_C' | 'humidity_max_pct') => pick(key, Math.min);
  const most = (key: 'air_min_C' | 'surface_min_C' | 'dewMargin_min_C') => pick(key, Math.max);
  const pick = (key: Exclude<Condition, 'dry' | 'daylight'>, choose: (...values: number[]) => number) => {
    const values = [a[key], b[key]].filter((value): value is number => value !== undefined);
    return values.length === 0 ? {} : { [key]: choose(...values) };
  };
  return {
    ...(a.dry || b.dry ? { dry: true as const } : {}),
    ...least('wind_max_kn'),
    ...most('air_min_C'),
    ...least('air_max_C'),
    ...most('surface_min_C'),
    ...least('humidity_max_pct'),
    ...most('dewMargin_min_C'),
  };
}

/** Each condition by itself, that one first which is named. */
export function oneByOne(needs: Conditions, first: string | null): Conditions[] {
  const keys = Object.keys(needs) as Condition[];
  keys.sort((a, b) => Number(b === first) - Number(a === first));
  return keys.map((key) => ({ [key]: needs[key] }) as Conditions);
}

/**
 * The fewest hours in a row found on a day that would have to meet the conditions for the wanted jobs to come in.
 *
 * First all hours of the day that do not meet them are taken to, with the night after it where `overnight`. What the
 * plan then found does not use is taken off; then stretches of fewer hours are tried, those next to fit hours first.
 * Smallest found: a heuristic search stands behind every 'does not', but where `leastProved`.
 */
export function* fewestFitHours(
  footing: Footing,
  day: ProblemDay,
  needs: Conditions,
  wanted: readonly string[],
  { tries, overnight, below }: { readonly tries: number; readonly overnight: boolean; readonly below: number },
): Work<Found | null> {
  const { problem } = footing;
  const hours = unfitHours(problem, day, needs, overnight);
  if (hours.unfit.length === 0) return null;
  const { unfit, first, last, isUnfit, window } = hours;
  const whole = yield* attempt(footing, [window(unfit[0]!, unfit.at(-1)! + 1)], wanted, tries);
  if (whole.kind !== 'found') return null;
  let plan = whole.plan;
  let found = trimmed(plan, problem, window, unfit[0]!, unfit.at(-1)! + 1);
  let leastProved = false;
  for (let count = 1; count < found.hours && count < below; count++) {
    let allProved = true;
    let smaller: Plan | null = null;
    const windows = windowsOf(count, unfit, isUnfit, first, last);
    for (const [from, to] of windows.slice(0, mostWindows)) {
      const looked = yield* attempt(footing, [window(from, to)], wanted, tries);
      if (looked.kind === 'found') {
        smaller = looked.plan;
        found = window(from, to);
        break;
      }
      if (looked.kind !== 'proved not') allProved = false;
    }
    if (smaller !== null) {
      plan = smaller;
      break;
    }
    leastProved = allProved && windows.length <= mostWindows && count === found.hours - 1;
  }
  return found.hours < below ? { relaxation: found, plan, leastProved } : null;
}

/** All hours of a day that do not meet the conditions taken to; null where there are none. */
export function allHoursFit(problem: Problem, day: ProblemDay, needs: Conditions, overnight: boolean): FitHours | null {
  const { unfit, window } = unfitHours(problem, day, needs, overnight);
  return unfit.length === 0 ? null : window(unfit[0]!, unfit.at(-1)! + 1);
}

function unfitHours(problem: Problem, day: ProblemDay, needs: Conditions, overnight: boolean) {
  const first = Math.floor(Math.max(day.from, problem.now) / 60);
  const last = Math.min(problem.hours.length, Math.ceil(day.to / 60) + (overnight ? 24 : 0));
  const isUnfit = (hour: number) => unmetConditions(needs, problem.hours[hour]!).length > 0;
  const unfit: number[] = [];
  for (let hour = first; hour < last; hour++) if (isUnfit(hour)) unfit.push(hour);
  const window = (from: number, to: number): FitHours => ({
    kind: 'fit hours',
    day: day.id,
    from: from * 60,
    to: to * 60,
    hours: unfit.filter((hour) => hour >= from && hour < to).length,
    needs,
  });
  return { first, last, unfit, isUnfit, window };
}

/** The window less the hours at either end that a plan does not need fit. */
function trimmed(
  plan: Plan,
  problem: Problem,
  window: (from: number, to: number) => FitHours,
  from: number,
  to: number,
): FitHours {
  const keeps = (a: number, b: number) => a < b && violations(plan, relaxed(problem, window(a, b))).length === 0;
  let [a, b] = [from, to];
  while (keeps(a + 1, b)) a++;
  while (keeps(a, b - 1)) b--;
  return window(a, b);
}

/** Stretches of so many unfit hours in a row, those with a fit hour beside them first. */
function windowsOf(
  hours: number,
  unfit: readonly number[],
  isUnfit: (hour: number) => boolean,
  first: Minute,
  last: Minute,
): [number, number][] {
  const runs = unfit.filter((hour, at) => at + hours <= unfit.length && unfit[at + hours - 1] === hour + hours - 1);
  const isFit = (hour: number) => hour >= first && hour < last && !isUnfit(hour);
  const beside = (from: number) => (isFit(from - 1) ? 1 : 0) + (isFit(from + hours) ? 1 : 0);
  return runs.sort((a, b) => beside(b) - beside(a) || a - b).map((from) => [from, from + hours]);
}
