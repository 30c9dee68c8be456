import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardScale, checkLines, gaugeCard } from './gauge-card.ts';

describe('a printed gauge card', () => {
  it('is true within what a steel rule and an eye are out by', () => {
    expect(cardScale(150, 200).kind).toBe('true');
    expect(cardScale(149.5, 200.7).kind).toBe('true');
    expect(cardScale(149.2, 200).kind).not.toBe('true');
  });

  it('fitted to the page, says what to set the printer to', () => {
    // 97 % both ways: 100/97
    expect(cardScale(145.5, 194)).toMatchObject({ kind: 'scaled', printAt_pct: expect.closeTo(103.09, 2) });
  });

  it('drawn out one way, no setting mends it', () => {
    expect(cardScale(150, 194).kind).toBe('drawn out');
  });

  it('printed again at what it says, comes out true', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2, noNaN: true }), (size) => {
        const scale = cardScale(size * checkLines.across_mm, size * checkLines.down_mm);
        const again = scale.kind === 'scaled' ? (size * scale.printAt_pct) / 100 : size;
        expect(cardScale(again * checkLines.across_mm, again * checkLines.down_mm).kind).toBe('true');
      }),
    );
  });

  it('draws nothing wider than the paper of either size leaves', () => {
    const { bars_mm, tongues, links, threads } = gaugeCard();
    // 164 mm beside the check line down
    expect(bars_mm.reduce((sum, width) => sum + width, 0)).toBeLessThan(150);
    expect(tongues.map(({ rope_mm, width_mm }) => width_mm > rope_mm)).not.toContain(false);
    // a link takes the next link through itself
    for (const { wire_mm, insideWidth_mm, insideLength_mm } of links) {
      expect(insideWidth_mm).toBeGreaterThan(wire_mm);
      expect(insideLength_mm).toBeGreaterThan(2 * wire_mm);
    }
    expect(threads.length).toBeGreaterThanOrEqual(12);
  });
});
