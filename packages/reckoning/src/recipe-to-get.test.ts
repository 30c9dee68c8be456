/** Every thing that a recipe of the house takes, from its line to the list to get and back into the stores. */
import { describe, expect, it } from 'vitest';
import type { Book } from '#boat-book';
import { type Recipe, recipes } from '#jobs';
import { demoBook } from '../../../examples/demo-book.ts';
import { recipeTaken } from './recipe-job.ts';
import { converted, isStoreUnit } from './store-amounts.ts';
import { storeStandings } from './store-standing.ts';
import { step } from './testing/small-book.ts';
import { sizeFit } from './thing-size.ts';
import { toGet } from './to-get.ts';

const today = '2026-11-26';
const demo = demoBook(today);
const all = Object.entries(recipes) as [string, Recipe][];
const lines = (recipe: Recipe) => [...recipe.steps, recipe.proof.step].flatMap(({ stores }) => stores);

/** Sizes in the middle of what is asked, as if measured. */
const measured = ({ asks }: Recipe) =>
  Object.fromEntries(
    asks.map(({ id, low, high, whole }) => [id, whole ? Math.ceil((low + high) / 2) : (low + high) / 2]),
  );

/** The demo boat with no stores of her own and this recipe taken. */
function taken(recipe: Recipe): { readonly book: Book; readonly took: ReturnType<typeof recipeTaken> } {
  const bare: Book = { ...demo, stores: {}, jobs: {}, steps: {}, juryRigs: {}, tins: {} };
  let made = 0;
  const took = recipeTaken(recipe, bare, {
    job: { title: recipe.title, consequence: recipe.consequence, zone: null },
    sizes: measured(recipe),
    newId: () => `made-${++made}`,
  });
  const { steps = [], ...rest } = took.take.job;
  const job = Object.values(demo.jobs)[0]!;
  return {
    took,
    book: {
      ...bare,
      stores: Object.fromEntries(took.take.stores.map(({ id, ...store }) => [id!, store])),
      jobs: {
        made: {
          ...job,
          title: rest.title,
          state: 'open',
          closed: null,
          due: null,
          outing: null,
          heldTo: null,
          heldAt: null,
          afterJobs: [],
        },
      },
      steps: Object.fromEntries(
        steps.map(({ id, ...each }, order) => [
          id!,
          { ...step('made', order, each.title), ...each, job: 'made', order, progress: { kind: 'open' as const } },
        ]),
      ),
    },
  };
}

it('counts every line of every recipe in a unit that the stores hold', () => {
  const units = all.flatMap(([id, recipe]) => lines(recipe).map((line) => [id, line.name, line.amount.unit] as const));
  expect(units.length).toBeGreaterThanOrEqual(180);
  expect(units.filter(([, , unit]) => !isStoreUnit(unit))).toEqual([]);
});

describe.each(all)('%s on the list to get', (_, recipe) => {
  it('stands there once a thing with an amount, and what is got is enough', () => {
    const { book, took } = taken(recipe);
    const list = toGet(book, { planned: null, now: Date.parse(`${today}T00:00:00Z`), timeZone: 'UTC' });
    // one line a thing: every store that was put in, none twice
    expect(list.map(({ store }) => store).sort()).toEqual(Object.keys(book.stores).sort());
    expect(new Set(list.map(({ name }) => name)).size).toBe(list.length);
    for (const { amount } of took.stores) expect(amount.kind).toBe('known');
    for (const line of list) {
      expect(line.buy, line.name).not.toBeNull();
      expect(line.buy!.amount).toBeGreaterThan(0);
    }
    // all of it got, at the amounts of the list: nothing is left to get, and nothing is negative
    const got: Book = {
      ...book,
      stores: Object.fromEntries(
        Object.entries(book.stores).map(([id, store]) => {
          const { buy } = list.find((line) => line.store === id)!;
          return [id, { ...store, onHand: true, amount: buy!.amount, unit: buy!.unit, got: today }];
        }),
      ),
    };
    for (const standing of storeStandings(got, today).values()) {
      expect(standing.short).toBe(false);
      expect(standing.toGet).toBeNull();
      expect(standing.free).toBeGreaterThanOrEqual(0);
    }
  });

  it('finds its things in the stores again when it is taken anew: none is got twice', () => {
    const { book } = taken(recipe);
    const again = recipeTaken(recipe, book, {
      job: { title: recipe.title, consequence: recipe.consequence, zone: null },
      sizes: measured(recipe),
      newId: () => 'new',
    });
    expect(again.take.stores.map(({ name }) => name)).toEqual([]);
    for (const { name, store } of again.stores) expect(sizeFit(name, book.stores[store!]!.name).kind).toBe('fits');
  });

  it('takes nothing in a unit that its own pack does not hold', () => {
    for (const line of lines(recipe)) {
      if (line.pack === null || !isStoreUnit(line.amount.unit)) continue;
      const unit = line.amount.unit;
      expect(converted(1, { from: unit, to: unit, name: line.name, pack: line.pack })).toMatchObject({
        kind: 'amount',
        amount: 1,
      });
      expect(line.pack.holds).toBeGreaterThan(0);
    }
  });
});
