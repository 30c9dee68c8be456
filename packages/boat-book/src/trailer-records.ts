/** The records of the road trailer and of all that stands on it. Plain values, as in `records.ts`. */
import type { At, Day, Id } from './records.ts';

/** A mass as far as it is known. */
export interface MassBand {
  readonly low_kg: number;
  readonly likely_kg: number;
  readonly high_kg: number;
}

/** What presses on the road through one axle, or two close together. Places are from the axle, forward counted up. */
export interface TrailerRecord {
  readonly name: string;
  readonly zone: Id | null;
  /** from the axle to the ball; on two axles from half way between them */
  readonly ballAhead_m: number;
  readonly axles: 1 | 2;
  readonly braked: boolean;
  /** with nothing on it */
  readonly emptyMass: MassBand;
  readonly emptyPlace:
    | { readonly kind: 'ball weighed'; readonly ball_kg: number; readonly give_kg: number }
    | { readonly kind: 'centre'; readonly ahead_m: number; readonly give_m: number };
  /** of her stem ahead of the axle; null: not measured */
  readonly stemAhead_m: number | null;
  /** a wheel over its tyre; null: not measured */
  readonly wheel_m: number | null;
  /** how far the bow post, and she with it, can be set aft and forward of where it is; null: not at all, or not looked at */
  readonly boatMoves: { readonly aft_m: number; readonly forward_m: number } | null;

  // from the papers and plates; null: not entered
  readonly carBall_kg: number | null;
  readonly barBall_kg: number | null;
  readonly couplingBall_kg: number | null;
  readonly gross_kg: number | null;
  readonly axle_kg: number | null;
  /** what car and trailer may weigh together */
  readonly train_kg: number | null;
  readonly carKerb_kg: number | null;
  /** the car as laden on the day */
  readonly carLaden_kg: number | null;
  /** the day the papers were read; null: not said */
  readonly limitsRead: Day | null;
  /** whose advice on the share of the ball is gone by */
  readonly advice: 'uk' | 'us';

  /** null: not looked at */
  readonly tyres: TyresRecord | null;
  /** the fastest she is towed; null: not said */
  readonly towed_km_h: number | null;

  /** µ between hull and what she stands on; null: not known, and nothing is counted on */
  readonly friction: number | null;
  /** what the bow post and its chock bear; null: not known */
  readonly post_N: number | null;
  /** the board rests on the trailer on the road, and does not hang on its wire; null: not looked at */
  readonly boardRests: boolean | null;
  readonly lashings: readonly LashingRecord[];
  readonly note: string;
}

export interface TyresRecord {
  /** as it stands on the wall: `155/70 R12` */
  readonly size: string;
  /** on the road, the spare not counted */
  readonly count: number;
  /** null: not read */
  readonly loadIndex: number | null;
  readonly speed: string | null;
  /** cold, as it was found and as it is asked for at this load; null: not read */
  readonly pressure_kPa: number | null;
  readonly asked_kPa: number | null;
  readonly wheels: readonly {
    readonly wheel: string;
    readonly spare: boolean;
    /** the last figures of the code that begins with DOT, as typed; null: not read */
    readonly code: string | null;
    readonly tread_mm: number | null;
  }[];
  readonly readOn: Day;
}

/** One lashing of the boat on her trailer; the winch line is written down so that it is seen not to count. */
export interface LashingRecord {
  readonly id: Id;
  readonly name: string;
  readonly kind: 'strap' | 'winch line';
  /** which way it holds her from going */
  readonly holds: 'forward' | 'sideways' | 'rearward';
  /** lashing capacity, straight, from its label; null: it has none that can be read */
  readonly capacity_N: number | null;
  readonly above_deg: number;
  readonly aside_deg: number;
  /** what the place on the hull may bear; null: not known, and it counts for nothing */
  readonly hull_N: number | null;
}

/** A thing with a mass on the trailer: the hull, the board, the battery, a tank. */
export interface CarriedRecord {
  readonly trailer: Id;
  readonly name: string;
  /** in or on the boat, so that it goes where she goes; or on the trailer itself */
  readonly rides: 'boat' | 'trailer';
  readonly mass: MassBand;
  readonly massFrom: 'weighed' | 'its maker' | 'guessed';
  /** its middle ahead of the axle, and how far off that may be */
  readonly ahead_m: number;
  readonly give_m: number;
  /** its middle above the road; null: not measured */
  readonly up_m: number | null;
  /** how far aft and forward it can be put, from the axle; null: it stays where it is */
  readonly moves: { readonly aftmost_m: number; readonly foremost_m: number } | null;
  /** it comes along on the road */
  readonly aboard: boolean;
  /** the board of this hoist: what that says of its mass counts; null: none */
  readonly hoist: Id | null;
  /** it is this battery; null: none */
  readonly battery: Id | null;
  readonly note: string;
}

/** Fixed. The ball load by a bathroom scale and a beam, with what stood on the trailer then. */
export interface BallWeighing {
  readonly trailer: Id;
  readonly at: At;
  /** under the far end of the beam, the beam’s own share taken off */
  readonly scale_kg: number;
  /** from the block to where the coupling presses, and to the scale */
  readonly arm_mm: number;
  readonly beam_mm: number;
  /** the table’s own answer at that moment */
  readonly told_kg: number;
  /** all that stood on it, the trailer itself without an id: what each added to the ball, and how far off that may be */
  readonly stood: readonly {
    readonly carried: Id | null;
    readonly name: string;
    readonly mass_kg: number;
    readonly ahead_m: number;
    readonly ball_kg: number;
    readonly give_kg: number;
  }[];
  readonly note: string;
  /** set when it is put in the book */
  readonly order?: number;
}
