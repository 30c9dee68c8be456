import type { Minute } from '../problem.ts';
import type { Compiled, CompiledAspect } from './compiled.ts';

/**
 * A bound from below on set-up minutes of any plan that holds all of some units: each aspect, from how it stands
 * now, must at some time stand as each of their steps and waits asks. Times, order and the ends of days are left out
 * of account, so the bound is valid and may be low.
 */
export function leastSetUpMinutes(compiled: Compiled, units: readonly number[]): Minute {
  let sum = 0;
  for (const aspect of compiled.aspects) {
    const masks = new Set<number>();
    for (const unit of units)
      for (const index of compiled.units[unit]!.open) {
        const step = compiled.steps[index]!;
        if (step.minutes - step.mixing > 0)
          for (const need of step.setUps) if (need.aspect === aspect.index) masks.add(need.mask);
      }
    sum += leastTour(aspect, [...masks]);
  }
  return sum;
}

/** Least minutes of changes from the initial state so that each mask has had one of its states. */
function leastTour(aspect: CompiledAspect, masks: readonly number[]): Minute {
  const asked = masks.filter((mask) => (mask & (1 << aspect.initial)) === 0);
  if (asked.length === 0) return 0;
  // Twelve different needs of one aspect are more than any boat has; the bound stays valid without the rest.
  const kept = asked.slice(0, 12);
  const full = (1 << kept.length) - 1;
  const met = Array.from({ length: aspect.states }, (_, state) =>
    kept.reduce((bits, mask, at) => ((mask & (1 << state)) !== 0 ? bits | (1 << at) : bits), 0),
  );
  const best = new Map<number, number>();
  const queue: { state: number; had: number; minutes: number }[] = [{ state: aspect.initial, had: 0, minutes: 0 }];
  while (queue.length > 0) {
    queue.sort((a, b) => a.minutes - b.minutes);
    const { state, had, minutes } = queue.shift()!;
    if (had === full) return minutes;
    const key = had * aspect.states + state;
    if ((best.get(key) ?? Number.POSITIVE_INFINITY) <= minutes) continue;
    best.set(key, minutes);
    for (const change of aspect.changes)
      if (change.from === state)
        queue.push({ state: change.to, had: had | met[change.to]!, minutes: minutes + change.minutes });
  }
  return 0;
}
