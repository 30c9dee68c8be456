/** Which of the transducers in a file of sentences measure this battery. */
import { useState } from 'react';
import type { ReadColumn, SentencePlan, Transducer } from '#readings';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import { Refused } from '../../../parts/field.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { many } from './moment-in-words.ts';

const unit = { volts: 'V', current: 'A', air: '°C' } as const;
/** none chosen; a transducer may have no name */
const none = '-';

export function SentenceColumns({
  transducers,
  onRead,
}: {
  readonly transducers: readonly Transducer[];
  readonly onRead: (plan: SentencePlan) => void;
}) {
  const of = (what: ReadColumn) => transducers.filter((each) => each.of === what);
  const only = (what: ReadColumn, name?: string) => {
    const some = of(what);
    const same = some.find((each) => each.name === name);
    return some.length === 1 ? key(some[0]!.name) : same ? key(same.name) : '';
  };
  const volts = only('volts');
  const { draft, set } = useDraft<{
    volts: string;
    current: string;
    positive: 'out of the battery' | 'into the battery' | '';
    air: string;
  }>({ volts, current: only('current', name(volts)), positive: '', air: only('air', name(volts)) });
  const [asked, setAsked] = useState(false);
  const voltsOpen = draft.volts === '' ? 'Choose which one measures this battery.' : null;
  const wayOpen = draft.current !== '' && draft.positive === '' ? 'Choose which way it flows.' : null;
  const options = (what: ReadColumn) =>
    of(what).map((each) => ({
      value: key(each.name),
      name: `${each.name || 'without a name'}: ${each.least} to ${each.most} ${unit[what]}, ${many(each.count)} times in the first lines`,
    }));
  return (
    <form
      noValidate
      className="readings-columns"
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (voltsOpen || wayOpen) return;
        onRead({
          volts: name(draft.volts),
          current:
            draft.current === '' || draft.positive === ''
              ? null
              : { name: name(draft.current), positive: draft.positive },
          air: draft.air === '' ? null : name(draft.air),
        });
      }}
    >
      <h3>Which of them are of this battery</h3>
      <p>Sentences of NMEA 0183; each reading is of the time said last before it, in UTC.</p>
      <ChoiceField
        label="Volts"
        value={draft.volts}
        onChange={(value) => set('volts', value)}
        options={options('volts')}
        refused={asked ? voltsOpen : null}
      />
      <ChoiceField
        label="Current"
        value={draft.current}
        onChange={(value) => set('current', value)}
        none="not in the file, or of something else"
        options={options('current')}
      />
      {draft.current !== '' && (
        <PickField
          label="A current over nought flows"
          value={draft.positive}
          onChange={(value) => set('positive', value)}
          options={(['out of the battery', 'into the battery'] as const).map((value) => ({ value, name: value }))}
          refused={asked ? wayOpen : null}
        />
      )}
      <ChoiceField
        label="Temperature at the battery"
        value={draft.air}
        onChange={(value) => set('air', value)}
        none="not in the file, or of something else"
        options={options('air')}
      />
      <div className="boat-acts">
        <button type="submit" className="main">
          Read the file
        </button>
        <div role="alert">
          {asked && (voltsOpen || wayOpen) && <Refused text="Not read yet: see the marked fields." />}
        </div>
      </div>
    </form>
  );
}

const key = (transducer: string): string => `${none}${transducer}`;
const name = (chosen: string): string => chosen.slice(none.length);
