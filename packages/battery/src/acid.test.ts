import { describe, expect, it } from 'vitest';
import { chargeGravity, correctedGravity, freezingPoint_C, gravityCharge_pct } from './acid.ts';

describe('specific gravity', () => {
  // US Army TM 5-1185, table II: 1.280 full, 1.250 at 75 %, 1.220 at 50 %, 1.190 at 25 %
  it('of a battery filled with 1.280 is that of the Army’s table', () => {
    for (const [pct, gravity] of [
      [100, 1.28],
      [75, 1.25],
      [50, 1.22],
      [25, 1.19],
    ] as const)
      expect(chargeGravity(pct, 1.28).likely).toBeCloseTo(gravity, 6);
  });

  it('falls with the charge whatever the battery is filled with, and is read back', () => {
    for (const full of [1.225, 1.25, 1.265, 1.272, 1.28, 1.3])
      for (let pct = 0; pct <= 100; pct += 5) {
        const { likely } = chargeGravity(pct, full);
        if (pct > 0) expect(likely).toBeGreaterThan(chargeGravity(pct - 5, full).likely);
        expect(gravityCharge_pct(likely, full).likely).toBeCloseTo(pct, 6);
      }
  });

  it('at its top is what the keeper says is full', () => {
    for (const full of [1.225, 1.265, 1.28, 1.3]) expect(chargeGravity(100, full).likely).toBeCloseTo(full, 9);
  });

  it('read warm is put up, read cold is put down', () => {
    expect(correctedGravity(1.25, 40)).toBeGreaterThan(1.25);
    expect(correctedGravity(1.25, 5)).toBeLessThan(1.25);
    expect(() => correctedGravity(2, 20)).toThrow(RangeError);
  });

  it('says that thin acid freezes first', () => {
    expect(freezingPoint_C(1.0)).toBeCloseTo(0, 6);
    for (let gravity = 1.01; gravity <= 1.28; gravity += 0.01)
      expect(freezingPoint_C(gravity)).toBeLessThan(freezingPoint_C(gravity - 0.01));
  });
});
