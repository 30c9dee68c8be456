/** The invented boat's load paths: her anchor rode, and the starboard shroud with the lashing that stands in for its plate. */
import type { Book, PathPartRecord } from '#boat-book';
import type { DemoDates } from './writing.ts';

/** Nothing more known of a part than its sizes. */
const plain = { name: '', since: null, juryRig: null, marked: null, signs: null } as const;

const rode = ({ day }: DemoDates): readonly PathPartRecord[] => [
  {
    ...plain,
    id: 'cleat',
    name: 'Bow cleat',
    kind: 'fitting',
    what: 'cleat',
    metal: 'aluminium',
    eye_mm: null,
    thickness_mm: null,
  },
  { ...plain, id: 'turns', kind: 'ending', ending: 'round-turn' },
  {
    ...plain,
    id: 'line',
    name: 'Anchor line',
    kind: 'rope',
    fibre: 'nylon',
    size_mm: 10,
    since: day(-1150),
    signs: ['chafed'],
  },
  { ...plain, id: 'splice', kind: 'ending', ending: 'eye-splice' },
  { ...plain, id: 'thimble', kind: 'thimble', size_mm: 10, metal: 'stainless', opening_mm: null },
  {
    ...plain,
    id: 'shackle-line',
    name: 'Shackle at the line',
    kind: 'shackle',
    make: 'stainless',
    size_mm: 6,
    pin_mm: 6,
    jaw_mm: 12,
    moused: true,
    signs: [],
  },
  {
    ...plain,
    id: 'chain',
    name: 'Chain, 10 m',
    kind: 'chain',
    grade: '30',
    size_mm: 6,
    metal: 'galvanised',
    inside_mm: 7.4,
    since: day(-1150),
    signs: ['rust'],
  },
  {
    ...plain,
    id: 'shackle-anchor',
    name: 'Anchor shackle',
    kind: 'shackle',
    make: 'galvanised',
    size_mm: 8,
    pin_mm: 8,
    jaw_mm: 16,
    moused: false,
    signs: ['worn'],
  },
  {
    ...plain,
    id: 'anchor',
    name: 'Anchor',
    kind: 'fitting',
    what: 'anchor',
    metal: 'galvanised',
    eye_mm: 14,
    thickness_mm: 10,
  },
];

const shroud = ({ day }: DemoDates): readonly PathPartRecord[] => [
  {
    ...plain,
    id: 'wire',
    name: 'Starboard shroud',
    kind: 'wire',
    laid: '1x19',
    size_mm: 4,
    make: '316',
    since: day(-2600),
    signs: [],
  },
  { ...plain, id: 'swage', kind: 'ending', ending: 'swage', signs: [] },
  {
    ...plain,
    id: 'lashing',
    name: 'Lashing to the chain plate',
    kind: 'lashing',
    fibre: 'polyester',
    size_mm: 4,
    passes: 2,
    since: day(-40),
    juryRig: 'rig-lashing',
    signs: [],
  },
  {
    ...plain,
    id: 'plate',
    name: 'Chain plate beside it',
    kind: 'fitting',
    what: 'chain plate',
    metal: 'stainless',
    eye_mm: 12,
    thickness_mm: 4,
    marked: { force_kN: 12, as: 'breaking load', by: 'the builder’s sheet' },
    signs: [],
  },
];

export const demoLoadPaths = (dates: DemoDates): Book['loadPaths'] => ({
  rode: {
    name: 'Anchor rode',
    use: 'ground-tackle',
    zone: 'bow',
    parts: rode(dates),
    cases: [
      { id: 'lunch', name: 'An hour at anchor', force_N: 400, wind_kn: 15, from: 'published table by length, 20 ft' },
      { id: 'night', name: 'A night at anchor', force_N: 1600, wind_kn: 30, from: 'published table by length, 20 ft' },
    ],
    note: '',
  },
  shroud: {
    name: 'Starboard shroud',
    use: 'standing-rigging',
    zone: 'side-deck',
    parts: shroud(dates),
    cases: [{ id: 'beating', name: 'Beating under full sail', force_N: 1325, wind_kn: 15, from: 'the keeper’s guess' }],
    note: '',
  },
});
