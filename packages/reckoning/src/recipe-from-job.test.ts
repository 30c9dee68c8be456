import { describe, expect, it } from 'vitest';
import type { Book, LogEntry, Step } from '#boat-book';
import { recipes } from '#jobs';
import { cureLawOf } from '#materials';
import { minutesFor, recipeFromJob } from './recipe-from-job.ts';
import { recipeTaken } from './recipe-job.ts';
import { recipeIdNow, recipesOfBook } from './recipes-of-book.ts';
import { job, smallBook, soak, step } from './testing/small-book.ts';

const done = {
  progress: { kind: 'done', started: '2026-05-06T10:00:00Z', finished: '2026-05-06T10:45:00Z' },
} as const;
const spent = (id: string, spent_min: number): LogEntry => ({
  at: '2026-05-06T10:45:00Z',
  kind: 'step done',
  job: 'box',
  step: id,
  zone: null,
  who: '',
  spent_min,
  text: '',
});
const tin = {
  kind: 'reacts',
  atReference_min: 200,
  reference_C: 20,
  doublesPer_C: 10,
  minimum_C: 5,
  from: 'the tin',
} as const;
const plain = { setUps: [], still: [], needs: {}, wet: false };
const steps: Record<string, Step> = {
  cut: step('box', 0, 'Cut the sides', {
    ...done,
    dusty: true,
    tools: [{ tool: 'saw', count: 1 }],
    cautions: ['Dust: mask.'],
  }),
  glue: step('box', 1, 'Glue the box', {
    ...done,
    minutes: { low: 20, likely: 30, high: 60 },
    stores: ['glue', 'clips'],
    takes: [{ store: 'glue', amount: 40, unit: 'ml' }],
    waits: [
      { id: 'w', title: 'Glue cures', law: tin, ...plain },
      { id: 'v', title: 'Epoxy sets', law: cureLawOf('epoxy-fast').law, ...plain },
      soak('u', 90),
    ],
  }),
  shake: step('box', 2, 'Shake it', { ...done, proof: 'pull' }),
};
const store = { keptAt: '', onHand: true, expected: null, lead_days: null, note: '' };
const book: Book = smallBook({
  jobs: {
    box: job('Build the tool box', { state: 'done', closed: '2026-05-06', writeDown: ['glue'] }),
    later: job('Varnish the box', { followsJob: 'box', due: '2026-05-20', why: 'Bare wood greys.' }),
  },
  steps: { ...steps, coat: step('later', 0, 'Varnish it') },
  tools: { saw: { name: 'tenon saw', count: 1, keptAt: '' } },
  stores: { glue: { ...store, name: 'Wood glue, waterproof' }, clips: { ...store, name: 'Brass clips', unit: '' } },
  log: { one: spent('glue', 45) },
});
const said = { title: 'Build a box', group: 'cabin', when: 'A box is wanted.', words: ['box'] } as const;
const made = recipeFromJob(book, 'box', { ...said, proof: { kind: 'pull', step: 'last' } })!;

describe('a recipe made from a done job', () => {
  it('has its steps with what they really took, and low and high as far from it as they were', () => {
    expect(made.steps.map(({ title, minutes }) => [title, minutes])).toEqual([
      ['Cut the sides', { low: 20, likely: 30, high: 60 }],
      // by hand: 45 of 30 thought is half as much again
      ['Glue the box', { low: 30, likely: 45, high: 90 }],
    ]);
    expect(minutesFor({ low: 1, likely: 2, high: 1440 }, 4)).toEqual({ low: 2, likely: 4, high: 1440 });
  });

  it('has its last step for a proof, its tools, cautions, what to write down and what followed', () => {
    expect(made.proof).toMatchObject({ kind: 'pull', step: { title: 'Shake it' } });
    expect(made.steps[0]).toMatchObject({ tools: ['tenon saw'], cautions: ['Dust: mask.'], dusty: true });
    expect(made.writeDown).toEqual(['glue']);
    expect(made.followUps).toEqual([
      {
        title: 'Varnish the box',
        because: 'Bare wood greys.',
        minutes: { low: 20, likely: 30, high: 60 },
        consequence: 'worsens',
        after: { kind: 'days', least_days: 0, most_days: 14 },
      },
    ]);
  });

  it('keeps what was taken of a store as it was, and asks for what nobody counted', () => {
    const [glue, clips] = made.steps[1]!.stores;
    expect(glue?.amount).toEqual({ kind: 'set', amount: 40, unit: 'ml', because: 'what ‘Build the tool box’ took' });
    expect(clips?.amount).toMatchObject({ kind: 'each', of: 'amount-1' });
    expect(made.asks).toMatchObject([{ id: 'amount-1', words: 'how much: Brass clips' }]);
  });

  it('waits by the tin’s own figures where they were given, by the product where they are ours', () => {
    expect(made.steps[1]!.waits.map(({ law }) => law)).toEqual([
      { kind: 'own law', law: tin },
      { kind: 'product', product: 'epoxy-fast' },
      { kind: 'set time', minutes: 90, because: 'as it was at ‘Build the tool box’' },
    ]);
  });

  it('makes the job again when it is taken, its waits by the same laws', () => {
    let ids = 0;
    const { take } = recipeTaken(made, book, {
      job: { title: 'Again', consequence: 'comfort', zone: null },
      sizes: { 'amount-1': 6 },
      newId: () => `again-${++ids}`,
    });
    expect([take.tools, take.stores]).toEqual([[], []]);
    const [, glue, proof] = take.job.steps!;
    expect(glue!.waits!.map(({ law }) => law)).toEqual(
      steps.glue!.waits.map(({ law }) => ({ ...law, from: expect.any(String) })),
    );
    expect(glue!.takes).toEqual([
      { store: 'glue', amount: 40, unit: 'ml' },
      { store: 'clips', amount: 6, unit: '' },
    ]);
    expect(proof).toMatchObject({ title: 'Shake it', proof: 'pull' });
  });

  it('keeps a recipe’s rules for amounts where the job came of one', () => {
    const plate = recipes['rebed-shroud-plate'];
    const fill = plate.steps.find(({ stores }) => stores.some(({ name }) => name.startsWith('Epoxy')))!;
    const came = smallBook({
      jobs: { box: job('Rebed it', { recipe: 'rebed-shroud-plate', state: 'done', closed: '2026-05-06' }) },
      steps: { a: step('box', 0, fill.title, done), b: step('box', 1, 'Hose it', done) },
    });
    const again = recipeFromJob(came, 'box', { ...said, proof: { kind: 'hose', step: 'last' } })!;
    expect(again.steps[0]!.stores).toEqual(fill.stores);
    expect(again.asks.map(({ id }) => id)).toContain('deck');
  });

  it('is none where nothing is left besides the proof', () => {
    const bare = smallBook({ jobs: { box: job('Box') }, steps: { a: step('box', 0, 'Do it') } });
    expect(recipeFromJob(bare, 'box', { ...said, proof: { kind: 'look', step: 'last' } })).toBeNull();
    const shown = { title: 'Look at it', minutes: { low: 1, likely: 2, high: 3 } };
    expect(recipeFromJob(bare, 'box', { ...said, proof: { kind: 'look', step: shown } })?.proof.step.title).toBe(
      'Look at it',
    );
    expect(() => recipeFromJob(bare, 'gone', { ...said, proof: { kind: 'look', step: 'last' } })).toThrow(RangeError);
  });
});

describe('the recipes of a book', () => {
  const own = { ...recipes.impeller, standsFor: 'impeller', fromJob: null };
  const mine = { recipes: { mine: own } };
  it('are the house’s and the keeper’s own, one standing in the place of another', () => {
    const all = recipesOfBook(mine);
    expect(all.impeller).toBeUndefined();
    expect(all.mine).toBe(own);
    expect(Object.keys(all).length).toBe(Object.keys(recipes).length);
    expect(recipesOfBook(mine)).toBe(all);
  });
  it('are found under the name a job knew them by', () => {
    expect(recipeIdNow(mine, 'impeller')).toBe('mine');
    expect(recipeIdNow(mine, 'mine')).toBe('mine');
    expect(recipeIdNow(mine, 'flares')).toBe('flares');
    expect(recipeIdNow(mine, 'gone')).toBeNull();
  });
});
