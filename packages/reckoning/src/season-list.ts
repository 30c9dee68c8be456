/** Lay-up and fit-out: what is to be done at the ends of a season, of what this boat has. Our own lists; common practice. */
import type { Book, Id, OperationFields } from '#boat-book';
import { recipes } from '#jobs';
import { recipeTaken, zoneOfRecipe } from './recipe-job.ts';

export type SeasonName = 'lay-up' | 'fit-out';

interface SeasonItem {
  readonly id: string;
  readonly text: string;
  /** what she must have for it: a word of a zone, a fitting or a set-up, or a collection with something in it; null: any boat */
  readonly of: string | null;
  /** the recipe it may be done by; null: none */
  readonly recipe: string | null;
  readonly caution: string;
}

const lines: Readonly<Record<SeasonName, readonly SeasonItem[]>> = {
  'lay-up': [
    {
      id: 'flush',
      text: 'Run the outboard in fresh water, fuel out, oil in the gear and the bores',
      of: 'outboard',
      recipe: 'lay-up-engine',
      caution: 'Exhaust gas kills indoors; petrol outdoors only, no flame.',
    },
    {
      id: 'battery',
      text: 'Battery off, full, in a cool dry place, with a date to charge it again',
      of: 'batteries',
      recipe: 'battery-terminals',
      caution: 'A charging battery gives off hydrogen: air through, no spark.',
    },
    {
      id: 'water',
      text: 'Water out of tanks, pumps, hoses and the toilet, cocks left open',
      of: null,
      recipe: null,
      caution: '',
    },
    {
      id: 'mast',
      text: 'Mast down, stays washed, coiled and labelled',
      of: 'mast',
      recipe: 'rig-look-over',
      caution: 'Look up for power lines first, and keep out from under the mast.',
    },
    {
      id: 'sails',
      text: 'Sails washed in fresh water, dried and rolled, seams looked over',
      of: null,
      recipe: 'wash-sails',
      caution: '',
    },
    { id: 'ropes', text: 'Sheets and halyards washed and hung', of: null, recipe: 'wash-ropes', caution: '' },
    {
      id: 'board',
      text: 'Board resting on the trailer, its wire slack',
      of: 'board',
      recipe: null,
      caution: 'No hand or foot under the board while it can fall.',
    },
    {
      id: 'gas',
      text: 'Gas bottle off, cap on, ashore in the open',
      of: 'stove',
      recipe: null,
      caution: 'Gas is heavier than air and lies in bilges.',
    },
    {
      id: 'flares',
      text: 'Flares, lifejackets and first-aid kit ashore, dry, their dates read',
      of: null,
      recipe: null,
      caution: 'Flares are kept dry and locked, never fired off to be rid of.',
    },
    {
      id: 'lockers',
      text: 'Lockers, bilge and cushions empty, dry and propped open',
      of: null,
      recipe: 'cabin-mould',
      caution: '',
    },
    {
      id: 'trailer',
      text: 'Trailer: hubs rinsed and greased, wheels off the ground, brake off and chocked',
      of: 'trailer',
      recipe: 'wheel-bearings',
      caution: 'An axle stand before a hand goes under. Never on the jack alone.',
    },
    {
      id: 'cover',
      text: 'Cover on over a ridge, tied so that it cannot chafe or hold water',
      of: null,
      recipe: 'lay-up-boat',
      caution: '',
    },
  ],
  'fit-out': [
    {
      id: 'hull',
      text: 'Hull, through-hulls and drains looked over before she is wet',
      of: null,
      recipe: 'seacock',
      caution: '',
    },
    {
      id: 'rig',
      text: 'Every pin, screw and terminal looked at before the mast goes up',
      of: 'mast',
      recipe: 'fit-out',
      caution: 'Look up for power lines first: 5 m from them at least, where nothing else is known.',
    },
    {
      id: 'battery',
      text: 'Battery charged, rested and read; terminals clean',
      of: 'batteries',
      recipe: 'battery-terminals',
      caution: 'Loads off, negative lead off first and on last.',
    },
    { id: 'lights', text: 'Navigation lights and pumps run', of: 'circuits', recipe: null, caution: '' },
    {
      id: 'engine',
      text: 'Outboard: plugs, oil, fresh fuel, cooling water seen to run',
      of: 'outboard',
      recipe: 'engine-service',
      caution: 'Kill-cord on the one who starts it; hands clear of the propeller.',
    },
    {
      id: 'safety',
      text: 'Lifejackets inflated overnight, extinguisher and flares by their printed dates',
      of: null,
      recipe: 'lifejacket',
      caution: 'A printed date, the maker and the law come before any list.',
    },
    {
      id: 'board',
      text: 'Board, its wire and its pivot looked at; hoisted once',
      of: 'board',
      recipe: 'board-wire',
      caution: 'No hand or foot under the board while it can fall.',
    },
    {
      id: 'rudder',
      text: 'Rudder hung and moved from side to side; play felt',
      of: 'rudder',
      recipe: 'rudder-pintles',
      caution: '',
    },
    {
      id: 'anchor',
      text: 'Anchor, chain and rope ranged; shackle moused; the end made fast',
      of: null,
      recipe: 'range-the-rode',
      caution: '',
    },
    {
      id: 'trailer',
      text: 'Trailer: bearings, brakes, lights, tyres, straps',
      of: 'trailer',
      recipe: 'trailer-lights',
      caution: 'An axle stand before a hand goes under.',
    },
    { id: 'first-aid', text: 'First-aid kit gone through', of: null, recipe: 'first-aid', caution: '' },
  ],
};

export interface SeasonLine {
  readonly id: string;
  readonly text: string;
  readonly caution: string;
  readonly recipe: string | null;
  /** the tick of this season; null: not ticked */
  readonly tick: Id | null;
  /** the open job put in for it this season */
  readonly job: Id | null;
}

/** The season that a day lies in: lay-up is of the autumn's year, fit-out of the spring's. */
export function seasonYear(list: SeasonName, today: string): number {
  const year = Number(today.slice(0, 4));
  // a winter runs over the new year: until July it is still the lay-up of the year before
  return list === 'lay-up' && today.slice(5, 7) < '07'
    ? year - 1
    : list === 'fit-out' && today.slice(5, 7) > '09'
      ? year + 1
      : year;
}

/** The lines of a season's list that this boat has something for, with what is ticked of it. */
export function seasonList(book: Book, list: SeasonName, year: number): readonly SeasonLine[] {
  return lines[list]
    .filter(({ of }) => of === null || boatHas(book, of))
    .map(({ id, text, caution, recipe }) => ({
      id,
      text,
      caution,
      recipe: recipe !== null && Object.hasOwn(recipes, recipe) ? recipe : null,
      tick:
        Object.entries(book.seasonTicks).find(
          ([, tick]) => tick.list === list && tick.year === year && tick.item === id,
        )?.[0] ?? null,
      job:
        Object.entries(book.jobs).find(
          ([, { said, state }]) => state === 'open' && said === saidOf(list, year, text),
        )?.[0] ?? null,
    }));
}

/** The job of a line, by its recipe. @throws RangeError for a line without a recipe */
export function seasonJob(
  book: Book,
  list: SeasonName,
  year: number,
  { text, recipe }: SeasonLine,
  newId: () => Id,
): OperationFields<'takeRecipe'> {
  const house: Readonly<Record<string, (typeof recipes)[keyof typeof recipes]>> = recipes;
  const of = recipe === null ? undefined : house[recipe];
  if (of === undefined || recipe === null) throw new RangeError(`the line '${text}' has no recipe`);
  const job = {
    title: of.title,
    consequence: of.consequence,
    zone: zoneOfRecipe(of, book),
    said: saidOf(list, year, text),
    recipe,
  };
  return recipeTaken(of, book, { job, sizes: {}, newId }).take;
}

const saidOf = (list: SeasonName, year: number, text: string) =>
  `${list === 'lay-up' ? 'Lay-up' : 'Fit-out'} ${year}: ${text}`;

const collections = ['batteries', 'circuits'] as const;

/** Whether a boat has a thing: a collection with something in it, or a word in the names of her zones, fittings, set-ups or dues. */
export function boatHas(book: Book, of: string): boolean {
  const collection = collections.find((name) => name === of);
  if (collection) return Object.keys(book[collection]).length > 0;
  const names = [
    ...Object.values(book.zones).flatMap(({ name, words }) => [name, ...words]),
    ...Object.values(book.fittings).map(({ name }) => name),
    ...Object.values(book.setUps).flatMap(({ name, states }) => [name, ...states.map((state) => state.name)]),
    ...Object.values(book.dues).map(({ title }) => title),
  ];
  return names.some((name) => name.toLowerCase().includes(of));
}
