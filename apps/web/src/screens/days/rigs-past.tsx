/** Jury rigs past their trust, on the day itself: the first thing seen, before any work is begun. */
import type { Book } from '#boat-book';
import { isPastTrust, type RigTrust, standingRigs } from '#reckoning';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { trustInWords } from '../../reading/rig-in-words.ts';
import { todayAt } from '../../reading/today.ts';
import { RigActs } from '../work/rig-acts.tsx';

export const rigsPast = (book: Book, today: string): readonly RigTrust[] =>
  standingRigs(book, today).filter(isPastTrust);

/** @param past  the rigs past their trust, where they are known already */
export function RigsPast({ book, past: known }: { readonly book: Book; readonly past?: readonly RigTrust[] }) {
  const today = todayAt(book);
  const past = known ?? rigsPast(book, today);
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
