import type { BeddingKind, Joint } from './joint.ts';
import type { MovingJointKind } from './moving-joint.ts';

type Where = Joint['where'];
type Held = Joint['held'];

/** What is known of a kind of bedding. Sentences begin after its name: 'Butyl tape' + ' ' + reason. */
export interface BeddingProfile {
  readonly title: string;
  /** whose cure law it follows (`cureLaws`) */
  readonly product: string;
  /** sized as this where the joint moves; null: it sets hard */
  readonly moves: MovingJointKind | null;
  /** the most room it fills. [mm]; our assumption, from what tins say */
  readonly fills_mm: number;
  /** why not, by where the joint is; what is not here it bears */
  readonly notWhere: Readonly<Partial<Record<Where, string>>>;
  /** why not, by what holds the joint */
  readonly notHeld: Readonly<Partial<Record<Held, string>>>;
  /** why not, by whether it must come apart */
  readonly notApart: Readonly<Partial<Record<Joint['apart'], string>>>;
  /** why not where paint goes over or near it */
  readonly notPainted: string | null;
  /** what speaks for it, by what holds the joint */
  readonly goodFor: Readonly<Partial<Record<Held, string>>>;
  /** what is to be looked to when it is used */
  readonly mind: readonly string[];
  /** what can hurt */
  readonly cautions: readonly string[];
}

const stiffInBolted = 'sets hard: a fitting that works under load opens it, and a crack leaks unseen';
const softToFill = 'stays soft: it can be neither faired, drilled nor screwed into';
const tooWeak = 'gives under a load that stays on: it is a seal, not a glue';
const forGood = 'holds for good: taking it apart harms the part or what it is stuck to';

const styrene = 'Styrene and peroxide: air through, goggles, gloves.';
const isocyanate = 'Holds isocyanates until it has cured: air through, gloves, and not for those it makes wheeze.';
const vapour = 'Its vapour burns and makes dizzy: air through, no flame, no motor that sparks.';
const resin = 'Gloves and goggles: skin that takes to epoxy never leaves it.';

/** Kinds in the order they are told of. Common practice, and what `sealants.source.md` names. */
export const beddingKinds: Readonly<Record<BeddingKind, BeddingProfile>> = {
  'butyl-tape': {
    title: 'Butyl tape',
    product: 'butyl-tape',
    moves: 'butyl',
    fills_mm: 6,
    notWhere: {
      'under water': 'is not for joints that stand under water',
      fuel: 'dissolves in fuel',
      hot: 'runs out of a hot joint',
    },
    notHeld: {
      stuck: 'creeps: it holds only where screws or bolts pull it together',
      glued: 'bears nothing: it never sets',
      filled: softToFill,
    },
    notApart: {},
    notPainted: null,
    goodFor: { fastened: 'never sets, so it comes apart in years as on the first day, and no plastic minds it' },
    mind: [
      'A countersunk edge to each hole, a cone of it round each screw, and pulled up a little at a time over weeks.',
      'Paint does not stay on it: trim it flush first.',
    ],
    cautions: [],
  },
  'polysulphide-sealant': {
    title: 'Polysulphide sealant',
    product: 'polysulphide-sealant',
    moves: 'polysulphide',
    fills_mm: 20,
    notWhere: { hot: 'hardens and cracks in heat' },
    notHeld: { glued: tooWeak, filled: softToFill },
    notApart: {},
    notPainted: null,
    goodFor: {
      fastened: 'holds well, stays rubber, stands under water and can still be parted',
      stuck: 'holds light things and can still be parted',
    },
    mind: [
      'Sources differ on painting it: try the paint on a dab of it.',
      'Slow: dry to the touch in a day to three, and weeks under a wide plate.',
    ],
    cautions: [vapour],
  },
  'polyurethane-sealant': {
    title: 'Polyurethane sealant',
    product: 'polyurethane-sealant',
    moves: 'polyurethane',
    fills_mm: 20,
    notWhere: { fuel: 'softens in fuel', hot: 'chars and lets go in heat' },
    notHeld: {
      glued: 'gives under a load that stays on: with bolts it makes a joint that is there to stay, alone it does not',
      filled: softToFill,
    },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: {
      fastened: 'is the strongest of the rubbers, for a joint that stays shut for good',
      stuck: 'holds hardest of the rubbers',
    },
    mind: [
      'Sources differ on painting it: try the paint on a dab of it.',
      'Under water one handbook lets only some of it be used: the tube says which.',
      'It yellows and chalks where the sun gets at it.',
    ],
    cautions: [isocyanate],
  },
  'hybrid-sealant': {
    title: 'Hybrid (silane) sealant',
    product: 'hybrid-sealant',
    moves: 'hybrid',
    fills_mm: 20,
    notWhere: { fuel: 'is not known to stand fuel', hot: 'lets go in heat' },
    notHeld: { glued: tooWeak, filled: softToFill },
    notApart: { 'each season': 'holds too hard to be parted every year: it is cut out with a wire' },
    notPainted: null,
    goodFor: {
      fastened: 'stays rubber in the sun, takes paint, and can be cut apart with a wire',
      stuck: 'holds without screws, stays rubber in the sun and takes paint',
    },
    mind: [],
    cautions: [],
  },
  'silicone-sealant': {
    title: 'Neutral-cure silicone sealant',
    product: 'silicone-sealant',
    moves: 'silicone',
    fills_mm: 20,
    notWhere: { 'under water': 'is not for joints that stand under water', fuel: 'swells in fuel' },
    notHeld: { glued: tooWeak, filled: softToFill },
    notApart: {},
    notPainted: 'leaves a film that no paint sticks to, here and wherever it was wiped',
    goodFor: {
      fastened: 'is a rubber gasket: safe on plastics, moves the most, and parts easily because it holds least',
      stuck: 'holds glass and plastics lightly, moves the most, and stands sun and heat',
    },
    mind: [
      'Nothing sticks over it afterwards, other sealants no more than paint: tape round it, and keep fingers off.',
      'Not the kind that smells of vinegar: it eats copper and marks metal.',
    ],
    cautions: [],
  },
  'acrylic-sealant': {
    title: 'Water-based acrylic sealant',
    product: 'acrylic-sealant',
    moves: 'latex',
    fills_mm: 10,
    notWhere: {
      weather: 'washes out and shrinks outdoors',
      'under water': 'goes soft in water',
      fuel: 'dissolves in fuel',
      hot: 'dries out and cracks in heat',
    },
    notHeld: { stuck: tooWeak, glued: tooWeak, filled: softToFill },
    notApart: {},
    notPainted: null,
    goodFor: { fastened: 'takes paint the same day, and water washes it off the hands' },
    mind: ['It shrinks by a fifth as it dries: leave it proud.'],
    cautions: [],
  },
  epoxy: {
    title: 'Unthickened epoxy',
    product: 'epoxy-slow',
    moves: null,
    fills_mm: 0.5,
    notWhere: { hot: 'softens from about 60 °C' },
    notHeld: {
      fastened: stiffInBolted,
      filled: 'runs out of a hole: it is thickened to fill',
    },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: {
      glued: 'soaks into a tight joint and is as strong as the timber',
      stuck: 'soaks into a tight joint and is there for good',
    },
    mind: ['The sun eats it: paint or varnish over it outdoors.', 'Wash the blush off before anything goes over it.'],
    cautions: [resin, 'Do not leave a full pot standing: it heats itself until it smokes.'],
  },
  'thickened-epoxy': {
    title: 'Thickened epoxy',
    product: 'epoxy-slow',
    moves: null,
    fills_mm: 30,
    notWhere: { hot: 'softens from about 60 °C' },
    notHeld: { fastened: stiffInBolted },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: {
      glued: 'fills what does not fit and carries the load across it',
      filled: 'sticks, stands water and can be drilled and screwed into',
      stuck: 'fills what does not fit and is there for good',
    },
    mind: [
      'Bare timber and glass are wetted with it unthickened first.',
      'The sun eats it: paint over it outdoors.',
      'Deep fillings go in layers: 10 mm at a time keeps them cool.',
    ],
    cautions: [
      resin,
      'Do not leave a full pot standing: it heats itself until it smokes.',
      'Sanding and filler dust: a mask.',
    ],
  },
  'polyester-filler': {
    title: 'Polyester filler',
    product: 'polyester-filler',
    moves: null,
    fills_mm: 20,
    notWhere: {
      'under water': 'takes up water, and lets go below the waterline',
      fuel: 'is not known to stand fuel',
      hot: 'softens and shrinks in heat',
    },
    notHeld: {
      fastened: stiffInBolted,
      stuck: 'is brittle and shrinks: it fills, it does not stick',
      glued: 'is brittle and shrinks: it fills, it does not carry',
    },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: { filled: 'sands within the hour, and gelcoat cures over it' },
    mind: ['It takes up damp: painted or gelcoated over, not left bare.'],
    cautions: [styrene, 'Sanding dust: a mask.'],
  },
  methacrylate: {
    title: 'Two-part methacrylate adhesive',
    product: 'methacrylate',
    moves: null,
    fills_mm: 5,
    notWhere: { fuel: 'is not known to stand fuel', hot: 'softens in heat' },
    notHeld: { fastened: stiffInBolted, filled: 'costs much and heats itself in a lump: it is for joints' },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: {
      glued: 'carries load on glass laminate, metals and the hard plastics where epoxy does not stick',
      stuck: 'sticks the hard plastics for good, within the hour',
    },
    mind: ['Its edges stay soft where air gets at them. Measured by its own nozzle or scales.'],
    cautions: [vapour, 'Goggles and gloves. A cartridge left half mixed gets hot.'],
  },
  'contact-adhesive': {
    title: 'Contact adhesive',
    product: 'contact-adhesive',
    moves: null,
    fills_mm: 0.3,
    notWhere: {
      'under water': 'lets go under water',
      fuel: 'dissolves in fuel',
      hot: 'lets go in heat',
    },
    notHeld: {
      fastened: 'seals nothing: it is a film',
      glued: 'creeps under a load that stays on',
      filled: 'fills nothing: it is a film',
    },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: { stuck: 'grips rubber, foam, lining and sheet at once, without clamps' },
    mind: ['Both faces coated and dry to the touch before they meet: there is no second try.'],
    cautions: [vapour],
  },
  'wood-glue': {
    title: 'White or yellow wood glue',
    product: 'wood-glue',
    moves: null,
    fills_mm: 0.2,
    notWhere: {
      weather: 'lets go where it is wetted again and again',
      'under water': 'dissolves in water',
      fuel: 'is not known to stand fuel',
      hot: 'creeps in heat',
    },
    notHeld: { fastened: stiffInBolted, filled: 'shrinks away: it is for tight joints' },
    notApart: { 'each season': forGood, 'some day': forGood },
    notPainted: null,
    goodFor: {
      glued: 'is as strong as the timber in a tight joint that stays dry',
      stuck: 'is easy, and strong in a tight joint that stays dry',
    },
    mind: ['Clamped till it has dried.'],
    cautions: [],
  },
};
