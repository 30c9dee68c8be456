/** What to mix now for a step: grams, measures, strokes, pot life at the temperature there is, and what can hurt. */
import type { Book, Id, Step } from '#boat-book';
import type { MixRatio } from '#jobs';
import {
  assumedMostInCup_g,
  type Batches,
  batchesWithin,
  catalystAdvice,
  catalystAmount,
  cureLaws,
  epoxyDensity_g_ml,
  hottestPot_C,
  partsOf,
  polyesterDensity_g_ml,
  potLife_min,
  pumpStrokes,
} from '#materials';
import { showNumber } from '#units';
import { type PotLifeOfMix, potLifeOfMix } from './product-tin.ts';
import { coverageInWords, type TakeByTin, takesByTin } from './takes-by-tin.ts';

/** The temperature it is mixed at, and how that is known. */
export interface MixingAir {
  readonly air_C: number;
  readonly basis: 'typed' | 'forecast' | 'climate';
}

/** One thing weighed or measured into the pot. */
export interface MixPart {
  readonly name: 'resin' | 'hardener' | 'catalyst' | 'all of it';
  /** `120 g`, `2.4 g: 2.4 ml by the seller’s chart, 2.1 ml by its density` */
  readonly words: string;
  readonly from: 'the tin' | 'the mix' | 'a published source' | 'typed';
}

export interface MixNow {
  readonly mix: string;
  /** the tin its figures are from; null: none speaks for it */
  readonly tin: string | null;
  /** the whole of it, mixed; null: nobody said how much the step takes. [g] */
  readonly total_g: number | null;
  /** `at 10 m² a litre, from the tin of …`; null: the amount hangs on no coverage, or was said now */
  readonly coverage: string | null;
  /** of one batch, where it is mixed in more than one of all of it; empty where the amount or the ratio is not known */
  readonly parts: readonly MixPart[];
  /** `In 2 batches of 90 g, each used up within 10 min.`; null: in one, or the amount is not known */
  readonly batches: string | null;
  readonly potLife: {
    readonly minutes: number;
    readonly from: PotLifeOfMix['from'];
    /** `19 min at 12 °C, by the forecast (from the tin: 15 min at 20 °C)` */
    readonly words: string;
  };
  /** why not to mix it now, in whole sentences: too cold, too warm, goes off before it is used */
  readonly against: readonly string[];
  /** what is not known, and what to say so that it is */
  readonly missing: readonly string[];
  readonly cautions: readonly string[];
}

/** How much of it, where the keeper says so now: the step's own amount otherwise. */
export interface MixAsked {
  /** [g], over 0 */
  readonly total_g?: number;
  /** time to use all of it. [min]; the step's likely minutes less the mixing otherwise */
  readonly using_min?: number;
}

/**
 * What to mix now for a step that uses a mix, or null where it uses none.
 *
 * Its tin's figures win (pot life, ratio, least temperature, pumps) and are said to be from the tin. The pot life is the
 * tin's, else that of the mix, taken at the temperature given, and shorter for a pot bigger than it is said of; without a
 * family or a tin the mix's own stands as written. Amounts: what is asked now, else what the step
 * says it takes (`mix_g`), else what it takes of the tin's own thing in the stores.
 *
 * @param step  id in the book
 * @param air   the hour's temperature at the boat: `problem.hours[now / 60]` has it, with its basis
 */
export function mixNow(book: Book, step: Id, air: MixingAir, asked: MixAsked = {}): MixNow | null {
  const record = book.steps[step];
  const mix = record?.mix == null ? undefined : book.mixes[record.mix];
  if (!record || record.mix === null || !mix) return null;
  const pot = potLifeOfMix(book, record.mix, record.stores)!;
  const family = mix.family ?? pot.tin?.tin.family ?? null;
  const product = cureLaws.find(({ id }) => id === family);
  const takes = takesByTin(book, record);
  const spread = takes.find(({ coverage }) => coverage != null && coverage.family === family);
  const total_g = asked.total_g ?? mixedByTin(record, spread) ?? takenOfTin(takes, pot, family);
  const using_min = asked.using_min ?? Math.max(0, record.minutes.likely - mix.mixing_min);
  const catalysed = family === 'polyester-resin' || family === 'gelcoat' || pot.tin?.tin.ratio?.kind === 'catalyst';
  const share = catalysed ? catalystShare(pot, family, air.air_C) : null;
  const lifeOf = (mass_g: number) =>
    family === null ? pot.life.minutes : potLife_min(pot.life, air.air_C, mass_g, share?.pct ?? null);
  const batches =
    total_g === null
      ? null
      : batchesWithin(total_g, using_min, mix.mixing_min, (family && assumedMostInCup_g[family]) || null, lifeOf);
  const each_g = batches?.kind === 'batches' ? batches.each_g : total_g;
  const minutes = batches?.potLife_min ?? lifeOf(pot.life.of_g ?? 100);
  const parts = each_g === null ? null : partsIn(each_g, pot, mix.ratio ?? null, { family, share });
  return {
    mix: mix.name,
    tin: pot.tin?.tin.name ?? null,
    total_g,
    coverage:
      asked.total_g === undefined && spread?.goes && record.mix_g != null ? `at ${coverageInWords(spread.goes)}` : null,
    parts: parts ?? [],
    batches: batchesInWords(batches),
    potLife: { minutes, from: pot.from, words: potLifeInWords(minutes, pot, family !== null, air) },
    against: [
      ...(share?.against ?? []),
      ...tooCold(product?.law ?? null, pot, air.air_C, product?.title ?? mix.name),
      ...(batches?.kind === 'goes off first'
        ? [
            `At ${degrees(air.air_C)} it goes off in ${wholeMinutes(batches.potLife_min)}, before even a small batch is used up: wait until it is cooler, or take a slower hardener.`,
          ]
        : []),
    ],
    missing: [
      ...(total_g === null ? ['How much the step takes is not said: put it in for grams, measures and batches.'] : []),
      ...(parts === null && total_g !== null
        ? ['How its parts go together is on the tin: put it in under the tin, for the weight of each.']
        : []),
      ...(family === null
        ? ['What kind of product it is was not said: its pot life stands as written, whatever the temperature.']
        : []),
    ],
    cautions: mixingCautions(family, product?.cautions ?? [], catalysed),
  };
}

/** What the step says it mixes, more or less by the coverage of the tin where it is spread over an area. [g] */
function mixedByTin({ mix_g }: Step, spread: TakeByTin | undefined): number | null {
  if (mix_g == null || spread?.coverage == null || spread.goes === null) return mix_g ?? null;
  return (mix_g * spread.coverage.ours_m2_l) / spread.goes.m2_l;
}

/** What the step takes of the tin's own thing in the stores. [g]; null: it is not said, or not in a measure of this kind */
function takenOfTin(takes: readonly TakeByTin[], { tin }: PotLifeOfMix, family: string | null): number | null {
  const taken = takes.find(({ store }) => store === tin?.tin.store);
  if (!taken) return null;
  const density = densityOf(family);
  const inGrams: Readonly<Record<string, number>> = { g: 1, kg: 1000, ml: density, l: 1000 * density };
  const grams = inGrams[taken.unit];
  return grams === undefined ? null : taken.amount * grams;
}

const densityOf = (family: string | null) => (family?.startsWith('epoxy') ? epoxyDensity_g_ml : polyesterDensity_g_ml);

interface CatalystShare {
  readonly pct: number | null;
  readonly from: 'the tin' | 'a published source';
  readonly against: readonly string[];
}

/** The chart's share for the temperature, held within what the tin allows; the tin's least where the chart has none. */
function catalystShare(pot: PotLifeOfMix, family: string | null, air_C: number): CatalystShare {
  const advice = catalystAdvice(air_C, family === 'gelcoat' ? 'gelcoat' : 'laminating');
  const tin = pot.tin?.tin.ratio;
  if (tin?.kind === 'catalyst') {
    const wanted = advice.kind === 'found' ? advice.pct : advice.kind === 'too cold' ? tin.high_pct : tin.low_pct;
    return { pct: Math.min(tin.high_pct, Math.max(tin.low_pct, wanted)), from: 'the tin', against: [] };
  }
  if (advice.kind === 'found') return { pct: advice.pct, from: 'a published source', against: [] };
  const against =
    advice.kind === 'too cold'
      ? `Not below ${degrees(advice.least_C)}: no amount of catalyst makes up for the cold, and it may never reach its strength.`
      : `Not above ${degrees(advice.most_C)}: it goes off before it is laid.`;
  return { pct: null, from: 'a published source', against: [against] };
}

function partsIn(
  mass_g: number,
  pot: PotLifeOfMix,
  ofMix: MixRatio | null,
  { family, share }: { readonly family: string | null; readonly share: CatalystShare | null },
): readonly MixPart[] | null {
  if (share !== null) {
    if (share.pct === null) return null;
    const { mass_g: catalyst, byChart_ml, byDensity_ml, drops } = catalystAmount(mass_g, share.pct);
    return [
      { name: 'resin', words: `${grams(mass_g)}, about ${millilitres(mass_g / polyesterDensity_g_ml)}`, from: 'typed' },
      {
        name: 'catalyst',
        words: `${showNumber(share.pct, 1).replace(/\.0$/, '')} %: ${grams(catalyst)}; by a syringe ${millilitres(byChart_ml)} as sellers count it, ${millilitres(byDensity_ml)} by its density; ${Math.round(drops.low)} to ${Math.round(drops.high)} drops, if there is nothing better`,
        from: share.from,
      },
    ];
  }
  const said = pot.tin?.tin.ratio;
  const ratio = said?.kind === 'parts' ? said : ofMix;
  if (ratio === null) return null;
  const from = said?.kind === 'parts' ? 'the tin' : 'the mix';
  const pair_g = pot.tin?.tin.strokePair_g ?? null;
  const density = densityOf(family);
  const strokes = pair_g === null ? null : pumpStrokes(mass_g, pair_g);
  const total = ratio.by === 'weight' ? mass_g : mass_g / density;
  const { resin, hardener } = partsOf(total, ratio.resin, ratio.hardener);
  const inWords = ratio.by === 'weight' ? grams : millilitres;
  return [
    { name: 'resin', words: inWords(resin), from },
    { name: 'hardener', words: inWords(hardener), from },
    ...(strokes === null || pair_g === null
      ? []
      : [
          {
            name: 'all of it' as const,
            words: `by the pumps ${strokes === 1 ? '1 stroke' : `${strokes} strokes`} of each, which makes ${grams(strokes * pair_g)}`,
            from: 'the tin' as const,
          },
        ]),
  ];
}

function tooCold(
  law: (typeof cureLaws)[number]['law'] | null,
  pot: PotLifeOfMix,
  air_C: number,
  name: string,
): readonly string[] {
  const said = pot.tin?.tin.minimum_C ?? null;
  const least = said ?? (law !== null && 'minimum_C' in law ? law.minimum_C : null);
  if (least === null || air_C >= least) return [];
  return [
    `${name} at ${degrees(air_C)} is below its least of ${degrees(least)}${said === null ? '' : ' (from the tin)'}: it makes no progress and may never reach its strength.`,
  ];
}

function batchesInWords(batches: Batches | null): string | null {
  if (batches?.kind !== 'batches' || batches.count === 1) return null;
  return `In ${batches.count} batches of ${grams(batches.each_g)}, one after the other: each is mixed and used up in ${wholeMinutes(batches.use_min)}.`;
}

function potLifeInWords(minutes: number, pot: PotLifeOfMix, byLaw: boolean, air: MixingAir): string {
  const said = `${wholeMinutes(pot.life.minutes)} at ${degrees(pot.life.at_C)}${pot.life.of_g === null ? '' : ` for ${grams(pot.life.of_g)}`}`;
  const basis = { typed: '', forecast: ', by the forecast', climate: ', a cautious guess for the time of year' }[
    air.basis
  ];
  if (!byLaw)
    return `${wholeMinutes(minutes)}${pot.from === 'the tin' ? ' (from the tin)' : ', as written on the mix'}`;
  return `${wholeMinutes(minutes)} at ${degrees(air.air_C)}${basis} (${pot.from === 'the tin' ? 'from the tin' : 'our figure; the tin wins'}: ${said})`;
}

function mixingCautions(family: string | null, ofProduct: readonly string[], catalysed: boolean): readonly string[] {
  const ours = [
    'Gloves, goggles, and air through.',
    ...(catalysed
      ? [
          'Catalyst in an eye burns it for good: rinse at once with much water for a quarter of an hour, then a doctor.',
          'Never mix catalyst with accelerator: the two together explode. Accelerator goes into the resin first, catalyst last.',
        ]
      : []),
    ...(family !== null && assumedMostInCup_g[family] !== undefined
      ? [
          `What is left in a pot heats itself${catalysed ? `, past ${hottestPot_C} °C` : ''}, smokes and can set fire: spread it out flat, and stand the pot outdoors in water.`,
        ]
      : []),
  ];
  return [
    ...ours,
    ...ofProduct.filter((words) => !/^Gloves and goggles|^Peroxide catalyst|^Do not leave a full pot/.test(words)),
  ];
}

const grams = (value: number) => `${showNumber(value, value < 10 ? 1 : 0)} g`;
const millilitres = (value: number) => `${showNumber(value, value < 10 ? 1 : 0)} ml`;
const degrees = (value: number) => `${showNumber(value, value % 1 === 0 ? 0 : 1)} °C`;
const wholeMinutes = (value: number) =>
  value >= 120 ? `${showNumber(value / 60, 1).replace(/\.0$/, '')} h` : `${Math.max(1, Math.floor(value))} min`;
