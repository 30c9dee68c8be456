/**
 * The sizes and choices a boat is drawn from, and a guess for each that nobody gave: what is usual on small trailerable
 * boats of her length. A guess is only for drawing; it is named as one, so that a screen can say so.
 */

/** What is under her. The last two are fixed: they are neither lowered nor taken out. */
export type KeelKind = 'pivoting' | 'vertical' | 'lifting keel' | 'bilge keels' | 'fixed keel';
export type BowKind = 'raked' | 'plumb' | 'spoon';
/** upright leans a little aft; reversed leans forward at the top; counter overhangs the water */
export type SternKind = 'upright' | 'reversed' | 'counter';
/** masthead and fractional: how high the forestay goes; unstayed: one mast far forward */
export type RigKind = 'masthead' | 'fractional' | 'gaff' | 'unstayed';

export interface BoatSizes {
  /** of the hull, stem to stern */
  readonly length_m: number;
  readonly beam_m: number;
  /** at the lowest place of the sheer */
  readonly freeboard_m: number;
  /** hull and what is fixed under it, below the waterline, board up */
  readonly draft_m: number;
  readonly draftBoardDown_m: number;
  /** foot to head */
  readonly mastHeight_m: number;
  /** from the stem to the front of the mast */
  readonly mastFromBow_m: number;
  readonly boom_m: number;
  /** top of the cabin over the sheer beside it; 0: she is open */
  readonly cabinHeight_m: number;
  readonly keel: KeelKind;
  readonly bow: BowKind;
  readonly stern: SternKind;
  readonly rig: RigKind;
  /** keel: it goes through the deck and stands on the bottom of the boat */
  readonly mastStep: 'deck' | 'keel';
  readonly rudder: 'on the transom' | 'under the hull';
  readonly outboard: 'on the transom' | 'none';
}

export type SizeName = keyof BoatSizes;

/** What is known of her: her length, and whatever else. Left out: nobody said. */
export type KnownSizes = Pick<BoatSizes, 'length_m'> & { readonly cabin: boolean } & {
  readonly [Name in Exclude<SizeName, 'length_m'>]?: BoatSizes[Name] | undefined;
};

export interface CompleteSizes {
  readonly sizes: BoatSizes;
  /** which of them nobody gave, in the order of `BoatSizes` */
  readonly guessed: readonly SizeName[];
}

/** The boats that can be drawn. [m] */
export const lengthRange_m = { min: 2, max: 30 } as const;

/** Boats from this length up usually carry an outboard on the transom. [m] Our judgement. */
const assumedOutboardFrom_m = 4.6;
/** A boat that goes on the road is seldom wider. [m] Common practice: the usual limit of road law is 2.5 m. */
const assumedWidestOnRoad_m = 2.5;

const below: Readonly<Record<KeelKind, { readonly up: number; readonly down: number | null }>> = {
  // shares of the length of the hull; null: as with it up
  pivoting: { up: 0.045, down: 0.215 },
  vertical: { up: 0.04, down: 0.21 },
  'lifting keel': { up: 0.075, down: 0.24 },
  'bilge keels': { up: 0.115, down: null },
  'fixed keel': { up: 0.165, down: null },
};

/**
 * All sizes of a boat, those not known guessed by what is usual for her length.
 *
 * @param known  her length, and what else is known. Length 2–30 m
 * @returns      every size, and which were guessed
 * @throws RangeError  when the length is outside its range
 *
 * Not covered: two masts, hulls side by side. Source: the proportions are our judgement of small trailerable boats;
 * none is a class's or a designer's.
 */
export function completeSizes(known: KnownSizes): CompleteSizes {
  const { length_m: length } = known;
  if (!(length >= lengthRange_m.min && length <= lengthRange_m.max))
    throw new RangeError(`length must be ${lengthRange_m.min} to ${lengthRange_m.max} m, got ${length}`);
  const keel = known.keel ?? 'pivoting';
  const rig = known.rig ?? 'fractional';
  const draft = known.draft_m ?? cm(length * below[keel].up);
  const mastStep = known.mastStep ?? (known.cabin ? 'deck' : 'keel');
  const usual: BoatSizes = {
    length_m: length,
    beam_m: cm(Math.min(assumedWidestOnRoad_m, 0.27 * length + 0.72, 0.62 * length)),
    freeboard_m: cm(known.cabin ? 0.085 * length + 0.18 : 0.07 * length + 0.12),
    draft_m: draft,
    draftBoardDown_m: Math.max(draft, below[keel].down === null ? draft : cm(length * below[keel].down)),
    mastHeight_m: cm(
      length * (rig === 'gaff' ? 1.02 : rig === 'unstayed' ? 1.08 : 1.22) + (mastStep === 'keel' ? 0.3 : 0),
    ),
    mastFromBow_m: cm(length * (rig === 'unstayed' ? 0.14 : rig === 'gaff' ? 0.31 : 0.345)),
    boom_m: cm(length * (rig === 'unstayed' ? 0.66 : rig === 'gaff' ? 0.52 : 0.45)),
    cabinHeight_m: known.cabin ? cm(0.05 * length + 0.16) : 0,
    keel,
    bow: 'raked',
    stern: 'upright',
    rig,
    mastStep,
    rudder: known.stern === 'counter' ? 'under the hull' : 'on the transom',
    outboard: length >= assumedOutboardFrom_m ? 'on the transom' : 'none',
  };
  const fixed = below[keel].down === null;
  const said = (Object.keys(usual) as SizeName[]).filter((name) => known[name] !== undefined);
  const sizes = { ...usual, ...Object.fromEntries(said.map((name) => [name, known[name]])) } as BoatSizes;
  return {
    // what cannot be lowered draws the same always
    sizes: fixed ? { ...sizes, draftBoardDown_m: sizes.draft_m } : sizes,
    guessed: (Object.keys(usual) as SizeName[]).filter((name) => !said.includes(name)),
  };
}

const cm = (metres: number) => Math.round(metres * 100) / 100;
