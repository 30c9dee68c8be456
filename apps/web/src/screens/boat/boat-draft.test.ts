import { expect, it } from 'vitest';
import { formReading } from '../../parts/read-form.ts';
import { type BoatFault, boatDraft, readBoat } from './boat-draft.ts';

const read = (changes: Partial<ReturnType<typeof boatDraft>>) => {
  const form = formReading<BoatFault>();
  return { boat: readBoat({ ...boatDraft(null), ...changes }, form), faults: form.faults };
};

it('of a new boat her length and what is under her are enough; the rest is guessed and named so', () => {
  const { boat, faults } = read({ length_m: '5,2', keel: 'pivoting' });
  expect(faults).toEqual({});
  expect(boat).toMatchObject({ length_m: 5.2, board: 'pivoting' });
  expect(boat!.guessed).toHaveLength(7);
});

it('without a length nothing can be drawn, and it says so', () => {
  expect(read({ keel: 'pivoting' }).faults.length_m).toMatch(/no figure here/);
  expect(read({ length_m: '5.2' }).faults.keel).toBe('Choose what is under her.');
});

it('what cannot be is refused at its field', () => {
  expect(read({ length_m: '5', keel: 'pivoting', mastFromBow_m: '6' }).faults.mastFromBow_m).toMatch(
    /aft of the transom/,
  );
  expect(
    read({ length_m: '5', keel: 'vertical', draft_m: '0.4', draftBoardDown_m: '0.3' }).faults.draftBoardDown_m,
  ).toMatch(/more than 0.4 m/);
  expect(read({ length_m: '5', keel: 'bilge keels', draft_m: '0.6', draftBoardDown_m: '0.6' }).faults).toEqual({});
});

it('a boat read back is filled in as she was said, with what was guessed left empty', () => {
  const { boat } = read({ length_m: '5.2', beam_m: '2', keel: 'fixed keel', bow: 'plumb' });
  const draft = boatDraft({ name: 'Dab', keeper: '', demo: false, ...boat! });
  expect(draft).toMatchObject({
    length_m: '5.2',
    beam_m: '2',
    boom_m: '',
    keel: 'fixed keel',
    bow: 'plumb',
    stern: '',
  });
});
