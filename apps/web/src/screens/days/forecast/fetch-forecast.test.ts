import { afterEach, beforeEach, expect, test } from 'vitest';
import { roundedPlace } from '#forecast';
import { type Asking, fetchForecast } from './fetch-forecast.ts';
import { forecastStandIn, type StandIn, type StandInFault } from './testing/forecast-stand-in.ts';

const asked = roundedPlace(-41.29, 174.78);
let standIn: StandIn;
beforeEach(async () => {
  standIn = await forecastStandIn();
});
afterEach(async () => {
  await standIn.close();
});

const paused: number[] = [];
function fetched(parts: Partial<Asking> = {}) {
  paused.length = 0;
  const pause = async (ms: number) => void paused.push(ms);
  return fetchForecast({ server: standIn.address, asked, now: Date.now(), timeout_ms: 20_000, pause, ...parts });
}

test('a good reply is a forecast of nine days; only the rounded place was told', async () => {
  const answer = await fetched();
  if (answer.kind !== 'forecast') throw new Error(JSON.stringify(answer));
  expect(answer.hours.air_C).toHaveLength(9 * 24 - 1);
  expect(standIn.asked).toHaveLength(1);
  const { url, headers } = standIn.asked[0]!;
  expect(url).toBe(
    '/v1/forecast?latitude=-41.3&longitude=174.8&hourly=temperature_2m%2Crelative_humidity_2m%2Cprecipitation%2Cprecipitation_probability%2Cwind_speed_10m&wind_speed_unit=kn&timeformat=unixtime&forecast_days=9',
  );
  expect(headers).not.toHaveProperty('cookie');
  expect(headers).not.toHaveProperty('referer');
});

test.each<readonly [StandInFault, RegExp, number]>([
  ['broken', /has trouble of its own \(500\); asked 3 times/, 3],
  ['slow', /did not answer within 0.2 seconds; asked 3 times/, 3],
  ['half a reply', /breaks off or is damaged/, 1],
  ['cut off', /the connection broke off; asked 3 times/, 3],
  ['nonsense', /the air is 900 °C/, 1],
  ['wrong units', /the wind should come in kn and comes in km\/h/, 1],
  ['endless', /longer than 500 kB/, 1],
  ['elsewhere', /could not be reached; asked 3|broke off; asked 3/, 3],
  ['asked too often', /asked too often today/, 1],
  ['refuses', /the service says: Latitude must be in range/, 1],
  ['another page', /does not give forecasts at this address \(404\)/, 1],
])('%s: refused in plain words, after so many askings', async (fault, why, times) => {
  standIn.fault = fault;
  const answer = await fetched(fault === 'slow' ? { timeout_ms: 200 } : {});
  expect(answer).toEqual({ kind: 'refused', why: expect.stringMatching(why) });
  expect(standIn.asked).toHaveLength(times);
  expect(paused).toEqual([1000, 4000].slice(0, times - 1));
});

test('trouble that passes is waited out once', async () => {
  standIn.fault = 'broken once';
  expect((await fetched()).kind).toBe('forecast');
  expect(paused).toEqual([1000]);
});

test('a server that is not there is told so', async () => {
  await standIn.close();
  expect(await fetched()).toMatchObject({
    kind: 'refused',
    why: expect.stringMatching(/^127\.0\.0\.1:\d+ could not be reached/),
  });
});

test('called off while it waits for a reply, or between two askings, it asks no more', async () => {
  standIn.fault = 'slow';
  const off = new AbortController();
  const answer = fetched({ signal: off.signal, timeout_ms: 60_000 });
  await expect.poll(() => standIn.asked.length).toBe(1);
  off.abort();
  expect(await answer).toEqual({ kind: 'called off' });

  standIn.fault = 'broken';
  const between = new AbortController();
  expect(await fetched({ signal: between.signal, pause: async () => between.abort() })).toEqual({ kind: 'called off' });
  expect(standIn.asked).toHaveLength(2);
});
