import { because, type Facts } from './facts.ts';
import type { ProofCase } from './proof-case.ts';

/**
 * The time table: what is surely taken at each minute. An activity that cannot start after minute a and cannot be
 * finished before minute b is at work throughout [a, b), whatever is decided later. Kept up to date as facts come and
 * go, all resources packed side by side in whole words so that one subtraction tests four at once.
 */
export class Room {
  private readonly facts: Facts;
  private readonly count: number;
  private readonly duration: Int32Array;
  private readonly words: number;
  private readonly guard: Int32Array;
  private readonly ask: Int32Array;
  private readonly free: Int32Array;
  /** the span of each activity that is surely at work, as it stands in `free` */
  readonly sureFrom: Int32Array;
  readonly sureTo: Int32Array;
  private readonly changed: Uint8Array;
  private dirtyFrom = 0;
  private dirtyTo = 0;
  /** activities that ask for anything, for any time */
  private readonly asks: Uint8Array;

  constructor(plain: ProofCase, duration: Int32Array, facts: Facts, horizon: number) {
    const { count, resources, capacity, request } = plain;
    this.facts = facts;
    this.count = count;
    this.duration = duration;
    const bits = capacity.some((most) => most > 127) ? 16 : 8;
    const perWord = 32 / bits;
    const words = Math.max(1, Math.ceil(resources / perWord));
    const packed = (word: number, figure: (resource: number) => number) => {
      let sum = 0;
      for (let field = 0; field < perWord; field++) {
        const resource = word * perWord + field;
        if (resource < resources) sum |= figure(resource) << (field * bits);
      }
      return sum;
    };
    this.words = words;
    this.guard = new Int32Array(words).fill(bits === 8 ? 0x80808080 | 0 : 0x80008000 | 0);
    this.ask = new Int32Array(count * words);
    this.asks = new Uint8Array(count);
    for (let i = 0; i < count; i++)
      for (let word = 0; word < words; word++) {
        const ask = packed(word, (k) => request[i * resources + k]!);
        this.ask[i * words + word] = ask;
        if (ask !== 0 && duration[i]! > 0) this.asks[i] = 1;
      }
    this.free = new Int32Array((horizon + 1) * words);
    for (let at = 0; at < this.free.length; at++)
      this.free[at] = this.guard[at % words]! | packed(at % words, (k) => capacity[k]!);
    this.sureFrom = new Int32Array(count);
    this.sureTo = new Int32Array(count);
    this.changed = new Uint8Array(count).fill(1);
    this.dirtyTo = horizon;
    for (let i = 0; i < count; i++) this.forget(i);
  }

  /** Brings the sure span of an activity up to its facts; false where there is no room for it. */
  note(activity: number): boolean {
    if (this.asks[activity] === 0) return true;
    const { facts, sureFrom, sureTo } = this;
    this.changed[activity] = 1;
    const from = -facts.value[2 * activity + 1]!;
    const to = facts.value[2 * activity]! + this.duration[activity]!;
    if (from >= to) return true;
    if (sureFrom[activity] === sureTo[activity]) {
      sureFrom[activity] = from;
      sureTo[activity] = from;
    }
    let left = sureFrom[activity]!;
    let right = sureTo[activity]!;
    if (left > from || right < to) {
      if (from < this.dirtyFrom) this.dirtyFrom = from;
      if (to > this.dirtyTo) this.dirtyTo = to;
    }
    while (left > from) {
      if (!this.fits(activity, left - 1)) return this.noRoom(left - 1);
      left--;
      this.take(activity, left);
      sureFrom[activity] = left;
    }
    while (right < to) {
      if (!this.fits(activity, right)) return this.noRoom(right);
      this.take(activity, right);
      right++;
      sureTo[activity] = right;
    }
    return true;
  }

  /** Brings the sure span of an activity back to its facts after some were taken off. */
  forget(activity: number): void {
    const { facts, sureFrom, sureTo } = this;
    if (this.asks[activity] === 0) return;
    let left = sureFrom[activity]!;
    let right = sureTo[activity]!;
    if (left === right) return;
    const from = -facts.value[2 * activity + 1]!;
    const to = facts.value[2 * activity]! + this.duration[activity]!;
    while (left < right && left < from) this.give(activity, left++);
    while (right > left && right > to) this.give(activity, --right);
    sureFrom[activity] = left;
    sureTo[activity] = right;
  }

  /** Moves starts past minutes where there is no room for them; false where one finds no place. */
  push(): boolean {
    const { facts, dirtyFrom, dirtyTo, changed, duration } = this;
    const { value } = facts;
    this.dirtyFrom = 1 << 30;
    this.dirtyTo = -1;
    for (let i = 0; i < this.count; i++) {
      const all = changed[i] === 1;
      changed[i] = 0;
      if (this.asks[i] === 0) continue;
      const lasts = duration[i]!;
      let soonest = value[2 * i]!;
      const latest = -value[2 * i + 1]!;
      if (soonest === latest) continue;
      if (all || (soonest < dirtyTo && soonest + lasts > dirtyFrom)) {
        for (;;) {
          const minute = this.lastWithoutRoom(i, soonest, soonest + lasts);
          if (minute < 0) break;
          if (!facts.raise(2 * i, minute + 1, because.room, minute)) return this.stop(dirtyFrom, dirtyTo);
          soonest = minute + 1;
        }
      }
      if (all || (latest < dirtyTo && latest + lasts > dirtyFrom)) {
        let from = latest;
        for (;;) {
          const minute = this.firstWithoutRoom(i, from, from + lasts);
          if (minute < 0) break;
          if (!facts.raise(2 * i + 1, lasts - minute, because.room, minute)) return this.stop(dirtyFrom, dirtyTo);
          from = minute - lasts;
        }
      }
    }
    return true;
  }

  private stop(dirtyFrom: number, dirtyTo: number): false {
    if (dirtyFrom < this.dirtyFrom) this.dirtyFrom = dirtyFrom;
    if (dirtyTo > this.dirtyTo) this.dirtyTo = dirtyTo;
    return false;
  }

  private noRoom(minute: number): false {
    this.facts.brokenSide = -1;
    this.facts.brokenRef = minute;
    return false;
  }

  private lastWithoutRoom(activity: number, from: number, to: number): number {
    const sureFrom = this.sureFrom[activity]!;
    const sureTo = this.sureTo[activity]!;
    for (let minute = to - 1; minute >= from; minute--) {
      if (minute >= sureFrom && minute < sureTo) {
        minute = sureFrom;
        continue;
      }
      if (!this.fits(activity, minute)) return minute;
    }
    return -1;
  }

  private firstWithoutRoom(activity: number, from: number, to: number): number {
    const sureFrom = this.sureFrom[activity]!;
    const sureTo = this.sureTo[activity]!;
    for (let minute = from; minute < to; minute++) {
      if (minute >= sureFrom && minute < sureTo) {
        minute = sureTo - 1;
        continue;
      }
      if (!this.fits(activity, minute)) return minute;
    }
    return -1;
  }

  private fits(activity: number, minute: number): boolean {
    const { words, guard, ask, free } = this;
    if (words === 1) return ((free[minute]! - ask[activity]!) & guard[0]!) === guard[0]!;
    for (let word = 0; word < words; word++) {
      const left = free[minute * words + word]! - ask[activity * words + word]!;
      if ((left & guard[word]!) !== guard[word]!) return false;
    }
    return true;
  }

  private take(activity: number, minute: number): void {
    const { words, ask, free } = this;
    for (let word = 0; word < words; word++) free[minute * words + word]! -= ask[activity * words + word]!;
  }

  private give(activity: number, minute: number): void {
    const { words, ask, free } = this;
    for (let word = 0; word < words; word++) free[minute * words + word]! += ask[activity * words + word]!;
  }
}
