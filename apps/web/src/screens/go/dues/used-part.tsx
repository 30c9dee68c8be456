/** What she was used for, put in with two taps: what, and when. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { type UseKind, useKinds } from '#dues';
import { addDays } from '#units';
import { Form } from '../../../parts/form.tsx';
import { countInWords } from '../../../parts/in-words.ts';
import { type Faults, formReading } from '../../../parts/read-form.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { DayField, NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { useRun } from '../../../parts/use-run.ts';

const did: Readonly<Record<UseKind, string>> = {
  sail: 'Sailed',
  tow: 'Towed',
  launch: 'Launched',
  night: 'Lay at anchor',
  'engine-hours': 'Ran the engine',
  'road-km': 'On the road',
};
const kinds = Object.keys(did) as UseKind[];
const hours = [0.5, 1, 2, 4];
const road_km = [20, 50, 100, 200];

/** What the second tap chooses: a day for what counts by ones, an amount of today for the rest. */
function choices(
  use: UseKind,
  today: string,
): readonly { readonly name: string; readonly on: string; readonly count: number }[] {
  if (use === 'engine-hours') return hours.map((count) => ({ name: `${count} h today`, on: today, count }));
  if (use === 'road-km') return road_km.map((count) => ({ name: `${count} km today`, on: today, count }));
  const night = use === 'night';
  return [
    { name: night ? 'Last night' : 'Today', on: night ? addDays(today, -1) : today, count: 1 },
    { name: night ? 'The night before' : 'Yesterday', on: addDays(today, night ? -2 : -1), count: 1 },
  ];
}

export function UsedPart({ book, today }: { readonly book: Book; readonly today: string }) {
  const [chosen, setChosen] = useState<UseKind | null>(null);
  const [other, setOther] = useState(false);
  const { run, refusal } = useRun();
  const put = async (use: UseKind, on: string, count: number) => {
    const outcome = await run('enterUses', { uses: [{ use, on, count, note: '' }] });
    if (outcome.kind === 'done') setChosen(null);
  };
  const since = addDays(today, -364);
  const year = kinds.flatMap((use) => {
    const total = Object.values(book.uses)
      .filter((each) => each.use === use && each.on >= since && each.on <= today)
      .reduce((sum, { count }) => sum + count, 0);
    return total === 0 ? [] : [countInWords(Number(total.toFixed(1)), useKinds[use].one, useKinds[use].title)];
  });
  return (
    <section className="used" aria-labelledby="used-title">
      <h2 id="used-title">What was she used for?</h2>
      <fieldset className="used-kinds">
        <legend className="seen-by-readers">What she was used for</legend>
        {kinds.map((use) => (
          <button
            key={use}
            type="button"
            aria-pressed={chosen === use}
            onClick={() => setChosen(chosen === use ? null : use)}
          >
            {did[use]}
          </button>
        ))}
      </fieldset>
      {chosen && (
        <fieldset className="used-kinds used-when">
          <legend className="small">
            {did[chosen]}: {useKinds[chosen].unit === '' ? 'when?' : 'how much?'}
          </legend>
          {choices(chosen, today).map(({ name, on, count }) => (
            <button key={name} type="button" className="main" onClick={() => void put(chosen, on, count)}>
              {name}
            </button>
          ))}
          <button type="button" onClick={() => setOther(true)}>
            Another day or amount
          </button>
        </fieldset>
      )}
      {refusal && (
        <p role="alert">
          {refusal.wrong}; {refusal.right}.
        </p>
      )}
      <p className="small soft">
        {year.length === 0 ? 'Nothing is written down of the last year.' : `In the last year: ${year.join(', ')}.`}
      </p>
      {other && chosen && (
        <OtherUse
          use={chosen}
          today={today}
          onClose={() => {
            setOther(false);
            setChosen(null);
          }}
        />
      )}
    </section>
  );
}

function OtherUse({
  use,
  today,
  onClose,
}: {
  readonly use: UseKind;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const { draft, set, changed } = useDraft({ on: today, count: '' });
  const [faults, setFaults] = useState<Faults<'on' | 'count'>>({});
  const { run, refusal } = useRun();
  const { unit, title } = useKinds[use];
  const keep = async () => {
    const form = formReading<'on' | 'count'>();
    const fields = {
      use,
      on: form.day('on', draft.on),
      count: form.figure('count', draft.count, {
        min: unit === '' ? 1 : 0.1,
        max: unit === 'km' ? 5000 : 400,
        unit: unit === '' ? title : unit,
        whole: unit === '',
      }),
      note: '',
    };
    setFaults(form.faults);
    if (!form.sound()) return;
    if ((await run('enterUses', { uses: [fields] })).kind === 'done') onClose();
  };
  return (
    <Sheet title={did[use]} onClose={onClose} unsaved={changed}>
      <Form keep="Put it in" onKeep={keep} faults={faults} refusal={refusal}>
        <div className="field-row">
          <DayField label="On" value={draft.on} onChange={(on) => set('on', on)} refused={faults.on} />
          <NumberField
            label="How much"
            unit={unit === '' ? title : unit}
            whole={unit === ''}
            value={draft.count}
            onChange={(count) => set('count', count)}
            refused={faults.count}
          />
        </div>
      </Form>
    </Sheet>
  );
}
