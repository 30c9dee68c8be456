import { describe, expect, it } from 'vitest';
import type { CircuitDraw } from './circuit-draw.ts';
import { circuitFlows } from './circuit-flows.ts';
import { circuitSpans, nightsAhead } from './circuit-times.ts';
import { dailyDraw } from './daily-draw.ts';
import { sizing } from './sizing.ts';
import { sunByDays } from './sun-by-days.ts';

const place = { latitude_deg: 54.4, longitude_deg: 10.2, zone: 'Europe/Berlin' };
const day = { start: Date.parse('2026-06-20T10:00:00Z'), end: Date.parse('2026-06-21T10:00:00Z') };
const hours = (spans: readonly { start: number; end: number }[]) =>
  spans.reduce((sum, { start, end }) => sum + (end - start) / 3_600_000, 0);

describe('when a circuit is on', () => {
  it('by the clock past midnight, by the sun, and from the sun to the clock', () => {
    expect(hours(circuitSpans({ kind: 'clock', from: '22:00', to: '06:30' }, place, day))).toBe(8.5);
    // sunset 21:57 and sunrise 04:43 by the clocks of the place
    expect(hours(circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, place, day))).toBeCloseTo(6.77, 1);
    expect(hours(circuitSpans({ kind: 'sun', from: 'sunset', to: '22:30' }, place, day))).toBeCloseTo(0.55, 1);
    expect(hours(circuitSpans({ kind: 'hours', hours_a_day: 2 }, place, day))).toBe(15);
  });

  it('where the sun does not set, not from sunset; where it does not rise, all the time', () => {
    const north = { latitude_deg: 71, longitude_deg: 25, zone: 'Europe/Oslo' };
    const winter = { start: Date.parse('2026-12-20T10:00:00Z'), end: Date.parse('2026-12-21T10:00:00Z') };
    expect(circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, north, day)).toEqual([]);
    expect(hours(circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, north, winter))).toBe(24);
    expect(nightsAhead(north, day.start, 3)).toHaveLength(3);
    expect(hours(nightsAhead(north, day.start, 1))).toBe(8);
  });

  it('refuses an end that is neither a time nor a mark of the sun', () => {
    expect(() => circuitSpans({ kind: 'clock', from: 'noon', to: '22:00' }, place, day)).toThrow(/got 'noon'/);
  });
});

describe('ampere-hours a day', () => {
  it('are watts over volts times hours, duty counted', () => {
    // 4 W a quarter of the time all day at 12.5 V: 0.08 A, 1.92 Ah; 5 W for 3 h: 1.2 Ah
    const { circuits, sum_Ah } = dailyDraw(
      [
        { name: 'bilge pump', watts: 4, duty_pct: 25, use: { kind: 'always' } },
        { name: 'cabin', watts: 5, duty_pct: 100, use: { kind: 'hours', hours_a_day: 3 } },
      ],
      place,
      day,
      12.5,
    );
    expect(circuits[0]!.perDay_Ah.likely).toBeCloseTo(1.92, 9);
    expect(circuits[0]!.perDay_Ah.high).toBeCloseTo(1.92 * 1.2, 9);
    expect(circuits[1]).toMatchObject({ amps: 0.4 });
    expect(circuits[1]!.hours).toBeCloseTo(3, 9);
    expect(sum_Ah.likely).toBeCloseTo(3.12, 9);
    expect(sum_Ah.high).toBeLessThan(1.92 * 1.2 + 1.2 * 1.5);
  });
});

describe('flows for the estimate', () => {
  const cabin: CircuitDraw = {
    name: 'cabin',
    watts: 6,
    duty_pct: 100,
    use: { kind: 'sun', from: 'sunset', to: '23:00' },
  };
  it('are what the use says, except where somebody saw the switch', () => {
    const of = (seen: Parameters<typeof circuitFlows>[1]['seen']) =>
      circuitFlows([cabin], { place, span: day, volts: 12, aboard: null, seen });
    const amountOut = (flows: ReturnType<typeof of>) =>
      flows.reduce((sum, { from, to, likely_A }) => sum + (likely_A * (to - from)) / 3_600_000, 0);
    expect(amountOut(of([]))).toBeCloseTo(0.5 * 1.05, 1);
    const at = Date.parse('2026-06-20T22:00:00Z');
    expect(amountOut(of([{ at, on: [], since_min: 180 }]))).toBe(0);
    // on at 00:00 by the clocks of the place, two hours before and the minute it was read in
    expect(amountOut(of([{ at, on: ['cabin'], since_min: 120 }]))).toBeCloseTo(0.5 * (121 / 60) + 0.5 * 0.05, 1);
    for (const { low_A, likely_A, high_A, source } of of([])) {
      expect([low_A, likely_A, high_A]).toEqual([0.5 / 1.2, 0.5, 0.5 * 1.2].map((each) => expect.closeTo(each, 9)));
      expect(source).toBe('cabin');
    }
  });
});

describe('the sun by dull, usual and fair days', () => {
  const sun = sunByDays({ low: 1, likely: 4, high: 6 }, { place, from: day.start, days: 9, draws: 800, seed: 3 });
  const perDay = (draw: number, d: number) =>
    sun.amps
      .subarray(draw * sun.hours + 24 * d + 12, draw * sun.hours + 24 * d + 36)
      .reduce((sum, each) => sum + each, 0);

  it('brings what was said: the middle, and the ends in one day of twenty', () => {
    const brought = Float64Array.from({ length: 800 }, (_, draw) => perDay(draw, 2)).sort();
    expect(brought[400]!).toBeCloseTo(4, 0);
    expect(brought[40]!).toBeGreaterThan(0.5);
    expect(brought[40]!).toBeLessThan(1.6);
    expect(brought[760]!).toBeCloseTo(6, 0);
  });

  it('keeps spells: a dull day is oftener followed by a dull one', () => {
    let dull = 0;
    let both = 0;
    for (let draw = 0; draw < 800; draw++)
      if (perDay(draw, 2) < 3) {
        dull++;
        if (perDay(draw, 3) < 3) both++;
      }
    const all = Array.from({ length: 800 }, (_, draw) => perDay(draw, 3)).filter((each) => each < 3).length / 800;
    expect(both / dull).toBeGreaterThan(all + 0.1);
  });
});

describe('sizes', () => {
  const of = (nights: number, chance_pct: number) =>
    sizing({
      chemistry: 'agm',
      nominal_V: 12,
      floor_pct: 50,
      start_pct: 95,
      kept_pct: 80,
      circuits: [{ name: 'a lamp', watts: 10, duty_pct: 100, use: { kind: 'always' } }],
      place,
      from: day.start,
      nights,
      chance_pct,
      sunPerWatt: sunByDays(
        { low: 0.1, likely: 0.25, high: 0.4 },
        { place, from: day.start, days: 9, draws: 100, seed: 3 },
      ),
      battery_Ah: [7, 10, 20, 40, 60, 80, 100, 150],
      panel_W: [0, 20, 50, 100],
      runs: 100,
      seed: 2,
    });

  it('without a panel hold the nights’ draw between start and floor when old: by hand', () => {
    // 0.80 A from noon to the sunrise after: 17 h, 13.5 Ah; 36 % (80 % of 45 %) of the label must hold it: 38 Ah, 45 Ah with lamps 20 % over
    const { enough } = of(1, 94);
    expect(enough[0]).toMatchObject({ panel_W: 0, battery_Ah: 60 });
    expect(of(1, 40).enough[0]).toMatchObject({ panel_W: 0, battery_Ah: 40 });
  });

  it('never shrink when more nights or a better chance are wanted, and every step down is not enough', () => {
    const few = of(2, 60);
    const many = of(4, 95);
    for (const each of many.enough) {
      const same = few.enough.filter((other) => other.panel_W <= each.panel_W).at(-1);
      expect(same!.battery_Ah).toBeLessThanOrEqual(each.battery_Ah);
    }
    for (const smaller of many.oneSmaller) if (smaller) expect(smaller.lasts.chance_pct).toBeLessThan(95);
    for (const each of many.enough) expect(each.lasts.chance_pct).toBeGreaterThanOrEqual(95);
  });
});
