/** A mains charger or an outboard that charges a battery, and how long it runs on a day aboard. */
import type { Book, ChargerRecord, Id } from '#boat-book';
import { PickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

type Kind = ChargerRecord['kind'];
type Named = 'name' | 'kind' | 'amps' | 'volts' | 'hours';

export default function ChargerSheet({
  book,
  battery,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly battery: Id;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? undefined : book.chargers[id];
  const { chemistry, nominal_V } = book.batteries[battery]!;
  const { draft, set, changed } = useDraft<{
    name: string;
    kind: Kind | '';
    amps: string;
    volts: string;
    hours: string;
  }>({
    name: record?.name ?? '',
    kind: record?.kind ?? '',
    amps: record?.amps.toString() ?? '',
    volts: record?.volts_max.toString() ?? '',
    hours: record?.hours_a_day?.toString() ?? '',
  });
  const scale = nominal_V / 12;
  const read = (form: FormReading<Named>) => {
    return {
      name: form.words('name', draft.name, 'Name the charger.'),
      battery,
      kind: form.chosen('kind', draft.kind, 'Choose what it runs on.'),
      amps: form.figure('amps', draft.amps, { min: 0.1, max: 500, unit: 'A' }),
      volts_max: form.figure('volts', draft.volts, { min: 12 * scale, max: 16 * scale, unit: 'V' }),
      hours_a_day: form.figureOrNone('hours', draft.hours, { min: 0, max: 24, unit: 'h' }),
    };
  };
  return (
    <RecordSheet
      title={record ? `Change the charger: ${record.name}` : 'A charger'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addCharger', fields) : run('changeCharger', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeCharger', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <PickField
            label="It runs on"
            value={draft.kind}
            onChange={(value) => set('kind', value)}
            options={[
              { value: 'mains', name: 'the mains' },
              { value: 'outboard', name: 'the outboard' },
            ]}
            refused={faults.kind}
          />
          {draft.kind === 'mains' && (
            <p className="battery-caution">
              <b>Take care:</b> Shore power and all that is wired to it are for a licensed person. This counts only what
              comes out at the battery.
            </p>
          )}
          {draft.kind === 'outboard' && (
            <p className="battery-caution">
              <b>Take care:</b> Run it only in the open: exhaust kills in a closed cockpit or tent. The kill-cord stays
              on.
            </p>
          )}
          <NumberField
            label="Amps it gives"
            unit="A"
            note={
              draft.kind === 'outboard'
                ? 'At the revs you usually motor at; often half of what the brochure says.'
                : 'As its label says; near full the battery takes less.'
            }
            value={draft.amps}
            onChange={(text) => set('amps', text)}
            refused={faults.amps}
          />
          <NumberField
            label="Volts it goes up to"
            unit="V"
            note="From its label or its book."
            value={draft.volts}
            onChange={(text) => set('volts', text)}
            refused={faults.volts}
          />
          <p className="battery-caution">
            <b>Take care:</b>{' '}
            {chemistry === 'lifepo4'
              ? 'It must be made for LiFePO4, and never charge below 0 °C.'
              : 'Lead on charge gives off hydrogen: open the locker, no flame and no spark near it.'}
          </p>
          <NumberField
            label="Hours it runs on a day aboard"
            unit="h"
            note="Counted in the nights ahead, from 09:00. Left empty, nothing is counted; what it would bring is told apart."
            value={draft.hours}
            onChange={(text) => set('hours', text)}
            refused={faults.hours}
          />
        </>
      )}
    </RecordSheet>
  );
}
