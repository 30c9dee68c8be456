/** What of the boat falls due before an outing is over. */
import { useMemo } from 'react';
import type { Book, Outing } from '#boat-book';
import { dueBefore, duesOfBook, dueWhen } from '#reckoning';
import { countInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { address } from '../../../shell/route.ts';

export default function OutingDues({
  book,
  today,
  outing,
}: {
  readonly book: Book;
  readonly today: string;
  readonly outing: Outing;
}) {
  const dues = useMemo(() => duesOfBook(book, today), [book, today]);
  const { due, mayBe, unknown } = dueBefore(dues, outing);
  return (
    <>
      {due.length > 0 && (
        <>
          <h3>Falls due before it is over</h3>
          <ul>
            {due.map((dueOf) => (
              <MarkedLine
                key={dueOf.id}
                mark={dueOf.due.consequence}
                href={address('go', 'dues', dueOf.id)}
                title={dueOf.due.title}
                note={`${dueWhen(dueOf, today)}${dueOf.job === null ? '' : ' Its job stands under Work.'}`}
              />
            ))}
          </ul>
        </>
      )}
      <p className="small">
        {countInWords(dues.length, 'thing')} that {dues.length === 1 ? 'comes' : 'come'} round looked at
        {mayBe.length === 0 ? '' : `; may fall due before it is over: ${names(mayBe)}`}
        {unknown.length === 0 ? '' : `; not known when: ${names(unknown)}`}.
      </p>
    </>
  );
}

const names = (dues: ReturnType<typeof duesOfBook>) => dues.map(({ due }) => due.title).join(', ');
