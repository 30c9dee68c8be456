import type { Minute } from '../problem.ts';
import { type Alone, shortest } from './alone.ts';
import type { Compiled, CompiledStep } from './compiled.ts';
import { leastSetUpMinutes } from './set-up-bound.ts';

/**
 * How much weight fits into the hours there are, whatever the plan: each step takes hand-minutes out of the minutes
 * it can lie in at all, and those of all steps that can lie nowhere else must fit in there. What changes of set-up
 * take is counted only as far as the units that must be in ask for it.
 */
interface Supply {
  readonly capacity: number;
  /** by unit: what it takes of it */
  readonly use: Float64Array;
}

export interface CapacityBound {
  /**
   * Weight that no plan with all needed units in it exceeds.
   *
   * @param reached  weight a plan does; where no plan can do more, exactly this comes back
   * @param nodes    how many cases may be looked at
   */
  atMost(reached: number, nodes: number): number;
}

/** @param needed  units that every plan in question holds */
export function capacityBound(compiled: Compiled, alone: Alone, needed: readonly number[]): CapacityBound {
  const units = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const isNeeded = new Set(needed);
  const supplies = suppliesOf(compiled, units, needed).filter(
    ({ capacity, use }) => units.reduce((sum, unit) => sum + use[unit]!, 0) > capacity,
  );
  const base = compiled.jobs.reduce((sum, job) => (job.unit < 0 ? sum + job.weight : sum), 0);
  const total = compiled.jobs.reduce(
    (sum, job) => (job.unit < 0 || alone.possible[job.unit] ? sum + job.weight : sum),
    0,
  );
  if (supplies.length === 0) return { atMost: () => total };
  const prices = bestPrices(compiled, units, isNeeded, supplies);
  const gain = new Float64Array(compiled.units.length);
  for (const unit of units)
    gain[unit] = supplies.reduce((left, { use }, s) => left - prices[s]! * use[unit]!, compiled.units[unit]!.weight);

  return {
    atMost(reached, nodes) {
      // the undecided are settled in order of how little the prices say about them
      const order = units.filter((unit) => !isNeeded.has(unit)).sort((a, b) => Math.abs(gain[a]!) - Math.abs(gain[b]!));
      const slack = 1e-9 * Math.max(1, total);
      /** the most that some choice of units comes to as far as these supplies tell */
      let reachable = reached;
      interface Case {
        readonly depth: number;
        readonly chosen: Int8Array;
        readonly most: number;
      }
      const judge = (depth: number, chosen: Int8Array): Case | null => {
        let most = base;
        for (const unit of units) {
          if (chosen[unit] === 1) most += compiled.units[unit]!.weight;
          else if (chosen[unit] === 0 && gain[unit]! > 0) most += gain[unit]!;
        }
        for (const [s, { capacity, use }] of supplies.entries()) {
          let left = capacity;
          for (const unit of units) if (chosen[unit] === 1) left -= use[unit]!;
          if (left < 0) return null;
          most += prices[s]! * left;
        }
        return most <= reachable + slack ? null : { depth, chosen, most };
      };
      const start = new Int8Array(compiled.units.length);
      for (const unit of needed) start[unit] = 1;
      const root = judge(0, start);
      if (root === null) return Math.min(total, reached);
      const open: Case[] = [root];
      for (let n = 0; n < nodes && open.length > 0; n++) {
        let top = 0;
        for (let at = 1; at < open.length; at++) if (open[at]!.most > open[top]!.most) top = at;
        const [one] = open.splice(top, 1);
        if (one!.most <= reachable + slack) break;
        let { depth } = one!;
        while (depth < order.length && one!.chosen[order[depth]!] !== 0) depth++;
        if (depth === order.length) {
          let weight = base;
          for (const unit of units) if (one!.chosen[unit] === 1) weight += compiled.units[unit]!.weight;
          if (weight > reachable + slack) reachable = weight;
          continue;
        }
        for (const choice of [1, -1]) {
          const chosen = Int8Array.from(one!.chosen);
          if (!settle(compiled, chosen, order[depth]!, choice)) continue;
          const next = judge(depth + 1, chosen);
          if (next !== null) open.push(next);
        }
      }
      const undecided = open.reduce((most, one) => Math.max(most, one.most), reachable);
      return undecided <= reachable + slack ? Math.min(total, reachable) : Math.min(total, undecided);
    },
  };
}

/** Puts a unit in (1) or out (−1) with what follows from it; false where that contradicts what is settled. */
function settle(compiled: Compiled, chosen: Int8Array, unit: number, choice: number): boolean {
  if (chosen[unit] === choice) return true;
  if (chosen[unit] !== 0) return false;
  chosen[unit] = choice;
  if (choice === 1) return compiled.units[unit]!.waitsFor.every((other) => settle(compiled, chosen, other, 1));
  return compiled.units.every((other, index) => !other.waitsFor.includes(unit) || settle(compiled, chosen, index, -1));
}

function suppliesOf(compiled: Compiled, units: readonly number[], needed: readonly number[]): Supply[] {
  const { stretches, absent, problem } = compiled;
  const minutes: Minute[] = stretches.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, n) => from + n));
  const steps = units.flatMap((unit) => compiled.units[unit]!.open.map((step) => compiled.steps[step]!));
  const free = absent.map((away) => Uint8Array.from(away));
  for (const step of compiled.steps)
    if (step.source.progress.kind === 'under way')
      for (const hand of step.fixed!.hands) free[hand]!.fill(1, Math.max(0, step.fixed!.start), step.fixed!.finish);

  // the places a step can lie in, as a row of marks over the minutes of work; equal rows are kept once
  const rows = new Map<string, Uint8Array>();
  const rowOf = steps.map((step) => {
    const row = placesOf(compiled, step, minutes);
    const key = row.join('');
    const known = rows.get(key);
    if (known === undefined) rows.set(key, row);
    return known ?? row;
  });
  const everywhere = new Uint8Array(minutes.length).fill(1);
  const supplies: Supply[] = [];
  const unitOf = (step: CompiledStep) => compiled.jobs[step.job]!.unit;
  const setUps = leastSetUpMinutes(compiled, needed);
  const kinds = [...rows.values()].slice(0, 60);
  const isWithin = new Map(
    [...rows.values()].map((row) => [row, kinds.map((kind) => row.every((mark, at) => mark === 0 || kind[at] === 1))]),
  );
  for (const [k, kind] of [...kinds, everywhere].entries()) {
    const whole = kind === everywhere;
    const inside = steps.filter((_, n) => whole || isWithin.get(rowOf[n]!)![k]!);
    for (const keeperOnly of [false, true]) {
      const use = new Float64Array(compiled.units.length);
      for (const step of inside)
        if (!keeperOnly || step.keeper) use[unitOf(step)]! += (keeperOnly ? 1 : step.hands) * shortest(compiled, step);
      let capacity = 0;
      for (const [hand, away] of free.entries())
        if (!keeperOnly || hand === 0)
          for (let at = 0; at < minutes.length; at++) if (kind[at] === 1 && away[minutes[at]!] === 0) capacity++;
      // every change of set-up keeps the keeper busy, in some minute of work
      supplies.push({ capacity: whole ? capacity - setUps : capacity, use });
    }
  }
  for (const index of problem.tools.keys()) {
    const use = new Float64Array(compiled.units.length);
    for (const step of steps)
      for (const need of step.tools)
        if (need.tool === index) use[unitOf(step)]! += need.count * shortest(compiled, step);
    const count = compiled.toolCount[index]!;
    supplies.push({ capacity: minutes.reduce((sum, minute) => sum + count[minute]!, 0), use });
  }
  return supplies;
}

/** 1 for each minute of work that some start of the step covers, by its own needs alone. */
function placesOf(compiled: Compiled, step: CompiledStep, minutes: readonly Minute[]): Uint8Array {
  const lasts = shortest(compiled, step);
  const row = new Uint8Array(minutes.length);
  if (lasts === 0) return row;
  let covered = -1;
  for (const [at, minute] of minutes.entries()) {
    if (minute >= step.earliest && step.run[minute]! >= lasts && minute + lasts <= step.latestFinish)
      covered = minute + lasts;
    if (minute < covered) row[at] = 1;
  }
  return row;
}

/** Prices for the supplies that make the sum of what is worth its price, and of the supplies, small. */
function bestPrices(
  compiled: Compiled,
  units: readonly number[],
  isNeeded: ReadonlySet<number>,
  supplies: readonly Supply[],
): Float64Array {
  let prices = new Float64Array(supplies.length);
  let best = Float64Array.from(prices);
  let least = Number.POSITIVE_INFINITY;
  const weights = units.map((unit) => compiled.units[unit]!.weight);
  let stride = 1;
  for (let round = 0; round < 300; round++) {
    let sum = 0;
    const slope = Float64Array.from(supplies, ({ capacity }) => capacity);
    for (const [n, unit] of units.entries()) {
      let gain = weights[n]!;
      for (let s = 0; s < supplies.length; s++) gain -= prices[s]! * supplies[s]!.use[unit]!;
      if (gain <= 0 && !isNeeded.has(unit)) continue;
      sum += gain;
      for (let s = 0; s < supplies.length; s++) slope[s]! -= supplies[s]!.use[unit]!;
    }
    for (let s = 0; s < supplies.length; s++) sum += prices[s]! * supplies[s]!.capacity;
    if (sum < least - 1e-9) {
      least = sum;
      best = Float64Array.from(prices);
    } else stride *= 0.97;
    const steep = slope.reduce((square, one) => square + one * one, 0);
    if (steep === 0) break;
    const move = (stride * 0.05 * Math.max(1, sum)) / steep;
    prices = prices.map((price, s) => Math.max(0, price - move * slope[s]!));
  }
  return best;
}
