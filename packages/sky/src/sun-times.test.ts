import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localAt } from '#units';
import { sunPosition } from './sun-position.ts';
import { lightSpans, sunTimes } from './sun-times.ts';

const day_ms = 86_400_000;

describe('sunrise and sunset', () => {
  it('gives the day its clocks show, however far from the sun they run', () => {
    // IANA: this zone keeps UTC+14 at 157° W: by longitude alone its noon would fall on the day before.
    const times = sunTimes({
      day: '2026-03-20',
      latitude_deg: 1.87,
      longitude_deg: -157.4,
      zone: 'Pacific/Kiritimati',
    });
    expect(localAt(times.noon, 'Pacific/Kiritimati')).toMatchObject({ day: '2026-03-20' });
    // at the equinox on the equator the day is 12 h and some 7 min (refraction and the sun's half width)
    expect(times.sun.kind === 'comes and goes' && (times.sun.to - times.sun.from) / 3_600_000).toBeCloseTo(12.12, 1);
  });

  it('says so when the sun stays up or never comes', () => {
    // 69.65° N, inside the Arctic Circle: midnight sun at midsummer, polar night at midwinter, with civil twilight about noon
    const farNorth = { latitude_deg: 69.65, longitude_deg: 18.96 };
    expect(sunTimes({ day: '2026-06-21', ...farNorth }).sun.kind).toBe('stays');
    const winter = sunTimes({ day: '2026-12-21', ...farNorth });
    expect(winter.sun.kind).toBe('never comes');
    expect(winter.civil.kind).toBe('comes and goes');
    expect(sunTimes({ day: '2026-12-21', latitude_deg: -80, longitude_deg: 0 }).sun.kind).toBe('stays');
  });

  it('joins the days of the midnight sun into one span', () => {
    const start = Date.parse('2026-05-01T00:00Z');
    const spans = lightSpans({ latitude_deg: 69.65, longitude_deg: 18.96 }, 'sun', { start, end: start + 60 * day_ms });
    const last = spans.at(-1)!;
    expect(last.end).toBe(start + 60 * day_ms);
    expect(last.end - last.start).toBeGreaterThan(30 * day_ms);
  });

  it('spans hold the daylight and nothing else', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -66, max: 66 }),
        fc.integer({ min: -180, max: 180 }),
        fc.integer({ min: 0, max: 3650 }),
        fc.integer({ min: 0, max: 4 * day_ms - 1 }),
        (latitude_deg, longitude_deg, n, into) => {
          const start = Date.parse('2024-01-01T00:00Z') + n * day_ms;
          const end = start + 4 * day_ms;
          const spans = lightSpans({ latitude_deg, longitude_deg }, 'sun', { start, end });
          spans.forEach((span, i) => {
            expect(span.start).toBeLessThan(span.end);
            if (i > 0) expect(span.start).toBeGreaterThan(spans[i - 1]!.end);
          });
          const instant = start + into;
          const { altitudeWithoutAir, parallax } = sunPosition({
            instant,
            latitude_deg,
            longitude_deg,
            elevation_m: 0,
            pressure_hPa: 1010,
            air_C: 10,
            deltaT_s: 69,
            horizonRefraction_deg: 0.5667,
          });
          const geocentric = altitudeWithoutAir + parallax; // near the horizon
          const inside = spans.some((span) => span.start <= instant && instant < span.end);
          if (geocentric > -0.8) expect(inside).toBe(true);
          if (geocentric < -0.87) expect(inside).toBe(false);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('refuses a place off the globe', () => {
    expect(() => sunTimes({ day: '2026-01-01', latitude_deg: 91, longitude_deg: 0 })).toThrow(
      /latitude must be -90 to 90 °, got 91/,
    );
  });
});
