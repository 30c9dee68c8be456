import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ask } from '#working';
import { bowLoad, currentDrag, tableLoad, windDrag_N, windOfLoad_kn } from './bow-load.ts';
import { groundQuestions } from './ground-questions.ts';
import { lengthOf, type RodeLying, type RodeOut, type RodePiece, rodeLines, rodeLying } from './rode.ts';
import { chainPiece, ropePiece } from './rode-gear.ts';
import { loadThatLifts_N, loadWhenCarried_N, rodeToVeer, swingingCircle, veered } from './veer.ts';

const chain: RodePiece = chainPiece({ size_mm: 8, length_m: 10 });
const nylon: RodePiece = ropePiece({ fibre: 'nylon', size_mm: 12, length_m: 30 });
const mixed: RodeOut = { pieces: [chain, nylon], load_N: 600, height_m: 5 };

const lyingOf = (rode: RodeOut): RodeLying => {
  const lying = rodeLying(rode);
  if (lying.kind !== 'lies') throw new Error(`the rode does not lie: ${lying.kind}`);
  return lying;
};

describe('a rode', () => {
  it('of chain alone has the lengths and pulls of the catenary', () => {
    // L = √(h² + 2hT/w) leaves the anchor level, and the pull at the bow is T + wh: statics, worked by hand
    const w = chain.weight_N_per_m;
    const [h, load] = [5, 300];
    const level_m = Math.sqrt(h ** 2 + (2 * h * load) / w);
    const out = { pieces: [{ ...chain, length_m: level_m + 8 }], load_N: load, height_m: h };
    const lying = lyingOf(out);
    expect(lying.grounded_m).toBeCloseTo(8, 6);
    expect(lying.atBow_N).toBeCloseTo(load + w * h, 6);
    expect(lying.angle_deg).toBe(0);
    expect(lying.stretched_m).toBe(0);
  });

  it('with next to no weight lies straight, and stretches as its pull asks', () => {
    const light = { length_m: 10, weight_N_per_m: 1e-9, stretch_per_N: 1e-5 };
    const lying = lyingOf({ pieces: [light], load_N: 1000, height_m: 6 });
    // straight: sin α = 6/L with L = 10(1 + cT) and T = 1000/cos α, worked out by going round
    let angle = Math.asin(0.6);
    for (let n = 0; n < 100; n++) angle = Math.asin(6 / (10 * (1 + (1e-5 * 1000) / Math.cos(angle))));
    expect(lying.angle_deg).toBeCloseTo((angle * 180) / Math.PI, 6);
    expect(lying.atBow_N).toBeCloseTo(1000 / Math.cos(angle), 4);
    expect(lying.stretched_m).toBeCloseTo((10 * 1e-5 * 1000) / Math.cos(angle), 6);
  });

  it('is drawn from the anchor to the bow, with the ends of its pieces on the line', () => {
    const lying = lyingOf(mixed);
    const lines = rodeLines(mixed, lying, 12);
    expect(lines).toHaveLength(2);
    expect(lines[0]![0]).toEqual({ along_m: 0, up_m: 0 });
    expect(lines[1]![0]).toEqual(lines[0]!.at(-1));
    expect(lines[1]!.at(-1)!.along_m).toBeCloseTo(lying.reach_m, 9);
    expect(lines[1]!.at(-1)!.up_m).toBeCloseTo(mixed.height_m, 9);
  });

  it('shorter than the height is refused, and floating rope is named', () => {
    expect(rodeLying({ ...mixed, height_m: 41 })).toEqual({ kind: 'too short', rode_m: 40, height_m: 41 });
    const floating = ropePiece({ fibre: 'polypropylene', size_mm: 12, length_m: 80 });
    expect(rodeLying({ pieces: [floating], load_N: 5, height_m: 3 }).kind).toBe('floats');
  });

  const rodes = fc.record({
    chain_m: fc.double({ min: 0.5, max: 60, noNaN: true }),
    rope_m: fc.double({ min: 0.5, max: 100, noNaN: true }),
    fibre: fc.constantFrom('nylon' as const, 'polyester' as const),
    load_N: fc.double({ min: 20, max: 20_000, noNaN: true }),
    scope: fc.double({ min: 1.05, max: 12, noNaN: true }),
  });
  const rodeOf = ({
    chain_m,
    rope_m,
    fibre,
    load_N,
    scope,
  }: {
    chain_m: number;
    rope_m: number;
    fibre: 'nylon' | 'polyester';
    load_N: number;
    scope: number;
  }): RodeOut => ({
    pieces: [chainPiece({ size_mm: 8, length_m: chain_m }), ropePiece({ fibre, size_mm: 12, length_m: rope_m })],
    load_N,
    height_m: (chain_m + rope_m) / scope,
  });

  test('more scope never steepens the pull at the anchor', () => {
    fc.assert(
      fc.property(rodes, fc.double({ min: 0, max: 50, noNaN: true }), (drawn, more) => {
        const rode = rodeOf(drawn);
        const longer = { ...rode, pieces: [rode.pieces[0]!, { ...rode.pieces[1]!, length_m: drawn.rope_m + more }] };
        expect(lyingOf(longer).angle_deg).toBeLessThanOrEqual(lyingOf(rode).angle_deg + 1e-6);
      }),
    );
  });

  test('the pull at the anchor is never more than at the bow, and what is level is the load', () => {
    fc.assert(
      fc.property(rodes, (drawn) => {
        const rode = rodeOf(drawn);
        const lying = lyingOf(rode);
        expect(lying.atAnchor_N).toBeLessThanOrEqual(lying.atBow_N + 1e-9);
        expect(lying.atAnchor_N).toBeGreaterThanOrEqual(drawn.load_N - 1e-9);
        // what hangs weighs the difference of the two vertical pulls
        const up = Math.sqrt(lying.atBow_N ** 2 - drawn.load_N ** 2);
        const hanging = rode.pieces.reduce((sum, { length_m, weight_N_per_m }) => sum + length_m * weight_N_per_m, 0);
        expect(up - lying.lift_N).toBeCloseTo(hanging, 3);
        // the straight line is the shortest way
        expect(Math.hypot(lying.reach_m, rode.height_m)).toBeLessThanOrEqual(
          lengthOf(rode.pieces) + lying.stretched_m + 1e-6,
        );
      }),
    );
  });
});

describe('the rode to veer', () => {
  it('is the least that keeps within the angle: chain first, then rope', () => {
    const veer = rodeToVeer(mixed, 8);
    if (veer.kind !== 'veer') throw new Error(veer.kind);
    expect(veer.lying.angle_deg).toBeCloseTo(8, 5);
    expect(veer.out.pieces[0]!.length_m).toBe(10);
    expect(lyingOf({ ...mixed, pieces: veered(mixed.pieces, veer.length_m - 0.1) }).angle_deg).toBeGreaterThan(8);
    const short = rodeToVeer({ ...mixed, load_N: 40, height_m: 2 }, 8);
    if (short.kind !== 'veer') throw new Error(short.kind);
    expect(short.length_m).toBeLessThan(10);
    expect(short.out.pieces[1]!.length_m).toBe(0);
  });

  it('says how much it would take where there is not enough', () => {
    const veer = rodeToVeer({ ...mixed, height_m: 12, load_N: 3000 }, 8);
    if (veer.kind !== 'not enough') throw new Error(veer.kind);
    expect(veer.lying.angle_deg).toBeGreaterThan(8);
    const longer = { ...nylon, length_m: veer.wanted_m! - 10 };
    expect(lyingOf({ pieces: [chain, longer], load_N: 3000, height_m: 12 }).angle_deg).toBeCloseTo(8, 4);
  });

  it('finds the load that lifts, and what a sea that carries her back makes of it', () => {
    const lifts_N = loadThatLifts_N({ pieces: mixed.pieces, height_m: 5 }, 0, 50_000)!;
    expect(lyingOf({ ...mixed, load_N: lifts_N * 0.999 }).angle_deg).toBe(0);
    expect(lyingOf({ ...mixed, load_N: lifts_N * 1.001 }).angle_deg).toBeGreaterThan(0);
    const carried_N = loadWhenCarried_N(mixed, 0.5, 30_000)!;
    expect(lyingOf({ ...mixed, load_N: carried_N }).reach_m).toBeCloseTo(lyingOf(mixed).reach_m + 0.5, 6);
    // chain drawn straight gives nothing where nylon of the same length still does
    const straight: RodeOut = { ...mixed, pieces: [{ ...chain, length_m: 40 }], load_N: 2000 };
    expect(loadWhenCarried_N(straight, 0.5, 100_000)).toBeNull();
    expect(loadWhenCarried_N({ ...mixed, load_N: 2000 }, 0.5, 30_000)).toBeLessThan(2600);
  });

  it('swings wider the lower the water', () => {
    const at = (height_m: number) => {
      const out = { ...mixed, height_m };
      return swingingCircle(out, lyingOf(out), 6);
    };
    expect(at(3).taut_m).toBeGreaterThan(at(6).taut_m);
    expect(at(3).lying_m).toBeLessThanOrEqual(at(3).taut_m + 1e-9);
  });
});

describe('the load at the bow', () => {
  const seen = { windage_m2: 3, coefficient: 1, draught_m: 0.3, below_m2: 0.06, surge: 2 };
  it('goes by length or beam, whichever asks for more', () => {
    const boat = { length_m: 5.6, beam_m: 2.05, kind: 'sail' as const };
    expect(tableLoad(boat, 30)).toMatchObject({ kind: 'found', by: 'length', row: { length_ft: 20 } });
    expect(tableLoad({ ...boat, beam_m: 2.3 }, 30)).toMatchObject({
      by: 'beam',
      row: { length_ft: 25 },
      seen: 'recalled',
    });
    expect(tableLoad({ ...boat, length_m: 13 }, 30).kind).toBe('off the table');
  });

  test('more wind never pulls less, and the wind of a load is the load’s wind', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 12, noNaN: true }),
        fc.double({ min: 1, max: 79, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (length_m, wind_kn, more_kn) => {
          const at = (kn: number) => {
            const table = tableLoad({ length_m, beam_m: 1, kind: 'sail' }, kn);
            if (table.kind !== 'found') throw new Error(table.kind);
            return table;
          };
          const { load_N } = at(wind_kn);
          expect(at(wind_kn + more_kn).load_N).toBeGreaterThanOrEqual(load_N - 1e-9);
          const boat = { length_m, beam_m: 1, kind: 'sail', ...seen } as const;
          const { taken_N } = bowLoad(boat, wind_kn, 0.5);
          expect(windOfLoad_kn(boat, taken_N, 0.5, 100)).toBeCloseTo(wind_kn, 6);
        },
      ),
    );
  });

  it('grows with the square of wind and nearly of current', () => {
    expect(windDrag_N(3, 1, 10) / windDrag_N(3, 1, 5)).toBeCloseTo(4, 12);
    const drag = (m_s: number) => {
      const { form_N, friction_N, below_N } = currentDrag(
        { length_m: 5.6, beam_m: 2, draught_m: 0.3, below_m2: 0.06 },
        m_s,
      );
      return form_N + friction_N + below_N;
    };
    expect(drag(0)).toBe(0);
    expect(drag(2) / drag(1)).toBeGreaterThan(3.7);
    expect(drag(2) / drag(1)).toBeLessThan(4);
  });
});

describe('questions about ground tackle', () => {
  const asked = (id: string, given: Readonly<Record<string, unknown>>) =>
    ask(groundQuestions().find((each) => each.id === id)!, given);
  const rode = { load: 600, depth: 4, chain: '8', 'chain-length': 10, rope: 'nylon', 'rope-length': 30, boat: 5.6 };

  it('refuse a rode shorter than the depth, and a tide that leaves her dry, by name', () => {
    expect(asked('loads.rode', { ...rode, depth: 45 })).toMatchObject({
      kind: 'refused',
      faults: [
        { where: 'rope-length', wrong: expect.stringContaining('45.8 m'), right: expect.stringContaining('more than') },
      ],
    });
    expect(asked('loads.rode', { ...rode, fall: 4 })).toMatchObject({ kind: 'refused', faults: [{ where: 'fall' }] });
    expect(asked('loads.rode', { ...rode, chain: 'none' })).toMatchObject({
      kind: 'refused',
      faults: [{ where: 'chain' }],
    });
  });

  test('never answer with what is no number', () => {
    for (const question of groundQuestions()) {
      let answers = 0;
      fc.assert(
        fc.property(
          fc.record(Object.fromEntries(Object.entries(question.fields).map(([name, field]) => [name, field.raw(fc)]))),
          (given) => {
            const answered = ask(question, given);
            if (answered.kind === 'refused') {
              expect(answered.faults[0]?.right).toBeTruthy();
              return;
            }
            answers++;
            for (const { value } of [...answered.answer.results, ...answered.answer.working])
              if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          },
        ),
        { numRuns: 400 },
      );
      expect(answers).toBeGreaterThan(25);
    }
  });
});
