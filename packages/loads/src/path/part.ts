/**
 * The parts of a load path: what each is and its sizes, as plain values. `null`: not measured, or not known. A load path
 * is such parts in order, from what pulls to what holds.
 */
import type { ropeBreaking } from '../../tables/fibre-rope.read-2026-11.ts';
import type { wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import type { Ending } from './ending.ts';

export type Fibre = keyof typeof ropeBreaking;
export type Lay = keyof typeof wireBreaking;
export type Metal = 'stainless' | 'galvanised' | 'bronze' | 'aluminium' | 'plastic';

export interface RopePart {
  readonly kind: 'rope';
  readonly fibre: Fibre;
  readonly size_mm: number;
}

/** Cord passed round and round between two eyes, hauled tight and tied off. */
export interface LashingPart {
  readonly kind: 'lashing';
  readonly fibre: Fibre;
  readonly size_mm: number;
  /** times it goes round both eyes; each is two legs */
  readonly passes: number;
}

export interface WirePart {
  readonly kind: 'wire';
  readonly laid: Lay;
  readonly size_mm: number;
  readonly make: '316' | 'aircraft';
}

export interface ChainPart {
  readonly kind: 'chain';
  /** stamped on it; null: no mark */
  readonly grade: '30' | '40' | '43' | '70' | null;
  /** thickness of a link’s wire */
  readonly size_mm: number;
  readonly metal: 'galvanised' | 'stainless';
  /** clear width inside the end link */
  readonly inside_mm: number | null;
}

export interface ShacklePart {
  readonly kind: 'shackle';
  /** lifting: forged steel with a working load stamped on it; galvanised: plain, no mark */
  readonly make: 'lifting' | 'stainless' | 'galvanised';
  /** thickness of the body */
  readonly size_mm: number;
  readonly pin_mm: number | null;
  /** clear between its cheeks */
  readonly jaw_mm: number | null;
  readonly moused: boolean | null;
}

export interface ThimblePart {
  readonly kind: 'thimble';
  /** of the rope or wire it is made for */
  readonly size_mm: number;
  readonly metal: Metal;
  /** clear width where the pin goes through */
  readonly opening_mm: number | null;
}

/** Knot, splice or terminal at the end of the rope or wire it stands beside. */
export interface EndingPart {
  readonly kind: 'ending';
  readonly ending: Ending;
}

export interface BlockPart {
  readonly kind: 'block';
  /** across the bottom of its groove */
  readonly sheave_mm: number | null;
  /** widest line that lies in its groove */
  readonly line_mm: number | null;
  /** how far it turns the line: 0 straight through, 180 right round */
  readonly turn_deg: number | null;
  readonly metal: Metal;
}

/** Something fixed to the boat or to the anchor that the path is made fast to. */
export interface FittingPart {
  readonly kind: 'fitting';
  readonly what: 'anchor' | 'pad eye' | 'cleat' | 'post' | 'chain plate' | 'ring' | 'hook' | 'other';
  readonly metal: Metal;
  /** clear width of its eye; null: it has none, or it was not measured */
  readonly eye_mm: number | null;
  /** what a jaw must go over */
  readonly thickness_mm: number | null;
}

export interface PinPart {
  readonly kind: 'pin';
  readonly size_mm: number;
  readonly metal: Metal;
  /** by a split pin or ring */
  readonly secured: boolean | null;
}

export interface RiggingScrewPart {
  readonly kind: 'rigging screw';
  readonly thread_mm: number;
  readonly metal: Metal;
  readonly pin_mm: number | null;
  readonly jaw_mm: number | null;
  /** against turning, by pins, nuts or wire */
  readonly locked: boolean | null;
}

/** Screws or bolts that hold a fitting to the boat. */
export interface FasteningsPart {
  readonly kind: 'fastenings';
  readonly how: 'screws' | 'bolts';
  readonly count: number;
  readonly size_mm: number;
  readonly metal: Metal;
  readonly into: 'laminate' | 'plywood' | 'timber' | 'aluminium' | 'steel';
  /** of what they go into */
  readonly thickness_mm: number | null;
  readonly backing: 'none' | 'washers' | 'plate';
  readonly pulled: 'out' | 'across';
}

export interface WinchPart {
  readonly kind: 'winch';
  /** force at the drum over force at the hand, friction left out; null: not known, or the hand is not in the path */
  readonly ratio: number | null;
}

export interface HandPart {
  readonly kind: 'hand';
  readonly how: 'pull' | 'crank';
}

export type PartOfPath =
  | RopePart
  | LashingPart
  | WirePart
  | ChainPart
  | ShacklePart
  | ThimblePart
  | EndingPart
  | BlockPart
  | FittingPart
  | PinPart
  | RiggingScrewPart
  | FasteningsPart
  | WinchPart
  | HandPart;

/** What a look at a part can show. What each takes from it, or whether it is to be replaced, is in `wear.ts`. */
export type Sign =
  | 'faded'
  | 'stiff'
  | 'chafed'
  | 'cut strand'
  | 'broken wires'
  | 'kinked'
  | 'rust'
  | 'pitted'
  | 'worn'
  | 'bent'
  | 'cracked';

/** What is known of a part beyond its sizes. */
export interface PartState {
  /** a strength marked on it or in its maker’s sheet, which wins over every table; null: none */
  readonly marked: {
    readonly force_kN: number;
    readonly as: 'working load' | 'breaking load';
    /** who says so: the mark, a sheet, a test */
    readonly by: string;
  } | null;
  /** what was seen on it; empty: looked at and sound; null: not looked at */
  readonly signs: readonly Sign[] | null;
}
