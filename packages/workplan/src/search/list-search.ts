import type { Plan, Worth } from '../plan.ts';
import { violations } from '../violations.ts';
import { compareWorth, worthOf } from '../worth.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { firstLists, inOrder } from './first-lists.ts';
import { FrameRace } from './frames/frame-race.ts';
import { FreeGround } from './free-ground.ts';
import { KeptSteps, type Lay, layOf, layOfPlan, stepsInOrder } from './kept-steps.ts';
import { ListChanges } from './list-changes.ts';
import { Placing } from './placing.ts';
import { PressingSearch } from './pressing-search.ts';
import { ListPlacing, type StepList } from './step-list.ts';
import { TakeOutSearch } from './take-out-search.ts';
import type { Taken } from './taken.ts';
import { worthPlaced, writtenPlan } from './written-plan.ts';

/** Where there is no plan yet, three plans of whole units for each unit, so many at most, are made before all else. */
const mostFirstPressings = 60;
/** Where there are so many units, frames race; of few the set-ups and the steps are soon found together. */
const manyUnits = 25;
/** How much of the work goes into the race, as a multiple of the rest; and where there is a plan to keep to. */
const raceShare = 9;
const smallRaceShare = 0.1;
/** The same of plans of whole units, as a multiple of lists and taking out: where there are few units, or a plan to keep to. */
const pressingShare = 0.5;
const smallPressingShare = 0.15;
/** Tries of taking out between two starts, at least. */
const outPeriod = 300;

interface OtherWays {
  readonly takeOut: TakeOutSearch;
  readonly pressing: PressingSearch;
  readonly race: FrameRace;
}

/**
 * Looks for a better plan in four ways: by small changes of a list, by taking out and putting back, by plans of whole
 * units, and by a race of frames. What one finds the others go on from.
 */
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
  private bestList: StepList | null = null;
  private inHand: StepList | null = null;
  private inHandWorth: Worth | null = null;
  private bestLay: Lay | null = null;
  private readonly changes: ListChanges;
  private readonly kept: KeptSteps;
  private readonly ground: FreeGround;
  /** the other ways; null until the first lists have been tried */
  private ways: OtherWays | null = null;
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

  /**
   * @param possible  units that are not known to be impossible
   * @param plan      one to start from
   * @param isBeside  another search of the same problem goes on beside this one: it keeps to its own way (see `adopt`)
   */
  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, plan: Plan | null, isBeside: boolean) {
    this.compiled = compiled;
    this.isBeside = isBeside;
    this.possible = possible;
    this.dice = dice;
    this.placing = new Placing(compiled);
    this.lists = new ListPlacing(compiled, this.placing);
    this.ground = new FreeGround(compiled, dice);
    this.unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
    this.changes = new ListChanges(compiled, possible, dice, this.unitOf);
    this.kept = new KeptSteps(compiled, this.placing, this.unitOf);
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

  /** the work done so far, as `Placing.effort` counts it */
  get effort(): number {
    const elsewhere = this.ways === null ? 0 : this.ways.takeOut.placing.effort + this.ways.race.effort;
    return this.placing.effort + this.ground.placing.effort + elsewhere;
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
    this.ways?.race.enter(this.bestLay!);
    this.isTakeOutDue = true;
    return true;
  }

  /** One more try. Returns true where it found the best plan so far. */
  step(): boolean {
    if (this.firsts.length > 0 || this.bestLay === null) return this.stepList();
    this.ways ??= this.otherWays();
    const { takeOut, race } = this.ways;
    if (this.isPressingDue(this.ways)) return this.stepPressing(this.ways);
    const elsewhere = takeOut.placing.effort + this.placing.effort + this.ground.placing.effort;
    if (race.effort < this.raceShare() * elsewhere)
      return race.isIdle ? this.stepPressing(this.ways) : this.stepRace(race);
    const isOutDue = takeOut.placing.effort <= this.takeOutShare * this.placing.effort;
    return isOutDue ? this.stepOut(this.ways) : this.stepList();
  }

  private otherWays(): OtherWays {
    const { compiled, possible, dice, unitOf, bestLay } = this;
    const race = new FrameRace(compiled, possible, dice, new Placing(compiled), unitOf);
    race.enter(bestLay!);
    return {
      takeOut: new TakeOutSearch(compiled, possible, dice, new Placing(compiled), unitOf),
      pressing: new PressingSearch(compiled, possible, dice, this.ground),
      race,
    };
  }

  /** whether the best plan leaves out none but what is known to be impossible */
  private hasAll(): boolean {
    const { bestLay, possible, compiled } = this;
    return possible.every((unit) => bestLay!.steps[compiled.units[unit]!.open[0]!] !== null);
  }

  /** Whether it is time for a plan of whole units; of many units the race asks for those it wants itself. */
  private isPressingDue({ takeOut, pressing }: OtherWays): boolean {
    const { isAnew, possible, placing, ground } = this;
    if (isAnew && pressing.tries < Math.min(mostFirstPressings, 3 * possible.length)) return true;
    if (this.hasAll() || (isAnew && possible.length >= manyUnits)) return false;
    const share = isAnew ? pressingShare : smallPressingShare;
    return ground.placing.effort <= share * (takeOut.placing.effort + placing.effort);
  }

  /** How much of the work goes into the race, as a multiple of the rest. */
  private raceShare(): number {
    // the race looks for more weight, not for fewer changes of set-up or moves
    if (this.hasAll() || this.possible.length < manyUnits) return 0;
    return this.isAnew ? raceShare : smallRaceShare;
  }

  /** One more plan of whole units, what was left out before ahead of the rest; its frame comes into the race. */
  private stepPressing({ pressing, race }: OtherWays): boolean {
    this.iterations++;
    pressing.step();
    const { taken } = this.ground.placing;
    const worth = worthPlaced(taken, this.compiled);
    race.enter(layOf(taken));
    if (compareWorth(worth, this.best!.worth) >= 0) {
      this.sinceBetter++;
      return false;
    }
    this.takeAsBest(worth, taken);
    this.isTakeOutDue = true;
    return true;
  }

  /** One more look into the frame that runs. */
  private stepRace(race: FrameRace): boolean {
    this.iterations++;
    const lay = race.step();
    if (lay !== null) {
      const worth = this.layAgain(lay);
      if (compareWorth(worth, this.best!.worth) < 0) {
        this.takeAsBest(worth, this.placing.taken);
        this.isTakeOutDue = true;
        return true;
      }
    }
    this.sinceBetter++;
    return false;
  }

  /** Lays a plan without the set-up changes it does not need. */
  private layAgain(lay: Lay): Worth {
    this.kept.layAgain(lay, stepsInOrder(lay), new Uint8Array(this.compiled.units.length));
    return worthPlaced(this.placing.taken, this.compiled);
  }

  /** One more way of taking out of the best plan and putting back. */
  private stepOut({ takeOut, race }: OtherWays): boolean {
    const { best } = this;
    if (takeOut.isOver || this.isTakeOutDue) this.startOut(takeOut, race);
    this.isTakeOutDue = false;
    this.iterations++;
    const worth = takeOut.step();
    const better = worth !== null && compareWorth(worth, best!.worth) < 0;
    if (!better) {
      this.sinceBetter++;
      return false;
    }
    this.takeAsBest(worth, takeOut.placing.taken);
    race.enter(this.bestLay!);
    return true;
  }

  /** Takes the best plan in hand, or that of a good frame; the one that was in hand is left to the race. */
  private startOut(takeOut: TakeOutSearch, race: FrameRace): void {
    if (takeOut.isOver && takeOut.inHand !== null) race.enter(takeOut.inHand);
    const other = this.isTakeOutDue || this.dice.chance(0.5) ? null : race.someGood();
    if (other !== null) takeOut.startFrom(other.lay, this.layAgain(other.lay), outPeriod);
    else takeOut.startFrom(this.bestLay!, this.best!.worth, outPeriod * (1 + (this.rounds++ % 4)));
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
    const list = first?.list ?? this.changes.changed(this.inHand!);
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
      this.inHand = isThrown ? this.changes.thrown(this.bestList) : this.bestList;
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
    const { lists } = this;
    this.changes.note(this.placing.taken);
    const extra = this.dice.chance(0.5) ? Float64Array.from(lists.extra) : list.extra;
    return { ...list, extra, skips: Uint8Array.from(lists.out) };
  }
}
