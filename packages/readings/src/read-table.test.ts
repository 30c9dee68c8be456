import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapsIn, type ReadingLimits } from './ordered-readings.ts';
import { planFaults, readTable, type TablePlan } from './read-table.ts';
import { mostTold } from './row-faults.ts';
import { lookAtTable, type TableLook } from './table-look.ts';

const limits: ReadingLimits = { volts: [8, 16.5], now: Date.UTC(2026, 10, 25) };
const utc = (text: string) => Date.parse(text);

function looked(text: string): TableLook {
  const look = lookAtTable(text, limits.volts);
  if (look.kind === 'refused') throw new Error(look.wrong);
  return look.look;
}
/** The plan a look proposes; what it could not tell must be given. */
function planOf(text: string, more: Partial<TablePlan> = {}): TablePlan {
  const { separator, headRows, decimal, columns, timeForm, units } = looked(text);
  const at = (what: string) => columns.findIndex(({ guess }) => guess === what);
  const some = (what: string) => (at(what) < 0 ? null : at(what));
  return {
    separator,
    headRows,
    decimal,
    time: { column: at('time'), clockColumn: some('clock'), form: timeForm ?? 'year first', zone: 'UTC' },
    volts: { column: at('volts'), unit: units.volts },
    current:
      some('current') === null ? null : { column: at('current'), unit: units.current, positive: 'out of the battery' },
    air: some('air') === null ? null : { column: at('air'), unit: units.air },
    ...more,
  };
}
const read = (text: string, more: Partial<TablePlan> = {}) => readTable(text, planOf(text, more), limits);
const list = (values: Float32Array | null) =>
  values === null ? null : Array.from(values, (v) => Number(v.toPrecision(6)));

describe('a first look', () => {
  it.each([
    ['time,volts,amps\n2026-05-02 10:00,12.4,1.2\n2026-05-02 10:01,12.3,1.1\n', ',', '.', ['time', 'volts', 'current']],
    [
      'Zeit;Spannung;Strom;Temp\n02.05.2026 10:00;12,4;1,2;18,5\n13.05.2026 10:01;12,3;-1,1;18\n',
      ';',
      ',',
      ['time', 'volts', 'current', 'air'],
    ],
    [
      'Date\tTime\tBatt_mV\n05/13/2026\t10:00\t12400\n05/13/2026\t10:01\t12390\n',
      '\t',
      '.',
      ['time', 'clock', 'volts'],
    ],
    [
      '# logger 3\n# started\n"stamp","deg F","bat V"\n1777747200,64,12.4\n1777747260,64,12.3\n',
      ',',
      '.',
      ['time', 'air', 'volts'],
    ],
    ['2026-05-02T10:00Z|12.4\n2026-05-02T10:01Z|12.3\n', '|', '.', ['time', 'volts']],
  ])('at %j', (text, separator, decimal, guesses) => {
    const look = looked(text);
    expect([look.separator, look.decimal]).toEqual([separator, decimal]);
    expect(look.columns.map(({ guess }) => guess)).toEqual(guesses);
    expect(look.timeForm).not.toBeNull();
  });

  it('does not choose between day first and month first where both may be', () => {
    expect(looked('t,v\n02/05/2026 10:00,12.4\n02/05/2026 10:01,12.3\n').timeForm).toBeNull();
    expect(looked('t,v\n02/05/2026 10:00,12.4\n14/05/2026 10:01,12.3\n').timeForm).toBe('day first');
    // in order as the 1st to the 4th of May, jumping about as January to April
    expect(looked('t,v\n30/04/2026 10:00,12.4\n01/05/2026 10:01,12.3\n').timeForm).toBe('day first');
  });

  it('reads units off the headings or the figures', () => {
    expect(looked('t,battery mV,I (mA),T [°F]\n2026-05-02 10:00,12400,120,64\n').units).toEqual({
      volts: 'mV',
      current: 'mA',
      air: '°F',
    });
  });

  it('refuses what has no columns', () => {
    expect(lookAtTable('Dear keeper,\nit is raining.\n', limits.volts)).toMatchObject({ kind: 'refused' });
    expect(lookAtTable('Dear keeper\nit is raining\n', limits.volts)).toMatchObject({
      kind: 'refused',
      wrong: expect.stringMatching(/columns/),
    });
  });
});

describe('RFC 4180 §2, from memory', () => {
  it('takes quotes, doubled quotes, line breaks inside quotes and empty fields as it says', () => {
    const text = 'time,note,volts\r\n2026-05-02 10:00,"a,b ""c""\r\nd",12.4\r\n2026-05-02 10:01,,12.3';
    const { columns, faults } = read(text);
    expect(list(columns.volts)).toEqual([12.4, 12.3]);
    expect(faults).toMatchObject({ rows: 0, figures: 0 });
  });
});

describe('what is read', () => {
  it('comes in V, A out of the battery and °C', () => {
    const text = 't,battery mV,I (mA),T [°F]\n2026-05-02 10:00,12400,-1500,50\n2026-05-02 10:01,12300,500,\n';
    const plan = planOf(text);
    const { columns } = readTable(
      text,
      { ...plan, current: { ...plan.current!, positive: 'into the battery' } },
      limits,
    );
    expect(list(columns.volts)).toEqual([12.4, 12.3]);
    expect(list(columns.current)).toEqual([1.5, -0.5]);
    // 50 °F is 10 °C by definition
    expect(list(columns.air)).toEqual([10, Number.NaN]);
  });

  it('is of the zone’s clocks; the hour shown twice goes on in order, the hour skipped is refused', () => {
    const rows = ['2026-10-25 02:10', '2026-10-25 02:50', '2026-10-25 02:10', '2026-10-25 02:50', '2026-10-25 03:10'];
    const text = ['t,v', ...rows.map((row, i) => `${row},12.${i}`)].join('\n');
    const plan = planOf(text);
    const berlin = { ...plan, time: { ...plan.time, zone: 'Europe/Berlin' } };
    expect([...readTable(text, berlin, limits).columns.at]).toEqual(
      ['00:10', '00:50', '01:10', '01:50', '02:10'].map((clock) => utc(`2026-10-25T${clock}Z`)),
    );
    const spring = 't,v\n2026-03-29 01:50,12.4\n2026-03-29 02:10,12.3\n2026-03-29 03:10,12.2\n';
    expect(readTable(spring, { ...planOf(spring), time: berlin.time }, limits).faults.told).toEqual([
      expect.objectContaining({ row: 3, lost: 'row', wrong: expect.stringMatching(/clocks went forward/) }),
    ]);
  });

  it('is put in order, and what is there twice is taken once', () => {
    const text = 't,v\n2026-05-02 10:02,12.2\n2026-05-02 10:00,12.4\n2026-05-02 10:02,12.2\n2026-05-02 10:00,12.9\n';
    const { columns, outOfOrder, twice, faults } = read(text);
    expect(list(columns.volts)).toEqual([12.4, 12.2]);
    expect([outOfOrder, twice]).toEqual([2, 1]);
    expect(faults.told).toEqual([
      expect.objectContaining({ row: 5, wrong: expect.stringMatching(/row 3 is of the same instant/) }),
    ]);
  });

  it('tells every row it refuses, with its number, what was wrong and what would be right', () => {
    const rows = [
      '2026-05-02 10:00,12.4,18',
      'yesterday,12.4,18',
      '2026-05-02 10:02,empty,18',
      '2026-05-02 10:03,0.02,18',
      '2026-05-02 10:04,12.3,-127',
      '2027-05-02 10:05,12.3,18',
      '1999-05-02 10:06,12.3,18',
      '2026-05-02 10:07',
      '2026-05-02 10:08,,',
      '2026-05-02 10:09,,18',
    ];
    const { columns, faults, rows: all } = read(['time,volts,air', ...rows].join('\n'));
    expect(all).toBe(10);
    expect(list(columns.volts)).toEqual([12.4, 12.3, Number.NaN]);
    expect(list(columns.air)).toEqual([18, Number.NaN, 18]);
    expect(faults).toMatchObject({ rows: 7, figures: 1 });
    expect(faults.told.map(({ row, lost }) => [row, lost])).toEqual([
      [3, 'row'],
      [4, 'row'],
      [5, 'row'],
      [6, 'figure'],
      [7, 'row'],
      [8, 'row'],
      [9, 'row'],
      [10, 'row'],
    ]);
    const said = (row: number) => faults.told.find((fault) => fault.row === row)!;
    expect(said(3)).toMatchObject({ wrong: '‘yesterday’ is no date and time with the year first' });
    expect(said(4).wrong).toBe('the volts ‘empty’ are no figure');
    expect(said(5)).toMatchObject({ wrong: 'the volts are 0.02', right: expect.stringMatching(/^from 8 to 16.5 V/) });
    expect(said(6).wrong).toBe('the air is -127 °C');
    expect(said(7).wrong).toMatch(/lies ahead/);
    expect(said(9)).toMatchObject({
      wrong: expect.stringMatching(/one field/),
      right: expect.stringMatching(/at least 2/),
    });
  });

  it('counts faults it has no room to tell one by one', () => {
    const text = [
      't,v',
      '2026-05-02 10:00,12.4',
      ...Array.from({ length: 2000 }, (_, i) => `2026-05-02 10:00,${i % 2 ? 'x' : '99'}`),
    ].join('\n');
    const { faults } = readTable(text, { ...planOf('t,v\n2026-05-02 10:00,12.4\n2026-05-02 10:01,12.4\n') }, limits);
    expect(faults.rows).toBe(2000);
    expect(faults.told).toHaveLength(mostTold);
    expect(faults.kinds.map(({ count }) => count)).toEqual([1000, 1000]);
    expect(faults.kinds[0]!.rows).toMatch(/^3, 5, 7, .* and more$/);
  });

  it('loses no row without telling it, whatever stands in the file', () => {
    const cell = fc.oneof(
      fc.constantFrom(
        '2026-05-02 10:00',
        '2026-05-02 10:00:30',
        '2026-03-29 02:30',
        '12.4',
        '12,4',
        '-',
        '',
        'NaN',
        '9e9',
        '"',
        '\u0000',
      ),
      fc.string({ maxLength: 12 }),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 30 }), (rows) => {
        const quoted = rows.map((cells) => cells.map((text) => `"${text.replaceAll('"', '""')}"`).join(','));
        const text = ['time,volts,air', ...quoted].join('\r\n');
        const plan: TablePlan = {
          separator: ',',
          headRows: 1,
          decimal: '.',
          time: { column: 0, clockColumn: null, form: 'year first', zone: 'Europe/London' },
          volts: { column: 1, unit: 'V' },
          current: null,
          air: { column: 2, unit: '°C' },
        };
        const { columns, faults, twice, rows: all } = readTable(text, plan, limits);
        expect(columns.at.length + twice + faults.rows).toBe(all);
        expect(faults.kinds.reduce((sum, { count }) => sum + count, 0)).toBe(faults.rows + faults.figures);
        for (const { wrong, right, row } of faults.told) expect([wrong, right, row > 1].every(Boolean)).toBe(true);
        for (let i = 1; i < columns.at.length; i++) expect(columns.at[i]).toBeGreaterThan(columns.at[i - 1]!);
      }),
    );
  });

  it('is the same whatever the order of the rows, the separator and the decimal sign', () => {
    const one = fc.record({
      minute: fc.nat(50_000),
      mV: fc.integer({ min: 8000, max: 16_500 }),
      dA: fc.integer({ min: -500, max: 500 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(one, { selector: ({ minute }) => minute, minLength: 1, maxLength: 40 }),
        fc.infiniteStream(fc.nat()),
        fc.constantFrom([';', ','], [';', '.'], ['\t', ','], [',', '.']),
        (readings, dice, [separator, decimal]) => {
          const stamp = (minute: number) =>
            new Date(utc('2026-01-01T00:00Z') + minute * 60_000).toISOString().slice(0, 16);
          const written = (value: number) => String(value).replace('.', decimal!);
          const rows = readings.map(({ minute, mV, dA }) =>
            [stamp(minute), written(mV / 1000), written(dA / 10)].join(separator),
          );
          const shuffled = rows.map((row) => ({ row, by: dice.next().value as number })).sort((a, b) => a.by - b.by);
          const text = [['time', 'volts', 'current'].join(separator), ...shuffled.map(({ row }) => row)].join('\n');
          const plan: TablePlan = {
            separator: separator as TablePlan['separator'],
            headRows: 1,
            decimal: decimal as '.' | ',',
            time: { column: 0, clockColumn: null, form: 'year first', zone: 'UTC' },
            volts: { column: 1, unit: 'V' },
            current: { column: 2, unit: 'A', positive: 'out of the battery' },
            air: null,
          };
          const { columns, faults } = readTable(text, plan, limits);
          const sorted = readings.toSorted((a, b) => a.minute - b.minute);
          expect(faults.rows).toBe(0);
          expect([...columns.at]).toEqual(sorted.map(({ minute }) => utc('2026-01-01T00:00Z') + minute * 60_000));
          expect([...columns.volts!]).toEqual(sorted.map(({ mV }) => Math.fround(mV / 1000)));
          expect([...columns.current!]).toEqual(sorted.map(({ dA }) => Math.fround(dA / 10)));
        },
      ),
    );
  });
});

describe('a wrong column', () => {
  const text = [
    'time,air,house',
    ...Array.from({ length: 20 }, (_, i) => `2026-05-02 10:${10 + i},${18 + i / 10},12.${i % 10}`),
  ].join('\n');
  const look = looked(text);
  const right = planOf(text, { volts: { column: 2, unit: 'V' }, air: { column: 1, unit: '°C' } });

  it('is told by what stands in it; the right one is not', () => {
    expect(planFaults(text, look, right, limits)).toEqual({});
    expect(planFaults(text, look, { ...right, volts: { column: 1, unit: 'V' }, air: null }, limits).volts).toMatch(
      /‘air’ runs from 18 to 19.9 V; volts here lie from 8 to 16.5 V/,
    );
    expect(planFaults(text, look, { ...right, volts: { column: 0, unit: 'V' } }, limits).volts).toMatch(
      /taken as the time already/,
    );
    expect(planFaults(text, look, { ...right, time: { ...right.time, column: 1 } }, limits).time).toMatch(
      /‘air’ holds 18, 18.1, 18.2: no times.*‘time’ looks right/,
    );
    expect(planFaults(text, look, { ...right, volts: { column: 2, unit: 'mV' } }, limits).volts).toMatch(
      /another unit/,
    );
  });

  it('with day and month changed over lies ahead, and that is told', () => {
    const ahead = 't,v\n02/12/2026 10:00,12.4\n03/12/2026 10:01,12.3\n';
    const plan = planOf(ahead);
    expect(
      planFaults(ahead, looked(ahead), { ...plan, time: { ...plan.time, form: 'day first' } }, limits).form,
    ).toMatch(/lie ahead/);
    expect(planFaults(ahead, looked(ahead), { ...plan, time: { ...plan.time, form: 'month first' } }, limits)).toEqual(
      {},
    );
  });
});

it('gaps are steps of more than five times the usual one', () => {
  const at = Float64Array.from([0, 60, 120, 180, 240, 1000, 1060], (s) => s * 1000);
  expect(gapsIn(at)).toEqual([{ from: 240_000, to: 1_000_000 }]);
  expect(gapsIn(Float64Array.of(0, 1000))).toEqual([]);
});
