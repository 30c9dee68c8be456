/**
 * A stand-in for the forecast service on loopback, which answers in the documented form (packages/forecast/README.md),
 * or with one of the faults it is told to have. Its figures are invented.
 */
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export type StandInFault =
  | 'none'
  | 'broken'
  | 'broken once'
  | 'slow'
  | 'half a reply'
  | 'cut off'
  | 'nonsense'
  | 'wrong units'
  | 'endless'
  | 'elsewhere'
  | 'asked too often'
  | 'refuses'
  | 'another page';

export interface StandIn {
  /** what the keeper names as the server */
  readonly address: string;
  /** what was asked, with its headers, in order */
  readonly asked: { readonly url: string; readonly headers: Readonly<Record<string, string | string[] | undefined>> }[];
  fault: StandInFault;
  close(): Promise<void>;
}

const hour_s = 3600;

/** The body of a good reply: dry but for the afternoon of the day after tomorrow. */
function reply(url: URL, now: number): string {
  const from = Math.floor(now / 86_400_000) * 86_400;
  const at = Array.from({ length: Number(url.searchParams.get('forecast_days')) * 24 }, (_, hour) => hour);
  const wet = (hour: number) => hour >= 60 && hour < 66;
  return JSON.stringify({
    latitude: Number(url.searchParams.get('latitude')) + 0.02,
    longitude: Number(url.searchParams.get('longitude')) - 0.03,
    generationtime_ms: 0.21,
    utc_offset_seconds: 0,
    timezone: 'GMT',
    timezone_abbreviation: 'GMT',
    elevation: 9,
    hourly_units: {
      time: 'unixtime',
      temperature_2m: '°C',
      relative_humidity_2m: '%',
      precipitation: 'mm',
      precipitation_probability: '%',
      wind_speed_10m: 'kn',
    },
    hourly: {
      time: at.map((hour) => from + hour * hour_s),
      temperature_2m: at.map((hour) => 14 + Math.round(Math.sin((hour / 12) * Math.PI) * 30) / 10),
      relative_humidity_2m: at.map(() => 62),
      precipitation: at.map((hour) => (wet(hour) ? 0.8 : 0)),
      precipitation_probability: at.map((hour) => (wet(hour) ? 85 : 5)),
      wind_speed_10m: at.map(() => 6),
    },
  });
}

const faulty: Readonly<
  Record<Exclude<StandInFault, 'none'>, (answer: ServerResponse, good: string, times: number) => void>
> = {
  broken: (answer) => void answer.writeHead(500).end('Internal Server Error'),
  'broken once': (answer, good, times) => void (times === 1 ? answer.writeHead(503).end() : answer.end(good)),
  slow: () => {},
  'half a reply': (answer, good) => void answer.end(good.slice(0, good.length / 2)),
  'cut off': (answer, good) => {
    answer.writeHead(200, { 'content-length': good.length });
    answer.write(good.slice(0, 400), () => answer.destroy());
  },
  nonsense: (answer, good) => void answer.end(good.replace('"temperature_2m":[14', '"temperature_2m":[900')),
  'wrong units': (answer, good) => void answer.end(good.replace('"wind_speed_10m":"kn"', '"wind_speed_10m":"km/h"')),
  endless: (answer) => {
    const more = () => {
      while (!answer.destroyed && answer.write(' '.repeat(65_536)));
      if (!answer.destroyed) answer.once('drain', more);
    };
    more();
  },
  elsewhere: (answer) => void answer.writeHead(302, { location: 'http://127.0.0.1:9/' }).end(),
  'asked too often': (answer) => void answer.writeHead(429).end('{"error":true,"reason":"Daily limit exceeded"}'),
  refuses: (answer) =>
    void answer.writeHead(400).end('{"error":true,"reason":"Latitude must be in range of -90 to 90°."}'),
  'another page': (answer) => void answer.writeHead(404).end('<!doctype html><title>Not here</title>'),
};

/** Starts it on a free port of 127.0.0.1. */
export async function forecastStandIn(): Promise<StandIn> {
  const asked: StandIn['asked'] = [];
  const state = { fault: 'none' as StandInFault };
  const server = createServer((request, answer) => {
    const url = new URL(request.url ?? '/', 'http://127.0.0.1');
    asked.push({ url: url.href.slice(url.origin.length), headers: request.headers });
    answer.setHeader('access-control-allow-origin', '*');
    answer.setHeader('content-type', 'application/json; charset=utf-8');
    answer.on('error', () => {});
    const good = reply(url, Date.now());
    if (state.fault === 'none') answer.end(good);
    else faulty[state.fault](answer, good, asked.length);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/v1/forecast`,
    asked,
    get fault() {
      return state.fault;
    },
    set fault(fault) {
      state.fault = fault;
    },
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
