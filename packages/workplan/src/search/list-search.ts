import type { Plan, Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import { violations } from '../violations.ts';
import { compareWorth, worthOf } from '../worth.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { Placing, type Wish } from './placing.ts';
import { worthPlaced, writtenPlan } from './written-plan.ts';

/** An order of units with wishes: what a plan is made from. */
interface List {
  readonly order: number[];
  readonly wishes: Wish[];
  backLate: boolean;
}

/**
 * Looks for a better list by small changes of the best and of the one in hand. Every list is a plan: the units are
 * placed in its order, and what does not fit is left out.
 */
export class ListSearch {
  readonly compiled: Compiled;
  readonly placing: Placing;
  best: { readonly worth: Worth; readonly plan: Plan } | null = null;
  iterations = 0;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  private readonly firsts: List[];
  private bestList: List | null = null;
  private inHand: List | null = null;
  private inHandWorth: Worth | null = null;
  private sinceBetter = 0;
  private readonly placed: Int8Array;

  /** @param possible  units that are not known to be impossible */
  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, plan: Plan | null) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = new Placing(compiled);
    this.placed = new Int8Array(compiled.units.length);
    this.firsts = firstLists(compiled, possible, plan);
    if (plan !== null && violations(plan, compiled.problem).length === 0) {
      this.best = { worth: worthOf(plan, compiled.problem), plan };
      this.bestList = this.firsts[0]!;
    }
  }

  /** Tries one more list. Returns true where it is the best so far. */
  step(): boolean {
    const first = this.firsts.shift();
    const list = first ?? this.changed();
    this.iterations++;
    this.place(list);
    const worth = worthPlaced(this.placing.taken, this.compiled);
    const better = this.best === null || compareWorth(worth, this.best.worth) < 0;
    if (better) {
      this.best = { worth, plan: writtenPlan(this.placing.taken) };
      this.bestList = list;
      this.sinceBetter = 0;
    } else this.sinceBetter++;
    if (better || this.inHandWorth === null || this.isTaken(worth)) {
      this.inHand = list;
      this.inHandWorth = worth;
    }
    if (this.sinceBetter > 0 && this.sinceBetter % 200 === 0) {
      this.inHand = this.bestList;
      this.inHandWorth = this.best!.worth;
    }
    return better;
  }

  private isTaken(worth: Worth): boolean {
    const than = this.inHandWorth!;
    if (compareWorth(worth, than) <= 0) return true;
    // now and then something a little worse, to get away from where all small changes are for the worse
    if (worth.missed > than.missed || !this.dice.chance(0.02)) return false;
    return worth.weight >= than.weight * 0.97;
  }

  private place(list: List): void {
    const { placing, placed } = this;
    placing.clear();
    placing.lines.backLate = list.backLate;
    placed.fill(0);
    for (const unit of list.order) this.placeAfterOthers(unit, list);
  }

  private placeAfterOthers(unit: number, list: List): boolean {
    const { placed, compiled } = this;
    if (placed[unit] !== 0) return placed[unit] === 1;
    placed[unit] = -1;
    const ready = compiled.units[unit]!.waitsFor.every((other) => this.placeAfterOthers(other, list));
    if (ready && this.placing.placeUnit(unit, list.wishes[unit]!)) placed[unit] = 1;
    return placed[unit] === 1;
  }

  private changed(): List {
    const { dice, compiled, placed } = this;
    const from = this.inHand!;
    const list: List = { order: [...from.order], wishes: [...from.wishes], backLate: from.backLate };
    const { order, wishes } = list;
    if (order.length === 0) return list;
    const times = 1 + (dice.chance(0.3) ? 1 + dice.below(2) : 0);
    for (let n = 0; n < times; n++) {
      const at = dice.below(order.length);
      const pick = dice.share();
      if (pick < 0.25) {
        // one that is left out goes ahead of some other
        const out = order.filter((unit) => placed[unit] !== 1);
        const unit = out.length > 0 ? out[dice.below(out.length)]! : order[at]!;
        order.splice(order.indexOf(unit), 1);
        order.splice(dice.below(order.length + 1), 0, unit);
        wishes[unit] = { notBefore: 0, soon: dice.chance(0.3) };
      } else if (pick < 0.45) {
        const [unit] = order.splice(at, 1);
        order.splice(dice.below(order.length + 1), 0, unit!);
      } else if (pick < 0.6) {
        const other = dice.below(order.length);
        [order[at], order[other]] = [order[other]!, order[at]!];
      } else if (pick < 0.78) {
        wishes[order[at]!] = { ...wishes[order[at]!]!, notBefore: this.someStart() };
      } else if (pick < 0.88) {
        wishes[order[at]!] = { ...wishes[order[at]!]!, soon: !wishes[order[at]!]!.soon };
      } else if (pick < 0.92) {
        list.backLate = !list.backLate;
      } else if (pick < 0.97) {
        const start = startsOf(compiled, this.placing);
        order.sort((a, b) => start[a]! - start[b]!);
      } else {
        for (const unit of order) wishes[unit] = { notBefore: 0, soon: false };
      }
    }
    return list;
  }

  private someStart(): Minute {
    const { stretches } = this.compiled;
    if (stretches.length === 0 || this.dice.chance(0.4)) return 0;
    const stretch = stretches[this.dice.below(stretches.length)]!;
    return this.dice.chance(0.6) ? stretch.from : stretch.from + this.dice.below(stretch.to - stretch.from);
  }

  /** units that can be in a plan as far as is known */
  get units(): readonly number[] {
    return this.possible;
  }
}

function startsOf(compiled: Compiled, placing: Placing): Float64Array {
  return Float64Array.from(compiled.units, (unit) => {
    const starts = unit.open.map((step) => placing.taken.start[step]!);
    return starts.some((start) => start < 0) ? compiled.horizon : Math.min(...starts);
  });
}

function firstLists(compiled: Compiled, possible: readonly number[], plan: Plan | null): List[] {
  const minutes = (unit: number) =>
    compiled.units[unit]!.open.reduce((sum, step) => {
      const { minutes: lasts, hands } = compiled.steps[step]!;
      return sum + lasts * Math.max(1, hands);
    }, 1);
  const missed = (unit: number) => compiled.units[unit]!.missedWeight;
  const weight = (unit: number) => compiled.units[unit]!.weight;
  const due = (unit: number) => Math.min(...compiled.units[unit]!.jobs.map((job) => compiled.jobs[job]!.deadline));
  const changing = (unit: number) =>
    compiled.units[unit]!.open.reduce(
      (sum, step) =>
        sum +
        compiled.steps[step]!.setUps.reduce((more, need) => {
          const { initial } = compiled.aspects[need.aspect]!;
          return more + ((need.mask & (1 << initial)) === 0 ? 1 : 0);
        }, 0),
      0,
    );
  const listed = (key: (unit: number) => number, soon = false): List => ({
    order: [...possible].sort((a, b) => Number(missed(b) > 0) - Number(missed(a) > 0) || key(a) - key(b) || a - b),
    wishes: compiled.units.map(() => ({ notBefore: 0, soon })),
    backLate: true,
  });
  const lists = [
    listed((unit) => -weight(unit) / minutes(unit)),
    listed((unit) => -weight(unit)),
    listed((unit) => changing(unit)),
    listed((unit) => due(unit)),
    listed((unit) => -weight(unit) / minutes(unit), true),
    listed((unit) => -minutes(unit)),
  ];
  if (plan !== null) {
    const indexOf = new Map(compiled.problem.steps.map((step, index) => [step.id, index]));
    const start = new Float64Array(compiled.units.length).fill(compiled.horizon);
    for (const planned of plan.steps) {
      const step = compiled.steps[indexOf.get(planned.step) ?? -1];
      const unit = step === undefined ? -1 : compiled.jobs[step.job]!.unit;
      if (unit >= 0) start[unit] = Math.min(start[unit]!, planned.start);
    }
    lists.unshift({ ...lists[0]!, order: [...possible].sort((a, b) => start[a]! - start[b]! || a - b) });
  }
  return lists;
}
