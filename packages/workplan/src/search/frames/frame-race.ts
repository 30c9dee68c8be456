import type { Compiled } from '../compiled.ts';
import type { Dice } from '../dice.ts';
import type { Lay } from '../kept-steps.ts';
import type { Placing } from '../placing.ts';
import { type Learned, nothingLearned, PressingSearch } from '../pressing-search.ts';
import type { Frame } from './frame.ts';
import { FrameMoves } from './frame-moves.ts';
import { FramePlacing } from './frame-placing.ts';
import { FrameSearch } from './frame-search.ts';

/** A frame in the race, with the best plan found in it. */
export interface Runner {
  lay: Lay;
  /** of that plan: its weight less twenty times the weight it misses; −Infinity: there is none yet */
  value: number;
  /** how often it has climbed */
  rung: number;
  /** plans of whole units made in it so far */
  plans: number;
  readonly learned: Learned;
}

/** Plans made in a frame before it stands on the first rung; on each higher one it is four times as many in all. */
const firstPlans = 15;
const climb = 4;
/** Tries of taking out after them, for each plan so far. */
const triesAPlan = 6;
/** Plans, or tries of taking out, made in one step: about as much work as a try of the search without a frame. */
const plansAtOnce = 3;
const triesAtOnce = 15;
/** Of the frames that set off anew, so many in ten are a good one with a move made in it. */
const movedInTen = 6;
/** A good one: about so many others are better, in the middle of many. */
const meanRank = 0.7;
/** It learns as if it had what was learned in the other from so many plans at most: the more, the slower it learns. */
const plansInherited = 15;
/** Runners that wait to set off, frames kept to take days from, and runners kept on a rung. */
const mostFresh = 100;
const mostDonors = 60;
const mostOnRung = 30;
/** A start is looked for in a frame in a twelfth of the time. */
const effortInFrame = 1 / 12;

/**
 * A race of frames. In each frame some plans are made, of whole units and by taking out and putting back; the best
 * quarter go on to four times as many, the best quarter of those again, and so on. Where none may climb another sets off.
 *
 * The idea is successive halving that waits for nobody (L. Li, K. Jamieson and others, A system for massively parallel
 * hyperparameter tuning, Proceedings of Machine Learning and Systems 2 (2020) 230–246; cited from memory).
 */
export class FrameRace {
  /** what the best plan so far is worth, of those that came in too */
  best = Number.NEGATIVE_INFINITY;
  private readonly compiled: Compiled;
  private readonly possible: readonly number[];
  private readonly dice: Dice;
  private readonly placing: FramePlacing;
  private readonly pressing: PressingSearch;
  private readonly search: FrameSearch;
  private readonly moves: FrameMoves;
  /** those that have not set off, the best last */
  private readonly fresh: Runner[] = [];
  private readonly donors: Frame[] = [];
  /** by rung: those that stand on it, the best first, and the values of all that came to it */
  private readonly standing: Runner[][] = [];
  private readonly values: number[][] = [];
  private running: Runner | null = null;
  private isTakingOut = false;

  /** @param placing  one of the same problem, which is cleared */
  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, placing: Placing, unitOf: Int32Array) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.placing = new FramePlacing(compiled, placing);
    this.pressing = new PressingSearch(compiled, possible, dice, this.placing);
    this.search = new FrameSearch(compiled, possible, dice, this.placing, this.pressing, unitOf);
    this.moves = new FrameMoves(compiled, dice, placing);
  }

  /** the work done so far, as `Placing.effort` counts it */
  get effort(): number {
    return this.placing.effort * effortInFrame;
  }

  /** Lets the frame of a plan set off when its turn comes. */
  enter(lay: Lay): void {
    const { donors, dice } = this;
    const value = this.valueOf(lay);
    insert(this.fresh, this.runnerAt(lay, value), (one, other) => one.value < other.value);
    // where nothing races they would come in without end
    if (this.fresh.length > mostFresh) this.fresh.shift();
    donors[donors.length < mostDonors ? donors.length : dice.below(mostDonors)] = lay.frame;
    this.best = Math.max(this.best, value);
  }

  /** What the units of a plan are worth, as the searches in a frame count it. */
  private valueOf({ steps }: Lay): number {
    let value = 0;
    for (const unit of this.possible) {
      const { open, weight, missedWeight } = this.compiled.units[unit]!;
      value += steps[open[0]!] === null ? -20 * missedWeight : weight;
    }
    return value;
  }

  /** Whether no frame is left to look into until another comes in. */
  get isIdle(): boolean {
    if (this.running === null) this.start();
    return this.running === null;
  }

  /** One of those that stand on a rung, the better the likelier; null: none does. */
  someGood(): Runner | null {
    const good = this.standing.flat().sort((a, b) => b.value - a.value);
    const at = Math.floor(-meanRank * Math.log(1 - this.dice.share()));
    return good[Math.min(at, good.length - 1)] ?? null;
  }

  /** Some plans, or tries of taking out, in the frame that runs. Returns a plan better than all so far; null: it found none. */
  step(): Lay | null {
    const { running } = this;
    if (running === null) return null;
    if (this.isTakingOut) this.takeOut(running);
    else this.makePlans(running);
    if (running.value <= this.best) return null;
    this.best = running.value;
    return running.lay;
  }

  private makePlans(runner: Runner): void {
    const enough = firstPlans * climb ** runner.rung;
    for (let n = 0; n < plansAtOnce && runner.plans < enough; n++) {
      runner.plans++;
      const value = this.pressing.step();
      if (value <= runner.value) continue;
      runner.value = value;
      runner.lay = this.placing.lay();
    }
    if (runner.plans < enough) return;
    this.isTakingOut = true;
    this.search.startFrom(runner.lay, triesAPlan * runner.plans);
  }

  private takeOut(runner: Runner): void {
    const { search } = this;
    for (let n = 0; n < triesAtOnce && !search.isOver; n++) search.step();
    if (search.best > runner.value) {
      runner.value = search.best;
      runner.lay = search.bestLay;
    }
    if (search.isOver) this.stand(runner);
  }

  /** Lets one run on that may climb, the highest first, or else another set off. */
  private start(): void {
    const { standing, values, dice, fresh } = this;
    for (let rung = standing.length - 1; rung >= 0; rung--) {
      const first = standing[rung]![0];
      if (first === undefined) continue;
      let better = 0;
      for (const value of values[rung]!) if (value > first.value) better++;
      if (better >= Math.floor(values[rung]!.length / climb)) continue;
      standing[rung]!.shift();
      first.rung++;
      this.run(first);
      return;
    }
    const next = (dice.below(10) < movedInTen ? this.moved() : null) ?? fresh.pop();
    if (next !== undefined) this.run(next);
  }

  private run(runner: Runner): void {
    this.running = runner;
    this.isTakingOut = false;
    this.placing.setFrame(runner.lay.frame);
    this.pressing.learned = runner.learned;
  }

  private stand(runner: Runner): void {
    const { rung, value } = runner;
    this.running = null;
    if (rung === this.standing.length) {
      this.standing.push([]);
      this.values.push([]);
    }
    this.values[rung]!.push(value);
    const standing = this.standing[rung]!;
    insert(standing, runner, (one, other) => one.value > other.value);
    if (standing.length > mostOnRung) standing.pop();
  }

  /** A good frame with one move made in it, and what was learned in it; null where none was found that can be made. */
  private moved(): Runner | null {
    const { dice, compiled, donors } = this;
    for (let tries = 0; tries < 60; tries++) {
      const good = this.someGood();
      if (good === null) return null;
      const frame = this.moves.moved(good.lay.frame, donors[dice.below(donors.length)]!);
      if (frame === null) continue;
      const runner = this.runnerAt({ steps: compiled.steps.map(() => null), frame }, Number.NEGATIVE_INFINITY);
      runner.learned.pressed.set(good.learned.pressed);
      runner.learned.plans = Math.min(good.learned.plans, plansInherited);
      return runner;
    }
    return null;
  }

  private runnerAt(lay: Lay, value: number): Runner {
    return { lay, value, rung: 0, plans: 0, learned: nothingLearned(this.compiled) };
  }
}

/** Puts a runner where it belongs in a list that is in order, behind its equals. */
function insert(list: Runner[], runner: Runner, isBefore: (one: Runner, other: Runner) => boolean): void {
  let at = list.length;
  while (at > 0 && isBefore(runner, list[at - 1]!)) at--;
  list.splice(at, 0, runner);
}
