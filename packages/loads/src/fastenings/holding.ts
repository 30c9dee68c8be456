import { type BaseMaterial, dampShare, laminateStrength, specificGravity } from './base-material.ts';
import { type BoltClass, boltClasses, stressArea_mm2 } from './bolt.ts';
import { requiredCell, type ScrewSize } from './size-cell.ts';
import { coachScrewGrip, type WoodGrip, woodScrewGrip } from './wood-screw.ts';

/** What fastens: through with a nut, into a cut thread, or screwed into the stuff. */
export type Fastener =
  | {
      readonly kind: 'bolt';
      readonly size: ScrewSize;
      readonly ofClass: BoltClass;
      readonly washer: 'plain' | 'large';
      /** thickness of a stiff pad between washer and base; 0: none. [mm] */
      readonly pad_mm: number;
    }
  | { readonly kind: 'machine screw'; readonly size: ScrewSize; readonly ofClass: BoltClass }
  | { readonly kind: 'wood screw' | 'coach screw'; readonly across_mm: number };

export interface Joint {
  readonly base: BaseMaterial;
  /** of the base; for screws, how deep the thread stands in it. [mm] */
  readonly thickness_mm: number;
  /** glass by mass of a laminate. 0.25–0.65 */
  readonly glassShare: number;
  /** wood works damp */
  readonly damp: boolean;
  readonly fastener: Fastener;
}

/** A way a joint gives, and at what load. */
export interface Giving {
  readonly way: string;
  /** load at which it gives. [N] */
  readonly failing_N: number;
  /** breaking over working, where the rule for this way has one of its own; null: the path's */
  readonly ownFactor: number | null;
  readonly formula: string;
}

/** Shear strength of metals over their tensile strength (von Mises 0.58; design rules 0.6). */
const shearShare = 0.6;
/** Share of the cylinder over a thread that metal or laminate fills. Our assumption, below the 7/8 of a full thread. */
const assumedThreadFill = 0.75;
/** Ply holds a screw less than solid wood as heavy (tests find so, none is printed that we could read). Our assumption. */
const assumedPlyShare = 0.8;
/** Breaking over working of wood under a bolt's side: EC5's own 1.9 and more for what is not graded. Our assumption. */
const assumedWoodFactor = 3;
/** Crushing of soft wood across the grain under a washer, a share of its density; EC5 0.007·ρ for softwood, recalled. */
const acrossGrain_N_mm2 = (density_kg_m3: number) => 0.007 * density_kg_m3;

/** Diameter over thread or shank. [mm] */
export const across_mm = (fastener: Fastener): number =>
  'size' in fastener ? Number(fastener.size.slice(1)) : fastener.across_mm;

/** Diameter on which the washer or the pad over it bears: a pad spreads at 45°. [mm] */
export const bearsOn_mm = ({ size, washer, pad_mm }: Extract<Fastener, { kind: 'bolt' }>): number =>
  requiredCell(washer === 'plain' ? 'washer plain' : 'washer large', size).value + 2 * pad_mm;

/** Every way one fastener gives when pulled straight out, the weakest first. */
export function pulledOut(joint: Joint): readonly Giving[] {
  const { fastener } = joint;
  const metal: Giving[] =
    'size' in fastener
      ? [
          {
            way: 'the bolt parts',
            failing_N: stressArea_mm2(fastener.size) * boltClasses[fastener.ofClass].tensile_N_mm2,
            ownFactor: null,
            formula: 'stress area·Rm',
          },
        ]
      : [
          {
            way: 'the screw parts',
            failing_N: (Math.PI / 4) * ((2 / 3) * fastener.across_mm) ** 2 * boltClasses['50'].tensile_N_mm2,
            ownFactor: null,
            formula: 'π/4·(2/3·D)²·500',
          },
        ];
  return weakestFirst([...metal, ...(fastener.kind === 'bolt' ? pulledThrough(joint, fastener) : stripped(joint))]);
}

/** A bolt's washer comes through the base. */
function pulledThrough(
  { base, thickness_mm, glassShare, damp }: Joint,
  bolt: Extract<Fastener, { kind: 'bolt' }>,
): Giving[] {
  const ring = bearsOn_mm(bolt);
  const hole = requiredCell('clearance medium', bolt.size).value;
  const edge_mm2 = Math.PI * ring * thickness_mm;
  switch (base.kind) {
    case 'laminate':
      return [
        {
          way: 'the washer comes through the laminate',
          failing_N: edge_mm2 * laminateStrength(glassShare).betweenPlies_N_mm2,
          ownFactor: null,
          formula: 'π·D·t·(22.5 − 17.5·w)',
        },
      ];
    case 'aluminium':
      return [
        {
          way: 'the washer comes through the metal',
          failing_N: edge_mm2 * shearShare * base.tensile_N_mm2,
          ownFactor: null,
          formula: 'π·D·t·0.6·Rm',
        },
      ];
    default: {
      const wet = damp ? dampShare : 1;
      return [
        {
          way: 'the washer crushes the wood',
          failing_N: wet * 3 * acrossGrain_N_mm2(base.density_kg_m3) * (Math.PI / 4) * (ring ** 2 - hole ** 2),
          ownFactor: assumedWoodFactor,
          formula: '3·0.007·ρ·π/4·(D² − hole²)',
        },
        {
          way: 'the washer comes through the wood',
          // shear of softwood and ply, about 4 N/mm² at 530 kg/m³, as its density
          failing_N: wet * edge_mm2 * 4 * (base.density_kg_m3 / 530),
          ownFactor: assumedWoodFactor,
          formula: 'π·D·t·4·ρ/530',
        },
      ];
    }
  }
}

/** The thread comes out of what it is screwed into. */
function stripped({ base, thickness_mm, glassShare, damp, fastener }: Joint): Giving[] {
  const d = across_mm(fastener);
  const cylinder_mm2 = assumedThreadFill * Math.PI * d * thickness_mm;
  switch (base.kind) {
    case 'laminate':
      return [
        {
          way: 'the thread pulls out of the laminate',
          failing_N: cylinder_mm2 * laminateStrength(glassShare).betweenPlies_N_mm2,
          ownFactor: null,
          formula: '0.75·π·d·t·(22.5 − 17.5·w)',
        },
      ];
    case 'aluminium':
      return [
        {
          way: 'the thread strips in the metal',
          failing_N: cylinder_mm2 * shearShare * base.tensile_N_mm2,
          ownFactor: null,
          formula: '0.75·π·d·t·0.6·Rm',
        },
      ];
    default: {
      const gravity = specificGravity(base.density_kg_m3);
      const grip: WoodGrip =
        fastener.kind === 'coach screw'
          ? coachScrewGrip(gravity, d, thickness_mm)
          : woodScrewGrip(gravity, d, thickness_mm);
      const kept = (damp ? dampShare : 1) * (base.kind === 'ply' ? assumedPlyShare : 1);
      return [
        {
          way: 'the screw pulls out of the wood',
          failing_N: kept * grip.failing_N,
          ownFactor: grip.failing_N / grip.allowed_N,
          formula: fastener.kind === 'coach screw' ? '8100·G^1.5·D^0.75·L, lbf and inches' : '108.25·G²·D·L',
        },
      ];
    }
  }
}

/** Every way one fastener gives when pulled along the surface, the weakest first. Edges are as far off as `spacing_mm` says. */
export function pulledAlong({ base, thickness_mm, glassShare, damp, fastener }: Joint): readonly Giving[] {
  const d = across_mm(fastener);
  const tensile_N_mm2 =
    'size' in fastener ? boltClasses[fastener.ofClass].tensile_N_mm2 : boltClasses['50'].tensile_N_mm2;
  const section_mm2 = 'size' in fastener ? stressArea_mm2(fastener.size) : (Math.PI / 4) * ((2 / 3) * d) ** 2;
  const shears: Giving = {
    way: 'size' in fastener ? 'the bolt shears' : 'the screw shears',
    failing_N: shearShare * tensile_N_mm2 * section_mm2,
    ownFactor: null,
    formula: '0.6·Rm·section',
  };
  switch (base.kind) {
    case 'laminate':
      return weakestFirst([
        shears,
        {
          way: 'the hole in the laminate draws out long',
          failing_N: d * thickness_mm * laminateStrength(glassShare).compression_N_mm2,
          ownFactor: null,
          formula: 'd·t·(150·w + 72)',
        },
      ]);
    case 'aluminium':
      return weakestFirst([
        shears,
        {
          way: 'the hole in the metal draws out long',
          failing_N: 1.5 * base.tensile_N_mm2 * d * thickness_mm,
          ownFactor: null,
          formula: '1.5·Rm·d·t',
        },
      ]);
    default: {
      // a screw bends and bears on its root, one tenth added (EC5)
      const bears = 'size' in fastener ? d : 1.1 * (2 / 3) * d;
      const crush_N_mm2 =
        (base.kind === 'ply' ? 0.11 : 0.082) * (1 - 0.01 * bears) * base.density_kg_m3 * (damp ? dampShare : 1);
      const bend_Nmm = 0.3 * tensile_N_mm2 * bears ** 2.6;
      return weakestFirst([
        shears,
        {
          way: 'the wood crushes and the fastener tilts',
          failing_N: tilting_N(crush_N_mm2 * bears, thickness_mm),
          ownFactor: assumedWoodFactor,
          formula: '(√2 − 1)·fh·d·t',
        },
        {
          way: 'the fastener bends in the wood',
          failing_N: bending_N(crush_N_mm2 * bears, bend_Nmm),
          ownFactor: assumedWoodFactor,
          formula: '√(2·My·fh·d)',
        },
      ]);
    }
  }
}

/**
 * Side pull at which a stiff pin, held by a thin plate that lets it tilt, crushes its way round in wood (Johansen).
 *
 * @param crush_N_per_mm  what the wood bears along the pin. [N/mm]
 * @param depth_mm        how deep it stands. [mm]
 */
export const tilting_N = (crush_N_per_mm: number, depth_mm: number): number =>
  (Math.SQRT2 - 1) * crush_N_per_mm * depth_mm;

/** Side pull at which a pin, deep enough not to tilt, bends in the wood. @param bend_Nmm  moment at which it bends for good */
export const bending_N = (crush_N_per_mm: number, bend_Nmm: number): number => Math.sqrt(2 * bend_Nmm * crush_N_per_mm);

/** From a fastener's middle to the next and to an edge, in its diameters and mm: metal and laminate 3 d, wood more along the grain. */
export function spacing_mm(joint: Joint): { readonly between: number; readonly edge: number } {
  const d = across_mm(joint.fastener);
  switch (joint.base.kind) {
    case 'laminate':
      return { between: 4 * d, edge: 3 * d };
    case 'aluminium':
      return { between: 3 * d, edge: 2 * d };
    default:
      return { between: 5 * d, edge: 7 * d };
  }
}

const weakestFirst = (ways: readonly Giving[]): readonly Giving[] =>
  [...ways].sort((a, b) => a.failing_N - b.failing_N);
