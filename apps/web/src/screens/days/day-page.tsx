/** One job day: its hours, place and hands; its weather; its sheet. Or a new one. */
import { useEffect, useRef, useState } from 'react';
import type { Book, Id, JobDay } from '#boat-book';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, countInWords, dayInWords, daysAway, listInWords, minutesInWords } from '../../parts/in-words.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { useRun } from '../../parts/use-run.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address, goTo } from '../../shell/route.ts';
import { JobDayForm } from './job-day-form.tsx';
import { RigsPast } from './rigs-past.tsx';
import { WeatherEditor } from './weather-editor.tsx';

export default function DayPage({
  id,
  at,
}: {
  readonly id: Id;
  /** `change`: with its hours open to be changed; `weather`: at its weather */
  readonly at: string | null;
}) {
  const book = useOpenBook();
  if (id === 'new')
    return (
      <div className="days days-narrow">
        <BackToPlan />
        <h1>A new job day</h1>
        <BelowHeading>
          <JobDayForm book={book} id={null} onKept={(kept) => goTo(address('days', 'day', kept), true)} />
        </BelowHeading>
      </div>
    );
  const day = book.jobDays[id];
  if (!day)
    return (
      <div className="days days-narrow">
        <BackToPlan />
        <h1>No such job day</h1>
        <p>It was removed, or the address is of another boat book.</p>
      </div>
    );
  return (
    <div className="days days-narrow">
      <BackToPlan />
      <h1>{dayInWords(day.date, todayAt(book))}</h1>
      <BelowHeading>
        <DayBelow book={book} id={id} day={day} at={at} />
      </BelowHeading>
    </div>
  );
}

export function BackToPlan() {
  return (
    <p className="no-print">
      <a className="button words" href="#/days/plan">
        The plan
      </a>
    </p>
  );
}

function DayBelow({
  book,
  id,
  day,
  at,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly day: JobDay;
  readonly at: string | null;
}) {
  const today = todayAt(book);
  const [sheet, setSheet] = useState<'change' | 'remove' | null>(at === 'change' ? 'change' : null);
  const weather = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (at === 'weather') weather.current?.scrollIntoView();
  }, [at]);
  const { run, refusal } = useRun();
  const held = Object.values(book.jobs).filter((job) => job.heldTo === id && job.state === 'open').length;
  return (
    <>
      <p className="soft">
        {capital(daysAway(day.date, today))}, {day.from} to {day.to}, {book.places[day.place]?.name ?? 'no place'}
      </p>
      {day.date >= today && <RigsPast book={book} />}
      <ul className="days-said">
        {dayInSentences(book, day).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <div className="days-row">
        <button type="button" onClick={() => setSheet('change')}>
          Change hours, place or hands
        </button>
        <a className="button" href={address('days', 'sheet', id)}>
          Day sheet
        </a>
        {day.date >= today && (
          <a className="button" href={address('days', 'carry', id)}>
            Carry-down list
          </a>
        )}
      </div>
      <div ref={weather}>
        <WeatherEditor key={`${day.date}-${day.place}`} book={book} day={day} />
      </div>
      <p>
        <button type="button" className="words removes" onClick={() => setSheet('remove')}>
          Remove this job day
        </button>
      </p>
      {sheet === 'change' && (
        <Sheet title="Change the job day" onClose={() => setSheet(null)}>
          <JobDayForm book={book} id={id} onKept={() => setSheet(null)} />
        </Sheet>
      )}
      {sheet === 'remove' && (
        <Sheet title="Remove this job day" onClose={() => setSheet(null)}>
          <p>
            The plan is then made without {dayInWords(day.date, today)}. What was done on it, and its weather, stay in
            the book.{held > 0 ? ` ${countInWords(held, 'job')} held to it would be free again.` : ''}
          </p>
          <RefusalLine refusal={refusal} />
          <button
            type="button"
            className="removes"
            onClick={async () => {
              const outcome = await run('removeJobDay', { id });
              if (outcome.kind === 'done') goTo('#/days/plan', true);
            }}
          >
            Remove it
          </button>
        </Sheet>
      )}
    </>
  );
}

/** What there is to say of a day beside its hours and place, a sentence each. */
function dayInSentences(book: Book, day: JobDay): string[] {
  const hands =
    day.hands.length === 0
      ? 'Alone all day.'
      : `With ${listInWords(day.hands.map((hand) => `${hand.name}, ${hand.from} to ${hand.to}`))}.`;
  const breaks =
    day.breaks.length === 0
      ? 'No break.'
      : `Break: ${listInWords(day.breaks.map((b) => `${minutesInWords(b.minutes)} from ${b.from}`))}.`;
  const ends = day.endsIn.flatMap(({ setUp, state }) => {
    const known = book.setUps[setUp];
    const name = known?.states.find((s) => s.id === state)?.name;
    return known && name ? [`${known.name.toLowerCase()} ${name.toLowerCase()}`] : [];
  });
  return [
    hands,
    `${minutesInWords(day.setOut_min)} to set out, ${minutesInWords(day.clearUp_min)} to clear up. ${breaks}`,
    ends.length === 0 ? 'She may be left as she stands.' : `She is left with ${listInWords(ends)}.`,
  ];
}
