/** Lay-up or fit-out: a list of what this boat has, ticked, and any line made a job. */
import type { Book } from '#boat-book';
import { type SeasonLine, type SeasonName, seasonJob, seasonList, seasonYear } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dayInWords } from '../../../parts/in-words.ts';
import { TickLine } from '../../../parts/tick-line.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import './dues.css';

const newId = () => {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `s${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;
};

export default function SeasonPage({ list }: { readonly list: SeasonName }) {
  const book = useOpenBook();
  const today = todayAt(book);
  const year = seasonYear(list, today);
  return (
    <div className="dues">
      <p>
        <a className="button words" href={address('go', 'dues')}>
          What falls due
        </a>
      </p>
      <h1>
        {list === 'lay-up' ? 'Lay-up' : 'Fit-out'} {year}
      </h1>
      <BelowHeading>
        <SeasonBelow book={book} list={list} today={today} year={year} />
      </BelowHeading>
    </div>
  );
}

function SeasonBelow({
  book,
  list,
  today,
  year,
}: {
  readonly book: Book;
  readonly list: SeasonName;
  readonly today: string;
  readonly year: number;
}) {
  const lines = seasonList(book, list, year);
  const done = lines.filter(({ tick }) => tick !== null).length;
  const { run, refusal } = useRun();
  const tick = (line: SeasonLine) =>
    line.tick === null
      ? run('tickSeason', { list, year, item: line.id, who: '', text: line.text })
      : run('untickSeason', { id: line.tick, text: line.text });
  return (
    <>
      <p className="paper-only">
        {book.boat.name}, {dayInWords(today, '')}
      </p>
      <p className="soft">
        Made from what is in this boat’s book.{' '}
        {done === lines.length ? 'All done.' : `${done} of ${lines.length} done.`} Each tick goes in the log.
      </p>
      {refusal && (
        <p role="alert">
          {refusal.wrong}; {refusal.right}.
        </p>
      )}
      <ul className="season">
        {lines.map((line) => (
          <li key={line.id}>
            <TickLine ticked={line.tick !== null} onTick={() => tick(line)}>
              {line.text}
            </TickLine>
            {line.caution !== '' && line.tick === null && <p className="season-caution small">{line.caution}</p>}
            {line.job !== null ? (
              <a className="button words" href={address('work', 'job', line.job)}>
                Its job
              </a>
            ) : (
              line.recipe !== null &&
              line.tick === null && (
                <button
                  type="button"
                  className="words"
                  aria-label={`Make it a job: ${line.text}`}
                  onClick={() => void run('takeRecipe', seasonJob(book, list, year, line, newId))}
                >
                  Make it a job
                </button>
              )
            )}
          </li>
        ))}
      </ul>
      <p className="small soft">Common practice. The makers of engine, battery and gear come first.</p>
      <p className="dues-print">
        <button type="button" onClick={() => print()}>
          Print
        </button>
      </p>
    </>
  );
}
