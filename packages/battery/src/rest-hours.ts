import { requireBetween } from './table-value.ts';

export type LastUse = 'charge' | 'load';

/**
 * Hours a lead battery stands before its volts are rested. After charge: 6 or more (a list's advice), 20 (a hobby note), 24
 * (trade practice); after a load: 1 (the same list).
 */
export const restHours: Readonly<
  Record<LastUse, { readonly least_h: number; readonly note_h: number | null; readonly cautious_h: number }>
> = {
  charge: { least_h: 6, note_h: 20, cautious_h: 24 },
  load: { least_h: 1, note_h: null, cautious_h: 1 },
};

/** One owner's log: hours off charge and volts of a 35 Ah sealed battery, charged at 1 A for 12 h to 15.0 V. donsnotes.com */
const log: readonly (readonly [hours: number, volts: number])[] = [
  [1 / 60, 14.4],
  [0.25, 14.1],
  [1, 13.6],
  [5, 13.2],
  [720, 12.9],
];

/**
 * How far volts stand over their rest after a charge, by that log. [V]
 *
 * @param hours  since the charge ended. [h], over 0 to 2000; between the log's rows on the logarithm of the hours
 */
export function excessAfterCharge_V(hours: number): { readonly read_V: number; readonly over_V: number } {
  requireBetween('hours since the charge', hours, 1e-3, 2000, 'h');
  const settled = log.at(-1)![1];
  const x = Math.min(720, Math.max(1 / 60, hours));
  let i = 1;
  while (i < log.length - 1 && x > log[i]![0]) i++;
  const [h0, v0] = log[i - 1]!;
  const [h1, v1] = log[i]!;
  const read_V = v0 + (Math.log(x / h0) / Math.log(h1 / h0)) * (v1 - v0);
  return { read_V, over_V: read_V - settled };
}
