import { describe, expect, it } from 'vitest';
import { clearDay, clearLight } from './clear-day.ts';
import { usualHaze } from './usual-haze.ts';

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
    const at = (elevation_m: number, haze: number | null) =>
      clearDay({ latitude_deg: 40, longitude_deg: 0, elevation_m }, span('2026-06-20'), haze);
    expect(at(2000, null).global_kWh).toBeGreaterThan(at(0, null).global_kWh);
    expect(at(0, 6).global_kWh).toBeLessThan(at(0, 2).global_kWh);
    expect(at(0, 6).sky_kWh).toBeGreaterThan(at(0, 2).sky_kWh);
    const dark = clearDay({ latitude_deg: 75, longitude_deg: 0, elevation_m: 0 }, span('2026-12-20'), null);
    expect(dark).toMatchObject({ global_kWh: 0, beam_kWh: 0 });
    expect(dark.highest_deg).toBeLessThan(0);
  });

  it('is made of its beam and its sky at every height of the sun', () => {
    const place = { latitude_deg: 50, longitude_deg: 0, elevation_m: 0 };
    const steps = { from: Date.parse('2026-04-01T00:00:00Z'), step_min: 5, count: 288 };
    for (const { global_W_m2, beam_W_m2, diffuse_W_m2, zenith, outside_W_m2 } of clearLight(place, steps, 3)) {
      const level = beam_W_m2 * Math.max(0, Math.cos((zenith * Math.PI) / 180));
      expect(diffuse_W_m2 + level).toBeCloseTo(global_W_m2, 9);
      expect(global_W_m2).toBeLessThanOrEqual(outside_W_m2);
    }
  });

  it('has the haze of its place: least in the cold and up high', () => {
    expect(usualHaze(10, 180, 0)).toBeGreaterThan(usualHaze(50, 180, 0));
    expect(usualHaze(50, 200, 0)).toBeGreaterThan(usualHaze(50, 15, 0));
    expect(usualHaze(-50, 15, 0)).toBeGreaterThan(usualHaze(-50, 200, 0));
    expect(usualHaze(40, 100, 3000)).toBeLessThan(usualHaze(40, 100, 0) - 1);
    expect(usualHaze(90, 100, 0)).toBeGreaterThan(1);
  });
});
