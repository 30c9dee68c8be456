import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type MastRaising, mastRaising, type RaisingTravel } from './mast-raising.ts';
import { tackleNeeded, worstRaising } from './mast-raising-question.ts';
import { type MastSideways, shroudSlack, sideLine_N, sideMoment_N_m } from './mast-sideways.ts';
import { vangForces } from './vang.ts';

const weight_N = (mass_kg: number) => mass_kg * 9.80665;

/** The handbook's mast: 30 kg, its weight 3.4 m up, a pole of 1.5 m on the hinge. */
const mast: MastRaising = {
  mass_kg: 30,
  massAt_m: 3.4,
  lineAt_m: 6.5,
  pole: { kind: 'pole', length_m: 1.5, heel: { ahead_m: 0, up_m: 0 }, lean_deg: 0, spread_m: 0 },
  bow: { ahead_m: 2.6, up_m: 0 },
  from_deg: 0,
  to_deg: 85,
};
const travelOf = (raising: MastRaising): RaisingTravel => {
  const travel = mastRaising(raising);
  if (travel.kind !== 'travel') throw new Error(travel.wrong);
  return travel;
};

describe('raising a mast', () => {
  it('is hardest at the start, and all that pulls and presses is in balance on the way', () => {
    const travel = travelOf(mast);
    expect(worstRaising(travel, ({ tackle_N }) => tackle_N).mast_deg).toBe(0);
    for (const point of travel.points) {
      // outside forces on mast and pole together: weight, tackle, hinge and heel; the last two act at the origin here
      const tip = point.tip!;
      const [dx, dy] = [mast.bow.ahead_m - tip.ahead_m, mast.bow.up_m - tip.up_m];
      const turn = (point.tackle_N * (tip.ahead_m * dy - tip.up_m * dx)) / Math.hypot(dx, dy);
      // the tackle turns the whole ahead, the weight aft
      expect(-turn).toBeCloseTo(weight_N(30) * 3.4 * Math.cos((point.mast_deg * Math.PI) / 180), 6);
    }
  });

  it('turns a pole that stands on the hinge with the mast', () => {
    for (const { mast_deg, tip } of travelOf(mast).points) {
      expect(tip!.ahead_m).toBeCloseTo(1.5 * Math.sin((mast_deg * Math.PI) / 180), 9);
      expect(tip!.up_m).toBeCloseTo(1.5 * Math.cos((mast_deg * Math.PI) / 180), 9);
    }
  });

  it('is refused where nothing raises it, by the part that is to change', () => {
    expect(mastRaising({ ...mast, pole: { kind: 'none' } })).toMatchObject({
      at: 'bow',
      wrong: expect.stringContaining('past the hinge'),
    });
    expect(mastRaising({ ...mast, bow: { ahead_m: 1, up_m: 0.6 } })).toMatchObject({
      at: 'bow',
      right: expect.stringContaining('lower at the bow'),
    });
  });

  it('without a pole asks for far more at the start', () => {
    const low = { ...mast, from_deg: 15 };
    const straight = travelOf({ ...low, pole: { kind: 'none' } }).points[0]!;
    expect(straight.tackle_N).toBeGreaterThan(1.5 * travelOf(low).points[0]!.tackle_N);
  });

  test('a heavier mast asks for more in proportion, and the work is what its weight gains', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 200, noNaN: true }),
        fc.double({ min: 0.8, max: 2.2, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (mass_kg, length_m, from_deg) => {
          const raising = { ...mast, mass_kg, from_deg, pole: { ...mast.pole, length_m } as MastRaising['pole'] };
          const travel = travelOf(raising);
          const base = travelOf({ ...raising, mass_kg: 1 });
          let work_J = 0;
          for (const [n, point] of travel.points.entries()) {
            expect(point.tackle_N).toBeCloseTo(mass_kg * base.points[n]!.tackle_N, 6);
            const last = travel.points[n - 1];
            if (last) work_J += ((point.tackle_N + last.tackle_N) / 2) * (last.tackle_m - point.tackle_m);
          }
          const rad = Math.PI / 180;
          const gained_J = weight_N(mass_kg) * 3.4 * (Math.sin(85 * rad) - Math.sin(from_deg * rad));
          // sixty trapezes
          expect(work_J / gained_J).toBeCloseTo(1, 2);
        },
      ),
    );
  });

  it('over an A-frame has the plane of its legs for a pole, and each leg bears its slanting half', () => {
    // legs of 1.5 m with heels 1.8 m apart stand 1.2 m high: a pole of 1.2 m, each leg 1.5/1.2 of half its thrust
    const pole = { kind: 'pole', length_m: 1.2, heel: { ahead_m: 0, up_m: 0 }, lean_deg: 0, spread_m: 0 } as const;
    const frame = travelOf({ ...mast, pole: { ...pole, kind: 'A-frame', length_m: 1.5, spread_m: 1.8 } }).points;
    for (const [n, point] of travelOf({ ...mast, pole }).points.entries()) {
      expect(frame[n]!.tackle_N).toBeCloseTo(point.tackle_N, 6);
      expect(frame[n]!.leg_N).toBeCloseTo((point.pole_N / 2) * (1.5 / 1.2), 6);
    }
  });

  it('asks for the fewest parts a person can haul', () => {
    expect(tackleNeeded(150)?.parts).toBe(1);
    const six = tackleNeeded(770)!;
    expect(six.hoisting_N).toBeLessThanOrEqual(200);
    expect(six.parts).toBeGreaterThan(770 / 200);
    expect(tackleNeeded(5000)).toBeNull();
  });
});

describe('a mast that leans to one side', () => {
  const abreast: MastSideways = {
    mass_kg: 30,
    massAt_m: 3.4,
    shroudAt_m: 6,
    chainplate: { ahead_m: 0, up_m: 0 },
    out_m: 1,
    heel_deg: 5,
  };
  it('is held all the way by shrouds abreast of its hinge, and by none of those aft of it', () => {
    for (const { slack_m } of shroudSlack(abreast, 0)) expect(slack_m).toBeCloseTo(0, 9);
    const aft = shroudSlack({ ...abreast, chainplate: { ahead_m: -0.4, up_m: 0 } }, 0);
    // upright √(6² + 0.4² + 1²), level √(5.6² + 1²)
    expect(aft[0]!.slack_m).toBeCloseTo(Math.hypot(6, 0.4, 1) - Math.hypot(5.6, 1), 9);
  });
  it('needs a side line with more than the weight that leans', () => {
    expect(sideMoment_N_m(abreast)).toBeCloseTo(weight_N(30) * 3.4 * Math.sin((5 * Math.PI) / 180), 9);
    // 1 m out at 6 m up: an arm of 6/√37 m
    expect(sideLine_N(abreast)).toBeCloseTo((sideMoment_N_m(abreast) * Math.sqrt(37)) / 6, 9);
  });
});

describe('a vang', () => {
  it('at 45° pulls moment over 0.707 of its foot, and thrusts as hard as it pulls down', () => {
    const forces = vangForces({ boomAlong_m: 1, below_m: 1, aft_m: 0 }, 300, 2, 0);
    expect(forces.vang_N).toBeCloseTo(600 / Math.SQRT1_2, 6);
    expect(forces.thrust_N).toBeCloseTo(600, 6);
    // 300 N up at 2 m is held by 600 N down at 1 m: the boom presses its gooseneck down by 300 N
    expect(forces.square_N).toBeCloseTo(-300, 6);
  });
  test('less is in it, the further either end is from the gooseneck', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 1.5, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (boomAlong_m, below_m, more) => {
          const pull = (along: number, below: number) =>
            vangForces({ boomAlong_m: along, below_m: below, aft_m: 0 }, 500, 2, 0).vang_N;
          expect(pull(boomAlong_m + more, below_m)).toBeLessThan(pull(boomAlong_m, below_m));
          expect(pull(boomAlong_m, below_m + more)).toBeLessThan(pull(boomAlong_m, below_m));
        },
      ),
    );
  });
});
