/** A circuit: what draws, when it is on, its fuse and its wire. */
import type { Book, Id } from '#boat-book';
import { ChoiceField, PickField, TickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import {
  type CircuitFault,
  circuitDraft,
  circuitOf,
  fuseKindOptions,
  insulations,
  sizeOptions,
} from './circuit-draft.ts';
import { UsesFields } from './uses-fields.tsx';

export default function CircuitSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.circuits[id] ?? null);
  const batteryIds = Object.keys(book.batteries);
  const { draft, set, changed } = useDraft(circuitDraft(record, batteryIds.length === 1 ? batteryIds[0]! : ''));
  return (
    <RecordSheet
      title={record ? `Change the circuit: ${record.name}` : 'A circuit'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<CircuitFault>) => circuitOf(draft, book.batteries, form)}
      onKeep={(fields, run) => (id === null ? run('addCircuit', fields) : run('changeCircuit', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeCircuit', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="What hangs on it"
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          {batteryIds.length > 1 && (
            <ChoiceField
              label="On the battery"
              value={draft.battery}
              onChange={(battery) => set('battery', battery)}
              options={batteryIds.map((value) => ({ value, name: book.batteries[value]!.name }))}
              refused={faults.battery}
            />
          )}
          <PickField
            label="Its label says"
            value={draft.drawsIn}
            onChange={(value) => set('drawsIn', value)}
            options={[
              { value: 'watts', name: 'watts' },
              { value: 'amps', name: 'amperes' },
            ]}
          />
          <div className="field-grid">
            <NumberField
              label="Draws"
              unit={draft.drawsIn === 'watts' ? 'W, all of it at once' : 'A, all of it at once'}
              value={draft.draws}
              onChange={(text) => set('draws', text)}
              refused={faults.draws}
            />
            <NumberField
              label="Share of the time it runs"
              unit="%"
              value={draft.duty}
              onChange={(text) => set('duty', text)}
              refused={faults.duty}
            />
          </div>
          <UsesFields draft={draft.uses} onChange={(uses) => set('uses', uses)} faults={faults} />
          <PickField
            label="Its volts matter"
            value={draft.needs}
            onChange={(value) => set('needs', value)}
            options={[
              { value: 'critical', name: 'yes: 3 % may be lost' },
              { value: 'other', name: 'no: 10 % may be lost' },
            ]}
            refused={faults.needs}
          />
          <p className="field-note circuits-under">
            They matter for navigation lights, bilge pump, radio, charging; less for a cabin light or a fan.
          </p>
          <h3 className="circuits-fields">The fuse</h3>
          <PickField
            label="At the battery end"
            value={draft.fused}
            onChange={(value) => set('fused', value)}
            options={[
              { value: 'fitted', name: 'a fuse is fitted' },
              { value: 'none', name: 'none' },
            ]}
            refused={faults.fused}
          />
          {draft.fused === 'fitted' && (
            <>
              <div className="field-grid">
                <NumberField
                  label="Rating"
                  unit="A"
                  value={draft.fuse_A}
                  onChange={(text) => set('fuse_A', text)}
                  refused={faults.fuse_A}
                />
                <NumberField
                  label="From the battery along the lead"
                  unit="mm"
                  value={draft.fuseAt_mm}
                  onChange={(text) => set('fuseAt_mm', text)}
                  refused={faults.fuseAt_mm}
                />
              </div>
              <TickField
                label="In a sheath or conduit all the way to the fuse"
                value={draft.sheathed}
                onChange={(on) => set('sheathed', on)}
              />
              <ChoiceField
                label="Kind of fuse"
                value={draft.fuseKind}
                onChange={(value) => set('fuseKind', value)}
                options={fuseKindOptions}
                none="not known"
              />
            </>
          )}
          <h3 className="circuits-fields">The wire</h3>
          <PickField
            label="Its size and length"
            value={draft.wired}
            onChange={(value) => set('wired', value)}
            options={[
              { value: 'known', name: 'known' },
              { value: 'not known', name: 'not known' },
            ]}
            refused={faults.wired}
          />
          {draft.wired === 'known' && (
            <>
              <ChoiceField
                label="Size"
                note="Printed on it. Of two different ones along the way the thinner."
                value={draft.area}
                onChange={(value) => set('area', value)}
                options={sizeOptions(draft.area)}
                refused={faults.area}
              />
              <ChoiceField
                label="Its insulation bears"
                note="Printed on it too; where it is not, take 70 °C."
                value={draft.insulation}
                onChange={(value) => set('insulation', value)}
                options={insulations}
                refused={faults.insulation}
              />
              <div className="field-grid">
                <NumberField
                  label="Length there and back"
                  unit="m"
                  note="Out to the device and home again: twice the way."
                  value={draft.length}
                  onChange={(text) => set('length', text)}
                  refused={faults.length}
                />
                <NumberField
                  label="Wires in its bundle"
                  unit="with current, its own two too"
                  whole
                  value={draft.bundled}
                  onChange={(text) => set('bundled', text)}
                  refused={faults.bundled}
                />
              </div>
              <TickField
                label="Some of it runs through an engine space"
                value={draft.engineSpace}
                onChange={(on) => set('engineSpace', on)}
              />
            </>
          )}
          <ChoiceField
            label="Where it ends"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            none="not said"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
        </>
      )}
    </RecordSheet>
  );
}
