import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Day } from '#units';
import { ask, figureOf } from '#working';
import { balanceOf, mendsOf } from './balance.ts';
import { balanceQuestions } from './balance-questions.ts';
import { type Lashing, restraint, strapsOver } from './lashing.ts';
import { lashingQuestions } from './lashing-questions.ts';
import { ballLimit, limitsLooked, type PaperLimits } from './limits.ts';
import { leastIndex, tyreAge_years, tyreLoad, tyreMade } from './tyre.ts';
import { tyreQuestions } from './tyre-questions.ts';

const trailer = { name: 'trailer', mass_kg: 180, ahead_m: 0.3, mass_give_kg: 5, place_give_m: 0.1 };
const boat = { name: 'boat', mass_kg: 620, ahead_m: 0.28, mass_give_kg: 30, place_give_m: 0.05 };
const outboard = { name: 'outboard', mass_kg: 25, ahead_m: -2.6 };

describe('balanceOf', () => {
  it('takes a hand-worked boat, trailer and outboard', () => {
    // moments by hand: 180·0.3 + 620·0.28 − 25·2.6 = 162.6 kg·m; over 3.5 m
    const { ball_kg, axle_kg, laden_kg, centre_m } = balanceOf([trailer, boat, outboard], 3.5);
    expect(ball_kg.likely).toBeCloseTo(162.6 / 3.5, 9);
    expect(laden_kg).toBe(825);
    expect(axle_kg).toBeCloseTo(825 - 162.6 / 3.5, 9);
    expect(centre_m).toBeCloseTo(162.6 / 825, 9);
    // gives by hand: trailer √((5·0.3)² + (180·0.1)²) = 18.06, boat √((30·0.28)² + (620·0.05)²) = 32.12; together 36.85 kg·m
    expect(ball_kg.high - ball_kg.likely).toBeCloseTo(36.85 / 3.5, 2);
    expect(ball_kg.likely - ball_kg.low).toBeCloseTo(36.85 / 3.5, 2);
  });

  it('has nothing to say of the centre of nothing', () => {
    expect(balanceOf([], 3)).toMatchObject({ laden_kg: 0, centre_m: null, ball_pct: null, axle_kg: 0 });
  });

  it('is added up of its parts, whatever their order', () => {
    const thing = fc.record({
      name: fc.string(),
      mass_kg: fc.double({ min: 0, max: 900, noNaN: true }),
      ahead_m: fc.double({ min: -4, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(thing, { maxLength: 12 }), fc.double({ min: 1, max: 8, noNaN: true }), (things, ball) => {
        const whole = balanceOf(things, ball);
        const turned = balanceOf([...things].reverse(), ball);
        expect(turned.ball_kg.likely).toBeCloseTo(whole.ball_kg.likely, 6);
        expect(whole.shares.reduce((sum, { ball_kg }) => sum + ball_kg, 0)).toBeCloseTo(whole.ball_kg.likely, 6);
        expect(whole.axle_kg + whole.ball_kg.likely).toBeCloseTo(whole.laden_kg, 6);
      }),
    );
  });
});

describe('mendsOf', () => {
  const wanted = { low_kg: 0.05 * 825, high_kg: 0.07 * 825 };

  it('moves nothing where the ball load is right', () => {
    expect(mendsOf([trailer, boat, outboard], [{ name: 'boat', aftmost_m: 0, foremost_m: 1 }], 3.5, wanted)).toEqual(
      [],
    );
  });

  it('puts what is enough first, least work first, and what cannot help nowhere', () => {
    const heavy = { low_kg: 70, high_kg: 80 };
    const mends = mendsOf(
      [trailer, boat, outboard],
      [
        { name: 'boat', aftmost_m: 0, foremost_m: 1 },
        { name: 'outboard', aftmost_m: -2.6, foremost_m: 1.5 },
        { name: 'trailer', aftmost_m: 0, foremost_m: 0.3 },
      ],
      3.5,
      heavy,
    );
    // 70 − 46.46 = 23.54 kg wanted: boat 23.54·3.5/620 = 0.133 m; the outboard would need 3.3 m
    expect(mends.map(({ name, enough }) => [name, enough])).toEqual([
      ['boat', true],
      ['outboard', true],
    ]);
    expect(mends[0]!.forward_m).toBeCloseTo(0.1329, 3);
    expect(mends[1]!.forward_m).toBeCloseTo(3.296, 2);
  });
});

describe('limitsLooked', () => {
  const right = { laden_kg: 825, ball_kg: { low: 48, likely: 50, high: 52 }, axle_kg: 775 };
  const papers: PaperLimits = {
    braked: true,
    carBall_kg: 75,
    barBall_kg: 80,
    couplingBall_kg: 100,
    gross_kg: 1000,
    axle_kg: 900,
    tyres_kg: 924,
    train_kg: 2600,
    carKerb_kg: 1300,
    carLaden_kg: 1600,
  };

  it('takes the lowest of car, bar and coupling', () => {
    expect(ballLimit(papers)).toEqual({ of: 'car', kg: 75 });
    expect(ballLimit({ braked: true, couplingBall_kg: 50, barBall_kg: 60 })).toEqual({ of: 'coupling', kg: 50 });
    expect(ballLimit({ braked: true })).toBeNull();
  });

  it('finds nothing against a trailer within all of them', () => {
    expect(limitsLooked(right, papers, 'uk')).toEqual({ findings: [], missing: [] });
  });

  it.each([
    ['ball over its limit', { barBall_kg: 49 }, {}],
    ['ball may be over its limit', { couplingBall_kg: 51 }, {}],
    ['ball load under nothing', {}, { ball_kg: { low: -5, likely: -3, high: -1 } }],
    ['ball load too small', {}, { ball_kg: { low: 20, likely: 25, high: 30 } }],
    ['ball load below what is advised', {}, { ball_kg: { low: 35, likely: 38, high: 41 } }],
    ['ball load above what is advised', {}, { ball_kg: { low: 60, likely: 62, high: 64 } }],
    ['gross over its limit', { gross_kg: 800 }, {}],
    ['axle over its limit', { axle_kg: 700 }, {}],
    ['tyres over their limit', { tyres_kg: 700 }, {}],
    ['train over its limit', { train_kg: 2400 }, {}],
    ['heavy for the car', { carKerb_kg: 960 }, {}],
    ['too heavy without brakes', { braked: false, carKerb_kg: 1700 }, {}],
    ['too heavy for the car without brakes', { braked: false, carKerb_kg: 1200 }, { laden_kg: 700, axle_kg: 660 }],
  ] as const)('finds %s', (kind, paper, load) => {
    const looked = limitsLooked({ ...right, ...load }, { ...papers, ...paper }, 'uk');
    expect(looked.findings.map((finding) => finding.kind)).toContain(kind);
  });

  it('names what was not entered, and says nothing of it', () => {
    const { findings, missing } = limitsLooked(right, { braked: true }, 'uk');
    expect(findings).toEqual([]);
    expect(missing).toHaveLength(9);
  });
});

describe('tyres', () => {
  it('need more the more they carry, and the least index carries it while the one before does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 191, max: 1400, noNaN: true }), (each_kg) => {
        const index = leastIndex(each_kg)!;
        expect(tyreLoad(index)!.kg).toBeGreaterThanOrEqual(each_kg);
        expect(tyreLoad(index - 1)!.kg).toBeLessThan(each_kg);
      }),
    );
    expect(leastIndex(1401)).toBeNull();
  });

  it('are dated by week and year', () => {
    // NHTSA: three figures are before 2000 (from memory); a stored page reads 328 as 2008, which is wrong
    expect(tyreMade('DOT XL9C K7AA 328')).toEqual({ kind: 'before 2000', week: 32, endsIn: 8 });
    expect(tyreMade('3513')).toEqual({ kind: 'week', week: 35, year: 2013 });
    for (const wrong of ['', '35', '5413', '0013', 'abcd']) expect(tyreMade(wrong).kind, wrong).toBe('not a date');
  });

  it('age from the Monday of their week', () => {
    // ISO 8601: week 1 of 2015 begins on Monday 29 December 2014
    expect(tyreAge_years({ kind: 'week', week: 1, year: 2015 }, '2014-12-29' as Day)).toBe(0);
    expect(tyreAge_years({ kind: 'week', week: 35, year: 2019 }, '2024-08-26' as Day)).toBeCloseTo(5, 1);
    expect(tyreAge_years({ kind: 'before 2000', week: 32, endsIn: 8 }, '2026-11-26' as Day)).toBeGreaterThan(28);
  });

  it('are told to be changed at five years and not used past seven', () => {
    const verdict = (today: string) => {
      const asked = ask(tyreQuestions().find(({ id }) => id === 'trailer.tyre-age')!, { code: '0120', today });
      return asked.kind === 'answered' ? figureOf(asked.answer, 'verdict')?.value : asked;
    };
    expect(verdict('2023-01-10')).toMatch(/^good for 2\.0 years/);
    expect(verdict('2025-01-10')).toBe('change it now');
    expect(verdict('2027-01-10')).toMatch(/^past its age/);
    expect(verdict('2019-01-10')).toMatch(/^made after today/);
  });
});

describe('restraint', () => {
  const strap: Lashing = {
    name: 'stern strap',
    kind: 'strap',
    holds: 'rearward',
    capacity_N: 10_000,
    above_rad: Math.PI / 6,
    aside_rad: 0,
    hull_N: 6_000,
  };
  const way = (held: ReturnType<typeof restraint>, wanted: string) => held.find((each) => each.way === wanted)!;

  it('asks for the whole weight forward and half of it otherwise', () => {
    const held = restraint(600, 0, 8_000, []);
    expect(held.map(({ asked_N }) => Math.round(asked_N))).toEqual([5884, 2942, 2942]);
    expect(held.map(({ verdict }) => verdict)).toEqual(['held', 'short', 'short']);
  });

  it('does not know forward what the bow post bears until it is entered', () => {
    expect(way(restraint(600, 0, null, []), 'forward').verdict).toBe('not known');
    expect(way(restraint(600, 0, 5_000, []), 'forward').verdict).toBe('short');
  });

  it('credits a strap no more than the hull bears, and nothing where that is not known', () => {
    const held = way(restraint(600, 0, 8_000, [strap]), 'rearward');
    expect(held.lashings_N).toBeCloseTo(6_000 * Math.cos(Math.PI / 6), 6);
    expect(held.verdict).toBe('held');
    const unknown = way(restraint(600, 0, 8_000, [{ ...strap, hull_N: null }]), 'rearward');
    expect(unknown).toMatchObject({ lashings_N: 0, verdict: 'not known' });
    expect(unknown.idle).toEqual([{ name: 'stern strap', because: 'hull not known' }]);
  });

  it('never takes the winch line for a lashing', () => {
    const held = way(restraint(600, 0, 8_000, [{ ...strap, kind: 'winch line' }]), 'rearward');
    expect(held).toMatchObject({ lashings_N: 0, verdict: 'short', idle: [{ because: 'winch line' }] });
  });

  it('finds that straps over her hold nothing on rollers', () => {
    expect(strapsOver(600, 0.8, 0, 1.25, 2500, Math.PI / 2)).toBe(Number.POSITIVE_INFINITY);
    const asked = ask(lashingQuestions().find(({ id }) => id === 'trailer.straps-over')!, {
      mass: 600,
      way: 'forward',
    });
    expect(asked).toMatchObject({ kind: 'answered', answer: { kind: 'truth' } });
  });
});

describe('every question about the trailer', () => {
  it.each([...balanceQuestions(), ...tyreQuestions(), ...lashingQuestions()].map((each) => [each.id, each] as const))(
    '%s answers with figures that are numbers, sources and cautions, whatever it is given',
    (_, question) => {
      const given = fc.record(
        Object.fromEntries(Object.entries(question.fields).map(([name, field]) => [name, field.raw(fc)])),
      );
      fc.assert(
        fc.property(given, (values) => {
          const asked = ask(question, values as Readonly<Record<string, unknown>>);
          if (asked.kind !== 'answered') throw new Error(JSON.stringify(asked));
          for (const { value, symbol } of [...asked.answer.results, ...asked.answer.working])
            if (typeof value === 'number') expect(Number.isFinite(value), symbol).toBe(true);
          expect(asked.answer.sources.length).toBeGreaterThan(0);
          expect(asked.answer.cautions.length).toBeGreaterThan(0);
        }),
        { numRuns: 60 },
      );
    },
  );
});
