import { expect, it } from 'vitest';
import { isKept } from './keep-foretold.ts';

it('a night is kept again only where something else is foretold of it', () => {
  const night = {
    battery: 'house',
    morning: '2026-05-03',
    at: '2026-05-03T04:40:00Z',
    volts: { low: 12.2, likely: 12.5, high: 12.7 },
    charge_pct: { low: 60, likely: 70, high: 80 },
  };
  const book = { nightsAhead: { a: { ...night, made: '2026-05-02T19:00:00Z' } } };
  expect(isKept(night, book)).toBe(true);
  expect(isKept({ ...night, volts: { ...night.volts, likely: 12.506 } }, book)).toBe(true);
  expect(isKept({ ...night, volts: { ...night.volts, low: 12.15 } }, book)).toBe(false);
  expect(isKept({ ...night, morning: '2026-05-04' }, book)).toBe(false);
  expect(isKept({ ...night, battery: 'engine' }, book)).toBe(false);
});
