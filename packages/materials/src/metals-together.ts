import { galvanicLimits_V, galvanicSeries } from '../tables/galvanic-series.read-2026-11.ts';

export type SeaMetal = keyof typeof galvanicSeries;
export type Wetness = Exclude<keyof typeof galvanicLimits_V, 'chart'>;

/** Metals as a boat's parts are called by them; each stands for one of the series. */
const boatMetals = {
  stainless: 'stainless-316',
  bronze: 'silicon-bronze',
  aluminium: 'aluminium',
  galvanised: 'galvanised',
} as const satisfies Readonly<Record<string, SeaMetal>>;
export type BoatMetal = keyof typeof boatMetals;
export const isBoatMetal = (name: string): name is BoatMetal => Object.hasOwn(boatMetals, name);

/** The one of two parts that goes where they touch, wet with salt; null: neither, to speak of. */
export function boatMetalThatGoes(a: BoatMetal, b: BoatMetal): BoatMetal | null {
  const { apart, goes } = metalPair(boatMetals[a], boatMetals[b], 'harsh');
  return apart ? (goes === boatMetals[a] ? a : b) : null;
}

/** Names of the metals there are figures of, noblest first. */
export const seaMetals = Object.keys(galvanicSeries) as readonly SeaMetal[];

/**
 * Potential of a metal in sea water: the middle of its range in flowing water, or where none is printed the chart's. [V]
 * @throws RangeError when the table has lost both
 */
export function seaPotential_V(metal: SeaMetal): number {
  const { flowing_V, chart_mV } = galvanicSeries[metal];
  if (flowing_V !== null) return (flowing_V[0] + flowing_V[1]) / 2;
  if (chart_mV === null) throw new RangeError(`no series has ${metal}`);
  return chart_mV / 1000;
}

export interface MetalPair {
  /** the one that corrodes; null: alike */
  readonly goes: SeaMetal | null;
  readonly difference_V: number;
  readonly limit_V: number;
  /** over the limit of that wetness */
  readonly apart: boolean;
}

/**
 * Two metals that touch, wet with salt: which goes, and whether their difference is more than is let be.
 *
 * Not covered: how fast. A small piece of what goes on a large piece of what stays goes fast, the other way round slowly.
 */
export function metalPair(a: SeaMetal, b: SeaMetal, wetness: Wetness): MetalPair {
  const [volts_a, volts_b] = [seaPotential_V(a), seaPotential_V(b)];
  const difference_V = Math.abs(volts_a - volts_b);
  const limit_V = galvanicLimits_V[wetness];
  return {
    goes: difference_V === 0 ? null : volts_a < volts_b ? a : b,
    difference_V,
    limit_V,
    apart: difference_V > limit_V,
  };
}
