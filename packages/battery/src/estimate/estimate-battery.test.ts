import { describe, expect, it } from 'vitest';
import type { BatteryHistory } from '../battery-history.ts';
import { restCharge } from '../rest-charge.ts';
import { estimateBattery } from './estimate-battery.ts';

const hour = 3_600_000;
const evening = Date.UTC(2026, 5, 12, 20);

/** A 17 Ah AGM left alone for half a day and read before sunrise. */
const rested = (volts: number, parts: Partial<BatteryHistory> = {}): BatteryHistory => ({
  battery: { chemistry: 'agm', nominal_Ah: 17, nominal_V: 12, age_years: 2 },
  from: evening,
  to: evening + 10 * hour,
  flows: [],
  readings: [{ at: evening + 10 * hour, volts, meter: 'panel meter', current_A: null }],
  temperatures: [{ at: evening, air_C: 18 }],
  ...parts,
});
const lamp = (amps: number, hours: number) => ({
  from: evening,
  to: evening + hours * hour,
  low_A: 0.8 * amps,
  likely_A: amps,
  high_A: 1.2 * amps,
  source: 'lamp',
});

describe('how full a battery is, from what was read of it', () => {
  it('gives the same answer for the same seed', () => {
    expect(estimateBattery(rested(12.4), { seed: 3 }).soc_pct).toEqual(
      estimateBattery(rested(12.4), { seed: 3 }).soc_pct,
    );
  });

  it('agrees with the tables on a rested reading by itself', () => {
    for (const volts of [12, 12.3, 12.6]) {
      const { low, likely, high } = estimateBattery(rested(volts), { seed: 1 }).soc_pct;
      const table = restCharge('agm', volts, 18);
      expect(low).toBeLessThan(likely);
      expect(likely).toBeLessThan(high);
      expect(Math.abs(likely - table.likely), `${volts} V`).toBeLessThan(12);
      expect(low).toBeGreaterThan(table.low - 15);
      expect(high).toBeLessThan(table.high + 15);
    }
  });

  it('higher volts, more charge', () => {
    const likely = [11.9, 12.1, 12.3, 12.5, 12.7].map(
      (volts) => estimateBattery(rested(volts), { seed: 1 }).soc_pct.likely,
    );
    expect(likely).toEqual([...likely].sort((a, b) => a - b));
  });

  it('the same volts under a load mean more charge than at rest', () => {
    const at = evening + 0.7 * hour;
    const readings = [{ at, volts: 12.2, meter: 'panel meter', current_A: null }];
    const loaded = rested(12.2, { to: at, flows: [lamp(1.5, 0.7)], readings });
    expect(estimateBattery(loaded, { seed: 1 }).soc_pct.likely).toBeGreaterThan(
      estimateBattery(rested(12.2), { seed: 1 }).soc_pct.likely + 5,
    );
  });

  it('on LiFePO4 a reading in the flat part leaves the charge wide open', () => {
    const battery = { chemistry: 'lifepo4', nominal_Ah: 20, nominal_V: 12, age_years: 1 } as const;
    const { low, high } = estimateBattery(rested(13.2, { battery }), { seed: 1 }).soc_pct;
    expect(high - low).toBeGreaterThan(30);
  });

  it('a 24 V battery is two of 12 V', () => {
    const battery = { chemistry: 'agm', nominal_Ah: 17, nominal_V: 24, age_years: 2 } as const;
    expect(estimateBattery(rested(24.8, { battery }), { seed: 1 }).soc_pct.likely).toBeCloseTo(
      estimateBattery(rested(12.4), { seed: 1 }).soc_pct.likely,
      6,
    );
  });

  it('a larger current has less still to come', () => {
    const likely = [0.5, 1, 3, 6].map((load_A) => estimateBattery(rested(12.7), { seed: 1, load_A }).left_Ah.likely);
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
  });

  it('finds the reading that does not go with the others, and is not led by it', () => {
    const read = (hours: number, volts: number) => ({ at: evening + hours * hour, volts, meter: 'm', current_A: null });
    const good = [read(0, 12.6), read(2, 12.59), read(4, 12.59), read(8, 12.58), read(10, 12.58)];
    const slip = [...good.slice(0, 3), read(6, 11.52), ...good.slice(3)];
    const [without, with_] = [good, slip].map((readings) => estimateBattery(rested(0, { readings }), { seed: 1 }));
    expect(without!.odd).toEqual([]);
    expect(with_!.odd.map(({ reading }) => reading.volts)).toEqual([11.52]);
    expect(with_!.odd[0]!.because).toMatch(/less than goes with the other readings/);
    expect(Math.abs(with_!.soc_pct.likely - without!.soc_pct.likely)).toBeLessThan(6);
    const impossible = estimateBattery(rested(1.25), { seed: 1 });
    expect(impossible.odd[0]!.because).toMatch(/no 12 V battery/);
  });

  it('many readings do not make it sure of itself', () => {
    const read = (hours: number) => ({ at: evening + hours * hour, volts: 12.5, meter: 'm', current_A: null });
    const of = (count: number) =>
      estimateBattery(rested(0, { readings: Array.from({ length: count }, (_, i) => read((10 * (i + 1)) / count)) }), {
        seed: 1,
      }).soc_pct;
    const [some, many] = [of(12), of(400)];
    expect(many!.high - many!.low).toBeGreaterThan(0.7 * (some!.high - some!.low));
    expect(Math.abs(many!.likely - some!.likely)).toBeLessThan(5);
  });

  it('a reading of nothing leaves what is thought beforehand', () => {
    const dead = estimateBattery(rested(0), { seed: 1 });
    expect(dead.odd).toHaveLength(1);
    expect(dead.capacity_Ah.likely).toBeGreaterThan(10);
    expect(dead.capacity_Ah.likely).toBeLessThan(25);
  });

  describe('what was left on and not written down', () => {
    const days = (count: number) => 24 * count * hour;
    const read = (after_d: number, volts: number) => ({
      at: evening + days(after_d),
      volts,
      meter: 'm',
      current_A: null,
    });
    const weeks = (...readings: readonly ReturnType<typeof read>[]) =>
      estimateBattery(rested(0, { to: evening + days(10), readings: [read(0.5, 12.8), read(1, 12.8), ...readings] }), {
        seed: 1,
      }).soc_pct;

    it('is reckoned with: the band grows from the last reading on, downwards', () => {
      const at = (after_d: number) =>
        estimateBattery(rested(0, { to: evening + days(after_d), readings: [read(0.5, 12.8), read(1, 12.8)] }), {
          seed: 1,
        }).soc_pct;
      const low = [1, 4, 12].map((after_d) => at(after_d).low);
      expect(low[0]! - low[2]!).toBeGreaterThan(8);
      expect(low).toEqual([...low].sort((a, b) => b - a));
    });

    it('is believed when a sound reading says so, and not when none does', () => {
      expect(weeks().likely).toBeGreaterThan(85);
      const read_ = weeks(read(9.8, 12.1), read(9.9, 12.1));
      expect(read_.likely).toBeLessThan(60);
      expect(read_.low).toBeLessThan(restCharge('agm', 12.1, 18).likely);
    });
  });

  it('follows the charge over the time', () => {
    const readings = [{ at: evening + 10 * hour, volts: 12.3, meter: 'm', current_A: null }];
    const { series } = estimateBattery(rested(0, { flows: [lamp(0.6, 10)], readings }), { seed: 1 });
    expect(series.at.at(-1)).toBe(evening + 10 * hour);
    expect(series.likely.at(-1)).toBeGreaterThan(series.low.at(-1)!);
    expect(series.low.at(-1)).toBeLessThan(series.likely[0]!);
  });

  it('says what is not in order of a history', () => {
    expect(() => estimateBattery(rested(12, { to: evening - 1 }), { seed: 1 })).toThrow(/ends no sooner/);
    expect(() => estimateBattery(rested(12, { to: evening + hour }), { seed: 1 })).toThrow(/outside the history/);
    const flows = [{ ...lamp(1, 2), low_A: 2 }];
    expect(() => estimateBattery(rested(12, { flows }), { seed: 1 })).toThrow(/low ≤ likely ≤ high/);
  });
});
