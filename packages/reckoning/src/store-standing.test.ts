import { describe, expect, it } from 'vitest';
import type { Book, StoreRecord } from '#boat-book';
import { startSearch } from '#workplan';
import { problemFrom } from './problem-from.ts';
import { toGetName, toGetText } from './store-in-words.ts';
import { storeStandings } from './store-standing.ts';
import { job, jobDay, smallBook, step, weather } from './testing/small-book.ts';
import { toGet } from './to-get.ts';

const today = '2026-05-05';
const now = '2026-05-05T11:00:00Z';
const store = (name: string, parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name,
  keptAt: '',
  onHand: true,
  expected: null,
  lead_days: null,
  note: '',
  ...parts,
});
const takes = (amount: number, unit: 'ml' | '' | 'm' | 'kg' = 'ml', id = 'it') => ({
  stores: [id],
  takes: [{ store: id, amount, unit }],
});

/** A danger and a comfort that take of the same thing. */
const two = (it: StoreRecord, heavy: number, light: number, unit: 'ml' | '' | 'm' = 'ml'): Book =>
  smallBook({
    jobs: {
      heavy: job('Rebed the plate', { consequence: 'danger' }),
      light: job('Seal the shelf', { consequence: 'comfort' }),
    },
    steps: { a: step('heavy', 1, 'Bed it', takes(heavy, unit)), b: step('light', 1, 'Seal it', takes(light, unit)) },
    jobDays: { sat: jobDay('2026-05-09') },
    weather: { w: weather('2026-05-09') },
    stores: { it },
  });

function listOf(book: Book) {
  const matter = problemFrom(book, { now });
  if (matter.kind !== 'problem') throw new Error(matter.words);
  const search = startSearch(matter.problem, { seed: 1 });
  search.advance(20);
  const outcome = search.outcome();
  const lines = toGet(book, { planned: { problem: matter.problem, outcome }, now: Date.parse(now), timeZone: 'UTC' });
  return {
    lines,
    notes: matter.notes.map(({ words }) => words),
    planned: outcome.plan.steps.map(({ step: id }) => id).sort(),
  };
}

describe('how a thing in the stores stands', () => {
  it('is reserved for the open jobs, and the rest is free', () => {
    const book = two(store('Sealant', { amount: 290, unit: 'ml' }), 40, 22);
    expect(storeStandings(book, today).get('it')).toMatchObject({
      there: 290,
      reserved: 62,
      free: 228,
      toGet: null,
      short: false,
    });
    // a job that is done reserves nothing
    const done = { ...book, jobs: { ...book.jobs, light: { ...book.jobs.light!, state: 'done' as const } } };
    expect(storeStandings(done, today).get('it')).toMatchObject({ reserved: 40, free: 250 });
  });

  it('goes to the job that weighs more where it does not reach for both; half of it holds nothing', () => {
    const standing = storeStandings(two(store('Bolts', { amount: 6, unit: '' }), 4, 4, ''), today).get('it')!;
    expect(standing.needs.map(({ job: id, short }) => [id, short])).toEqual([
      ['heavy', false],
      ['light', true],
    ]);
    expect(standing).toMatchObject({ there: 6, reserved: 8, toGet: 2, free: 0, short: true });
  });

  it('is not called short where nobody counted it', () => {
    expect(storeStandings(two(store('Sealant'), 400, 400), today).get('it')).toMatchObject({
      there: null,
      short: false,
      toGet: null,
    });
  });

  it('holds litres against kilograms of epoxy and says by what; metres against pieces it cannot', () => {
    const epoxy = smallBook({
      jobs: { one: job('Fill the holes') },
      steps: { a: step('one', 1, 'Fill', takes(100)) },
      stores: { it: store('Epoxy, fast hardener', { amount: 0.5, unit: 'kg' }) },
    });
    const standing = storeStandings(epoxy, today).get('it')!;
    // 0.1 l at 1.1 kg/l
    expect(standing.reserved).toBeCloseTo(0.11, 9);
    expect(standing.said).toEqual([
      'Counted so: epoxy with its hardener weighs about 1.1 kg a litre (common practice).',
    ]);
    const odd = { ...epoxy, stores: { it: store('Split pins', { amount: 5, unit: '' as const }) } };
    expect(storeStandings(odd, today).get('it')).toMatchObject({ reserved: null, free: null, short: false });
    expect(storeStandings(odd, today).get('it')!.said[0]).toMatch(/counted in pieces here and asked for in ml/);
  });
});

describe('what is to be got of it', () => {
  it('is one line for both jobs, rounded up once to what it is sold in, with its price', () => {
    const tube = store('Sealant', {
      onHand: false,
      unit: 'ml',
      pack: { word: 'tube', holds: 290 },
      price: 24,
      lead_days: 1,
      from: 'the chandler',
    });
    const { lines } = listOf(two(tube, 200, 150));
    expect(lines).toHaveLength(1);
    // 350 ml is two tubes, not one for each job and not three
    expect(lines[0]!.buy).toMatchObject({ amount: 580, packs: 2, words: '350 ml: 2 tubes of 290 ml' });
    expect(lines[0]).toMatchObject({ price: 48, from: 'the chandler', because: null });
    expect(lines[0]!.jobs.map(({ job: id, takes: much }) => [id, much])).toEqual([
      ['heavy', '200 ml'],
      ['light', '150 ml'],
    ]);
    // what each job bears of the price: 200/580 and 150/580, the rest is stock
    expect(lines[0]!.jobs.map(({ share }) => share)).toEqual([200 / 580, 150 / 580]);
    expect(toGetName(lines[0]!)).toBe('Sealant: 2 tubes of 290 ml (takes 350 ml)');
    expect(toGetText(lines, two(tube, 200, 150), today).split('\n')).toEqual([
      'To get for Test boat, Tuesday 5 May',
      '',
      'The chandler',
      expect.stringMatching(
        /^- Sealant: 2 tubes of 290 ml \(takes 350 ml\); order by \S.*; for Rebed the plate, Seal the shelf$/,
      ),
    ]);
  });

  it('is only what is missing, for the job that waits for it; the other is planned with what is there', () => {
    const { lines, notes, planned } = listOf(two(store('Bolts', { amount: 6, unit: '' }), 4, 4, ''));
    expect(planned).toEqual(['a']);
    expect(lines).toHaveLength(1);
    expect(lines[0]!.buy).toMatchObject({ amount: 2, packs: null, words: '2' });
    expect(lines[0]!.because).toBe('6 there, and the open jobs take 8');
    expect(lines[0]!.jobs.map(({ job: id }) => id)).toEqual(['light']);
    expect(notes).toContain("Bolts: 6 there, and the open jobs take 8. 'Seal the shelf' waits for more.");
  });

  it('lets the waiting job in on the day more of it comes', () => {
    const some = store('Bolts', { amount: 6, unit: '', expected: '2026-05-08' });
    expect(listOf(two(some, 4, 4, '')).planned).toEqual(['a', 'b']);
  });

  it('is got anew where it is past its shelf life, with the reason', () => {
    const old = store('Epoxy, fast hardener', { amount: 500, unit: 'ml', opened: '2025-03-05' });
    const { lines, notes, planned } = listOf(two(old, 40, 20));
    expect(planned).toEqual([]);
    expect(lines[0]!.because).toBe('opened 14 months ago: past its shelf life of 12 months (common practice)');
    expect(lines[0]!.buy?.amount).toBe(60);
    expect(notes.some((words) => words.includes('The plan does not count on it.'))).toBe(true);
  });
});

describe('a tool that is lent out', () => {
  const lent = (back: string | null) =>
    smallBook({
      jobs: { one: job('Drill it') },
      steps: { a: step('one', 1, 'Drill', { tools: [{ tool: 'drill', count: 1 }] }) },
      jobDays: { sat: jobDay('2026-05-09') },
      weather: { w: weather('2026-05-09') },
      tools: {
        drill: { name: 'drill', count: 1, keptAt: '', lent: { to: 'Ilka', count: 1, since: '2026-05-01', back } },
      },
    });

  it('is not counted on until the day it is back', () => {
    expect(listOf(lent('2026-05-08'))).toMatchObject({ planned: ['a'] });
    expect(listOf(lent('2026-05-10')).planned).toEqual([]);
    expect(listOf(lent(null)).planned).toEqual([]);
    expect(listOf(lent(null)).notes).toContain(
      'drill: lent to Ilka, with no day it comes back. The plan does not count on it.',
    );
    // a day that has gone by is no day
    expect(listOf(lent('2026-05-04')).planned).toEqual([]);
  });
});
