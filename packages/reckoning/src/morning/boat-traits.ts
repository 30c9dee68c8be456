/** What of a boat's book the morning lists hang on, and what they name of it. */
import type { Book, Outing } from '#boat-book';
import type { Naming, Trait } from '#morning';
import { boatHas } from '../season-list.ts';
import { ballLoadsSaid } from '../trailer/trailer-told.ts';

const anyOf = (book: Book, ...words: readonly string[]) => words.some((word) => boatHas(book, word));
const values = <T>(records: Readonly<Record<string, T>>): readonly T[] => Object.values(records);

/** How each trait is known, and what it is called where she lacks it. `null`: it is of the outing, and never lacking. */
const known: Readonly<
  Record<Trait, { readonly lacking: string | null; readonly of: (book: Book, outing: Outing) => boolean }>
> = {
  mast: { lacking: 'mast', of: ({ boat }) => boat.mastHeight_m > 0 },
  'raising gear': {
    lacking: 'pole or frame to raise the mast',
    of: (book) => values(book.masts).some(({ led }) => led !== null),
  },
  'masthead light': { lacking: 'masthead light', of: (book) => anyOf(book, 'masthead light') },
  board: { lacking: 'board that lifts', of: ({ boat }) => boat.board !== 'keel' },
  drain: { lacking: 'drain', of: (book) => anyOf(book, 'drain') },
  outboard: { lacking: 'outboard', of: (book) => anyOf(book, 'outboard', 'engine') },
  battery: { lacking: 'battery', of: (book) => anyOf(book, 'batteries') },
  lights: {
    lacking: 'lights',
    of: (book) => values(book.circuits).some(({ name }) => /light|lamp/i.test(name)) || anyOf(book, 'light'),
  },
  anchor: {
    lacking: 'anchor',
    of: (book) =>
      values(book.rodes).length > 0 ||
      values(book.loadPaths).some(({ use }) => use === 'ground-tackle') ||
      anyOf(book, 'anchor'),
  },
  rudder: { lacking: 'rudder', of: (book) => anyOf(book, 'rudder') },
  gas: { lacking: 'stove', of: (book) => anyOf(book, 'stove', 'gas bottle', 'cooker') },
  cover: { lacking: 'cover', of: (book) => anyOf(book, 'cover') },
  'trailer brakes': {
    lacking: 'brakes on the trailer',
    of: (book) => values(book.trailers).some(({ braked }) => braked) || anyOf(book, 'trailer brake', 'overrun'),
  },
  'by water': { lacking: null, of: (_, { way }) => way !== 'road' },
  nights: { lacking: null, of: (_, { nights }) => nights > 0 },
  alone: { lacking: null, of: (_, { crew }) => crew === 1 },
};
const traits = Object.keys(known) as Trait[];

/** What is true of this boat and this outing. */
export function traitsOf(book: Book, outing: Outing): ReadonlySet<Trait> {
  return new Set(traits.filter((trait) => known[trait].of(book, outing)));
}

/** What of the lists is left out because the book does not have it, in words: `outboard`. */
export function lackingOf(book: Book, outing: Outing): readonly string[] {
  const has = traitsOf(book, outing);
  return traits.flatMap((trait) => (has.has(trait) ? [] : (known[trait].lacking ?? [])));
}

/** What this boat has under a line, in her own names; empty where her book names nothing. */
export function namedOn(book: Book, outing: Outing, naming: Naming): string {
  switch (naming) {
    case 'stays':
      return values(book.stays)
        .map(({ name }) => name)
        .join('; ');
    case 'raising gear':
      return values(book.masts)
        .flatMap(({ led }) => (led === null ? [] : [`${led.by === 'pole' ? 'pole' : led.by} of ${led.length_m} m`]))
        .join('; ');
    case 'wind limit':
      return windLimit(book, outing);
    case 'masthead':
      return fittingsNamed(book, /masthead.*light/i);
    case 'board':
      return values(book.boardHoists)
        .map(({ name }) => name)
        .join('; ');
    case 'battery':
      return values(book.batteries)
        .map(({ name, nominal_Ah }) => `${name}, ${nominal_Ah} Ah`)
        .join('; ');
    case 'lights':
      return values(book.circuits)
        .filter(({ name }) => /light|lamp/i.test(name))
        .map(({ name }) => name)
        .join('; ');
    case 'rode':
      return values(book.rodes)
        .map(({ name, chain, rope }) =>
          [name, chain && `${chain.length_m} m of chain`, rope && `${rope.length_m} m of rope`]
            .filter(Boolean)
            .join(', '),
        )
        .join('; ');
    case 'drain':
      return fittingsNamed(book, /drain/i);
    case 'ball load':
      return ballLoadsSaid(book)
        .map(({ words }) => words)
        .join('; ');
    case 'nights':
      return outing.nights === 1 ? 'one night' : `${outing.nights} nights`;
  }
}

/** What the book says against a line this morning. */
export const cautionsOn = (book: Book, naming: Naming | null): readonly string[] =>
  naming === 'ball load' ? ballLoadsSaid(book).flatMap(({ over }) => over ?? []) : [];

const fittingsNamed = (book: Book, words: RegExp) =>
  values(book.fittings)
    .filter(({ name }) => words.test(name))
    .map(({ name }) => name)
    .join('; ');

/** The least wind in which the mast may go up or down by the boat's own set-ups, beside what is expected. */
function windLimit(book: Book, { wind_kn, gust_kn = null }: Outing): string {
  const limits = values(book.setUps)
    .filter(({ name }) => /mast/i.test(name))
    .flatMap(({ changes }) => changes.flatMap(({ needs }) => needs.wind_max_kn ?? []));
  const expected = [wind_kn === null ? '' : `${wind_kn} knots expected`, gust_kn === null ? '' : `gusts ${gust_kn}`]
    .filter(Boolean)
    .join(', ');
  const limit =
    limits.length === 0
      ? 'no limit is written down for her mast'
      : `to ${Math.min(...limits)} knots, as you set it for the mast`;
  return expected === '' ? limit : `${limit}; ${expected}`;
}
