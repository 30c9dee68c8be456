import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../../../../examples/demo-book.ts';
import { formReading } from '../../../../parts/read-form.ts';
import { type HoistDraft, type HoistFault, hoistDraft, hoistOf, newTackle } from './hoist-draft.ts';

const record = demoBook('2026-05-02').boardHoists.board!;
const read = (draft: HoistDraft) => {
  const form = formReading<HoistFault>();
  return { hoist: hoistOf(draft, form), faults: form.faults };
};

describe('a hoist in its form', () => {
  it('comes back from the form as it stood in the book', () => {
    expect(read(hoistDraft(record))).toEqual({ hoist: record, faults: {} });
    const sliding = {
      ...record,
      plate: { ...record.plate, mass: { kind: 'by its sizes', thickness_mm: 12 } },
      moves: { kind: 'slides', travel_m: 0.8, topAboveWater_m: -0.1, offMiddle_m: 0.02, held_m: 0.5 },
      tackles: [{ movingSheaves: 1, fixedSheaves: 2, endAt: 'moving', bearing: 'ball' }],
      cord: { of: 'polyester-braid', size_mm: 8, ending: null },
      winch: null,
    } as const;
    expect(read(hoistDraft(sliding))).toEqual({ hoist: sliding, faults: {} });
  });

  it('refuses an empty one, naming everything it hangs on, and fills in nothing', () => {
    const { faults } = read(hoistDraft(null));
    expect(Object.keys(faults).sort()).toEqual(
      [
        'breadth',
        'density',
        'leadBearing',
        'leads',
        'length',
        'massKnown',
        'moves',
        'wireOf',
        'wireSize',
        'wound',
      ].sort(),
    );
  });

  it('refuses a tackle no rope can follow, and a board that is up below where it is down', () => {
    const draft = hoistDraft(record);
    const tackled = { ...draft, tackles: [{ ...newTackle, moving: '3' }] };
    expect(read(tackled).faults.tackle0).toMatch(/3 moving and 1 standing.*count apart/);
    expect(read(tackled).faults.cordOf).toBeDefined();
    expect(read({ ...draft, up: '60', down: '50' }).faults.up).toMatch(/less than that/);
  });

  it('lets go of an ending that the line cannot have', () => {
    const draft = hoistDraft(record);
    expect(read({ ...draft, wire: { of: 'nylon', size: '8', ending: 'ferrule' } }).hoist.wire).toEqual({
      of: 'nylon',
      size_mm: 8,
      ending: null,
    });
  });
});
