import type { Book, Id } from '#boat-book';
import { isPastTrust, seenFirst, standingRigs } from '#reckoning';
import { Mark } from '../../parts/mark.tsx';
import { trustInWords } from '../../reading/rig-in-words.ts';
import { RigActs } from './rig-acts.tsx';

/** The jury rigs that stand in for this job. */
export function JobRigs({ book, job, today }: { readonly book: Book; readonly job: Id; readonly today: string }) {
  const rigs = standingRigs(book, today).filter(({ rig }) => rig.job === job);
  return rigs.map((trust) => (
    <div key={trust.id} className={seenFirst(trust) ? 'job-rig job-rig-first' : 'job-rig'}>
      <p>
        <Mark of={seenFirst(trust) ? 'danger' : 'jury rig'} /> Until then a jury rig: <b>{trust.rig.title}</b>
        {isPastTrust(trust) && ', past its trust'}. {trustInWords(trust, today)}
      </p>
      <div className="job-rig-acts">
        <RigActs jobs={book.jobs} book={book} today={today} trust={trust} here={job} />
      </div>
    </div>
  ));
}
