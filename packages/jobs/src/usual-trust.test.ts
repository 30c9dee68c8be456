import { describe, expect, it } from 'vitest';
import { usualTrust } from './usual-trust.ts';

const consequences = ['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort'] as const;

describe('usualTrust', () => {
  it('takes the shorter of what it is made of and what happens if it lets go', () => {
    expect(usualTrust('Gate lashed with cord', 'danger')).toEqual({
      days: 7,
      wind_max_kn: 10,
      notOnRoad: true,
      kind: 'a lashing',
    });
    expect(usualTrust('Tape round the forehatch', 'comfort')).toMatchObject({ days: 14, kind: 'tape' });
    expect(usualTrust('Patch on the cover', 'worsens')).toMatchObject({ days: 30, kind: 'glue or filler' });
    // of two the weaker
    expect(usualTrust('Cork and cable ties', 'comfort')).toMatchObject({ days: 7, kind: 'a bung or plug' });
  });

  it('counts what stands in for nothing known as what stops sailing', () => {
    expect(usualTrust('Something', null)).toEqual({ ...usualTrust('Something', 'stops-sailing'), kind: null });
  });

  it('trusts nothing longer, or in more wind, that is graver', () => {
    for (const words of ['lashing', 'tape', 'a thing'])
      for (const [i, graver] of consequences.entries())
        for (const lighter of consequences.slice(i + 1)) {
          const [a, b] = [usualTrust(words, graver), usualTrust(words, lighter)];
          expect(a.days, `${words} ${graver} ${lighter}`).toBeLessThanOrEqual(b.days);
        }
  });
});
