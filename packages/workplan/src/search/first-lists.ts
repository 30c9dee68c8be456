import type { Plan } from '../plan.ts';
import type { Compiled } from './compiled.ts';
import type { StepList } from './step-list.ts';

/**
 * The lists a search begins with: needed jobs first, then by one rule each (most worth for its time, most worth, least
 * against the set-ups as they stand, soonest date, longest). The list of a plan at hand goes before them.
 */
export function firstLists(compiled: Compiled, possible: readonly number[], plan: Plan | null): StepList[] {
  const unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
  const minutes = (unit: number) =>
    compiled.units[unit]!.open.reduce((sum, step) => {
      const { minutes: lasts, hands } = compiled.steps[step]!;
      return sum + lasts * Math.max(1, hands);
    }, 1);
  const isNeeded = (unit: number) => (compiled.units[unit]!.missedWeight > 0 ? 0 : 1);
  const weight = (unit: number) => compiled.units[unit]!.weight;
  const due = (unit: number) => Math.min(...compiled.units[unit]!.jobs.map((job) => compiled.jobs[job]!.deadline));
  const against = (unit: number) =>
    compiled.units[unit]!.open.reduce(
      (sum, step) =>
        sum +
        compiled.steps[step]!.setUps.filter(
          ({ aspect, mask }) => (mask & (1 << compiled.aspects[aspect]!.initial)) === 0,
        ).length,
      0,
    );
  const listed = (key: (unit: number) => number, soon = false): StepList => ({
    order: inOrder(
      compiled,
      [...possible]
        .sort((a, b) => isNeeded(a) - isNeeded(b) || key(a) - key(b) || a - b)
        .flatMap((unit) => compiled.units[unit]!.open),
      unitOf,
    ),
    notBefore: new Int32Array(compiled.steps.length),
    extra: new Float64Array(compiled.units.length).fill(soon ? Number.POSITIVE_INFINITY : 0),
    skips: new Uint8Array(compiled.units.length),
    backLate: true,
  });
  const lists = [
    listed((unit) => -weight(unit) / minutes(unit)),
    listed((unit) => -weight(unit)),
    listed(against),
    listed(due),
    listed((unit) => -weight(unit) / minutes(unit), true),
    listed((unit) => -minutes(unit)),
  ];
  if (plan !== null) {
    const startOf = new Map(plan.steps.map(({ step, start }) => [step, start]));
    const when = (step: number) => startOf.get(compiled.problem.steps[step]!.id) ?? compiled.horizon;
    const steps = [...lists[0]!.order].sort((a, b) => when(a) - when(b));
    lists.unshift({ ...lists[0]!, order: inOrder(compiled, steps, unitOf) });
  }
  if (compiled.previous.some((start) => start >= 0)) {
    // each step no sooner than where it stood: what need not move then does not
    const when = (step: number) => (compiled.previous[step]! < 0 ? compiled.horizon : compiled.previous[step]!);
    const steps = [...lists[0]!.order].sort((a, b) => when(a) - when(b) || a - b);
    const notBefore = Int32Array.from(compiled.previous, (start) => Math.max(0, start));
    lists.splice(plan === null ? 0 : 1, 0, {
      ...lists.at(-1)!,
      order: inOrder(compiled, steps, unitOf),
      notBefore,
      extra: new Float64Array(compiled.units.length).fill(Number.POSITIVE_INFINITY),
    });
  }
  return lists;
}

/** The steps in the same order but that each comes after those it waits for. */
export function inOrder(compiled: Compiled, steps: readonly number[], unitOf: Int32Array): Int32Array {
  const listed = new Uint8Array(compiled.steps.length);
  for (const step of steps) listed[step] = 1;
  const order = new Int32Array(steps.length);
  let count = 0;
  const visit = (index: number) => {
    if (listed[index] !== 1) return;
    listed[index] = 2;
    for (const { before } of compiled.steps[index]!.before) if (unitOf[before]! >= 0) visit(before);
    order[count++] = index;
  };
  for (const step of steps) visit(step);
  return order;
}
