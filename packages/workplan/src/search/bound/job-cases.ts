import type { Compiled } from '../compiled.ts';
import type { Pause, PriceList } from './price-list.ts';

/** What is to be as great as can be: the sum of the worth of the units in a plan. */
export interface Goal {
  /** by unit. ≥ 0 */
  readonly worth: Float64Array;
  /** what every plan is worth besides */
  readonly base: number;
  /** units that every plan in question holds */
  readonly needed: readonly number[];
  /** every plan in question holds units whose `each` come to at least this; null: not asked */
  readonly atLeast: { readonly each: Float64Array; readonly sum: number } | null;
}

/** Units in (1), out (−1) or open (0), and the most that plans of this case come to as far as is known. */
interface Case {
  readonly chosen: Int8Array;
  readonly prices: Float64Array;
  /** price of the worth asked for at least */
  asked: number;
  most: number;
}

/**
 * The most that the units in a plan can be worth: cases by which units are in and which are out, each with prices of
 * its own. A case is closed when no plan in it can be worth more than one at hand.
 */
export class JobCases {
  private readonly compiled: Compiled;
  private readonly list: PriceList;
  private readonly goal: Goal;
  private readonly open: Case[] = [];
  /** cases with nothing left to choose that prices cannot close */
  readonly stuck: Case[] = [];
  /** worth of a plan at hand: cases that cannot be worth more are closed */
  reached = 0;
  /** no plan in question is worth more than this, or than `reached` */
  bound = Number.POSITIVE_INFINITY;
  rounds = 0;
  private readonly slope: Float64Array;
  private readonly move: Float64Array;
  /** by unit: how often of late its hours were worth taking */
  private readonly often: Float64Array;
  private readonly slack: number;

  constructor(compiled: Compiled, list: PriceList, goal: Goal, prices: Float64Array) {
    this.compiled = compiled;
    this.list = list;
    this.goal = goal;
    this.slope = new Float64Array(list.prices.length);
    this.move = new Float64Array(list.prices.length);
    this.often = new Float64Array(compiled.units.length);
    const chosen = new Int8Array(compiled.units.length).fill(-1);
    for (const unit of list.units) chosen[unit] = 0;
    const sound = goal.needed.every((unit) => this.settle(chosen, unit, 1));
    const most = list.units.reduce((sum, unit) => sum + goal.worth[unit]!, goal.base);
    this.slack = 1e-9 * Math.max(1, most);
    this.bound = most;
    if (sound) this.open.push({ chosen, prices: Float64Array.from(prices), asked: 0, most });
  }

  /** Looks at cases one after another; yields often, 'between' after each round of prices. */
  *work(): Generator<Pause, void, undefined> {
    for (let first = true; ; first = false) {
      this.tell(Number.NEGATIVE_INFINITY);
      const at = this.open.reduce((best, one, n) => (one.most > this.open[best]!.most ? n : best), 0);
      const [one] = this.open.splice(at, 1);
      if (one === undefined) return;
      if (one.most <= this.reached + this.slack) continue;
      yield* this.lookAt(one, first);
    }
  }

  private tell(inHand: number): void {
    let bound = Math.max(this.reached, inHand);
    for (const { most } of this.open) bound = Math.max(bound, most);
    for (const { most } of this.stuck) bound = Math.max(bound, most);
    this.bound = bound <= this.reached + this.slack ? this.reached : Math.min(this.bound, bound);
  }

  private *lookAt(one: Case, first: boolean): Generator<Pause, void, undefined> {
    const { list, goal, slope, move, often } = this;
    const { chosen } = one;
    const worth = new Float64Array(chosen.length);
    let prices = Float64Array.from(one.prices);
    let { asked } = one;
    let stride = first ? 1 : 0.3;
    let since = 0;
    let best = Number.POSITIVE_INFINITY;
    move.fill(0);
    let moveAsked = 0;
    const rounds = first ? 240 : chosen.includes(0) ? 24 : 60;
    for (let round = 0; round < rounds; round++) {
      for (const unit of list.units) {
        const own = goal.worth[unit]! + (goal.atLeast === null ? 0 : asked * goal.atLeast.each[unit]!);
        worth[unit] =
          chosen[unit] === 1 ? Number.POSITIVE_INFINITY : chosen[unit] === 0 ? own : Number.NEGATIVE_INFINITY;
      }
      list.prices = prices;
      const row = yield* list.row(worth, slope);
      this.rounds++;
      let most = goal.base + row.whole;
      let slopeAsked = 0;
      if (goal.atLeast !== null) {
        most -= asked * goal.atLeast.sum;
        slopeAsked = -goal.atLeast.sum;
      }
      let impossible = false;
      for (const unit of list.units) {
        if (chosen[unit] === -1) continue;
        const each = goal.atLeast?.each[unit] ?? 0;
        const gain = goal.worth[unit]! + asked * each - row.least[unit]!;
        if (chosen[unit] === 1 && gain === Number.NEGATIVE_INFINITY) impossible = true;
        if (chosen[unit] === 1 || gain > 0) {
          most += gain;
          slopeAsked += each;
        }
        often[unit] = 0.9 * often[unit]! + (chosen[unit] === 1 || gain > 0 ? 0.1 : 0);
      }
      if (impossible) return;
      if (most < best) {
        if (most < best - 1e-4 * Math.abs(best)) since = 0;
        best = most;
        one.prices.set(prices);
        one.asked = asked;
      } else since++;
      one.most = Math.min(one.most, most);
      if (one.most <= this.reached + this.slack) return;
      this.tell(one.most);
      if (!this.fixed(one, row.least, asked, most)) return;
      if (since > 15) {
        stride *= 0.7;
        since = 0;
        if (stride < 0.01) break;
      }
      let square = 0;
      for (let n = 0; n < move.length; n++) {
        const way = slope[n]! + 0.6 * move[n]!;
        move[n] = way;
        if (prices[n]! > 0 || way < 0) square += way * way;
      }
      moveAsked = slopeAsked + 0.6 * moveAsked;
      if (goal.atLeast !== null && (asked > 0 || moveAsked < 0)) square += moveAsked * moveAsked;
      if (square === 0) break;
      const step = (stride * Math.max(most - this.reached, 1e-3 * Math.abs(most))) / square;
      const next = new Float64Array(prices.length);
      for (let n = 0; n < next.length; n++) next[n] = Math.max(0, prices[n]! - step * move[n]!);
      prices = next;
      if (goal.atLeast !== null) asked = Math.max(0, asked - step * moveAsked);
      yield 'between';
    }
    this.branch(one);
  }

  /** Units that no plan of the case worth more than `reached` can hold, or do without, are settled; false: no plan is. */
  private fixed(one: Case, least: Float64Array, asked: number, most: number): boolean {
    const { goal, list } = this;
    for (const unit of list.units) {
      if (one.chosen[unit] !== 0) continue;
      const gain = goal.worth[unit]! + asked * (goal.atLeast?.each[unit] ?? 0) - least[unit]!;
      if (gain > 0 && most - gain <= this.reached + this.slack && !this.settle(one.chosen, unit, 1)) return false;
      if (gain < 0 && most + gain <= this.reached + this.slack && !this.settle(one.chosen, unit, -1)) return false;
    }
    return true;
  }

  private branch(one: Case): void {
    const { list, goal, often } = this;
    let pick = -1;
    let nearest = Number.POSITIVE_INFINITY;
    for (const unit of list.units) {
      if (one.chosen[unit] !== 0) continue;
      // the one that is taken about as often as not, and matters
      const doubt = Math.abs(often[unit]! - 0.5) - 0.02 * Math.min(10, goal.worth[unit]!);
      if (doubt < nearest) {
        nearest = doubt;
        pick = unit;
      }
    }
    if (pick < 0) {
      const sum = goal.base + this.sumOf(one, goal.worth, false);
      one.most = Math.min(one.most, sum);
      if (one.most > this.reached + this.slack) this.stuck.push(one);
      return;
    }
    for (const choice of [1, -1]) {
      const chosen = Int8Array.from(one.chosen);
      if (!this.settle(chosen, pick, choice)) continue;
      const next: Case = { ...one, chosen, prices: Float64Array.from(one.prices) };
      next.most = Math.min(next.most, goal.base + this.sumOf(next, goal.worth, true));
      if (goal.atLeast !== null && this.sumOf(next, goal.atLeast.each, true) < goal.atLeast.sum - this.slack) continue;
      if (next.most > this.reached + this.slack) this.open.push(next);
    }
  }

  /** what the units that are in come to, and with `open` those that may yet be */
  private sumOf({ chosen }: Case, each: Float64Array, open: boolean): number {
    let sum = 0;
    for (const unit of this.list.units) if (chosen[unit] === 1 || (open && chosen[unit] === 0)) sum += each[unit]!;
    return sum;
  }

  /** Puts a unit in (1) or out (−1) with what follows from it; false where that contradicts what is settled. */
  private settle(chosen: Int8Array, unit: number, choice: number): boolean {
    if (chosen[unit] === choice) return true;
    if (chosen[unit] !== 0) return false;
    const { units } = this.compiled;
    chosen[unit] = choice;
    if (choice === 1) return units[unit]!.waitsFor.every((other) => this.settle(chosen, other, 1));
    return units.every((other, index) => !other.waitsFor.includes(unit) || this.settle(chosen, index, -1));
  }
}
