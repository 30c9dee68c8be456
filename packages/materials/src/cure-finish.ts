import { saturationPressure_hPa, type WeatherHour } from '#sky';
import type { CureLaw } from './cure-law.ts';

/**
 * Progress a minute in one hour of weather; a wait is over when progress reaches 1. [1/min], ≥ 0
 *
 * - `reacts`, `dries`: the ten-degree rule, rate doubling every `doublesPer_C`, at the temperature of the surface.
 * - `moisture`: depth grows with √time and with √(water vapour in the air): diffusion through the skin already cured.
 *
 * Not covered: the heat a thick pour makes of itself (faster), thin cold films (slower), damp air slowing a drying film
 * before it stops it. Checked in checks/materials against integration of another kind.
 */
export function curePerMinute(law: CureLaw, hour: WeatherHour): number {
  switch (law.kind) {
    case 'set time':
      return law.minutes > 0 ? 1 / law.minutes : Number.POSITIVE_INFINITY;
    case 'never cures':
      return Number.POSITIVE_INFINITY;
    case 'reacts':
      return belowMinimum(law, hour)
        ? 0
        : 2 ** ((surface_C(hour) - law.reference_C) / law.doublesPer_C) / law.atReference_min;
    case 'moisture': {
      if (belowMinimum(law, hour)) return 0;
      // depth = k·√t, k in proportion to √(water vapour): progress in depth² is linear in time and in vapour pressure
      const days = (law.depth_mm / law.firstDay_mm) ** 2;
      const vapour = saturationPressure_hPa(hour.air_C) * hour.humidity_pct;
      const atReference = saturationPressure_hPa(law.reference_C) * law.reference_pct;
      return vapour / atReference / (days * 1440);
    }
    case 'dries': {
      if (belowMinimum(law, hour) || hour.humidity_pct >= law.stopsAt_pct) return 0;
      return 2 ** ((surface_C(hour) - law.reference_C) / law.doublesPer_C) / law.atReference_min;
    }
  }
}

/** True where the hour is colder than the product may be. */
export function belowMinimum(law: CureLaw, hour: WeatherHour): boolean {
  return 'minimum_C' in law && surface_C(hour) < law.minimum_C;
}

/**
 * When a wait that starts at a minute is over: the first whole minute at which the progress of the hours it ran
 * through adds up to 1 (less one part in 10⁹, for rounding).
 *
 * @param hours  one for each hour; hour i holds for minutes [60·i, 60·i + 60)
 * @param start  minute the wait starts. whole, ≥ 0
 * @returns      `finish`, or null where the hours end first; `tooCold` when it met an hour below the minimum
 */
export function cureFinish(
  law: CureLaw,
  hours: readonly WeatherHour[],
  start: number,
): { readonly finish: number | null; readonly tooCold: boolean } {
  if (!Number.isInteger(start) || start < 0) throw new RangeError(`start must be a whole minute from 0, got ${start}`);
  if (law.kind === 'never cures') return { finish: start, tooCold: false };
  if (law.kind === 'set time') {
    const finish = start + Math.ceil(law.minutes);
    return { finish: finish <= hours.length * 60 ? finish : null, tooCold: false };
  }
  let left = 1 - 1e-9;
  let tooCold = false;
  let minute = start;
  while (minute < hours.length * 60) {
    const index = Math.floor(minute / 60);
    const hour = hours[index]!;
    if (belowMinimum(law, hour)) tooCold = true;
    const rate = curePerMinute(law, hour);
    const inHour = index * 60 + 60 - minute;
    const needed = rate > 0 ? Math.ceil(left / rate) : Number.POSITIVE_INFINITY;
    if (needed <= inHour) return { finish: minute + needed, tooCold };
    left -= rate * inHour;
    minute += inHour;
  }
  return { finish: null, tooCold };
}

const surface_C = (hour: WeatherHour) => hour.surface_C ?? hour.air_C;
