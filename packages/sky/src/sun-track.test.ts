import { describe, expect, it } from 'vitest';
import { clearSky } from './clear-sky.ts';
import { assumedDeltaT_s, sunPosition } from './sun-position.ts';
import { sunTrack } from './sun-track.ts';

const year = (latitude_deg: number, longitude_deg: number, step_min: number) => ({
  latitude_deg,
  longitude_deg,
  elevation_m: 0,
  start: Date.parse('2026-01-01T00:30Z'),
  step_min,
  count: Math.floor((365 * 1440) / step_min),
});

describe('the sun along a track', () => {
  it.each([
    [54.3, 10.1],
    [-43.5, 172.7],
    [0, -90],
    [-80, 179],
  ])('is where the whole computation has it, at %s° %s°', (latitude_deg, longitude_deg) => {
    const at = year(latitude_deg, longitude_deg, 6 * 60 + 7);
    const track = sunTrack(at);
    let worst = 0;
    for (let i = 0; i < at.count; i++) {
      const sun = sunPosition({
        instant: at.start + i * at.step_min * 60_000,
        latitude_deg,
        longitude_deg,
        elevation_m: 0,
        pressure_hPa: 1013.25,
        air_C: 10,
        deltaT_s: assumedDeltaT_s,
        horizonRefraction_deg: 0.5667,
      });
      if (sun.altitude < 0) continue;
      const turn = Math.abs(((track.azimuth[i]! - sun.azimuth + 540) % 360) - 180);
      worst = Math.max(
        worst,
        Math.abs(track.altitude[i]! - sun.altitude),
        turn * Math.cos((sun.altitude * Math.PI) / 180),
      );
    }
    expect(worst).toBeLessThan(0.002);
  });

  it('does a year of hours at one place well under a tenth of a second', () => {
    const at = year(54.3, 10.1, 60);
    const lightOfYear = () => {
      const { altitude, outside_W_m2 } = sunTrack(at);
      let sum_kWh = 0;
      for (let i = 0; i < at.count; i++)
        sum_kWh +=
          clearSky({ zenith: 90 - altitude[i]!, outside_W_m2: outside_W_m2[i]!, turbidity: 3, elevation_m: 0 })
            .global_W_m2 / 1000;
      return sum_kWh;
    };
    // a year without a cloud at 54° N: over 1500, under what there is outside the air, some 2300 kWh/m²
    expect(lightOfYear()).toBeGreaterThan(1500);
    const from = process.cpuUsage();
    expect(lightOfYear()).toBeLessThan(2300);
    const used = process.cpuUsage(from);
    expect((used.user + used.system) / 1000).toBeLessThan(100);
  });
});
