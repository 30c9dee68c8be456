/**
 * What is asked of the forecast service, and all that is told of the boat in it: a place, rounded.
 *
 * Source: Open-Meteo, Weather Forecast API (open-meteo.com/en/docs), looked up 2026-11-26. Data under CC BY 4.0.
 */

/** The open hourly forecast service that is asked unless the keeper names a server of their own. */
export const forecastServer = {
  address: 'https://api.open-meteo.com/v1/forecast',
  name: 'Open-Meteo.com',
  site: 'https://open-meteo.com/',
  licence: 'CC BY 4.0',
  licenceSite: 'https://creativecommons.org/licenses/by/4.0/',
} as const;

/** Places are told to a tenth of a degree and no finer. Our choice: a forecast's own grid is 1 to 25 km wide. */
const parts = 10;

/** A place to a tenth of a degree. */
export interface RoundedPlace {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/**
 * A place to the nearest tenth of a degree.
 *
 * @param latitude_deg   −90–90, north over nought
 * @param longitude_deg  −180–180, east over nought
 * @throws RangeError    when one of them is no place on earth
 */
export function roundedPlace(latitude_deg: number, longitude_deg: number): RoundedPlace {
  if (!(Math.abs(latitude_deg) <= 90)) throw new RangeError(`latitude must be −90 to 90°, got ${latitude_deg}`);
  if (!(Math.abs(longitude_deg) <= 180)) throw new RangeError(`longitude must be −180 to 180°, got ${longitude_deg}`);
  // no −0: it would be told as another place
  const rounded = (degrees: number) => Math.round(degrees * parts) / parts + 0;
  return { latitude_deg: rounded(latitude_deg), longitude_deg: rounded(longitude_deg) };
}

/** How far the true place can be from the rounded one: half the diagonal of its cell, at 111.2 km a degree. [km] */
export function roundedWithin_km({ latitude_deg }: RoundedPlace): number {
  const half = 0.5 / parts;
  const widest = Math.cos((Math.max(0, Math.abs(latitude_deg) - half) * Math.PI) / 180);
  return 111.2 * half * Math.hypot(1, widest);
}

/** The figures asked for, and the unit each must come in. */
export const askedUnits = {
  time: 'unixtime',
  temperature_2m: '°C',
  relative_humidity_2m: '%',
  precipitation: 'mm',
  precipitation_probability: '%',
  wind_speed_10m: 'kn',
} as const;

/** How far ahead is asked for, today included. [days], the service gives up to 16 */
const daysAsked = 9;

/**
 * The address that asks a server for the hours of a place. Times are asked for in UTC, so that no zone is told and no
 * change of the clocks can be read wrong.
 */
export function forecastAddress(server: string, { latitude_deg, longitude_deg }: RoundedPlace): string {
  const address = new URL(server);
  const { time: timeformat, wind_speed_10m: wind, ...asked } = askedUnits;
  for (const [name, value] of Object.entries({
    latitude: latitude_deg.toFixed(1),
    longitude: longitude_deg.toFixed(1),
    hourly: [...Object.keys(asked), 'wind_speed_10m'].join(','),
    wind_speed_unit: wind,
    timeformat,
    forecast_days: String(daysAsked),
  }))
    address.searchParams.set(name, value);
  return address.href;
}

export type ServerRead =
  | { readonly kind: 'server'; readonly address: string; readonly origin: string; readonly host: string }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** The server that an address as typed names: over https, or on this very device over http. */
export function serverFrom(typed: string): ServerRead {
  const right = `https://… as in ${forecastServer.address}, or http://127.0.0.1:… on this device`;
  let url: URL;
  try {
    url = new URL(typed.trim());
  } catch {
    return { kind: 'refused', wrong: 'it is no address', right };
  }
  const here = url.hostname === '127.0.0.1' || url.hostname === 'localhost';
  if (url.protocol !== 'https:' && !(url.protocol === 'http:' && here))
    return {
      kind: 'refused',
      wrong: `what is asked over ${url.protocol.replace(':', '')} can be read on the way`,
      right,
    };
  if (url.username !== '' || url.password !== '')
    return { kind: 'refused', wrong: 'it holds a name or a password, which would be sent along', right };
  if (url.search !== '' || url.hash !== '')
    return { kind: 'refused', wrong: 'it asks for something already: leave out all from ? or # on', right };
  return { kind: 'server', address: url.href, origin: url.origin, host: url.host };
}
