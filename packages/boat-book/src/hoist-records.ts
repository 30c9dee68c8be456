/**
 * The records of what lifts the board: how it is rove, and what the hand was seen to pull. Plain values, as in
 * `records.ts`; records marked *fixed* never change.
 */
import type { BoardLine, Handling, LineEnding, Reeving, SheaveBearing } from '#loads';
import type { At, Id } from './records.ts';

/** What the board is: its outline, what it is made of, and what it weighs. */
export interface PlateRecord {
  /** from the pivot to the far end, or from top to foot where it slides */
  readonly length_m: number;
  readonly breadth_m: number;
  readonly density_kg_m3: number;
  readonly mass:
    | { readonly kind: 'weighed'; readonly mass_kg: number }
    | { readonly kind: 'by its sizes'; readonly thickness_mm: number };
}

/** How the board goes up and down. Along: on the plate, from the pivot. Aft and up: on the boat, from the pivot. */
export type BoardMovesRecord =
  | {
      readonly kind: 'turns';
      readonly massAlong_m: number;
      /** above the line along the plate, where it lies level */
      readonly massSquare_m: number;
      readonly attachedAlong_m: number;
      readonly attachedSquare_m: number;
      readonly leadAft_m: number;
      readonly leadUp_m: number;
      /** below level, all the way down */
      readonly down_deg: number;
      readonly up_deg: number;
    }
  | {
      readonly kind: 'slides';
      readonly travel_m: number;
      /** of its top, all the way down; below the water: minus */
      readonly topAboveWater_m: number;
      /** of the wire from the middle of the plate, fore and aft */
      readonly offMiddle_m: number;
      /** of its length that the case still holds, all the way down */
      readonly held_m: number;
    };

/** A wire or a rope, and how its end is made. */
export interface LineRecord {
  readonly of: BoardLine;
  readonly size_mm: number;
  /** null: not said */
  readonly ending: LineEnding | null;
}

export interface TackleRecord extends Reeving {
  readonly bearing: SheaveBearing;
}

/** A small drum winch with a crank. */
export interface WinchRecord {
  /** turns of the crank to one of the drum */
  readonly gear: number;
  readonly handle_mm: number;
  readonly drum_mm: number;
  readonly width_mm: number;
  /** what lies on it when the board is all the way down */
  readonly woundWhenDown_m: number;
}

export interface BoardHoistRecord {
  readonly name: string;
  readonly zone: Id | null;
  readonly plate: PlateRecord;
  readonly moves: BoardMovesRecord;
  /** from the board to the first tackle, or to the hand */
  readonly wire: LineRecord;
  /** blocks it turns over on the way */
  readonly leads: {
    readonly count: number;
    readonly bearing: SheaveBearing;
    /** at the bottom of the groove; null: not measured */
    readonly sheave_mm: number | null;
  };
  /** the first on the wire, each other on the fall of the one before */
  readonly tackles: readonly TackleRecord[];
  /** rove through the last tackle; null: there is no tackle */
  readonly cord: LineRecord | null;
  /** what comes last is wound on it; null: it comes to hand */
  readonly winch: WinchRecord | null;
  readonly note: string;
}

/** Fixed. What the hand was seen to pull, with what was foretold of it at that moment. */
export interface HoistForceRecord {
  readonly hoist: Id;
  readonly at: At;
  readonly handling: Exclude<Handling, 'holding'>;
  /** of the wire hauled in, all the way down 0; null: where it pulled hardest */
  readonly hauled_pct: number | null;
  /** whether she lay on the trailer or afloat */
  readonly in: 'air' | 'sea';
  /** on the fall, or at the crank */
  readonly hand_N: number;
  readonly foretold_N: number;
  /** what it was read with */
  readonly with: string;
  readonly note: string;
  /** set when it is put in the book */
  readonly order?: number;
}
