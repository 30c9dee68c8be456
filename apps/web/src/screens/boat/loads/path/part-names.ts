/** What kinds of part are called where one is chosen, and what a look at one can show. */
import type { PartKind, Sign } from './part-draft.ts';

export const partKinds: Readonly<Record<PartKind, string>> = {
  shackle: 'shackle',
  rope: 'rope',
  chain: 'chain',
  wire: 'wire',
  ending: 'knot, splice or terminal',
  thimble: 'thimble',
  fitting: 'anchor, cleat, pad eye or other fitting',
  fastenings: 'screws or bolts',
  block: 'block',
  pin: 'pin',
  'rigging screw': 'rigging screw',
  lashing: 'lashing',
  winch: 'winch',
  hand: 'a hand',
};

export const signNames: Readonly<Record<Sign, string>> = {
  faded: 'faded by the sun',
  stiff: 'stiff or hard',
  chafed: 'chafed',
  'cut strand': 'a strand cut',
  'broken wires': 'broken wires',
  kinked: 'kinked',
  rust: 'rust',
  pitted: 'pitted',
  worn: 'worn thin',
  bent: 'bent or stretched',
  cracked: 'cracked',
};
