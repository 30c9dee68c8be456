import { shortLinks } from '../../tables/chain-links.read-2026-11.ts';
import { inchThreads } from '../../tables/threads.read-2026-11.ts';
import { requiredCell, screwNames, screwSize_mm } from './size-cell.ts';

/** A screw thread as it is laid on its comb. */
export interface GaugeThread {
  readonly name: string;
  readonly size_mm: number;
  readonly pitch_mm: number;
}

/** What the gauge card draws at its true size. */
export interface GaugeCard {
  /** pins, wire, rope and rod laid on a bar as wide as they are thick. [mm] */
  readonly bars_mm: readonly number[];
  /** pins stood on end, and eyes laid over: shackle pins, clevis pins, thimbles, holes. [mm] */
  readonly rounds_mm: readonly number[];
  /** a wedge that grows from the first width to the second over its length. [mm] */
  readonly wedge: { readonly from_mm: number; readonly to_mm: number; readonly length_mm: number };
  readonly threads: readonly GaugeThread[];
  /** tongues that fit the groove of a sheave or a thimble, by the rope or wire it is for */
  readonly tongues: readonly { readonly rope_mm: number; readonly width_mm: number }[];
  readonly links: typeof shortLinks;
}

/** A groove is a tenth wider than what lies in it. Rule of the trade for rope; wire-rope books take 6 to 10 % (recalled). */
const assumedGrooveOver = 1.1;

/** Everything the card draws; sizes that are met on small boats. */
export function gaugeCard(): GaugeCard {
  return {
    bars_mm: [2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16],
    rounds_mm: [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16],
    wedge: { from_mm: 0, to_mm: 20, length_mm: 160 },
    threads: [
      ...screwNames.map((name) => ({
        name,
        size_mm: screwSize_mm(name),
        pitch_mm: requiredCell('pitch', name).value,
      })),
      ...inchThreads.map(({ name, size_mm, perInch }) => ({ name, size_mm, pitch_mm: 25.4 / perInch })),
    ],
    tongues: [3, 4, 5, 6, 8, 10, 12].map((rope_mm) => ({ rope_mm, width_mm: assumedGrooveOver * rope_mm })),
    links: shortLinks,
  };
}

/** What a printed card is worth, by its two check lines. */
export type CardScale =
  | { readonly kind: 'true'; readonly across: number; readonly down: number }
  | { readonly kind: 'scaled'; readonly across: number; readonly down: number; readonly printAt_pct: number }
  | { readonly kind: 'drawn out'; readonly across: number; readonly down: number };

/** How long the two check lines of the card are. [mm] */
export const checkLines = { across_mm: 150, down_mm: 200 } as const;

/** Four tenths of a millimetre in 100: what a steel rule and an eye are out by on lines this long. Ours. */
const assumedTrue_share = 0.004;

/**
 * What a print is worth: true, all of it bigger or smaller, or drawn out one way, which no setting mends.
 *
 * @param across_mm  the check line across, measured on the print. > 0
 * @param down_mm    the check line down. > 0
 * @returns          each over its true length, and the setting that mends a print that is off both ways alike. [%]
 */
export function cardScale(across_mm: number, down_mm: number): CardScale {
  const across = across_mm / checkLines.across_mm;
  const down = down_mm / checkLines.down_mm;
  if (Math.abs(across - 1) <= assumedTrue_share && Math.abs(down - 1) <= assumedTrue_share)
    return { kind: 'true', across, down };
  if (Math.abs(across / down - 1) > 2 * assumedTrue_share) return { kind: 'drawn out', across, down };
  return { kind: 'scaled', across, down, printAt_pct: (100 * 2) / (across + down) };
}
