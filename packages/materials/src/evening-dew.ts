/** When dew falls on what faces the night sky, and when a coat must be finished before it. */
import { dewPoint_C, type WeatherHour } from '#sky';
import { leastDewMargin_C } from './coating-margin.ts';

/** Stefan–Boltzmann constant. [W/(m²·K⁴)], CODATA 2018, from memory */
const sigma = 5.670374e-8;
/** Paint, varnish, gelcoat and water radiate nearly as a black body. From memory */
const assumedEmissivity = 0.95;
/** A still night is not quite still: below this the wind counts as this. [m/s] Our assumption */
const assumedLeastWind_m_s = 1;
const metresInKnotSecond = 1852 / 3600;

/**
 * How cold a level surface gets that faces a clear night sky and has nothing warm under it: what it radiates to the sky
 * is what the air gives it. [°C]
 *
 * Sky: Berdahl and Martin (1984), emissivity 0.711 + 0.56·(Td/100) + 0.73·(Td/100)². Air: McAdams, 5.7 + 3.8·v
 * W/(m²·K) with the wind in m/s. Both from memory. On a roof with little wind a code of practice for metal roofs says up to
 * 5 °C below the air, which is what comes out (checks/materials).
 *
 * Not covered: what faces the side or stands under a roof or tree (warmer), a heavy deck that keeps the day's warmth for
 * the first hours (warmer), fog, and dew itself, which warms what it falls on.
 *
 * @param cloud_share how much of the sky low cloud closes. 0–1; 0 is the cautious one
 */
export function nightSurface_C(
  { air_C, humidity_pct, wind_kn }: Pick<WeatherHour, 'air_C' | 'humidity_pct' | 'wind_kn'>,
  cloud_share = 0,
): number {
  const td = dewPoint_C(air_C, humidity_pct) / 100;
  const clear = 0.711 + 0.56 * td + 0.73 * td * td;
  const sky = clear + (1 - clear) * cloud_share;
  const air_K = air_C + 273.15;
  const air = 5.7 + 3.8 * Math.max(assumedLeastWind_m_s, wind_kn * metresInKnotSecond);
  // the surface radiates to the fourth power of its own temperature: three rounds of Newton are exact to 0.001 °C
  let surface_K = air_K;
  for (let round = 0; round < 3; round++) {
    const gain = assumedEmissivity * sigma * (sky * air_K ** 4 - surface_K ** 4) + air * (air_K - surface_K);
    surface_K += gain / (4 * assumedEmissivity * sigma * surface_K ** 3 + air);
  }
  return Math.min(air_C, surface_K - 273.15);
}

/** One hour as dew sees it. */
export interface DewHour extends Pick<WeatherHour, 'air_C' | 'humidity_pct' | 'wind_kn' | 'surface_C'> {
  /** the sun is down, or so low that it warms nothing */
  readonly dark: boolean;
}

/** Margin of what faces the sky over the dew point in an hour. [°C]; 0 and below: dew (or frost) falls */
export function skyMargin_C(hour: DewHour, cloud_share = 0): number {
  const surface = hour.surface_C ?? (hour.dark ? nightSurface_C(hour, cloud_share) : hour.air_C);
  return surface - dewPoint_C(hour.air_C, hour.humidity_pct);
}

/** Hours before the dew at which a coat must be on. Trade practice (handbook row materials.sun). [h] */
export const stopBeforeDew_h = { least: 2, most: 3 } as const;

export type EveningStop =
  /** minutes after the first hour given; `by` is at the latest, `better` at the earlier end of the practice */
  | { readonly kind: 'stop'; readonly by: number; readonly better: number; readonly dew: number }
  /** the margin is gone before the dew itself, and that comes first */
  | { readonly kind: 'margin first'; readonly by: number; readonly dew: number | null }
  | { readonly kind: 'too late'; readonly dew: number | null; readonly because: string }
  | { readonly kind: 'no dew'; readonly hours: number };

/**
 * When to stop coating before the dew: 2 to 3 h before it falls on what faces the sky, and never with less than 3 °C
 * between the surface and the dew point (ISO 8502-4).
 *
 * @param hours        from the hour the work would begin in; hour i is minutes [60·i, 60·i + 60)
 * @param cloud_share  how much of the sky low cloud closes. 0–1
 */
export function eveningStop(hours: readonly DewHour[], cloud_share = 0): EveningStop {
  const margins = hours.map((hour) => skyMargin_C(hour, cloud_share));
  const at = (index: number) => (index < 0 ? null : index * 60);
  const dew = at(margins.findIndex((margin) => margin <= 0));
  const gone = at(margins.findIndex((margin) => margin < leastDewMargin_C));
  if (gone === null) return { kind: 'no dew', hours: hours.length };
  const by = dew === null ? Number.POSITIVE_INFINITY : dew - stopBeforeDew_h.least * 60;
  if (gone === 0)
    return {
      kind: 'too late',
      dew,
      because: `the surface is only ${Math.max(0, Math.round(margins[0]! * 10) / 10)} °C over the dew point`,
    };
  if (by <= 0) return { kind: 'too late', dew, because: 'dew falls within 2 h' };
  if (gone <= by) return { kind: 'margin first', by: gone, dew };
  return { kind: 'stop', by, better: Math.max(0, by - (stopBeforeDew_h.most - stopBeforeDew_h.least) * 60), dew: dew! };
}
