/** Jury rigs past their trust, on the day itself: the first thing seen, before any work is begun. */
import type { Book } from '#boat-book';
import { isPastTrust, standingRigs } from '#reckoning';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { trustInWords } from '../../reading/rig-in-words.ts';
import { todayAt } from '../../reading/today.ts';
import { RigActs } from '../work/rig-acts.tsx';

export function RigsPast({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const past = standingRigs(book, today).filter(isPastTrust);
  if (past.length === 0) return null;
  return (
    <ul className="days-rigs" aria-label="Jury rigs past their trust">
      {past.map((trust) => (
        <MarkedLine
          key={trust.id}
          mark="danger"
          title={
            <>
              {trust.rig.title} <span className="days-past">past its trust</span>
            </>
          }
          note={trustInWords(trust, today)}
        >
          <RigActs jobs={book.jobs} book={book} today={today} trust={trust} />
        </MarkedLine>
      ))}
    </ul>
  );
}
