/** What is asked about a new outlet. */
import type { Book } from '#boat-book';
import { ChoiceField, PickField, TickField } from '../../../parts/choice-fields.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { insulations } from './circuit-draft.ts';
import { type OutletDraft, type OutletFault, thereAndBackInWords } from './outlet-draft.ts';

export function OutletFields({
  book,
  draft,
  onChange,
  faults,
}: {
  readonly book: Book;
  readonly draft: OutletDraft;
  readonly onChange: <K extends keyof OutletDraft>(key: K, value: OutletDraft[K]) => void;
  readonly faults: Faults<OutletFault>;
}) {
  const batteries = Object.entries(book.batteries);
  const thereAndBack = thereAndBackInWords(draft.oneWay);
  return (
    <>
      <TextField
        label="What will hang on it"
        value={draft.name}
        onChange={(text) => onChange('name', text)}
        refused={faults.name}
      />
      {batteries.length !== 1 && (
        <ChoiceField
          label="On the battery"
          value={draft.battery}
          onChange={(battery) => onChange('battery', battery)}
          options={batteries.map(([value, { name }]) => ({ value, name }))}
          refused={faults.battery}
        />
      )}
      <PickField
        label="Its label says"
        value={draft.drawsIn}
        onChange={(value) => onChange('drawsIn', value)}
        options={[
          { value: 'watts', name: 'watts' },
          { value: 'amps', name: 'amperes' },
        ]}
      />
      <NumberField
        label="Draws"
        unit={draft.drawsIn === 'watts' ? 'W, all of it at once' : 'A, all of it at once'}
        value={draft.draws}
        onChange={(text) => onChange('draws', text)}
        refused={faults.draws}
      />
      <NumberField
        label="The way, one way"
        unit="m"
        note="Measured from the battery to the outlet with a string, along where the wire will lie."
        value={draft.oneWay}
        onChange={(text) => onChange('oneWay', text)}
        refused={faults.oneWay}
      />
      <p className="circuits-under" aria-live="polite">
        {thereAndBack}
      </p>
      <PickField
        label="Its volts matter"
        value={draft.needs}
        onChange={(value) => onChange('needs', value)}
        options={[
          { value: 'critical', name: 'yes: 3 % may be lost' },
          { value: 'other', name: 'no: 10 % may be lost' },
        ]}
        refused={faults.needs}
      />
      <p className="field-note circuits-under">
        They matter for navigation lights, bilge pump, radio, charging; less for a cabin light or a fan.
      </p>
      <NumberField
        label="The fuse can stand"
        unit="mm from the battery, along the lead"
        value={draft.fuseAt_mm}
        onChange={(text) => onChange('fuseAt_mm', text)}
        refused={faults.fuseAt_mm}
      />
      <TickField
        label="In a sheath or conduit all the way to the fuse"
        value={draft.sheathed}
        onChange={(on) => onChange('sheathed', on)}
      />
      <PickField
        label="Laid as"
        value={draft.run}
        onChange={(value) => onChange('run', value)}
        options={[
          { value: 'in-a-sheath', name: 'twin in a sheath' },
          { value: 'singly', name: 'two single wires' },
        ]}
      />
      <div className="field-grid">
        <ChoiceField
          label="Its insulation bears"
          value={draft.insulation}
          onChange={(value) => onChange('insulation', value)}
          options={insulations}
        />
        <NumberField
          label="Wires in its bundle"
          unit="its own two too"
          whole
          value={draft.bundled}
          onChange={(text) => onChange('bundled', text)}
          refused={faults.bundled}
        />
      </div>
      <TickField
        label="Some of it runs through an engine space"
        value={draft.engineSpace}
        onChange={(on) => onChange('engineSpace', on)}
      />
      <PickField
        label="Cable is sold by"
        value={draft.soldBy}
        onChange={(value) => onChange('soldBy', value)}
        options={[
          { value: 'metric', name: 'mm²' },
          { value: 'gauge', name: 'gauge (AWG)' },
        ]}
      />
      <ChoiceField
        label="Where it ends"
        value={draft.zone}
        onChange={(value) => onChange('zone', value)}
        none="not said"
        options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
      />
    </>
  );
}
