/** With no job day booked: the next hours that would suit each open job, and what to prepare before. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { liesAt } from '#reckoning';
import { localAt } from '#units';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { ClockField } from '../../parts/text-fields.tsx';
import { useWindows } from './use-windows.ts';
import { weatherKnownInDays } from './weather-known.ts';
import { chooseWillingHours, useWillingHours } from './willing-hours.ts';
import { WindowLine } from './window-line.tsx';
import './windows.css';

export function Windows({ book }: { readonly book: Book }) {
  const [chosen, setChosen] = useState<Id | null>(null);
  const place = chosen !== null && book.places[chosen] ? chosen : liesAt(book, Date.now());
  if (place === null)
    return (
      <section className="days-windows">
        <h2>Hours that would suit</h2>
        <p>
          Say where she lies, and the next hours that would suit each job are shown here.{' '}
          <a href="#/boat">Add a place under Boat</a>
        </p>
      </section>
    );
  return <WindowsAt book={book} place={place} onPlace={setChosen} />;
}

function WindowsAt({
  book,
  place,
  onPlace,
}: {
  readonly book: Book;
  readonly place: Id;
  readonly onPlace: (place: Id) => void;
}) {
  const { hours: willing, assumed } = useWillingHours();
  const inHand = useWindows(book, { place, willing, job: null });
  const today = localAt(Date.now(), book.places[place]!.timeZone).day;
  return (
    <section className="days-windows" data-windows-state={inHand.state}>
      <h2>Hours that would suit</h2>
      <p>
        No job day is booked. These are the next hours in the weather known that would suit each open job, as she stands
        and with you alone where that can be, the heaviest job first.
      </p>
      <p className="small soft">
        {weatherKnownInDays(book, place, today)} <a href="#/days/weather">Enter the weather ahead</a>
      </p>
      <div className="days-windows-hours">
        <WillingFields key={`${willing.from} ${willing.to}`} assumed={assumed} />
        {Object.keys(book.places).length > 1 && (
          <ChoiceField
            label="She lies at"
            value={place}
            onChange={(value) => value !== '' && onPlace(value)}
            options={Object.entries(book.places).map(([id, { name }]) => ({ value: id, name }))}
          />
        )}
      </div>
      {inHand.state === 'failed' && (
        <p role="alert">
          <span className="days-danger">▲ </span>They could not be worked out: {inHand.words}. What is in the boat book
          is safe.
        </p>
      )}
      <ul>
        {inHand.windows.map((window) => (
          <WindowLine key={window.job} window={window} book={book} headed />
        ))}
      </ul>
      <p role="status" className="small soft">
        {inHand.state === 'looking' && 'Looking through the hours.'}
      </p>
    </section>
  );
}

function WillingFields({ assumed }: { readonly assumed: boolean }) {
  const { hours } = useWillingHours();
  const [draft, setDraft] = useState({ from: hours.from as string, to: hours.to as string });
  const [refused, setRefused] = useState<string | null>(null);
  const set = (next: typeof draft) => {
    setDraft(next);
    if (next.from === '' || next.to === '') return;
    if (next.to <= next.from) {
      setRefused(`${next.to} is not after ${next.from}. Give a later end on the same day.`);
      return;
    }
    setRefused(null);
    chooseWillingHours(next);
  };
  return (
    <fieldset className="days-willing">
      <legend>
        Hours you are willing to work, any day
        <span className="soft small">{assumed ? ': our assumption, change it' : ''}</span>
      </legend>
      <ClockField label="From" value={draft.from} onChange={(from) => set({ ...draft, from })} />
      <ClockField label="To" value={draft.to} onChange={(to) => set({ ...draft, to })} />
      <Refused text={refused} />
    </fieldset>
  );
}
