/** The lines of the house, list by list, in the order they are written in; and the rules of order between them. */
import { launch } from '../lists/launch.ts';
import { pack } from '../lists/pack.ts';
import { recover } from '../lists/recover.ts';
import { rig } from '../lists/rig.ts';
import { tow } from '../lists/tow.ts';
import type { OrderRule } from './checked-order.ts';
import type { MorningLine, MorningListName, Trait } from './morning-line.ts';

/** All of a list, for every boat there is. */
export const houseLines: Readonly<Record<MorningListName, readonly MorningLine[]>> = {
  pack,
  tow,
  rig,
  launch,
  recover,
};

/** The lines of a list for a boat and an outing with these traits. */
export function linesFor(list: MorningListName, traits: ReadonlySet<Trait>): readonly MorningLine[] {
  return houseLines[list].filter(({ of }) => of.every((trait) => traits.has(trait)));
}

/** Every rule of a list: what must come before what, and why. */
export function rulesOf(list: MorningListName): readonly OrderRule[] {
  return houseLines[list].flatMap(({ id, after }) =>
    after.map(({ line, because, holds }) => ({ before: line, after: id, because, holds })),
  );
}
