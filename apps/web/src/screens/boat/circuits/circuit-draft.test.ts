import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../../../examples/demo-book.ts';
import { circuitDraft, readCircuit, sizeOptions } from './circuit-draft.ts';

const { batteries, circuits } = demoBook('2026-05-09');

describe('a circuit being filled in', () => {
  it('goes back in as it came out', () => {
    for (const circuit of Object.values(circuits))
      expect(readCircuit(circuitDraft(circuit, ''), batteries)).toEqual({
        kind: 'read',
        circuit: { fuseKind: null, ...circuit, sheathed: circuit.sheathed ?? false },
      });
  });

  it('refuses what is missing, field by field, and fills nothing in', () => {
    const read = readCircuit(circuitDraft(null, ''), batteries);
    expect(read.kind === 'refused' && Object.keys(read.faults).sort()).toEqual([
      'battery',
      'draws',
      'fused',
      'name',
      'needs',
      'uses',
      'wired',
    ]);
  });

  it('takes amperes at the volts of the battery', () => {
    const draft = { ...circuitDraft(circuits.sounder!, ''), drawsIn: 'amps', draws: '2,5' } as const;
    expect(readCircuit(draft, batteries)).toMatchObject({ kind: 'read', circuit: { watts: 30 } });
  });

  it('has an option for any area that the book may hold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), (tenths) => {
        const area = String(tenths / 10);
        expect(sizeOptions(area).some(({ value }) => value === area)).toBe(true);
      }),
    );
  });
});
