/** What can be done about a jury rig, and the sheet it is done in. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { RigsOfBook, RigTrust } from '#reckoning';
import { onDemand } from '../../parts/on-demand.tsx';
import { address } from '../../shell/route.ts';

const JuryRigSheet = onDemand(() => import('./jury-rig-sheet.tsx'));
const TrustSheet = onDemand(() => import('./trust-sheet.tsx'));
const RigOutSheet = onDemand(() => import('./rig-out-sheet.tsx'));

/** `book` is null until it is there: a sheet asked for meanwhile opens then. */
export function RigActs({
  jobs,
  book,
  today,
  trust: { id, rig, jobClosed },
  here,
}: {
  readonly jobs: RigsOfBook['jobs'];
  readonly book: Book | null;
  readonly today: string;
  readonly trust: RigTrust;
  /** the job whose page this is: it needs no way to itself */
  readonly here?: Id;
}) {
  const [open, setOpen] = useState<'change' | 'trust' | 'out' | null>(null);
  const close = () => setOpen(null);
  const job = rig.job === null || rig.job === here ? undefined : jobs[rig.job];
  return (
    <>
      {job && rig.job !== null && (
        <a className="button words" href={address('work', 'job', rig.job)}>
          {jobClosed ? 'See its job' : 'Do the job'}
          <span className="unseen">: {job.title}</span>
        </a>
      )}
      {(
        [
          ['out', 'It is out'],
          ['trust', 'Trust it anew'],
          ['change', 'Change'],
        ] as const
      ).map(([sheet, words]) => (
        <button
          key={sheet}
          type="button"
          className="words"
          aria-label={`${words}: ${rig.title}`}
          onClick={() => setOpen(sheet)}
        >
          {words}
        </button>
      ))}
      {open && book !== null && (
        <>
          {open === 'trust' && <TrustSheet book={book} today={today} id={id} onClose={close} />}
          {open === 'change' && <JuryRigSheet book={book} today={today} id={id} onClose={close} />}
          {open === 'out' && <RigOutSheet book={book} id={id} onClose={close} />}
        </>
      )}
    </>
  );
}
