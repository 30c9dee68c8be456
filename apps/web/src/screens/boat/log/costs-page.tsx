/** What she has cost, by year and by zone. */
import { useMemo, useState } from 'react';
import type { Book } from '#boat-book';
import { type CurrencyCosts, costsOf } from '#log';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import { countInWords } from '../../../parts/in-words.ts';
import { zoneOf } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { CostsDrawing } from './costs-drawing.tsx';

export default function CostsPage() {
  const book = useOpenBook();
  return (
    <div className="log">
      <h1>What she has cost</h1>
      <BelowHeading>
        <CostsBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function CostsBelow({ book }: { readonly book: Book }) {
  const timeZone = zoneOf(book);
  const { log } = book;
  const costs = useMemo(() => costsOf({ log }, timeZone), [log, timeZone]);
  return (
    <>
      {costs.length === 0 && (
        <p>
          No entry of the log says a cost yet. What is got with its price, and what you write in the log with one, is
          added up here.
        </p>
      )}
      {costs.map((one) => (
        <Currency key={one.currency} book={book} costs={one} alone={costs.length === 1} />
      ))}
    </>
  );
}

function Currency({
  book,
  costs,
  alone,
}: {
  readonly book: Book;
  readonly costs: CurrencyCosts;
  readonly alone: boolean;
}) {
  const { currency, total, entries, years, zones } = costs;
  const [year, setYear] = useState('');
  const dearest = years.reduce((most, one) => (one.amount > most.amount ? one : most));
  const inYear = (one: CurrencyCosts['zones'][number]): number =>
    year === '' ? one.amount : (one.years.find((other) => String(other.year) === year)?.amount ?? 0);
  const rows = zones
    .map((one) => ({ zone: one.zone, amount: inYear(one) }))
    .filter(({ amount }) => amount > 0)
    .sort((a, b) => b.amount - a.amount);
  return (
    <section aria-label={`In ${currency}`}>
      {!alone && <h2>In {currency}</h2>}
      <p>
        {total.toFixed(2)} {currency} in {countInWords(years.length, 'year')}, from{' '}
        {countInWords(entries, 'entry', 'entries')} that {entries === 1 ? 'says' : 'say'} a cost
        {years.length > 1 && `; most in ${dearest.year}, ${dearest.amount.toFixed(2)}`}.
      </p>
      <CostsDrawing costs={costs} />
      <h2>By zone</h2>
      {years.length > 1 && (
        <ChoiceField
          label="Year"
          value={year}
          onChange={setYear}
          none="all years"
          options={[...years].reverse().map((one) => ({ value: String(one.year), name: String(one.year) }))}
        />
      )}
      <table>
        <thead>
          <tr>
            <th scope="col">Zone</th>
            <th scope="col" className="figure">
              {currency}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ zone, amount }) => (
            <tr key={zone ?? ''}>
              <td>{zone === null ? 'the boat as a whole' : (book.zones[zone]?.name ?? 'a zone that is gone')}</td>
              <td className="figure">{amount.toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h2>By year</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Year</th>
            <th scope="col" className="figure">
              {currency}
            </th>
          </tr>
        </thead>
        <tbody>
          {[...years].reverse().map((one) => (
            <tr key={one.year}>
              <td>{one.year}</td>
              <td className="figure">{one.amount.toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
