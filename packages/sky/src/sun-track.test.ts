import { describe, expect, it } from 'vitest';
import { assumedDeltaT_s, sunPosition } from './sun-position.ts';
import { clearSkyTrack, sunTrack } from './sun-track.ts';

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
    clearSkyTrack(sunTrack(at), 0, 3);
    const from = process.cpuUsage();
    clearSkyTrack(sunTrack(at), 0, 3);
    const used = process.cpuUsage(from);
    expect((used.user + used.system) / 1000).toBeLessThan(100);
  });
});
