import { describe, expect, it } from 'vitest';
import { type Book, checkBook } from '#boat-book';
import { type Recipe, recipes } from '#jobs';
import { addDays } from '#units';
import { checkProblem, startSearch, violations } from '#workplan';
import { demoBook } from '../../../examples/demo-book.ts';
import { problemFrom } from './problem-from.ts';
import { recipeAmount } from './recipe-amounts.ts';
import { recipeSetUpChoices, recipeTaken, zoneOfRecipe } from './recipe-job.ts';

type Day = Parameters<typeof demoBook>[0];
const today = '2026-05-06' as Day;
const all: [string, Recipe][] = Object.entries(recipes);

/** Whole middling sizes, as a keeper would measure them. */
const sizesOf = ({ asks }: Recipe) =>
  Object.fromEntries(asks.map(({ id, low, high }) => [id, Math.max(low, Math.round(low + (high - low) / 4))]));

/** The demo boat with nothing else to do, 24 fine days with a helper, and a drive that also has a slope. */
function fineDays(): Book {
  const demo = demoBook(today);
  const days = Array.from({ length: 24 }, (_, n) => addDays(today, n + 1));
  const fine = (date: Day): Book['weather'][string] => ({
    place: 'drive',
    date,
    fromHour: 0,
    toHour: 24,
    rain: false,
    rainOdds_pct: 0,
    wind_kn: 4,
    air_C: 19,
    surface_C: 19,
    humidity_pct: 55,
    basis: 'typed',
    entered: `${today}T00:00:00Z`,
  });
  return {
    ...demo,
    places: { drive: { ...demo.places.drive!, features: ['water', 'mains', 'level', 'slope'] } },
    jobs: {},
    steps: {},
    juryRigs: Object.fromEntries(
      Object.entries(demo.juryRigs).map(([id, rig]) => [id, { ...rig, job: null }] as const),
    ),
    plans: {},
    log: {},
    jobDays: Object.fromEntries(
      days.map((date, n) => [
        `day-${n}`,
        {
          date,
          from: '08:00',
          to: '18:00',
          place: 'drive',
          setOut_min: 10,
          clearUp_min: 10,
          breaks: [],
          hands: [{ id: 'joss', name: 'Joss', from: '08:00', to: '18:00' }],
          endsIn: [],
        },
      ]),
    ),
    weather: Object.fromEntries(days.map((date, n) => [`weather-${n}`, fine(date)])),
  };
}
const demo = fineDays();

function taken(recipe: Recipe, book = demo) {
  let made = 0;
  return recipeTaken(recipe, book, {
    job: { title: recipe.title, consequence: recipe.consequence, zone: zoneOfRecipe(recipe, book) },
    sizes: sizesOf(recipe),
    newId: () => `made-${++made}`,
  });
}

/** The book with the job in it, all that it takes on hand. */
function withJob(recipe: Recipe): Book {
  const { tools, mixes, stores, job: put } = taken(recipe).take;
  const { steps = [], ...job } = put;
  const whole = { fitting: null, due: null, outing: null, said: '', heldTo: null, heldAt: null, afterJobs: [] };
  return {
    ...demo,
    tools: { ...demo.tools, ...Object.fromEntries(tools.map(({ id, ...tool }) => [id!, tool])) },
    mixes: { ...demo.mixes, ...Object.fromEntries(mixes.map(({ id, ...mix }) => [id!, mix])) },
    stores: Object.fromEntries(
      [...Object.entries(demo.stores), ...stores.map(({ id, ...store }) => [id!, store] as const)].map(
        ([id, store]) => [id, { ...store, onHand: true, expected: null, amount: null, opened: null }],
      ),
    ),
    jobs: { made: { ...whole, why: '', zone: null, note: '', ...job, opened: today, state: 'open', closed: null } },
    steps: Object.fromEntries(
      steps.map(({ id, ...step }, order) => [
        id!,
        {
          keeper: true,
          notAlone: false,
          zone: null,
          needs: {},
          features: [],
          tools: [],
          setUps: [],
          stores: [],
          dusty: false,
          wet: false,
          mix: null,
          waits: [],
          follows: null,
          cautions: [],
          ...step,
          job: 'made',
          order,
          progress: { kind: 'open' },
        },
      ]),
    ),
  };
}

describe.each(all)('%s on the demo boat', (_, recipe) => {
  it('is planned, every step and wait of it, within its rules', () => {
    const book = withJob(recipe);
    expect(checkBook(book)).toEqual([]);
    const matter = problemFrom(book, { now: `${today}T00:00:00Z` });
    if (matter.kind !== 'problem') throw new Error(matter.because);
    expect(checkProblem(matter.problem).kind).toBe('sound');
    const search = startSearch(matter.problem, { seed: 1 });
    search.advance(30);
    const { plan } = search.outcome('as it stands');
    expect(plan.steps.map(({ step }) => step).sort()).toEqual(Object.keys(book.steps).sort());
    expect(violations(plan, matter.problem)).toEqual([]);
    const waits = Object.values(book.steps).flatMap((step) => step.waits);
    expect(plan.waits.map(({ wait }) => wait).sort()).toEqual(waits.map(({ id }) => id).sort());
  });

  it('has every amount known once it is measured, and a zone, with no set-up she does not have', () => {
    const { stores, notes, take } = taken(recipe);
    for (const { name, amount } of stores) expect(amount.kind, `${name}: ${JSON.stringify(amount)}`).toBe('known');
    expect(notes).toEqual([]);
    expect(recipe.zones.length === 0 || take.job.zone !== null).toBe(true);
  });
});

describe('taking a recipe', () => {
  it('takes what is in the stores, and has the rest to be got with its amount', () => {
    const { take, stores } = taken(recipes['rebed-shroud-plate']);
    expect(stores.find(({ name }) => name === 'Polyurethane sealant')?.store).toBe('sealant');
    // bolts of another size are in the tray: they are not taken for these
    const size = sizesOf(recipes['rebed-shroud-plate']).bolt;
    expect(take.stores.map(({ name }) => name)).toEqual([`Bolts and nuts for the shroud plate, A4, ${size} mm`]);
    const { stores: got } = taken(recipes['reeve-halyard']).take;
    expect(got[0]).toMatchObject({ onHand: false, expected: null, lead_days: null });
    expect(got[0]).toMatchObject({ name: 'Low-stretch braid, thickness as the old', unit: 'm' });
  });

  it('works amounts out from the sizes, and names the size that is missing', () => {
    const recipe = recipes['rebed-shroud-plate'];
    const sealant = recipe.steps[4]!.stores[0]!;
    // 80 × 60 mm under 2 mm is 9.6 ml; half as much again for what is squeezed out: 14.4 ml
    expect(recipeAmount(sealant, recipe, { length: 80, width: 60 }, demo, null)).toEqual({
      kind: 'known',
      amount: expect.closeTo(14.4, 9),
      unit: 'ml',
      words: '14 ml: 1 tube of 290 ml',
      coverage: null,
    });
    expect(recipeAmount(sealant, recipe, { length: 80 }, demo, null)).toEqual({
      kind: 'not known',
      because: 'not measured yet: width of the plate',
    });
  });

  it('keeps with the job what it usually leaves to be done, what to write down, and which step is its proof', () => {
    const { job } = taken(recipes['rebed-shroud-plate']).take;
    expect(job.followUps).toMatchObject([
      { title: 'Look at the rebedded plate again', after: { kind: 'next outing', else_days: 60 } },
    ]);
    expect(job.writeDown?.[0]).toBe('what it was bedded with');
    expect(job.steps?.map(({ proof }) => proof)).toEqual([...Array(5).fill(undefined), 'load']);
  });

  it('takes the bottom’s paint from the boat’s own sizes', () => {
    const recipe = recipes.antifouling;
    const paint = recipe.steps.flatMap(({ stores }) => stores)[0]!;
    // 0.75 · 5.6 · (2.2 + 0.25) = 10.29 m²; 1.3 coats at 8 m²/l = 1.672 l, and 15 % for the roller = 1.923 l
    expect(recipeAmount(paint, recipe, {}, demo, null)).toMatchObject({
      amount: expect.closeTo(1.923, 3),
      words: '1.9 l: 1 tin of 2.5 l, at 8 m² a litre, our figure; the tin wins',
    });
  });

  it('offers every set-up of the boat, and those a recipe asks for that she does not have', () => {
    const asked = [
      { setUp: 'mast', state: 'down' },
      { setUp: 'boat', state: 'on a cradle' },
      { setUp: 'lee cloth', state: 'off' },
    ];
    const choices = recipeSetUpChoices(demo, asked);
    expect(choices.find(({ setUp }) => setUp === 'mast')).toMatchObject({ inBook: true, state: 'down' });
    const boat = choices.find(({ setUp }) => setUp === 'boat')!;
    expect([boat.inBook, boat.state, boat.states.includes('on a cradle')]).toEqual([true, 'on a cradle', true]);
    expect(choices.find(({ setUp }) => setUp === 'lee cloth')).toEqual({
      setUp: 'lee cloth',
      inBook: false,
      states: ['off'],
      state: 'off',
    });
    expect(choices.filter(({ inBook }) => inBook)).toHaveLength(Object.keys(demo.setUps).length);
  });

  it('leaves out, with a note, a set-up that a boat does not have', () => {
    const bare: Book = { ...demo, setUps: {} };
    const { notes, take } = taken(recipes['drain-ring'], bare);
    expect(take.job.steps?.every(({ setUps }) => setUps?.length === 0)).toBe(true);
    expect(notes).toEqual([]);
    expect(taken(recipes.antifouling, bare).notes).toEqual([
      'The boat book has no set-up ‘boat: propped’: the steps that want it do not ask for it.',
    ]);
  });

  it('keeps the window of the next coat as a follow of the wait before it', () => {
    const [, first, second] = taken(recipes['varnish-maintenance']).take.job.steps!;
    expect(second?.follows).toEqual([
      {
        step: first?.id,
        wait: first?.waits?.[0]?.id,
        least_min: 0,
        greatest_min: 2880,
        past: { kind: 'abrade', minutes: 25 },
      },
    ]);
  });
});
