/**
 * The zones and set-ups that a new book starts with: those of most small trailerable boats, the keeper's to change.
 * Minutes and hands of changing a set-up are not given: they are hers, and the planner asks for them.
 */
import type { Book, Id, SetUp, Zone } from '#boat-book';
import type { KeelKind } from '#picture';

const zone = (
  id: string,
  name: string,
  words: readonly string[],
  room: number,
  inside: boolean,
  near: readonly string[],
  along: number,
  up: number,
): readonly [Id, Zone] => [id, { name, words, room, inside, near, along, up }];

export function startingZones(cabin: boolean): Book['zones'] {
  return Object.fromEntries([
    zone('bow', 'Bow', ['stem', 'anchor', 'bow roller'], 1, false, [], 0.03, 1.1),
    zone('foredeck', 'Foredeck', ['fore deck', 'forehatch'], 2, false, ['bow'], 0.2, 1.15),
    zone(
      'mast',
      'Mast and rigging',
      ['masthead', 'shroud', 'stay', 'halyard', 'boom', 'gooseneck'],
      2,
      false,
      [],
      0.36,
      4,
    ),
    ...(cabin ? [zone('cabin', 'Cabin', ['below', 'berth', 'battery'], 2, true, [], 0.45, 0.8)] : []),
    zone('board-case', 'Board case', ['board', 'case', 'pendant'], 1, cabin, cabin ? ['cabin'] : [], 0.5, 0.2),
    zone('side-decks', 'Side decks', ['deck', 'coaming'], 2, false, ['foredeck'], 0.6, 1.1),
    zone('cockpit', 'Cockpit', ['tiller', 'locker', 'winch'], 3, false, ['side-decks'], 0.8, 0.9),
    zone('transom', 'Transom and rudder', ['stern', 'rudder', 'pintle', 'outboard'], 2, false, ['cockpit'], 1.0, 0.6),
    zone('topsides', 'Topsides', ['hull side', 'rubbing strake'], 2, false, ['side-decks'], 0.3, 0.5),
    zone('bottom', 'Bottom', ['keel', 'antifouling', 'underwater'], 2, false, [], 0.68, -0.2),
    zone('trailer', 'Trailer', ['axle', 'wheel', 'winch post', 'lights'], 2, false, [], 0.55, -0.9),
  ]);
}

/** Her set-ups; a keel that is fixed is none. */
export function startingSetUps(keel: KeelKind | undefined): Readonly<Record<Id, SetUp>> {
  const state = (id: string, name: string, shelters = false) => ({ id, name, shelters });
  return {
    mast: { name: 'mast', states: [state('up', 'up'), state('down', 'down')], now: 'down', changes: [] },
    ...(keel === 'bilge keels' || keel === 'fixed keel'
      ? {}
      : { board: { name: 'board', states: [state('up', 'up'), state('down', 'down')], now: 'up', changes: [] } }),
    cover: { name: 'cover', states: [state('on', 'on', true), state('off', 'off')], now: 'on', changes: [] },
  };
}
