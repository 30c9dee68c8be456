import { beddingTouch, jointMaterials } from '../tables/bedding-touch.read-2026-11.ts';

export type JointMaterial = keyof typeof jointMaterials;
/** A kind of bedding, sealant, glue or filler. */
export type BeddingKind = keyof typeof beddingTouch;

/** A joint as it is asked about. */
export interface Joint {
  /** what meets in it */
  readonly parts: readonly [JointMaterial, JointMaterial];
  /** whether it must come apart again, without harm to either part */
  readonly apart: 'each season' | 'some day' | 'never';
  /**
   * What holds it: screws or bolts, so that what is between only seals; what is between, but next to no load; what is
   * between, and a load with it; or nothing is joined, and it fills a hole or a hollow.
   */
  readonly held: 'fastened' | 'stuck' | 'glued' | 'filled';
  /** `weather` is spray, rain and sun; `hot` from 80 °C, beside an exhaust or on an engine */
  readonly where: 'indoors' | 'weather' | 'under water' | 'fuel' | 'hot';
  /** how far one part moves against the other, there and back. [mm], ≥ 0 */
  readonly movement_mm: number;
  /** room between the parts, filled by it. [mm], > 0 */
  readonly gap_mm: number;
  /** paint goes over its edge, or near it before it is bedded */
  readonly painted: boolean;
}

export const jointMaterialNames = Object.keys(jointMaterials) as readonly JointMaterial[];
export const materialSaid = (material: JointMaterial): string => jointMaterials[material];

/** What a kind does to a material, and whether that was read, is recalled or is common practice. */
export interface Touch {
  readonly material: JointMaterial;
  readonly touch: 'sound' | 'primed' | 'named' | 'attacks' | 'loose';
  readonly seen: 'read second-hand' | 'recalled' | 'common practice';
}

const seenAs = { r: 'read second-hand', m: 'recalled', p: 'common practice' } as const;

/** How a kind gets on with a material. */
export function touchOf(kind: BeddingKind, material: JointMaterial): Touch {
  const [touch, seen] = beddingTouch[kind][material].split(' ') as [Touch['touch'], keyof typeof seenAs];
  return { material, touch, seen: seenAs[seen] };
}

/** The materials a kind attacks, in the order of the table. */
export const attackedBy = (kind: BeddingKind): readonly JointMaterial[] =>
  jointMaterialNames.filter((material) => touchOf(kind, material).touch === 'attacks');

/** The two of a joint, once where they are alike. */
export const partsOf = ({ parts: [a, b] }: Joint): readonly JointMaterial[] => (a === b ? [a] : [a, b]);
