import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dewPoint_C, humidity_pct, type MagnusForm, magnusForms } from './dew-point.ts';

describe('dew point', () => {
  it('is the air itself when it is saturated, never above it, and lower in drier air', () => {
    expect(dewPoint_C(12, 100)).toBeCloseTo(12, 10);
    fc.assert(
      fc.property(
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: 1, max: 99 }),
        fc.constantFrom(...(Object.keys(magnusForms) as MagnusForm[])),
        (air, share, form) => {
          const dew = dewPoint_C(air, share, form);
          expect(dew).toBeLessThan(air);
          expect(dew).toBeLessThan(dewPoint_C(air, share + 1, form));
          expect(humidity_pct(air, dew, form)).toBeCloseTo(share, 8);
        },
      ),
    );
  });

  it('refuses air that cannot be', () => {
    expect(() => dewPoint_C(20, 0)).toThrow(/over 0 and at most 100 %, got 0/);
    expect(() => dewPoint_C(20, 101)).toThrow(/got 101/);
    expect(() => dewPoint_C(99, 50)).toThrow(/air temperature must be -60 to 60 °C, got 99/);
    expect(() => humidity_pct(10, 11)).toThrow(/dew point must be -120 to 10 °C, got 11/);
  });
});
