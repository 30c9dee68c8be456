/** The job days and outing dates there are, in order, each with what is known of it. */
import { memo } from 'react';
import type { Book, JobDay } from '#boat-book';
import { countInWords, dayInWords, daysAway, listInWords } from '../../parts/in-words.ts';
import { todayAt } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';
import { GiveCalendar } from './give-calendar.tsx';
import { weatherKnownInWords } from './weather-known.ts';

export const DaysList = memo(function DaysList({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const days = Object.entries(book.jobDays).sort(
    ([, a], [, b]) => a.date.localeCompare(b.date) || a.from.localeCompare(b.from),
  );
  const ahead = days.filter(([, day]) => day.date >= today);
  const past = days.filter(([, day]) => day.date < today).reverse();
  const outings = Object.entries(book.outings)
    .filter(([, outing]) => outing.date >= today)
    .sort(([, a], [, b]) => a.date.localeCompare(b.date));
  return (
    <section className="days-list">
      <h2>Job days</h2>
      {ahead.length === 0 && <p>There is no job day ahead. The plan is laid into the days you add.</p>}
      <ul>
        {ahead.map(([id, day]) => (
          <DayLine key={id} id={id} day={day} book={book} today={today} />
        ))}
      </ul>
      <p>
        <a className="button" href="#/days/day/new">
          Add a job day
        </a>
      </p>
      {past.length > 0 && (
        <details>
          <summary>{countInWords(past.length, 'job day')} that is past</summary>
          <ul>
            {past.map(([id, day]) => (
              <DayLine key={id} id={id} day={day} book={book} today={today} />
            ))}
          </ul>
        </details>
      )}
      <h2>Outings</h2>
      {outings.length === 0 && <p>No outing is written down: jobs then have only their own dates.</p>}
      <ul>
        {outings.map(([id, outing]) => (
          <li key={id} className="days-line">
            <a href={address('go')}>
              <b>{outing.title}</b>
              <span>
                {dayInWords(outing.date, today)}, {daysAway(outing.date, today)}
              </span>
            </a>
          </li>
        ))}
      </ul>
      <p className="no-print">
        <a href={address('go')}>Outings are kept under Go</a>
      </p>
      <GiveCalendar book={book} />
    </section>
  );
});

function DayLine({
  id,
  day,
  book,
  today,
}: {
  readonly id: string;
  readonly day: JobDay;
  readonly book: Book;
  readonly today: string;
}) {
  const hands = day.hands.map((hand) => hand.name);
  const place = book.places[day.place]?.name ?? 'no place';
  return (
    <li className="days-line">
      <a href={address('days', 'day', id)}>
        <b>{dayInWords(day.date, today)}</b>
        <span>
          {daysAway(day.date, today)}, {day.from} to {day.to}, {place}
          {hands.length > 0 ? `, with ${listInWords(hands)}` : ', alone'}
        </span>
        <span>{weatherKnownInWords(book, day)}</span>
      </a>
      {day.date >= today && (
        <a className="days-line-sheet no-print" href={address('days', 'sheet', id)}>
          Day sheet
        </a>
      )}
    </li>
  );
}
