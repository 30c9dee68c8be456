import type { Minute } from '../problem.ts';
import type { Compiled, CompiledStep } from './compiled.ts';
import type { Placing } from './placing.ts';

/**
 * What can be said of each step as if it were alone: no plan starts it sooner. Where a step has no start at all its
 * unit is in no plan.
 */
export interface Alone {
  /** by step: no plan starts it before this minute; −1: no plan holds it */
  readonly earliest: Int32Array;
  /** by unit: whether some plan may hold it */
  readonly possible: readonly boolean[];
  /** by unit that is impossible of itself: the step that shows it; −1 where another unit it waits for is */
  readonly stuckAt: Int32Array;
}

/** Bounds from every step's own needs and from what it comes after. `placing` must be clear. */
export function boundsAlone(compiled: Compiled, placing: Placing): Alone {
  const { steps, units } = compiled;
  const earliest = new Int32Array(steps.length).fill(-1);
  const possible = new Array<boolean>(units.length).fill(true);
  const stuckAt = new Int32Array(units.length).fill(-1);
  const done = new Uint8Array(units.length);
  const visit = (unit: number) => {
    if (done[unit] === 1) return;
    done[unit] = 1;
    const { waitsFor, ring, open } = units[unit]!;
    for (const other of waitsFor) visit(other);
    if (ring !== null) {
      possible[unit] = false;
      stuckAt[unit] = ring[0]!;
      return;
    }
    if (waitsFor.some((other) => !possible[other])) possible[unit] = false;
    for (const index of open) {
      const step = steps[index]!;
      const { from, to } = windowAlone(compiled, step, earliest);
      const lasts = shortest(compiled, step);
      earliest[index] = from < 0 ? -1 : placing.earliestAlone(step, from, lasts, to);
      if (earliest[index]! >= 0) continue;
      possible[unit] = false;
      stuckAt[unit] = index;
      return;
    }
    if (unitIsLate(compiled, unit)) possible[unit] = false;
  };
  for (let unit = 0; unit < units.length; unit++) visit(unit);
  return { earliest, possible, stuckAt };
}

/** The least a step takes: a shared batch spares it the mixing where another open step mixes the same. */
export function shortest(compiled: Compiled, step: CompiledStep): Minute {
  const shares = compiled.steps.some(
    (other) => other.index !== step.index && other.mix === step.mix && other.fixed === null,
  );
  return step.mix >= 0 && shares ? step.minutes - step.mixing : step.minutes;
}

/** Starts that what it comes after leaves to a step; `from` −1: none. `to` is bound only by what has begun. */
export function windowAlone(
  compiled: Compiled,
  step: CompiledStep,
  earliest: Int32Array,
): { from: Minute; to: Minute } {
  let from = step.earliest;
  let to = compiled.horizon;
  for (const tie of step.before) {
    const before = compiled.steps[tie.before]!;
    const begun = before.fixed !== null;
    let finish: Minute;
    if (before.fixed !== null) finish = before.fixed.finish;
    else {
      // not yet bounded (another unit's, in a ring): says nothing
      if (earliest[tie.before]! < 0) continue;
      finish = earliest[tie.before]! + shortest(compiled, before);
    }
    let end = finish;
    if (tie.wait >= 0 && finish >= 0) {
      end = before.waits[tie.wait]!.cure.finish(finish);
      if (end < 0) return { from: -1, to };
    }
    from = Math.max(from, end + tie.least);
    if (begun && tie.greatest >= 0 && tie.abrade < 0) to = Math.min(to, end + tie.greatest);
  }
  return from > to ? { from: -1, to } : { from, to };
}

/** True where what is already done of a unit's jobs was, or its waits will be, over after the deadline. */
export function unitIsLate(compiled: Compiled, unit: number): boolean {
  return compiled.units[unit]!.jobs.some((job) => {
    const { deadline } = compiled.problem.jobs[job]!;
    if (deadline === null) return false;
    return compiled.steps.some((step) => {
      if (step.job !== job || step.fixed === null) return false;
      const { finish } = step.fixed;
      if (finish > deadline) return true;
      return step.waits.some((wait) => {
        const over = finish < 0 ? finish : wait.cure.finish(finish);
        return finish >= 0 && over < 0 ? true : over > deadline;
      });
    });
  });
}
