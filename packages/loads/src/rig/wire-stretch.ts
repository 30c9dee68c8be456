import type { Source } from '#working';
import { wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import { cellsFor, type PrintedCell } from '../path/printed.ts';

/** How a stay's wire is laid. */
export type Laid = keyof typeof wireBreaking;

/**
 * Modulus of new stainless wire on the full circle of its diameter, πd²/4. [kN/mm²]
 * Rigging-trade values, recalled; 1x19 may be 10 less or more, and wire that has not settled stretches more.
 */
export const modulus_kN_mm2 = { '1x19': 107.5, '7x7': 57.3, '7x19': 47.5 } as const satisfies Record<Laid, number>;

/** The folding rule for 1x19 of any diameter: 1 mm of stretch on 2 m of wire is 5 % of its breaking load. */
const shareOfBreakingByStrain = 0.05 / (1 / 2000);

export const stretchSources = {
  modulus: { title: 'modulus of stainless wire on its full circle, rigging-trade values', seen: 'recalled' },
  rule: {
    title: 'a spar maker’s folding rule: 1 mm in 2 m of 1x19 is 5 % (sail-delmarva.blogspot.com, 2015)',
    seen: 'read second-hand',
  },
} as const satisfies Record<string, Source>;

/** Force that would stretch a wire to twice its length, did it stay elastic. [N] @param size_mm across */
export function stiffness_N(laid: Laid, size_mm: number): number {
  return (1000 * modulus_kN_mm2[laid] * Math.PI * size_mm ** 2) / 4;
}

/** The lowest printed breaking load of new 316 wire, or null where no table has the size. */
export function wireCell(laid: Laid, size_mm: number): PrintedCell | null {
  return cellsFor(wireBreaking[laid], size_mm)[0] ?? null;
}

/** What a stay bears, with the ends of the band. */
export interface StayLoad {
  readonly tension_N: number;
  readonly low_N: number;
  readonly high_N: number;
  /** of its breaking load when new; null where no table has the size */
  readonly share_pct: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** by the folding rule; null for wire it does not speak of */
  readonly byRule_pct: number | null;
  readonly byModulus_N: number;
  readonly breaking: PrintedCell | null;
}

/**
 * What a stay bears by how far a measured part of it has stretched. For 1x19 by two roads, the folding rule and the
 * modulus, which lie some 7 % apart: the middle of both, with both as the band. For other wire by the modulus, 10 % either way.
 *
 * @param strain  stretch over the length it was measured on. ≥ 0
 */
export function stayLoadByStretch(laid: Laid, size_mm: number, strain: number): StayLoad {
  const breaking = wireCell(laid, size_mm);
  const byModulus_N = stiffness_N(laid, size_mm) * strain;
  const byRule_pct = laid === '1x19' ? 100 * shareOfBreakingByStrain * strain : null;
  const byRule_N = byRule_pct === null || breaking === null ? null : (byRule_pct / 100) * breaking.force_N;
  const roads = byRule_N === null ? [0.9 * byModulus_N, 1.1 * byModulus_N] : [byRule_N, byModulus_N];
  const [low_N, high_N] = [Math.min(...roads), Math.max(...roads)];
  return { ...withShare((low_N + high_N) / 2, low_N, high_N, breaking), byRule_pct, byModulus_N };
}

/** What a stay bears where its tension itself was measured. @param tension_N ≥ 0; the band as given */
export function stayLoadByTension(
  laid: Laid,
  size_mm: number,
  { tension_N, low_N, high_N }: Pick<StayLoad, 'tension_N' | 'low_N' | 'high_N'>,
): StayLoad {
  return {
    ...withShare(tension_N, low_N, high_N, wireCell(laid, size_mm)),
    byRule_pct: null,
    byModulus_N: tension_N,
  };
}

function withShare(tension_N: number, low_N: number, high_N: number, breaking: PrintedCell | null) {
  const of = (force_N: number, all_N: number) => (100 * force_N) / all_N;
  return {
    tension_N,
    low_N,
    high_N,
    breaking,
    share_pct:
      breaking === null
        ? null
        : {
            value: of(tension_N, breaking.force_N),
            low: of(low_N, breaking.force_N),
            high: of(high_N, breaking.force_N),
          },
  };
}

/** Stretch of a length of 1x19 at a share of its breaking load by the folding rule. [m] */
export function stretchByRule_m(length_m: number, share: number): number {
  return (length_m * share) / shareOfBreakingByStrain;
}

/** What stays are usually set to, percent of breaking load; above `most` nothing is gained and terminals tire. */
export const usualShares = {
  caps: { low: 15, high: 20 },
  lightMasthead: { low: 10, high: 15 },
  most: 25,
} as const;

/** What a share of the breaking load says of a stay, in a few words. */
export function shareSays(share_pct: number): string {
  const { caps, lightMasthead, most } = usualShares;
  if (share_pct < 2) return 'slack';
  if (share_pct < lightMasthead.low)
    return `less than the ${lightMasthead.low} to ${caps.high} % that cap shrouds are set to`;
  if (share_pct <= caps.high) return `within the ${lightMasthead.low} to ${caps.high} % that cap shrouds are set to`;
  return share_pct <= most
    ? `more than the ${lightMasthead.low} to ${caps.high} % that cap shrouds are set to`
    : `more than ${most} % of breaking: ease it, terminals and hull tire`;
}
