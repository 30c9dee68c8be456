/** The temporary fixes that stand. Past its trust, or standing in for a danger: seen before anything else. */
import { Suspense, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { dateInWords, daysAway } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.ts';
import { limitsInWords, type RigTrust, seenFirst, standingRigs } from '../../reading/jury-rig-trust.ts';
import type { RigsAndJobs } from '../../reading/work-shown.ts';
import { address } from '../../shell/route.ts';

const JuryRigSheet = onDemand(() => import('./jury-rig-sheet.tsx'));
const TrustSheet = onDemand(() => import('./trust-sheet.tsx'));

/** `book` is null until it is there: a sheet asked for meanwhile opens then. */
export function JuryRigs({
  rigs,
  book,
  today,
}: {
  readonly rigs: RigsAndJobs;
  readonly book: Book | null;
  readonly today: string;
}) {
  const standing = standingRigs(rigs, today);
  const [open, setOpen] = useState<{ readonly sheet: 'change' | 'trust'; readonly id: Id } | null>(null);
  if (standing.length === 0) return null;
  const first = standing.filter(seenFirst);
  const rest = standing.filter((trust) => !seenFirst(trust));
  const line = (trust: RigTrust) => (
    <RigLine
      key={trust.id}
      rigs={rigs}
      today={today}
      trust={trust}
      onOpen={(sheet) => setOpen({ sheet, id: trust.id })}
    />
  );
  return (
    <section className="work-rigs" aria-labelledby="work-rigs">
      <h2 id="work-rigs">Jury rigs</h2>
      {first.length > 0 && <ul className="work-rigs-first">{first.map(line)}</ul>}
      {rest.length > 0 && <ul>{rest.map(line)}</ul>}
      {open && book !== null && (
        <Suspense fallback={null}>
          {open.sheet === 'trust' ? (
            <TrustSheet book={book} today={today} id={open.id} onClose={() => setOpen(null)} />
          ) : (
            <JuryRigSheet book={book} today={today} id={open.id} onClose={() => setOpen(null)} />
          )}
        </Suspense>
      )}
    </section>
  );
}

function RigLine({
  rigs,
  today,
  trust,
  onOpen,
}: {
  readonly rigs: RigsAndJobs;
  readonly today: string;
  readonly trust: RigTrust;
  readonly onOpen: (sheet: 'change' | 'trust') => void;
}) {
  const { rig, daysPast, forDanger, jobClosed } = trust;
  const job = rig.job === null ? undefined : rigs.jobs[rig.job];
  const limits = limitsInWords(rig);
  return (
    <MarkedLine
      mark={seenFirst(trust) ? 'danger' : 'jury rig'}
      title={
        <>
          {rig.title}
          {daysPast > 0 && <span className="work-past"> past its trust</span>}
        </>
      }
      note={
        <>
          {daysPast > 0
            ? `Trusted until ${dateInWords(rig.trustedUntil, today)}, ${daysAway(rig.trustedUntil, today)}.`
            : `Trusted until ${dateInWords(rig.trustedUntil, today)}, ${daysAway(rig.trustedUntil, today)}${limits.length > 0 ? `: ${limits.join(', ')}` : ''}.`}{' '}
          {forDanger && <b>Stands in for a danger to people. </b>}
          {jobClosed && 'Its job is closed: take it out. '}
          {rig.reason}
        </>
      }
    >
      {job && rig.job !== null && (
        <a className="button words" href={address('work', 'job', rig.job)}>
          {jobClosed ? 'See its job' : 'Do the job'}
          <span className="unseen">: {job.title}</span>
        </a>
      )}
      <button
        type="button"
        className="words"
        aria-label={`Trust it longer: ${rig.title}`}
        onClick={() => onOpen('trust')}
      >
        Trust it longer
      </button>
      <button type="button" className="words" aria-label={`Change: ${rig.title}`} onClick={() => onOpen('change')}>
        Change
      </button>
    </MarkedLine>
  );
}
