import { describe, expect, it } from 'vitest';
import { clearDay, clearLight } from './clear-day.ts';
import { usualAir } from './usual-air.ts';

describe('a clear day', () => {
  const span = (day: string) => ({
    start: Date.parse(`${day}T00:00:00Z`),
    end: Date.parse(`${day}T00:00:00Z`) + 86_400_000,
  });

  it('outside the air is that of a printed example', () => {
    // FAO Irrigation and Drainage Paper 56, example 8, from memory: 20° south, 3 September: 32.2 MJ/m². It takes 1367 W/m²
    // for the sun where we take 1361, and one cosine each for its distance and height: 1.5 % allowed
    const found = clearDay({ latitude_deg: -20, longitude_deg: 0, elevation_m: 0 }, span('2026-09-03'), null);
    expect(found.outside_kWh * 3.6).toBeGreaterThan(32.2 * 0.985);
    expect(found.outside_kWh * 3.6).toBeLessThan(32.2 * 1.015);
    // the same paper, equation 37: a clear day lets through 0.75 + 2e-5·height of it
    expect(found.global_kWh / found.outside_kWh).toBeGreaterThan(0.7);
    expect(found.global_kWh / found.outside_kWh).toBeLessThan(0.8);
  });

  it('brings more up a mountain and less through haze, and none in polar night', () => {
    const at = (elevation_m: number, depth: number | null) =>
      clearDay(
        { latitude_deg: 40, longitude_deg: 0, elevation_m },
        span('2026-06-20'),
        depth === null ? null : { depth, water_cm: 1.5 },
      );
    expect(at(2000, null).global_kWh).toBeGreaterThan(at(0, null).global_kWh);
    expect(at(0, 0.3).global_kWh).toBeLessThan(at(0, 0.05).global_kWh);
    expect(at(0, 0.3).sky_kWh).toBeGreaterThan(at(0, 0.05).sky_kWh);
    const dark = clearDay({ latitude_deg: 75, longitude_deg: 0, elevation_m: 0 }, span('2026-12-20'), null);
    expect(dark).toMatchObject({ global_kWh: 0, beam_kWh: 0 });
    expect(dark.highest_deg).toBeLessThan(0);
  });

  it('is made of its beam and its sky at every height of the sun', () => {
    const place = { latitude_deg: 50, longitude_deg: 0, elevation_m: 0 };
    const steps = { from: Date.parse('2026-04-01T00:00:00Z'), step_min: 5, count: 288 };
    for (const { global_W_m2, beam_W_m2, diffuse_W_m2, zenith, outside_W_m2 } of clearLight(place, steps, {
      depth: 0.1,
      water_cm: 1.5,
    })) {
      const level = beam_W_m2 * Math.max(0, Math.cos((zenith * Math.PI) / 180));
      expect(diffuse_W_m2 + level).toBeCloseTo(global_W_m2, 9);
      expect(global_W_m2).toBeLessThanOrEqual(outside_W_m2);
    }
  });

  it('has the air of its place: least haze and water in the cold and up high', () => {
    const depth = (...given: Parameters<typeof usualAir>) => usualAir(...given).depth;
    expect(depth(10, 180, 0)).toBeGreaterThan(depth(70, 180, 0));
    expect(depth(50, 200, 0)).toBeGreaterThan(depth(50, 15, 0));
    expect(depth(-50, 15, 0)).toBeGreaterThan(depth(-50, 200, 0));
    expect(depth(40, 100, 3000)).toBeLessThan(depth(40, 100, 0) / 5);
    for (let latitude = -90; latitude <= 90; latitude += 10)
      for (const [season, height_m] of [
        [15, 0],
        [200, 4000],
      ] as const) {
        const { depth: haze, water_cm } = usualAir(latitude, season, height_m);
        expect(haze).toBeGreaterThan(0);
        expect(haze).toBeLessThan(0.2);
        expect(water_cm).toBeGreaterThanOrEqual(0.1);
        expect(water_cm).toBeLessThan(6);
      }
  });

  it('up a mountain lets through about what the height’s own rule says', () => {
    // FAO Irrigation and Drainage Paper 56, equation 37, from memory: 0.75 + 2e-5·height of the sun outside the air
    const { global_kWh, outside_kWh } = clearDay(
      { latitude_deg: 40, longitude_deg: 0, elevation_m: 1800 },
      span('2026-06-20'),
      null,
    );
    expect(global_kWh / outside_kWh).toBeGreaterThan(0.786 - 0.03);
    expect(global_kWh / outside_kWh).toBeLessThan(0.786 + 0.03);
  });
});
