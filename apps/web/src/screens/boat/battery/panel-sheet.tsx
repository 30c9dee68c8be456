/** A solar panel on a battery, as its label and its place aboard say. */
import type { Book, Id, PanelRecord } from '#boat-book';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

type Regulator = PanelRecord['regulator'];
type Named = 'name' | 'peak_W' | 'regulator' | 'tilt' | 'heading' | 'kept' | 'coefficient' | 'length' | 'area';

const regulators: readonly { readonly value: Regulator; readonly name: string }[] = [
  { value: 'simple', name: 'simple: passes on the panel’s amps' },
  { value: 'tracking', name: 'tracking: turns spare volts into amps' },
  { value: 'none', name: 'none: straight on the battery' },
];

export default function PanelSheet({
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
  const record = id === null ? undefined : book.panels[id];
  const { draft, set, changed } = useDraft<{
    name: string;
    peak_W: string;
    regulator: Regulator | '';
    tilt: string;
    heading: string;
    kept: string;
    coefficient: string;
    length: string;
    area: string;
  }>({
    name: record?.name ?? '',
    peak_W: record?.peak_W.toString() ?? '',
    regulator: record?.regulator ?? '',
    tilt: record?.tilt_deg.toString() ?? '0',
    heading: record?.heading_deg.toString() ?? '0',
    kept: record?.kept_pct?.toString() ?? '',
    coefficient: record?.coefficient_pct_C?.toString() ?? '',
    length: record?.leads?.lengthThereAndBack_m.toString() ?? '',
    area: record?.leads?.area_mm2.toString() ?? '',
  });
  const level = Number(draft.tilt.replace(',', '.')) === 0;
  const read = (form: FormReading<Named>) => {
    const length_m = form.figureOrNone('length', draft.length, { min: 0.1, max: 100, unit: 'm' });
    const area_mm2 = form.figureOrNone('area', draft.area, { min: 0.1, max: 200, unit: 'mm²' });
    if (length_m === null && area_mm2 !== null)
      form.refuse('length', 'The size of the leads is given and their length is not. Give both, or neither.');
    if (length_m !== null && area_mm2 === null)
      form.refuse('area', 'The length of the leads is given and their size is not. Give both, or neither.');
    return {
      name: form.words('name', draft.name, 'Name the panel.'),
      battery,
      peak_W: form.figure('peak_W', draft.peak_W, { min: 0.1, max: 5000, unit: 'W' }),
      regulator: form.chosen('regulator', draft.regulator, 'Choose what stands between panel and battery.'),
      tilt_deg: form.figure('tilt', draft.tilt, { min: 0, max: 90, unit: '°' }),
      heading_deg: level ? 0 : form.figure('heading', draft.heading, { min: 0, max: 360, unit: '°' }),
      kept_pct: form.figureOrNone('kept', draft.kept, { min: 0, max: 100, unit: '%' }),
      coefficient_pct_C: form.figureOrNone('coefficient', draft.coefficient, { min: -2, max: 0, unit: '%' }),
      leads: length_m !== null && area_mm2 !== null ? { lengthThereAndBack_m: length_m, area_mm2 } : null,
    };
  };
  return (
    <RecordSheet
      title={record ? `Change the panel: ${record.name}` : 'A panel'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addPanel', fields) : run('changePanel', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removePanel', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="Name"
            note="Such as: on the hatch, on the rail."
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          <NumberField
            label="Peak power on its label"
            unit="W"
            value={draft.peak_W}
            onChange={(text) => set('peak_W', text)}
            refused={faults.peak_W}
          />
          <ChoiceField
            label="Regulator"
            value={draft.regulator}
            onChange={(value) => set('regulator', value)}
            options={regulators}
            refused={faults.regulator}
          />
          <p className="battery-caution">
            <b>Take care:</b> Regulator to the battery first, panel last; off in the other order. A fuse at the
            battery’s end of the lead.
          </p>
          <div className="field-row">
            <NumberField
              label="Tilt from level"
              unit="°"
              note="0 where it lies flat."
              value={draft.tilt}
              onChange={(text) => set('tilt', text)}
              refused={faults.tilt}
            />
            {!level && (
              <NumberField
                label="Faces"
                unit="° true, from north"
                note="At anchor the bow swings: lay it level."
                value={draft.heading}
                onChange={(text) => set('heading', text)}
                refused={faults.heading}
              />
            )}
          </div>
          <NumberField
            label="Sun that gets past mast, boom and ropes"
            unit="%"
            note="Your guess. Left empty, 80 is taken: our assumption."
            value={draft.kept}
            onChange={(text) => set('kept', text)}
            refused={faults.kept}
          />
          <div className="field-row">
            <NumberField
              label="Leads, there and back"
              unit="m"
              value={draft.length}
              onChange={(text) => set('length', text)}
              refused={faults.length}
            />
            <NumberField
              label="Size of the leads"
              unit="mm²"
              value={draft.area}
              onChange={(text) => set('area', text)}
              refused={faults.area}
            />
          </div>
          <NumberField
            label="Change of power with heat, from its label"
            unit="% for each °C"
            note="With its minus, such as −0.4. Left empty, it is not known."
            value={draft.coefficient}
            onChange={(text) => set('coefficient', text)}
            refused={faults.coefficient}
          />
        </>
      )}
    </RecordSheet>
  );
}
