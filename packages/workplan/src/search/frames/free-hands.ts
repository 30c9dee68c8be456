import type { Minute } from '../../problem.ts';
import type { Compiled, CompiledStep } from '../compiled.ts';
import { type Frame, never } from './frame.ts';
import { FreeTime } from './free-time.ts';

/** Which hands are free when, beside the changes of a frame and the steps placed in it. */
export class FreeHands {
  /** by hand: beside what has begun already; with the changes of the frame; and with the steps */
  private readonly before: readonly FreeTime[];
  private readonly inFrame: readonly FreeTime[];
  private readonly now: readonly FreeTime[];
  private readonly soonest: Int32Array;
  /** the lists of one and two hands there are, so that none is made anew */
  private readonly ones: readonly (readonly number[])[];
  private readonly twos: readonly (readonly (readonly number[])[])[];

  /** @param busy  by hand and minute: 1 where it is away or busy with what has begun already */
  constructor({ stretches }: Compiled, busy: readonly Uint8Array[]) {
    const times = () => busy.map(() => new FreeTime(2 * stretches.length + 100));
    this.before = times();
    this.inFrame = times();
    this.now = times();
    for (const [hand, minutes] of busy.entries())
      for (const { from, to } of stretches) addFree(this.before[hand]!, minutes, from, to);
    this.soonest = new Int32Array(busy.length);
    this.ones = busy.map((_, hand) => [hand]);
    this.twos = busy.map((_, one) => busy.map((_, other) => [one, other]));
    this.setFrame([]);
  }

  /** Gives all steps' time back, and takes what the changes of a frame take. */
  setFrame(frame: Frame): void {
    for (const [hand, time] of this.inFrame.entries()) time.copy(this.before[hand]!);
    for (const changes of frame)
      for (const { start, finish, hands } of changes)
        for (const hand of hands) this.inFrame[hand]!.occupy(start, finish);
    this.clear();
  }

  /** Gives all steps' time back. */
  clear(): void {
    for (let hand = 0; hand < this.now.length; hand++) this.now[hand]!.copy(this.inFrame[hand]!);
  }

  occupy(hands: readonly number[], start: Minute, finish: Minute): void {
    for (let k = 0; k < hands.length; k++) this.now[hands[k]!]!.occupy(start, finish);
  }

  free(hands: readonly number[], start: Minute, finish: Minute): void {
    for (let k = 0; k < hands.length; k++) this.now[hands[k]!]!.free(start, finish);
  }

  /** The first start from a minute on at which enough hands may be free for a step; that minute itself: they are. */
  next({ hands: wanted, keeper }: CompiledStep, start: Minute, lasts: Minute): Minute {
    const { now } = this;
    if (wanted === 0 || lasts === 0) return start;
    if (wanted > now.length) return never;
    if (wanted > 1) return this.nextOfSeveral(wanted, keeper, start, lasts);
    let next = now[0]!.next(start, lasts);
    if (keeper) return next;
    for (let hand = 1; hand < now.length && next > start; hand++) {
      const one = now[hand]!.next(start, lasts);
      if (one < next) next = one;
    }
    return next;
  }

  private nextOfSeveral(wanted: number, keeper: boolean, start: Minute, lasts: Minute): Minute {
    const { now, soonest } = this;
    for (let hand = 0; hand < now.length; hand++) soonest[hand] = now[hand]!.next(start, lasts);
    const keepers = soonest[0]!;
    soonest.sort();
    const next = soonest[wanted - 1]!;
    return keeper && keepers > next ? keepers : next;
  }

  /** The hands to do a step at a start at which enough are free: the keeper last unless the step asks for him. */
  chosen({ hands: wanted, keeper }: CompiledStep, start: Minute, lasts: Minute): readonly number[] {
    const { now } = this;
    const chosen: number[] = [];
    for (let k = 0; k < now.length && chosen.length < wanted; k++) {
      const hand = keeper ? k : k + 1 < now.length ? k + 1 : 0;
      if (lasts > 0 && !now[hand]!.has(start, lasts)) continue;
      if (wanted === 1) return this.ones[hand]!;
      chosen.push(hand);
    }
    return chosen.length === 2 ? this.twos[chosen[0]!]![chosen[1]!]! : chosen;
  }
}

/** Adds the stretches of a span in which a hand is not busy. */
function addFree(time: FreeTime, busy: Uint8Array, from: Minute, to: Minute): void {
  let minute = from;
  while (minute < to) {
    while (minute < to && busy[minute] === 1) minute++;
    const since = minute;
    while (minute < to && busy[minute] !== 1) minute++;
    if (since < minute) time.add(since, minute);
  }
}
