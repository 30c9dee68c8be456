import { describe, expect, it } from 'vitest';
import type { BatteryHistory } from '../battery-history.ts';
import { estimateBattery } from './estimate-battery.ts';
import { type NextReadingKind, nextReadings } from './next-reading.ts';

const hour = 3_600_000;
const evening = Date.UTC(2026, 5, 12, 20);
const read = (after_h: number, volts: number) => ({ at: evening + after_h * hour, volts, meter: 'm', current_A: null });

/** A battery read rested once and then drawn on by a lamp known to a fifth, never read again for two days. */
const history = (chemistry: 'agm' | 'lifepo4', volts: number): BatteryHistory => ({
  battery: { chemistry, nominal_Ah: 20, nominal_V: 12, age_years: 2 },
  from: evening,
  to: evening + 60 * hour,
  flows: [
    { from: evening + 10 * hour, to: evening + 40 * hour, low_A: 0.15, likely_A: 0.25, high_A: 0.35, source: 'lamp' },
  ],
  readings: [read(8, volts)],
  temperatures: [{ at: evening, air_C: 18 }],
});
const worths = (chemistry: 'agm' | 'lifepo4', volts: number, testTo_V: number, parts: Partial<BatteryHistory> = {}) => {
  const estimate = estimateBattery({ ...history(chemistry, volts), ...parts }, { seed: 1 });
  const asked = { chemistry, nominal_Ah: 20, nominal_V: 12, battery_C: 18, testTo_V } as const;
  const found = nextReadings(estimate, asked);
  const shareOf = (kind: NextReadingKind) => {
    const { wide_Ah, wideNow_Ah } = found.find((each) => each.kind === kind)!;
    return wide_Ah / wideNow_Ah;
  };
  return { estimate, found, shareOf };
};

describe('the reading that would say most', () => {
  it('is told for each kind, the greatest narrowing first', () => {
    const { found } = worths('agm', 12.7, 12.1);
    const shares = found.map(({ wide_Ah, wideNow_Ah }) => wide_Ah / wideNow_Ah);
    expect(found).toHaveLength(5);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    for (const share of shares) expect(share).toBeLessThan(1.1);
  });

  it('a rested one narrows the band by about what the estimate then comes to when it is made', () => {
    const { estimate, found } = worths('agm', 12.7, 12.1);
    const foretold = found.find(({ kind }) => kind === 'rested')!;
    // readings that may come: rested volts a little under and over the middle of what is thought
    const wide = [12.35, 12.45, 12.55].map((volts) => {
      const known = history('agm', 12.7);
      const after = { ...known, readings: [...known.readings, read(59.9, volts)] };
      const { low, high } = estimateBattery(after, { seed: 2 }).left_Ah;
      return high - low;
    });
    const mean = wide.reduce((sum, each) => sum + each, 0) / wide.length;
    expect(foretold.wide_Ah).toBeGreaterThan(0.65 * mean);
    expect(foretold.wide_Ah).toBeLessThan(1.5 * mean);
    expect(foretold.wideNow_Ah).toBeCloseTo(estimate.left_Ah.high - estimate.left_Ah.low, 0);
  });

  it('on the flat part of LiFePO4 a rested one says little', () => {
    const still = { flows: [], to: evening + 12 * hour };
    expect(worths('lifepo4', 13.2, 12.9, still).shareOf('rested')).toBeGreaterThan(0.8);
  });

  it('a test from full takes longer than one from now, and says more than a look at the full battery', () => {
    const { found, shareOf } = worths('agm', 12.5, 12);
    const hours = (kind: NextReadingKind) => found.find((each) => each.kind === kind)!.hours!;
    expect(hours('load test from full')).toBeGreaterThan(hours('load test'));
    expect(shareOf('load test from full')).toBeLessThan(shareOf('after a full charge'));
  });
});
