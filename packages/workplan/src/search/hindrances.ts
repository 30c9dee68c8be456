import type { Minute, ProblemDay } from '../problem.ts';
import { type CompiledStep, type CompiledWait, dewNear } from './compiled.ts';

/**
 * By zone, what hangs in the air there (dust, or something wet that dust would settle on): three numbers each, the step
 * it comes from, from when and to when.
 */
export type Air = readonly number[][];

/**
 * The end of something in the air that reaches a step or its wait in a span of time; −1: nothing does.
 *
 * @param near  the zones whose air reaches it
 */
export function hinderedByAir(
  air: Air,
  near: readonly number[],
  { index }: CompiledStep,
  from: Minute,
  to: Minute,
): Minute {
  if (to <= from) return -1;
  for (let n = 0; n < near.length; n++) {
    const here = air[near[n]!]!;
    for (let k = 0; k < here.length; k += 3) {
      const end = here[k + 2]!;
      if (here[k] === index || end <= from || here[k + 1]! >= to || here[k + 1]! >= end) continue;
      return end;
    }
  }
  return -1;
}

/** A later start to try where tools or room are taken; −1: they are free. */
export function hinderedByThings(
  { tools, zone, hands }: CompiledStep,
  toolLeft: readonly Int16Array[],
  roomLeft: readonly Int16Array[],
  start: Minute,
  finish: Minute,
): Minute {
  for (let k = 0; k < tools.length; k++) {
    const { tool, count } = tools[k]!;
    const left = toolLeft[tool]!;
    for (let minute = finish - 1; minute >= start; minute--) if (left[minute]! < count) return minute + 1;
  }
  if (zone >= 0 && hands > 0) {
    const left = roomLeft[zone]!;
    for (let minute = finish - 1; minute >= start; minute--) if (left[minute]! < hands) return minute + 1;
  }
  return -1;
}

/** When a wait could begin at the soonest for which it is too cold, or dew too near, in a span; −1: it is not. */
export function hinderedByWeather(wait: CompiledWait, begins: Minute, over: Minute): Minute {
  if (wait.nextCold !== null && wait.nextCold[begins]! < over) return wait.nextCold[begins]! + 1;
  const near = dewNear(wait, begins, over);
  return near < 0 ? -1 : near + 1;
}

/** Whether the place of a day has what a step needs: it may ask for no minutes of it. */
export function isPlaceFor({ source }: CompiledStep, { features }: ProblemDay): boolean {
  return source.features.every((feature) => features.includes(feature));
}
