import { describe, expect, it } from 'vitest';
import { recipes } from '../recipes/recipes.ts';
import type { Recipe } from './recipe.ts';
import { recipeFaults } from './recipe-lint.ts';

const all: [string, Recipe][] = Object.entries(recipes);

describe.each(all)('%s', (_, recipe) => {
  it('has times, waits, cautions, amounts and a proof that hang together', () => {
    expect(recipeFaults(recipe)).toEqual([]);
  });
});

describe('the recipes together', () => {
  /** Runs of three words of a recipe's steps and proof, without case and stops. */
  const runs = ({ steps, proof }: Recipe) => {
    const words = [...steps, proof.step]
      .map(({ title }) => title)
      .join(' ')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu)!;
    return new Set(words.slice(0, -2).map((_word, i) => words.slice(i, i + 3).join(' ')));
  };
  it('share no more than a third of their step text, two by two', () => {
    const each = all.map(([id, recipe]) => ({ id, text: runs(recipe) }));
    const alike = each.flatMap((a, i) =>
      each.slice(i + 1).flatMap((b) => {
        const shared = [...a.text].filter((run) => b.text.has(run)).length;
        return shared > Math.min(a.text.size, b.text.size) / 3 ? [`${a.id} and ${b.id}: ${shared}`] : [];
      }),
    );
    expect(alike).toEqual([]);
  });
  it('have each a wait, a caution or a proof that no other has', () => {
    const own = ({ steps, proof }: Recipe) => [
      ...steps.flatMap(({ waits, cautions }) => [...waits.map(({ title }) => title), ...cautions]),
      proof.step.title,
    ];
    const count = new Map<string, number>();
    for (const [, recipe] of all) for (const text of new Set(own(recipe))) count.set(text, (count.get(text) ?? 0) + 1);
    for (const [id, recipe] of all)
      expect(
        own(recipe).some((text) => count.get(text) === 1),
        id,
      ).toBe(true);
  });
});

describe('what is wrong with a recipe', () => {
  const sound: Recipe = recipes['rebed-shroud-plate'];
  const changed = (index: number, parts: Partial<Recipe['steps'][number]>): Recipe => ({
    ...sound,
    steps: sound.steps.map((step, i) => (i === index ? { ...step, ...parts } : step)),
  });
  it('is a wet step without a wait', () => {
    expect(recipeFaults(changed(4, { waits: [] })).map(({ wrong }) => wrong)).toContain(
      'it leaves something wet or soft, and nothing waits for it',
    );
  });
  it('is a hazard without its caution, by name', () => {
    expect(recipeFaults(changed(1, { cautions: [] }))).toEqual([
      {
        where: 'step 2, ‘Drill each hole half as wide again, and hook wet core back 10 mm all round’',
        wrong: 'dust: no caution says so',
        right: 'a caution that speaks of mask or goggles',
      },
    ]);
  });
  it('is an amount that hangs on a size nobody is asked for', () => {
    const faults = recipeFaults({ ...sound, asks: sound.asks.filter(({ id }) => id !== 'deck') });
    expect(faults.map(({ where }) => where)).toEqual(['‘Epoxy, fast hardener’', '‘Filler powder for epoxy’']);
  });
});
