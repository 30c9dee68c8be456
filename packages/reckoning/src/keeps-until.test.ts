import { expect, it } from 'vitest';
import type { StoreRecord } from '#boat-book';
import { agoInWords, keepsUntil } from './keeps-until.ts';

const today = '2026-11-26';
const store = (name: string, parts: Partial<StoreRecord>): StoreRecord => ({
  name,
  keptAt: '',
  onHand: true,
  expected: null,
  lead_days: null,
  note: '',
  ...parts,
});

it('says how long ago it was opened, and that it is past its shelf life', () => {
  // 14 months before: 26 September 2025
  const found = keepsUntil(store('Epoxy, fast hardener', { opened: '2025-09-26' }), today)!;
  expect(found.past).toBe(true);
  expect(found.words).toBe('opened 14 months ago: past its shelf life of 12 months (common practice)');
});

it('lets a date printed on the tin win over every custom, either way', () => {
  const opened = '2025-09-26';
  expect(keepsUntil(store('Epoxy', { opened, expires: '2027-06-30' }), today)).toMatchObject({
    past: false,
    from: 'printed on it',
    words: 'good until Wednesday 30 June 2027, printed on it',
  });
  expect(keepsUntil(store('Split pins', { expires: '2026-11-25' }), today)).toMatchObject({ past: true });
  // good through the very day that is printed
  expect(keepsUntil(store('Flares', { expires: today }), today)).toMatchObject({ past: false });
});

it('takes what the tin says of keeping once opened before what its family commonly does', () => {
  const found = keepsUntil(store('Epoxy', { opened: '2025-09-26', keepsOpened_months: 24 }), today)!;
  expect(found).toMatchObject({ past: false, from: 'the tin' });
  // of a printed date and a life once opened, both from the tin, the nearer one holds
  const both = store('Antifouling', { opened: '2026-10-01', keepsOpened_months: 1, expires: '2027-06-30' });
  expect(keepsUntil(both, today)).toMatchObject({ past: true, from: 'the tin' });
});

it('counts what was never opened from the day it came, and knows nothing of what keeps', () => {
  expect(keepsUntil(store('Polyurethane sealant', { got: '2025-10-01' }), today)).toMatchObject({ past: true });
  expect(keepsUntil(store('Polyurethane sealant', { got: '2026-10-01' }), today)).toMatchObject({ past: false });
  expect(keepsUntil(store('Polyurethane sealant', {}), today)).toBeNull();
  expect(keepsUntil(store('M6 × 40 bolts', { got: '2019-01-01', opened: '2019-01-01' }), today)).toBeNull();
});

it('says an age in the unit people use', () => {
  expect(
    ['2026-11-26', '2026-11-25', '2026-11-16', '2026-10-26', '2025-11-26', '2023-11-26'].map((day) =>
      agoInWords(day, today),
    ),
  ).toEqual(['today', 'yesterday', '10 days ago', '4 weeks ago', '12 months ago', '3 years ago']);
});
