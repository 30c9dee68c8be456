import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BatteryRecord, Book, CircuitRecord, PanelRecord } from '#boat-book';
import { circuitDrawTold } from './circuit-draw-told.ts';
import { mendJob, outletJob, outletToGet } from './circuit-jobs.ts';
import { circuitsTold } from './circuits-told.ts';
import { type NewOutlet, newOutletTold } from './new-outlet.ts';
import { smallBook } from './testing/small-book.ts';
import { thingTaken } from './thing-to-get.ts';

const agm: BatteryRecord = {
  name: 'House battery',
  zone: null,
  chemistry: 'agm',
  nominal_Ah: 17,
  nominal_V: 12,
  made: null,
  floor_pct: 50,
  meter: '',
  note: '',
  isolator: true,
  mainFuseKind: 'strip',
};
const light: CircuitRecord = {
  name: 'Cabin light',
  battery: 'house',
  watts: 12,
  duty_pct: 100,
  uses: { kind: 'always' },
  fuse_A: 3,
  fuseAt_m: 0.2,
  conductor: { area_mm2: 1.5, insulation_C: 70, lengthThereAndBack_m: 10, bundled: 2, engineSpace: false },
  needs: 'critical',
  zone: null,
};
const panel: PanelRecord = {
  name: 'Panel',
  battery: 'house',
  peak_W: 10,
  tilt_deg: 0,
  heading_deg: 0,
  regulator: 'simple',
  coefficient_pct_C: null,
  leads: { lengthThereAndBack_m: 5, area_mm2: 1.5 },
  kept_pct: null,
};
const noon = Date.parse('2026-05-09T12:00:00Z');
const bookOf = (circuits: Book['circuits'], more: Partial<Book> = {}): Book => ({
  ...smallBook(),
  batteries: { house: agm },
  circuits,
  ...more,
});
const only = (circuit: Partial<CircuitRecord>, battery: Partial<BatteryRecord> = {}) =>
  circuitsTold(bookOf({ light: { ...light, ...circuit } }, { batteries: { house: { ...agm, ...battery } } }));

describe('the circuits of the book', () => {
  it('are told with wire, drop and volts at the device', () => {
    // IEC 60228 class 5 tinned: 13.7 Ω/km at 20 °C, 3.93 % more at 30; 1 A over 10 m: 0.142 V, 1.2 % of 12 V
    const told = only({});
    expect(told.verdict).toBe('1 circuit looked at: nothing wrong found.');
    expect(told.batteries[0]!.circuits[0]!.words).toEqual({
      draws: '1 A, 12 W',
      on: 'always on',
      wire: '1.5 mm² (16 AWG), 10 m there and back',
      drop: 'loses 0.14 V, 1.2 % (3 % may be)',
      arrives: 'gets 11.8 V',
      fuse: 'fuse 3 A, 200 mm from the battery',
    });
  });

  it('a fault is told with what would be right, the gravest first', () => {
    // 200 mm: ISO 10133:2000 8.1; 18 A: the same, table A.1
    const told = only({ fuseAt_m: 0.65, fuse_A: 20, conductor: { ...light.conductor!, lengthThereAndBack_m: 40 } });
    expect(told.verdict).toBe('1 circuit looked at: 3 faults, 2 that can burn.');
    const { findings, drawn } = told.batteries[0]!.circuits[0]!;
    expect(findings.map(({ gravity }) => gravity)).toEqual(['danger', 'danger', 'worse']);
    expect(findings[0]!.wrong).toBe('The fuse is 20 A, the wire may carry 18 A: the wire is the fuse.');
    expect(findings[1]).toEqual({
      gravity: 'danger',
      wrong: 'The fuse is 650 mm from the battery: the wire before it has nothing to stop it.',
      right: 'Right would be: within 200 mm of the battery along the lead, or to 1800 mm in a sheath all the way.',
      mend: 'Move the fuse to the battery',
    });
    expect(mendJob('Cabin light', findings[1]!, null)).toMatchObject({
      title: 'Move the fuse to the battery: Cabin light',
      consequence: 'danger',
      why: expect.stringMatching(/650 mm.*Right would be/),
    });
    expect(drawn.marks).toEqual(['fuse too far', 'fuse', 'wire']);
  });

  it('what is not entered is told, and no fault is made of it', () => {
    const told = only({ conductor: null, fuseAt_m: null }, { isolator: null, mainFuseKind: null });
    expect(told.verdict).toBe('1 circuit looked at: nothing wrong found; 4 things not entered and so not looked at.');
    const all = circuitsTold(bookOf({}, { panels: { panel } })).batteries[0]!.circuits[0]!;
    expect(all.findings).toEqual([
      {
        gravity: 'unknown',
        wrong: 'Whether the panel’s lead is fused at the battery end is not entered.',
        right: null,
        mend: null,
      },
    ]);
    const bare = circuitsTold(bookOf({}, { panels: { panel: { ...panel, fuse_A: null } } }));
    expect(bare.batteries[0]!.circuits[0]!.findings[0]).toMatchObject({ gravity: 'danger' });
  });

  it('cable bought by gauge goes by the tables for gauges', () => {
    // 14 AWG boat cable is 4100 circular mils, 2.08 mm²; 60 °C insulation: 20 A (33 CFR 183.425 table 5)
    const [told] = only({ conductor: { ...light.conductor!, area_mm2: 2.08, insulation_C: 60 } }).batteries;
    expect(told!.circuits[0]!.words.wire).toMatch(/^14 AWG \(2\.08 mm²\)/);
    expect(told!.circuits[0]!.working.find(({ title }) => title === 'What the wire may carry')?.lines[0]).toMatch(
      /insulation 60 °C.*= 20 A/,
    );
  });

  it('a wire thinner than any table is a fault, not a crash', () => {
    const { findings } = only({ conductor: { ...light.conductor!, area_mm2: 0.3 } }).batteries[0]!.circuits[0]!;
    expect(findings[0]).toMatchObject({ gravity: 'danger', wrong: expect.stringContaining('0.3 mm²') });
  });
});

const fan: NewOutlet = {
  name: 'a fan',
  current_A: 2,
  oneWay_m: 4.5,
  needs: 'critical',
  insulation_C: 70,
  bundled: 2,
  engineSpace: false,
  run: 'in-a-sheath',
  fuseAt_m: 0.15,
  sheathed: false,
  soldBy: 'metric',
};

describe('what a circuit takes in a day', () => {
  it('is its watts over the usual volts, for the hours it is on', () => {
    // 12 W for 4 h at 12.5 to 12.9 V, where lead rested at 70 % lies in every table: 3.7 to 3.9 Ah
    const told = circuitDrawTold(
      bookOf({ light: { ...light, uses: { kind: 'hours', hours_a_day: 4 } } }),
      'light',
      noon,
    );
    expect(told?.lines[2]).toBe('Hours on, 4 h a day, in the 24 hours from now: h = 4 h.');
    const Ah = Number(/I·d·h = ([\d.]+) Ah/.exec(told!.lines[3]!)?.[1]);
    expect(Ah).toBeGreaterThan(3.7);
    expect(Ah).toBeLessThan(3.9);
  });

  it('is not told of a circuit that is not there, nor where no place gives the sun', () => {
    expect(circuitDrawTold(bookOf({}), 'light', noon)).toBe(null);
    expect(circuitDrawTold(bookOf({ light }, { places: {} }), 'light', noon)).toBe(null);
  });
});

describe('a new outlet', () => {
  it('is told that the main fuse breaks the short, where the book says so', () => {
    // 17 Ah AGM: 12.9 V over 120/17 mΩ, our assumption, is 1828 A
    expect(newOutletTold(agm, fan).lines.at(-1)).toMatch(/^The main fuse, bolted strip, breaks the 1900 A/);
    expect(newOutletTold({ ...agm, mainFuseKind: 'none' }, fan).lines.at(-1)).toMatch(/^It must break the 1900 A/);
    expect(newOutletTold({ ...agm, fault_A: 800, mainFuseKind: null }, fan).lines.at(-1)).toMatch(
      /800 A this battery may give into a short \(its maker’s sheet\): a blade fuse does/,
    );
  });

  it('gets the larger wire of drop and current, counted there and back, and the next fuse', () => {
    // 2 A over 9 m may lose 0.36 V. IEC 60228 class 5 tinned, warmed to 30 °C: 1 mm² 20.8 Ω/km loses 0.374 V, 1.5 mm²
    // 14.2 Ω/km loses 0.256 V. 1.25 × 2 A = 2.5 A: the next standard fuse is 3 A. By gauge
    // 10.75 × 2 A × 29.5 ft ÷ 0.36 V = 1762 circular mils; 18 AWG has 1600, 16 AWG 2600
    const told = newOutletTold(agm, fan);
    expect(told).toMatchObject({ kind: 'found', size: '1.5 mm² (16 AWG)', fuse_A: 3 });
    expect(told.lines[0]).toBe(
      'Take 1.5 mm², or 16 AWG where it is sold in AWG. 4.5 m one way is 9 m there and back, and that is what counts.',
    );
    expect(told.lines[1]).toMatch(/By volts lost 1\.5 mm², by current 0\.75 mm².*here by volts lost\.$/);
    expect(told.lines.join(' ')).toMatch(/It loses 0\.26 V, 2\.1 %; 3 % may be, 0\.36 V/);
  });

  it('says so where no wire does, and where the fuse would stand too far', () => {
    expect(newOutletTold(agm, { ...fan, current_A: 200, oneWay_m: 20 })).toMatchObject({
      kind: 'none',
      lines: [
        expect.stringMatching(/^No wire of the table/),
        expect.stringMatching(/^By volts lost none of the table, by current 50 mm²/),
        expect.stringMatching(/Shorten the run/),
      ],
    });
    expect(newOutletTold(agm, { ...fan, fuseAt_m: 0.5 })).toMatchObject({
      warnings: [expect.stringMatching(/^500 mm from the battery is too far for the fuse: 200 mm may be/)],
    });
    expect(newOutletTold(agm, fan)).toMatchObject({ warnings: [] });
  });

  it('put in the book as it is told, has no fault', () => {
    const outlets = fc.record({
      name: fc.constant('an outlet'),
      current_A: fc.double({ min: 0.1, max: 60, noNaN: true }),
      oneWay_m: fc.double({ min: 0.3, max: 20, noNaN: true }),
      needs: fc.constantFrom('critical' as const, 'other' as const),
      insulation_C: fc.constantFrom(60 as const, 70 as const, 85 as const, 105 as const),
      bundled: fc.integer({ min: 1, max: 30 }),
      engineSpace: fc.boolean(),
      run: fc.constantFrom('singly' as const, 'in-a-sheath' as const),
      fuseAt_m: fc.double({ min: 0, max: 0.2, noNaN: true }),
      sheathed: fc.boolean(),
      soldBy: fc.constant('metric' as const),
    });
    fc.assert(
      fc.property(
        outlets,
        fc.constantFrom('flooded' as const, 'agm' as const, 'lifepo4' as const),
        (outlet, chemistry) => {
          const battery = { ...agm, chemistry };
          const told = newOutletTold(battery, outlet);
          if (told.kind === 'none') return;
          const circuit = { ...light, ...told.fields, name: outlet.name };
          const [looked] = circuitsTold(bookOf({ circuit }, { batteries: { house: battery } })).batteries;
          expect(looked!.circuits[0]!.findings).toEqual([]);
        },
      ),
    );
  });

  it('becomes a job with the wire and the fuse to get', () => {
    const told = newOutletTold(agm, fan);
    if (told.kind === 'none') throw new Error('a wire was expected');
    const [wire, fuse] = outletToGet(fan, told);
    expect(wire).toMatchObject({ name: 'Twin cable, 1.5 mm² (16 AWG)', amount: 4.5, unit: 'm' });
    expect(fuse).toMatchObject({ name: 'Fuse with holder, 3 A', amount: 1, unit: '' });
    // run singly it is twice the length of one core
    expect(outletToGet({ ...fan, run: 'singly' }, told)[0]).toMatchObject({
      name: 'Single-core cable, 1.5 mm² (16 AWG)',
      amount: 9,
    });
    const taken = [wire, fuse].map((thing, i) => thingTaken({ stores: {} }, thing, `s${i}`));
    expect(outletJob(fan, null, taken).steps?.flatMap(({ takes }) => takes ?? [])).toEqual([
      { store: 's0', amount: 4.5, unit: 'm' },
      { store: 's1', amount: 1, unit: '' },
    ]);
  });
});
