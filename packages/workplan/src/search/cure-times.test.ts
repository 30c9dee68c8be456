import { describe, expect, it } from 'vitest';
import { type CureLaw, cureFinish } from '#materials';
import type { WeatherHour } from '#sky';
import { CureTimes } from './cure-times.ts';

const laws: readonly CureLaw[] = [
  { kind: 'set time', minutes: 95, from: 'our assumption' },
  { kind: 'never cures', from: 'our assumption' },
  { kind: 'reacts', atReference_min: 333, reference_C: 20, doublesPer_C: 10, minimum_C: 6, from: 'our assumption' },
  {
    kind: 'moisture',
    depth_mm: 2,
    firstDay_mm: 3,
    reference_C: 23,
    reference_pct: 50,
    minimum_C: 5,
    from: 'our assumption',
  },
  {
    kind: 'dries',
    atReference_min: 200,
    reference_C: 20,
    doublesPer_C: 12,
    stopsAt_pct: 90,
    minimum_C: 5,
    from: 'our assumption',
  },
];

/** Three days of a made-up swing of air and damp that crosses every minimum. */
const hours: readonly WeatherHour[] = Array.from({ length: 72 }, (_, hour) => ({
  rain: false,
  wind_kn: 5,
  air_C: Math.round(10 + 9 * Math.sin((hour / 24) * 2 * Math.PI)),
  surface_C: hour % 5 === 0 ? 12 : null,
  humidity_pct: 60 + ((hour * 7) % 40),
  basis: 'typed',
}));

describe('cure times worked out once', () => {
  it.each(laws)('are those of the cure law at every minute of three days ($kind)', (law) => {
    const times = new CureTimes(law, hours);
    for (let start = 0; start <= hours.length * 60; start++) {
      const { finish, tooCold } = cureFinish(law, hours, start);
      expect(times.finish(start)).toBe(finish ?? -1);
      expect(times.tooCold(start)).toBe(tooCold);
    }
  });
});
