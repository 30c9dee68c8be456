/** What goes into a pot: catalyst and hardener by weight, measure, drops and strokes; how long the pot may be used. */
import type { FigureSource } from './cure-laws.ts';
import { timeAtTemperature } from './reaction-rate.ts';

/**
 * Catalyst (medium-reactivity MEKP) for polyester laminating resin by temperature: a resin seller's guide to quantities,
 * as its chart prints it (handbook rows materials.mekp.temp). The chart goes on to 4 % below 13 °C; most resin sheets stop
 * at 2 or 3 %, so we do not.
 */
export const catalystChart = [
  { from_C: 13, to_C: 16, pct: 3 },
  { from_C: 16, to_C: 20, pct: 2 },
  { from_C: 20, to_C: 35, pct: 1 },
] as const;

/** Catalyst in gelcoat: 2 % at every temperature of the chart (the same guide). [%] */
export const gelcoatCatalyst_pct = 2;
/** Outside these it cures badly (workshop notes, handbook row materials.mekp.range; 3 % is the most of the chart). [%] */
export const leastCatalyst_pct = 1;
export const mostCatalyst_pct = 3;
/** A left-over pot of polyester can pass this. [°C] the same guide, handbook row materials.mekp.exotherm */
export const hottestPot_C = 150;

export type CatalystAdvice =
  | { readonly kind: 'found'; readonly pct: number }
  | { readonly kind: 'too cold'; readonly least_C: number }
  | { readonly kind: 'too warm'; readonly most_C: number };

/** Share of catalyst for a temperature; or that the chart does not go there. A limit belongs to the warmer row. */
export function catalystAdvice(air_C: number, resin: 'laminating' | 'gelcoat'): CatalystAdvice {
  const coldest = catalystChart[0];
  const warmest = catalystChart.at(-1)!;
  if (air_C < coldest.from_C) return { kind: 'too cold', least_C: coldest.from_C };
  if (air_C > warmest.to_C) return { kind: 'too warm', most_C: warmest.to_C };
  if (resin === 'gelcoat') return { kind: 'found', pct: gelcoatCatalyst_pct };
  return { kind: 'found', pct: catalystChart.findLast(({ from_C }) => air_C >= from_C)!.pct };
}

/**
 * Density of MEKP catalyst as sold, in a plasticiser. [g/ml] from memory: 1.1 to 1.18. Sellers' charts count 1 ml as 1 g,
 * which puts in about a seventh more than they say.
 */
export const catalystDensity_g_ml = 1.15;
/**
 * Drops in a millilitre of catalyst: 17 (a hobby page counts 500 drops to the fluid ounce) to 34 (another takes 10 drops to
 * an ounce of resin for 1 %). Droppers differ by as much: a syringe or a scale is better.
 */
export const catalystDrops_ml = { low: 17, high: 34 } as const;

/** Catalyst for so much resin. */
export interface CatalystAmount {
  readonly mass_g: number;
  /** counted as the sellers' charts do, 1 ml for 1 g. [ml] */
  readonly byChart_ml: number;
  /** by its density. [ml] */
  readonly byDensity_ml: number;
  readonly drops: { readonly low: number; readonly high: number };
}

/** @param resin_g [g], over 0 @param pct share of the resin's weight. [%] */
export function catalystAmount(resin_g: number, pct: number): CatalystAmount {
  const mass_g = (resin_g * pct) / 100;
  const byDensity_ml = mass_g / catalystDensity_g_ml;
  return {
    mass_g,
    byChart_ml: mass_g,
    byDensity_ml,
    drops: { low: byDensity_ml * catalystDrops_ml.low, high: byDensity_ml * catalystDrops_ml.high },
  };
}

/** Mixed epoxy. [g/ml] data sheets, 1.08 to 1.18 (handbook row materials.epoxy.density, from memory) */
export const epoxyDensity_g_ml = 1.13;
/** Liquid polyester resin. [g/ml] data sheets, 1.08 to 1.15 (handbook row materials.polyester.density, from memory) */
export const polyesterDensity_g_ml = 1.12;

/** A total in two parts by their ratio, in the total's own unit. */
export function partsOf(total: number, resin: number, hardener: number) {
  const part = total / (resin + hardener);
  return { resin: part * resin, hardener: part * hardener };
}

/** Whole strokes of a pair of pumps, one of each, for at least so much. @param pair_g what one stroke of each gives */
export const pumpStrokes = (mass_g: number, pair_g: number) => Math.ceil(mass_g / pair_g - 1e-9);

/** How long a pot of a family of products may be used, when nobody has read the tin. */
export interface PotLife {
  readonly minutes: number;
  readonly at_C: number;
  /** the mass it is said of. [g]; null: the mass does not matter (it is thinned with solvent, and thin) */
  readonly of_g: number | null;
  /** catalyst it is said of. [%]; null: it takes none */
  readonly catalyst_pct: number | null;
  readonly doublesPer_C: number;
  readonly source: FigureSource;
}

const life = (
  minutes: number,
  low: number,
  high: number,
  of_g: number | null,
  doublesPer_C: number,
  source: string,
  seen: FigureSource['seen'],
  catalyst_pct: number | null = null,
): PotLife => ({
  minutes,
  at_C: 20,
  of_g,
  catalyst_pct,
  doublesPer_C,
  source: { figure: `pot life ${minutes} min at 20 °C`, band: [low, high], unit: 'min', source, seen },
});
const sheets = 'data sheets of several makers';
const guide = 'a seller’s guide: 15 to 20 min with 2 % of catalyst at 20 °C (handbook row materials.mekp.potlife)';

/** Pot lives by family of `cureLaws`; a family that is not here is not mixed. The tin wins. */
export const potLives: Readonly<Record<string, PotLife>> = {
  'epoxy-fast': life(15, 10, 20, 100, 8.75, sheets, 'recalled'),
  'epoxy-slow': life(35, 25, 50, 100, 8.75, sheets, 'recalled'),
  'polyester-resin': life(17.5, 15, 20, null, 10, guide, 'read', 2),
  gelcoat: life(17.5, 15, 20, null, 10, guide, 'read', 2),
  'polyester-filler': life(6, 4, 10, null, 10, sheets, 'recalled', 2),
  'varnish-two-pot': life(180, 120, 360, null, 10, sheets, 'recalled'),
  'paint-two-pot': life(180, 120, 360, null, 10, sheets, 'recalled'),
  'epoxy-primer': life(240, 120, 480, null, 8.75, sheets, 'recalled'),
};

/**
 * A pot heats itself, so that a bigger one lasts less: taken as 1/√mass over the mass its pot life is said of. Our fit
 * between two points of a resin maker's article on exotherm: 100 g is what pot lives are said of, and a gallon (about
 * 4.3 kg) of one that lasts 20 to 35 min goes off in about 5. A smaller pot is not credited with more.
 */
export const assumedMassPower = 0.5;

/**
 * Most to mix in one cup. [g] Our assumption. Epoxy: pot lives are said of 100 g, and a builder's diary tells of 140 g of a
 * 60-minute epoxy that went off in a tall cup in about five. Polyester: the least amount of the seller's chart.
 */
export const assumedMostInCup_g: Readonly<Record<string, number>> = {
  'epoxy-fast': 100,
  'epoxy-slow': 100,
  'polyester-resin': 500,
  gelcoat: 500,
  'polyester-filler': 200,
};

/** Of its pot life a pot is worked with this share: after it, it drags and does not wet out. Our assumption. */
export const assumedUsableShare = 0.7;

/**
 * How long a pot may be used at a temperature. [min]
 *
 * @param life         from the tin or from `potLives`
 * @param at_C         temperature of the pot and the place. [°C]
 * @param mass_g       in one pot. [g], over 0; a pot bigger than the one it is said of lasts less (`assumedMassPower`)
 * @param catalyst_pct share of catalyst put in: the more, the shorter, in inverse proportion (our assumption; a chart of
 *                     another resin shortens it more)
 */
export function potLife_min(
  life: Pick<PotLife, 'minutes' | 'at_C' | 'of_g' | 'catalyst_pct' | 'doublesPer_C'>,
  at_C: number,
  mass_g: number,
  catalyst_pct: number | null = null,
): number {
  const warm = timeAtTemperature(life.minutes, life.at_C, at_C, life.doublesPer_C);
  const mass = life.of_g === null ? 1 : Math.min(1, (life.of_g / mass_g) ** assumedMassPower);
  const catalyst = life.catalyst_pct === null || catalyst_pct === null ? 1 : life.catalyst_pct / catalyst_pct;
  return warm * mass * catalyst;
}

export type Batches =
  | {
      readonly kind: 'batches';
      readonly count: number;
      readonly each_g: number;
      /** of one batch. [min] */
      readonly potLife_min: number;
      /** time to mix one and use it up. [min] */
      readonly use_min: number;
    }
  /** however little is mixed, it goes off before it is used */
  | { readonly kind: 'goes off first'; readonly potLife_min: number };

/** More batches than anyone mixes for one step. */
const mostBatches = 100;

/**
 * The fewest equal batches of which each can be used up within its pot life and is not too much for one cup.
 *
 * @param total_g     all that is to be mixed. [g], over 0
 * @param using_min   time to use all of it. [min], ≥ 0
 * @param mixing_min  time to mix one batch, which runs on its pot life. [min], ≥ 0
 * @param mostInCup_g most in one cup. [g]; null: no limit
 * @param lifeOf      pot life of a batch of so many grams. [min]
 */
export function batchesWithin(
  total_g: number,
  using_min: number,
  mixing_min: number,
  mostInCup_g: number | null,
  lifeOf: (mass_g: number) => number,
): Batches {
  const least = mostInCup_g === null ? 1 : Math.max(1, Math.ceil(total_g / mostInCup_g - 1e-9));
  for (let count = least; count <= Math.max(least, mostBatches); count++) {
    const each_g = total_g / count;
    const potLife = lifeOf(each_g);
    const use_min = mixing_min + using_min / count;
    if (use_min <= assumedUsableShare * potLife)
      return { kind: 'batches', count, each_g, potLife_min: potLife, use_min };
  }
  return { kind: 'goes off first', potLife_min: lifeOf(Math.min(total_g, mostInCup_g ?? total_g)) };
}
