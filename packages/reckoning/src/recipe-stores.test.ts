/** What a recipe finds in the stores. The lines are invented; what is expected follows from the rule each test names. */
import { describe, expect, it } from 'vitest';
import type { Book, StoreRecord } from '#boat-book';
import { recipes } from '#jobs';
import { recipeTaken } from './recipe-job.ts';
import { smallBook } from './testing/small-book.ts';

const recipe = recipes['rebed-shroud-plate'];
const sizes = { bolts: 4, bolt: 8, deck: 20, length: 80, width: 60 };
const store = (name: string, parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name,
  keptAt: '',
  onHand: true,
  expected: null,
  lead_days: null,
  note: '',
  ...parts,
});
function taken(stores: Book['stores']) {
  let made = 0;
  return recipeTaken(recipe, smallBook({ stores }), {
    job: { title: recipe.title, consequence: recipe.consequence, zone: null },
    sizes,
    newId: () => `made-${++made}`,
  });
}
const ofBolts = (stores: Book['stores']) => taken(stores).stores.find(({ name }) => name.startsWith('Bolts'))?.store;

describe('what a recipe finds in the stores', () => {
  it('is of the size that was measured; M8 is 8 mm', () => {
    expect(ofBolts({ six: store('Bolts for a plate, M6'), eight: store('Bolts for a plate, M8') })).toBe('eight');
    expect(ofBolts({ six: store('Bolts for a plate, 6 mm') })).toBeNull();
  });

  it('is rather what is on hand, and rather what says its size', () => {
    expect(ofBolts({ toGet: store('Plate bolts, 8 mm', { onHand: false }), any: store('Plate bolts') })).toBe('any');
    expect(ofBolts({ any: store('Plate bolts'), said: store('Plate bolts, 8 mm') })).toBe('said');
  });

  it('is on the list to get once, however many jobs want it', () => {
    const { take } = taken({});
    const got = Object.fromEntries(take.stores.map(({ id, ...rest }) => [id!, rest]));
    expect(taken(got).take.stores).toEqual([]);
  });

  it('is taken from in its own unit, by the step that uses it', () => {
    const { take } = taken({ tube: store('Polyurethane sealant, white', { unit: 'l', amount: 0.29 }) });
    // 80 × 60 × 2 mm is 9.6 ml; half as much again for what is squeezed out: 14.4 ml, 0.0144 l
    const [line] = take.job.steps!.flatMap(({ takes }) => takes ?? []).filter((each) => each.store === 'tube');
    expect(line).toEqual({ store: 'tube', amount: expect.closeTo(0.0144, 6), unit: 'l' });
  });
});

describe('what a recipe mixes', () => {
  it('is one of the book’s mixes by its name, with what the step takes of it in grams', () => {
    const { take } = taken({});
    expect(take.mixes).toEqual([
      {
        id: expect.any(String),
        name: 'Thickened epoxy, fast hardener',
        family: 'epoxy-fast',
        mixing_min: 8,
        potLife_min: 20,
      },
    ]);
    const [step] = take.job.steps!.filter(({ mix }) => mix != null);
    // 1.1 g/ml, thickened: common practice
    const [epoxy] = step!.takes!;
    expect(step!.mix_g).toBeCloseTo(epoxy!.amount * 1.1, 1);
  });
});
