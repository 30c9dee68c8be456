/** From the book to what stands on a trailer, with a change tried out on it. */
import type { Book, CarriedRecord, Id, MassBand, TrailerRecord } from '#boat-book';
import type { Carried } from '#trailer';
import { massOf_kg } from '../hoist-of-book.ts';

/** Things moved or weighed otherwise than the book has them: tried out, not kept. */
export type LoadChange = Readonly<Record<Id, { readonly ahead_m?: number; readonly likely_kg?: number }>>;

/** One thing that presses on the trailer; the trailer itself is one. */
export interface Standing {
  /** null: the trailer itself */
  readonly carried: Id | null;
  readonly name: string;
  readonly rides: CarriedRecord['rides'];
  readonly mass: MassBand;
  readonly ahead_m: number;
  readonly give_m: number;
  /** null: not measured */
  readonly up_m: number | null;
  readonly moves: CarriedRecord['moves'];
  readonly massFrom: CarriedRecord['massFrom'] | 'its papers' | 'the board’s hoist';
}

/** The name the trailer itself goes by among ids, which never have a space. */
export const itself = 'the trailer';
export const keyOf = ({ carried }: Pick<Standing, 'carried'>): string => carried ?? itself;

/** All that comes along on the road, the trailer first; in the order of the book. */
export function standingOn(book: Book, trailer: Id, record: TrailerRecord, change: LoadChange = {}): Standing[] {
  return [
    emptyTrailer(record),
    ...Object.entries(book.carried).flatMap(([id, thing]) =>
      thing.trailer === trailer && thing.aboard ? [standing(book, id, thing, change[id])] : [],
    ),
  ];
}

function emptyTrailer({ name, emptyMass, emptyPlace, ballAhead_m }: TrailerRecord): Standing {
  const likely = emptyMass.likely_kg;
  const weighed = emptyPlace.kind === 'ball weighed';
  return {
    carried: null,
    name: `${name}, empty`,
    rides: 'trailer',
    mass: emptyMass,
    // a ball load that was weighed is taken as it is, whatever the trailer weighs
    ahead_m: weighed ? share(emptyPlace.ball_kg * ballAhead_m, likely) : emptyPlace.ahead_m,
    give_m: weighed ? share(emptyPlace.give_kg * ballAhead_m, likely) : emptyPlace.give_m,
    up_m: null,
    moves: null,
    massFrom: 'its papers',
  };
}

const share = (moment: number, mass_kg: number): number => (mass_kg === 0 ? 0 : moment / mass_kg);

function standing(book: Book, id: Id, thing: CarriedRecord, tried: LoadChange[string] | undefined): Standing {
  const { mass, from } = massOfCarried(book, thing);
  return {
    carried: id,
    name: thing.name,
    rides: thing.rides,
    mass: tried?.likely_kg === undefined ? mass : bandAbout(mass, tried.likely_kg),
    ahead_m: tried?.ahead_m ?? thing.ahead_m,
    give_m: thing.give_m,
    up_m: thing.up_m,
    moves: thing.moves,
    massFrom: from,
  };
}

/** The mass of a thing: of a board what its hoist says, as far off as the thing's own may be. */
export function massOfCarried(
  book: Book,
  { mass, massFrom, hoist }: CarriedRecord,
): { readonly mass: MassBand; readonly from: Standing['massFrom'] } {
  const plate = hoist === null ? undefined : book.boardHoists[hoist]?.plate;
  return plate ? { mass: bandAbout(mass, massOf_kg(plate)), from: 'the board’s hoist' } : { mass, from: massFrom };
}

/** A band of the same width about another likely mass, never below nothing. */
export function bandAbout({ low_kg, likely_kg, high_kg }: MassBand, about_kg: number): MassBand {
  return {
    low_kg: Math.max(0, about_kg - (likely_kg - low_kg)),
    likely_kg: about_kg,
    high_kg: about_kg + (high_kg - likely_kg),
  };
}

/** How far off a mass may be: the wider side. [kg] */
export const massGive_kg = ({ low_kg, likely_kg, high_kg }: MassBand): number =>
  Math.max(likely_kg - low_kg, high_kg - likely_kg);

/** As it goes into the sums. A trailer whose empty ball load was weighed gives by that alone. */
export function inSums(standings: readonly Standing[], { emptyPlace }: TrailerRecord): Carried[] {
  return standings.map((each) => ({
    name: keyOf(each),
    mass_kg: each.mass.likely_kg,
    ahead_m: each.ahead_m,
    mass_give_kg: each.carried === null && emptyPlace.kind === 'ball weighed' ? 0 : massGive_kg(each.mass),
    place_give_m: each.give_m,
  }));
}
