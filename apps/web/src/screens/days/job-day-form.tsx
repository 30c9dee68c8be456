/** The hours, place and hands of a job day, as a form. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { bookClient } from '../../offline/book-client.ts';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { capital } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { ClockField, DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';
import { draftOf, type JobDayDraft, readDay } from './job-day-draft.ts';

const PlaceSheet = onDemand(() => import('../boat/place-sheet.tsx'));

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
  const { draft, set } = useDraft<JobDayDraft>(draftOf(book, id));
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
  const changeHand = (key: string, what: Partial<JobDayDraft['hands'][number]>) =>
    set(
      'hands',
      draft.hands.map((hand) => (hand.key === key ? { ...hand, ...what } : hand)),
    );
  const changeBreak = (key: string, what: Partial<JobDayDraft['breaks'][number]>) =>
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
                label={capital(known.name)}
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
        <PlaceSheet
          book={book}
          id={null}
          onClose={() => {
            const added = Object.keys(bookClient.snapshot().book?.places ?? {}).find(
              (place) => !(place in book.places),
            );
            if (added !== undefined) set('place', added);
            setAddingPlace(false);
          }}
        />
      )}
    </div>
  );
}
