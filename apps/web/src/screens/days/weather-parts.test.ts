import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOfMinute } from '#units';
import { hoursOfDay } from './weather-known.ts';
import { readPart } from './weather-part.tsx';
import { partsOf } from './weather-parts.ts';

describe('the parts of a day', () => {
  it('cover a job day whatever its hours, one after another, and the night up to 06:00', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1300 }), fc.integer({ min: 30, max: 1439 }), (from, length) => {
        const day = { from: clockOfMinute(from), to: clockOfMinute(Math.min(from + length, 1439)) };
        const spans = partsOf(day).flatMap((part) => part.spans.map((s) => ({ ...s, at: s.dayAfter * 24 })));
        const hours = hoursOfDay(day);
        expect(spans[0]!.fromHour).toBeLessThanOrEqual(hours.from);
        expect(spans.at(-1)).toMatchObject({ dayAfter: 1, toHour: 6 });
        for (let i = 1; i < spans.length; i++)
          expect(spans[i]!.at + spans[i]!.fromHour).toBe(spans[i - 1]!.at + spans[i - 1]!.toHour);
        for (const span of spans) expect(span.toHour).toBeGreaterThan(span.fromHour);
      }),
    );
  });
});

describe('a part as it is filled in', () => {
  const full = { sky: 'rain', odds: '', wind: '12', air: '9,5', humidity: '90' } as const;
  it('is an hour of weather when all of it is there', () => {
    expect(readPart(full)).toEqual({
      kind: 'hour',
      hour: { rain: true, rainOdds_pct: null, wind_kn: 12, air_C: 9.5, humidity_pct: 90 },
    });
    expect(readPart({ ...full, odds: '60' })).toMatchObject({ hour: { rainOdds_pct: 60 } });
  });
  it('fills nothing in by itself', () => {
    expect(readPart({ sky: '', odds: '', wind: '', air: '', humidity: '' })).toEqual({ kind: 'empty' });
    for (const field of ['sky', 'wind', 'air', 'humidity'] as const)
      expect(readPart({ ...full, [field]: '' }).kind).toBe('refused');
    for (const odds of ['101', '-1', '12.5', 'some'])
      expect(readPart({ ...full, odds })).toMatchObject({ why: expect.stringMatching(/^chance of rain: /) });
    expect(readPart({ sky: '', odds: '60', wind: '', air: '', humidity: '' }).kind).toBe('refused');
    expect(readPart({ ...full, humidity: '101' })).toMatchObject({ why: expect.stringMatching(/1 to 100 %/) });
  });
});
