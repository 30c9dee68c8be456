/**
 * Which minutes suit what, read off a problem minute by minute. The slow plain way on purpose: the model that is
 * built on these tables judges the search, so it takes nothing from it and no short cut.
 */
import { belowMinimum, curePerMinute } from '#materials';
import { dewPoint_C } from '#sky';
import type { MinuteSpan, PlanHour, Problem, ProblemStep, SetUpChange, Wait } from '#workplan';

type Conditions = ProblemStep['needs'];

/** One byte a minute, 0 … horizon − 1: 1 where the minute suits. */
export type Minutes = Uint8Array;

const minutesWhere = (problem: Problem, suits: (minute: number) => boolean): Minutes =>
  Uint8Array.from({ length: problem.horizon }, (_, minute) => (suits(minute) ? 1 : 0));

export const hourOf = (problem: Problem, minute: number): PlanHour => problem.hours[Math.floor(minute / 60)]!;

const within = (spans: readonly MinuteSpan[], minute: number) =>
  spans.some(({ from, to }) => from <= minute && minute < to);

/** Whether one minute meets the conditions of a piece of work, `inside` a zone that rain does not reach or not. */
function weatherSuits(needs: Conditions, inside: boolean, problem: Problem, minute: number): boolean {
  const hour = hourOf(problem, minute);
  const surface_C = hour.surface_C ?? hour.air_C;
  if (needs.dry && hour.rain && !hour.sheltered && !inside) return false;
  if (needs.wind_max_kn !== undefined && hour.wind_kn > needs.wind_max_kn) return false;
  if (needs.air_min_C !== undefined && hour.air_C < needs.air_min_C) return false;
  if (needs.air_max_C !== undefined && hour.air_C > needs.air_max_C) return false;
  if (needs.surface_min_C !== undefined && surface_C < needs.surface_min_C) return false;
  if (needs.humidity_max_pct !== undefined && hour.humidity_pct > needs.humidity_max_pct) return false;
  if (needs.dewMargin_min_C !== undefined) {
    if (overDew_C(hour, inside) < needs.dewMargin_min_C) return false;
  }
  return !needs.daylight || within(problem.daylight, minute);
}

/** How far over the dew point something is in an hour: in the open colder by what the sky takes. */
function overDew_C({ air_C, surface_C, humidity_pct, skyCooling_C, sheltered }: PlanHour, inside: boolean): number {
  const cooled_C = inside || sheltered ? 0 : (skyCooling_C ?? 0);
  return (surface_C ?? air_C) - cooled_C - dewPoint_C(air_C, humidity_pct);
}

/**
 * Whether a coat finished at a minute is dry to the touch, or its wait over, before a minute with less than its margin.
 *
 * @param over  when its wait is over
 */
export function driesBeforeDew(problem: Problem, step: ProblemStep, wait: Wait, finish: number, over: number): boolean {
  const { beforeDew } = wait.needs;
  if (beforeDew === undefined || problem.zones.find(({ id }) => id === step.zone)?.inside) return true;
  const { finish: dry } = waitFinish(problem, { law: beforeDew.touchDry }, finish);
  for (let minute = finish; minute < over && (dry === null || minute < dry); minute++) {
    const hour = hourOf(problem, minute);
    if (!hour.sheltered && overDew_C(hour, false) < beforeDew.dewMargin_min_C) return false;
  }
  return true;
}

/** The job day whose work a minute is in, by its place in `problem.days` plus 1; 0 where no day has work then. */
export function dayOfMinutes(problem: Problem): Uint8Array {
  const day = new Uint8Array(problem.horizon);
  problem.days.forEach(({ from, to, setOut_min, clearUp_min, breaks }, index) => {
    for (let minute = from + setOut_min; minute < to - clearUp_min; minute++)
      if (!within(breaks, minute)) day[minute] = index + 1;
  });
  return day;
}

/** The minute from which all that a step uses is on hand; the horizon where some of it is not in sight. */
const onHandFrom = (problem: Problem, { stores }: ProblemStep) =>
  Math.max(0, ...stores.map((id) => problem.stores.find((store) => store.id === id)!.from ?? problem.horizon));

/** Minutes in which a step could be worked on by so many hands as it needs, set-ups and other work apart. */
export function workableForStep(problem: Problem, step: ProblemStep): Minutes {
  const inside = problem.zones.find((zone) => zone.id === step.zone)?.inside ?? false;
  const dayOf = dayOfMinutes(problem);
  const onHand = onHandFrom(problem, step);
  return minutesWhere(problem, (minute) => {
    if (minute < problem.now || minute < onHand) return false;
    if (step.held && !within([step.held], minute)) return false;
    const day = problem.days[dayOf[minute]! - 1];
    if (!day || !step.features.every((feature) => day.features.includes(feature))) return false;
    if (step.notAlone && problem.hands.filter(({ present }) => within(present, minute)).length < 2) return false;
    const enough = step.tools.every(({ tool, count }) =>
      problem.tools
        .find(({ id }) => id === tool)!
        .capacity.some((span) => span.from <= minute && minute < span.to && span.count >= count),
    );
    return enough && weatherSuits(step.needs, inside, problem, minute);
  });
}

/** Minutes in which a set-up change could be worked on, hands and other set-ups apart. */
export const workableForChange = (problem: Problem, change: SetUpChange): Minutes =>
  minutesWhere(problem, (minute) => minute >= problem.now && weatherSuits(change.needs, false, problem, minute));

/**
 * The starts from which work of so many minutes runs through suiting minutes of one day and one side of its
 * breaks.
 *
 * @param suits   suiting minutes
 * @param dayOf   as from `dayOfMinutes`
 * @param length_min  whole, ≥ 1
 */
export function startsFor(suits: Minutes, dayOf: Uint8Array, length_min: number): number[] {
  const starts: number[] = [];
  for (let start = 0; start < suits.length; start++) {
    const last = start + length_min;
    if (last > suits.length) break;
    let fits = dayOf[start] !== 0;
    for (let minute = start; fits && minute < last; minute++)
      fits = suits[minute] === 1 && dayOf[minute] === dayOf[start];
    if (fits) starts.push(start);
  }
  return starts;
}

/** The starts of a step of no minutes: it is bound by its day, place, stores and what it is held to, not by weather. */
export function startsOfNoLength(problem: Problem, step: ProblemStep): number[] {
  const starts = new Set<number>();
  for (const { from, to, setOut_min, clearUp_min, features } of problem.days) {
    if (!step.features.every((feature) => features.includes(feature))) continue;
    const first = Math.max(from + setOut_min, problem.now, onHandFrom(problem, step), step.held?.from ?? 0);
    const last = Math.min(to - clearUp_min, step.held?.to ?? problem.horizon);
    for (let start = first; start <= last; start++) starts.add(start);
  }
  return [...starts].sort((a, b) => a - b);
}

/** When a hand is there, in runs that do not touch. */
export const presenceOf = (problem: Problem, { present }: Problem['hands'][number]): MinuteSpan[] =>
  runsOf((minute) => within(present, minute), 0, problem.horizon);

/**
 * When a wait that starts at a minute is over, by adding up minute after minute; `finish` null: not by the horizon.
 * One after a step finished before minute 0 is behind it.
 */
export function waitFinish(
  problem: Problem,
  { law }: Pick<Wait, 'law'>,
  start: number,
): { readonly finish: number | null; readonly tooCold: boolean } {
  if (start < 0 || law.kind === 'never cures') return { finish: start, tooCold: false };
  if (law.kind === 'set time') {
    const finish = start + Math.ceil(law.minutes);
    return { finish: finish <= problem.horizon ? finish : null, tooCold: false };
  }
  let progress = 0;
  let tooCold = false;
  for (let minute = start; minute < problem.horizon; minute++) {
    const hour = hourOf(problem, minute);
    tooCold ||= belowMinimum(law, hour);
    progress += curePerMinute(law, hour);
    // one part in 10⁹ for rounding, as the law says
    if (progress >= 1 - 1e-9) return { finish: minute + 1, tooCold };
  }
  return { finish: null, tooCold };
}

/** The minutes of [from, to) that are true, as runs, in order. */
export function runsOf(isTrue: (minute: number) => boolean, from: number, to: number): MinuteSpan[] {
  const runs: { from: number; to: number }[] = [];
  for (let minute = from; minute < to; minute++) {
    if (!isTrue(minute)) continue;
    const last = runs.at(-1);
    if (last && last.to === minute) last.to = minute + 1;
    else runs.push({ from: minute, to: minute + 1 });
  }
  return runs;
}
