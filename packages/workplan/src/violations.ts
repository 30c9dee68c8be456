/**
 * Every rule of the plan problem, judged on a finished plan and apart from any search. A plan is good to leave the
 * package when this finds nothing.
 *
 * `rules.ts` names the rules; here stands what they mean where `problem.ts` leaves room.
 *
 * Time
 * - Spans are half-open. A step of no minutes shares no minute with anything: it breaks no rule but those on its
 *   start (now, job day, lags, stores, held, deadline, place).
 * - A step takes `minutes`, less `mixing_min` where it shares a batch, plus `abrade_min`. Abrading comes first,
 *   then the mixing, then the rest.
 * - Open work (a step, a set-up change) starts at or after `now`, within one job day's
 *   [from + setOut, to − clearUp], off its breaks, unbroken.
 *
 * What is done or under way
 * - It stands in `plan.steps` with the times of its progress (under way: until `expectedFinish`), `day` null,
 *   `batchOf` null, `abrade_min` 0; hands as in its progress, none where done. Its waits stand in `plan.waits`.
 * - It needs no day, weather, presence, stores or order any more. Under way it goes on holding its hands, tools,
 *   room in its zone, set-ups and dust until it finishes.
 * - Nothing is held against a plan that it cannot help. A set-up need of a step or wait begun before now counts,
 *   from now on, if the aspect is in one of its states at `now`; a wait begun before now must stay dry, from now
 *   on, if some aspect shelters it at `now`; its `air_min_C` does not count; its `still` does. Overuse, or dust on
 *   wet, among things begun before now alone does not count.
 * - So the plan that leaves out every job with an open step, and changes nothing, breaks no rule.
 *
 * Jobs
 * - A job is in the plan when all its open steps are. `leftOut` names, in the problem's order, the jobs with an
 *   open step that are not. A job begun but not finished may be left out; what is begun of it stands.
 * - A deadline binds a job in the plan that has an open step: all its steps and waits, those begun too.
 *
 * Hands
 * - Exactly `hands` different ones, each there throughout and at nothing else, the keeper among them where asked
 *   and at every set-up change. 'Not alone': at every minute of the step at least two hands are there, busy or not.
 * - Room in a zone counts the hands busy in it by steps; a step without hands takes none, a set-up change neither.
 *
 * Weather
 * - Conditions hold for every clock hour the work runs through, in part or whole. Rain does not reach work in an
 *   hour marked `sheltered` or in a zone that is inside. A cover does not shelter steps, only waits. A set-up change
 *   is outside. Daylight: within the daylight spans.
 *
 * Waits
 * - A wait starts the minute its step finishes and ends as `waitAfter` says, to the minute. One that is not over by
 *   the horizon is not allowed after an open step; after one begun before, it is listed with the horizon as its
 *   finish and nothing may come after it.
 * - 'Dry': at every minute of a rainy hour that is not sheltered, outside, some aspect stands in a state that
 *   shelters (not necessarily the same one all along; none while it is being changed).
 *
 * Set-ups
 * - An aspect stands in `initial` until its first change, then in the `to` of the last finished. While it is being
 *   changed it is in no state: no need of it holds. A step, wait or change needs the state in every minute of it.
 * - `endsIn` binds a day with an open step or a change in it, at `day.to`. A day the plan leaves empty is not held
 *   to it.
 *
 * Order
 * - `least_min` and `greatest_min` run from the end of `before`, or of its wait, to the start of `after` (the start
 *   of its abrading, where it has any). Where several recoat windows of one step are past, it takes the longest of
 *   their abradings, once. Only open steps are judged.
 * - A batch is shared with an open step of the plan that uses the same mix and mixes its own. It is mixed
 *   `abrade_min + mixing_min` after that step's start; the sharing step starts no sooner, and is finished within the
 *   pot life from then. The step that mixes is not bound by the pot life.
 * - Dust: a dusty step, or the abrading minutes of any step, shares no minute with a step marked `wet` or a wait
 *   marked `wet` of another step in the same zone, or in one near it on either side's list. A wait marked `wet` counts
 *   whether or not its step is. A wait is where its step is. Without a zone: no relation.
 */
import type { Plan } from './plan.ts';
import type { Problem } from './problem.ts';
import { handsOfWork, withinDays } from './rules/days-and-hands.ts';
import { layOut, type Report } from './rules/laid-out.ts';
import { batches, dustAndWet, heldAndDeadlines, orderOfSteps } from './rules/order.ts';
import { changesOfSetUps, endsOfDays, setUpsOfSteps } from './rules/set-ups.ts';
import { needsOfWaits, timesOfWaits } from './rules/waits.ts';
import { thingsInUse, weatherOfWork } from './rules/weather-and-things.ts';
import { alreadyBegun, soundParts, timesOfSteps, wholeJobs } from './rules/what-stands.ts';
import type { Violation } from './rules.ts';

/**
 * All breaches of the rules in a plan, in the order of the rules' files; empty when it keeps them all.
 *
 * @param plan     any plan, however wrong: unknown names and odd figures are reported, never thrown on
 * @param problem  a problem that `checkProblem` finds sound
 */
export function violations(plan: Plan, problem: Problem): Violation[] {
  const found: Violation[] = [];
  const report: Report = (rule, what, where, minute) => {
    found.push({ rule, what, where, minute: minute ?? null });
  };
  const sound = soundParts(plan, problem, report);
  const laid = layOut(plan, problem, sound);
  wholeJobs(laid, report);
  alreadyBegun(laid, report, sound);
  timesOfSteps(laid, report);
  withinDays(laid, report);
  handsOfWork(laid, report);
  weatherOfWork(laid, report);
  thingsInUse(laid, report);
  heldAndDeadlines(laid, report);
  orderOfSteps(laid, report);
  batches(laid, report);
  dustAndWet(laid, report);
  timesOfWaits(laid, report);
  needsOfWaits(laid, report);
  setUpsOfSteps(laid, report);
  changesOfSetUps(laid, report);
  endsOfDays(laid, report);
  return found;
}
