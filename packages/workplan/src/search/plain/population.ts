import type { Dice } from '../dice.ts';
import { Scheduler } from './justified.ts';
import type { PlainCase } from './plain-case.ts';

/**
 * A population of activity lists: children take a stretch of one parent's order within the other's, are laid out,
 * justified both ways, and take a poorer one's place. When nothing new comes for long it starts afresh beside the best.
 */
export class Population {
  readonly scheduler: Scheduler;
  /** finish and starts of the best schedule so far */
  best = Number.POSITIVE_INFINITY;
  readonly bestStart: Int32Array;
  private readonly plain: PlainCase;
  private readonly dice: Dice;
  private readonly size: number;
  private readonly lists: Int32Array;
  private readonly ends: Int32Array;
  private readonly marks: Int32Array;
  private readonly child: Int32Array;
  private readonly taken: Int32Array;
  private readonly open: Int32Array;
  private readonly latest: Int32Array;
  private readonly ready: Int32Array;
  private filled = 0;
  private stamp = 0;
  private idle = 0;

  constructor(plain: PlainCase, dice: Dice) {
    const { count } = plain;
    this.plain = plain;
    this.dice = dice;
    this.scheduler = new Scheduler(plain);
    this.size = count <= 40 ? 60 : count <= 80 ? 60 : 50;
    this.bestStart = new Int32Array(count);
    this.lists = new Int32Array(this.size * count);
    this.ends = new Int32Array(this.size);
    this.marks = new Int32Array(this.size);
    this.child = new Int32Array(count);
    this.taken = new Int32Array(count);
    this.open = new Int32Array(count);
    this.ready = new Int32Array(count);
    this.latest = latestFinishes(plain);
  }

  /** Makes and judges one more list. */
  step(): void {
    if (this.filled < this.size) {
      this.sample();
      this.judge(this.filled);
      this.filled++;
      return;
    }
    this.cross();
    this.judge(-1);
    if (this.idle > this.size * 30) this.startAfresh();
  }

  private startAfresh(): void {
    this.filled = 0;
    this.idle = 0;
  }

  /** Lays out the child; takes place `into`, or where that is −1 the poorer of some if the child is new and as good. */
  private judge(into: number): void {
    const { scheduler, child } = this;
    const { count } = this.plain;
    let end = scheduler.forward(child);
    end = scheduler.justify(end);
    if (end < this.best) {
      this.best = end;
      this.bestStart.set(scheduler.start);
      this.idle = 0;
    } else this.idle++;
    let mark = end;
    for (let i = 0; i < count; i++) mark = (Math.imul(mark, 31) + scheduler.start[i]!) | 0;
    let place = into;
    if (place < 0) {
      for (let m = 0; m < this.size; m++) if (this.marks[m] === mark) return;
      place = this.dice.below(this.size);
      for (let tries = 0; tries < 3; tries++) {
        const other = this.dice.below(this.size);
        if (this.ends[other]! > this.ends[place]!) place = other;
      }
      if (this.ends[place]! < end) return;
    }
    this.ends[place] = end;
    this.marks[place] = mark;
    this.byStart(place * count);
  }

  /** Writes the activities by start of the last schedule into the lists. */
  private byStart(at: number): void {
    const { count } = this.plain;
    const { start } = this.scheduler;
    for (let i = 0; i < count; i++) {
      let q = at + i - 1;
      while (q >= at && start[this.lists[q]!]! > start[i]!) {
        this.lists[q + 1] = this.lists[q]!;
        q--;
      }
      this.lists[q + 1] = i;
    }
  }

  /** A list by chance, the more urgent (by latest finish) the likelier. */
  private sample(): void {
    const { count, beforeFrom, afterFrom, after } = this.plain;
    const { child, open, ready, latest, dice } = this;
    let readyCount = 0;
    for (let i = 0; i < count; i++) {
      open[i] = beforeFrom[i + 1]! - beforeFrom[i]!;
      if (open[i] === 0) ready[readyCount++] = i;
    }
    for (let position = 0; position < count; position++) {
      let pick = dice.below(readyCount);
      for (let tries = 0; tries < 2; tries++) {
        const other = dice.below(readyCount);
        if (latest[ready[other]!]! < latest[ready[pick]!]!) pick = other;
      }
      const i = ready[pick]!;
      ready[pick] = ready[--readyCount]!;
      child[position] = i;
      for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++)
        if (--open[after[a]!]! === 0) ready[readyCount++] = after[a]!;
    }
  }

  private parent(): number {
    const one = this.dice.below(this.size);
    const other = this.dice.below(this.size);
    return this.ends[one]! <= this.ends[other]! ? one : other;
  }

  private cross(): void {
    const { count } = this.plain;
    const { child, taken, lists, dice } = this;
    const mother = this.parent() * count;
    const father = this.parent() * count;
    const from = dice.below(count);
    const long = 1 + Math.floor(count / 4) + dice.below(Math.max(1, Math.floor(count / 2)));
    const to = Math.min(count, from + long);
    const stamp = ++this.stamp;
    let position = 0;
    for (; position < from; position++) {
      child[position] = lists[mother + position]!;
      taken[child[position]!] = stamp;
    }
    for (let p = 0; p < count && position < to; p++) {
      const i = lists[father + p]!;
      if (taken[i] !== stamp) {
        child[position++] = i;
        taken[i] = stamp;
      }
    }
    for (let p = 0; p < count && position < count; p++) {
      const i = lists[mother + p]!;
      if (taken[i] !== stamp) {
        child[position++] = i;
        taken[i] = stamp;
      }
    }
    for (let p = 0; p + 1 < count; p++) {
      if (!dice.chance(0.05)) continue;
      const [i, j] = [child[p]!, child[p + 1]!];
      if (this.waitsFor(j, i)) continue;
      child[p] = j;
      child[p + 1] = i;
    }
  }

  private waitsFor(later: number, sooner: number): boolean {
    const { beforeFrom, before } = this.plain;
    for (let b = beforeFrom[later]!; b < beforeFrom[later + 1]!; b++) if (before[b] === sooner) return true;
    return false;
  }
}

/** Latest finish of each activity if the whole took as long as the longest chain; shifted so that the last is 0. */
function latestFinishes(plain: PlainCase): Int32Array {
  const latest = new Int32Array(plain.count);
  for (let i = plain.count - 1; i >= 0; i--)
    for (let a = plain.afterFrom[i]!; a < plain.afterFrom[i + 1]!; a++) {
      const j = plain.after[a]!;
      latest[i] = Math.min(latest[i]!, latest[j]! - plain.duration[j]!);
    }
  return latest;
}
