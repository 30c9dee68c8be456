/** Litres from area, coats and coverage: area × coats ÷ (m² a litre), plain arithmetic worked by hand beside each row. */
import { describe, expect, it } from 'vitest';
import type { Book, TinRecord } from '#boat-book';
import { recipes } from '#jobs';
import { demoBook } from '../../../examples/demo-book.ts';
import { mixNow } from './mix-now.ts';
import { recipeTaken } from './recipe-job.ts';
import { takeInWords, takesByTin } from './takes-by-tin.ts';
import { followByTin, waitsByTin } from './with-tins.ts';

const demo = demoBook('2026-05-06');

/** A tin that says how far it goes and when the next coat may and must be on; of no one thing in the stores. */
const tin = (parts: Partial<TinRecord>): TinRecord => ({
  name: 'The amber tin',
  family: 'varnish-one-pot',
  store: null,
  readOn: '2026-05-01',
  nextCoat: { hours: 6, at_C: 20 },
  latestCoat_h: 24,
  worked: null,
  full: null,
  firstDay_mm: null,
  minimum_C: null,
  humidity_max_pct: null,
  potLife: null,
  ratio: null,
  spread_m2_l: 10,
  strokePair_g: null,
  note: '',
  ...parts,
});
const withTin = (one: TinRecord): Book => ({ ...demo, stores: {}, tins: { amber: one } });

const taken = (id: keyof typeof recipes, book: Book, area: number) => {
  let made = 0;
  const recipe = recipes[id];
  const job = { title: recipe.title, consequence: recipe.consequence, zone: null };
  return recipeTaken(recipe, book, { job, sizes: { area }, newId: () => `n${++made}` });
};
/** The book with the job's steps in it, as they would stand after it was put in. */
function putIn(book: Book, { take }: ReturnType<typeof taken>): Book {
  const fields = take.job.steps!;
  const steps = Object.fromEntries(
    fields.map((step, n) => [
      step.id!,
      {
        ...demo.steps[Object.keys(demo.steps)[0]!]!,
        mix: null,
        ...step,
        job: 'j',
        order: n + 1,
        follows: step.follows ?? null,
      },
    ]),
  ) as Book['steps'];
  const mixes = Object.fromEntries(take.mixes.map(({ id, ...mix }) => [id, mix])) as Book['mixes'];
  return { ...book, steps, mixes };
}

describe('the coverage a tin says', () => {
  it('wins over ours as a recipe is taken, and says so', () => {
    // 2 m², 2 coats, 15 % for brush and pot: 4 ÷ 14 × 1.15 = 0.3286 l by ours, 4 ÷ 10 × 1.15 = 0.46 l by the tin
    const words = (book: Book) => {
      const { amount } = taken('varnish-maintenance', book, 2).stores[0]!;
      return amount.kind === 'known' ? amount.words : amount.because;
    };
    expect(words({ ...demo, stores: {}, tins: {} })).toBe(
      '0.33 l: 1 tin of 0.375 l, at 14 m² a litre, our figure; the tin wins',
    );
    expect(words(withTin(tin({})))).toBe('0.46 l: 2 tins of 0.375 l, at 10 m² a litre, from the tin of The amber tin');
  });

  it('put in after the job changes what its steps take, and taken out again gives ours back', () => {
    const bare = { ...demo, stores: {}, tins: {} };
    const book = putIn(bare, taken('varnish-maintenance', bare, 2));
    const step = Object.values(book.steps).find(({ takes }) => (takes ?? []).length > 0)!;
    expect(takesByTin(book, step)[0]!.amount).toBeCloseTo((4 / 14) * 1.15, 9);
    const told = takesByTin({ ...book, tins: { amber: tin({}) } }, step)[0]!;
    expect(told.amount).toBeCloseTo((4 / 10) * 1.15, 9);
    expect(takeInWords(told)).toBe('0.46 l, at 10 m² a litre, from the tin of The amber tin');
  });

  it('of one thing in the stores does not speak for another', () => {
    const bare = { ...demo, stores: {}, tins: {} };
    const book = putIn(bare, taken('varnish-maintenance', bare, 2));
    const step = Object.values(book.steps).find(({ takes }) => (takes ?? []).length > 0)!;
    const other = { ...book, tins: { amber: tin({ store: 'another' }) } };
    expect(takesByTin(other, step)[0]).toMatchObject({ goes: { m2_l: 14, tin: null } });
  });

  it('makes a two-pot mix more, where the mix is spread over an area', () => {
    const bare = { ...demo, stores: {}, tins: {} };
    const put = taken('topsides-two-pot', bare, 8);
    const book = putIn(bare, put);
    const [id] = Object.entries(book.steps).find(
      ([, { mix_g, takes }]) => mix_g != null && takes?.[0]?.coverage?.family === 'paint-two-pot',
    )!;
    const air = { air_C: 20, basis: 'typed' } as const;
    const ours = mixNow(book, id, air)!;
    // 8 m², 2 coats at 10 m²/l is 1.6 l, 15 % more 1.84 l, at 1.2 g/ml 2,208 g; at 8 m²/l a quarter more, 2,760 g
    expect(ours.total_g).toBeCloseTo(2208, 0);
    const byTin = mixNow(
      { ...book, tins: { white: tin({ name: 'The white tin', family: 'paint-two-pot', spread_m2_l: 8 }) } },
      id,
      air,
    )!;
    expect(byTin.total_g).toBeCloseTo(2760, 0);
    expect(byTin.coverage).toBe('at 8 m² a litre, from the tin of The white tin');
  });
});

describe('waits and windows by the tin', () => {
  it('are told with the tin they are from', () => {
    const bare = { ...demo, stores: {}, tins: {} };
    const book = { ...putIn(bare, taken('varnish-maintenance', bare, 2)), tins: { amber: tin({}) } };
    const [first, second] = Object.values(book.steps).filter(({ wet }) => wet);
    expect(waitsByTin(book, first!)).toMatchObject([{ wait: { law: { atReference_min: 360 } }, tin: { id: 'amber' } }]);
    // from 6 to 24 h after the coat: the window is 18 h long
    const told = followByTin(book, {
      ...second!.follows![0]!,
      step: Object.keys(book.steps).find((id) => book.steps[id] === first)!,
      wait: first!.waits[0]!.id,
    });
    expect(told).toMatchObject({ follow: { greatest_min: 18 * 60 }, tin: { id: 'amber' } });
  });
});
