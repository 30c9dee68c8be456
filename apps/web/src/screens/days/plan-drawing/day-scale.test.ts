import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayScale } from './day-scale.ts';

describe('the scale of a day', () => {
  it('is even where everything has room', () => {
    // 08:00 to 10:00 at 1.5 px a minute: 180 px, 09:00 in the middle
    const scale = dayScale({ from: 480, to: 600, pxPerMinute: 1.5, marks: [540], stretches: [] });
    expect(scale.height).toBe(180);
    expect(scale.y(540)).toBe(90);
  });

  it('draws out a short step and leaves the rest as it is', () => {
    // 5 minutes would be 5 px; it gets its 22, and what comes after moves down by 17
    const scale = dayScale({
      from: 0,
      to: 60,
      pxPerMinute: 1,
      marks: [],
      stretches: [{ from: 10, to: 15, least_px: 22 }],
    });
    expect(scale.y(10)).toBe(10);
    expect(scale.y(15)).toBe(32);
    expect(scale.height).toBe(77);
  });

  it('holds minutes outside the day to its ends', () => {
    const scale = dayScale({ from: 100, to: 200, pxPerMinute: 1, marks: [], stretches: [] });
    expect(scale.y(0)).toBe(0);
    expect(scale.y(999)).toBe(100);
  });

  it('never runs backwards and gives every stretch its room', () => {
    const stretch = fc
      .record({
        from: fc.integer({ min: 0, max: 590 }),
        length: fc.integer({ min: 1, max: 120 }),
        least: fc.integer({ min: 1, max: 90 }),
      })
      .map(({ from, length, least }) => ({ from, to: Math.min(from + length, 600), least_px: least }));
    fc.assert(
      fc.property(fc.array(stretch, { maxLength: 25 }), (stretches) => {
        const scale = dayScale({ from: 0, to: 600, pxPerMinute: 1.2, marks: [60, 120, 180], stretches });
        for (const { from, to, least_px } of stretches)
          expect(scale.y(to) - scale.y(from)).toBeGreaterThanOrEqual(least_px - 1e-6);
        for (let minute = 1; minute <= 600; minute++)
          expect(scale.y(minute)).toBeGreaterThanOrEqual(scale.y(minute - 1) + 1.2 - 1e-6);
      }),
      { numRuns: 100 },
    );
  });
});
