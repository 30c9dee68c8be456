import type { PlainCase } from './plain-case.ts';

/** the side a schedule is pushed to; from the right time is counted backwards from the end */
export type Side = 0 | 1;
export const left: Side = 0;
export const right: Side = 1;
export const otherSide = (side: Side): Side => (side === left ? right : left);

/** what `lay` returns where the schedule would be too long */
export const tooLong = -1;

/**
 * Lays activities one after the other, each as near to one side as it can be (serial generation). Read off from the
 * other side, a schedule gives the order in which laying it again from there makes it no longer (justification). Owns
 * its work space: nothing is allocated while it works.
 *
 * Idea: V. Valls, F. Ballestín, S. Quintanilla, "Justification and RCPSP", European Journal of Operational Research
 * 165 (2005), from memory.
 */
export class Serial {
  /** schedules made so far, those cut short too */
  schedules = 0;
  private readonly plain: PlainCase;
  private readonly free: Int32Array;
  private readonly finish: Int32Array;
  private readonly places: Int32Array;
  /** by side: the longest chain that comes after each activity, its own time not counted */
  private readonly behind: readonly [Int32Array, Int32Array];
  /** minutes from 0 in which `free` may hold anything */
  private used: number;

  constructor(plain: PlainCase) {
    this.plain = plain;
    this.free = new Int32Array((plain.horizon + 1) * plain.words);
    this.finish = new Int32Array(plain.count);
    this.places = new Int32Array(plain.horizon + 2);
    this.behind = [chainsAfter(plain), chainsBefore(plain)];
    this.used = plain.horizon + 1;
  }

  /**
   * Makes the schedule of a list in which each activity comes after what must lie nearer to the side.
   *
   * @param list   activities, `count` of them from `at`
   * @param start  takes the distance of each activity from the side, by activity. [minutes]
   * @param most   nothing longer is wanted. [minutes]
   * @returns      how long it takes in all, or `tooLong`, as soon as it is sure to be; `start` is then in part stale
   */
  lay(list: Int32Array, at: number, side: Side, start: Int32Array, most: number): number {
    this.schedules++;
    this.clear();
    const { plain, free, finish } = this;
    const { count, duration, packedRequest, words } = plain;
    const from = side === left ? plain.beforeFrom : plain.afterFrom;
    const nearer = side === left ? plain.before : plain.after;
    const behind = this.behind[side];
    const top = plain.guard[0]!;
    let end = 0;
    for (let position = 0; position < count; position++) {
      const i = list[at + position]!;
      const lasts = duration[i]!;
      let placed = 0;
      for (let b = from[i]!, to = from[i + 1]!; b < to; b++) {
        const until = finish[nearer[b]!]!;
        if (until > placed) placed = until;
      }
      if (words > 1) placed = this.fit(i, placed);
      else if (packedRequest[i] !== 0) {
        const ask = packedRequest[i]!;
        // backwards, so that a minute without room rules out all starts up to it at once
        let minute = placed + lasts - 1;
        while (minute >= placed) {
          if (((free[minute]! - ask) & top) === top) minute--;
          else {
            placed = minute + 1;
            minute = placed + lasts - 1;
          }
        }
        for (minute = placed + lasts - 1; minute >= placed; minute--) free[minute] = free[minute]! - ask;
      }
      start[i] = placed;
      const until = placed + lasts;
      finish[i] = until;
      if (until > end) end = until;
      if (until + behind[i]! > most) {
        this.used = end;
        return tooLong;
      }
    }
    this.used = end;
    return end;
  }

  /**
   * Writes the order in which to lay a schedule again from the other side: what is finished last comes first.
   *
   * @param start  distances from `side`, as `lay` gives them
   * @param end    how long the schedule takes
   * @param order  takes the activities, from `at`
   */
  fromOtherSide(start: Int32Array, end: number, side: Side, order: Int32Array, at: number): void {
    const { places } = this;
    const { count, duration } = this.plain;
    places.fill(0, 0, end + 2);
    for (let i = 0; i < count; i++) {
      const key = end - start[i]! - duration[i]! + 1;
      places[key] = places[key]! + 1;
    }
    for (let key = 1; key <= end; key++) places[key] = places[key]! + places[key - 1]!;
    // of equal ones the one that waits for none of the others from the other side
    const step = side === left ? -1 : 1;
    for (let n = 0, i = side === left ? count - 1 : 0; n < count; n++, i += step) {
      const key = end - start[i]! - duration[i]!;
      order[at + places[key]!] = i;
      places[key] = places[key]! + 1;
    }
  }

  private clear(): void {
    const { words, packedCapacity } = this.plain;
    if (words === 1) this.free.fill(packedCapacity[0]!, 0, this.used);
    else for (let place = 0; place < this.used * words; place++) this.free[place] = packedCapacity[place % words]!;
  }

  /** Takes the first place from `soonest` where the activity fits, and returns its start; for any number of words. */
  private fit(activity: number, soonest: number): number {
    const { words, packedRequest, duration } = this.plain;
    const lasts = duration[activity]!;
    let placed = soonest;
    let minute = placed + lasts - 1;
    while (minute >= placed) {
      if (this.fitsAt(activity, minute)) minute--;
      else {
        placed = minute + 1;
        minute = placed + lasts - 1;
      }
    }
    for (minute = placed; minute < placed + lasts; minute++)
      for (let word = 0; word < words; word++)
        this.free[minute * words + word]! -= packedRequest[activity * words + word]!;
    return placed;
  }

  private fitsAt(activity: number, minute: number): boolean {
    const { words, guard, packedRequest } = this.plain;
    for (let word = 0; word < words; word++) {
      const rest = this.free[minute * words + word]! - packedRequest[activity * words + word]!;
      if ((rest & guard[word]!) !== guard[word]!) return false;
    }
    return true;
  }
}

/** The longest chain that waits for each activity, the activity's own time not counted. [minutes] */
export function chainsAfter({ count, duration, afterFrom, after }: PlainCase): Int32Array {
  const chain = new Int32Array(count);
  for (let i = count - 1; i >= 0; i--)
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++)
      chain[i] = Math.max(chain[i]!, chain[after[a]!]! + duration[after[a]!]!);
  return chain;
}

/** The longest chain that each activity waits for. [minutes] */
function chainsBefore({ count, duration, beforeFrom, before }: PlainCase): Int32Array {
  const chain = new Int32Array(count);
  for (let i = 0; i < count; i++)
    for (let b = beforeFrom[i]!; b < beforeFrom[i + 1]!; b++)
      chain[i] = Math.max(chain[i]!, chain[before[b]!]! + duration[before[b]!]!);
  return chain;
}
