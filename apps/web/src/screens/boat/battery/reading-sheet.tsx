/** A look at the voltmeter, with its circumstances: the volts, then one tap to keep. */
import { useState } from 'react';
import type { Book, Id, ReadingRecord } from '#boat-book';
import { ManyField, PickField } from '../../../parts/choice-fields.tsx';
import { Form } from '../../../parts/form.tsx';
import { type Faults, formReading } from '../../../parts/read-form.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { useRun } from '../../../parts/use-run.ts';

const said: Readonly<Record<ReadingRecord['circumstance'], string>> = {
  rested: 'All off for hours, panel dark. Before sunrise is best.',
  'under load': 'Something is on, the panel dark.',
  'on charge': 'The sun, a charger or the outboard brings something. It reads high.',
  'not said': 'Not known: it counts for little by itself.',
};

export default function ReadingSheet({
  book,
  battery,
  onClose,
}: {
  readonly book: Book;
  readonly battery: Id;
  readonly onClose: () => void;
}) {
  const record = book.batteries[battery]!;
  const circuits = Object.entries(book.circuits).filter(
    ([, circuit]) => circuit.battery === battery && circuit.uses.kind !== 'always',
  );
  const { draft, set, changed } = useDraft<{
    volts: string;
    circumstance: ReadingRecord['circumstance'] | '';
    on: readonly Id[];
    air: string;
    current: string;
  }>({ volts: '', circumstance: '', on: [], air: '', current: '' });
  const [faults, setFaults] = useState<Faults<'volts' | 'circumstance' | 'air' | 'current'>>({});
  const { run, refusal } = useRun();
  const scale = record.nominal_V / 12;
  const keep = async () => {
    const form = formReading<'volts' | 'circumstance' | 'air' | 'current'>();
    // what no battery of the kind shows is a slip: 1.25 for 12.5
    const volts = form.figure('volts', draft.volts, { min: 8 * scale, max: 16.5 * scale, unit: 'V' });
    const circumstance = form.chosen('circumstance', draft.circumstance, 'Choose how it was read.');
    const air_C = form.figureOrNone('air', draft.air, { min: -30, max: 50, unit: '°C' });
    const current_A = form.figureOrNone('current', draft.current, { min: -500, max: 500, unit: 'A' });
    setFaults(form.faults);
    if (!form.sound()) return;
    const on = circumstance === 'under load' ? draft.on : [];
    const panelDark = circumstance === 'not said' ? null : circumstance !== 'on charge';
    const at = new Date().toISOString();
    const outcome = await run('enterReadings', {
      readings: [{ battery, at, volts, current_A, air_C, circumstance, on, panelDark, by: 'hand' }],
    });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title={`${record.name}: the volts now`} onClose={onClose} unsaved={changed}>
      <Form keep="Keep it" onKeep={keep} faults={faults} refusal={refusal}>
        <NumberField
          label="Volts"
          unit="V"
          note="As the meter shows it, two places after the point if it has them."
          value={draft.volts}
          onChange={(text) => set('volts', text)}
          refused={faults.volts}
        />
        <PickField
          label="How it was read"
          value={draft.circumstance}
          onChange={(value) => set('circumstance', value)}
          options={(['rested', 'under load', 'on charge', 'not said'] as const).map((value) => ({
            value,
            name: value,
          }))}
          refused={faults.circumstance}
        />
        {draft.circumstance !== '' && <p className="soft small">{said[draft.circumstance]}</p>}
        {draft.circumstance === 'under load' && (
          <ManyField
            label="What was on"
            empty="No circuit is in the book."
            values={draft.on}
            onChange={(on) => set('on', on)}
            options={circuits.map(([value, { name }]) => ({ value, name }))}
          />
        )}
        <NumberField
          label="Air, if you know it"
          unit="°C"
          value={draft.air}
          onChange={(text) => set('air', text)}
          refused={faults.air}
        />
        <NumberField
          label="Current, if it was measured"
          unit="A, out of the battery"
          note="Less than nothing where it flows in."
          value={draft.current}
          onChange={(text) => set('current', text)}
          refused={faults.current}
        />
      </Form>
    </Sheet>
  );
}
