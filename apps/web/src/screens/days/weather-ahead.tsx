/** The weather of the days ahead at a place, whether a job day is booked on them or not. */
import { useState } from 'react';
import type { Id, JobDay } from '#boat-book';
import { liesAt } from '#reckoning';
import { addDays, localAt } from '#units';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { ChoiceField, PickField } from '../../parts/choice-fields.tsx';
import { dayInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { BackToPlan } from './day-page.tsx';
import { ForecastPart } from './forecast/forecast-part.tsx';
import { shortDay } from './place-time.ts';
import { WeatherEditor } from './weather-editor.tsx';
import { knownHours } from './weather-known.ts';
import { useWillingHours } from './willing-hours.ts';

const PlaceSheet = onDemand(() => import('../boat/place-sheet.tsx'));

/** as far ahead as a forecast is worth typing in. [days] */
const daysShown = 7;

export default function WeatherAhead() {
  return (
    <div className="days days-narrow">
      <BackToPlan />
      <h1>Weather ahead</h1>
      <BelowHeading>
        <AheadBelow />
      </BelowHeading>
    </div>
  );
}

function AheadBelow() {
  const book = useOpenBook();
  const { hours } = useWillingHours();
  const [chosen, setChosen] = useState<Id | null>(null);
  const place = chosen !== null && book.places[chosen] ? chosen : liesAt(book, Date.now());
  const zone = place === null ? null : (book.places[place]?.timeZone ?? null);
  const today = zone === null ? null : localAt(Date.now(), zone).day;
  const [date, setDate] = useState<string | null>(null);
  const [placing, setPlacing] = useState(false);
  if (place === null || today === null)
    return (
      <>
        <p>Weather is of a place: say where she lies first.</p>
        <button type="button" className="main" onClick={() => setPlacing(true)}>
          Add the place
        </button>
        {placing && <PlaceSheet book={book} id={null} onClose={() => setPlacing(false)} />}
      </>
    );
  const dates = Array.from({ length: daysShown }, (_, n) => addDays(today, n));
  const shown: string = date !== null && date >= today ? date : (dates.find((each) => !isKnown(each)) ?? today);
  function isKnown(each: string): boolean {
    return place !== null && knownHours(book, place, each).some((hour) => hour !== null);
  }
  const day: JobDay = {
    date: shown,
    ...hours,
    place,
    setOut_min: 0,
    clearUp_min: 0,
    breaks: [],
    hands: [],
    endsIn: [],
  };
  return (
    <>
      {Object.keys(book.places).length > 1 && (
        <ChoiceField
          label="At"
          value={place}
          onChange={(value) => value !== '' && setChosen(value)}
          options={Object.entries(book.places).map(([id, { name }]) => ({ value: id, name }))}
        />
      )}
      <ForecastPart book={book} place={place} />
      <PickField
        label="Day"
        value={shown}
        onChange={setDate}
        options={dates.map((each) => ({ value: each, name: `${shortDay(each)}${isKnown(each) ? ', known' : ''}` }))}
      />
      <p className="soft">{dayInWords(shown, today)}</p>
      <WeatherEditor key={`${shown} ${place}`} book={book} day={day} credited />
    </>
  );
}
