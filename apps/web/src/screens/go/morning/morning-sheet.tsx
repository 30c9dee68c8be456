/** A morning list in print: black on white, to be ticked with a pencil; the screen shows it as it will be printed. */
import type { Book, Id, Outing } from '#boat-book';
import { listTitles, type MorningListTold, morningList } from '#reckoning';
import { todayAt } from '../../../reading/today.ts';
import { address } from '../../../shell/route.ts';
import { outingOnPaper } from '../outing-in-words.ts';
import '../../../parts/paper.css';
import './morning-sheet.css';

export default function MorningSheet({
  book,
  id,
  outing,
  list,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly outing: Outing;
  readonly list: MorningListTold['list'];
}) {
  const today = todayAt(book);
  const { items } = morningList(book, id, list, today);
  return (
    <>
      <p className="no-print">
        <a className="button words" href={address('go', 'morning', id, list)}>
          {listTitles[list]}
        </a>
      </p>
      <p className="no-print">
        <button type="button" className="main" onClick={() => print()}>
          Print the list
        </button>
      </p>
      <article className="paper morning-print">
        <header>
          <h1>
            {listTitles[list]}: {book.boat.name}
          </h1>
          <p>
            {outing.title} · {outingOnPaper(outing, today)}
          </p>
        </header>
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
      </article>
    </>
  );
}
