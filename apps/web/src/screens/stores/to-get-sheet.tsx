/** What is to be got, in print: black on white, by where it is to be had, to be ticked in the shop. */
import { useMemo } from 'react';
import type { Book } from '#boat-book';
import { getByInWords, priceInWords, toGetByShop, toGetName, toGetText } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { capital, dayInWords } from '../../parts/in-words.ts';
import { Printable, SheetIs } from '../../parts/printable.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { ShareButton } from './share-button.tsx';
import { useToGet } from './use-to-get.ts';
import './to-get-sheet.css';

export default function ToGetSheet() {
  const book = useOpenBook();
  const today = todayAt(book);
  return (
    <div className="stores">
      <p className="no-print">
        <a href={address('stores')}>Back to the stores</a>
      </p>
      <Printable button="Print the list">
        <article className="paper to-get-print">
          <header>
            <h1>To get</h1>
            <p>
              {book.boat.name}, {dayInWords(today, today)}
            </p>
          </header>
          <BelowHeading>
            <Lines book={book} today={today} />
          </BelowHeading>
        </article>
      </Printable>
    </div>
  );
}

function Lines({ book, today }: { readonly book: Book; readonly today: string }) {
  const { lines, state, sure } = useToGet(book);
  const shops = useMemo(() => toGetByShop(lines), [lines]);
  const currency = book.boat.currency ?? null;
  const priced = lines.flatMap(({ price }) => (price === null ? [] : [price]));
  const total = priced.reduce((sum, price) => sum + price, 0);
  return (
    <div data-plan-state={state}>
      <SheetIs sheet={sure ? 'whole' : 'coming'} waitsFor={sure ? '' : 'By when is being planned.'}>
        {sure && <ShareButton title={`To get for ${book.boat.name}`} text={toGetText(lines, book, today)} />}
      </SheetIs>
      {lines.length === 0 && <p>Nothing: all that open work needs is there.</p>}
      {shops.map(({ from, lines: own }) => (
        <section key={from ?? ''}>
          {(shops.length > 1 || from !== null) && <h2>{from === null ? 'Anywhere' : capital(from)}</h2>}
          <table>
            <tbody>
              {own.map((line) => (
                <tr key={line.store}>
                  <td>
                    <span className="paper-box" aria-hidden="true" />
                  </td>
                  <td>
                    <b>{toGetName(line)}</b>
                    <div className="to-get-for">
                      For{' '}
                      {line.jobs.map(({ title, takes }) => (takes === null ? title : `${title} (${takes})`)).join(', ')}
                      {line.because !== null && `; ${line.because}`}
                    </div>
                  </td>
                  <td>{getByInWords(line, today)}</td>
                  <td className="figure">{line.price === null ? '' : priceInWords(line.price, currency)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      {priced.length > 0 && (
        <p>
          About {priceInWords(total, currency)}
          {priced.length < lines.length && `, the prices of ${priced.length} of ${lines.length} being known`}.
        </p>
      )}
    </div>
  );
}
