/** What is asked about a joint. */
import { jointMaterialNames, materialSaid } from '#materials';
import { ChoiceField, PickField, TickField } from '../../../parts/choice-fields.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { NumberField } from '../../../parts/text-fields.tsx';
import type { BeddingDraft, BeddingFault } from './bedding-draft.ts';

const materials = jointMaterialNames.map((value) => ({ value, name: materialSaid(value) }));

export function BeddingFields({
  draft,
  onChange,
  faults,
}: {
  readonly draft: BeddingDraft;
  readonly onChange: <K extends keyof BeddingDraft>(key: K, value: BeddingDraft[K]) => void;
  readonly faults: Faults<BeddingFault>;
}) {
  return (
    <>
      <ChoiceField
        label="One part is"
        value={draft.a}
        onChange={(value) => onChange('a', value)}
        options={materials}
        refused={faults.a}
      />
      <ChoiceField
        label="The other part is"
        value={draft.b}
        onChange={(value) => onChange('b', value)}
        options={materials}
        refused={faults.b}
      />
      <PickField
        label="It is held by"
        value={draft.held}
        onChange={(value) => onChange('held', value)}
        options={[
          { value: 'fastened', name: 'screws or bolts: it only seals' },
          { value: 'stuck', name: 'itself, with next to no load' },
          { value: 'glued', name: 'itself, with a load on it' },
          { value: 'filled', name: 'nothing: it fills a hole or hollow' },
        ]}
        refused={faults.held}
      />
      <PickField
        label="It must come apart again"
        value={draft.apart}
        onChange={(value) => onChange('apart', value)}
        options={[
          { value: 'some day', name: 'some day' },
          { value: 'each season', name: 'every season' },
          { value: 'never', name: 'never' },
        ]}
        refused={faults.apart}
      />
      <PickField
        label="It is"
        value={draft.where}
        onChange={(value) => onChange('where', value)}
        options={[
          { value: 'weather', name: 'in spray, rain and sun' },
          { value: 'under water', name: 'under water' },
          { value: 'indoors', name: 'in the dry' },
          { value: 'fuel', name: 'in fuel' },
          { value: 'hot', name: 'hot, from 80 °C' },
        ]}
        refused={faults.where}
      />
      <div className="field-grid">
        <NumberField
          label="Room between the parts"
          unit="mm; under a fitting 1 to 3"
          value={draft.gap_mm}
          onChange={(text) => onChange('gap_mm', text)}
          refused={faults.gap}
        />
        <NumberField
          label="One moves against the other by"
          unit="mm, there and back"
          value={draft.movement_mm}
          onChange={(text) => onChange('movement_mm', text)}
          refused={faults.movement}
        />
      </div>
      <TickField
        label="Paint goes over its edge, or near it"
        value={draft.painted}
        onChange={(on) => onChange('painted', on)}
      />
      <p className="soft small">How much of it: what is bedded, from above. Left empty, no amount is worked out.</p>
      <div className="field-grid">
        <NumberField
          label="Long"
          unit="mm"
          value={draft.long_mm}
          onChange={(text) => onChange('long_mm', text)}
          refused={faults.long}
        />
        <NumberField
          label="Wide"
          unit="mm"
          value={draft.wide_mm}
          onChange={(text) => onChange('wide_mm', text)}
          refused={faults.wide}
        />
        <NumberField
          label="How many alike"
          unit=""
          whole
          value={draft.count}
          onChange={(text) => onChange('count', text)}
          refused={faults.count}
        />
      </div>
    </>
  );
}
