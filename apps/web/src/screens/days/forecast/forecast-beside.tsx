/** Beside what is entered by hand for a day: whose forecast there is of it, and the way back to going by that alone. */
import type { Book, JobDay } from '#boat-book';
import { forecastHours, forecastOf } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { countInWords } from '../../../parts/in-words.ts';
import { useRun } from '../../../parts/use-run.ts';
import { enteredHours } from '../weather-known.ts';
import { ForecastCredit } from './forecast-credit.tsx';

export function ForecastBeside({
  book,
  day: { place, date },
  credited,
  onGone,
}: {
  readonly book: Book;
  readonly day: JobDay;
  /** whose forecast it is stands on the page already */
  readonly credited: boolean;
  /** what was entered for the day is out of the book */
  readonly onGone: () => void;
}) {
  const { run, refusal } = useRun();
  const goBy = async () => {
    const outcome = await run('goByForecast', { place, date });
    if (outcome.kind === 'done') onGone();
  };
  const forecast = forecastOf(book, place);
  const hours = forecastHours(book, place, date);
  if (forecast === null || hours.length === 0) return null;
  const entered = enteredHours(book, place, date);
  const both = hours.filter(({ fromHour }) => entered[fromHour] !== null).length;
  return (
    <>
      {!credited && (
        <p className="small soft">
          <ForecastCredit book={book} place={place} forecast={forecast} />
        </p>
      )}
      {both > 0 && (
        <p className="small">
          {countInWords(both, 'hour')} of this day {both === 1 ? 'is' : 'are'} entered by hand and in the forecast: what
          you entered counts.{' '}
          <button type="button" className="words" onClick={() => void goBy()}>
            Go by the forecast
          </button>
        </p>
      )}
      <RefusalLine refusal={refusal} />
    </>
  );
}
