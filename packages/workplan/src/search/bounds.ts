import type { Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import type { Alone } from './alone.ts';
import { type CapacityBound, capacityBound } from './capacity-bound.ts';
import type { Compiled } from './compiled.ts';
import { leastSetUpMinutes } from './set-up-bound.ts';

/** What no plan can better, in the order of worth: each bound holds for plans as good as can be in those before it. */
export class Bounds {
  /** least weight of needed jobs left out */
  readonly missed: number;
  /** weight of all jobs that are not known to be impossible */
  private readonly total: number;
  private readonly compiled: Compiled;
  private readonly alone: Alone;
  private readonly possible: readonly number[];
  private readonly needed: readonly number[];
  private readonly capacity = new Map<boolean, CapacityBound>();
  /** the closer look taken last */
  private closer: { readonly missed: number; readonly weight: number; readonly bound: number } | null = null;
  private readonly ofAll: { readonly setUp_min: Minute; readonly lastFinish: Minute };
  private readonly ofNeeded: { readonly setUp_min: Minute; readonly lastFinish: Minute };

  constructor(compiled: Compiled, alone: Alone, possible: readonly number[]) {
    this.compiled = compiled;
    this.alone = alone;
    this.possible = possible;
    // in the order of the jobs, as `worthOf` adds, so that equal sets of jobs have equal sums
    let [missed, total] = [0, 0];
    for (const job of compiled.jobs) {
      if (job.unit < 0 || alone.possible[job.unit]) total += job.weight;
      else if (job.needed) missed += job.weight;
    }
    this.missed = missed;
    this.total = total;
    const needed = new Set<number>();
    const add = (unit: number) => {
      if (needed.has(unit)) return;
      needed.add(unit);
      for (const other of compiled.units[unit]!.waitsFor) add(other);
    };
    for (const unit of possible) if (compiled.units[unit]!.missedWeight > 0) add(unit);
    this.needed = [...needed];
    this.ofAll = this.boundsWith(possible);
    this.ofNeeded = this.boundsWith(this.needed);
  }

  /** Weight that no plan exceeds that misses as little as one of this worth. */
  weightFor(worth: Worth | null): number {
    const { closer } = this;
    if (worth === null || closer === null) return this.total;
    const holds = closer.missed >= worth.missed && closer.weight <= worth.weight;
    return holds ? Math.max(closer.bound, worth.weight) : this.total;
  }

  /** Works out a closer bound on the weight of plans that miss as little as one of this worth. */
  lookCloser(worth: Worth, nodes: number): void {
    if (worth.missed === this.missed && worth.weight === this.total) return;
    // a plan that misses no more than can be helped has every needed job in it
    const settled = worth.missed === this.missed;
    let capacity = this.capacity.get(settled);
    if (capacity === undefined) {
      capacity = capacityBound(this.compiled, this.alone, settled ? this.needed : []);
      this.capacity.set(settled, capacity);
    }
    this.closer = { missed: worth.missed, weight: worth.weight, bound: capacity.atMost(worth.weight, nodes) };
  }

  /** Nothing misses less, does more weight, or does the same with less set-up changing. */
  isProved(worth: Worth): boolean {
    return (
      worth.missed === this.missed &&
      worth.weight === this.weightFor(worth) &&
      worth.setUp_min <= this.restOf(worth).setUp_min
    );
  }

  /** Nothing as good in all that goes before finishes sooner. */
  isSoonest(worth: Worth): boolean {
    return worth.lastFinish <= this.restOf(worth).lastFinish;
  }

  private restOf(worth: Worth) {
    return worth.weight === this.total ? this.ofAll : this.ofNeeded;
  }

  private boundsWith(units: readonly number[]) {
    let lastFinish = 0;
    for (const unit of units)
      for (const step of this.compiled.units[unit]!.open) {
        const { minutes, mixing } = this.compiled.steps[step]!;
        lastFinish = Math.max(lastFinish, this.alone.earliest[step]! + minutes - mixing);
      }
    return { setUp_min: leastSetUpMinutes(this.compiled, units), lastFinish };
  }
}
