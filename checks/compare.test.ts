import { describe, expect, it } from 'vitest';
import { questions } from '../apps/cli/src/questions.ts';
import { compare } from './compare.ts';
import type { OutsideRow } from './row.ts';
import { runOutsideRows } from './run-rows.ts';
import { mappings, unasked } from './subjects.ts';

describe('comparing an answer with a row', () => {
  it.each([
    [1.04, 1, { kind: 'abs', value: 0.05 }, true],
    [1.06, 1, { kind: 'abs', value: 0.05 }, false],
    [-104, -100, { kind: 'rel', value: 0.05 }, true],
    [106, 100, { kind: 'rel', value: 0.05 }, false],
    [3, 3, { kind: 'exact' }, true],
    [3.001, 3, { kind: 'exact' }, false],
    [2, [2, 4], { kind: 'range' }, true],
    [4.1, [2, 4], { kind: 'range' }, false],
    ['Do not  paint', 'do not paint', { kind: 'text' }, true],
    ['paint', 'do not paint', { kind: 'text' }, false],
    // 7.3653 h is 07:21:55
    [7.36528, '07:21:55', { kind: 'abs', value: 20 }, true],
    [7.38, '07:21:55', { kind: 'abs', value: 20 }, false],
    [-0.01, '23:59', { kind: 'abs', value: 60 }, true],
    [Number.NaN, 1, { kind: 'abs', value: 1e9 }, false],
    [Number.NaN, [0, 1], { kind: 'range' }, false],
    // a row of figures, each as near as it must be for its own size
    ['1230, 0.142, 0.058', [1231, 0.142, 0.058], { kind: 'abs', value: 1 }, true],
    ['1230, 0.142, 0.058', [1232, 0.142, 0.058], { kind: 'abs', value: 1 }, false],
    ['1230, 0.152, 0.058', [1230, 0.142, 0.058], { kind: 'abs', value: 1 }, false],
    ['800, 20, 1', [800, 20, 1], { kind: 'exact' }, true],
    ['800, 20', [800, 20, 1], { kind: 'exact' }, false],
    ['800, 20, 1, 5', [800, 20, 1], { kind: 'exact' }, false],
    ['800, 25, 1', [800, 20, 1], { kind: 'exact' }, false],
    // ten figures: the row can say no more than 2452930.313
    [2452930.312847, 2452930.313, { kind: 'abs', value: 1e-5 }, true],
    [2452930.3123, 2452930.313, { kind: 'abs', value: 1e-5 }, false],
  ] as const)('%s against %s', (got, wanted, tolerance, passed) => {
    expect(compare(got, wanted, tolerance).passed).toBe(passed);
  });
});

describe('rows of the handbook’s form', () => {
  const row = (id: string, inputs: Record<string, unknown>, expected: number): OutsideRow => ({
    id,
    quantity: 'dew point',
    inputs,
    expected,
    unit: '°C',
    tolerance: { kind: 'abs', value: 0.02 },
    source: 'made for this test',
    provenance: 'memory',
    basis: 'computed',
  });
  const run = (...rows: OutsideRow[]) => runOutsideRows(rows, questions(), { mappings, unasked });

  it('fails a row that is wrong, with both figures', () => {
    // WMO-No. 8 by hand: 20 °C and 50 % give 9.26 °C
    const { results } = run(
      row('sky.dew.wmo.20.50', { T: 20, RH: 50 }, 9.255),
      row('sky.dew.wmo.x', { T: 20, RH: 50 }, 9.3),
    );
    expect(results.map(({ comparison }) => comparison.passed)).toEqual([true, false]);
    expect(results[1]!.comparison).toMatchObject({ wanted: '9.3' });
    expect(Number(results[1]!.comparison.got)).toBeCloseTo(9.255, 3);
  });

  it('fails a row that the question refuses, and says why', () => {
    const { results } = run(row('sky.dew.wmo.20.500', { T: 20, RH: 500 }, 9));
    expect(results[0]!.comparison.passed).toBe(false);
    expect(results[0]!.comparison.got).toContain('500 is out of range');
  });

  it('loses no row: what cannot be asked is listed', () => {
    const {
      results,
      unasked: left,
      unknown,
      unmapped,
    } = run(
      row('interchange.ics.fold', {}, 1),
      row('moon.phase.1', {}, 1),
      row(
        'sky.spa.bogus',
        {
          date: '2003-10-17',
          local: '12:30:30',
          tz_h: -7,
          lat: 1,
          lon: 1,
          elev_m: 0,
          pressure_mbar: 820,
          temp_C: 11,
          deltaT_s: 67,
          refraction_deg: 0.5667,
        },
        1,
      ),
    );
    expect(results).toEqual([]);
    expect(left.map(({ family, rows }) => [family, rows])).toEqual([['interchange', 1]]);
    expect(unknown).toEqual([{ family: 'moon.phase', rows: 1 }]);
    expect(unmapped.map(({ id }) => id)).toEqual(['sky.spa.bogus']);
  });
});
