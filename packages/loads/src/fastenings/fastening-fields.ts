import { inBase, inUnit } from '#units';
import { assuming, choice, force, length, number, type Source, type Values } from '#working';
import { inMillimetres } from '../path/loads-fields.ts';
import { assumedGlassShare, type BaseName, baseChoices, baseMaterials } from './base-material.ts';
import { type BoltClass, boltClasses } from './bolt.ts';
import type { Fastener, Joint } from './holding.ts';
import { type ScrewSize, screwNames } from './size-cell.ts';

/** The fields, sources and cautions that questions about fastenings share, each field made anew. */
export const boltField = () =>
  choice<ScrewSize>(
    screwNames.map((id) => ({ id, title: id })),
    'size of the bolt or machine screw',
  );

export const classField = () =>
  assuming(
    choice<BoltClass>(
      (Object.keys(boltClasses) as BoltClass[]).map((id) => ({ id, title: `class ${id}` })),
      'class of stainless, on the head: A2-70, A4-70',
    ),
    '70',
    'class 70',
    'what stainless bolts are mostly sold as',
  );

export const frictionField = () =>
  assuming(
    number('', 0.05, 0.4, 'friction in the thread and under the head: 0.10 greased, 0.20 dry'),
    0.1,
    '0.10, greased against galling',
    'stainless is greased, or it galls; dry it turns harder for the same pull',
  );

const yesNo = (meaning: string) =>
  choice<'yes' | 'no'>(
    [
      { id: 'yes', title: 'yes' },
      { id: 'no', title: 'no' },
    ],
    meaning,
  );
export const dampField = () =>
  assuming(yesNo('whether wood works damp'), 'yes', 'yes', 'on a boat it does, sooner or later');

/** What one fastening in a base is asked by. */
export const jointFields = () => ({
  base: choice<BaseName>(baseChoices, 'what it holds in'),
  by: choice<'bolt' | 'machine-screw' | 'wood-screw' | 'coach-screw'>(
    [
      { id: 'bolt', title: 'bolt through, with a nut' },
      { id: 'machine-screw', title: 'machine screw in a cut thread' },
      { id: 'wood-screw', title: 'wood screw or self-tapping screw' },
      { id: 'coach-screw', title: 'coach screw' },
    ],
    'what fastens',
  ),
  size: length('mm', 2.5, 12.7, 'diameter: of a bolt over its thread, of a screw over its shank'),
  thickness: length('mm', 0.5, 120, 'thickness of the base, or how deep the thread stands in it'),
  class: classField(),
  washer: assuming(
    choice<'plain' | 'large'>(
      [
        { id: 'plain', title: 'plain washer' },
        { id: 'large', title: 'large washer, three times the bolt' },
      ],
      'washer of a bolt',
    ),
    'plain',
    'plain',
    'the smaller of the two',
  ),
  pad: assuming(
    length('mm', 0, 40, 'stiff pad under the washer, how thick: 0 with none'),
    inBase('length', 0, 'mm'),
    '0 mm',
    'no pad is counted on that is not said',
  ),
  glass: assuming(
    number('', 0.25, 0.65, 'glass in a laminate, share of its mass'),
    assumedGlassShare,
    String(assumedGlassShare),
    'mat laid by hand',
  ),
  damp: dampField(),
});

export const pullField = () => force('N', 1, 50_000, 'pull on the fitting');

type JointValues = Values<ReturnType<typeof jointFields>>;

/** The joint that was asked about. Sizes were looked at by `jointConflict`. */
export function jointOf({ base, by, size, thickness, class: ofClass, washer, pad, glass, damp }: JointValues): Joint {
  const across_mm = inMillimetres(size);
  const name = nearestBolt(across_mm);
  const fastener: Fastener =
    by === 'wood-screw' || by === 'coach-screw' || name === null
      ? { kind: by === 'coach-screw' ? 'coach screw' : 'wood screw', across_mm }
      : by === 'bolt'
        ? { kind: 'bolt', size: name, ofClass, washer, pad_mm: inUnit('length', pad, 'mm') }
        : { kind: 'machine screw', size: name, ofClass };
  return {
    base: baseMaterials[base],
    thickness_mm: inUnit('length', thickness, 'mm'),
    glassShare: glass,
    damp: damp === 'yes',
    fastener,
  };
}

/** What does not go together: a bolt of a size there is no thread of, a thread cut in wood, a coach screw in what is not wood. */
export function jointConflict({ base, by, size }: JointValues) {
  const across_mm = inMillimetres(size);
  const { kind, title } = baseMaterials[base];
  if ((by === 'bolt' || by === 'machine-screw') && nearestBolt(across_mm) === null)
    return {
      where: 'size',
      wrong: `there is no bolt of ${across_mm} mm in the table of threads`,
      right: `one of ${screwNames.join(', ')}: ${screwNames.map((name) => name.slice(1)).join(', ')} mm`,
    };
  if (by === 'machine-screw' && (kind === 'ply' || kind === 'timber'))
    return {
      where: 'by',
      wrong: `a machine screw has no thread to hold by in ${title}`,
      right: 'a bolt through it, a wood screw or a coach screw',
    };
  if (by === 'coach-screw' && kind !== 'timber')
    return {
      where: 'by',
      wrong: `a coach screw wants solid timber, not ${title}`,
      right: 'a bolt through it, or a wood screw in ply',
    };
  return null;
}

/** The bolt that is called by a diameter; null where there is none within a twentieth of a millimetre. */
function nearestBolt(across_mm: number): ScrewSize | null {
  return screwNames.find((name) => Math.abs(Number(name.slice(1)) - across_mm) <= 0.05) ?? null;
}

export const sources = {
  bolts: { title: 'ISO 898-1 stress area; ISO 3506-1 classes of stainless bolts', seen: 'recalled' },
  tightening: { title: 'VDI 2230, preload and torque; tightened to 90 % of the proof stress', seen: 'recalled' },
  woodHandbook: { title: 'USDA Wood Handbook FPL-GTR-190 chapter 8, withdrawal of screws', seen: 'read second-hand' },
  woodDesign: { title: 'American timber design rule, withdrawal allowed and end grain', seen: 'read second-hand' },
  damp: { title: 'American timber design rule, wood in the damp keeps 0.7', seen: 'recalled' },
  laminate: { title: 'ISO 12215-5, strengths of a laminate by its share of glass', seen: 'recalled' },
  aluminium: { title: 'tensile strength of 5083 and 6063-T6, handbooks', seen: 'recalled' },
  density: { title: 'densities of timber, handbooks', seen: 'read second-hand' },
  side: { title: 'Johansen’s pin in wood, our derivation; crushing and bending after EN 1995-1-1', seen: 'recalled' },
  ours: {
    title:
      'thread three quarters full; ply holds 0.8 of solid wood; wood under the side of a bolt at a third; a pad spreads at 45°',
    seen: 'our assumption',
  },
} as const satisfies Record<string, Source>;

export const fasteningCautions = {
  drilling:
    'Look behind before drilling: wires, tanks, hoses, the skin of the hull. Stop collar on the drill, eyes covered.',
  dust: 'Dust of laminate, hardwood and old paint stays out of the lungs: mask and suction.',
  galling: 'Stainless on stainless galls: grease the thread, turn slowly, stop when it binds.',
  metals: 'Stainless in aluminium corrodes the aluminium: sealant or paste on thread and under the head.',
} as const;
