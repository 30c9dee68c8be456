import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suitableSpans, type WeatherSpan } from './suitable-spans.ts';
import { unmetConditions } from './unmet-conditions.ts';
import type { Conditions, WeatherHour } from './weather-hour.ts';

const fair: WeatherHour = { rain: false, wind_kn: 6, air_C: 15, surface_C: null, humidity_pct: 60, basis: 'typed' };
const start = Date.parse('2026-06-01T00:00Z');
const at = (clock: string) => Date.parse(`2026-06-01T${clock}Z`);
const weather = (hours: readonly Partial<WeatherHour>[]): WeatherSpan => ({
  start,
  hours: hours.map((hour) => ({ ...fair, ...hour })),
  latitude_deg: 50,
  longitude_deg: 0,
});

describe('spans of hours that suit', () => {
  it('ends a dry span at the hour it rains', () => {
    const found = suitableSpans({ dry: true }, weather([{}, {}, { rain: true }, {}]), 0);
    expect(found).toEqual({
      kind: 'spans',
      spans: [
        { start: at('00:00'), end: at('02:00') },
        { start: at('03:00'), end: at('04:00') },
      ],
    });
  });

  it('says which condition leaves out how many hours when no span is long enough', () => {
    const found = suitableSpans(
      { dry: true, air_min_C: 12 },
      weather([{ air_C: 8 }, { air_C: 10, rain: true }, {}, {}, { rain: true }]),
      180,
    );
    expect(found).toEqual({
      kind: 'no span',
      longest_min: 120,
      because: [
        { condition: 'air_min_C', hours: 2 },
        { condition: 'dry', hours: 2 },
      ],
    });
  });

  it('starts at sunrise within the hour when daylight is asked', () => {
    // 1 June, 50° N on the meridian: the sun rises shortly before 04:00 by the mean sun (almanac rule of thumb)
    const found = suitableSpans({ daylight: true }, weather(Array(12).fill({})), 0);
    expect(found.kind).toBe('spans');
    if (found.kind !== 'spans') return;
    expect(found.spans).toHaveLength(1);
    expect(found.spans[0]!.start).toBeGreaterThan(at('03:45'));
    expect(found.spans[0]!.start).toBeLessThan(at('04:00'));
    expect(found.spans[0]!.end).toBe(at('12:00'));
  });

  it('takes a surface colder than the air into the margin over the dew point', () => {
    // 15 °C and 60 % has its dew point at 7.3 °C (WMO Magnus): a surface at 10 °C leaves 2.7
    const needs: Conditions = { dewMargin_min_C: 3 };
    expect(suitableSpans(needs, weather([{ surface_C: 10 }]), 0).kind).toBe('no span');
    expect(suitableSpans(needs, weather([{ surface_C: 10.5 }]), 0).kind).toBe('spans');
  });

  it('holds every hour that suits, no other, and joins neighbours', () => {
    const hour = fc.record({
      rain: fc.boolean(),
      wind_kn: fc.integer({ min: 0, max: 30 }),
      air_C: fc.integer({ min: -5, max: 30 }),
      humidity_pct: fc.integer({ min: 30, max: 100 }),
    });
    fc.assert(
      fc.property(fc.array(hour, { maxLength: 48 }), (hours) => {
        const needs: Conditions = { dry: true, wind_max_kn: 15, air_min_C: 10, humidity_max_pct: 85 };
        const w = weather(hours);
        const found = suitableSpans(needs, w, 0);
        const spans = found.kind === 'spans' ? found.spans : [];
        w.hours.forEach((h, i) => {
          const middle = start + (i + 0.5) * 3_600_000;
          expect(spans.some((s) => s.start < middle && middle < s.end)).toBe(unmetConditions(needs, h).length === 0);
        });
        for (let i = 1; i < spans.length; i++) expect(spans[i]!.start).toBeGreaterThan(spans[i - 1]!.end);
      }),
    );
  });
});
