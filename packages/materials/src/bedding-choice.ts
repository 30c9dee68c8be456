/** What to bed, seal, glue or fill a joint with, and why each other kind is wrong there. */
import { beddingKinds } from './bedding-kinds.ts';
import {
  attackedBy,
  type BeddingKind,
  type Joint,
  type JointMaterial,
  materialSaid,
  partsOf,
  touchOf,
} from './joint.ts';
import { boatMetalThatGoes, isBoatMetal } from './metals-together.ts';
import { jointWidth_mm } from './moving-joint.ts';

/** A kind that does for the joint. */
export interface Serves {
  readonly kind: BeddingKind;
  readonly title: string;
  /** what speaks for it, after its name */
  readonly because: string;
  /** what is to be looked to in this joint, whole sentences */
  readonly mind: readonly string[];
  /** least room between the parts for their movement; null: they do not move. [mm] */
  readonly width_mm: number | null;
  readonly attacks: readonly JointMaterial[];
  readonly cautions: readonly string[];
}

/** A kind that is wrong for the joint. */
export interface Refused {
  readonly kind: BeddingKind;
  readonly title: string;
  /** why, after its name */
  readonly because: string;
}

export interface BeddingChoice {
  /** best first; empty: nothing does */
  readonly serves: readonly Serves[];
  readonly refused: readonly Refused[];
  /** the least room with which a kind that is refused for want of it alone would do; null: none is. [mm] */
  readonly widenTo_mm: number | null;
  readonly cautions: readonly string[];
}

export const beddingNames = Object.keys(beddingKinds) as readonly BeddingKind[];

/** Which come first, by what holds the joint and whether it must come apart: common practice and our judgement. */
const bestFirst: Readonly<Record<'parted' | 'shut' | Exclude<Joint['held'], 'fastened'>, readonly BeddingKind[]>> = {
  parted: ['butyl-tape', 'polysulphide-sealant', 'hybrid-sealant', 'silicone-sealant', 'acrylic-sealant'],
  shut: [
    'polyurethane-sealant',
    'hybrid-sealant',
    'polysulphide-sealant',
    'butyl-tape',
    'silicone-sealant',
    'acrylic-sealant',
  ],
  stuck: [
    'hybrid-sealant',
    'polyurethane-sealant',
    'contact-adhesive',
    'silicone-sealant',
    'polysulphide-sealant',
    'methacrylate',
    'epoxy',
    'thickened-epoxy',
    'wood-glue',
  ],
  glued: ['epoxy', 'thickened-epoxy', 'methacrylate', 'wood-glue'],
  filled: ['thickened-epoxy', 'polyester-filler'],
};

/**
 * The kinds that do for a joint, best first, and every other with its reason.
 *
 * Not covered: the strength of a glued joint, what a maker lets a product of his do beyond its kind.
 */
export function beddingChoice(joint: Joint): BeddingChoice {
  const order = bestFirst[joint.held === 'fastened' ? (joint.apart === 'never' ? 'shut' : 'parted') : joint.held];
  const judged = beddingNames.map((kind) => ({ kind, reasons: reasonsAgainst(kind, joint) }));
  const place = (kind: BeddingKind) => {
    const found = order.indexOf(kind);
    // a kind that must be primed comes after those that need not be
    return (found < 0 ? order.length : found) + (primedParts(kind, joint).length > 0 ? 100 : 0);
  };
  const serves = judged
    .filter(({ reasons }) => reasons.length === 0)
    .map(({ kind }) => served(kind, joint))
    .sort((a, b) => place(a.kind) - place(b.kind));
  const refused = judged
    .filter(({ reasons }) => reasons.length > 0)
    .map(({ kind, reasons }) => ({ kind, title: beddingKinds[kind].title, because: reasons[0]!.words }));
  const wider = judged.flatMap(({ kind, reasons }) =>
    reasons.length === 1 && reasons[0]!.width_mm !== null && reasons[0]!.width_mm <= beddingKinds[kind].fills_mm
      ? [reasons[0]!.width_mm]
      : [],
  );
  return {
    serves,
    refused,
    widenTo_mm: serves.length === 0 && wider.length > 0 ? Math.min(...wider) : null,
    cautions: jointCautions(joint),
  };
}

interface Against {
  readonly words: string;
  /** the room that would take the reason away; null: none would */
  readonly width_mm: number | null;
}

/** Everything that speaks against a kind in a joint, what counts most first. */
function reasonsAgainst(kind: BeddingKind, joint: Joint): readonly Against[] {
  const { notWhere, notHeld, notApart, notPainted, moves, fills_mm } = beddingKinds[kind];
  const against = (words: string | null | undefined): Against[] => (words ? [{ words, width_mm: null }] : []);
  return [
    ...partsOf(joint).flatMap((material) => against(touchReason(kind, material))),
    ...against(notWhere[joint.where]),
    ...against(notHeld[joint.held]),
    ...against(notApart[joint.apart]),
    ...against(joint.painted ? notPainted : null),
    ...movementReasons(joint, moves),
    ...against(
      joint.gap_mm > fills_mm
        ? `fills up to ${mm(fills_mm)}, and the room between the parts is ${mm(joint.gap_mm)}`
        : null,
    ),
  ];
}

function touchReason(kind: BeddingKind, material: JointMaterial): string | null {
  const said = materialSaid(material);
  switch (touchOf(kind, material).touch) {
    case 'attacks':
      return `attacks ${said}`;
    case 'loose':
      return `lets go of ${said}`;
    case 'named':
      return `may attack ${said}, and sources differ: only where its tube names it`;
    default:
      return null;
  }
}

/** Movement under this, in mm, is none: a hard joint bears it. Our assumption. */
const assumedStill_mm = 0.1;

function movementReasons({ movement_mm, gap_mm }: Joint, moves: Parameters<typeof jointWidth_mm>[0] | null): Against[] {
  if (movement_mm === 0) return [];
  if (moves === null)
    return movement_mm > assumedStill_mm
      ? [{ words: `sets hard: a joint that moves ${mm(movement_mm)} cracks it or tears it off`, width_mm: null }]
      : [];
  const width_mm = jointWidth_mm(moves, movement_mm);
  return gap_mm >= width_mm - 1e-9
    ? []
    : [
        {
          words: `wants ${mm(width_mm)} between the parts where they move ${mm(movement_mm)}, and there is ${mm(gap_mm)}`,
          width_mm,
        },
      ];
}

/** What of a joint a kind sticks to only when it is prepared. */
const primedParts = (kind: BeddingKind, joint: Joint) =>
  partsOf(joint).filter((material) => touchOf(kind, material).touch === 'primed');

function served(kind: BeddingKind, joint: Joint): Serves {
  const { title, goodFor, mind, moves, cautions } = beddingKinds[kind];
  const primed = primedParts(kind, joint);
  return {
    kind,
    title,
    because: goodFor[joint.held] ?? unsaid(kind, joint.held),
    mind: [
      ...(primed.length > 0
        ? [`On ${primed.map(materialSaid).join(' and on ')} with its primer, or roughened and wiped, as the tin says.`]
        : []),
      ...mind,
    ],
    width_mm: moves === null || joint.movement_mm === 0 ? null : jointWidth_mm(moves, joint.movement_mm),
    attacks: attackedBy(kind),
    cautions,
  };
}

/** @throws RangeError where the profiles let a kind do what nothing speaks for: a gap in the table */
function unsaid(kind: BeddingKind, held: Joint['held']): never {
  throw new RangeError(`nothing is said for ${kind} in a joint that is ${held}`);
}

/** What is to be minded whatever the joint is made with. */
function jointCautions({ parts: [a, b], held, where, gap_mm }: Joint): readonly string[] {
  const goes = where !== 'indoors' && isBoatMetal(a) && isBoatMetal(b) ? boatMetalThatGoes(a, b) : null;
  return [
    ...(goes === null
      ? []
      : [
          `${materialSaid(goes)} goes where it touches ${materialSaid(goes === a ? b : a)} wet with salt: the bedding parts the faces, a plastic sleeve and washers part the screws.`,
        ]),
    ...(held === 'glued'
      ? ['A joint that can hurt somebody when it lets go is bolted too: nobody can see how well glue holds.']
      : []),
    ...(held === 'fastened' && gap_mm < 1
      ? ['Not squeezed dry: pulled up till it shows all round, and the rest of the way when it has set.']
      : []),
    ...(where === 'fuel' ? ['Petrol vapour lies low in her: tank empty, aired, nothing that sparks.'] : []),
  ];
}

const mm = (value: number) => `${Math.round(value * 10) / 10} mm`;
