import { standardGravity_m_s2 } from '#units';
import type { Source } from '#working';
import { chainMass_kg_per_m } from '../../tables/chain.read-2026-11.ts';
import { ropeBreaking } from '../../tables/fibre-rope.read-2026-11.ts';
import { chainSteel_kg_m3, rodeFibres } from '../../tables/rode-gear.read-2026-11.ts';
import { seaWater_kg_m3 } from '../hoist/plate.ts';
import { cellsFor, type PrintedCell } from '../path/printed.ts';
import type { RodePiece } from './rode.ts';

export const chainSizes = [5, 6, 7, 8, 10] as const;
export type ChainSize = (typeof chainSizes)[number];
export const ropeSizes = [6, 8, 10, 12, 14, 16] as const;
export type RopeSize = (typeof ropeSizes)[number];
export type RodeFibre = keyof typeof rodeFibres;

/** The share of its weight in air that a thing weighs in sea water; below 0: it floats. */
export const inWater = (density_kg_m3: number) => 1 - seaWater_kg_m3 / density_kg_m3;

export interface RodeChain {
  readonly size_mm: ChainSize;
  readonly length_m: number;
}

export interface RodeRope {
  readonly fibre: RodeFibre;
  readonly size_mm: RopeSize;
  readonly length_m: number;
}

/** Mass of a metre of chain in air, and how it is known. */
export function chainMass(size_mm: ChainSize): { readonly kg_per_m: number; readonly seen: Source['seen'] } {
  return size_mm === 5
    ? { kg_per_m: chainMass_kg_per_m.recalled[5], seen: 'recalled' }
    : { kg_per_m: chainMass_kg_per_m.read[size_mm], seen: 'read second-hand' };
}

/** Chain of a rode under water. Its own stretch is a hundredth of a part in a thousand and is left out. */
export function chainPiece({ size_mm, length_m }: RodeChain): RodePiece {
  return {
    length_m,
    weight_N_per_m: chainMass(size_mm).kg_per_m * standardGravity_m_s2 * inWater(chainSteel_kg_m3),
    stretch_per_N: 0,
  };
}

/** The strongest cell of the tables: rope that is stronger stretches less, and the less it stretches the harder it pulls. */
export function stiffestCell(fibre: RodeFibre, size_mm: RopeSize): PrintedCell {
  return cellsFor(ropeBreaking[fibre], size_mm).at(-1)!;
}

/** Rope of a rode under water; it stretches in proportion to the pull. */
export function ropePiece({ fibre, size_mm, length_m }: RodeRope): RodePiece {
  const { density_kg_m3, mass_kg_per_m_mm2, stretch_pct, atShare_pct } = rodeFibres[fibre];
  return {
    length_m,
    weight_N_per_m: mass_kg_per_m_mm2 * size_mm ** 2 * standardGravity_m_s2 * inWater(density_kg_m3),
    stretch_per_N: stretch_pct / atShare_pct / stiffestCell(fibre, size_mm).force_N,
  };
}
