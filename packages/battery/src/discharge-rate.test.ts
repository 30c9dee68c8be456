import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacityShare_pct } from './battery-heat.ts';
import { chemistries } from './chemistry.ts';
import { capacityInHours_Ah, exponentOfTests, hoursAtCurrent, hoursByOldForm } from './discharge-rate.ts';

describe('Peukert’s law', () => {
  it('gives the rated hours at the rated current, whatever the exponent', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (capacity, rated, k) => {
          expect(hoursAtCurrent(capacity, rated, capacity / rated, k)).toBeCloseTo(rated, 6);
        },
      ),
    );
  });

  // the trap: 100 Ah at 5 A is 20 h by its label, 14.5 h by the old form (electrotechnik.net, worked example)
  it('in its old form is 5.5 h short with a label’s capacity', () => {
    expect(hoursAtCurrent(100, 20, 5, 1.2)).toBeCloseTo(20, 9);
    expect(hoursByOldForm(100, 5, 1.2)).toBeCloseTo(14.5, 1);
  });

  it('is the same in both forms when the capacity is that at one ampere', () => {
    // rated form with H the hours at one ampere: C = 1·H, so t = H·(1/I)^k
    expect(hoursByOldForm(80, 7, 1.25)).toBeCloseTo(hoursAtCurrent(80, 80, 7, 1.25), 9);
  });

  it('comes back from two of its own answers', () => {
    const test = (amps: number) => ({ amps, hours: hoursAtCurrent(60, 20, amps, 1.17) });
    expect(exponentOfTests(test(2), test(11))).toBeCloseTo(1.17, 9);
    expect(() => exponentOfTests(test(2), test(2))).toThrow(RangeError);
  });
});

describe('what a battery gives', () => {
  it('is its label in 20 hours, and less the faster and the colder', () => {
    for (const { id } of chemistries) {
      expect(capacityInHours_Ah(id, 20, 20).likely).toBeCloseTo(20, 6);
      for (const hours of [1, 2, 5, 10])
        expect(capacityInHours_Ah(id, 20, hours).likely).toBeLessThan(capacityInHours_Ah(id, 20, hours * 2).likely);
      for (let heat = -15; heat <= 25; heat += 5) {
        const { low, likely, high } = capacityShare_pct(id, heat);
        expect(low).toBeLessThanOrEqual(likely);
        expect(high).toBeGreaterThanOrEqual(likely);
        expect(likely).toBeGreaterThan(capacityShare_pct(id, heat - 5).likely);
      }
    }
  });
});
