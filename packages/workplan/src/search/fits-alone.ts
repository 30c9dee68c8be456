import type { Obstacle } from '../plan.ts';
import type { Compiled, CompiledStep } from './compiled.ts';
import { inOrder } from './first-lists.ts';
import { Placing } from './placing.ts';
import { ListPlacing } from './step-list.ts';

type WithoutJob<O> = O extends Obstacle ? Omit<O, 'job'> : never;

/**
 * Why a unit of jobs that no single need rules out is left out: null where it does find a place with nothing but what
 * it waits for beside it, so that only the rest stands in its way; otherwise the first thing whose lifting gives it one.
 */
export function obstacleAlone(compiled: Compiled, unit: number): WithoutJob<Obstacle> | null {
  if (placedAlone(compiled, unit) !== null) return null;
  const compiledWith = (change: (step: CompiledStep) => CompiledStep, deadlines = true): Compiled => ({
    ...compiled,
    steps: compiled.steps.map(change),
    jobs: deadlines ? compiled.jobs : compiled.jobs.map((job) => ({ ...job, deadline: compiled.horizon })),
  });
  const { problem, horizon } = compiled;
  const open = compiled.units[unit]!.open.map((index) => compiled.steps[index]!);

  const dated = compiled.units[unit]!.jobs.find((job) => compiled.jobs[job]!.deadline < horizon);
  if (dated !== undefined) {
    const undated = compiledWith(
      (step) => ({ ...step, latestFinish: Math.min(horizon, step.source.held?.to ?? horizon) }),
      false,
    );
    const earliest = placedAlone(undated, unit);
    if (earliest !== null) return { kind: 'deadline', earliest, deadline: compiled.jobs[dated]!.deadline };
  }
  for (const step of open)
    for (const need of step.setUps) {
      const eased = compiledWith((other) =>
        other.index === step.index ? { ...other, setUps: other.setUps.filter((one) => one !== need) } : other,
      );
      if (placedAlone(eased, unit) === null) continue;
      const { id } = problem.aspects[need.aspect]!;
      const { states } = step.source.setUps.find(({ aspect }) => aspect === id)!;
      return { kind: 'set-up out of reach', step: step.source.id, aspect: id, states };
    }
  for (const step of open)
    for (const [at, wait] of step.waits.entries()) {
      const eased = (change: Partial<typeof wait>) =>
        compiledWith((other) =>
          other.index === step.index
            ? { ...other, waits: other.waits.map((one, n) => (n === at ? { ...one, ...change } : one)) }
            : other,
        );
      const named = { step: step.source.id, wait: wait.id };
      const needs: [string, Partial<typeof wait>][] = [
        ['dry', { dry: false }],
        ['air_min_C', { nextCold: null }],
        ['beforeDew', { beforeDew: null }],
        ['set-ups', { setUps: [] }],
        ['still', { still: [] }],
      ];
      for (const [need, change] of needs)
        if (placedAlone(eased(change), unit) !== null) return { kind: 'wait needs not kept', ...named, need };
    }
  for (const step of open)
    for (const tie of step.before) {
      if (tie.greatest < 0 || tie.abrade >= 0) continue;
      const eased = compiledWith((other) =>
        other.index === step.index
          ? { ...other, before: other.before.map((one) => (one === tie ? { ...one, greatest: -1 } : one)) }
          : other,
      );
      if (placedAlone(eased, unit) !== null)
        return { kind: 'window missed', step: step.source.id, before: problem.steps[tie.before]!.id };
    }
  return null;
}

/** When a unit is finished with only what it waits for beside it; null where no place was found. */
function placedAlone(compiled: Compiled, unit: number): number | null {
  const chosen = new Set<number>();
  const add = (one: number) => {
    if (chosen.has(one)) return;
    chosen.add(one);
    for (const other of compiled.units[one]!.waitsFor) add(other);
  };
  add(unit);
  const placing = new Placing(compiled);
  const lists = new ListPlacing(compiled, placing);
  const unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
  const steps = [...chosen].flatMap((one) => compiled.units[one]!.open);
  for (const backLate of [true, false]) {
    const list = {
      order: inOrder(compiled, steps, unitOf),
      notBefore: new Int32Array(compiled.steps.length),
      extra: new Float64Array(compiled.units.length),
      skips: new Uint8Array(compiled.units.length),
      backLate,
    };
    lists.place(list, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
    if (lists.out[unit] === 0)
      return Math.max(...compiled.units[unit]!.open.map((step) => placing.taken.finish[step]!));
  }
  return null;
}
