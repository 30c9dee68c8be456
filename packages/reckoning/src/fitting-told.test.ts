import { describe, expect, it } from 'vitest';
import { type FittingAsked, fittingJob, fittingToGet, fittingTold } from './fitting-told.ts';
import { thingTaken } from './thing-to-get.ts';

const cleat: FittingAsked = {
  name: 'bow cleat',
  base: 'laminate',
  by: 'bolt',
  size_mm: 6,
  thickness_mm: 5,
  washer: 'plain',
  pad_mm: 0,
  pull_N: 1500,
  angle_deg: 90,
  height_mm: 40,
  rows_mm: 80,
  count: 2,
  use: 'ground-tackle',
};

describe('a fitting', () => {
  it('that does not hold says so, what gives, and what would', () => {
    const told = fittingTold(cleat);
    if (told.kind !== 'told') throw new Error('refused');
    // the part along: 1500 N on two, 750 N; the back row of one: 1500·40/80 = 750 N. A washer of 12 mm in 5 mm: 3252 N, a fifth 650 N;
    // a hole of 6 by 5 mm: 3510 N, a fifth 702 N; 750/650 + 750/702 = 222 %
    expect(told.verdict).toMatch(/^2 M6 bolts do not hold it: .* 222 % /);
    expect(told.gives).toBe('the washer comes through the laminate');
    expect(told.lines.join(' ')).toMatch(/6 of them would hold/);
    const pad = told.changes.find(({ what }) => what.startsWith('a stiff pad'))!;
    expect(pad.used_pct).toBeLessThan(222);
    expect(told.changes.find(({ what }) => what === 'M8')!.used_pct).toBeLessThan(222);
    expect(told.changes.find(({ what }) => what === 'M5')!.used_pct).toBeGreaterThan(222);
  });

  it('holds where each change said so', () => {
    const told = fittingTold(cleat);
    if (told.kind !== 'told') throw new Error('refused');
    const six = fittingTold({ ...cleat, count: 6 });
    expect(six).toMatchObject({ kind: 'told', holds: true });
    expect(told.changes.find(({ what }) => what === '4 instead of 2')).toMatchObject({ holds: false });
  });

  it('is refused with where and what would be right', () => {
    expect(fittingTold({ ...cleat, size_mm: 7 })).toMatchObject({ kind: 'refused', faults: [{ where: 'size' }] });
    expect(fittingTold({ ...cleat, rows_mm: 20 })).toMatchObject({ kind: 'refused', faults: [{ where: 'rows' }] });
  });

  it('brings its bolts and its job', () => {
    const thing = fittingToGet({ ...cleat, washer: 'large', count: 6 });
    expect(thing).toMatchObject({ name: 'M6 bolts with nuts and large washers, A4-70', amount: 6, unit: '' });
    const job = fittingJob(cleat, null, thingTaken({ stores: {} }, thing, 's1'));
    expect(job.steps?.[0]).toMatchObject({ stores: ['s1'], takes: [{ store: 's1', amount: 6, unit: '' }] });
    expect(job.steps?.[1]).toMatchObject({ hands: 2 });
  });
});
