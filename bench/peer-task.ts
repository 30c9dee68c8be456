/** What one run of ours or of the general solver is asked, and what it tells. */
import type { Worth } from '#workplan';

export type PeerTask = {
  readonly who: 'ours' | 'solver';
  readonly seconds: number;
  /** when to note how good the answer at hand is. [s] of searching */
  readonly notedAt_s: readonly number[];
} & (
  | { readonly kind: 'plain'; readonly file: string; readonly hint: number }
  | { readonly kind: 'keeper'; readonly size: number; readonly seed: number }
);

export interface PeerResult {
  /** worth of the answer at hand after so many seconds; null: none yet. Of the plain case only the finish counts */
  readonly noted: readonly (Pick<Worth, 'missed' | 'weight' | 'setUp_min' | 'lastFinish'> | null)[];
  readonly proved: boolean;
  /** [s] of processor time; 0 for ours */
  readonly compile_s: number;
  readonly search_s: number;
  /** most memory of the process. [MB] */
  readonly memory_MB: number;
  /** rules broken by any noted plan */
  readonly violations: number;
  /** why there is no more to tell; null where it ran its time or ended with a proof */
  readonly because: string | null;
}
