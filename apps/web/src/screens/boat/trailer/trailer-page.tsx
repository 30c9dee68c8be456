/** The trailer: what presses on ball and axle, drawn as a balance, what is wrong with it, and what to move. */
import { useState } from 'react';
import type { Id } from '#boat-book';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dayInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import './trailer.css';
import { TrailerView } from './trailer-view.tsx';

const TrailerSheet = onDemand(() => import('./trailer-sheet.tsx'));

export default function TrailerPage({ id }: { readonly id: Id | undefined }) {
  const book = useOpenBook();
  const today = todayAt(book);
  const [adding, setAdding] = useState(false);
  const ids = Object.keys(book.trailers);
  const shown = id ?? (ids.length === 1 ? ids[0] : undefined);
  const record = shown === undefined ? undefined : book.trailers[shown];
  return (
    <div className="boat trailer">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat')}>
          ‹ Boat
        </a>
      </p>
      {shown !== undefined && record ? (
        <>
          <h1>{record.name}</h1>
          <BelowHeading>
            <p className="paper-only trailer-of">
              {book.boat.name}, {dayInWords(today, today)} {today.slice(0, 4)}
            </p>
            <TrailerView key={shown} book={book} id={shown} record={record} today={today} />
          </BelowHeading>
        </>
      ) : (
        <>
          <h1>The trailer</h1>
          {id !== undefined && <p>That one is not in the book any more.</p>}
          <ul>
            {ids.map((each) => (
              <MarkedLine
                key={each}
                href={address('boat', 'trailer', each)}
                title={book.trailers[each]!.name}
                note="ball load, axle, tyres, lashings"
              />
            ))}
          </ul>
          {ids.length === 0 && (
            <p>
              What presses on the ball and on the axle, against the limits of car, bar and coupling: put in the trailer,
              measured, with what stands in its papers, then the boat and what is in her.
            </p>
          )}
          <p>
            <button type="button" className="main" onClick={() => setAdding(true)}>
              Put in a trailer
            </button>
          </p>
        </>
      )}
      {adding && <TrailerSheet book={book} id={null} today={today} onClose={() => setAdding(false)} />}
    </div>
  );
}
