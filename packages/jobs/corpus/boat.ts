/** The invented boat that all lines and pages here speak of, as her book would name her parts. */
import type { Lexicon } from '../src/index.ts';

const state = (id: string, name = id) => ({ id, name });

export const boat: Lexicon = {
  /** a Thursday */
  today: '2027-04-08',
  zones: {
    bow: { name: 'Bow', words: ['stem', 'anchor', 'bow roller'] },
    foredeck: { name: 'Foredeck', words: ['fore deck', 'forehatch'] },
    rig: {
      name: 'Mast and rigging',
      words: ['mast', 'masthead', 'shroud', 'stay', 'halyard', 'boom', 'gooseneck'],
    },
    cabin: { name: 'Cabin', words: ['below', 'berth', 'battery', 'bilge'] },
    case: { name: 'Board case', words: ['board', 'case', 'pendant'] },
    decks: { name: 'Side decks', words: ['deck', 'coaming'] },
    cockpit: { name: 'Cockpit', words: ['tiller', 'locker', 'winch'] },
    transom: { name: 'Transom and rudder', words: ['transom', 'stern', 'rudder', 'pintle', 'outboard'] },
    topsides: { name: 'Topsides', words: ['hull side', 'rubbing strake'] },
    bottom: { name: 'Bottom', words: ['keel', 'antifouling', 'underwater'] },
    trailer: { name: 'Trailer', words: ['axle', 'wheel', 'winch post', 'lights'] },
  },
  fittings: {
    'plate-port': { name: 'Port shroud plate', zone: 'decks' },
    'plate-stbd': { name: 'Starboard shroud plate', zone: 'decks' },
    forestay: { name: 'Forestay fitting', zone: 'bow' },
    sheave: { name: 'Masthead sheave', zone: 'rig' },
    pump: { name: 'Bilge pump', zone: 'cabin' },
    wire: { name: 'Board lifting wire', zone: 'case' },
    roller: { name: 'Bow roller', zone: 'bow' },
    bracket: { name: 'Outboard bracket', zone: 'transom' },
    tiller: { name: 'Tiller', zone: 'cockpit' },
    hub: { name: 'Port wheel hub', zone: 'trailer' },
  },
  setUps: {
    mast: { name: 'Mast', states: [state('up'), state('down')] },
    board: { name: 'Board', states: [state('up'), state('down')] },
    cover: { name: 'Cover', states: [state('on'), state('off')] },
    boat: { name: 'Boat', states: [state('trailer', 'on the trailer'), state('propped'), state('afloat')] },
  },
  outings: {
    spring: { title: 'Spring shakedown sail', date: '2027-04-24' },
    estuary: { title: 'Night on the estuary', date: '2027-05-15' },
    muster: { title: 'Club muster weekend', date: '2027-06-12' },
    frost: { title: 'Frostbite trip', date: '2027-02-20' },
  },
};
