import { describe, expect, it } from 'vitest';
import type { BoardHoistRecord, HoistForceRecord } from '#boat-book';
import { hoistJob, hoistNeedsTold } from './hoist-needs.ts';
import { foretoldPull_N, pullsTold, stiffHoistJob } from './hoist-pulls.ts';
import { hoistTold } from './hoist-told.ts';
import { smallBook } from './testing/small-book.ts';
import { thingTaken } from './thing-to-get.ts';

const record: BoardHoistRecord = {
  name: 'The plate’s hoist',
  zone: null,
  plate: { length_m: 1, breadth_m: 0.4, density_kg_m3: 7850, mass: { kind: 'by its sizes', thickness_mm: 10 } },
  moves: { kind: 'slides', travel_m: 0.8, topAboveWater_m: 0, offMiddle_m: 0, held_m: 0.4 },
  wire: { of: '7x19', size_mm: 4, ending: 'ferrule' },
  leads: { count: 1, bearing: 'plain', sheave_mm: 80 },
  tackles: [{ movingSheaves: 1, fixedSheaves: 1, endAt: 'fixed', bearing: 'plain' }],
  cord: { of: 'polyester-braid', size_mm: 8, ending: 'bowline' },
  winch: null,
  note: '',
};
// 1 · 0.4 · 0.01 m³ of steel are 31.4 kg: 307.9 N; over a plain lead 335.6, by two parts over two plain sheaves 190.8
const hand_N = (31.4 * 9.80665 * 1.09 * 1.09 ** 2) / 2.09;

const words = (told: ReturnType<typeof hoistTold>) =>
  JSON.stringify({ ...told, reckoned: undefined, points: undefined });

describe('a hoist told', () => {
  it('has the pull that its sizes make by hand, and no word that is none', () => {
    const told = hoistTold(record, 'air');
    if (told.kind !== 'told') throw new Error(told.wrong);
    expect(told.reckoned.hand.hoisting.force_N).toBeCloseTo(hand_N, 6);
    expect(told.verdict).toContain(`${Math.round(hand_N)} N on the fall`);
    expect(told.short).toEqual([]);
    for (const where of ['air', 'sea'] as const)
      expect(words(hoistTold(record, where))).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });

  it('names what is short: the hand on a heavy plate, the wire that is too thin', () => {
    const heavy = { ...record, plate: { ...record.plate, mass: { kind: 'weighed', mass_kg: 90 } } } as const;
    expect(hoistTold(heavy, 'air')).toMatchObject({ kind: 'told', short: ['hand'] });
    const thin = { ...heavy, wire: { ...record.wire, size_mm: 2 } };
    expect(hoistTold(thin, 'air')).toMatchObject({
      short: ['hand', 'wire'],
      verdict: expect.stringMatching(/too little/),
    });
    const odd = { ...record, wire: { ...record.wire, size_mm: 4.5 } };
    expect(hoistTold(odd, 'air')).toMatchObject({ short: [], verdict: expect.stringMatching(/is not known/) });
  });

  it('says what cannot be hoisted and what would be right', () => {
    const off = { ...record, moves: { ...record.moves, offMiddle_m: 0.9 } } as BoardHoistRecord;
    expect(hoistTold(off, 'air')).toMatchObject({
      kind: 'cannot',
      wrong: expect.stringContaining('jams like a drawer'),
    });
    const tackle = { movingSheaves: 3, fixedSheaves: 1, endAt: 'fixed', bearing: 'plain' } as const;
    expect(hoistTold({ ...record, tackles: [tackle] }, 'air')).toMatchObject({
      kind: 'cannot',
      right: expect.stringContaining('count apart'),
    });
  });

  it('a board that floats hangs on nothing', () => {
    const wooden = { ...record, plate: { ...record.plate, density_kg_m3: 600 } };
    expect(hoistTold({ ...wooden, moves: { ...record.moves, topAboveWater_m: -2 } as never }, 'sea')).toMatchObject({
      verdict: expect.stringContaining('floats up by itself'),
    });
  });

  it('every change offered can be put in the book and is told again', () => {
    const told = hoistTold(record, 'air');
    if (told.kind !== 'told') throw new Error(told.wrong);
    expect(told.changes.length).toBeGreaterThan(5);
    for (const change of told.changes) {
      expect(change.gains.length + change.costs.length).toBeGreaterThan(0);
      expect(hoistTold(change.record, 'air').kind).toBe('told');
    }
  });
});

describe('what a heavier board needs', () => {
  it('is what it is where that does; else a part more, with the job and what is to get', () => {
    expect(hoistNeedsTold(record, 31.4)).toMatchObject({ kind: 'found', asIsDoes: true, toGet: [] });
    const needs = hoistNeedsTold(record, 47);
    if (needs.kind !== 'found') throw new Error(needs.why);
    expect(needs.asIsDoes).toBe(false);
    expect(needs.record.tackles).toMatchObject([{ movingSheaves: 1, fixedSheaves: 2, endAt: 'moving' }]);
    expect(needs.toGet.map(({ name }) => name)).toEqual([expect.stringContaining('Blocks for a tackle of 3 parts')]);
    expect(needs.toGet).toMatchObject([{ amount: 1, unit: 'set' }]);
    const job = hoistJob(record, needs, [thingTaken({ stores: {} }, needs.toGet[0]!, 's1')]);
    expect(job).toMatchObject({ title: 'Fit wire and tackle for a board of 47 kg', consequence: 'danger' });
    expect(job.steps?.flatMap(({ takes }) => takes ?? [])).toEqual([{ store: 's1', amount: 1, unit: 'set' }]);
  });

  it('says where nothing of ours does', () => {
    expect(hoistNeedsTold(record, 400)).toMatchObject({ kind: 'none', why: expect.stringContaining('second person') });
  });
});

describe('pulls that were read', () => {
  const foretold_N = foretoldPull_N(record, { handling: 'hoisting', hauled_pct: null, in: 'air' })!;
  const read = (shares: readonly number[], days: readonly string[]) =>
    pullsTold(
      smallBook({
        boardHoists: { plate: record },
        hoistForces: Object.fromEntries(
          shares.map((share, i): [string, HoistForceRecord] => [
            `f${i}`,
            {
              hoist: 'plate',
              at: `${days[i]}T10:00:00Z`,
              handling: 'hoisting',
              hauled_pct: null,
              in: 'air',
              hand_N: share * foretold_N,
              foretold_N,
              with: '',
              note: '',
            },
          ]),
        ),
      }),
      'plate',
      'UTC',
    );

  it('are as foretold where a scale could not tell them apart', () => {
    const told = read([1, 1.05, 1.08], ['2026-01-01', '2026-04-01', '2026-08-01']);
    expect(told.stiffer).toBe(false);
    expect(told.lines.join(' ')).toMatch(/turns as it did/);
    expect(read([], []).lines).toEqual([]);
  });

  it('that grow over months say that something turns harder, and what every sheave would have to take', () => {
    const told = read([1, 1.15, 1.3], ['2026-01-01', '2026-04-01', '2026-08-01']);
    expect(told.stiffer).toBe(true);
    expect(told.lines[1]).toMatch(/from 1 to 1.3 what was foretold/);
    // one lead and the two sheaves of two parts: K³/(K + 1) is 1.3 times that of 1.09 at 1.2124
    expect(1.2124 ** 3 / 2.2124 / (1.09 ** 3 / 2.09)).toBeCloseTo(1.3, 3);
    expect(told.lines[2]).toMatch(/1\.21 times over every sheave/);
    expect(stiffHoistJob(record, told).steps?.[0]?.cautions?.[0]).toContain('Nobody under it');
  });

  it('below what no friction at all would ask say that mass or scale is not as entered', () => {
    expect(read([0.5], ['2026-01-01']).lines.at(-1)).toMatch(/less than it would take with no friction/);
    expect(read([9], ['2026-01-01']).lines.at(-1)).toMatch(/rubs or jams/);
  });
});
