import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { lineStrength } from './board-line.ts';
import { hoistChanges, hoistThatDoes, reevingOf } from './hoist-changes.ts';
import { slip } from './slip.ts';
import { rove } from './tackle.ts';
import { gripLimit_N, type HoistFigures, hoistFigures, type WholeHoist } from './whole-hoist.ts';

const hoist: WholeHoist = {
  board: {
    kind: 'pivoting',
    plate: {
      mass_kg: 60,
      density_kg_m3: 7200,
      centreOfMass: { along_m: 0.6, square_m: 0.02 },
      attachment: { along_m: 1, square_m: 0.12 },
      lead: { aft_m: 0.8, up_m: 0.65 },
    },
    downTo_deg: 62,
    upTo_deg: 0,
  },
  wire: { of: '7x19', size_mm: 4, ending: 'ferrule' },
  leads: { count: 2, bearing: 'plain', sheave_mm: 45 },
  tackles: [{ ...reevingOf(2), bearing: 'plain' }],
  cord: { of: 'polyester-braid', size_mm: 8, ending: 'bowline' },
  winch: null,
  water_kg_m3: null,
};
const winch = { gear: 2.5, handle_mm: 160, drum_mm: 50, width_mm: 45, woundWhenDown_m: 0.5 };
const figuresOf = (asked: WholeHoist): HoistFigures => {
  const figures = hoistFigures(asked);
  if (figures.kind !== 'figures') throw new Error(figures.wrong);
  return figures;
};
const pull = (asked: WholeHoist) => figuresOf(asked).hand.hoisting.force_N;

describe('a line', () => {
  it('bears the lowest printed, less the worse of its ending and its sheave', () => {
    // 4 mm 7x19: 8.29 kN recalled; a ferrule leaves 90 %, a sheave of 11 times the wire 86 %; 5 for hoisting
    const strength = lineStrength({ of: '7x19', size_mm: 4, ending: 'ferrule', sheave_mm: 44 });
    if (strength.kind !== 'known') throw new Error('it is in the table');
    expect(strength.breaking_N).toBeCloseTo(8290 * 0.86, 6);
    expect(strength.working_N).toBeCloseTo((8290 * 0.86) / 5, 6);
    expect(strength.printed.seen).toBe('recalled');
  });

  it('is unknown in a size that no table has: none is interpolated', () => {
    expect(lineStrength({ of: '7x19', size_mm: 4.5, ending: null, sheave_mm: null })).toMatchObject({
      kind: 'unknown',
    });
    expect(figuresOf({ ...hoist, wire: { ...hoist.wire, size_mm: 4.5 } }).wire).toMatchObject({
      times: null,
      holds: null,
    });
  });
});

describe('a whole hoist', () => {
  it('asks of the wire what two leads add, and of the hand what the tackle leaves of it', () => {
    const { wire, cord, travel, hand } = figuresOf(hoist);
    const most = Math.max(...travel.points.map(({ wire_N }) => wire_N.hoisting));
    expect(wire.most_N).toBeCloseTo(most * 1.09 ** 2, 9);
    // two parts, two plain sheaves: F = W·K²·(K − 1)/(K² − 1) = W·K²/(K + 1)
    expect(hand.hoisting.force_N).toBeCloseTo((wire.most_N * 1.09 ** 2) / 2.09, 9);
    expect(cord!.most_N).toBeCloseTo(hand.hoisting.force_N, 9);
    expect(hand.holding.force_N).toBeCloseTo(most / 2, 9);
  });

  it('is refused by the tackle that does not reeve', () => {
    const wrong = { movingSheaves: 3, fixedSheaves: 1, endAt: 'fixed', bearing: 'plain' } as const;
    expect(hoistFigures({ ...hoist, tackles: [hoist.tackles[0]!, wrong] })).toMatchObject({
      kind: 'does not reeve',
      tackle: 1,
    });
  });

  it('counts a hand on thin cord for less', () => {
    expect([10, 8, 6, 4].map(gripLimit_N)).toEqual([200, 200, 150, 100]);
  });

  it('says what holds if the clutch slips: half the wire’s pull on the fall, turns by the friction of rope', () => {
    const { travel } = figuresOf(hoist);
    const slipped = slip(travel);
    expect(slipped.onLine_N).toBeCloseTo(slipped.onWire_N / 2, 9);
    // e^(µ·2π·turns)·50 N ≥ F, and one turn less is not enough
    const held = (turns: number) => 50 * Math.exp(0.15 * 2 * Math.PI * turns);
    expect(held(slipped.turns)).toBeGreaterThanOrEqual(slipped.onLine_N);
    expect(held(slipped.turns - 1)).toBeLessThan(slipped.onLine_N);
    // what it strikes with is its weight times what its middle comes down
    expect(slipped.energy_J).toBeCloseTo(travel.work_J.gained, 9);
  });
});

describe('what each change would do', () => {
  it('names what can be changed, each with what it gains and what it costs', () => {
    const kinds = hoistChanges(hoist).map(({ change }) => change.kind);
    expect(kinds).toEqual(['wire', 'wire', 'cord', 'cord', 'better sheaves', 'bigger leads', 'parts', 'second tackle']);
    for (const { change, figures } of hoistChanges(hoist)) {
      const now = figuresOf(hoist);
      if (change.kind === 'better sheaves')
        expect(figures.hand.hoisting.force_N).toBeLessThan(now.hand.hoisting.force_N);
      // sheaves that run better help no one to hold or to lower
      if (change.kind === 'better sheaves')
        expect(figures.hand.lowering.force_N).toBeGreaterThan(now.hand.lowering.force_N);
      if (change.kind === 'parts') expect(figures.travel.toPull.line_m).toBeCloseTo(3 * now.travel.wire_m, 9);
      if (change.kind === 'bigger leads') expect(figures.wire.times!).toBeGreaterThan(now.wire.times!);
      if (change.kind === 'wire') expect(figures.wire.times! > now.wire.times!).toBe(change.to_mm > change.from_mm);
    }
  });

  it('thinner cord on a drum turns easier and holds less', () => {
    const wound = { ...hoist, winch };
    const thinner = hoistChanges(wound).find(({ change }) => change.kind === 'cord' && change.to_mm < 8)!;
    expect(thinner.figures.hand.hoisting.force_N).toBeLessThan(pull(wound));
    expect(thinner.figures.cord!.times!).toBeLessThan(figuresOf(wound).cord!.times!);
  });

  it('every reeving offered is one a rope can follow, with the parts it is called by', () => {
    for (let parts = 2; parts <= 6; parts++) expect(rove(reevingOf(parts))).toMatchObject({ kind: 'rove', parts });
  });
});

describe('the hoist that does', () => {
  it('holds by its factor, stays within the hand, and a part less would not', () => {
    for (const mass_kg of [45, 60, 90]) {
      const board = { ...hoist.board, plate: { ...hoist.board.plate, mass_kg } } as WholeHoist['board'];
      const found = hoistThatDoes({ ...hoist, board });
      if (found.kind !== 'does') throw new Error(found.kind);
      const { hand, wire, handLimit_N } = found.figures;
      expect(hand.hoisting.force_N).toBeLessThanOrEqual(handLimit_N);
      expect(wire.holds).toBe(true);
      // what bears it already stays
      expect(found.hoist.wire).toEqual(hoist.wire);
      for (const { change, figures } of hoistChanges(found.hoist))
        if (change.kind === 'parts' && change.to < change.from)
          expect(figures.hand.hoisting.force_N).toBeGreaterThan(figures.handLimit_N);
    }
  });

  it('goes up to the first wire that bears it, and puts a tackle on where there is none', () => {
    const board = { ...hoist.board, plate: { ...hoist.board.plate, mass_kg: 90 } } as WholeHoist['board'];
    const found = hoistThatDoes({ ...hoist, board, wire: { ...hoist.wire, size_mm: 2 }, tackles: [], cord: null });
    if (found.kind !== 'does') throw new Error(found.kind);
    expect(found.hoist.tackles.length).toBe(1);
    expect(found.hoist.cord).not.toBeNull();
    const smaller = hoistChanges(found.hoist).find(
      ({ change }) => change.kind === 'wire' && change.to_mm < change.from_mm,
    );
    expect(found.hoist.wire.size_mm).toBeGreaterThan(2);
    expect(smaller!.figures.wire.holds).toBe(false);
  });

  it('says that no purchase brings it within the hand', () => {
    const board = { ...hoist.board, plate: { ...hoist.board.plate, mass_kg: 200 } } as WholeHoist['board'];
    expect(hoistThatDoes({ ...hoist, board })).toEqual({ kind: 'none does', short: 'hand' });
  });

  it('says what none does: no wire of the tables holds a plate of three tonnes', () => {
    const board = { ...hoist.board, plate: { ...hoist.board.plate, mass_kg: 3000 } } as WholeHoist['board'];
    expect(hoistThatDoes({ ...hoist, board })).toEqual({ kind: 'none does', short: 'wire' });
  });
});

test('whatever it is rove with: less friction never asks more of a hoist nor less of holding and lowering; work in is no less than work out', () => {
  const anyHoist = fc.record({
    parts: fc.array(fc.integer({ min: 2, max: 6 }), { maxLength: 3 }),
    leads: fc.integer({ min: 0, max: 6 }),
    wound: fc.boolean(),
    water: fc.boolean(),
    mass_kg: fc.double({ min: 1, max: 200, noNaN: true }),
    up: fc.integer({ min: 1, max: 2 }),
  });
  fc.assert(
    fc.property(anyHoist, ({ parts, leads, wound, water, mass_kg, up }) => {
      const bearings = ['ball', 'plain', 'old'] as const;
      const rigged = (bearing: (typeof bearings)[number]) =>
        figuresOf({
          ...hoist,
          board: { ...hoist.board, plate: { ...hoist.board.plate, mass_kg } } as WholeHoist['board'],
          leads: { ...hoist.leads, count: leads, bearing },
          tackles: parts.map((each) => ({ ...reevingOf(each), bearing })),
          cord: parts.length > 0 ? hoist.cord : null,
          winch: wound ? winch : null,
          water_kg_m3: water ? 1025 : null,
        });
      const [better, worse] = [rigged(bearings[up - 1]!), rigged(bearings[up]!)];
      for (const [n, point] of better.travel.points.entries()) {
        const rough = worse.travel.points[n]!;
        const slack = 1e-9 * (1 + rough.hand_N.hoisting);
        expect(point.hand_N.hoisting).toBeLessThanOrEqual(rough.hand_N.hoisting + slack);
        for (const handling of ['holding', 'lowering'] as const)
          expect(point.hand_N[handling]).toBeGreaterThanOrEqual(rough.hand_N[handling] - slack);
      }
      for (const { travel } of [better, worse])
        expect(travel.work_J.given).toBeGreaterThanOrEqual(travel.work_J.gained * (1 - 1e-9));
    }),
  );
});
