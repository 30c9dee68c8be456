/** What is asked about a fitting and what fastens it. */
import type { Book } from '#boat-book';
import { type PathUse, pathUses, patternCounts, screwNames } from '#loads';
import { ChoiceField, PickField } from '../../../../parts/choice-fields.tsx';
import type { Faults } from '../../../../parts/read-form.ts';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { bases, type FittingDraft, type FittingFault } from './fitting-draft.ts';

export function FittingFields({
  book,
  draft,
  onChange,
  faults,
}: {
  readonly book: Book;
  readonly draft: FittingDraft;
  readonly onChange: <K extends keyof FittingDraft>(key: K, value: FittingDraft[K]) => void;
  readonly faults: Faults<FittingFault>;
}) {
  const threaded = draft.by === 'bolt' || draft.by === 'machine-screw';
  return (
    <>
      <TextField
        label="The fitting"
        value={draft.name}
        onChange={(text) => onChange('name', text)}
        refused={faults.name}
        suggest={Object.values(book.fittings).map(({ name }) => name)}
      />
      <ChoiceField
        label="It is for"
        value={draft.use}
        onChange={(use) => onChange('use', use)}
        options={(Object.keys(pathUses) as PathUse[]).map((value) => ({ value, name: pathUses[value] }))}
        refused={faults.use}
      />
      <div className="field-grid">
        <NumberField
          label="The pull on it"
          unit="N; 10 N is about 1 kg"
          value={draft.pull_N}
          onChange={(text) => onChange('pull_N', text)}
          refused={faults.pull}
        />
        <ChoiceField
          label="It pulls"
          value={draft.angle_deg}
          onChange={(angle) => onChange('angle_deg', angle)}
          options={[
            { value: '0', name: 'straight out' },
            { value: '30', name: '30° from straight out' },
            { value: '45', name: 'halfway, 45°' },
            { value: '60', name: '60° from straight out' },
            { value: '90', name: 'along the surface' },
          ]}
          refused={faults.angle}
        />
        <NumberField
          label="The pull stands above the surface"
          unit="mm"
          value={draft.height_mm}
          onChange={(text) => onChange('height_mm', text)}
          refused={faults.height}
        />
        <NumberField
          label="Front row to back row"
          unit="mm, along the pull"
          value={draft.rows_mm}
          onChange={(text) => onChange('rows_mm', text)}
          refused={faults.rows}
        />
      </div>
      <ChoiceField
        label="It holds in"
        value={draft.base}
        onChange={(base) => onChange('base', base)}
        options={bases}
        refused={faults.base}
      />
      <PickField
        label="Fastened with"
        value={draft.by}
        onChange={(by) => onChange('by', by)}
        options={[
          { value: 'bolt', name: 'bolts through' },
          { value: 'machine-screw', name: 'machine screws in a cut thread' },
          { value: 'wood-screw', name: 'wood or self-tapping screws' },
          { value: 'coach-screw', name: 'coach screws' },
        ]}
        refused={faults.by}
      />
      <div className="field-grid">
        {threaded ? (
          <ChoiceField
            label="Size"
            value={draft.bolt}
            onChange={(bolt) => onChange('bolt', bolt)}
            options={screwNames.map((name) => ({ value: name.slice(1), name }))}
            refused={faults.size}
          />
        ) : (
          <NumberField
            label="Thickness of the shank"
            unit="mm"
            value={draft.screw_mm}
            onChange={(text) => onChange('screw_mm', text)}
            refused={faults.size}
          />
        )}
        <ChoiceField
          label="How many, in two rows"
          value={draft.count}
          onChange={(count) => onChange('count', count)}
          options={patternCounts.map((count) => ({ value: String(count), name: String(count) }))}
        />
        <NumberField
          label={draft.by === 'bolt' ? 'Thickness it goes through' : 'Thread stands in it'}
          unit="mm; of a cored deck the lower skin"
          value={draft.thickness_mm}
          onChange={(text) => onChange('thickness_mm', text)}
          refused={faults.thickness}
        />
        {draft.by === 'bolt' && (
          <NumberField
            label="Stiff pad under the washers"
            unit="mm thick; 0 with none"
            value={draft.pad_mm}
            onChange={(text) => onChange('pad_mm', text)}
            refused={faults.pad}
          />
        )}
      </div>
      {draft.by === 'bolt' && (
        <PickField
          label="Washers"
          value={draft.washer}
          onChange={(washer) => onChange('washer', washer)}
          options={[
            { value: 'plain', name: 'plain' },
            { value: 'large', name: 'large, three times the bolt' },
          ]}
        />
      )}
      <ChoiceField
        label="Zone"
        value={draft.zone}
        onChange={(zone) => onChange('zone', zone)}
        none="not said"
        options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
      />
    </>
  );
}
