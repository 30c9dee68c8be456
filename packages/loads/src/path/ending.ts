import { bendShares, endingShares, type PrintedShare } from '../../tables/endings.read-2026-11.ts';

export type Ending = keyof typeof endingShares;

/** What an ending leaves of the rope or wire, as the source prints it that leaves least. */
export function lowestShare(ending: Ending): PrintedShare {
  const shares: readonly PrintedShare[] = endingShares[ending].shares;
  return shares.reduce((least, each) => (each.share_pct < least.share_pct ? each : least));
}

/** Share of the rope or wire that an ending leaves: the lowest printed. 0 to 1 */
export const endingShare = (ending: Ending): number => lowestShare(ending).share_pct / 100;

/**
 * Share of its strength wire keeps over a sheave or pin; between two printed ratios the lower share.
 *
 * @param ratio  diameter of sheave or pin over diameter of the wire. > 0
 * @returns      0 to 1, or null below the table: wire is not bent round less than itself
 */
export function bendShare(ratio: number): number | null {
  const found = bendShares.find((each) => ratio >= each.ratio - 1e-9);
  return found ? found.share_pct / 100 : null;
}
