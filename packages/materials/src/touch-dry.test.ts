import { describe, expect, it } from 'vitest';
import type { CureLaw } from './cure-law.ts';
import { cureLawOf } from './cure-laws.ts';
import { stopBeforeDew_h } from './evening-dew.ts';
import { touchDryFigures, touchDryLaw } from './touch-dry.ts';

describe('when a coat is dry to the touch', () => {
  it('lies in the band its source has, and well before the next coat may go on', () => {
    for (const { product, hours, figure } of touchDryFigures) {
      const [low, high] = figure.band!;
      expect(hours).toBeGreaterThanOrEqual(low);
      expect(hours).toBeLessThanOrEqual(high);
      const { law } = cureLawOf(product);
      expect('atReference_min' in law && law.atReference_min).toBeGreaterThanOrEqual(2 * 60 * hours);
    }
  });

  it('is 2 to 3 h for varnish of one pot: trade practice, handbook row materials.sun', () => {
    const law = touchDryLaw(cureLawOf('varnish-one-pot').law, 'varnish-one-pot');
    const hours = law?.kind === 'dries' ? law.atReference_min / 60 : 0;
    expect(hours).toBeGreaterThanOrEqual(stopBeforeDew_h.least);
    expect(hours).toBeLessThanOrEqual(stopBeforeDew_h.most);
  });

  it('is the same share of a tin’s own time, at the tin’s temperature', () => {
    // ours 3 of 16 h; a tin of 24 h at 15 °C: 24 · 3 / 16 = 4.5 h at 15 °C
    const { law } = cureLawOf('varnish-one-pot');
    const tin = { ...law, atReference_min: 24 * 60, reference_C: 15, from: 'the tin' } as CureLaw;
    expect(touchDryLaw(tin, 'varnish-one-pot')).toMatchObject({
      atReference_min: 270,
      reference_C: 15,
      stopsAt_pct: 80,
    });
  });

  it('is no longer than the wait where nobody knows what it is, and nothing for a bead', () => {
    const set = (minutes: number): CureLaw => ({ kind: 'set time', minutes, from: 'the tin' });
    expect(touchDryLaw(set(120), null)).toEqual(set(120));
    expect(touchDryLaw(set(720), null)).toEqual({ kind: 'set time', minutes: 180, from: 'common practice' });
    const own = { ...cureLawOf('paint-two-pot').law, atReference_min: 90 } as CureLaw;
    expect(touchDryLaw(own, null)).toMatchObject({ atReference_min: 90 });
    expect(touchDryLaw(cureLawOf('polyurethane-sealant').law, 'polyurethane-sealant')).toBeNull();
    expect(touchDryLaw(cureLawOf('butyl-tape').law, 'butyl-tape')).toBeNull();
  });
});
