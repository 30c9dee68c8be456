import { expect, it } from 'vitest';
import { readingsByDay } from './by-day.ts';

const utc = (text: string) => Date.parse(text);

it('are told by the day of the zone, days without any left out', () => {
  const at = ['2026-05-01T22:30Z', '2026-05-01T23:30Z', '2026-05-02T10:00Z', '2026-05-04T10:00Z'];
  const columns = {
    at: Float64Array.from(at, utc),
    volts: Float32Array.of(12.5, 12.25, 13, Number.NaN),
    current: null,
    air: null,
  };
  // Berlin is two hours ahead in May
  expect(readingsByDay(columns, 'Europe/Berlin')).toEqual({
    by: 'day',
    days: [
      { day: '2026-05-02', count: 3, volts: { least: 12.25, most: 13, last: 13 } },
      { day: '2026-05-04', count: 1, volts: null },
    ],
  });
});

it('are told by the month where there are many days, and every reading is counted', () => {
  const at = Float64Array.from({ length: 300 }, (_, i) => utc('2026-01-31T12:00Z') + i * 86_400_000);
  const told = readingsByDay({ at, volts: Float32Array.from(at, () => 12.5), current: null, air: null }, 'UTC');
  expect(told.by).toBe('month');
  expect(told.days.slice(0, 3).map(({ day, count }) => [day, count])).toEqual([
    ['2026-01-01', 1],
    ['2026-02-01', 28],
    ['2026-03-01', 31],
  ]);
  expect(told.days.reduce((sum, { count }) => sum + count, 0)).toBe(300);
});
