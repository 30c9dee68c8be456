import { expect, test } from 'vitest';
import type { LogEntry } from '#boat-book';
import { costsOf } from './costs.ts';

let order = 0;
const entry = (at: string, zone: string | null, amount: number, currency = 'EUR', more: object = {}): LogEntry => ({
  at,
  kind: 'got',
  job: null,
  step: null,
  zone,
  who: '',
  spent_min: null,
  text: 'Something',
  cost: { amount, currency },
  order: ++order,
  ...more,
});

test('costs by year and zone add up to the total, also across years without any', () => {
  const log = {
    a: entry('2023-05-01T10:00:00Z', 'mast', 10.1),
    b: entry('2023-06-01T10:00:00Z', null, 20.2),
    c: entry('2026-01-15T10:00:00Z', 'mast', 0.3),
  };
  expect(costsOf({ log }, 'UTC')).toEqual([
    {
      currency: 'EUR',
      entries: 3,
      total: 30.6, // 10.1 + 20.2 + 0.3
      years: [
        { year: 2023, amount: 30.3 },
        { year: 2024, amount: 0 },
        { year: 2025, amount: 0 },
        { year: 2026, amount: 0.3 },
      ],
      zones: [
        {
          zone: null,
          amount: 20.2,
          years: [2023, 2024, 2025, 2026].map((year) => ({ year, amount: year === 2023 ? 20.2 : 0 })),
        },
        {
          zone: 'mast',
          amount: 10.4,
          years: [
            { year: 2023, amount: 10.1 },
            { year: 2024, amount: 0 },
            { year: 2025, amount: 0 },
            { year: 2026, amount: 0.3 },
          ],
        },
      ],
    },
  ]);
});

test('a cost goes to the year it was at the boat’s place, and one put right counts once', () => {
  const log = {
    // 23:30 UTC on the last day of the year is half past midnight in Berlin
    a: entry('2025-12-31T23:30:00Z', null, 100),
    b: entry('2026-03-01T10:00:00Z', null, 999),
    c: entry('2026-03-01T10:05:00Z', null, 99, 'EUR', { corrects: 'b' }),
  };
  const [euro] = costsOf({ log }, 'Europe/Berlin');
  expect(euro).toMatchObject({ total: 199, entries: 2, years: [{ year: 2026, amount: 199 }] });
  expect(costsOf({ log }, 'UTC')[0]?.years.map(({ year }) => year)).toEqual([2025, 2026]);
});

test('sums in different currencies are never added', () => {
  const log = { a: entry('2026-01-02T10:00:00Z', null, 5, 'SEK'), b: entry('2026-01-03T10:00:00Z', null, 7) };
  expect(costsOf({ log }, 'UTC').map(({ currency, total }) => [currency, total])).toEqual([
    ['EUR', 7],
    ['SEK', 5],
  ]);
  expect(costsOf({ log: {} }, 'UTC')).toEqual([]);
});
