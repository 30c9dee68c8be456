import type { Minute } from '../../problem.ts';
import { never } from './frame.ts';

/**
 * When a hand is free: stretches in order of time. Two that touch, as where one day begins when another ends, may
 * become one: that work lies within one stretch of a day is for others to see to.
 */
export class FreeTime {
  private from: Int32Array;
  private to: Int32Array;
  private count = 0;
  /** the stretch found last: what is asked next is often about the same minute */
  private found = 0;

  /** @param room  stretches for which there is room at first */
  constructor(room: number) {
    this.from = new Int32Array(room);
    this.to = new Int32Array(room);
  }

  /** Adds a stretch after all others. */
  add(from: Minute, to: Minute): void {
    this.openAt(this.count);
    this.from[this.count - 1] = from;
    this.to[this.count - 1] = to;
  }

  /** Takes over the stretches of another. */
  copy({ from, to, count }: FreeTime): void {
    while (this.from.length < count) this.grow();
    const [ownFrom, ownTo] = [this.from, this.to];
    for (let at = 0; at < count; at++) {
      ownFrom[at] = from[at]!;
      ownTo[at] = to[at]!;
    }
    this.count = count;
  }

  /** Takes minutes that lie within one stretch. */
  occupy(start: Minute, finish: Minute): void {
    if (start >= finish) return;
    const at = this.placeOf(start);
    const { from, to } = this;
    if (from[at]! === start) {
      if (to[at]! > finish) from[at] = finish;
      else this.closeAt(at);
    } else if (to[at]! === finish) to[at] = start;
    else {
      this.openAt(at);
      this.to[at] = start;
      this.from[at + 1] = finish;
    }
  }

  /** Gives minutes back that `occupy` took. */
  free(start: Minute, finish: Minute): void {
    if (start >= finish) return;
    const at = this.placeOf(start);
    const { from, to } = this;
    const joinsBefore = at > 0 && to[at - 1]! === start;
    const joinsAfter = at < this.count && from[at]! === finish;
    if (joinsBefore && joinsAfter) {
      from[at] = from[at - 1]!;
      this.closeAt(at - 1);
    } else if (joinsBefore) to[at - 1] = finish;
    else if (joinsAfter) from[at] = start;
    else {
      this.openAt(at);
      this.from[at] = start;
      this.to[at] = finish;
    }
  }

  /** The first start from a minute on with so many free minutes in a row. */
  next(start: Minute, lasts: Minute): Minute {
    const { from, to, count } = this;
    for (let at = this.placeOf(start); at < count; at++) {
      const begin = from[at]! > start ? from[at]! : start;
      if (to[at]! - begin < lasts) continue;
      this.found = at;
      return begin;
    }
    return never;
  }

  /** Whether so many minutes in a row are free from a minute on. */
  has(start: Minute, lasts: Minute): boolean {
    const at = this.placeOf(start);
    return at < this.count && this.from[at]! <= start && this.to[at]! - start >= lasts;
  }

  /** the first stretch that ends after a minute */
  private placeOf(minute: Minute): number {
    const { to, count, found } = this;
    if (found < count && to[found]! > minute && (found === 0 || to[found - 1]! <= minute)) return found;
    let low = 0;
    let high = count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (to[middle]! <= minute) low = middle + 1;
      else high = middle;
    }
    this.found = low;
    return low;
  }

  /** Makes room for one more stretch at a place; what it holds there is still that of the stretch before. */
  private openAt(at: number): void {
    if (this.count === this.from.length) this.grow();
    const { from, to } = this;
    for (let k = this.count; k > at; k--) {
      from[k] = from[k - 1]!;
      to[k] = to[k - 1]!;
    }
    this.count++;
  }

  private closeAt(at: number): void {
    const { from, to } = this;
    this.count--;
    for (let k = at; k < this.count; k++) {
      from[k] = from[k + 1]!;
      to[k] = to[k + 1]!;
    }
  }

  private grow(): void {
    const longer = (list: Int32Array) => {
      const next = new Int32Array(2 * list.length + 8);
      next.set(list);
      return next;
    };
    this.from = longer(this.from);
    this.to = longer(this.to);
  }
}
