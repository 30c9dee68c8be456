import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chemistries } from './chemistry.ts';
import { restCharge, restCurve, restVolts } from './rest-charge.ts';

const anyChemistry = fc.constantFrom(...chemistries.map(({ id }) => id));
const anyHeat = fc.double({ min: -20, max: 60, noNaN: true });

describe('rested volts', () => {
  it('rise with the charge, and their ends keep their order', () => {
    for (const { id } of chemistries) {
      const { charge_pct, low, likely, high } = restCurve(id);
      for (let i = 0; i < charge_pct.length; i++) {
        expect(low[i]!).toBeLessThan(likely[i]!);
        expect(likely[i]!).toBeLessThan(high[i]!);
        if (i === 0) continue;
        for (const volts of [low, likely, high])
          expect(volts[i]!, `${id} at ${charge_pct[i]} %`).toBeGreaterThan(volts[i - 1]!);
      }
    }
  });

  it('are taken back to the charge they came from', () => {
    fc.assert(
      fc.property(anyChemistry, fc.double({ min: 0, max: 100, noNaN: true }), anyHeat, (chemistry, charge, heat) => {
        const found = restCharge(chemistry, restVolts(chemistry, charge, heat).likely, heat);
        expect(found.likely).toBeCloseTo(charge, 6);
        expect(found.low).toBeLessThanOrEqual(found.likely);
        expect(found.high).toBeGreaterThanOrEqual(found.likely);
        expect(found.beyond).toBeNull();
      }),
    );
  });

  it('of a 24 V battery are twice, of a 6 V battery half those of a 12 V one', () => {
    const twelve = restVolts('agm', 60, 10);
    expect(restVolts('agm', 60, 10, 24).likely).toBeCloseTo(2 * twelve.likely, 9);
    expect(restVolts('agm', 60, 10, 6).low).toBeCloseTo(twelve.low / 2, 9);
    expect(restCharge('agm', 2 * twelve.likely, 10, 24).likely).toBeCloseTo(60, 6);
  });

  // handbook power.ocv: tables in print disagree by about 0.1 V, 10 to 15 % of charge
  it('leave a band at least as wide as the tables in print disagree', () => {
    for (const chemistry of ['flooded', 'agm', 'gel'] as const) {
      const { low, high } = restCharge(chemistry, 12.2, 25);
      expect(high - low).toBeGreaterThan(20);
    }
  });

  // handbook, LiFePO4: between about 30 and 90 % volts cannot give the charge to better than about ±20 %
  it('say that the flat part of LiFePO4 tells little', () => {
    const { low, high } = restCharge('lifepo4', 13.2, 25);
    expect(high - low).toBeGreaterThan(40);
  });

  it('past every table are named so', () => {
    expect(restCharge('agm', 13.6, 25)).toMatchObject({ likely: 100, beyond: 'above' });
    expect(restCharge('flooded', 10.5, 25)).toMatchObject({ likely: 0, beyond: 'below' });
    expect(restCharge('lifepo4', 14, 25).beyond).toBe('above');
  });

  it('refuse what cannot be, with the range', () => {
    expect(() => restVolts('agm', 101, 25)).toThrow('charge must be from 0 to 100 %, got 101');
    expect(() => restVolts('agm', Number.NaN, 25)).toThrow(RangeError);
    expect(() => restCharge('agm', 12.5, 90)).toThrow('battery temperature');
  });
});
