import { type Batteries, copyBattery, emptyBatteries } from './batteries.ts';
import type { Dice } from './dice.ts';
import type { Fitting } from './fitting.ts';
import { HistoryRun } from './history-run.ts';
import {
  begunBy,
  copyDraw,
  fillDraw,
  meterSpread_V,
  normalOfShare,
  normalShare,
  type UnloggedEvent,
  unlogged,
} from './priors.ts';
import { stepTowards } from './smoother-step.ts';

/** Weights of the steps in which readings are taken in; their inverses sum to 1 (A. Emerick and A. Reynolds 2013). */
const steps = [9.333, 7, 4, 2];
/** Moves of each member after that, each along the difference of two others (C. ter Braak 2006). */
const moves = 9;
/** Before them, rounds of moves in what the log left out alone, at most, while a reading lies further off than this. */
const rounds = 10;
const wellFitted = 2;

/** Batteries that may be this one, moved towards the readings. */
export class Ensemble {
  readonly fitting: Fitting;
  readonly members: Batteries;
  /** a member as a move would have it */
  private readonly tried: Batteries;
  /** of each member: logarithm of the odds of its unknowns and of the readings */
  private readonly fit: Float64Array;
  private readonly run: HistoryRun;
  private readonly dice: Dice;

  constructor(fitting: Fitting, size: number, dice: Dice) {
    this.fitting = fitting;
    this.dice = dice;
    this.run = new HistoryRun(fitting);
    this.members = emptyBatteries(fitting, size);
    this.tried = emptyBatteries(fitting, 1);
    this.fit = new Float64Array(size);
    const { zs } = this.members;
    for (let i = 0; i < zs.length; i++) zs[i] = dice.normal();
  }

  /** Fits the members to the readings: first all together in small steps, then each by moves that keep the odds right. */
  settle(): void {
    const { members, fit } = this;
    this.runAll();
    if (this.fitting.said_V.length === 0) return;
    for (const weight of steps) {
      stepTowards(this.fitting, members, weight, this.dice);
      this.runAll();
    }
    for (let n = 0; n < members.size; n++) fit[n] = this.odds(members, n);
    for (const event of unlogged) this.moveEvent(event);
    let off = this.worstOff();
    for (let round = 0; round < rounds && Math.abs(off) > wellFitted; round++) {
      // less was read than is thought: something drew, or less came in
      for (const event of unlogged) if (event.fills === off > 0) this.moveEvent(event);
      const before = off;
      off = this.worstOff();
      if (round >= 4 && Math.abs(off) > 0.99 * Math.abs(before)) break;
    }
    for (let move = 0; move < moves; move++)
      this.move(move % 5 === 4 ? 1 : 2.38 / Math.sqrt(2 * this.fitting.dimensions));
  }

  /** How far the meter of the last reading shows too much, by member; nought where nothing was read. [V] */
  meterOff_V(): Float64Array {
    const { fitting, members } = this;
    const last = fitting.meter.at(-1);
    return Float64Array.from({ length: members.size }, (_, n) =>
      last === undefined ? 0 : meterSpread_V * members.zs[n * fitting.dimensions + last]!,
    );
  }

  private runAll(): void {
    const { members, fitting, run } = this;
    for (let n = 0; n < members.size; n++) {
      fillDraw(members.draws, n, members.zs, n * fitting.dimensions, fitting.prior);
      run.currents(members, n, 0);
      run.through(members, n, 0, Number.NEGATIVE_INFINITY);
    }
  }

  /** How far the reading that fits worst lies over what members would have shown, in the mean, in its own spreads. */
  private worstOff(): number {
    const { size, shown, error } = this.members;
    const { said_V } = this.fitting;
    let worst = 0;
    for (let r = 0; r < said_V.length; r++) {
      let off = 0;
      for (let n = 0; n < size; n++) {
        const index = n * said_V.length + r;
        off += (said_V[r]! - shown[index]!) / error[index]! / size;
      }
      if (Math.abs(off) > Math.abs(worst)) worst = off;
    }
    return worst;
  }

  /** How well a battery fits: logarithm of the odds of its unknowns and of the readings. */
  private odds({ ofReadings, zs }: Batteries, n: number): number {
    const { dimensions } = this.fitting;
    let sum = ofReadings[n]!;
    for (let d = 0; d < dimensions; d++) {
      const z = zs[n * dimensions + d]!;
      sum -= (z * z) / 2;
    }
    return sum;
  }

  private moveEvent(event: UnloggedEvent): void {
    this.moveAnew(event);
    // what a few have found, others come to know
    this.moveAlong(event);
  }

  /** Each member tries a move along the difference of two others, and takes it as the odds say (differential evolution). */
  private move(length: number): void {
    const { members, tried, dice, fitting } = this;
    const { size, zs } = members;
    const { dimensions, prior } = fitting;
    for (let n = 0; n < size; n++) {
      const a = dimensions * this.another(n);
      const b = dimensions * this.another(n);
      const row = n * dimensions;
      for (let d = 0; d < dimensions; d++)
        tried.zs[d] = zs[row + d]! + (length * (zs[a + d]! - zs[b + d]!) + 0.02 * dice.normal());
      fillDraw(tried.draws, 0, tried.zs, 0, prior);
      this.run.currents(tried, 0, 0);
      this.takeOrLeave(n, 0, 0);
    }
  }

  /**
   * Each member tries one thing that the log left out as it was thought of beforehand, half of the time as if it began between
   * the last readings: a way between 'left on' and 'all written down' that small moves do not find.
   */
  private moveAnew(event: UnloggedEvent): void {
    const { members, tried, dice } = this;
    const { dimensions, lateFrom_h, lateTo_h } = this.fitting;
    const low = begunBy(event, lateFrom_h);
    const high = begunBy(event, lateTo_h);
    if (!(high - low > 1e-6)) return;
    // how many times as often a beginning is tried as it is thought of
    const often = (share: number) => 0.5 + (share > low && share < high ? 0.5 / (high - low) : 0);
    const [since, ...others] = event.places as [number, ...number[]];
    for (let n = 0; n < members.size; n++) {
      this.asItIs(n);
      const was = often(normalShare(tried.zs[since]!));
      tried.zs[since] = dice.share() < 0.5 ? dice.normal() : normalOfShare(low + (high - low) * dice.share());
      for (const place of others) tried.zs[place] = dice.normal();
      const is = often(normalShare(tried.zs[since]!));
      // how it was thought of beforehand stands in the odds too: taken out again, for the draws follow it
      let prior = 0;
      for (const place of event.places) prior += (tried.zs[place]! ** 2 - members.zs[n * dimensions + place]! ** 2) / 2;
      this.tryEvent(event, n, prior + Math.log(was / is));
    }
  }

  /** Each member tries one thing that the log left out, moved by the difference of two others in it alone. */
  private moveAlong(event: UnloggedEvent): void {
    const { members, tried, dice } = this;
    const { dimensions } = this.fitting;
    const { zs } = members;
    for (let n = 0; n < members.size; n++) {
      const a = dimensions * this.another(n);
      const b = dimensions * this.another(n);
      this.asItIs(n);
      for (const d of event.places) tried.zs[d] = tried.zs[d]! + (zs[a + d]! - zs[b + d]! + 0.02 * dice.normal());
      this.tryEvent(event, n, 0);
    }
  }

  /** Any member but this. */
  private another(n: number): number {
    const other = this.dice.below(this.members.size - 1);
    return other >= n ? other + 1 : other;
  }

  /** What is tried of member `n` begins as it is. */
  private asItIs(n: number): void {
    const { members, tried, fitting } = this;
    const row = n * fitting.dimensions;
    for (let d = 0; d < fitting.dimensions; d++) tried.zs[d] = members.zs[row + d]!;
  }

  /** Member `n` with another thing left out of the log: the battery is the same, and so is all before what flows differs. */
  private tryEvent({ since, fill }: UnloggedEvent, n: number, more: number): void {
    const { members, tried, fitting, run } = this;
    const { count } = fitting.stretches;
    copyDraw(members.draws, n, tried.draws, 0);
    fill(tried.draws, 0, tried.zs, 0, fitting.prior);
    const [was, is] = [members.courses, tried.courses];
    const row = n * count;
    let from = run.stretchAt(Math.min(members.draws[since][n]!, tried.draws[since][0]!));
    run.currents(tried, 0, from);
    while (from < count && is.amps[from] === was.amps[row + from]) from++;
    if (from > 0) {
      is.hand[from - 1] = was.hand[row + from - 1]!;
      is.rest[from - 1] = was.rest[row + from - 1]!;
      is.surface_V[from - 1] = was.surface_V[row + from - 1]!;
    }
    const readings = fitting.said_V.length;
    for (let r = 0; r < readings; r++) tried.less[r] = members.less[n * readings + r]!;
    this.takeOrLeave(n, from, more);
  }

  /**
   * Member `n` becomes what is tried, or stays.
   *
   * @param from  the stretch from which on it differs
   * @param more  added to the logarithm of the odds of taking it
   */
  private takeOrLeave(n: number, from: number, more: number): void {
    const { members, tried, fit, fitting } = this;
    const chance = Math.log(this.dice.share());
    tried.ofReadings[0] = 0;
    // what the odds of the readings must come to for it to be taken; the last digits do not decide
    const least = chance + fit[n]! - more - this.odds(tried, 0) - 1e-9;
    if (from === fitting.stretches.count) tried.ofReadings[0] = members.ofReadings[n]!;
    else if (!this.run.through(tried, 0, from, least)) return;
    const now = this.odds(tried, 0);
    if (!(chance < now - fit[n]! + more)) return;
    fit[n] = now;
    copyBattery(tried, 0, members, n, from, this.run.readingFrom(from));
  }
}
