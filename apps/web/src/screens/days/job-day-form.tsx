/** The hours, place and hands of a job day, as a form. */
import { useState } from 'react';
import type { Book, Id, JobDay } from '#boat-book';
import { minuteOfClock } from '#units';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { ClockField, DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { PlaceForm } from './place-form.tsx';

interface Draft {
  readonly date: string;
  readonly from: string;
  readonly to: string;
  readonly place: Id | '';
  readonly setOut: string;
  readonly clearUp: string;
  readonly breaks: readonly { readonly key: string; readonly from: string; readonly minutes: string }[];
  readonly hands: readonly {
    readonly key: string;
    readonly name: string;
    readonly from: string;
    readonly to: string;
  }[];
  readonly endsIn: Readonly<Record<Id, Id | ''>>;
}

export function JobDayForm({
  book,
  id,
  onKept,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onKept: (id: Id) => void;
}) {
  const { draft, set } = useDraft<Draft>(draftOf(book, id));
  const [faults, setFaults] = useState<Faults<string>>({});
  const { run, refusal } = useRun();
  const [addingPlace, setAddingPlace] = useState(false);
  const places = Object.entries(book.places).map(([value, { name }]) => ({ value, name }));
  const setUps = Object.entries(book.setUps);

  const keep = async () => {
    const { day, faults: found } = readDay(draft, book);
    setFaults(found);
    if (day === null) return;
    const outcome = id === null ? await run('addJobDay', day) : await run('changeJobDay', { id, ...day });
    if (outcome.kind === 'done') onKept(id ?? outcome.id ?? '');
  };
  const changeHand = (key: string, what: Partial<Draft['hands'][number]>) =>
    set(
      'hands',
      draft.hands.map((hand) => (hand.key === key ? { ...hand, ...what } : hand)),
    );
  const changeBreak = (key: string, what: Partial<Draft['breaks'][number]>) =>
    set(
      'breaks',
      draft.breaks.map((each) => (each.key === key ? { ...each, ...what } : each)),
    );

  return (
    <div className="days-form">
      <Form keep={id === null ? 'Add the job day' : 'Keep'} onKeep={keep} faults={faults} refusal={refusal}>
        <DayField label="Date" value={draft.date} onChange={(text) => set('date', text)} refused={faults.date} />
        <div className="field-row">
          <ClockField label="From" value={draft.from} onChange={(text) => set('from', text)} refused={faults.from} />
          <ClockField label="To" value={draft.to} onChange={(text) => set('to', text)} refused={faults.to} />
        </div>
        {places.length > 0 && (
          <ChoiceField
            label="Place"
            value={draft.place}
            onChange={(value) => set('place', value)}
            options={places}
            refused={faults.place}
          />
        )}
        {places.length === 0 && (
          <p className="days-form-note">Where does she lie? The sun and the clock go by the place.</p>
        )}
        <p className="days-form-note">
          <button type="button" className={places.length === 0 ? '' : 'words'} onClick={() => setAddingPlace(true)}>
            {places.length === 0 ? 'Add the place' : 'Another place'}
          </button>
          {places.length === 0 && faults.place && <span className="field-refused"> ▲ {faults.place}</span>}
        </p>
        <div className="field-row">
          <NumberField
            label="To set out"
            unit="min"
            whole
            note="0 if none"
            value={draft.setOut}
            onChange={(text) => set('setOut', text)}
            refused={faults.setOut}
          />
          <NumberField
            label="To clear up"
            unit="min"
            whole
            note="0 if none"
            value={draft.clearUp}
            onChange={(text) => set('clearUp', text)}
            refused={faults.clearUp}
          />
        </div>

        <fieldset className="days-rows">
          <legend>Hands besides the keeper</legend>
          {draft.hands.map((hand) => (
            <div key={hand.key} className="field-row">
              <TextField
                label="Name"
                value={hand.name}
                onChange={(name) => changeHand(hand.key, { name })}
                refused={faults[`hand-${hand.key}`]}
              />
              <ClockField
                label="From"
                value={hand.from}
                onChange={(from) => changeHand(hand.key, { from })}
                refused={faults[`hand-from-${hand.key}`]}
              />
              <ClockField
                label="To"
                value={hand.to}
                onChange={(to) => changeHand(hand.key, { to })}
                refused={faults[`hand-to-${hand.key}`]}
              />
              <button
                type="button"
                className="words removes"
                onClick={() =>
                  set(
                    'hands',
                    draft.hands.filter((other) => other !== hand),
                  )
                }
              >
                Take out {hand.name || 'this hand'}
              </button>
            </div>
          ))}
          <button
            type="button"
            onClick={() =>
              set('hands', [...draft.hands, { key: crypto.randomUUID(), name: '', from: draft.from, to: draft.to }])
            }
          >
            Add a hand
          </button>
        </fieldset>

        <fieldset className="days-rows">
          <legend>Breaks</legend>
          {draft.breaks.map((each) => (
            <div key={each.key} className="field-row">
              <ClockField
                label="From"
                value={each.from}
                onChange={(from) => changeBreak(each.key, { from })}
                refused={faults[`break-from-${each.key}`]}
              />
              <NumberField
                label="Long"
                unit="min"
                whole
                value={each.minutes}
                onChange={(minutes) => changeBreak(each.key, { minutes })}
                refused={faults[`break-${each.key}`]}
              />
              <button
                type="button"
                className="words removes"
                onClick={() =>
                  set(
                    'breaks',
                    draft.breaks.filter((other) => other !== each),
                  )
                }
              >
                Take out this break
              </button>
            </div>
          ))}
          <button
            type="button"
            onClick={() => set('breaks', [...draft.breaks, { key: crypto.randomUUID(), from: '', minutes: '' }])}
          >
            Add a break
          </button>
        </fieldset>

        {setUps.length > 0 && (
          <fieldset className="days-rows">
            <legend>How she must be left at the end</legend>
            {setUps.map(([setUp, known]) => (
              <ChoiceField
                key={setUp}
                label={known.name}
                value={draft.endsIn[setUp] ?? ''}
                onChange={(state) => set('endsIn', { ...draft.endsIn, [setUp]: state })}
                options={known.states.map((state) => ({ value: state.id, name: state.name }))}
                none="as she stands"
              />
            ))}
          </fieldset>
        )}
      </Form>
      {addingPlace && (
        <Sheet title="A place" onClose={() => setAddingPlace(false)}>
          <PlaceForm
            onKept={(place) => {
              set('place', place);
              setAddingPlace(false);
            }}
          />
        </Sheet>
      )}
    </div>
  );
}

/** The day as it is; for a new one the hours and place of the last one added, to be changed, and no date. */
function draftOf(book: Book, id: Id | null): Draft {
  const last = Object.values(book.jobDays)
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1);
  const day = id === null ? last : book.jobDays[id];
  const places = Object.keys(book.places);
  const onlyPlace = places.length === 1 ? places[0]! : '';
  const key = () => crypto.randomUUID();
  return {
    date: id === null ? '' : (day?.date ?? ''),
    from: day?.from ?? '',
    to: day?.to ?? '',
    place: day?.place ?? onlyPlace,
    setOut: day ? String(day.setOut_min) : '',
    clearUp: day ? String(day.clearUp_min) : '',
    breaks: (day?.breaks ?? []).map((b) => ({ key: key(), from: b.from, minutes: String(b.minutes) })),
    hands: id === null ? [] : (day?.hands ?? []).map((h) => ({ key: h.id, name: h.name, from: h.from, to: h.to })),
    endsIn: Object.fromEntries((day?.endsIn ?? []).map(({ setUp, state }) => [setUp, state])),
  };
}

/** The day a form stands for, or what is wrong with it, by field. */
export function readDay(draft: Draft, book: Book): { readonly day: JobDay | null; readonly faults: Faults<string> } {
  const form = formReading<string>();
  const minutes = { min: 0, max: 600, unit: 'min', whole: true };
  const day: JobDay = {
    date: form.day('date', draft.date),
    from: form.clock('from', draft.from),
    to: form.clock('to', draft.to),
    place: form.chosen('place', draft.place, 'Choose where she lies that day, or add the place.'),
    setOut_min: form.figure('setOut', draft.setOut, minutes),
    clearUp_min: form.figure('clearUp', draft.clearUp, minutes),
    hands: draft.hands.map((hand) => ({
      id: hand.key,
      name: form.words(`hand-${hand.key}`, hand.name, 'Say who it is.'),
      from: form.clock(`hand-from-${hand.key}`, hand.from),
      to: form.clock(`hand-to-${hand.key}`, hand.to),
    })),
    breaks: draft.breaks
      .map((each) => ({
        from: form.clock(`break-from-${each.key}`, each.from),
        minutes: form.figure(`break-${each.key}`, each.minutes, { ...minutes, min: 1 }),
      }))
      .sort((a, b) => a.from.localeCompare(b.from)),
    endsIn: Object.entries(draft.endsIn).flatMap(([setUp, state]) =>
      state !== '' && book.setUps[setUp] ? [{ setUp, state }] : [],
    ),
  };
  if (form.sound()) refuseHoursThatCannotBe(day, draft, form.refuse);
  return { day: form.sound() ? day : null, faults: form.faults };
}

function refuseHoursThatCannotBe(day: JobDay, draft: Draft, refuse: (field: string, why: string) => void): void {
  const from = minuteOfClock(day.from);
  const to = minuteOfClock(day.to);
  if (to <= from) {
    refuse('to', `${day.to} is not after ${day.from}. A job day ends on the day it begins.`);
    return;
  }
  if (day.setOut_min + day.clearUp_min >= to - from)
    refuse(
      'clearUp',
      `Setting out and clearing up take ${day.setOut_min + day.clearUp_min} min of a day of ${to - from}. Leave time for work.`,
    );
  for (const hand of draft.hands)
    if (hand.to <= hand.from) refuse(`hand-to-${hand.key}`, `${hand.to} is not after ${hand.from}.`);
  for (const each of draft.breaks) {
    const start = minuteOfClock(each.from);
    if (start < from || start + Number(each.minutes) > to)
      refuse(`break-from-${each.key}`, `The break is not within ${day.from} to ${day.to}.`);
  }
}
