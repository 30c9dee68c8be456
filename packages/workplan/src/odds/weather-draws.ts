/**
 * The weather that may come, drawn hour by hour around what the plan counts on, so that spells stay spells.
 *
 * Rain. Each hour has its chance p of rain. A normal quantity that forgets slowly, z' = r·z + √(1 − r²)·e from hour
 * to hour, makes the hour wet where the share of z is under p: every hour keeps its own chance, and wet and dry hours
 * come in spells. r = 0.9 an hour (our assumption). Five hours at 80 % dry are then all dry about 6 times of 10;
 * independent hours would make it 33 of 100.
 *
 * Where an hour gives no chance of rain, a forecast is wrong so often (our assumption): said dry and wet 5 of 100
 * today and 3 more for every day ahead, at most 25; said wet and dry 15 of 100 today and 5 more a day, at most 50.
 *
 * Air. Warmer or cooler than said by a slow error (r = 0.98 an hour, our assumption) of 1.0 °C today and 0.36 °C more
 * for every day ahead. Source: 95.1 % of three-hourly temperatures of the same day within 2 °C (Met Office, Accuracy
 * performance, 36-month mean; 2/1.97 = 1.0 °C); mean absolute error 1.03, 1.15, 1.36, 1.82, 2.32 °C on days 1 to 5
 * (MetGIS, Forecast quality, one station, winter 2011/2012; times 1.25 for a normal quantity 1.3 to 2.9 °C). Both
 * looked up 2026-11-25. The surface goes with the air.
 *
 * Wind is off by a factor exp(s·z), s = 0.15 today and 0.04 more a day, at most 0.4, r = 0.95; humidity by 5 points
 * today and 1.5 more a day, at most 12, r = 0.95; a wet hour that was said dry has at least 90 % (our assumptions).
 *
 * Hours nobody has looked at (basis 'climate') stay as the plan takes them: cautious, and certain. So do hours gone by.
 */
import type { PlanHour, Problem } from '../problem.ts';
import type { Dice } from '../search/dice.ts';
import { normalShare } from './normal-share.ts';

export const assumedRainKeeps = 0.9;
const assumedAirKeeps = 0.98;
const assumedWindKeeps = 0.95;

/** Forecasts round: 0 % of rain is taken as 2 %, 100 % as 98 %. Our assumption. */
const assumedRounding = 0.02;

/** Chance of rain in an hour. `days` is how far ahead of `now` it lies. From 0 to 1 */
export function rainChance(hour: PlanHour, days: number): number {
  if (hour.rainOdds_pct !== undefined)
    return Math.min(1 - assumedRounding, Math.max(assumedRounding, hour.rainOdds_pct / 100));
  if (hour.basis === 'climate') return hour.rain ? 1 : 0;
  return hour.rain ? 1 - Math.min(0.5, 0.15 + 0.05 * days) : Math.min(0.25, 0.05 + 0.03 * days);
}

type Writable = { -readonly [K in keyof PlanHour]: PlanHour[K] };

/** Weather for one run after another. The hours are written over by each `draw`. */
export class WeatherDraws {
  readonly hours: readonly PlanHour[];
  private readonly said: readonly PlanHour[];
  private readonly drawn: readonly { readonly index: number; readonly hour: Writable; readonly days: number }[];
  private readonly chances: Float64Array;
  private readonly first: number;

  constructor(problem: Problem) {
    this.said = problem.hours;
    this.first = Math.floor(problem.now / 60);
    const drawn: { index: number; hour: Writable; days: number }[] = [];
    this.hours = problem.hours.map((hour, index) => {
      const certain = hour.basis === 'climate' && hour.rainOdds_pct === undefined;
      if (index < this.first || certain) return hour;
      const copy: Writable = { ...hour };
      drawn.push({ index, hour: copy, days: Math.max(0, index * 60 - problem.now) / 1440 });
      return copy;
    });
    this.drawn = drawn;
    this.chances = Float64Array.from(drawn, ({ index, days }) => rainChance(problem.hours[index]!, days));
  }

  /** Draws the weather of a run. */
  draw(dice: Dice): void {
    let at = this.first;
    let [rain, air, wind, damp] = [normal(dice), normal(dice), normal(dice), normal(dice)];
    for (const [n, { index, hour, days }] of this.drawn.entries()) {
      const hoursOn = index - at;
      at = index;
      if (hoursOn > 0) {
        rain = on(rain, assumedRainKeeps, hoursOn, dice);
        air = on(air, assumedAirKeeps, hoursOn, dice);
        wind = on(wind, assumedWindKeeps, hoursOn, dice);
        damp = on(damp, assumedWindKeeps, hoursOn, dice);
      }
      const said = this.said[index]!;
      const chance = this.chances[n]!;
      hour.rain = chance > 0 && (chance >= 1 || normalShare(rain) < chance);
      if (said.basis === 'climate') continue;
      const off_C = (1 + 0.36 * days) * air;
      hour.air_C = Math.min(60, Math.max(-45, said.air_C + off_C));
      hour.surface_C = said.surface_C === null ? null : Math.min(90, Math.max(-60, said.surface_C + off_C));
      hour.wind_kn = Math.min(120, said.wind_kn * Math.exp(Math.min(0.4, 0.15 + 0.04 * days) * wind));
      const humidity = Math.min(100, Math.max(1, said.humidity_pct + Math.min(12, 5 + 1.5 * days) * damp));
      hour.humidity_pct = hour.rain && !said.rain ? Math.max(90, humidity) : humidity;
    }
  }

  /** The weather as the plan counts on it. */
  asSaid(): void {
    for (const { index, hour } of this.drawn) Object.assign(hour, this.said[index]!);
  }
}

/** A slow normal quantity some hours on. */
function on(was: number, keeps: number, hours: number, dice: Dice): number {
  const left = hours === 1 ? keeps : keeps ** hours;
  return left * was + Math.sqrt(1 - left * left) * normal(dice);
}

/** A standard normal quantity, by the method of Box and Muller. */
export function normal(dice: Dice): number {
  return Math.sqrt(-2 * Math.log(1 - dice.share())) * Math.cos(2 * Math.PI * dice.share());
}
