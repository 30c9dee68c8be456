import type { Plan, Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import { violations } from '../violations.ts';
import { compareWorth, worthOf } from '../worth.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { firstLists, inOrder } from './first-lists.ts';
import { Placing } from './placing.ts';
import { ListPlacing, type StepList } from './step-list.ts';
import { worthPlaced, writtenPlan } from './written-plan.ts';

/** Looks for a better list by small changes of the best and of the one in hand. Every list is a plan. */
export class ListSearch {
  readonly compiled: Compiled;
  best: { readonly worth: Worth; readonly plan: Plan } | null = null;
  iterations = 0;
  private readonly placing: Placing;
  private readonly lists: ListPlacing;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  private readonly firsts: StepList[];
  private readonly unitOf: Int32Array;
  private bestList: StepList | null = null;
  private inHand: StepList | null = null;
  private inHandWorth: Worth | null = null;
  private sinceBetter = 0;

  /**
   * @param possible  units that are not known to be impossible
   * @param plan      one to start from
   */
  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, plan: Plan | null) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = new Placing(compiled);
    this.lists = new ListPlacing(compiled, this.placing);
    this.unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
    this.firsts = firstLists(compiled, possible, plan);
    if (plan !== null && violations(plan, compiled.problem).length === 0) {
      this.best = { worth: worthOf(plan, compiled.problem), plan };
      this.bestList = this.firsts[0]!;
    }
  }

  /** how many lists are tried before the search proper begins */
  get firstCount(): number {
    return this.firsts.length;
  }

  /** Tries one more list. Returns true where it is the best so far. */
  step(): boolean {
    const list = this.firsts.shift() ?? this.changed();
    this.iterations++;
    this.lists.place(list);
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
    if (this.sinceBetter > 0 && this.sinceBetter % 250 === 0) {
      this.inHand = this.bestList;
      this.inHandWorth = this.best!.worth;
    }
    return better;
  }

  private isTaken(worth: Worth): boolean {
    const than = this.inHandWorth!;
    if (compareWorth(worth, than) <= 0) return true;
    // now and then something a little worse, to get away from where all small changes are for the worse
    if (!this.dice.chance(0.02)) return false;
    return worth.missed <= than.missed && worth.weight >= than.weight * 0.97;
  }

  /** The list in hand with one or a few things changed. */
  private changed(): StepList {
    const { dice, compiled, lists, possible, unitOf } = this;
    const from = this.inHand!;
    let order = [...from.order];
    const notBefore = Int32Array.from(from.notBefore);
    const soon = Uint8Array.from(from.soon);
    let { backLate } = from;
    if (order.length === 0) return from;
    const times = 1 + (dice.chance(0.35) ? 1 + dice.below(2) : 0);
    for (let n = 0; n < times; n++) {
      const unit = possible[dice.below(possible.length)]!;
      const pick = dice.share();
      if (pick < 0.22) {
        const out = possible.filter((other) => lists.out[other] === 1);
        const chosen = out.length > 0 ? out[dice.below(out.length)]! : unit;
        order = this.withUnitAt(order, chosen, dice.below(order.length));
        for (const step of compiled.units[chosen]!.open) notBefore[step] = 0;
        soon[chosen] = dice.chance(0.3) ? 1 : 0;
      } else if (pick < 0.4) {
        order = this.withUnitAt(order, unit, dice.below(order.length));
      } else if (pick < 0.55) {
        const at = dice.below(order.length);
        const reach = 1 + dice.below(Math.max(2, Math.floor(order.length / 3)));
        const to = Math.max(0, Math.min(order.length - 1, at + (dice.chance(0.6) ? -reach : reach)));
        const [step] = order.splice(at, 1);
        order.splice(to, 0, step!);
      } else if (pick < 0.62) {
        const other = possible[dice.below(possible.length)]!;
        order = this.mixed(order, unit, other);
      } else if (pick < 0.78) {
        const { open } = compiled.units[unit]!;
        const when = this.someStart();
        if (dice.chance(0.5)) for (const step of open) notBefore[step] = when;
        else notBefore[open[dice.below(open.length)]!] = when;
      } else if (pick < 0.86) {
        soon[unit] = 1 - soon[unit]!;
      } else if (pick < 0.91) {
        backLate = !backLate;
      } else if (pick < 0.97) {
        const { start } = this.placing.taken;
        const when = (step: number) => (start[step]! < 0 ? compiled.horizon : start[step]!);
        order.sort((a, b) => when(a) - when(b));
      } else {
        for (const step of order) if (dice.chance(0.5)) notBefore[step] = 0;
        for (const other of possible) if (dice.chance(0.5)) soon[other] = 0;
      }
    }
    return { order: inOrder(compiled, order, unitOf), notBefore, soon, backLate };
  }

  private withUnitAt(order: readonly number[], unit: number, at: number): number[] {
    const rest = order.filter((step) => this.unitOf[step] !== unit);
    rest.splice(Math.min(at, rest.length), 0, ...order.filter((step) => this.unitOf[step] === unit));
    return rest;
  }

  /** Two units' steps shuffled into each other where the first of them stands. */
  private mixed(order: readonly number[], one: number, other: number): number[] {
    const isOf = (step: number) => this.unitOf[step] === one || this.unitOf[step] === other;
    const at = order.findIndex(isOf);
    const [a, b] = [
      order.filter((step) => this.unitOf[step] === one),
      order.filter((step) => this.unitOf[step] === other),
    ];
    const mixed: number[] = [];
    if (one === other) mixed.push(...a.sort(() => this.dice.share() - 0.5));
    else while (a.length + b.length > 0) mixed.push((this.dice.below(a.length + b.length) < a.length ? a : b).shift()!);
    const rest = order.filter((step) => !isOf(step));
    rest.splice(at, 0, ...mixed);
    return rest;
  }

  private someStart(): Minute {
    const { dice } = this;
    const { stretches } = this.compiled;
    if (stretches.length === 0 || dice.chance(0.3)) return 0;
    const { from, to } = stretches[dice.below(stretches.length)]!;
    if (dice.chance(0.5)) return from;
    // when some step now finishes, or any minute
    const { finish } = this.placing.taken;
    const step = dice.below(finish.length);
    return dice.chance(0.6) && finish[step]! > 0 ? finish[step]! : from + dice.below(to - from);
  }
}
