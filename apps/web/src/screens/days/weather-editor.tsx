/** The weather of a job day, in four parts of it with a few taps each, or hour by hour. */
import { useState } from 'react';
import type { Book, JobDay } from '#boat-book';
import { forecastHours } from '#reckoning';
import { addDays } from '#units';
import { PickField } from '../../parts/choice-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { useRun } from '../../parts/use-run.ts';
import { ForecastBeside } from './forecast/forecast-beside.tsx';
import { hoursInWords } from './forecast/forecast-in-words.ts';
import { WeatherByHour } from './weather-by-hour.tsx';
import {
  enteredHours,
  type KnownHour,
  sameWeather,
  type WeatherEntries,
  weatherKnownInWords,
} from './weather-known.ts';
import { emptyPart, type PartDraft, PartFields, readPart } from './weather-part.tsx';
import { type DayPart, partsOf } from './weather-parts.ts';

export function WeatherEditor({
  book,
  day,
  credited = false,
}: {
  readonly book: Book;
  readonly day: JobDay;
  /** whose forecast it is stands on the page already */
  readonly credited?: boolean;
}) {
  // what was entered hour by hour is shown so
  const [by, setBy] = useState<'parts' | 'hours'>(() =>
    partsOf(day).every((part) => alike(knownOf(part, book, day))) ? 'parts' : 'hours',
  );
  const { run, refusal } = useRun();
  // what was entered was taken out: the fields begin again from what is left
  const [anew, setAnew] = useState(0);
  const [kept, setKept] = useState(false);
  const enter = async (entries: WeatherEntries) => {
    const outcome = await run('enterWeather', { entries });
    setKept(outcome.kind === 'done');
  };
  return (
    <section className="days-weather">
      <h2>Weather</h2>
      <p className="small soft">
        As it stands: {weatherKnownInWords(book, day)}. Nights and hours without weather take the cautious climate
        figure: wet, windy, cool for the time of year. The chance of rain may be left empty; only the odds read it.
      </p>
      <PickField
        label="How to enter it"
        quiet
        value={by}
        onChange={setBy}
        options={[
          { value: 'parts', name: 'By parts of the day' },
          { value: 'hours', name: 'Hour by hour' },
        ]}
      />
      <ForecastBeside book={book} day={day} credited={credited} onGone={() => setAnew(anew + 1)} />
      {by === 'parts' ? (
        <ByParts key={anew} book={book} day={day} onEnter={enter} onTouch={() => setKept(false)} />
      ) : (
        <WeatherByHour key={anew} book={book} day={day} onEnter={enter} onTouch={() => setKept(false)} />
      )}
      <RefusalLine refusal={refusal} />
      <p role="status" className="small">
        {kept && (
          <>
            Entered. <a href="#/days/plan">See the plan</a>
          </>
        )}
      </p>
    </section>
  );
}

function ByParts({
  book,
  day,
  onEnter,
  onTouch,
}: {
  readonly book: Book;
  readonly day: JobDay;
  readonly onEnter: (entries: WeatherEntries) => Promise<void>;
  readonly onTouch: () => void;
}) {
  const parts = partsOf(day);
  const [drafts, setDrafts] = useState<readonly PartDraft[]>(() => parts.map((part) => draftOf(part, book, day)));
  const [refused, setRefused] = useState<string | null>(null);
  const keep = () => {
    const entries: WeatherEntries[number][] = [];
    for (const [i, part] of parts.entries()) {
      const read = readPart(drafts[i]!);
      if (read.kind === 'empty') continue;
      if (read.kind === 'refused') {
        setRefused(`${part.name}: ${read.why}`);
        return;
      }
      for (const span of part.spans)
        entries.push({
          place: day.place,
          date: addDays(day.date, span.dayAfter),
          fromHour: span.fromHour,
          toHour: span.toHour,
          ...read.hour,
          surface_C: null,
          basis: 'typed',
        });
    }
    if (entries.length === 0) {
      setRefused('Nothing is filled in yet. Fill in at least one part of the day.');
      return;
    }
    setRefused(null);
    void onEnter(entries);
  };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <div className="days-parts">
        {parts.map((part, i) => (
          <PartFields
            key={part.id}
            part={part}
            draft={drafts[i]!}
            forecast={forecastOfPart(part, book, day)}
            varies={knownOf(part, book, day).length > 0 && !alike(knownOf(part, book, day))}
            before={i === 0 ? null : { name: parts[i - 1]!.name.toLowerCase(), draft: drafts[i - 1]! }}
            onChange={(draft) => {
              onTouch();
              setDrafts(drafts.map((other, j) => (j === i ? draft : other)));
            }}
          />
        ))}
      </div>
      <Refused text={refused} />
      <button type="submit" className="main">
        Enter the weather
      </button>
    </form>
  );
}

function knownOf(part: DayPart, book: Book, day: JobDay): KnownHour[] {
  return part.spans
    .flatMap((span) =>
      enteredHours(book, day.place, addDays(day.date, span.dayAfter)).slice(span.fromHour, span.toHour),
    )
    .filter((hour) => hour !== null);
}

/** What the forecast says of a part of the day; null: nothing. */
function forecastOfPart(part: DayPart, book: Book, day: JobDay): string | null {
  return hoursInWords(
    part.spans.flatMap(({ dayAfter, fromHour, toHour }) =>
      forecastHours(book, day.place, addDays(day.date, dayAfter)).filter(
        (hour) => hour.fromHour >= fromHour && hour.fromHour < toHour,
      ),
    ),
  );
}

function alike(hours: readonly KnownHour[]): boolean {
  return hours.every((hour) => sameWeather(hour, hours[0]!));
}

/** A part as it was entered, where the hours entered are all alike; otherwise empty. */
function draftOf(part: DayPart, book: Book, day: JobDay): PartDraft {
  const hours = knownOf(part, book, day);
  const first = hours[0];
  if (!first || !alike(hours)) return emptyPart;
  return {
    sky: first.rain ? 'rain' : 'dry',
    odds: first.rainOdds_pct === null ? '' : String(first.rainOdds_pct),
    wind: String(first.wind_kn),
    air: String(first.air_C),
    humidity: String(first.humidity_pct),
  };
}
