import { describe, expect, it } from 'vitest';
import { recipes } from '../recipes/recipes.ts';
import { recipesFor } from './find-recipes.ts';

describe('finding a recipe', () => {
  it.each([
    ['starboard shroud plate weeps, take off and rebed, mast down, 90 min, worsens', 'rebed-shroud-plate'],
    ['the lifting wire is frayed at the board', 'board-wire'],
    ['tiller varnish is dull, two coats before the regatta', 'varnish-maintenance'],
    ['wheel bearing rumbles on the left', 'wheel-bearings'],
    ['masthead light is dead', 'masthead-light'],
    ['flares are out of date', 'flares'],
    ['no tell-tale from the motor', 'impeller'],
  ] as const)('%s', (line, id) => {
    expect(recipesFor(line)[0]).toBe(id);
  });

  it('offers each recipe first or second for its own title and first words', () => {
    for (const [id, recipe] of Object.entries(recipes))
      expect(recipesFor(`${recipe.title}, ${recipe.words[0]}`).slice(0, 2), id).toContain(id);
  });

  it('offers nothing for words that are about no job', () => {
    expect(recipesFor('')).toEqual([]);
    expect(recipesFor('ring the harbour about the key')).toEqual([]);
  });
});
