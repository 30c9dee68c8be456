import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WeatherHour } from '#sky';
import { belowMinimum, cureFinish, curePerMinute } from './cure-finish.ts';
import type { CureLaw } from './cure-law.ts';
import { cureLaws } from './cure-laws.ts';

const hour = (air_C: number, humidity_pct = 50, surface_C: number | null = null): WeatherHour => ({
  rain: false,
  wind_kn: 5,
  air_C,
  surface_C,
  humidity_pct,
  basis: 'typed',
});
const hours = (...temperatures: number[]) => temperatures.map((t) => hour(t));
const resin: CureLaw = {
  kind: 'reacts',
  atReference_min: 120,
  reference_C: 20,
  doublesPer_C: 10,
  minimum_C: 10,
  from: 'the tin',
};
const sealant: CureLaw = {
  kind: 'moisture',
  depth_mm: 6,
  firstDay_mm: 3,
  reference_C: 23,
  reference_pct: 50,
  minimum_C: 5,
  from: 'the tin',
};

describe('when a wait is over', () => {
  it('follows the temperature of the hours it runs through', () => {
    expect(cureFinish(resin, hours(20, 20, 20), 0)).toEqual({ finish: 120, tooCold: false });
    // 10 °C warmer: half the time
    expect(cureFinish(resin, hours(30, 30), 0).finish).toBe(60);
    // from minute 30: half an hour at 20 °C does 30/120, an hour at 30 °C 60/60 ≥ the rest, 3/4 of it: 45 min
    expect(cureFinish(resin, hours(20, 30), 30).finish).toBe(60 + 45);
  });

  it('stands still below the minimum and says it was too cold', () => {
    // an hour at 20 °C does half; the hour at 9 °C nothing; the third hour the rest
    expect(cureFinish(resin, hours(20, 9, 20), 0)).toEqual({ finish: 180, tooCold: true });
    expect(belowMinimum(resin, hour(15, 50, 9))).toBe(true);
  });

  it('has no finish where the hours end first', () => {
    expect(cureFinish(resin, hours(20), 0).finish).toBeNull();
    expect(cureFinish(resin, [], 0).finish).toBeNull();
  });

  it('takes four days for twice the depth of the first day: depth goes with the root of time', () => {
    const week = Array(200).fill(hour(23, 50));
    expect(cureFinish(sealant, week, 0).finish).toBe(4 * 1440);
    // twice the humidity is twice the vapour: half the time
    expect(cureFinish(sealant, Array(200).fill(hour(23, 100)), 0).finish).toBe(2 * 1440);
  });

  it('does not dry in damp air', () => {
    const varnish: CureLaw = { ...resin, kind: 'dries', stopsAt_pct: 80 };
    expect(cureFinish(varnish, [hour(20, 60), hour(20, 80), hour(20, 60)], 0).finish).toBe(180);
  });

  it('waits a set time whatever the weather, and not at all for what never cures', () => {
    expect(cureFinish({ kind: 'set time', minutes: 90.5, from: 'the tin' }, hours(-20, -20), 10).finish).toBe(101);
    expect(cureFinish({ kind: 'never cures', from: 'the tin' }, hours(-20), 10).finish).toBe(10);
    expect(() => cureFinish(resin, hours(20), 0.5)).toThrow(/whole minute/);
  });

  const anyHours = fc.array(
    fc.record({ air_C: fc.integer({ min: -10, max: 40 }), humidity_pct: fc.integer({ min: 20, max: 100 }) }),
    { minLength: 1, maxLength: 120 },
  );
  const anyLaw = fc.constantFrom(...cureLaws.map((product) => product.law));
  const atEnd = (finish: number | null) => finish ?? Number.POSITIVE_INFINITY;

  it('a later start never gives an earlier finish', () => {
    fc.assert(
      fc.property(anyLaw, anyHours, fc.nat(3000), fc.nat(600), (law, series, start, later) => {
        const weather = series.map((h) => hour(h.air_C, h.humidity_pct));
        expect(atEnd(cureFinish(law, weather, start + later).finish)).toBeGreaterThanOrEqual(
          atEnd(cureFinish(law, weather, start).finish),
        );
      }),
    );
  });

  it('warmer hours never give a later finish, and no minute before the finish would do', () => {
    fc.assert(
      fc.property(anyLaw, anyHours, fc.nat(600), fc.integer({ min: 1, max: 10 }), (law, series, start, warmer) => {
        const weather = series.map((h) => hour(h.air_C, h.humidity_pct));
        const { finish } = cureFinish(law, weather, start);
        const inWarmth = cureFinish(
          law,
          weather.map((h) => ({ ...h, air_C: h.air_C + warmer })),
          start,
        );
        expect(atEnd(inWarmth.finish)).toBeLessThanOrEqual(atEnd(finish));
        if (finish === null || !('minimum_C' in law)) return;
        let progress = 0;
        for (let minute = start; minute < finish - 1; minute++)
          progress += curePerMinute(law, weather[Math.floor(minute / 60)]!);
        expect(progress).toBeLessThan(1);
        progress += finish > start ? curePerMinute(law, weather[Math.floor((finish - 1) / 60)]!) : 1;
        expect(progress).toBeGreaterThan(1 - 1e-6);
      }),
    );
  });
});
