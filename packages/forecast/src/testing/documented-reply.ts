/**
 * A reply in the form the service documents (Open-Meteo, Weather Forecast API, open-meteo.com/en/docs, looked up
 * 2026-11-26), with invented figures: an hour on each line would read time, air, humidity, rain, its chance, wind.
 */
export interface DocumentedReply {
  latitude: number;
  longitude: number;
  generationtime_ms: number;
  utc_offset_seconds: number;
  timezone: string;
  timezone_abbreviation: string;
  elevation: number;
  hourly_units: Record<string, string>;
  hourly: Record<string, (number | null | string)[]>;
}

/** @param from  epoch ms, on a whole hour */
export function documentedReply(from: number, hours = 216): DocumentedReply {
  const list = (figure: (at: number) => number) => Array.from({ length: hours }, (_, at) => figure(at));
  return {
    // the middle of the grid's cell, not the place asked for
    latitude: -41.25,
    longitude: 174.75,
    generationtime_ms: 0.23,
    utc_offset_seconds: 0,
    timezone: 'GMT',
    timezone_abbreviation: 'GMT',
    elevation: 12,
    hourly_units: {
      time: 'unixtime',
      temperature_2m: '°C',
      relative_humidity_2m: '%',
      precipitation: 'mm',
      precipitation_probability: '%',
      wind_speed_10m: 'kn',
    },
    hourly: {
      time: list((at) => from / 1000 + at * 3600),
      temperature_2m: list((at) => 10 + (at % 24) / 2),
      relative_humidity_2m: list((at) => 90 - (at % 24)),
      precipitation: list((at) => (at === 30 ? 1.4 : 0)),
      precipitation_probability: list((at) => (at === 30 ? 80 : 5)),
      wind_speed_10m: list((at) => 4 + (at % 7)),
    },
  };
}
