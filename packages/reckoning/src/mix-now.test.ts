import { describe, expect, it } from 'vitest';
import type { Book, TinRecord } from '#boat-book';
import { mixNow } from './mix-now.ts';
import { smallBook, step } from './testing/small-book.ts';

const tin = (part: Partial<TinRecord>): TinRecord => ({
  name: 'The blue tin',
  family: 'epoxy-fast',
  store: null,
  readOn: '2026-05-01',
  nextCoat: null,
  latestCoat_h: null,
  worked: null,
  full: null,
  firstDay_mm: null,
  minimum_C: null,
  humidity_max_pct: null,
  potLife: null,
  ratio: null,
  spread_m2_l: null,
  strokePair_g: null,
  note: '',
  ...part,
});

const book = (family: string, part: Partial<Book> = {}, mix_g: number | null = 90): Book =>
  smallBook({
    mixes: { m: { name: 'The mix', mixing_min: 3, potLife_min: 20, family } },
    steps: { s: step('j', 1, 'Fill', { mix: 'm', mix_g, minutes: { low: 6, likely: 9, high: 12 } }) },
    ...part,
  });
const at = (air_C: number) => ({ air_C, basis: 'forecast' as const });

describe('what to mix now', () => {
  it('tells nothing of a step without a mix', () => {
    expect(mixNow(smallBook({ steps: { s: step('j', 1, 'Wash', {}) } }), 's', at(15))).toBeNull();
  });

  it('takes the pot life of the mix at the temperature there is: twice as long 8.75 °C colder, for an epoxy', () => {
    expect(mixNow(book('epoxy-fast'), 's', at(20))!.potLife.minutes).toBeCloseTo(20);
    const cold = mixNow(book('epoxy-fast'), 's', at(11.25))!.potLife;
    expect(cold.minutes).toBeCloseTo(40);
    expect(cold.words).toBe('40 min at 11.3 °C, by the forecast (our figure; the tin wins: 20 min at 20 °C for 100 g)');
  });

  it('lets the tin win, and says so: pot life, ratio, pumps and the least temperature', () => {
    const tins = {
      t: tin({
        potLife: { minutes: 30, at_C: 25, of_g: 100 },
        ratio: { kind: 'parts', by: 'weight', resin: 5, hardener: 1 },
        strokePair_g: 25,
        minimum_C: 12,
      }),
    };
    const told = mixNow(book('epoxy-fast', { tins }), 's', at(25))!;
    expect(told.tin).toBe('The blue tin');
    expect(told.potLife).toMatchObject({ minutes: 30, from: 'the tin' });
    // 90 g in six parts of 15 g; 90 g by strokes of 25 g is 4 of them, 100 g
    expect(told.parts.map(({ name, words, from }) => [name, words, from])).toEqual([
      ['resin', '75 g', 'the tin'],
      ['hardener', '15 g', 'the tin'],
      ['all of it', 'by the pumps 4 strokes of each, which makes 100 g', 'the tin'],
    ]);
    expect(told.against).toEqual([]);
    expect(mixNow(book('epoxy-fast', { tins }), 's', at(11))!.against[0]).toMatch(
      /below its least of 12 °C \(from the tin\).*may never reach its strength/,
    );
  });

  it('goes by the ratio written on the mix where no tin says one, and by the tin where it does', () => {
    const ratio = { by: 'weight', resin: 2, hardener: 1 } as const;
    const mixes = { m: { name: 'The mix', mixing_min: 3, potLife_min: 20, family: 'epoxy-fast', ratio } };
    const parts = (part: Partial<Book>) =>
      mixNow(book('epoxy-fast', { mixes, ...part }), 's', at(20))!.parts.map(({ words, from }) => [words, from]);
    // 90 g in three parts of 30 g; by the tin in six of 15 g
    expect(parts({})).toEqual([
      ['60 g', 'the mix'],
      ['30 g', 'the mix'],
    ]);
    expect(parts({ tins: { t: tin({ ratio: { kind: 'parts', by: 'weight', resin: 5, hardener: 1 } }) } })).toEqual([
      ['75 g', 'the tin'],
      ['15 g', 'the tin'],
    ]);
  });

  it('splits what is too much for one cup', () => {
    // 250 g of epoxy: three batches at the least by our 100 g, each used up in 3 + 6/3 = 5 min of 20·0.7
    const told = mixNow(book('epoxy-fast', {}, 250), 's', at(20))!;
    expect(told.batches).toBe('In 3 batches of 83 g, one after the other: each is mixed and used up in 5 min.');
  });

  it('gives catalyst by weight, by measure and in drops, and its cautions', () => {
    const told = mixNow(book('polyester-resin', {}, 500), 's', at(18))!;
    expect(told.parts[1]!.words).toBe(
      '2 %: 10 g; by a syringe 10 ml as sellers count it, 8.7 ml by its density; 148 to 296 drops, if there is nothing better',
    );
    expect(told.cautions.join(' ')).toMatch(/Never mix catalyst with accelerator.*past 150 °C/);
    const cold = mixNow(book('polyester-resin', {}, 500), 's', at(9))!;
    expect(cold.parts).toEqual([]);
    expect(cold.against[0]).toMatch(/Not below 13 °C/);
  });

  it('says what is not known in place of a figure', () => {
    const told = mixNow(book('epoxy-fast', {}, null), 's', at(15))!;
    expect([told.total_g, told.parts, told.batches]).toEqual([null, [], null]);
    expect(told.missing).toHaveLength(1);
    expect(mixNow(book('epoxy-fast', {}, null), 's', at(15), { total_g: 60 })!.missing[0]).toMatch(
      /put it in under the tin/,
    );
    const plain = book('epoxy-fast', { mixes: { m: { name: 'Stuff', mixing_min: 3, potLife_min: 20 } } });
    expect(mixNow(plain, 's', at(5))!.potLife).toMatchObject({ minutes: 20, words: '20 min, as written on the mix' });
  });

  it('takes the amount of the tin’s own store where the step says no other', () => {
    const tins = { t: tin({ store: 'kit', ratio: { kind: 'parts', by: 'volume', resin: 2, hardener: 1 } }) };
    const taking = book('epoxy-fast', { tins }, null);
    const steps = {
      s: { ...taking.steps.s!, stores: ['kit'], takes: [{ store: 'kit', amount: 0.113, unit: 'kg' as const }] },
    };
    const told = mixNow({ ...taking, steps }, 's', at(20))!;
    expect(told.total_g).toBeCloseTo(113);
    // 113 g is 100 ml at 1.13: 67 and 33, but 113 g are two cups
    expect(told.parts.map(({ words }) => words)).toEqual(['33 ml', '17 ml']);
  });
});
