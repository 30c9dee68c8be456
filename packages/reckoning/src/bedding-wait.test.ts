import { describe, expect, it } from 'vitest';
import type { WaitRecord } from '#boat-book';
import { cureLawOf } from '#materials';
import { waitsBeddedWith } from './bedding-wait.ts';
import { soak } from './testing/small-book.ts';

const cures: WaitRecord = {
  ...soak('cures', 60),
  law: { ...cureLawOf('polyurethane-sealant').law, from: 'the tin' },
  family: 'polyurethane-sealant',
  tin: 'pu',
};

describe('the wait of a step goes by the bedding that was chosen', () => {
  it('another kind is another law, and the tin of the one before says nothing of it', () => {
    const [rest, wait] = waitsBeddedWith([soak('rest', 60), cures], 'polysulphide-sealant');
    expect(rest).toEqual(soak('rest', 60));
    expect(wait).toMatchObject({ id: 'cures', family: 'polysulphide-sealant', tin: null });
    expect(wait!.law.kind).toBe(cureLawOf('polysulphide-sealant').law.kind);
  });

  it('the same kind keeps its tin; butyl never sets, so nothing is waited for', () => {
    expect(waitsBeddedWith([cures], 'polyurethane-sealant')[0]).toEqual({
      ...cures,
      law: cureLawOf('polyurethane-sealant').law,
    });
    expect(waitsBeddedWith([cures], 'butyl-tape')[0]!.law.kind).toBe('never cures');
    expect(waitsBeddedWith([], 'butyl-tape')).toEqual([]);
  });

  it('a step without one gets one, once', () => {
    const once = waitsBeddedWith([soak('rest', 60)], 'polyurethane-sealant');
    expect(once.map(({ id }) => id)).toEqual(['rest', 'bedding']);
    expect(once[1]!.law).toMatchObject({ kind: 'moisture', depth_mm: 3 });
    expect(waitsBeddedWith(once, 'polysulphide-sealant').map(({ id }) => id)).toEqual(['rest', 'bedding']);
  });
});
