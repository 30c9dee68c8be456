import { describe, expect, it, test } from 'vitest';
import { recipes } from '#jobs';
import type { RecipeRecord } from './recipe-records.ts';
import { recipeSchema } from './recipe-schemas.ts';
import { begun, done, step } from './testing/devices.ts';

const plate = recipes['rebed-shroud-plate'];
const own: RecipeRecord = { ...plate, standsFor: 'rebed-shroud-plate', fromJob: null };

describe('the recipes of the house', () => {
  it.each(Object.entries(recipes))('%s has the form of a recipe', (_, recipe) => {
    expect(recipeSchema.safeParse(recipe).error?.issues ?? []).toEqual([]);
  });
  it('is no form: minutes out of order, no steps, a field it does not know', () => {
    const [first, ...others] = plate.steps;
    for (const wrong of [
      { ...plate, steps: [{ ...first, minutes: { low: 30, likely: 20, high: 40 } }, ...others] },
      { ...plate, steps: [] },
      { ...plate, price: 3 },
    ])
      expect(recipeSchema.safeParse(wrong).success).toBe(false);
  });
});

describe('a recipe of the keeper’s own', () => {
  it('is put in, changed, taken out, and brought back by undo', () => {
    const book = begun();
    const id = done(book.run('addRecipe', own));
    done(book.run('changeRecipe', { id, when: 'When it weeps.' }));
    expect(book.view().recipes[id]).toEqual({ ...own, when: 'When it weeps.' });
    done(book.run('removeRecipe', { id }));
    expect(book.view().recipes).toEqual({});
    expect(book.undoTitle()).toBe(`Take out a recipe: ${own.title}`);
    book.undo();
    expect(book.view().recipes[id]?.when).toBe('When it weeps.');
  });

  it('stands in the place of one of the house, and no second one does', () => {
    const book = begun();
    done(book.run('addRecipe', own));
    expect(book.run('addRecipe', own)).toMatchObject({
      kind: 'refused',
      where: 'standsFor',
      wrong: `your recipe ‘${own.title}’ stands in that place already`,
    });
    expect(book.run('addRecipe', { ...own, standsFor: null }).kind).toBe('done');
  });

  it('is refused where an amount hangs on a size nobody is asked for, by name', () => {
    const book = begun();
    const asks = own.asks.filter(({ id }) => id !== 'deck');
    expect(book.run('addRecipe', { ...own, asks })).toMatchObject({
      kind: 'refused',
      wrong: 'the amount of ‘Epoxy, fast hardener’ hangs on ‘deck’, which is not asked for',
    });
    const [first, ...rest] = own.asks;
    expect(book.run('addRecipe', { ...own, asks: [{ ...first!, low: 9, high: 3 }, ...rest] }).kind).toBe('refused');
    expect(book.view().recipes).toEqual({});
  });
});

describe('a recipe taken', () => {
  const job = {
    title: 'Rebed the plate',
    consequence: 'worsens' as const,
    steps: [{ ...step, tools: [{ tool: 'spanner', count: 1 }], stores: ['sealant'], mix: 'epoxy' }],
  };
  const taken = {
    tools: [{ id: 'spanner', name: '10 mm spanner', count: 1, keptAt: '' }],
    mixes: [{ id: 'epoxy', name: 'Thickened epoxy', mixing_min: 10, potLife_min: 40 }],
    stores: [{ id: 'sealant', name: 'Sealant', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' }],
    job,
  };
  it('is in the book with all it names, and goes by one undo', () => {
    const book = begun();
    const before = book.view();
    done(book.run('takeRecipe', taken));
    const { jobs, steps, tools, mixes, stores } = book.view();
    expect([jobs, steps, tools, mixes, stores].map((each) => Object.keys(each).length)).toEqual([1, 1, 1, 1, 1]);
    expect(book.undoTitle()).toBe('Put in a job by a recipe: Rebed the plate');
    book.undo();
    expect(book.view()).toEqual(before);
  });
  it('is refused whole where it names what is not there', () => {
    const book = begun();
    expect(book.run('takeRecipe', { ...taken, stores: [] })).toMatchObject({ kind: 'refused' });
    expect(book.view().jobs).toEqual({});
    expect(book.view().tools).toEqual({});
  });
});

test('follow-ups go in linked to their job, and go by one undo', () => {
  const book = begun();
  const job = done(book.run('addJob', { title: 'Rebed the plate', consequence: 'worsens' }));
  const followUps = ['Look again', 'Nip it up'].map((title) => ({
    title,
    consequence: 'worsens' as const,
    steps: [step],
  }));
  expect(book.run('putInFollowUps', { job, followUps })).toEqual({ kind: 'done', id: null });
  const put = Object.values(book.view().jobs).filter(({ followsJob }) => followsJob === job);
  expect(put.map(({ title }) => title)).toEqual(['Look again', 'Nip it up']);
  book.undo();
  expect(Object.keys(book.view().jobs)).toEqual([job]);
  expect(book.run('putInFollowUps', { job, followUps: [] }).kind).toBe('refused');
  expect(book.run('putInFollowUps', { job: 'gone', followUps }).kind).toBe('refused');
});
