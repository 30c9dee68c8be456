import { describe, expect, it } from 'vitest';
import { openLines } from '../corpus/recipe-lines/open.ts';
import { setAsideLines } from '../corpus/recipe-lines/set-aside.ts';
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

  it.each([
    '',
    'ring the harbour about the key',
    'buy milk and bread',
    'phone the insurance',
    'ask the neighbour for his van',
    'the keys are in the blue bag',
    'good day today, nothing to do',
    'lunch with the crew',
  ])('offers nothing for words that are about no job: %s', (line) => {
    expect(recipesFor(line)).toEqual([]);
  });

  it('looks through the recipes it is given', () => {
    const own = { ...recipes, mine: { ...recipes.impeller, title: 'Change the paddle', words: ['paddle'] } };
    expect(recipesFor('the paddle of the engine is worn', own)[0]).toBe('mine');
  });
});

/** How many of the lines have their recipe first, and how many among the three offered. */
function found(lines: readonly (readonly [line: string, recipe: string])[]) {
  const offered = lines.map(([line, id]) => (recipesFor(line) as string[]).indexOf(id));
  return {
    first: offered.filter((place) => place === 0).length,
    offered: offered.filter((place) => place >= 0).length,
  };
}

describe('finding by meaning', () => {
  it('names recipes that there are, and each line once', () => {
    const all = [...openLines, ...setAsideLines];
    for (const [line, id] of all) expect(Object.keys(recipes), line).toContain(id);
    expect(new Set(all.map(([line]) => line)).size).toBe(all.length);
  });
  it('finds what the lines want that it was made from: 69 of 80 first, 79 among three', () => {
    expect(openLines.length).toBe(80);
    expect(found(openLines)).toEqual({ first: 69, offered: 79 });
  });
  it('finds what lines want that were set aside: at least 7 of 10 first, 9 of 10 among three', () => {
    expect(setAsideLines.length).toBeGreaterThanOrEqual(40);
    const { first, offered } = found(setAsideLines);
    expect(first / setAsideLines.length).toBeGreaterThanOrEqual(0.7);
    expect(offered / setAsideLines.length).toBeGreaterThanOrEqual(0.9);
  });
});
