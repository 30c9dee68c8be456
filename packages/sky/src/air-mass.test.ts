import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirMassForm, airMass, airMassAtPressure, pressureAtHeight_hPa } from './air-mass.ts';

describe('air crossed by the sunlight', () => {
  // as printed in the tests of a public solar library (pvlib-python, tests/test_atmosphere.py), at 89.9°, 80° and 0°
  it.each<[AirMassForm, number, number, number]>([
    ['Kasten and Young', 36.467, 5.586, 1],
    ['Kasten', 35.365, 5.58, 0.999],
    ['Pickering', 37.064, 5.581, 1],
    ['flat earth', 572.958, 5.759, 1],
  ])('is by %s what others find', (form, low, high, overhead) => {
    expect(airMass(89.9, form)).toBeCloseTo(low, 2.9);
    expect(airMass(80, form)).toBeCloseTo(high, 2.9);
    expect(airMass(0, form)).toBeCloseTo(overhead, 2.9);
  });

  it('grows as the sun sinks, and the formulas part only near the horizon', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 89.9, noNaN: true }), (zenith) => {
        for (const form of ['Kasten and Young', 'Kasten', 'Pickering', 'flat earth'] as const)
          expect(airMass(zenith + 0.05, form)).toBeGreaterThan(airMass(zenith, form));
        const usual = airMass(zenith);
        if (zenith < 85)
          for (const form of ['Kasten', 'Pickering'] as const)
            expect(Math.abs(airMass(zenith, form) / usual - 1)).toBeLessThan(0.005);
        if (zenith < 75) expect(Math.abs(airMass(zenith, 'flat earth') / usual - 1)).toBeLessThan(0.015);
      }),
    );
  });

  it('has a value on the horizon, and refuses a sun below it', () => {
    expect(airMass(90)).toBeCloseTo(37.92, 2);
    expect(() => airMass(90, 'flat earth')).toThrow(/no value at the horizon/);
    expect(() => airMass(90.1)).toThrow(/0 to 90 °, got 90.1/);
    expect(() => airMass(Number.NaN)).toThrow(RangeError);
  });
});

describe('pressure at a height', () => {
  it.each([
    // the same library's, from another printing of the standard atmosphere
    [-100, 1025.32073],
    [1000, 898.7475],
    [8000, 356.00496],
  ])('is at %s m what others find', (elevation, hPa) => {
    expect(pressureAtHeight_hPa(elevation)).toBeCloseTo(hPa, 1);
  });

  it('thins the air crossed in proportion', () => {
    expect(airMassAtPressure(2, 1013.25)).toBe(2);
    expect(airMassAtPressure(2, 506.625)).toBe(1);
  });
});
