import { belowMinimum, type CureLaw, curePerMinute } from '#materials';
import type { WeatherHour } from '#sky';
import type { Minute } from '../problem.ts';

/**
 * When waits of one product are over, by the minute they start, worked out once for each start.
 *
 * It adds up the hours in the same order as `cureFinish` of `materials` and so rounds the same; a test holds the
 * two to each other.
 */
export class CureTimes {
  private readonly law: CureLaw;
  private readonly horizon: Minute;
  private readonly perMinute: Float64Array;
  private readonly cold: Uint8Array;
  /** finish + 1; 0 not yet worked out; −1 never within the horizon */
  private readonly known: Int32Array;
  private readonly metCold: Uint8Array;

  constructor(law: CureLaw, hours: readonly WeatherHour[]) {
    this.law = law;
    this.horizon = hours.length * 60;
    this.perMinute = Float64Array.from(hours, (hour) => curePerMinute(law, hour));
    this.cold = Uint8Array.from(hours, (hour) => (belowMinimum(law, hour) ? 1 : 0));
    this.known = new Int32Array(this.horizon + 1);
    this.metCold = new Uint8Array(this.horizon + 1);
  }

  /** the minute a wait that starts at `start` is over; −1 where the horizon comes first */
  finish(start: Minute): Minute {
    if (start > this.horizon) return -1;
    const known = this.known[start]!;
    if (known !== 0) return known < 0 ? -1 : known - 1;
    const finish = this.finishFrom(start);
    this.known[start] = finish < 0 ? -1 : finish + 1;
    return finish;
  }

  /** whether a wait that starts at `start` meets an hour below the product's minimum */
  tooCold(start: Minute): boolean {
    this.finish(start);
    return start <= this.horizon && this.metCold[start] === 1;
  }

  private finishFrom(start: Minute): Minute {
    if (this.law.kind === 'never cures') return start;
    if (this.law.kind === 'set time') {
      const finish = start + Math.ceil(this.law.minutes);
      return finish <= this.horizon ? finish : -1;
    }
    let left = 1 - 1e-9;
    let minute = start;
    while (minute < this.horizon) {
      const index = Math.floor(minute / 60);
      if (this.cold[index] === 1) this.metCold[start] = 1;
      const rate = this.perMinute[index]!;
      const inHour = index * 60 + 60 - minute;
      const needed = rate > 0 ? Math.ceil(left / rate) : Number.POSITIVE_INFINITY;
      if (needed <= inHour) return minute + needed;
      left -= rate * inHour;
      minute += inHour;
    }
    return -1;
  }
}
