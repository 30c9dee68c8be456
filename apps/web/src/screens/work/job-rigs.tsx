import type { Book, Id } from '#boat-book';
import { dateInWords } from '../../parts/in-words.ts';
import { Mark } from '../../parts/mark.tsx';
import { limitsInWords, seenFirst, standingRigs } from '../../reading/jury-rig-trust.ts';

/** The jury rigs that stand in for this job. */
export function JobRigs({ book, job, today }: { readonly book: Book; readonly job: Id; readonly today: string }) {
  const rigs = standingRigs(book, today).filter(({ rig }) => rig.job === job);
  return rigs.map((trust) => (
    <p key={trust.id} className={seenFirst(trust) ? 'job-rig job-rig-first' : 'job-rig'}>
      <Mark of={seenFirst(trust) ? 'danger' : 'jury rig'} /> Until then a jury rig: <b>{trust.rig.title}</b>,{' '}
      {trust.daysPast > 0 ? 'past its trust since' : 'trusted until'} {dateInWords(trust.rig.trustedUntil, today)}
      {limitsInWords(trust.rig).length > 0 && `, ${limitsInWords(trust.rig).join(', ')}`}.
    </p>
  ));
}
