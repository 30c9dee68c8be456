import { cureFinish } from '#materials';
import type { BeforeDew, Minute, PlanHour, Wait } from './problem.ts';

/**
 * When a wait that starts as its step finishes is over.
 *
 * A step that was finished before minute 0 has its waits behind it: whoever makes the problem starts it early
 * enough that no wait still running began before minute 0.
 *
 * @param stepFinish  whole minute
 * @returns           `finish`, null when it is not over by the end of `hours`; `tooCold` when it met an hour below
 *                    the least temperature of its product
 */
export function waitAfter(
  wait: Wait,
  stepFinish: Minute,
  hours: readonly PlanHour[],
): { readonly finish: Minute | null; readonly tooCold: boolean } {
  if (stepFinish < 0) return { finish: stepFinish, tooCold: false };
  return cureFinish(wait.law, hours, stepFinish);
}

/** When a coat is dry to the touch: its wait may be over sooner, and then it is. @param over end of its wait */
export function touchDryAfter(
  { touchDry }: BeforeDew,
  stepFinish: Minute,
  over: Minute,
  hours: readonly PlanHour[],
): Minute {
  if (stepFinish < 0) return over;
  return Math.min(over, cureFinish(touchDry, hours, stepFinish).finish ?? over);
}
