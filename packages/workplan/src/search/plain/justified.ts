import type { PlainCase } from './plain-case.ts';

/**
 * Lays activities one after the other, each as soon as it can be (serial generation), and pushes a schedule to the
 * right and back to the left to shorten it (double justification). Owns its work space: nothing is allocated while
 * it works.
 *
 * Idea: V. Valls, F. Ballestín, S. Quintanilla, "Justification and RCPSP", European Journal of Operational Research
 * 165 (2005), from memory.
 */
export class Scheduler {
  readonly plain: PlainCase;
  /** starts of the schedule made last */
  readonly start: Int32Array;
  private readonly free: Int32Array;
  private readonly order: Int32Array;
  private readonly late: Int32Array;
  /** schedules made so far; each pass of a justification counts as one */
  schedules = 0;

  constructor(plain: PlainCase) {
    this.plain = plain;
    this.start = new Int32Array(plain.count);
    this.late = new Int32Array(plain.count);
    this.order = new Int32Array(plain.count);
    this.free = new Int32Array((plain.horizon + 1) * plain.words);
  }

  /**
   * Starts for a list in which each activity comes after what it waits for.
   *
   * @param list  activities, `count` of them from `at`
   * @returns     when the last is finished
   */
  forward(list: Int32Array, at = 0): number {
    const { count, duration, beforeFrom, before } = this.plain;
    const { start } = this;
    this.schedules++;
    this.clear();
    let end = 0;
    for (let position = 0; position < count; position++) {
      const i = list[at + position]!;
      let soonest = 0;
      for (let b = beforeFrom[i]!; b < beforeFrom[i + 1]!; b++) {
        const j = before[b]!;
        const finish = start[j]! + duration[j]!;
        if (finish > soonest) soonest = finish;
      }
      const placed = this.fit(i, soonest);
      start[i] = placed;
      const finish = placed + duration[i]!;
      if (finish > end) end = finish;
    }
    return end;
  }

  /**
   * The schedule made last, pushed right and back left; never longer than before.
   *
   * @param end  when its last activity is finished
   * @returns    when the last is finished now
   */
  justify(end: number): number {
    const { count, duration, beforeFrom, before, afterFrom, after } = this.plain;
    const { start, late, order } = this;
    // To the right, by finish from the last: the same work in a mirror, minute `end` becoming 0.
    for (let i = 0; i < count; i++) order[i] = i;
    for (let p = 1; p < count; p++) {
      const i = order[p]!;
      const key = start[i]! + duration[i]!;
      let q = p - 1;
      while (q >= 0 && comesBefore(key, i, start[order[q]!]! + duration[order[q]!]!, order[q]!)) {
        order[q + 1] = order[q]!;
        q--;
      }
      order[q + 1] = i;
    }
    this.schedules += 2;
    this.clear();
    for (let p = 0; p < count; p++) {
      const i = order[p]!;
      let soonest = 0;
      for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) {
        const j = after[a]!;
        const mirrored = late[j]! + duration[j]!;
        if (mirrored > soonest) soonest = mirrored;
      }
      late[i] = this.fit(i, soonest);
    }
    // Back to the left, by start from the first.
    for (let i = 0; i < count; i++) {
      late[i] = end - late[i]! - duration[i]!;
      order[i] = i;
    }
    for (let p = 1; p < count; p++) {
      const i = order[p]!;
      const key = late[i]!;
      let q = p - 1;
      while (q >= 0 && (late[order[q]!]! > key || (late[order[q]!]! === key && order[q]! > i))) {
        order[q + 1] = order[q]!;
        q--;
      }
      order[q + 1] = i;
    }
    this.clear();
    let finishLast = 0;
    for (let p = 0; p < count; p++) {
      const i = order[p]!;
      let soonest = 0;
      for (let b = beforeFrom[i]!; b < beforeFrom[i + 1]!; b++) {
        const j = before[b]!;
        const finish = start[j]! + duration[j]!;
        if (finish > soonest) soonest = finish;
      }
      const placed = this.fit(i, soonest);
      start[i] = placed;
      if (placed + duration[i]! > finishLast) finishLast = placed + duration[i]!;
    }
    return finishLast;
  }

  private clear(): void {
    const { words, packedCapacity } = this.plain;
    if (words === 1) this.free.fill(packedCapacity[0]!);
    else for (let at = 0; at < this.free.length; at++) this.free[at] = packedCapacity[at % words]!;
  }

  /** Takes the first place from `soonest` where the activity fits, and returns its start. */
  private fit(activity: number, soonest: number): number {
    const { words, guard, packedRequest } = this.plain;
    const { free } = this;
    const lasts = this.plain.duration[activity]!;
    let start = soonest;
    if (lasts === 0) return start;
    if (words === 1) {
      const ask = packedRequest[activity]!;
      const top = guard[0]!;
      if (ask === 0) return start;
      for (;;) {
        let minute = start + lasts - 1;
        while (minute >= start && ((free[minute]! - ask) & top) === top) minute--;
        if (minute < start) break;
        start = minute + 1;
      }
      for (let minute = start + lasts - 1; minute >= start; minute--) free[minute]! -= ask;
      return start;
    }
    for (;;) {
      let minute = start + lasts - 1;
      while (minute >= start && this.fitsAt(activity, minute)) minute--;
      if (minute < start) break;
      start = minute + 1;
    }
    for (let minute = start; minute < start + lasts; minute++)
      for (let word = 0; word < words; word++) free[minute * words + word]! -= packedRequest[activity * words + word]!;
    return start;
  }

  private fitsAt(activity: number, minute: number): boolean {
    const { words, guard, packedRequest } = this.plain;
    for (let word = 0; word < words; word++) {
      const left = this.free[minute * words + word]! - packedRequest[activity * words + word]!;
      if ((left & guard[word]!) !== guard[word]!) return false;
    }
    return true;
  }
}

/** Later finishes first; of equal ones the later number, which waits for none of the lower. */
function comesBefore(finish: number, activity: number, otherFinish: number, other: number): boolean {
  return finish > otherFinish || (finish === otherFinish && activity > other);
}
