import { type Alone, shortest } from '../alone.ts';
import type { Compiled, CompiledStep } from '../compiled.ts';
import type { Pause } from './price-list.ts';
import type { WorkMinutes } from './work-minutes.ts';

/** Places that some steps can lie in at all, and what of a thing those steps take that can lie nowhere else. */
export interface Supply {
  /** 0 the keeper, 1 hands, from 2 on tools: the first of `SharedThings` */
  readonly thing: number;
  readonly within: Spans;
  readonly capacity: number;
  /** by unit: what it takes of it */
  readonly use: Float64Array;
}

/** Places from, up to, from, up to, … in order. */
type Spans = readonly number[];

/** What the sums of minutes alone say. */
export interface SupplyBound {
  /** no plan does more weight than this; and no plan that holds all that is needed */
  readonly weight: number;
  readonly weightWithNeeded: number;
  /** the prices behind it */
  readonly prices: readonly { readonly supply: Supply; readonly price: number }[];
}

/**
 * A bound on weight from the sums of minutes alone: the steps that can lie only within some hours take no more of the
 * keeper, the hands and the tools than those hours have. It is had soon, and the prices behind it are good ones to
 * begin with. Yields now and then.
 *
 * @param needed  units that every plan in question holds
 */
export function* supplyBound(
  compiled: Compiled,
  alone: Alone,
  axis: WorkMinutes,
  needed: readonly number[],
): Generator<Pause, SupplyBound, undefined> {
  const units = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const supplies = yield* suppliesOf(compiled, axis, units);
  return yield* bestPrices(
    compiled,
    units,
    new Set(needed),
    supplies.filter(({ capacity, use }) => units.reduce((sum, unit) => sum + use[unit]!, 0) > capacity),
  );
}

function* suppliesOf(
  compiled: Compiled,
  axis: WorkMinutes,
  units: readonly number[],
): Generator<Pause, Supply[], undefined> {
  const steps = units.flatMap((unit) => compiled.units[unit]!.open.map((step) => compiled.steps[step]!));
  const known = new Map<string, Spans>();
  const spansOf: Spans[] = [];
  for (const [n, step] of steps.entries()) {
    const spans = placesOf(compiled, axis, step);
    const key = spans.join();
    if (!known.has(key)) known.set(key, spans);
    spansOf.push(known.get(key)!);
    if (n % 100 === 99) yield 'between';
  }
  const everywhere = axis.stretches.flatMap(({ first, last }) => [first, last]);
  const unitOf = (step: CompiledStep) => compiled.jobs[step.job]!.unit;
  const supplies: Supply[] = [];
  for (const [k, kind] of [...[...known.values()].slice(0, 60), everywhere].entries()) {
    const isWithin = new Map<Spans, boolean>();
    const inside = steps.filter((_, n) => {
      const spans = spansOf[n]!;
      let within = isWithin.get(spans);
      if (within === undefined) {
        within = kind === everywhere || liesWithin(spans, kind);
        isWithin.set(spans, within);
      }
      return within;
    });
    for (const keeperOnly of [true, false]) {
      const use = new Float64Array(compiled.units.length);
      for (const step of inside)
        if (!keeperOnly || step.keeper) use[unitOf(step)]! += (keeperOnly ? 1 : step.hands) * shortest(compiled, step);
      const free = keeperOnly ? axis.keeperFree : axis.handsFree;
      let capacity = 0;
      for (let n = 0; n < kind.length; n += 2)
        for (let place = kind[n]!; place < kind[n + 1]!; place++) capacity += free[place]!;
      supplies.push({ thing: keeperOnly ? 0 : 1, within: kind, capacity, use });
    }
    if (k % 10 === 9) yield 'between';
  }
  for (const tool of compiled.problem.tools.keys()) {
    const use = new Float64Array(compiled.units.length);
    for (const step of steps)
      for (const need of step.tools)
        if (need.tool === tool) use[unitOf(step)]! += need.count * shortest(compiled, step);
    let capacity = 0;
    for (let place = 0; place < axis.count; place++)
      if (axis.part[place]! >= 0) capacity += compiled.toolCount[tool]![axis.minute[place]!]!;
    supplies.push({ thing: 2 + tool, within: everywhere, capacity, use });
  }
  return supplies;
}

/** The places that some start of the step covers, by its own needs alone. */
function placesOf(compiled: Compiled, axis: WorkMinutes, step: CompiledStep): Spans {
  const lasts = shortest(compiled, step);
  const spans: number[] = [];
  if (lasts === 0) return spans;
  for (const { first, last } of axis.stretches)
    for (let place = first; place + lasts <= last; place++) {
      const minute = axis.minute[place]!;
      if (minute < step.earliest || step.run[minute]! < lasts || minute + lasts > step.latestFinish) continue;
      if (spans.length > 0 && place <= spans.at(-1)!) spans[spans.length - 1] = place + lasts;
      else spans.push(place, place + lasts);
    }
  return spans;
}

function liesWithin(inner: Spans, outer: Spans): boolean {
  let at = 0;
  for (let n = 0; n < inner.length; n += 2) {
    while (at < outer.length && outer[at + 1]! < inner[n + 1]!) at += 2;
    if (at >= outer.length || outer[at]! > inner[n]!) return false;
  }
  return true;
}

/**
 * Prices for the supplies that make the sum of what is worth its price, and of the supplies, small. Whatever they are,
 * no plan does more weight than that sum.
 */
function* bestPrices(
  compiled: Compiled,
  units: readonly number[],
  isNeeded: ReadonlySet<number>,
  supplies: readonly Supply[],
): Generator<Pause, SupplyBound, undefined> {
  const base = compiled.jobs.reduce((sum, job) => (job.unit < 0 ? sum + job.weight : sum), 0);
  const all = units.reduce((sum, unit) => sum + compiled.units[unit]!.weight, base);
  let weight = all;
  let prices = new Float64Array(supplies.length);
  let best = Float64Array.from(prices);
  let least = Number.POSITIVE_INFINITY;
  let stride = 1;
  const roundsInASlice = Math.max(1, Math.floor(600_000 / (1 + units.length * supplies.length)));
  for (let round = 0; round < 300 && supplies.length > 0; round++) {
    let sum = base;
    // what must be in though it is not worth its price
    let forced = 0;
    const slope = Float64Array.from(supplies, ({ capacity }) => capacity);
    for (const unit of units) {
      let gain = compiled.units[unit]!.weight;
      for (let s = 0; s < supplies.length; s++) gain -= prices[s]! * supplies[s]!.use[unit]!;
      if (gain <= 0 && !isNeeded.has(unit)) continue;
      sum += gain;
      forced += Math.min(0, gain);
      for (let s = 0; s < supplies.length; s++) slope[s]! -= supplies[s]!.use[unit]!;
    }
    for (let s = 0; s < supplies.length; s++) sum += prices[s]! * supplies[s]!.capacity;
    weight = Math.min(weight, sum - forced);
    if (sum < least - 1e-9) {
      least = sum;
      best = Float64Array.from(prices);
    } else stride *= 0.97;
    const steep = slope.reduce((square, one) => square + one * one, 0);
    if (steep === 0) break;
    const move = (stride * 0.05 * Math.max(1, sum)) / steep;
    prices = prices.map((price, s) => Math.max(0, price - move * slope[s]!));
    if (round % roundsInASlice === 0) yield 'between';
  }
  return {
    weight,
    weightWithNeeded: Math.min(all, least),
    prices: supplies.map((supply, s) => ({ supply, price: best[s]! })),
  };
}
