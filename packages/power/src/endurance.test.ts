import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CircuitDraw } from './circuit-draw.ts';
import { type EnduranceCase, endurance } from './endurance.ts';
import type { SunDraws } from './night-runs.ts';

const place = { latitude_deg: 54.4, longitude_deg: 10.2, zone: 'Europe/Berlin' };
const noon = Date.parse('2026-06-20T10:00:00Z');
const states = (charge: number, capacity: number, count = 1) => ({
  charge_pct: new Float64Array(count).fill(charge),
  capacity_Ah: new Float64Array(count).fill(capacity),
});
const always = (watts: number): CircuitDraw => ({ name: 'a lamp', watts, duty_pct: 100, use: { kind: 'always' } });
const anchorLight = (watts: number): CircuitDraw => ({
  name: 'anchor light',
  watts,
  duty_pct: 100,
  use: { kind: 'sun', from: 'sunset', to: 'sunrise' },
});
/** The same weather in every draw: so many amps from 8 to 16 UTC. */
const steadySun = (amps: number, days: number, draws = 1): SunDraws => {
  const hours = 24 * (days + 2);
  const from = Date.parse('2026-06-20T00:00:00Z');
  return {
    draws,
    hours,
    from,
    amps: Float64Array.from({ length: draws * hours }, (_, i) =>
      (i % hours) % 24 >= 8 && (i % hours) % 24 < 16 ? amps : 0,
    ),
  };
};
const of = (change: Partial<EnduranceCase>): EnduranceCase => ({
  chemistry: 'agm',
  nominal_V: 12,
  states: states(90, 20),
  floor_pct: 50,
  circuits: [anchorLight(2.5)],
  aboard: null,
  place,
  from: noon,
  nights: 1,
  sun: null,
  chargers: [],
  runs: 400,
  seed: 7,
  ...change,
});

describe('a night at anchor', () => {
  it('takes what the lamp draws from sunset to sunrise', () => {
    // 54.4° N on 20 June: some 6.8 h from sunset to sunrise; 2.5 W at about 12.6 V is 0.198 A
    const { nights, usual_V } = endurance(of({}));
    const [night] = nights;
    const hours = (night!.end - night!.start) / 3_600_000;
    expect(hours).toBeGreaterThan(6.5);
    expect(hours).toBeLessThan(7.2);
    expect(night!.drawn_Ah.likely).toBeCloseTo((2.5 / usual_V) * hours, 1);
    expect(night!.drawn_Ah.high / night!.drawn_Ah.likely).toBeCloseTo(1.2, 1);
    // of 20 Ah, less a day and a half of self-discharge at 3 % a month
    const fallen = (100 * night!.drawn_Ah.likely) / 20;
    expect(90 - night!.morning_pct.likely).toBeGreaterThan(fallen);
    expect(90 - night!.morning_pct.likely).toBeLessThan(fallen + 0.3);
    expect(night!.lasts).toMatchObject({ of: 400, runs: 400, chance_pct: 100 });
    expect(night!.lasts.low_pct).toBeLessThan(100);
  });

  it('draws nothing while nobody is aboard, save what always draws', () => {
    const { nights } = endurance(of({ aboard: [], circuits: [anchorLight(2.5), always(1)] }));
    const hours = (nights[0]!.end - nights[0]!.start) / 3_600_000;
    expect(nights[0]!.drawn_Ah.likely).toBeCloseTo((1 / 12.6) * hours, 1);
  });
});

describe('the floor', () => {
  it('is reached when a steady draw has taken what stands over it: by hand and by the runs (derived twice)', () => {
    // from 80 % of 20 Ah to 50 %: 6 Ah, and 3 % of it in a month by itself
    const found = endurance(of({ states: states(80, 20), circuits: [always(12)], nights: 3, runs: 2000 }));
    const drain = 12 / found.usual_V + (0.03 * 20) / 720;
    expect(found.hoursLeft.likely! / (6 / drain)).toBeCloseTo(1, 1);
    expect(found.hoursLeft.low! / (6 / (1.2 * (drain - 0.00083)))).toBeCloseTo(1, 1);
    expect(found.nights[1]!.lasts.of).toBe(0);
  });

  it('is never reached while it is not within the time looked at', () => {
    expect(endurance(of({})).hoursLeft).toEqual({ low: null, likely: null, high: null });
  });
});

describe('ampere-hours', () => {
  it('are kept: what is there at the end is what was there, less what was drawn, and what was stored', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 100, noNaN: true }),
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (charge, watts, amps) => {
          const capacity = 60;
          const given = of({
            states: states(charge, capacity),
            circuits: [anchorLight(watts)],
            sun: steadySun(amps, 2),
            nights: 2,
            runs: 1,
          });
          const { nights, lookedAt_h } = endurance(given);
          const last = nights.at(-1)!;
          if (last.morning_pct.likely === 0) return;
          const stored = nights.reduce((sum, night) => sum + night.storedBefore_Ah.likely, 0);
          const drawn = nights.reduce((sum, night) => sum + night.drawn_Ah.likely, 0);
          const lost = ((0.03 * capacity) / 720) * lookedAt_h;
          const change = ((last.morning_pct.likely - charge) / 100) * capacity;
          // by itself it loses some of `lost`: none of it in minutes in which the sun brings more than is used
          expect(change).toBeGreaterThan(stored - drawn - lost - 1e-6);
          expect(change).toBeLessThan(stored - drawn + 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('what must always hold', () => {
  const lasting = (change: Partial<EnduranceCase>) =>
    endurance(of({ runs: 100, nights: 3, states: states(70, 12), ...change })).nights.map(({ lasts }) => lasts.of);
  const all = (a: number[], b: number[]) => {
    for (const [i, value] of a.entries()) expect(value).toBeGreaterThanOrEqual(b[i]!);
  };

  it('more load never lasts longer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (watts, more) =>
          all(lasting({ circuits: [anchorLight(watts)] }), lasting({ circuits: [anchorLight(watts + more)] })),
      ),
      { numRuns: 25 },
    );
  });

  it('a bigger battery as full never lasts shorter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (Ah, more) =>
          all(
            lasting({ states: states(70, Ah + more), circuits: [anchorLight(6)], sun: steadySun(0.4, 3) }),
            lasting({ states: states(70, Ah), circuits: [anchorLight(6)], sun: steadySun(0.4, 3) }),
          ),
      ),
      { numRuns: 25 },
    );
  });

  it('more sun is never worse, and a fuller battery neither', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (amps, more) => {
          const circuits = [anchorLight(8)];
          all(lasting({ circuits, sun: steadySun(amps + more, 3) }), lasting({ circuits, sun: steadySun(amps, 3) }));
          all(lasting({ circuits, states: states(70 + 10 * more, 12) }), lasting({ circuits }));
        },
      ),
      { numRuns: 25 },
    );
  });

  it('the same seed gives the same answer', () => {
    expect(endurance(of({ sun: steadySun(1, 1) }))).toEqual(endurance(of({ sun: steadySun(1, 1) })));
  });
});

describe('charging', () => {
  it('near full is slow and partly lost: twice the sun does not fill it twice as fast', () => {
    const given = { states: states(85, 20), circuits: [], nights: 1 } as const;
    const stored = (amps: number) =>
      endurance(of({ ...given, sun: steadySun(amps, 1) })).nights[0]!.storedBefore_Ah.likely;
    expect(stored(10)).toBeLessThanOrEqual(3);
    expect(stored(10)).toBeLessThan(1.2 * stored(5));
    expect(stored(0.2)).toBeLessThan(0.2 * 8);
  });

  it('by an outboard counts from when to when it runs', () => {
    const start = noon + 3_600_000;
    const charger = { name: 'outboard', amps: 3, start, end: start + 7_200_000 };
    const found = endurance(of({ states: states(40, 50), circuits: [], chargers: [charger] }));
    // 2 h at 3 A, 97 % of it stored below 65 %
    expect(found.nights[0]!.storedBefore_Ah.likely).toBeCloseTo(2 * 3 * 0.97, 1);
  });
});

it('refuses a battery without a state, a floor over 100 %, and sun that ends too soon', () => {
  expect(() => endurance(of({ states: states(90, 20, 0) }))).toThrow(/one state/);
  expect(() => endurance(of({ floor_pct: 120 }))).toThrow(/floor must be 0 to 100/);
  expect(() => endurance(of({ sun: steadySun(1, 0), nights: 9 }))).toThrow(/before the last night/);
});

it('follows three nights in a thousand runs within its budget, or twice it where the machine is busy', () => {
  const given = of({ runs: 1000, nights: 3, sun: steadySun(1, 3, 1000), circuits: [anchorLight(3), always(0.3)] });
  endurance(given);
  const before = process.cpuUsage();
  endurance(given);
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1000).toBeLessThan(200);
});
