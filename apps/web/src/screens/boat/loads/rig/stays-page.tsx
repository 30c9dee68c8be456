/** The boat's stays, each with how taut it was last found; and the page of one. */
import { useMemo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { stayInWords, staysOfBook } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { address } from '../../../../shell/route.ts';
import './rig.css';
import { StayBar } from './stay-bar.tsx';
import { StayPage } from './stay-page.tsx';

const StaySheet = onDemand(() => import('./stay-sheet.tsx'));

export default function StaysPage({ id }: { readonly id: Id | undefined }) {
  const book = useOpenBook();
  if (id !== undefined) return <StayPage book={book} id={id} />;
  return (
    <>
      <h1>Stays</h1>
      <BelowHeading>
        <StaysBelow book={book} />
      </BelowHeading>
    </>
  );
}

function StaysBelow({ book }: { readonly book: Book }) {
  const [adding, setAdding] = useState(false);
  const { stays, stayReadings } = book;
  const told = useMemo(
    () =>
      staysOfBook({ stays, stayReadings }).map((stay) => ({
        id: stay.id,
        name: stay.record.name,
        aim_pct: stay.record.aim_pct,
        last: stay.readings.at(-1),
        words: stayInWords(stay),
      })),
    [stays, stayReadings],
  );
  const slackening = told.filter(({ words }) => words.next.some(({ gravity }) => gravity === 'worsens'));
  return (
    <>
      <p className="loads-verdict">
        {told.length === 0
          ? 'No stay is in the book yet.'
          : slackening.length === 0
            ? 'No stay is seen to slacken.'
            : `${slackening.map(({ name }) => name).join(', ')}: slackening.`}
      </p>
      {told.length === 0 && (
        <p>
          Put one in with its wire and length. Read it when it is set, before the mast comes down and when it is up
          again: what goes slack by itself shows.
        </p>
      )}
      <section aria-label="Stays">
        <ul>
          {told.map(({ id: stay, name, aim_pct, last, words }) => (
            <MarkedLine
              key={stay}
              mark={words.next.some(({ gravity }) => gravity === 'worsens') ? 'worsens' : null}
              said="gets worse"
              href={address('boat', 'loads', 'stays', stay)}
              title={name}
              note={words.now}
            >
              {last !== undefined && <StayBar reading={last} aim_pct={aim_pct} />}
            </MarkedLine>
          ))}
        </ul>
        {told.some(({ last }) => last !== undefined) && (
          <p className="soft small">
            Lines: percent of breaking load. Shaded: what cap shrouds are set to; dashed: what this one is to be set to.
          </p>
        )}
        <div className="boat-acts">
          <button type="button" onClick={() => setAdding(true)}>
            Add a stay
          </button>
        </div>
      </section>
      {adding && <StaySheet book={book} id={null} onClose={() => setAdding(false)} />}
    </>
  );
}
