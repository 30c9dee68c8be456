import { describe, expect, it } from 'vitest';
import { chargingVolts, compensatedVolts, meanStoredShare } from './charging.ts';
import { chemistries } from './chemistry.ts';
import { opening_cm2, ventilation_m3_h } from './hydrogen.ts';
import { cycleLife, leftAfterMonths_pct } from './keeping.ts';
import { excessAfterCharge_V } from './rest-hours.ts';

describe('charging volts', () => {
  it('fall as a lead battery gets warmer, and stay for LiFePO4', () => {
    for (const { id } of chemistries) {
      const [cold, warm] = [chargingVolts(id, 5), chargingVolts(id, 35)];
      if (id === 'lifepo4') expect(cold.absorb_V).toEqual(warm.absorb_V);
      else expect(cold.absorb_V.likely - warm.absorb_V.likely).toBeCloseTo(30 * 0.022, 6);
    }
  });

  it('are moved by cells × change × degrees', () => {
    // by hand: 6 × −4 mV × −10 °C = +0.24 V
    expect(compensatedVolts(14.4, 25, 15, 6, -4)).toBeCloseTo(14.64, 9);
  });

  it('hold a float below the absorption', () => {
    for (const id of ['flooded', 'agm', 'gel'] as const) {
      const { absorb_V, float_V } = chargingVolts(id, 25);
      expect(float_V!.high).toBeLessThan(absorb_V.low);
    }
  });
});

describe('what is stored of a charge', () => {
  it('is the less the fuller a lead battery is', () => {
    for (let pct = 10; pct < 100; pct += 10)
      expect(meanStoredShare('agm', pct, pct + 10)).toBeLessThanOrEqual(meanStoredShare('agm', pct - 10, pct));
  });
  it('over two stretches is the mean of both by their length', () => {
    const whole = meanStoredShare('gel', 40, 100);
    expect(whole).toBeCloseTo((2 * meanStoredShare('gel', 40, 80) + meanStoredShare('gel', 80, 100)) / 3, 3);
  });
});

describe('keeping', () => {
  it('loses charge with time and heat, never more than there is', () => {
    for (const { id } of chemistries) {
      expect(leftAfterMonths_pct(id, 0, 20).likely).toBe(100);
      expect(leftAfterMonths_pct(id, 6, 30).likely).toBeLessThan(leftAfterMonths_pct(id, 6, 10).likely);
      expect(leftAfterMonths_pct(id, 24, 50).low).toBeGreaterThanOrEqual(0);
      expect(cycleLife(id, 30).likely).toBeGreaterThan(cycleLife(id, 80).likely);
    }
  });

  it('after a charge the volts come down and stay down', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const hours of [0.01, 0.1, 1, 10, 100, 1000]) {
      const { over_V } = excessAfterCharge_V(hours);
      expect(over_V).toBeLessThanOrEqual(before);
      expect(over_V).toBeGreaterThanOrEqual(0);
      before = over_V;
    }
  });

  // EN 50272-2, by hand: 0.05 × 6 × 20 × 100 / 1000 = 0.6 m³/h, 28 × 0.6 = 16.8 cm²
  it('needs air in proportion to its size', () => {
    expect(ventilation_m3_h(6, 20, 100)).toBeCloseTo(0.6, 9);
    expect(opening_cm2(0.6)).toBeCloseTo(16.8, 9);
  });
});
