/** A morning list in print: black on white, to be ticked with a pencil; the screen shows it as it will be printed. */
import type { Book, Id, Outing } from '#boat-book';
import { listTitles, type MorningListTold, morningList } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { Printable, SheetIs } from '../../../parts/printable.tsx';
import { todayAt } from '../../../reading/today.ts';
import { address } from '../../../shell/route.ts';
import { outingOnPaper } from '../outing-in-words.ts';
import './morning-sheet.css';

interface Shown {
  readonly book: Book;
  readonly id: Id;
  readonly outing: Outing;
  readonly list: MorningListTold['list'];
}

export default function MorningSheet({ book, id, outing, list }: Shown) {
  return (
    <>
      <p className="no-print">
        <a className="button words" href={address('go', 'morning', id, list)}>
          {listTitles[list]}
        </a>
      </p>
      <Printable button="Print the list">
        <article className="paper morning-print">
          <header>
            <h1>
              {listTitles[list]}: {book.boat.name}
            </h1>
            <p>
              {outing.title} · {outingOnPaper(outing, todayAt(book))}
            </p>
          </header>
          <BelowHeading>
            <Lines book={book} id={id} list={list} />
          </BelowHeading>
        </article>
      </Printable>
    </>
  );
}

function Lines({ book, id, list }: Omit<Shown, 'outing'>) {
  const { items } = morningList(book, id, list, todayAt(book));
  return (
    <>
      <SheetIs sheet="whole" />
      <ol>
        {items.map(({ id: line, text, about, cautions, tick }) => (
          <li key={line}>
            <span className="paper-box" data-ticked={tick !== null} aria-hidden="true" />
            <span>
              <b>{text}</b>
              {about !== '' && <span> · {about}</span>}
              {cautions.length > 0 && <span className="morning-print-care">{` ▲\u00a0${cautions.join(' ')}`}</span>}
            </span>
          </li>
        ))}
      </ol>
      <footer>Common practice, of this boat’s own book. The makers of boat and gear, and the law, come first.</footer>
    </>
  );
}
