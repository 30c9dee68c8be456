/** The papers that are kept with a boat, as plain values. What was scanned or sent is a blob outside the documents. */
import type { At, Day, Id } from './records.ts';

/** A paper: registration, insurance, a manual, a receipt. Its blob never changes; a newer one is a paper of its own. */
export interface PaperRecord {
  readonly title: string;
  readonly kind: 'registration' | 'insurance' | 'manual' | 'receipt' | 'survey' | 'other';
  /** SHA-256 of the blob */
  readonly blob: string;
  /** of the blob */
  readonly bytes: number;
  readonly type: 'application/pdf' | 'image/jpeg' | 'image/png' | 'text/plain';
  /** the name of the file it came from */
  readonly file: string;
  readonly added: At;
  /** the last day it is good for; null: it does not run out, or that is not said */
  readonly expires: Day | null;
  /** what it is about; null: the boat as a whole */
  readonly fitting: Id | null;
  readonly job: Id | null;
  readonly note: string;
}
