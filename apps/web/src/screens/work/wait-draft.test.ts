import { describe, expect, it } from 'vitest';
import { cureLawOf, cureLaws } from '#materials';
import { emptyWait, readWait, waitDraft, withProduct } from './wait-draft.ts';

describe('a wait being filled in', () => {
  it('takes the law of every product as it stands, and gives the same wait back', () => {
    for (const { id, law } of cureLaws) {
      const read = readWait({ ...withProduct(emptyWait('w'), id), title: 'cures' });
      if (read.kind !== 'wait') throw new Error(`${id} was refused`);
      expect(read.wait.law).toEqual(law);
      expect(readWait(waitDraft(read.wait))).toEqual(read);
    }
  });

  it("keeps the keeper's own figures and says they are from the tin", () => {
    const draft = { ...withProduct(emptyWait('w'), 'varnish-one-pot'), fromTin: true, hours: '6,5', stopsAt: '75' };
    const read = readWait(draft);
    expect(read).toMatchObject({
      kind: 'wait',
      wait: { law: { kind: 'dries', atReference_min: 390, stopsAt_pct: 75, from: 'the tin' } },
    });
    if (read.kind === 'wait') expect(readWait(waitDraft(read.wait))).toEqual(read);
  });

  it('keeps the tin it is of, the depth of its bead and its product when something else of it is changed', () => {
    const { law } = cureLawOf('polyurethane-sealant');
    if (law.kind !== 'moisture') throw new Error('a sealant cures by the damp of the air');
    const wait = {
      id: 'w',
      title: 'the bedding sets',
      law: { ...law, depth_mm: 3 },
      family: 'polyurethane-sealant',
      tin: 'grey-tube',
      needs: {},
      setUps: [],
      still: [],
      wet: false,
    };
    const read = readWait({ ...waitDraft(wait), dry: true });
    expect(read).toEqual({ kind: 'wait', wait: { ...wait, needs: { dry: true } } });
    // of another product that tin says nothing
    const other = readWait(withProduct(waitDraft(wait), 'polysulphide-sealant'));
    expect(other).toMatchObject({ wait: { family: 'polysulphide-sealant' } });
    expect(other).not.toHaveProperty('wait.tin');
  });

  it('refuses a wait without a product, without a time, and a figure out of range', () => {
    expect(readWait({ ...emptyWait('w'), title: 'rest' })).toMatchObject({
      kind: 'refused',
      faults: { law: 'Choose the product, or a set time.' },
    });
    expect(readWait({ ...withProduct(emptyWait('w'), 'set time'), title: 'rest' })).toMatchObject({
      kind: 'refused',
      faults: { hours: expect.stringMatching(/no figure/) },
    });
    expect(readWait({ ...withProduct(emptyWait('w'), 'epoxy-slow'), fromTin: true, reference: '200' })).toMatchObject({
      kind: 'refused',
      faults: { reference: expect.stringMatching(/-20 to 60 °C/) },
    });
  });
});
