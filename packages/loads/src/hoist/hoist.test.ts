import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type BoardHoist, boardHoist, type HoistTravel } from './board-hoist.ts';
import { type HingedPlate, hangingWeight_N, plateMass_kg, platePull } from './plate.ts';
import { type SlidingPlate, slidingPull } from './sliding-board.ts';
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
  gear: { tackles: [], drum: { winch, woundWhenDown_m: 0.3 } },
  water_kg_m3: null,
};
const dagger: SlidingPlate = {
  mass_kg: 30,
  density_kg_m3: 7850,
  length_m: 1.2,
  topAboveWater_m: 0.1,
  offMiddle_m: 0,
  held_m: 0.5,
  friction: 0.3,
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
      expect(point.wire_N.holding / air.points[n]!.wire_N.holding).toBeCloseTo(1 - 1025 / 7200, 9);
  });

  it('gains no more work than the hand gives, and the wire hauled in is what the hand pulled or wound', () => {
    const tackle = { parts: 4, sheaves: 4, factor: 1.09 };
    for (const gear of [hoist.gear, { tackles: [tackle], drum: null }, { ...hoist.gear, tackles: [tackle] }]) {
      const travel = travelOf({ ...hoist, gear });
      expect(travel.work_J.given).toBeGreaterThan(travel.work_J.gained);
      if (gear.tackles.length > 0) expect(travel.toPull.line_m).toBeCloseTo(4 * travel.wire_m, 9);
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
      board: { kind: 'sliding', plate: dagger, travel_m: 0.8 },
      gear: { tackles: [{ parts: 2, sheaves: 2, factor: 1.04 }], drum: null },
    });
    for (const { wire_N } of sliding.points) expect(wire_N.hoisting).toBeCloseTo(30 * 9.80665, 9);
    expect(sliding.wire_m).toBeCloseTo(0.8, 12);
  });

  it('has the mass of its sides', () => {
    expect(plateMass_kg(1, 0.5, 0.01, 7850)).toBeCloseTo(39.25, 12);
  });
});

describe('a board that slides in its case', () => {
  it('comes out of the water as it is hoisted, and weighs more', () => {
    // 0.1 m of 1.2 stands out, all the way down; 0.9 m after 0.8 m of hoist: 30 kg displace 30·1025/7850 kg under water
    const lost_N = (30 * 9.80665 * 1025) / 7850;
    const travel = travelOf({ ...hoist, board: { kind: 'sliding', plate: dagger, travel_m: 0.8 }, water_kg_m3: 1025 });
    expect(travel.points[0]!.wire_N.holding).toBeCloseTo(30 * 9.80665 - (lost_N * 1.1) / 1.2, 9);
    expect(travel.points.at(-1)!.wire_N.holding).toBeCloseTo(30 * 9.80665 - (lost_N * 0.3) / 1.2, 9);
  });

  it('rubs where the wire pulls off its middle, and jams like a drawer where it pulls too far off', () => {
    // e/h = 0.1/0.5, µ 0.3: 2·µ·e/h = 0.12
    const pull = slidingPull({ ...dagger, offMiddle_m: 0.1 }, 0, null);
    if (pull.kind !== 'pull') throw new Error(pull.wrong);
    expect(pull.wire_N.hoisting).toBeCloseTo((30 * 9.80665) / 0.88, 9);
    expect(pull.wire_N.lowering).toBeCloseTo((30 * 9.80665) / 1.12, 9);
    expect(pull.wire_N.holding).toBeCloseTo(30 * 9.80665, 9);
    expect(slidingPull({ ...dagger, offMiddle_m: 0.7 }, 0, null)).toMatchObject({
      kind: 'no pull',
      at: 'attachment',
      wrong: expect.stringContaining('jams like a drawer'),
      right: 'attach it within 666 mm of the middle',
    });
  });

  test('less friction never asks more of a hoist, nor less of holding and lowering; what floats pulls at nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: 300, max: 9000, noNaN: true }),
        (friction, less, offMiddle_m, density_kg_m3) => {
          const at = (µ: number) => slidingPull({ ...dagger, offMiddle_m, density_kg_m3, friction: µ }, 0.2, 1025);
          const [rough, smooth] = [at(friction), at(friction * less)];
          if (rough.kind !== 'pull' || smooth.kind !== 'pull') throw new Error('it jams');
          expect(smooth.wire_N.hoisting).toBeLessThanOrEqual(rough.wire_N.hoisting + 1e-9);
          for (const handling of ['holding', 'lowering'] as const)
            expect(smooth.wire_N[handling]).toBeGreaterThanOrEqual(rough.wire_N[handling] - 1e-9);
          expect(smooth.wire_N.lowering).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
