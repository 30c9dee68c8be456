/** Standard ratings that are sold for boats, in A: blades to 40, bolted from there. */
export const fuseRatings_A = [
  1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 80, 100, 125, 150, 175, 200, 250, 300,
];

/** Colours of blade fuses (ISO 8820-3). Those of 3, 7.5, 10, 15 and 30 A were read, the others are recalled. */
export const bladeColours: Readonly<Record<number, string>> = {
  1: 'black',
  2: 'grey',
  3: 'violet',
  5: 'tan',
  7.5: 'brown',
  10: 'red',
  15: 'blue',
  20: 'yellow',
  25: 'clear',
  30: 'green',
  35: 'blue-green',
  40: 'orange',
};

/** A fuse runs at most at four fifths of its rating. */
export const loadShare = 1.25;

/** Way from the battery or bus bar to the fuse, at most. [m] */
export const fuseReach_m = { open: 0.2, sheathed: 1.8 } as const;

export type FuseFound =
  | { readonly kind: 'fits'; readonly rating_A: number; readonly least_A: number }
  | { readonly kind: 'none fits'; readonly least_A: number; readonly next_A: number };

/**
 * The fuse for a load and the smallest conductor after it: the next standard rating at or above 1.25 × the load, and not above
 * what that conductor may carry.
 */
export function fuseFor(load_A: number, capacity_A: number): FuseFound {
  const least_A = loadShare * load_A;
  const next_A = fuseRatings_A.find((rating) => rating >= least_A - 1e-9) ?? Number.POSITIVE_INFINITY;
  return next_A <= capacity_A + 1e-9
    ? { kind: 'fits', rating_A: next_A, least_A }
    : { kind: 'none fits', least_A, next_A };
}

/** The greatest standard rating not above a current; null: none so small. */
export const greatestFuse_A = (capacity_A: number): number | null =>
  fuseRatings_A.findLast((rating) => rating <= capacity_A + 1e-9) ?? null;

/** Kinds of fuse and the current each can break at 12 V. Recalled: the maker's sheet decides. */
export const fuseKinds = {
  glass: { title: 'glass tube', breaks_A: 200 },
  blade: { title: 'blade', breaks_A: 1000 },
  strip: { title: 'bolted strip', breaks_A: 2000 },
  block: { title: 'block on the battery terminal', breaks_A: 10_000 },
  cartridge: { title: 'sand-filled cartridge, class T', breaks_A: 20_000 },
} as const;
export type FuseKind = keyof typeof fuseKinds;

export const batteryKinds = ['flooded', 'agm', 'gel', 'lifepo4'] as const;
export type BatteryKind = (typeof batteryKinds)[number];

/** Resistance × size of a new, warm, full 12 V battery, the least that is likely. Our assumption. [mΩ·Ah] */
const leastResistance: Readonly<Record<BatteryKind, number>> = { flooded: 200, agm: 120, gel: 180, lifepo4: 90 };

/** Current into a dead short at the terminals, the greatest that is likely: charged volts over the least resistance. [A] */
export function faultCurrent_A(battery: BatteryKind, capacity_Ah: number, nominal_V: number): number {
  const volts = (battery === 'lifepo4' ? 13.6 : 12.9) * (nominal_V / 12);
  const milliohm = (leastResistance[battery] / capacity_Ah) * (nominal_V / 12);
  return (volts / milliohm) * 1000;
}

/** The kind of fuse that breaks a fault current, the simplest that does; null: none of the list. */
export const fuseThatBreaks = (fault_A: number): FuseKind | null =>
  (['blade', 'strip', 'block', 'cartridge'] as const).find((kind) => fuseKinds[kind].breaks_A >= fault_A) ?? null;
