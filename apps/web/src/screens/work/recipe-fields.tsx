/** Fields that the sheets of a recipe share. */
import type { Recipe, RecipeProof } from '#jobs';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import type { RecipeKept } from './keep-recipe.ts';
import { proofNames } from './recipe-words.ts';

const groups: readonly Recipe['group'][] = [
  'ground tackle',
  'standing rigging',
  'running rigging',
  'sails and covers',
  'board and case',
  'rudder and steering',
  'hull and deck',
  'through-hulls, drains and leaks',
  'paint and varnish',
  'electrics',
  'trailer',
  'outboard',
  'safety gear',
  'cabin',
  'lay-up and fit-out',
];

export const groupField = (
  value: Recipe['group'] | '',
  onChange: (group: Recipe['group']) => void,
  refused?: string,
) => (
  <ChoiceField
    label="What it is about"
    value={value}
    onChange={(group) => group !== '' && onChange(group)}
    options={groups.map((group) => ({ value: group, name: group }))}
    refused={refused}
  />
);

export const proofField = (
  value: RecipeProof['kind'] | '',
  onChange: (kind: RecipeProof['kind']) => void,
  refused?: string,
) => (
  <ChoiceField
    label="How it is shown to hold"
    value={value}
    onChange={(kind) => kind !== '' && onChange(kind)}
    options={(Object.keys(proofNames) as RecipeProof['kind'][]).map((kind) => ({
      value: kind,
      name: proofNames[kind],
    }))}
    refused={refused}
  />
);

/** Said before a recipe that came with the program is changed. */
export const ownIfHouse = ({ own }: Pick<RecipeKept, 'own'>) =>
  own === null && (
    <p className="soft">
      This one came with the program. What you change is kept in a recipe of your own, which stands in its place; take
      that out, and this one is back as it was.
    </p>
  );
