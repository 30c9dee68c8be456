import type { Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import { BatchPartners } from './batch-partners.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { KeptSteps, type Lay, layOf, stepsInOrder } from './kept-steps.ts';
import type { Placing } from './placing.ts';
import { UnitPlacing } from './unit-placing.ts';
import { worthPlaced } from './written-plan.ts';

/** Ways of putting back that are tried for one taking out. */
const triesEach = 3;

/**
 * Looks for a better plan by taking a few units out of the one in hand, leaving the rest where it lies, and putting
 * them and some that were left out back in another order. A little worse is taken now and then, less and less.
 */
export class TakeOutSearch {
  readonly placing: Placing;
  private readonly compiled: Compiled;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  private readonly kept: KeptSteps;
  private readonly units: UnitPlacing;
  private readonly partners: BatchPartners;
  private readonly unitOf: Int32Array;
  /** by unit: hand-minutes it takes, at least 1 */
  private readonly minutes: Float64Array;
  private readonly meanWeight: number;
  private readonly fixedCost: number;
  /** by step: its start in the plan before, 0 where that has none; null: there is no plan before */
  private readonly before: Int32Array | null;
  private lay: Lay['steps'] = [];
  /** the plan in hand; null before the first start */
  inHand: Lay | null = null;
  private order: readonly number[] = [];
  private cost = Number.POSITIVE_INFINITY;
  /** by unit: 1 where the plan in hand leaves it out */
  private readonly left: Uint8Array;
  /** the plan in hand misses what is needed: more is taken out then */
  private isMissing = false;
  private readonly out: Uint8Array;
  private readonly isIn: Uint8Array;
  private taken: number[] = [];
  /** the units left out for which room is made, each after those it waits for, and from when they are to lie */
  private wanted: readonly number[] = [];
  private wantedFrom: Minute | Int32Array = 0;
  private triesLeft = 0;
  /** what a try may cost to be taken in hand */
  private mostCost = 0;
  private base = 0;
  private bestTry: { readonly cost: number; readonly lay: Lay } | null = null;
  /** tries since the last start, and after how many it is time for another */
  tries = 0;
  private period = 0;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, placing: Placing, unitOf: Int32Array) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = placing;
    this.unitOf = unitOf;
    this.kept = new KeptSteps(compiled, placing, unitOf);
    this.units = new UnitPlacing(compiled, placing);
    this.partners = new BatchPartners(compiled, possible, dice, placing, this.units);
    this.minutes = Float64Array.from(compiled.units, ({ open }) =>
      open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1),
    );
    this.meanWeight =
      possible.reduce((sum, unit) => sum + compiled.units[unit]!.weight, 0) / Math.max(1, possible.length);
    // what jobs cost that no plan holds, and those that need no planning are worth
    this.fixedCost = compiled.jobs.reduce((sum, { unit, needed, weight }) => {
      if (unit < 0) return sum - weight;
      return possible.includes(unit) || !needed ? sum : sum + 20 * weight;
    }, 0);
    const { previous } = compiled;
    this.before = previous.some((start) => start >= 0) ? previous.map((start) => Math.max(0, start)) : null;
    const count = compiled.units.length;
    this.left = new Uint8Array(count);
    this.out = new Uint8Array(count);
    this.isIn = new Uint8Array(count);
  }

  /** Takes a plan in hand and cools over so many tries. */
  startFrom(lay: Lay, worth: Worth, period: number): void {
    this.take(lay, this.costOf(worth));
    this.period = period;
    this.tries = 0;
    this.triesLeft = 0;
    this.bestTry = null;
  }

  get isOver(): boolean {
    return this.tries >= this.period;
  }

  /** One more way of putting back; its worth, or null where it is no better. The plan lies in `placing`. */
  step(): Worth | null {
    this.tries++;
    if (this.triesLeft === 0) {
      this.settle();
      const share = Math.max(0, 1 - this.tries / this.period);
      const heat = 0.25 * this.meanWeight * share * share + 1e-6;
      // a little worse is taken in hand now and then, the less the longer it goes on
      this.mostCost = this.cost - heat * Math.log(1 - this.dice.share());
      if (!this.takeOut()) return null;
      this.triesLeft = triesEach;
    } else this.placing.taken.takeBack(this.base);
    this.triesLeft--;
    if (!this.putBack()) return null;
    const worth = worthPlaced(this.placing.taken, this.compiled);
    const cost = this.costOf(worth);
    if (cost > this.mostCost) return null;
    this.mostCost = cost;
    this.bestTry = { cost, lay: layOf(this.placing.taken) };
    return worth;
  }

  /** Takes the best of the last tries in hand. */
  private settle(): void {
    const { bestTry } = this;
    this.bestTry = null;
    if (bestTry !== null) this.take(bestTry.lay, bestTry.cost);
  }

  private take(lay: Lay, cost: number): void {
    const { left, unitOf } = this;
    const { steps } = lay;
    this.inHand = lay;
    this.lay = steps;
    this.cost = cost;
    this.order = stepsInOrder(lay);
    left.fill(0);
    for (const unit of this.possible) left[unit] = 1;
    for (const step of this.order) left[unitOf[step]!] = 0;
    this.isMissing = this.possible.some((unit) => left[unit] === 1 && this.compiled.units[unit]!.missedWeight > 0);
  }

  private costOf({ missed, weight, setUp_min, moved_min, lastFinish }: Worth): number {
    return 20 * missed - weight + 0.01 * setUp_min + 1e-5 * moved_min + 1e-6 * lastFinish;
  }

  /** Chooses what to take out and lays the rest. */
  private takeOut(): boolean {
    const { dice, out, order, left, isIn } = this;
    out.fill(0);
    this.wanted = [];
    if (order.length > 0 && (!dice.chance(0.4) || !this.makeRoom())) this.choose();
    this.kept.layAgain(this.inHand!, order, out);
    this.base = this.placing.taken.mark();
    this.taken = [];
    for (const unit of this.possible) {
      if (out[unit] === 1) this.taken.push(unit);
      isIn[unit] = out[unit] === 0 && left[unit] === 0 ? 1 : 0;
    }
    return true;
  }

  /**
   * Chooses a unit left out, lays it by itself somewhere, and takes out what lies in its way there. Returns false
   * where nothing is left out.
   */
  private makeRoom(): boolean {
    const { dice, compiled, left, placing } = this;
    let chosen = -1;
    let most = 0;
    for (const unit of this.possible) {
      if (left[unit] === 0) continue;
      const chance = dice.share() ** (1 / this.gain(unit));
      if (chance > most) [chosen, most] = [unit, chance];
    }
    if (chosen < 0) return false;
    const { taken } = placing;
    const wanted: number[] = [];
    const kept = new Set<number>();
    const add = (unit: number) => {
      for (const other of compiled.units[unit]!.waitsFor) {
        if (left[other] === 0) kept.add(other);
        else if (!wanted.includes(other)) add(other);
      }
      wanted.push(unit);
    };
    add(chosen);
    placing.clear();
    // what they wait for stays where it is
    for (const unit of kept) for (const step of compiled.units[unit]!.open) placing.lay(step, this.lay[step]!);
    const before = taken.mark();
    const placed = (from: Minute) => {
      if (wanted.every((unit) => this.units.place(unit, from, Number.POSITIVE_INFINITY))) return true;
      taken.takeBack(before);
      return false;
    };
    this.wantedFrom = dice.chance(0.7) ? this.someStart() : 0;
    if (!placed(this.wantedFrom)) {
      const isFound = this.wantedFrom > 0 && placed(0);
      this.wantedFrom = 0;
      if (!isFound) {
        // for one that waits for others left out that is too rare
        const partner = wanted.length > 1 ? -1 : this.partners.place(chosen, (other) => kept.has(other));
        if (partner < 0) return false;
        wanted.unshift(partner);
        this.wantedFrom = this.partners.from;
        if (left[partner] === 0) this.out[partner] = 1;
      }
    }
    this.wanted = wanted;
    for (const index of this.order) {
      const unit = this.unitOf[index]!;
      if (this.out[unit] === 0 && !kept.has(unit) && this.isInTheWay(index)) this.out[unit] = 1;
    }
    taken.takeBack(before);
    return true;
  }

  /** Whether a step where it lies in the plan in hand stands in the way of what lies in `placing`. */
  private isInTheWay(index: number): boolean {
    const { taken } = this.placing;
    const step = this.compiled.steps[index]!;
    const { start, finish, hands } = this.lay[index]!;
    for (const hand of hands) {
      const busy = taken.busy[hand]!;
      for (let minute = start; minute < finish; minute++) if (busy[minute] !== 0) return true;
    }
    if (step.setUps.some(({ aspect, mask }) => this.standsAgainst(aspect, start, finish, mask))) return true;
    return step.waits.some((wait) => {
      const over = wait.cure.finish(finish);
      return (
        wait.setUps.some(({ aspect, mask }) => this.standsAgainst(aspect, finish, over, mask)) ||
        wait.still.some((aspect) => this.standsAgainst(aspect, finish, over, -1))
      );
    });
  }

  /** Whether what lies in `placing` changes an aspect, or asks for it in another state, within a span. */
  private standsAgainst(aspect: number, from: Minute, to: Minute, mask: number): boolean {
    return this.placing.taken.lines[aspect]!.some(
      (spell) =>
        (spell.from < to && spell.to > from && spell.to > this.compiled.now && (mask & (1 << spell.state)) === 0) ||
        spell.before.some((made) => made.start < to && made.finish > from),
    );
  }

  private choose(): void {
    const { dice, out, order, unitOf, lay, compiled, left } = this;
    const pick = dice.share();
    const most = 2 + dice.below(this.isMissing ? 8 : 5);
    let count = 0;
    const add = (unit: number) => {
      if (unit < 0 || out[unit] === 1) return;
      out[unit] = 1;
      count++;
    };
    const seed = order[dice.below(order.length)]!;
    const at = lay[seed]!;
    if (this.before !== null && dice.chance(0.3)) {
      // what lies elsewhere than in the plan before
      const moved = order.filter(
        (step) => compiled.previous[step]! >= 0 && compiled.previous[step] !== lay[step]!.start,
      );
      for (let n = 0; n < most * 2 && count < most && moved.length > 0; n++)
        add(unitOf[moved[dice.below(moved.length)]!]!);
      if (count > 0) return;
    }
    if (pick < 0.35) {
      // what lies about one time
      const near = [...order].sort((a, b) => Math.abs(lay[a]!.start - at.start) - Math.abs(lay[b]!.start - at.start));
      for (const step of near) {
        if (count >= most) break;
        add(unitOf[step]!);
      }
    } else if (pick < 0.5) {
      const sameDay = order.filter((step) => lay[step]!.day === at.day);
      for (let n = 0; n < most * 2 && count < most; n++) add(unitOf[sameDay[dice.below(sameDay.length)]!]!);
    } else if (pick < 0.65) {
      // what asks for the same of the boat, or the same place
      const { setUps, zone } = compiled.steps[seed]!;
      const need = setUps.length > 0 && dice.chance(0.6) ? setUps[dice.below(setUps.length)]! : null;
      const like = order.filter((step) =>
        need === null
          ? compiled.steps[step]!.zone === zone
          : compiled.steps[step]!.setUps.some(({ aspect, mask }) => aspect === need.aspect && mask === need.mask),
      );
      for (let n = 0; n < most * 2 && count < most; n++) add(unitOf[like[dice.below(like.length)]!]!);
    } else if (pick < 0.85) {
      // the least worth for its time, beside one left out that is worth more
      const inPlan = this.possible.filter((unit) => left[unit] === 0);
      const noise = inPlan.map((unit) => this.density(unit) * (0.3 + dice.share()));
      const ranked = inPlan.map((_, n) => n).sort((a, b) => noise[a]! - noise[b]!);
      for (const n of ranked) {
        if (count >= most) break;
        add(inPlan[n]!);
      }
    } else {
      for (let n = 0; n < most * 2 && count < most; n++) add(unitOf[order[dice.below(order.length)]!]!);
    }
  }

  private density(unit: number): number {
    return this.compiled.units[unit]!.weight / this.minutes[unit]!;
  }

  /**
   * Puts back what was taken out and some of what was left out, each where it first finds room. Gives up, and returns
   * false, once so much is left out that the plan would not be taken in hand.
   */
  private putBack(): boolean {
    const { dice, compiled, possible, left, taken, isIn } = this;
    const candidates = taken.filter((unit) => !this.wanted.includes(unit));
    const others = possible.filter((unit) => left[unit] === 1 && this.out[unit] === 0 && !this.wanted.includes(unit));
    for (let n = Math.min(others.length, 3 + dice.below(4)); n > 0; n--) {
      const k = dice.below(others.length);
      candidates.push(others[k]!);
      others[k] = others.at(-1)!;
      others.pop();
    }
    const noise = [0.2, 0.6, 1.5, 4][dice.below(4)]!;
    const by = dice.below(3);
    const key = new Float64Array(compiled.units.length);
    const neededFirst = dice.chance(0.9);
    for (const unit of candidates) {
      const { weight, missedWeight } = compiled.units[unit]!;
      const minutes = by === 0 ? 1 : by === 1 ? this.minutes[unit]! : Math.sqrt(this.minutes[unit]!);
      key[unit] =
        Math.log(weight / minutes) + noise * (dice.share() - 0.5) + (neededFirst && missedWeight > 0 ? 1000 : 0);
    }
    candidates.sort((a, b) => key[b]! - key[a]! || a - b);
    candidates.unshift(...this.wanted);
    const now = Uint8Array.from(isIn);
    let cost = 0;
    for (const unit of possible) if (now[unit] === 0) cost += 20 * compiled.units[unit]!.missedWeight;
    for (const unit of possible) if (now[unit] === 1) cost -= compiled.units[unit]!.weight;
    for (const unit of candidates) cost -= this.gain(unit);
    cost += this.fixedCost;
    for (const unit of candidates) {
      if (now[unit] === 1) continue;
      if (this.put(unit, now)) continue;
      cost += this.gain(unit);
      if (cost > this.mostCost) return false;
    }
    return true;
  }

  private gain(unit: number): number {
    const { weight, missedWeight } = this.compiled.units[unit]!;
    return weight + 20 * missedWeight;
  }

  private put(unit: number, isIn: Uint8Array): boolean {
    const { dice, compiled, units } = this;
    for (const other of compiled.units[unit]!.waitsFor) {
      if (isIn[other] === 1) continue;
      if ((this.out[other] === 0 && !this.wanted.includes(other)) || !this.put(other, isIn)) return false;
    }
    const anyExtra = Number.POSITIVE_INFINITY;
    let done = false;
    // what the plan before has goes back there now and then, or as soon after as it can
    if (this.before !== null && dice.chance(0.5)) done = units.place(unit, this.before, anyExtra);
    else if (this.wanted.includes(unit)) done = this.wantedFrom !== 0 && units.place(unit, this.wantedFrom, anyExtra);
    else if (dice.chance(0.2)) done = units.place(unit, this.someStart(), anyExtra);
    if (!done) {
      const extra = dice.chance(0.4) ? 0 : anyExtra;
      done = units.place(unit, 0, extra);
      if (!done && extra === 0 && units.refusedCost < anyExtra) done = units.place(unit, 0, anyExtra);
    }
    if (done) isIn[unit] = 1;
    return done;
  }

  private someStart(): Minute {
    const { dice } = this;
    const { stretches } = this.compiled;
    return stretches.length === 0 ? 0 : stretches[dice.below(stretches.length)]!.from;
  }
}
