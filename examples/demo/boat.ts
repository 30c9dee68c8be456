/** The invented boat: places, zones, fittings, set-ups, mixes. Sizes are those such a boat could have. */
import type { Book } from '#boat-book';
import type { DemoDates } from './writing.ts';

export const demoBoat: Book['boat'] = {
  name: 'Teasel',
  keeper: 'Ida Fenn',
  demo: true,
  currency: 'NZD',
  length_m: 5.6,
  beam_m: 2.2,
  mastHeight_m: 7.1,
  mastFromBow_m: 1.9,
  boom_m: 2.6,
  freeboard_m: 0.7,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  cabin: true,
  board: 'pivoting',
  build: {
    bow: 'raked',
    stern: 'upright',
    rig: 'fractional',
    mastStep: 'deck',
    rudder: 'on the transom',
    outboard: 'on the transom',
    cabinHeight_m: 0.44,
  },
};

export const demoPlaces: Book['places'] = {
  drive: {
    name: 'The drive at Withy Creek',
    latitude_deg: -37.2,
    longitude_deg: 175.1,
    timeZone: 'Pacific/Auckland',
    features: ['water', 'mains', 'level'],
    sheltered: false,
  },
};

export const demoZones: Book['zones'] = {
  bow: {
    name: 'Bow and anchor well',
    words: ['anchor well', 'stem', 'bow'],
    room: 1,
    inside: false,
    near: ['foredeck'],
    along: 0.03,
    up: 0.9,
  },
  foredeck: {
    name: 'Foredeck',
    words: ['fore deck', 'forehatch'],
    room: 2,
    inside: false,
    near: ['bow'],
    along: 0.2,
    up: 1.05,
  },
  mast: { name: 'Mast', words: ['masthead', 'spar'], room: 2, inside: false, near: [], along: 0.34, up: 5 },
  'side-deck': {
    name: 'Side decks',
    words: ['side deck', 'shroud', 'chainplate'],
    room: 1,
    inside: false,
    near: ['cockpit'],
    along: 0.42,
    up: 1,
  },
  'board-case': {
    name: 'Board case',
    words: ['centreboard', 'board', 'case'],
    room: 2,
    inside: true,
    near: ['cabin'],
    along: 0.48,
    up: 0.4,
  },
  cabin: {
    name: 'Cabin',
    words: ['below', 'berth', 'battery'],
    room: 1,
    inside: true,
    near: ['board-case'],
    along: 0.4,
    up: 0.5,
  },
  cockpit: {
    name: 'Cockpit',
    words: ['coaming', 'tiller'],
    room: 2,
    inside: false,
    near: ['side-deck', 'transom'],
    along: 0.75,
    up: 0.9,
  },
  transom: {
    name: 'Transom',
    words: ['stern', 'drain'],
    room: 1,
    inside: false,
    near: ['cockpit'],
    along: 0.99,
    up: 0.5,
  },
  trestles: {
    name: 'Rudder on the trestles',
    words: ['rudder', 'blade'],
    room: 1,
    inside: false,
    near: [],
    along: 1.05,
    up: 0.2,
  },
  topsides: { name: 'Topsides', words: ['hull', 'gelcoat'], room: 2, inside: false, near: [], along: 0.6, up: 0.5 },
  bottom: { name: 'Bottom', words: ['keel', 'underwater'], room: 2, inside: false, near: [], along: 0.5, up: -0.1 },
  trailer: {
    name: 'Trailer',
    words: ['wheel', 'axle', 'hitch'],
    room: 2,
    inside: false,
    near: [],
    along: 0.6,
    up: -0.8,
  },
};

export const demoFittings = ({ day }: DemoDates): Book['fittings'] => ({
  'plate-starboard': {
    name: 'Starboard shroud plate',
    zone: 'side-deck',
    size: '4 bolts M8 × 60, backing plate 80 × 60 mm',
    beddedWith: 'brown polysulphide',
    bedding: { kind: 'polysulphide-sealant', product: 'brown polysulphide', on: day(-1826), job: null },
    note: 'Weeps in rain since the spring, the bedding gone hard; deck rings dull for 40 mm round it.',
    spot: { along: 0.385, up: 1.08, across: 0.86 },
  },
  'sheave-masthead': {
    name: 'Masthead halyard sheave',
    spot: { along: 0.354, up: 12.15, across: 0 },
    zone: 'mast',
    size: '45 mm over all, 10 mm wide, pin 8 mm',
    beddedWith: '',
    note: '',
  },
  'light-masthead': {
    name: 'All-round masthead light',
    spot: { along: 0.356, up: 12.4, across: 0 },
    zone: 'mast',
    size: '2 W at 12 V',
    beddedWith: '',
    note: 'Cable broken inside the mast.',
  },
  'wire-board': {
    name: 'Board lifting wire',
    spot: { along: 0.535, up: -0.06, across: 0 },
    zone: 'board-case',
    size: '4 mm, 2.4 m, thimble at the board',
    beddedWith: '',
    note: 'Eleven broken strands at the thimble.',
  },
  'ring-drain': {
    name: 'Transom drain ring',
    spot: { along: 0.99, up: 0.16, across: 0 },
    zone: 'transom',
    size: '25 mm, 3 screws',
    beddedWith: 'silicone, peeling',
    note: 'Under water when she floats.',
  },
  'anchor-shackle': {
    name: 'Anchor shackle',
    spot: { along: 0.075, up: 1.12, across: 0 },
    zone: 'bow',
    size: '8 mm, pin 8 mm',
    beddedWith: '',
    note: 'Pin not moused.',
  },
  battery: {
    name: 'Battery',
    zone: 'cabin',
    size: '12 V, 17 Ah, lead, sealed',
    beddedWith: '',
    note: '',
    spot: { along: 0.6, up: 0.3, across: -0.35 },
  },
});

/** Set-ups and the work of changing them. The mast goes up by one with the gin pole. */
export const demoSetUps: Book['setUps'] = {
  mast: {
    name: 'Mast',
    states: [
      { id: 'up', name: 'up', shelters: false },
      { id: 'down', name: 'down', shelters: false },
    ],
    now: 'down',
    changes: [
      {
        from: 'down',
        to: 'up',
        minutes: 35,
        hands: 1,
        needs: { wind_max_kn: 12, daylight: true },
        setUps: [
          { setUp: 'cover', states: ['off'] },
          { setUp: 'boat', states: ['trailer'] },
        ],
        cautions: [
          'Look up first: no power line within a mast’s length and a half of her.',
          'Nobody stands in its path or beside it: it can fall sideways until both shrouds hold.',
        ],
      },
      {
        from: 'up',
        to: 'down',
        minutes: 30,
        hands: 1,
        needs: { wind_max_kn: 12, daylight: true },
        setUps: [
          { setUp: 'cover', states: ['off'] },
          { setUp: 'boat', states: ['trailer'] },
        ],
        cautions: [
          'The pull on the gin pole grows as it comes down: keep two turns on the winch.',
          'Nobody stands in its path or beside it.',
        ],
      },
    ],
  },
  cover: {
    name: 'Cover',
    states: [
      { id: 'on', name: 'on', shelters: true },
      { id: 'off', name: 'off', shelters: false },
    ],
    now: 'on',
    changes: [
      { from: 'on', to: 'off', minutes: 10, hands: 1, needs: { wind_max_kn: 22 }, setUps: [], cautions: [] },
      { from: 'off', to: 'on', minutes: 15, hands: 1, needs: { wind_max_kn: 22 }, setUps: [], cautions: [] },
    ],
  },
  board: {
    name: 'Board',
    states: [
      { id: 'housed', name: 'housed', shelters: false },
      { id: 'lowered', name: 'lowered', shelters: false },
    ],
    now: 'housed',
    changes: [
      {
        from: 'housed',
        to: 'lowered',
        minutes: 10,
        hands: 1,
        needs: {},
        setUps: [{ setUp: 'boat', states: ['propped'] }],
        cautions: ['Lower it with the strop, not on the frayed wire. No hand or foot under the board.'],
      },
      {
        from: 'lowered',
        to: 'housed',
        minutes: 15,
        hands: 1,
        needs: {},
        setUps: [{ setUp: 'boat', states: ['propped'] }],
        cautions: ['Turn the winch with the pawl in: a handle let go kicks back.'],
      },
    ],
  },
  boat: {
    name: 'Boat',
    states: [
      { id: 'trailer', name: 'on the trailer', shelters: false },
      { id: 'propped', name: 'propped', shelters: false },
    ],
    now: 'trailer',
    changes: [
      {
        from: 'trailer',
        to: 'propped',
        minutes: 40,
        hands: 2,
        needs: { wind_max_kn: 15, daylight: true },
        setUps: [{ setUp: 'mast', states: ['down'] }],
        cautions: [
          'Chock the wheels, then raise one end at a time; stands on hard ground, on both sides, before anyone reaches under.',
          'Nobody lies or kneels under her on a jack alone.',
        ],
      },
      {
        from: 'propped',
        to: 'trailer',
        minutes: 35,
        hands: 2,
        needs: { wind_max_kn: 15, daylight: true },
        setUps: [
          { setUp: 'mast', states: ['down'] },
          { setUp: 'board', states: ['housed'] },
        ],
        cautions: ['Board up and pinned before the stands come out.'],
      },
    ],
  },
};

export const demoMixes: Book['mixes'] = {
  epoxy: { name: 'Thickened epoxy, fast hardener', mixing_min: 10, potLife_min: 40, family: 'epoxy-fast' },
};
