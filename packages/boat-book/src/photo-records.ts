/** The photographs of a boat book, as plain values. The pictures themselves are blobs outside the documents. */
import type { At, Id } from './records.ts';

/** Fixed. One photograph: what it shows, and which blob it is. It names at least one of job, step, fitting and entry. */
export interface PhotoRecord {
  /** SHA-256 of the blob, a JPEG file that says nothing of where it was taken */
  readonly blob: string;
  /** of the blob */
  readonly bytes: number;
  readonly width_px: number;
  readonly height_px: number;
  readonly taken: At;
  readonly job: Id | null;
  /** a step of that job */
  readonly step: Id | null;
  readonly fitting: Id | null;
  /** an entry of the log */
  readonly entry: Id | null;
  /** of the work: as it was found, as it was left, or what shows that it holds; null: none of them */
  readonly shows: 'before' | 'after' | 'proof' | null;
  readonly words: string;
  /** where it was taken, only where the keeper wanted that kept; null: taken out of the photograph, or never in it */
  readonly position: { readonly latitude_deg: number; readonly longitude_deg: number } | null;
  /** set when it is put in the book */
  readonly order?: number;
}
