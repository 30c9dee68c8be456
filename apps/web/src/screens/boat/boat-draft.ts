/** A boat while her sizes are filled in, and her record once they can be read. What is left empty is guessed, and said to be. */
import type { Boat } from '#boat-book';
import { type KeelKind, lengthRange_m } from '#picture';
import { drawnBoat, keelOf } from '#reckoning';
import type { FormReading } from '../../parts/read-form.ts';

/** the sizes that may be left empty, with their label and range. [m] */
export const moreSizes = [
  ['mastFromBow_m', 'Mast, from the stem', 0, 10],
  ['boom_m', 'Boom', 0.5, 8],
  ['freeboard_m', 'Freeboard, at its lowest', 0.2, 2.5],
  ['draft_m', 'Draught, board up', 0.05, 2],
  ['draftBoardDown_m', 'Draught, board down', 0.1, 3],
] as const;
export const firstSizes = [
  ['beam_m', 'Beam', 0.8, 5],
  ['mastHeight_m', 'Mast, foot to head', 1, 20],
] as const;
const cabinHeight = ['cabinHeight_m', 'Cabin top over the deck', 0.1, 1.5] as const;
const sizes = [...firstSizes, ...moreSizes] as const;
type Size = (typeof sizes)[number][0];

export const keelNames: Readonly<Record<KeelKind, string>> = {
  pivoting: 'a board that swings on a pin',
  vertical: 'a board that lifts straight up',
  'lifting keel': 'a lifting keel',
  'bilge keels': 'two bilge keels',
  'fixed keel': 'a fixed keel',
};

export const choices = {
  bow: ['Bow', ['raked', 'plumb', 'spoon']],
  stern: ['Stern', ['upright', 'reversed', 'counter']],
  rig: ['Rig', ['masthead', 'fractional', 'gaff', 'unstayed']],
  mastStep: ['The mast stands on the', ['deck', 'keel']],
  rudder: ['Rudder', ['on the transom', 'under the hull']],
  outboard: ['Outboard', ['on the transom', 'none']],
} as const;
export type Choice = keyof typeof choices;

export type BoatDraft = Readonly<Record<Size | 'length_m' | 'cabinHeight_m' | 'name' | 'keeper', string>> &
  Readonly<Record<Choice, string>> & { readonly cabin: boolean; readonly keel: KeelKind | '' };
export type BoatFault = Size | 'length_m' | 'cabinHeight_m' | 'name' | 'keel';

/** A boat as she stands in the book, what was guessed left empty; no boat: an empty form, with a cabin. */
export function boatDraft(boat: Boat | null): BoatDraft {
  const figure = (name: Size | 'length_m') =>
    boat === null || (name !== 'length_m' && boat.guessed?.includes(name)) ? '' : String(boat[name]);
  const build = boat?.build;
  return {
    name: boat?.name ?? '',
    keeper: boat?.keeper ?? '',
    length_m: figure('length_m'),
    ...(Object.fromEntries(sizes.map(([name]) => [name, figure(name)])) as Record<Size, string>),
    cabinHeight_m: build?.cabinHeight_m?.toString() ?? '',
    cabin: boat?.cabin ?? true,
    keel: boat === null ? '' : keelOf(boat),
    ...(Object.fromEntries(Object.keys(choices).map((name) => [name, build?.[name as Choice] ?? ''])) as Record<
      Choice,
      string
    >),
  };
}

/** Her record from the draft; null where something in it was refused. */
export function readBoat(draft: BoatDraft, form: FormReading<BoatFault>) {
  const length = form.figure('length_m', draft.length_m, { ...lengthRange_m, max: 15, unit: 'm' });
  const keel = form.chosen('keel', draft.keel, 'Choose what is under her.');
  const said: Partial<Record<Size, number>> = {};
  for (const [name, , min, max] of sizes) {
    const figure = form.figureOrNone(name, draft[name], { min, max, unit: 'm' });
    if (figure !== null) said[name] = figure;
  }
  const [, , least, most] = cabinHeight;
  const high = draft.cabin
    ? form.figureOrNone('cabinHeight_m', draft.cabinHeight_m, { min: least, max: most, unit: 'm' })
    : null;
  if (!form.sound()) return null;
  const build = {
    ...(high === null ? {} : { cabinHeight_m: high }),
    ...Object.fromEntries(
      (Object.keys(choices) as Choice[]).flatMap((name) => (draft[name] === '' ? [] : [[name, draft[name]]])),
    ),
  };
  const boat = drawnBoat({ length_m: length, cabin: draft.cabin, keel, sizes: said, build });
  if (boat.mastFromBow_m >= length)
    form.refuse('mastFromBow_m', `The mast would stand aft of the transom; the hull is ${length} m long.`);
  if (keel !== 'bilge keels' && keel !== 'fixed keel' && boat.draftBoardDown_m <= boat.draft_m)
    form.refuse('draftBoardDown_m', `With the board down she must draw more than ${boat.draft_m} m.`);
  return form.sound() ? boat : null;
}

const sizeNames: Readonly<Record<string, string>> = {
  beam_m: 'beam',
  mastHeight_m: 'mast',
  mastFromBow_m: 'where the mast stands',
  boom_m: 'boom',
  freeboard_m: 'freeboard',
  draft_m: 'draught',
  draftBoardDown_m: 'draught with the board down',
};

/** `Guessed from her length: mast 6.34 m, boom 2.34 m.` */
export function guessedInWords(boat: { readonly guessed?: readonly string[] | null } & object): string {
  const of = boat as Readonly<Record<string, unknown>>;
  const said = (boat.guessed ?? []).map((name) => `${sizeNames[name] ?? name} ${String(of[name])} m`);
  return said.length === 0
    ? 'All her sizes are as you gave them.'
    : `Guessed from her length, to be put right later: ${said.join(', ')}.`;
}
