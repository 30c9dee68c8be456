/** What came of a file: how much was read, and every row that was not, with why. */
import { useState } from 'react';
import type { FaultTally } from '#readings';
import { countInWords } from '../../../parts/in-words.ts';
import { many, stampInWords, stretchInWords } from './moment-in-words.ts';
import type { FileReport } from './readings-worker.ts';

/** faults shown before more is asked for */
const shownAtFirst = 10;

export function ImportReport({ report, zone }: { readonly report: FileReport; readonly zone: string }) {
  const { count, from, to, rows, outOfOrder, twice, faults, gaps, longest } = report;
  return (
    <div role="status">
      {count === 0 ? (
        <p>
          <b>None of {many(rows)} rows could be read.</b> Nothing is kept; the columns can be put right.
        </p>
      ) : (
        <p>
          <b>{count === 1 ? '1 reading' : `${many(count)} readings`}</b> of {many(rows)} rows, from{' '}
          {stampInWords(from, zone)} to {stampInWords(to, zone)}.
        </p>
      )}
      {outOfOrder > 0 && (
        <p>{countInWords(outOfOrder, 'row stood', 'rows stood')} out of order; they were put in the order of time.</p>
      )}
      {twice > 0 && <p>{countInWords(twice, 'row says', 'rows say')} the same as another; each is taken once.</p>}
      {gaps > 0 && longest && (
        <p>
          {gaps === 1 ? 'One gap' : `${many(gaps)} gaps, the longest`} of {stretchInWords(longest.to - longest.from)},
          from {stampInWords(longest.from, zone)}.
        </p>
      )}
      <Faults faults={faults} />
    </div>
  );
}

function Faults({ faults }: { readonly faults: FaultTally }) {
  const [all, setAll] = useState(false);
  const { told, rows, figures, kinds } = faults;
  if (rows + figures === 0) return <p>No row was refused.</p>;
  const shown = all ? told : told.slice(0, shownAtFirst);
  const lost = [
    rows === 0 ? null : `${rows === 1 ? '1 row was' : `${many(rows)} rows were`} refused`,
    figures === 0 ? null : `${figures === 1 ? '1 figure was' : `${many(figures)} figures were`} left out`,
  ]
    .filter((part) => part !== null)
    .join(', ');
  return (
    <section aria-label="What was refused">
      <p>
        <b>{lost}.</b> Rows are counted from the first line of the file.
      </p>
      <ul className="readings-faults">
        {shown.map(({ row, wrong, right }) => (
          <li key={`${row} ${wrong}`}>
            <b>Row {row}:</b> {wrong}; right would be {right}.
          </li>
        ))}
      </ul>
      {told.length > shown.length && (
        <button type="button" className="words" onClick={() => setAll(true)}>
          {rows + figures > told.length ? `The first ${told.length}` : `All ${told.length}`}
        </button>
      )}
      {rows + figures > told.length && (
        <ul className="readings-faults">
          {kinds.map(({ right, count, rows: which }) => (
            <li key={right}>
              {many(count)} times, rows {which}: right would be {right}.
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
