import type { Dice } from '../dice.ts';
import type { PlainCase } from './plain-case.ts';
import { chainsAfter, left, otherSide, right, Serial, type Side, tooLong } from './serial.ts';

/** schedules in each of the two populations at first, and at most; each time it starts afresh it takes more */
const firstSize = 160;
const mostSize = 1000;
const growth = 1.6;
/** lists without a sooner finish after which it starts afresh beside the best, by schedule of a population */
const patience = 100;
/** activities of a child that are moved to another place in its list, and how many places at most */
const moves = 3;
const mostPlaces = 30;
/** how much of the activities a child takes from one parent whole */
const leastShare = 0.25;
const mostShare = 0.75;
/** between schedules of one length, what the nearness of the work to the side is worth at most. [minutes] */
const nearnessWorth = 0.9;
const noLimit = 2 ** 30;

/**
 * Two populations that feed each other: schedules pushed to the left give the orders from which children are laid from
 * the right, and those again from the left. So each child costs one schedule only, and is justified by the way it
 * comes about. A child keeps a stretch of one parent, before and after it takes the order of the other, and a few of
 * its activities are moved to other places. It is cut short once it is sure to be poorer than the one whose place it
 * would take.
 *
 * Idea: D. Debels, M. Vanhoucke, "A decomposition-based genetic algorithm for the resource-constrained
 * project-scheduling problem", Operations Research 55 (2007), from memory; places are taken one by one instead of by
 * generations.
 */
export class Population {
  /** finish and starts of the best schedule so far */
  best = Number.POSITIVE_INFINITY;
  readonly bestStart: Int32Array;
  private readonly plain: PlainCase;
  private readonly dice: Dice;
  private readonly serial: Serial;
  /** by side the schedules were pushed to: the orders to lay them again from the other, how poor they are, and marks */
  private readonly lists: readonly [Int32Array, Int32Array];
  private readonly poorness: readonly [Float64Array, Float64Array];
  private readonly marks: readonly [Int32Array, Int32Array];
  private readonly child: Int32Array;
  private readonly start: Int32Array;
  private readonly part: Uint8Array;
  private readonly open: Int32Array;
  private readonly ready: Int32Array;
  private readonly chain: Int32Array;
  private readonly work: Float64Array;
  private readonly allWork: number;
  private size = firstSize;
  private filled = 0;
  private idle = 0;
  private from: Side = left;

  constructor(plain: PlainCase, dice: Dice) {
    const { count } = plain;
    this.plain = plain;
    this.dice = dice;
    this.serial = new Serial(plain);
    this.bestStart = new Int32Array(count);
    this.lists = [new Int32Array(mostSize * count), new Int32Array(mostSize * count)];
    this.poorness = [new Float64Array(mostSize), new Float64Array(mostSize)];
    this.marks = [new Int32Array(mostSize), new Int32Array(mostSize)];
    this.child = new Int32Array(count);
    this.start = new Int32Array(count);
    this.part = new Uint8Array(count);
    this.open = new Int32Array(count);
    this.ready = new Int32Array(count);
    this.chain = chainsAfter(plain);
    this.work = workOf(plain);
    this.allWork = this.work.reduce((sum, work) => sum + work, 0);
  }

  /** schedules made so far */
  get schedules(): number {
    return this.serial.schedules;
  }

  /** Makes and judges one more list. */
  step(): void {
    if (this.filled < this.size) this.fill(this.filled++);
    else this.breed();
  }

  /** A list by chance, laid from the left, from the right and from the left again, for both populations. */
  private fill(place: number): void {
    const { serial, child, start } = this;
    this.sample();
    const loose = serial.lay(child, 0, left, start, noLimit);
    serial.fromOtherSide(start, loose, left, child, 0);
    const fromRight = serial.lay(child, 0, right, start, noLimit);
    this.keep(right, place, fromRight);
    serial.fromOtherSide(start, fromRight, right, child, 0);
    const fromLeft = serial.lay(child, 0, left, start, noLimit);
    this.keep(left, place, fromLeft);
    this.note(fromLeft, left);
  }

  private breed(): void {
    const { serial, dice, child, start } = this;
    const from = this.from;
    const to = otherSide(from);
    this.from = to;
    this.cross(from);
    const poorness = this.poorness[to];
    let place = dice.below(this.size);
    for (let tries = 0; tries < 3; tries++) {
      const other = dice.below(this.size);
      if (poorness[other]! > poorness[place]!) place = other;
    }
    const end = serial.lay(child, 0, to, start, Math.floor(poorness[place]!));
    if (end !== tooLong && this.poornessOf(end) <= poorness[place]! && !this.isThere(to, this.mark(end)))
      this.keep(to, place, end);
    this.idle++;
    if (end !== tooLong) this.note(end, to);
    if (this.idle > this.size * patience) {
      this.size = Math.min(mostSize, Math.floor(this.size * growth));
      this.filled = 0;
      this.idle = 0;
    }
  }

  private note(end: number, side: Side): void {
    if (end >= this.best) return;
    const { start, bestStart } = this;
    const { count, duration } = this.plain;
    this.best = end;
    this.idle = 0;
    for (let i = 0; i < count; i++) bestStart[i] = side === left ? start[i]! : end - start[i]! - duration[i]!;
  }

  private keep(side: Side, place: number, end: number): void {
    this.poorness[side][place] = this.poornessOf(end);
    this.marks[side][place] = this.mark(end);
    this.serial.fromOtherSide(this.start, end, side, this.lists[side], place * this.plain.count);
  }

  /** Length of the schedule made last, and under a minute for how far from the side its work lies. */
  private poornessOf(end: number): number {
    const { start, work, allWork } = this;
    if (end === 0 || allWork === 0) return end;
    let far = 0;
    for (let i = 0; i < start.length; i++) far += start[i]! * work[i]!;
    return end + (nearnessWorth * far) / (allWork * end);
  }

  /** The same for the same schedule, and hardly ever for another. */
  private mark(end: number): number {
    let mark = end;
    for (let i = 0; i < this.start.length; i++) mark = (Math.imul(mark, 31) + this.start[i]!) | 0;
    return mark;
  }

  private isThere(side: Side, mark: number): boolean {
    const marks = this.marks[side];
    for (let place = 0; place < this.size; place++) if (marks[place] === mark) return true;
    return false;
  }

  /** A list by chance, the more urgent (by the chain behind it) the likelier. */
  private sample(): void {
    const { count, beforeFrom, afterFrom, after } = this.plain;
    const { child, open, ready, chain, dice } = this;
    let readyCount = 0;
    for (let i = 0; i < count; i++) {
      open[i] = beforeFrom[i + 1]! - beforeFrom[i]!;
      if (open[i] === 0) ready[readyCount++] = i;
    }
    for (let position = 0; position < count; position++) {
      let pick = dice.below(readyCount);
      for (let tries = 0; tries < 2; tries++) {
        const other = dice.below(readyCount);
        if (chain[ready[other]!]! > chain[ready[pick]!]!) pick = other;
      }
      const i = ready[pick]!;
      ready[pick] = ready[--readyCount]!;
      child[position] = i;
      for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) {
        open[after[a]!]!--;
        if (open[after[a]!] === 0) ready[readyCount++] = after[a]!;
      }
    }
  }

  private parent(side: Side): number {
    const one = this.dice.below(this.size);
    const other = this.dice.below(this.size);
    return this.poorness[side][one]! <= this.poorness[side][other]! ? one : other;
  }

  /** Writes a child of two schedules pushed to `side`, to be laid from the other. */
  private cross(side: Side): void {
    const { count } = this.plain;
    const { child, part, dice } = this;
    const lists = this.lists[side];
    const one = this.parent(side);
    let two = this.parent(side);
    if (two === one) two = (two + 1) % this.size;
    const mother = one * count;
    const father = two * count;
    const long = Math.max(2, Math.floor(count * (leastShare + (mostShare - leastShare) * dice.share())));
    const at = dice.below(count + long) - long;
    const from = Math.max(0, at);
    const to = Math.min(count, at + long);
    for (let p = 0; p < count; p++) part[lists[mother + p]!] = p < from ? 0 : p < to ? 1 : 2;
    for (let p = from; p < to; p++) child[p] = lists[mother + p]!;
    let early = 0;
    let late = to;
    for (let p = 0; p < count; p++) {
      const i = lists[father + p]!;
      if (part[i] === 0) child[early++] = i;
      else if (part[i] === 2) child[late++] = i;
    }
    for (let n = 0; n < moves; n++) this.move(side, dice.below(count));
  }

  /** Moves one activity of the child to a place by chance, not past what must come before or after it. */
  private move(side: Side, at: number): void {
    const { child, dice } = this;
    const { count } = this.plain;
    const i = child[at]!;
    const lowest = Math.max(0, at - mostPlaces);
    const highest = Math.min(count - 1, at + mostPlaces);
    let low = at;
    while (low > lowest && !this.isOrdered(side, child[low - 1]!, i)) low--;
    let high = at;
    while (high < highest && !this.isOrdered(side, i, child[high + 1]!)) high++;
    const to = low + dice.below(high - low + 1);
    if (to < at) child.copyWithin(to + 1, to, at);
    else child.copyWithin(at, at + 1, to + 1);
    child[to] = i;
  }

  /** Whether in a list of `side` one must come before the other, directly. */
  private isOrdered(side: Side, one: number, other: number): boolean {
    return side === left ? this.waitsFor(one, other) : this.waitsFor(other, one);
  }

  private waitsFor(later: number, sooner: number): boolean {
    const { beforeFrom, before } = this.plain;
    for (let b = beforeFrom[later]!; b < beforeFrom[later + 1]!; b++) if (before[b] === sooner) return true;
    return false;
  }
}

/** What each activity takes of all resources together, each measured by its capacity. [minutes] */
function workOf({ count, duration, resources, request, capacity }: PlainCase): Float64Array {
  const work = new Float64Array(count);
  for (let i = 0; i < count; i++)
    for (let k = 0; k < resources; k++)
      if (capacity[k]! > 0) work[i]! += (duration[i]! * request[i * resources + k]!) / capacity[k]!;
  return work;
}
