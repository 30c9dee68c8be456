import type { Plan, Worth } from '../plan.ts';
import type { Minute } from '../problem.ts';
import { violations } from '../violations.ts';
import { compareWorth, worthOf } from '../worth.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { firstLists, inOrder } from './first-lists.ts';
import { type Lay, layOf, layOfPlan } from './kept-steps.ts';
import { Placing } from './placing.ts';
import { PressingSearch } from './pressing-search.ts';
import { ListPlacing, type StepList } from './step-list.ts';
import { TakeOutSearch } from './take-out-search.ts';
import type { Taken } from './taken.ts';
import { worthPlaced, writtenPlan } from './written-plan.ts';

/** For so many tries at first, while a needed job is missed, the share below goes into taking out. */
const listsWhileShort = 1500;
const shareWhileShort = 0.25;

/** Where there is no plan yet, three plans of whole units for each unit, so many at most, are made before any taking out. */
const mostFirstPressings = 60;
/** How much of the work goes into them later, as a multiple of the rest; less where a needed job is missed, or a plan is at hand. */
const pressingShare = 0.5;
const smallPressingShare = 0.15;
/** The same where another search goes on beside this one, which takes out and puts back. */
const pressingShareBeside = 4;

/** Looks for a better list by small changes of the best and of the one in hand. Every list is a plan. */
export class ListSearch {
  readonly compiled: Compiled;
  best: { readonly worth: Worth; readonly plan: Plan } | null = null;
  iterations = 0;
  private readonly placing: Placing;
  private readonly lists: ListPlacing;
  private readonly dice: Dice;
  private readonly possible: readonly number[];
  /** lists to try before the search proper, each with how often its missed jobs may yet be put ahead */
  private readonly firsts: { readonly list: StepList; readonly repairs: number }[];
  private readonly unitOf: Int32Array;
  /** by unit: hand-minutes it takes, at least 1 */
  private readonly minutes: Float64Array;
  private bestList: StepList | null = null;
  private inHand: StepList | null = null;
  private inHandWorth: Worth | null = null;
  private bestLay: Lay | null = null;
  private takeOut: TakeOutSearch | null = null;
  private pressing: PressingSearch | null = null;
  /** how much of the work goes into taking out and putting back, as a multiple of what goes into lists */
  private readonly takeOutShare: number;
  /** whether there is no plan to start from or to keep to */
  private readonly isAnew: boolean;
  private readonly isBeside: boolean;
  private rounds = 0;
  /** the best was found otherwise than by taking out */
  private isTakeOutDue = false;
  /** tries since the best was found */
  sinceBetter = 0;
  /** starts and finishes of the list in hand */
  private readonly start: Int32Array;
  private readonly finish: Int32Array;

  /**
   * @param possible  units that are not known to be impossible
   * @param plan      one to start from
   * @param isBeside  another search of the same problem goes on beside this one: it looks in another way
   */
  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, plan: Plan | null, isBeside: boolean) {
    this.compiled = compiled;
    this.isBeside = isBeside;
    this.possible = possible;
    this.dice = dice;
    this.placing = new Placing(compiled);
    this.lists = new ListPlacing(compiled, this.placing);
    this.unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
    this.minutes = Float64Array.from(compiled.units, ({ open }) =>
      open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1),
    );
    this.start = new Int32Array(compiled.steps.length).fill(-1);
    this.finish = new Int32Array(compiled.steps.length).fill(-1);
    // few steps are soon in every order there is; many are not
    const steps = possible.reduce((sum, unit) => sum + compiled.units[unit]!.open.length, 0);
    this.takeOutShare = steps < 15 ? 0.5 : 8;
    this.isAnew = plan === null && compiled.previous.every((start) => start < 0);
    this.firsts = firstLists(compiled, possible, plan).map((list) => ({ list, repairs: 3 }));
    if (plan !== null && violations(plan, compiled.problem).length === 0) {
      this.best = { worth: worthOf(plan, compiled.problem), plan };
      this.bestList = this.firsts[0]!.list;
      this.bestLay = layOfPlan(plan, compiled);
    }
  }

  /** how many lists are tried before the search proper begins */
  get firstCount(): number {
    return this.firsts.length;
  }

  /**
   * Goes on from a plan found elsewhere, where it breaks no rule and is better than the best so far. One beside
   * another search keeps to its own way unless that plan misses less: two that look about one plan find less.
   *
   * @returns whether it does
   */
  adopt(plan: Plan): boolean {
    const { compiled, best } = this;
    const worth = worthOf(plan, compiled.problem);
    if (best !== null && compareWorth(worth, best.worth) >= 0) return false;
    if (best !== null && this.isBeside && worth.missed >= best.worth.missed) return false;
    if (violations(plan, compiled.problem).length > 0) return false;
    this.goOnFrom(worth, plan, layOfPlan(plan, compiled));
    this.isTakeOutDue = true;
    return true;
  }

  /** Tries one more list. Returns true where it is the best so far. */
  step(): boolean {
    if (this.firsts.length > 0 || this.bestLay === null) return this.stepList();
    const { compiled, possible, dice, unitOf } = this;
    this.takeOut ??= new TakeOutSearch(compiled, possible, dice, new Placing(compiled), unitOf);
    this.pressing ??= new PressingSearch(compiled, possible, dice, new Placing(compiled));
    if (this.isPressingDue(this.pressing, this.takeOut)) return this.stepPressing(this.pressing);
    // while a needed job is missed, whole lists find the way in more often
    const isShort = this.iterations < listsWhileShort && this.best !== null && this.best.worth.missed > 0;
    const share = isShort ? Math.min(this.takeOutShare, shareWhileShort) : this.takeOutShare;
    return this.takeOut.placing.effort <= share * this.placing.effort ? this.stepOut(this.takeOut) : this.stepList();
  }

  private isPressingDue({ tries, placing }: PressingSearch, takeOut: TakeOutSearch): boolean {
    const { isAnew, best, possible } = this;
    if (isAnew && tries < Math.min(mostFirstPressings, 3 * possible.length)) return true;
    const usual = isAnew && best!.worth.missed === 0 ? pressingShare : smallPressingShare;
    const share = this.isBeside ? pressingShareBeside : usual;
    return placing.effort <= share * (takeOut.placing.effort + this.placing.effort);
  }

  /** One more plan of whole units, what was left out before ahead of the rest. */
  private stepPressing(pressing: PressingSearch): boolean {
    this.iterations++;
    const worth = pressing.step();
    if (compareWorth(worth, this.best!.worth) >= 0) {
      this.sinceBetter++;
      return false;
    }
    this.takeAsBest(worth, pressing.placing.taken);
    this.isTakeOutDue = true;
    return true;
  }

  /** One more way of taking out of the best plan and putting back. */
  private stepOut(takeOut: TakeOutSearch): boolean {
    const { best } = this;
    if (takeOut.isOver || this.isTakeOutDue)
      takeOut.startFrom(this.bestLay!, best!.worth, 600 * (1 + (this.rounds++ % 4)));
    this.isTakeOutDue = false;
    this.iterations++;
    const worth = takeOut.step();
    const better = worth !== null && compareWorth(worth, best!.worth) < 0;
    if (!better) {
      this.sinceBetter++;
      return false;
    }
    this.takeAsBest(worth, takeOut.placing.taken);
    return true;
  }

  private takeAsBest(worth: Worth, taken: Taken): void {
    this.goOnFrom(worth, writtenPlan(taken), layOf(taken));
  }

  private goOnFrom(worth: Worth, plan: Plan, lay: Lay): void {
    this.best = { worth, plan };
    this.bestLay = lay;
    this.sinceBetter = 0;
    this.bestList = this.listAsLaid(lay);
    this.inHand = this.bestList;
    this.inHandWorth = null;
  }

  /** The list in which the steps lie now, the ones left out last. */
  private listAsLaid(lay: Lay): StepList {
    const { compiled, possible, unitOf } = this;
    const when = (step: number) => lay.steps[step]?.start ?? compiled.horizon;
    const steps = possible.flatMap((unit) => compiled.units[unit]!.open).sort((a, b) => when(a) - when(b));
    return {
      order: inOrder(compiled, steps, unitOf),
      notBefore: new Int32Array(compiled.steps.length),
      extra: new Float64Array(compiled.units.length).fill(Number.POSITIVE_INFINITY),
      skips: new Uint8Array(compiled.units.length),
      backLate: true,
    };
  }

  private stepList(): boolean {
    const { dice } = this;
    const first = this.firsts.shift();
    const list = first?.list ?? this.changed();
    this.iterations++;
    const than = this.inHandWorth;
    // now and then something a little worse is taken, to get away from where all small changes are for the worse
    const give = than !== null && first === undefined && dice.chance(0.05) ? 0.96 : 1;
    const free = first !== undefined || than === null;
    const whole = this.lists.place(
      list,
      free ? Number.NEGATIVE_INFINITY : than.weight * give,
      free ? Number.POSITIVE_INFINITY : than.missed,
    );
    if (first !== undefined && first.repairs > 0) this.putMissedAhead(first.list, first.repairs - 1);
    const worth = whole ? worthPlaced(this.placing.taken, this.compiled) : null;
    const better = worth !== null && (this.best === null || compareWorth(worth, this.best.worth) < 0);
    if (better) {
      this.best = { worth, plan: writtenPlan(this.placing.taken) };
      this.bestLay = layOf(this.placing.taken);
      this.sinceBetter = 0;
    } else this.sinceBetter++;
    if (worth !== null && (better || than === null || give < 1 || compareWorth(worth, than) <= 0)) {
      this.inHand = this.asPlaced(list);
      this.inHandWorth = worth;
    }
    if (better) this.bestList = this.inHand;
    if (this.sinceBetter > 0 && this.sinceBetter % 400 === 0 && this.bestList !== null) {
      // back to the best; every other time much of its order is thrown first
      const isThrown = this.sinceBetter % 800 === 0;
      this.inHand = isThrown ? this.thrown(this.bestList) : this.bestList;
      this.inHandWorth = isThrown ? null : this.best!.worth;
    }
    return better;
  }

  /** Adds a list like the one just placed with the needed units that found no place before all others. */
  private putMissedAhead(list: StepList, repairs: number): void {
    const { compiled, lists, possible, unitOf } = this;
    const missed = new Set<number>();
    const add = (unit: number) => {
      missed.add(unit);
      for (const other of compiled.units[unit]!.waitsFor) if (!missed.has(other)) add(other);
    };
    for (const unit of possible) if (lists.out[unit] === 1 && compiled.units[unit]!.missedWeight > 0) add(unit);
    if (missed.size === 0) return;
    const order = [...list.order];
    const ahead = order.filter((step) => missed.has(unitOf[step]!));
    const rest = order.filter((step) => !missed.has(unitOf[step]!));
    // what found no place where the plan before has it may lie anywhere; the rest goes on as it was to be
    const notBefore = Int32Array.from(list.notBefore);
    for (const step of ahead) notBefore[step] = 0;
    this.firsts.push({ list: { ...list, order: inOrder(compiled, [...ahead, ...rest], unitOf), notBefore }, repairs });
  }

  /** The list with what its placing taught: the set-up minutes its units came to need, and which found no place. */
  private asPlaced(list: StepList): StepList {
    const { lists, placing } = this;
    const { start, finish } = placing.taken;
    this.start.set(start);
    this.finish.set(finish);
    const extra = this.dice.chance(0.5) ? Float64Array.from(lists.extra) : list.extra;
    return { ...list, extra, skips: Uint8Array.from(lists.out) };
  }

  private thrown(list: StepList): StepList {
    const { dice, possible } = this;
    let order = [...list.order];
    for (const unit of possible) if (dice.chance(0.35)) order = this.withUnitAt(order, unit, dice.below(order.length));
    const cleared = new Int32Array(list.notBefore.length);
    return { ...list, order: inOrder(this.compiled, order, this.unitOf), notBefore: cleared };
  }

  /** The list in hand with one or a few things changed. */
  private changed(): StepList {
    const { dice, compiled, possible, start } = this;
    const from = this.inHand!;
    let order = [...from.order];
    const notBefore = Int32Array.from(from.notBefore);
    const extra = Float64Array.from(from.extra);

    const skips = new Uint8Array(from.skips.length);
    let { backLate } = from;
    if (order.length === 0) return from;
    const times = 1 + (dice.chance(0.35) ? 1 + dice.below(2) : 0);
    for (let n = 0; n < times; n++) {
      const unit = possible[dice.below(possible.length)]!;
      const pick = dice.share();
      if (pick < 0.12 && from.skips.includes(1)) {
        order = this.swapped(order, from.skips);
      } else if (pick < 0.22) {
        const out = possible.filter((other) => from.skips[other] === 1);
        const chosen = out.length > 0 ? out[dice.below(out.length)]! : unit;
        order = this.withUnitAt(order, chosen, dice.below(order.length));
        skips[chosen] = 0;
        for (const step of compiled.units[chosen]!.open) notBefore[step] = 0;
        extra[chosen] = dice.chance(0.3) ? Number.POSITIVE_INFINITY : 0;
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
        extra[unit] = extra[unit]! > 0 ? 0 : Number.POSITIVE_INFINITY;
      } else if (pick < 0.89) {
        backLate = !backLate;
      } else if (pick < 0.92) {
        for (const other of possible) if (dice.chance(0.5)) extra[other] = 0;
      } else if (pick < 0.97) {
        const when = (step: number) => (start[step]! < 0 ? compiled.horizon : start[step]!);
        order.sort((a, b) => when(a) - when(b));
      } else {
        for (const step of order) if (dice.chance(0.5)) notBefore[step] = 0;
      }
    }
    return { order: inOrder(compiled, order, this.unitOf), notBefore, extra, skips, backLate };
  }

  /** A unit left out goes ahead of all, and lesser ones that take as much time go to the end. */
  private swapped(order: readonly number[], skips: Uint8Array): number[] {
    const { dice, compiled, possible, unitOf } = this;
    const out = possible.filter((unit) => skips[unit] === 1);
    if (out.length === 0) return [...order];
    let chosen = out[dice.below(out.length)]!;
    const other = out[dice.below(out.length)]!;
    if (this.density(other) > this.density(chosen)) chosen = other;
    const lesser = possible.filter(
      (unit) =>
        skips[unit] === 0 && compiled.units[unit]!.missedWeight === 0 && this.density(unit) < this.density(chosen),
    );
    const { minutes } = this;
    const last = new Set<number>();
    let freed = 0;
    while (freed < minutes[chosen]! && lesser.length > 0) {
      const [unit] = lesser.splice(dice.below(lesser.length), 1);
      last.add(unit!);
      freed += minutes[unit!]!;
    }
    const at = dice.below(3) === 0 ? 0 : dice.below(order.length);
    const ordered = this.withUnitAt(order, chosen, at);
    return [
      ...ordered.filter((step) => !last.has(unitOf[step]!)),
      ...ordered.filter((step) => last.has(unitOf[step]!)),
    ];
  }

  private density(unit: number): number {
    return this.compiled.units[unit]!.weight / this.minutes[unit]!;
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
    const { finish } = this;
    const step = dice.below(finish.length);
    return dice.chance(0.6) && finish[step]! > 0 ? finish[step]! : from + dice.below(to - from);
  }
}
