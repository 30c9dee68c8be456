import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../../../examples/demo-book.ts';
import { formReading } from '../../../parts/read-form.ts';
import { type CircuitDraft, type CircuitFault, circuitDraft, circuitOf, sizeOptions } from './circuit-draft.ts';

const { batteries, circuits } = demoBook('2026-05-09');

const read = (draft: CircuitDraft) => {
  const form = formReading<CircuitFault>();
  return { circuit: circuitOf(draft, batteries, form), faults: form.faults };
};

describe('a circuit being filled in', () => {
  it('goes back in as it came out', () => {
    for (const circuit of Object.values(circuits))
      expect(read(circuitDraft(circuit, ''))).toEqual({
        faults: {},
        circuit: { fuseKind: null, ...circuit, sheathed: circuit.sheathed ?? false },
      });
  });

  it('refuses what is missing, field by field, and fills nothing in', () => {
    expect(Object.keys(read(circuitDraft(null, '')).faults).sort()).toEqual([
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
    expect(read(draft)).toMatchObject({ faults: {}, circuit: { watts: 30 } });
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
