/** The temporary fixes that stand. Past its trust, or standing in for a danger: seen before anything else. */
import type { Book } from '#boat-book';
import { isPastTrust, type RigsOfBook, type RigTrust, rigHistory, seenFirst, standingRigs } from '#reckoning';
import { dateInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { trustInWords } from '../../reading/rig-in-words.ts';
import { RigActs } from './rig-acts.tsx';

/** `book` is null until it is there: a sheet asked for meanwhile opens then. */
export function JuryRigs({
  rigs,
  book,
  today,
}: {
  readonly rigs: RigsOfBook;
  readonly book: Book | null;
  readonly today: string;
}) {
  const standing = standingRigs(rigs, today);
  if (standing.length === 0) return null;
  const first = standing.filter(seenFirst);
  const rest = standing.filter((trust) => !seenFirst(trust));
  const line = (trust: RigTrust) => <RigLine key={trust.id} rigs={rigs} book={book} today={today} trust={trust} />;
  return (
    <section className="work-rigs" aria-labelledby="work-rigs">
      <h2 id="work-rigs">Jury rigs</h2>
      {first.length > 0 && <ul className="work-rigs-first">{first.map(line)}</ul>}
      {rest.length > 0 && <ul>{rest.map(line)}</ul>}
    </section>
  );
}

function RigLine({
  rigs,
  book,
  today,
  trust,
}: {
  readonly rigs: RigsOfBook;
  readonly book: Book | null;
  readonly today: string;
  readonly trust: RigTrust;
}) {
  const { id, rig, forDanger, jobClosed } = trust;
  const again = rigHistory(rigs, id).slice(1).at(-1);
  return (
    <MarkedLine
      mark={seenFirst(trust) ? 'danger' : 'jury rig'}
      title={
        <>
          {rig.title}
          {isPastTrust(trust) && <span className="work-past"> past its trust</span>}
        </>
      }
      note={
        <>
          {trustInWords(trust, today)} {forDanger && <b>Stands in for a danger to people. </b>}
          {jobClosed && 'Its job is closed: take it out. '}
          {rig.reason} {again && `Trusted anew on ${dateInWords(again.on, today)}: ${again.reason}`}
        </>
      }
    >
      <RigActs jobs={rigs.jobs} book={book} today={today} trust={trust} />
    </MarkedLine>
  );
}
