import type { WeatherHour } from '#sky';

/**
 * The weather of an hour for which nothing was entered: the stated cautious value.
 *
 * Cautious for work means wet, breezy, cool and damp, so that no plan leans on an hour nobody has looked at:
 * rain, 15 kn of wind, 95 % humidity from 18:00 to 10:00 and 75 % between, and air 3 °C cooler than our plain
 * picture of a sea-level climate,
 *   yearly mean   28 − 0.0068·φ²       (28 °C at the equator, 11 °C at 50°)
 *   summer−winter ± 0.14·|φ|           coldest and warmest about five weeks after the solstices
 *   day−night     ± 4                  warmest at 15:00, coldest at 03:00
 * The surface is taken as the air.
 *
 * @param latitude_deg  north positive. −90–90
 * @param dayOfYear     1–366
 * @param hour          clock hour at the place. whole, 0–23
 *
 * Our assumption, shown to the keeper wherever a plan uses it; no forecast and no station's record. Not covered:
 * height above the sea, deserts, monsoons.
 */
export function cautiousClimate(latitude_deg: number, dayOfYear: number, hour: number): WeatherHour {
  if (!(latitude_deg >= -90 && latitude_deg <= 90))
    throw new RangeError(`latitude must be −90 to 90°, got ${latitude_deg}`);
  if (!(dayOfYear >= 1 && dayOfYear <= 366)) throw new RangeError(`day of the year must be 1 to 366, got ${dayOfYear}`);
  if (!Number.isInteger(hour) || hour < 0 || hour > 23) throw new RangeError(`hour must be 0 to 23, got ${hour}`);
  const yearMean_C = 28 - 0.0068 * latitude_deg ** 2;
  const season_C = 0.14 * latitude_deg * Math.cos((2 * Math.PI * (dayOfYear - assumedWarmestDayNorth)) / 365.25);
  const hour_C = 4 * Math.cos((2 * Math.PI * (hour - 15)) / 24);
  const air_C = Math.round((yearMean_C + season_C + hour_C - assumedCaution_C) * 10) / 10;
  const night = hour < 10 || hour >= 18;
  return {
    rain: true,
    wind_kn: assumedWind_kn,
    air_C,
    surface_C: null,
    humidity_pct: night ? 95 : 75,
    basis: 'climate',
  };
}

/** 26 July: the air lags the sun by about five weeks. South of the equator the sign of the latitude turns it round. */
const assumedWarmestDayNorth = 207;
const assumedCaution_C = 3;
const assumedWind_kn = 15;
