/** Tools, stores and what the place must have, with a line to name a thing that is not in the book yet. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import type { PlaceFeature } from '#workplan';
import { ManyField } from '../../parts/choice-fields.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import type { StepDraft } from './step-draft.ts';

export const featureName: Readonly<Record<PlaceFeature, string>> = {
  water: 'a water tap',
  mains: 'mains power',
  level: 'level ground',
  slope: 'a slope',
};

export function NeedsFields({
  book,
  draft,
  set,
  refused,
}: {
  readonly book: Book;
  readonly draft: StepDraft;
  readonly set: <K extends keyof StepDraft>(key: K, value: StepDraft[K]) => void;
  readonly refused: string | undefined;
}) {
  const { run, refusal } = useRun();
  const several = draft.tools.filter(({ tool }) => (book.tools[tool]?.count ?? 1) > 1);
  return (
    <>
      <ManyField
        label="Tools"
        values={draft.tools.map(({ tool }) => tool)}
        onChange={(tools) =>
          set(
            'tools',
            tools.map((tool) => draft.tools.find((one) => one.tool === tool) ?? { tool, count: '1' }),
          )
        }
        options={Object.entries(book.tools).map(([value, { name }]) => ({ value, name }))}
        empty="There are no tools in the book yet."
      />
      {several.map(({ tool, count }) => (
        <NumberField
          key={tool}
          label={`How many: ${book.tools[tool]?.name}`}
          unit={`of ${book.tools[tool]?.count}`}
          whole
          value={count}
          onChange={(text) =>
            set(
              'tools',
              draft.tools.map((one) => (one.tool === tool ? { tool, count: text } : one)),
            )
          }
          refused={refused}
        />
      ))}
      <NewName
        label="A tool that is not in the list"
        word="Add the tool"
        onAdd={async (name) => {
          const outcome = await run('addTool', { name, count: 1, keptAt: '' });
          if (outcome.kind === 'done' && outcome.id !== null)
            set('tools', [...draft.tools, { tool: outcome.id, count: '1' }]);
        }}
      />
      <ManyField
        label="Stores"
        values={draft.stores}
        onChange={(stores) => set('stores', stores)}
        options={Object.entries(book.stores).map(([value, { name, onHand }]) => ({
          value,
          name: onHand ? name : `${name} (to get)`,
        }))}
        empty="There are no stores in the book yet."
      />
      <NewName
        label="Something that must be got"
        word="Add to get"
        onAdd={async (name) => {
          const outcome = await run('addStore', {
            name,
            keptAt: '',
            onHand: false,
            expected: null,
            lead_days: null,
            note: '',
          });
          if (outcome.kind === 'done' && outcome.id !== null) set('stores', [...draft.stores, outcome.id]);
        }}
      />
      <RefusalLine refusal={refusal} />
      <ManyField
        label="The place must have"
        values={draft.features}
        onChange={(features) => set('features', features)}
        options={(Object.keys(featureName) as PlaceFeature[]).map((value) => ({ value, name: featureName[value] }))}
        empty=""
      />
    </>
  );
}

function NewName({
  label,
  word,
  onAdd,
}: {
  readonly label: string;
  readonly word: string;
  readonly onAdd: (name: string) => Promise<void>;
}) {
  const [name, setName] = useState('');
  return (
    <div className="step-new">
      <TextField label={label} value={name} onChange={setName} />
      <button
        type="button"
        disabled={name.trim() === ''}
        onClick={async () => {
          await onAdd(name.trim());
          setName('');
        }}
      >
        {word}
      </button>
    </div>
  );
}
