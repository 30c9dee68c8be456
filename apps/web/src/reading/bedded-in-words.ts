/** What a fitting is bedded with, and since when. */
import type { Fitting } from '#boat-book';
import { dateInWords } from '../parts/in-words.ts';

/** `bedded with butyl tape on 3 May`; null: nobody wrote it down */
export function beddedInWords({ beddedWith, bedding }: Fitting, today: string): string | null {
  if (beddedWith === '') return null;
  // words put right by hand afterwards are no longer what was written down on that day
  const dated = bedding && bedding.product === beddedWith ? ` on ${dateInWords(bedding.on, today)}` : '';
  return `bedded with ${beddedWith}${dated}`;
}
