import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type BoardHoist, boardHoist, type HoistTravel, worst } from './board-hoist.ts';
import { type HingedPlate, hangingWeight_N, plateMass_kg, platePull } from './plate.ts';
import { fallForce_N, type Handling, rove } from './tackle.ts';
import { tailForce_N, turnsToHold } from './turns-round-a-post.ts';
import { layerDiameter_mm, type Winch, wound } from './winch.ts';

const handlings: readonly Handling[] = ['hoisting', 'holding', 'lowering'];

describe('a tackle', () => {
  // facts of the trade: the names and powers of simple purchases (seamanship manuals, from memory)
  it.each([
    ['single whip', 0, 1, 'moving', 1, 'fixed'],
    ['runner', 1, 0, 'fixed', 2, 'moving'],
    ['double whip', 1, 1, 'fixed', 2, 'fixed'],
    ['gun tackle to advantage', 1, 1, 'moving', 3, 'moving'],
    ['luff to disadvantage', 1, 2, 'moving', 3, 'fixed'],
    ['luff to advantage', 2, 1, 'fixed', 4, 'moving'],
    ['twofold purchase', 2, 2, 'fixed', 4, 'fixed'],
  ] as const)('%s', (_, movingSheaves, fixedSheaves, endAt, parts, pulledFrom) => {
    expect(rove({ movingSheaves, fixedSheaves, endAt })).toEqual({
      kind: 'rove',
      parts,
      sheaves: movingSheaves + fixedSheaves,
      pulledFrom,
    });
  });

  it('refuses a reeving the rope cannot follow, with what would be right', () => {
    expect(rove({ movingSheaves: 3, fixedSheaves: 1, endAt: 'fixed' })).toMatchObject({
      kind: 'does not reeve',
      wrong: expect.stringContaining('3 moving and 1 standing'),
      right: expect.stringContaining('count apart'),
    });
    expect(rove({ movingSheaves: 0, fixedSheaves: 0, endAt: 'moving' }).kind).toBe('does not reeve');
  });

  const tackles = fc.record({
    parts: fc.integer({ min: 1, max: 9 }),
    more: fc.integer({ min: -1, max: 5 }),
    factor: fc.double({ min: 1, max: 1.4, noNaN: true }),
    less: fc.double({ min: 0, max: 1, noNaN: true }),
    load: fc.double({ min: 0, max: 20_000, noNaN: true }),
  });
  test('less friction never asks more of a hand that hoists, nor less of one that holds or lowers', () => {
    fc.assert(
      fc.property(tackles, ({ parts, more, factor, less, load }) => {
        const sheaves = Math.max(0, parts + more);
        const better = 1 + (factor - 1) * less;
        const force = (k: number, handling: Handling) => fallForce_N(load, parts, sheaves, k, handling);
        const slack = 1e-9 * (1 + load);
        expect(force(better, 'hoisting')).toBeLessThanOrEqual(force(factor, 'hoisting') + slack);
        for (const handling of ['holding', 'lowering'] as const)
          expect(force(better, handling)).toBeGreaterThanOrEqual(force(factor, handling) - slack);
        // without friction there is only the ideal ratio
        for (const handling of handlings) expect(force(1, handling)).toBeCloseTo(load / parts, 6);
      }),
    );
  });
});

describe('turns round a post', () => {
  test('as many as are said to hold do hold', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50_000, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.02, max: 0.6, noNaN: true }),
        (pull, tail, friction) => {
          const turns = turnsToHold(pull, tail, friction);
          expect(tailForce_N(pull, friction, 2 * Math.PI * turns)).toBeLessThanOrEqual(tail * (1 + 1e-9));
        },
      ),
    );
  });
});

const winch: Winch = { gear: 4, handle_mm: 200, drum_mm: 40, width_mm: 40, wire_mm: 4, loss: 0.1 };

describe('a drum', () => {
  it('winds ten turns to a layer, and the next on top', () => {
    const aLayer_m = (10 * Math.PI * layerDiameter_mm(winch, 1)) / 1000;
    expect(wound(winch, aLayer_m * 0.999)).toMatchObject({ layer: 1 });
    expect(wound(winch, aLayer_m * 1.001).layer).toBe(2);
    expect(wound(winch, aLayer_m).turns).toBeCloseTo(10, 9);
  });
});

const ironPlate: HingedPlate = {
  mass_kg: 60,
  density_kg_m3: 7200,
  centreOfMass: { along_m: 0.6, square_m: 0.05 },
  attachment: { along_m: 1.1, square_m: 0.1 },
  lead: { aft_m: 0.9, up_m: 0.7 },
};
const hoist: BoardHoist = {
  board: { kind: 'pivoting', plate: ironPlate, downTo_deg: 70, upTo_deg: 0 },
  leads: { count: 2, factor: 1.09 },
  gear: { kind: 'winch', winch, onDrumWhenDown_m: 0.3 },
  water_kg_m3: null,
};
const travelOf = (asked: BoardHoist): HoistTravel => {
  const travel = boardHoist(asked);
  if (travel.kind !== 'travel') throw new Error(travel.wrong);
  return travel;
};

describe('a board', () => {
  it('is refused where it is attached at the pivot, or where pulling lowers it, by name', () => {
    const at = (change: Partial<HingedPlate>) => platePull({ ...ironPlate, ...change }, 30, 500);
    expect(at({ attachment: { along_m: 0, square_m: 0 } })).toMatchObject({
      kind: 'no pull',
      at: 'attachment',
      wrong: expect.stringContaining('at the pivot'),
    });
    expect(at({ lead: { aft_m: 0.9, up_m: -2 } })).toMatchObject({
      kind: 'no pull',
      wrong: expect.stringContaining('lowers the plate'),
    });
  });

  it('weighs less afloat, as Archimedes says', () => {
    expect(hangingWeight_N(100, 8200, 1025) / hangingWeight_N(100, 8200, null)).toBeCloseTo(7 / 8, 12);
    const [air, sea] = [travelOf(hoist), travelOf({ ...hoist, water_kg_m3: 1025 })];
    for (const [n, point] of sea.points.entries())
      expect(point.wire_N / air.points[n]!.wire_N).toBeCloseTo(1 - 1025 / 7200, 9);
  });

  it('gains no more work than the hand gives, and the wire hauled in is what the hand pulled or wound', () => {
    for (const gear of [hoist.gear, { kind: 'tackle', parts: 4, sheaves: 4, factor: 1.09 } as const]) {
      const travel = travelOf({ ...hoist, gear });
      expect(travel.work_J.given).toBeGreaterThan(travel.work_J.gained);
      if (travel.toPull.kind === 'fall') expect(travel.toPull.cord_m).toBeCloseTo(4 * travel.wire_m, 9);
      // lifting the plate's centre of mass is all the work there is, to what sixty trapezes lose
      const rise_m = 0.6 * Math.sin((70 * Math.PI) / 180) + 0.05 * (1 - Math.cos((70 * Math.PI) / 180));
      expect(travel.work_J.gained / (60 * 9.80665 * rise_m)).toBeCloseTo(1, 3);
    }
  });

  it('a heavier plate asks for more everywhere; a plate that slides asks the same all the way', () => {
    const heavier = travelOf({
      ...hoist,
      board: { kind: 'pivoting', plate: { ...ironPlate, mass_kg: 90 }, downTo_deg: 70, upTo_deg: 0 },
    });
    const before = travelOf(hoist);
    for (const [n, point] of heavier.points.entries())
      expect(point.hand_N.hoisting).toBeCloseTo(1.5 * before.points[n]!.hand_N.hoisting, 6);
    const sliding = travelOf({
      ...hoist,
      board: { kind: 'sliding', mass_kg: 30, density_kg_m3: 7850, travel_m: 0.8 },
      gear: { kind: 'tackle', parts: 2, sheaves: 2, factor: 1.04 },
    });
    expect(worst(sliding, ({ wire_N }) => wire_N).wire_N).toBeCloseTo(30 * 9.80665, 9);
    expect(sliding.wire_m).toBeCloseTo(0.8, 12);
  });

  it('has the mass of its sides', () => {
    expect(plateMass_kg(1, 0.5, 0.01, 7850)).toBeCloseTo(39.25, 12);
  });
});
