/** Short forms to write recipes in, so that what stands in each file is what differs between kinds of job. */
import type {
  AmountInput,
  AmountRule,
  FollowUpTime,
  Recipe,
  RecipeAsk,
  RecipeFollowUp,
  RecipeMix,
  RecipeProof,
  RecipeStep,
  RecipeStore,
  RecipeWait,
} from '../src/recipe.ts';

type Minutes = readonly [low: number, likely: number, high: number];
const minutesOf = ([low, likely, high]: Minutes) => ({ low, likely, high });

/** A step by one pair of hands; what is not said is not needed. Minutes are common practice. */
export function step(title: string, minutes: Minutes, parts: Partial<RecipeStep> = {}): RecipeStep {
  return {
    title,
    minutes: minutesOf(minutes),
    hands: 1,
    notAlone: false,
    needs: {},
    features: [],
    tools: [],
    setUps: [],
    stores: [],
    dusty: false,
    wet: false,
    mix: mixFor(parts),
    waits: [],
    window: null,
    cautions: [],
    ...parts,
  };
}

/**
 * What is mixed for a step that cures by one of these families, by the name that every recipe has for it, so that their
 * steps may share a batch. Mixing and pot life at 20 °C and densities are common practice; the tin's win.
 */
const mixes: Readonly<Record<string, Pick<RecipeMix, 'name' | 'mixing_min' | 'potLife_min' | 'density_g_ml'>>> = {
  'epoxy-fast': { name: 'Thickened epoxy, fast hardener', mixing_min: 8, potLife_min: 20, density_g_ml: 1.1 },
  'epoxy-slow': { name: 'Epoxy, slow hardener', mixing_min: 8, potLife_min: 40, density_g_ml: 1.1 },
  gelcoat: { name: 'Gelcoat with its catalyst', mixing_min: 5, potLife_min: 15, density_g_ml: 1.2 },
  'epoxy-primer': { name: 'Epoxy primer with its hardener', mixing_min: 10, potLife_min: 240, density_g_ml: 1.4 },
  'paint-two-pot': { name: 'Two-pot paint with its hardener', mixing_min: 10, potLife_min: 240, density_g_ml: 1.2 },
};

/** The mix of a step by what it cures as, and the store that says how much of it. */
function mixFor({ waits = [], stores = [] }: Partial<RecipeStep>): RecipeMix | null {
  for (const { law } of waits) {
    const mix = law.kind === 'product' ? mixes[law.product] : undefined;
    if (law.kind !== 'product' || mix === undefined) continue;
    const resin = stores.find(({ name }) => /\b(epoxy|gelcoat|two-pot)\b/i.test(name) && !/powder|fibre/i.test(name));
    return { ...mix, family: law.product, of: resin?.name ?? null };
  }
  return null;
}

export const proof = (
  kind: RecipeProof['kind'],
  title: string,
  minutes: Minutes,
  parts: Partial<RecipeStep> = {},
): RecipeProof => ({ kind, step: step(title, minutes, parts) });

/** A wait by the law of a family of products. */
export const cures = (title: string, product: string, parts: Partial<RecipeWait> = {}): RecipeWait => ({
  title,
  law: { kind: 'product', product },
  needs: {},
  setUps: [],
  still: [],
  wet: false,
  ...parts,
});

/** A wait of a set length: a soak, a rest, a drip. */
export const lasts = (
  title: string,
  minutes: number,
  because: string,
  parts: Partial<RecipeWait> = {},
): RecipeWait => ({
  title,
  law: { kind: 'set time', minutes, because },
  needs: {},
  setUps: [],
  still: [],
  wet: false,
  ...parts,
});

/** What the job leaves to be done. */
export const followUp = (
  title: string,
  minutes: Minutes,
  because: string,
  after: FollowUpTime,
  consequence: RecipeFollowUp['consequence'],
): RecipeFollowUp => ({ title, because, minutes: minutesOf(minutes), consequence, after });
/** From so many days after the job is done, to so many. */
export const inDays = (least_days: number, most_days: number): FollowUpTime => ({
  kind: 'days',
  least_days,
  most_days,
});
/** After the next outing; without one, in so many days. */
export const nextOuting = (else_days: number): FollowUpTime => ({ kind: 'next outing', else_days });

/** A size to be measured. */
export const size = (id: string, words: string, unit: RecipeAsk['unit'], low: number, high: number): RecipeAsk => ({
  id,
  words,
  unit,
  low,
  high,
  whole: false,
});
/** A number of things to be counted. */
export const number = (id: string, words: string, low: number, high: number): RecipeAsk => ({
  id,
  words,
  unit: '',
  low,
  high,
  whole: true,
});

/** A store and how much of it; it is known in the stores by the words given. */
export const store = (
  name: string,
  words: string,
  amount: AmountRule,
  pack: RecipeStore['pack'] = null,
  size: string | null = null,
): RecipeStore => ({ name, words: words.split(/[ -]/), amount, size, pack });
export const tube = { holds: 290, word: 'tube' };
export const tin = (litres: number) => ({ holds: litres, word: 'tin' });
export const each = (of: string, times = 1, spare = 0, unit = ''): AmountRule => ({
  kind: 'each',
  of,
  times,
  spare,
  unit,
});
export const always = (amount: number, unit: string, because: string): AmountRule => ({
  kind: 'set',
  amount,
  unit,
  because,
});

const asked = (ask: string): AmountInput => ({ from: 'asked', ask });
const given = (value: number | string): AmountInput => ({ from: 'set', value });
const input = (of: string | number): AmountInput => (typeof of === 'string' ? asked(of) : given(of));

/** How far a litre goes, m² in one coat: ours, and of a family that has tins, the tin's where it says so. */
const coverage = (m2_l: number, family?: string): AmountInput =>
  family === undefined ? given(m2_l) : { from: 'coverage', family, ours_m2_l: m2_l };

/** Paint or varnish: the litres for an area asked, so many coats. `spread` m² a litre and coat. */
export const coats = (area: string, count: number, spread: number, family?: string): AmountRule => ({
  kind: 'question',
  question: 'materials.coats',
  inputs: { area: asked(area), coats: given(count), spread: coverage(spread, family) },
  figure: 'V',
  waste_pct: 15,
  unit: 'l',
});
/** Paint for the bottom, by the boat's own sizes. */
export const bottomCoats = (count: number, spread: number, family: string): AmountRule => ({
  kind: 'question',
  question: 'materials.bottom-coats',
  inputs: {
    length: { from: 'boat', size: 'length_m' },
    beam: { from: 'boat', size: 'beam_m' },
    draft: { from: 'boat', size: 'draft_m' },
    coats: given(count),
    spread: coverage(spread, family),
  },
  figure: 'V',
  waste_pct: 15,
  unit: 'l',
});
/** Sealant under plates: lengths and widths asked, a layer in mm, so many plates. */
export const bedding = (length: string | number, width: string | number, layer_mm: number, count: string | number) =>
  ({
    kind: 'question',
    question: 'materials.bedding',
    inputs: { length: input(length), width: input(width), layer: given(layer_mm), count: input(count) },
    figure: 'V',
    waste_pct: 50,
    unit: 'ml',
  }) satisfies AmountRule;
/** A bead of sealant: a length asked, round or a fillet, so thick. */
export const bead = (length: string, shape: 'round' | 'fillet', mm: number): AmountRule => ({
  kind: 'question',
  question: 'materials.bead',
  inputs: { length: asked(length), shape: given(shape), size: given(mm) },
  figure: 'V',
  waste_pct: 25,
  unit: 'ml',
});
/** Thick resin for holes drilled out and filled: how many, how wide and deep. */
export const plugs = (count: string, diameter: string | number, depth: string | number): AmountRule =>
  filling('drilled', count, diameter, depth);

/** What fills hollows as they are: how many, how wide and deep. */
export const hollows = (count: string, width: string | number, depth: string | number): AmountRule =>
  filling('as-it-is', count, width, depth);
const filling = (
  opened: 'drilled' | 'as-it-is',
  count: string,
  wide: string | number,
  deep: string | number,
): AmountRule => ({
  kind: 'question',
  question: 'materials.plugs',
  inputs: { count: asked(count), diameter: input(wide), depth: input(deep), opened: given(opened) },
  figure: 'V',
  waste_pct: 50,
  unit: 'ml',
});
/** Resin for cloth: an area asked, its weight, so many layers, resin to cloth by weight. */
export const wetOut = (area: string, weight_g_m2: number, layers: number, ratio: number): AmountRule => ({
  kind: 'question',
  question: 'materials.cloth-resin',
  inputs: { area: asked(area), weight: given(weight_g_m2), layers: given(layers), ratio: given(ratio) },
  figure: 'resin',
  waste_pct: 20,
  unit: 'kg',
});

export const mast = (state: 'up' | 'down') => ({ setUp: 'mast', state });
export const coverOff = { setUp: 'cover', state: 'off' };
export const coverOn = { setUp: 'cover', state: 'on' };
export const propped = { setUp: 'boat', state: 'propped' };
export const onTrailer = { setUp: 'boat', state: 'on the trailer' };
export const boardLowered = { setUp: 'board', state: 'lowered' };

/** Cautions that many steps share; each stands at the step it belongs to. */
export const care = {
  resin:
    'Gloves and goggles: skin that takes to epoxy never leaves it. Do not leave a full pot standing; it heats itself until it smokes.',
  blush: 'Wash the waxy blush off with water before sanding or coating: sanding only rubs it in.',
  polyester:
    'Styrene: air through or an organic-vapour mask. Peroxide catalyst blinds: goggles, and never near cobalt accelerator.',
  dust: 'Sanding dust: mask and goggles.',
  drill: 'Drill dust and glass fibre: goggles, mask, and mark the drill for depth.',
  solvent: 'Solvent vapour: air through, no flame, no motor that sparks.',
  isocyanate: 'The hardener holds isocyanates: brush or roll only, with air through; spraying needs supplied air.',
  rags: 'Lay oily rags out flat outdoors or under water: in a heap they catch fire by themselves.',
  props: 'Nobody under her until the stands are in on both sides and she does not move when pushed.',
  board: 'No hand or foot under the board while it can fall: block it before the load comes off the wire.',
  jack: 'Chock the other wheel, hitch on; an axle stand before a hand goes under. Never on the jack alone.',
  dead: 'Loads off, isolator off, negative lead off first and on last. Rings and watch off; tape the spanner’s handle.',
  hydrogen: 'A charging battery gives off hydrogen: air through, no spark, no flame.',
  petrol:
    'Petrol vapour is heavy and lies in bilges: outdoors, no flame, nothing that sparks, an extinguisher to hand.',
  running:
    'Hands, hair and cord clear of the propeller; kill-cord on the one who starts it; exhaust gas kills indoors.',
  strands: 'Broken strands cut to the bone: leather gloves, and never run a hand along wire.',
  mains: 'Mains outdoors only through a residual-current device, and never in the wet.',
  aloft: 'Look up for power lines first, and keep out from under the mast.',
} as const;

export const recipesOf = <const Id extends string>(recipes: Readonly<Record<Id, Recipe>>) => recipes;
