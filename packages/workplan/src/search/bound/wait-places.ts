import type { Minute } from '../../problem.ts';
import type { CureTimes } from '../cure-times.ts';
import type { WorkMinutes } from './work-minutes.ts';

/**
 * By place of a step's start, the places that what follows it may start at, or that its wait lies in. Steps that last
 * as long and wait alike share one row: of hundreds of steps there are some dozens, and each is as long as the days.
 */
export class WaitPlaces {
  private readonly axis: WorkMinutes;
  private readonly horizon: Minute;
  private readonly rows = new Map<string, Int32Array>();
  private readonly cures = new Map<CureTimes, number>();

  constructor(axis: WorkMinutes, horizon: Minute) {
    this.axis = axis;
    this.horizon = horizon;
  }

  /**
   * The first place at or after `least` minutes after the end of the wait; `count` where there is none.
   *
   * @param cure   null: no wait, the step's own end
   * @param lasts  what the step lasts
   */
  after(cure: CureTimes | null, lasts: Minute, least: Minute): Int32Array {
    return this.row(`after ${this.nameOf(cure)} ${lasts} ${least}`, (row) => {
      const { minute, placeFrom, count } = this.axis;
      for (let place = 0; place < count; place++) {
        const end = this.endOf(cure, minute[place]! + lasts);
        const start = end < 0 ? this.horizon + 1 : end + least;
        row[place] = start > this.horizon ? count : placeFrom[start]!;
      }
      // a later finish never has an earlier end; rounding is not to make it so
      for (let place = count - 2; place >= 0; place--) row[place] = Math.min(row[place]!, row[place + 1]!);
    });
  }

  /** The last place up to `greatest` minutes after the end of the wait. */
  upTo(cure: CureTimes | null, lasts: Minute, greatest: Minute): Int32Array {
    return this.row(`up to ${this.nameOf(cure)} ${lasts} ${greatest}`, (row) => {
      const { minute, placeFrom, count } = this.axis;
      for (let place = 0; place < count; place++) {
        const finish = minute[place]! + lasts;
        const end = finish > this.horizon ? -1 : this.endOf(cure, finish);
        const last = end < 0 ? this.horizon + 1 : end + greatest;
        row[place] = last > this.horizon ? count - 1 : placeFrom[last + 1]! - 1;
      }
      for (let place = 1; place < count; place++) row[place] = Math.max(row[place]!, row[place - 1]!);
    });
  }

  /** The first place at which a wait has begun for certain. */
  begun(latest: Minute): Int32Array {
    return this.row(`begun ${latest}`, (row) => {
      const { minute, placeFrom, count } = this.axis;
      for (let place = 0; place < count; place++)
        row[place] = placeFrom[Math.min(this.horizon + 1, minute[place]! + latest)]!;
    });
  }

  /** The first place at which a wait may be over, no sooner than it has begun for certain. */
  over(cure: CureTimes, lasts: Minute, latest: Minute): Int32Array {
    const begun = this.begun(latest);
    return this.row(`over ${this.nameOf(cure)} ${lasts} ${latest}`, (row) => {
      const { minute, placeFrom, count } = this.axis;
      let least = count;
      for (let place = count - 1; place >= 0; place--) {
        const end = this.endOf(cure, minute[place]! + lasts);
        least = Math.min(least, end < 0 ? count : placeFrom[end]!);
        row[place] = Math.max(least, begun[place]!);
      }
    });
  }

  private endOf(cure: CureTimes | null, finish: Minute): Minute {
    if (cure === null) return finish;
    return finish > this.horizon ? -1 : cure.finish(finish);
  }

  private nameOf(cure: CureTimes | null): number {
    if (cure === null) return -1;
    const known = this.cures.get(cure);
    if (known !== undefined) return known;
    this.cures.set(cure, this.cures.size);
    return this.cures.size - 1;
  }

  private row(key: string, fill: (row: Int32Array) => void): Int32Array {
    const known = this.rows.get(key);
    if (known !== undefined) return known;
    const row = new Int32Array(this.axis.count);
    fill(row);
    this.rows.set(key, row);
    return row;
  }
}
