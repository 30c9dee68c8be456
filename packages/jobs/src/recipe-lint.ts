import { asksOf, type Recipe, type RecipeStep } from './recipe.ts';

/** What is wrong with a recipe, where, and what would be right. */
export interface RecipeFault {
  readonly where: string;
  readonly wrong: string;
  readonly right: string;
}

/** A thing that can hurt: what shows in a step that it is there, and what its cautions must then speak of. */
interface Hazard {
  readonly name: string;
  readonly there: (step: RecipeStep) => boolean;
  readonly said: RegExp;
}

const products = (step: RecipeStep) => step.waits.flatMap(({ law }) => (law.kind === 'product' ? [law.product] : []));
const titled = (pattern: RegExp) => (step: RecipeStep) => pattern.test(step.title);
const curesBy = (pattern: RegExp) => (step: RecipeStep) => products(step).some((product) => pattern.test(product));
const stands = (setUp: string, state: string) => (step: RecipeStep) =>
  step.setUps.some((need) => need.setUp === setUp && need.state === state);

/** The cautions of the trade (guidance, common practice), each with what calls for it. */
const hazards: readonly Hazard[] = [
  { name: 'epoxy', there: curesBy(/^epoxy/), said: /gloves/i },
  { name: 'polyester and its catalyst', there: curesBy(/^(polyester|gelcoat)/), said: /styrene|catalyst|peroxide/i },
  {
    name: 'solvent vapour',
    there: (step) => curesBy(/^(varnish|paint|antifouling)/)(step) || titled(/solvent|acetone|thinner|spirit/i)(step),
    said: /vapour|air through/i,
  },
  { name: 'isocyanates', there: curesBy(/two-pot$/), said: /isocyanate/i },
  {
    name: 'oily rags',
    there: (step) =>
      curesBy(/one-pot$/)(step) ||
      titled(/\boil (the|it|bare) ?(wood|teak|tiller|board)?\b.*\bwood|\bteak oil\b/i)(step),
    said: /rags/i,
  },
  { name: 'dust', there: ({ dusty }) => dusty, said: /mask|goggles/i },
  { name: 'poison of antifouling', there: curesBy(/^antifouling/), said: /poison|gloves/i },
  { name: 'a propped hull', there: stands('boat', 'propped'), said: /stands|props|under her/i },
  { name: 'a board that can fall', there: stands('board', 'lowered'), said: /under the board|block/i },
  {
    name: 'a battery’s current',
    there: titled(/\bbatter(y|ies)\b|\bisolator\b|\b(the|its|a|new) fuse\b/i),
    said: /negative|spanner|spark|dead|acid/i,
  },
  { name: 'petrol', there: titled(/\b(petrol|fuel|carburettor|tank)\b/i), said: /flame|vapour/i },
  {
    name: 'a running engine',
    there: titled(/\b(run|start) the (engine|outboard|motor)\b/i),
    said: /kill-cord|propeller|exhaust/i,
  },
  { name: 'a wheel off the ground', there: titled(/\bjack\b|\bwheels? off\b/i), said: /chock|stand/i },
  { name: 'gas', there: titled(/\b(gas|stove|regulator valve)\b/i), said: /lies low|licensed|soapy/i },
  { name: 'mains outdoors', there: ({ features }) => features.includes('mains'), said: /residual-current/i },
  {
    name: 'broken strands',
    there: titled(/\b(shrouds?|forestay|backstay|(old|new) stay|(every|old|new|control) wire)\b/i),
    said: /gloves|strand/i,
  },
  { name: 'a cylinder of gas under pressure', there: titled(/\bcylinder\b/i), said: /pressure|face|hand/i },
  { name: 'pyrotechnics', there: titled(/\bflares?\b/i), said: /fire|burn|never/i },
  { name: 'a mast overhead', there: stands('mast', 'up'), said: /power line|mast/i },
];

/** Words of a title that mean something is put on that must then dry or set, unless it is put on dry. */
const putsOn =
  /^(bed|rebed|varnish|paint|prime|undercoat|glue|glass|gelcoat|antifoul|seal|topcoat)\b|\bfill the\b.*\b(epoxy|filler|gelcoat)\b/i;

/**
 * What a recipe lacks: a wet step without a wait, a hazard without its caution, an amount that hangs on a size nobody
 * is asked for, a size asked for nothing, a window with nothing before it, a proof that tells nothing. Empty where it
 * is sound. A sound form is taken for granted (`recipeSchema`).
 *
 * What counts as a hazard is common practice: `hazards` above says what shows it and what its caution must speak of.
 */
export function recipeFaults(recipe: Recipe): RecipeFault[] {
  const faults: RecipeFault[] = [];
  const steps = [...recipe.steps, recipe.proof.step];
  steps.forEach((step, index) => {
    const where = index === recipe.steps.length ? 'proof' : `step ${index + 1}, ‘${step.title}’`;
    if ((step.wet || putsOn.test(step.title)) && step.waits.length === 0)
      faults.push({
        where,
        wrong: 'it leaves something wet or soft, and nothing waits for it',
        right: 'a wait with a law',
      });
    if (step.wet && !step.waits.some(({ wet }) => wet))
      faults.push({ where, wrong: 'its finish is wet, and no wait of it keeps dust away', right: 'a wait marked wet' });
    for (const hazard of hazards)
      if (hazard.there(step) && !step.cautions.some((caution) => hazard.said.test(caution)))
        faults.push({
          where,
          wrong: `${hazard.name}: no caution says so`,
          right: `a caution that speaks of ${hazard.said.source.replaceAll('|', ' or ')}`,
        });
    if (step.window && index === 0)
      faults.push({
        where,
        wrong: 'it has a window after the step before it, and it is the first',
        right: 'no window',
      });
    if (step.notAlone && step.hands > 1)
      faults.push({ where, wrong: 'marked not alone, and its hands say so already', right: 'one of the two' });
  });
  return [...faults, ...askFaults(recipe), ...wordFaults(recipe)];
}

function askFaults(recipe: Recipe): RecipeFault[] {
  const known = new Set(recipe.asks.map(({ id }) => id));
  const used = new Set<string>();
  const faults: RecipeFault[] = [];
  for (const step of [...recipe.steps, recipe.proof.step])
    for (const { name, amount, size, words } of step.stores) {
      const said = name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
      for (const word of words)
        if (!said.some((each) => each.startsWith(word.toLowerCase())))
          faults.push({
            where: `‘${name}’`,
            wrong: `it is to be known by ‘${word}’, which its name has not`,
            right: 'words of its name',
          });
      for (const ask of asksOf({ amount, size })) {
        used.add(ask);
        if (!known.has(ask))
          faults.push({
            where: `‘${name}’`,
            wrong: `its amount or size hangs on ‘${ask}’, which is not asked`,
            right: `one of: ${[...known].join(', ')}`,
          });
      }
    }
  for (const { id, low, high } of recipe.asks) {
    if (!used.has(id))
      faults.push({ where: `asks, ‘${id}’`, wrong: 'no amount hangs on it', right: 'a use, or nothing asked' });
    if (low > high)
      faults.push({ where: `asks, ‘${id}’`, wrong: `${low} to ${high} is no range`, right: 'the least first' });
  }
  return faults;
}

function wordFaults(recipe: Recipe): RecipeFault[] {
  const titles = [...recipe.steps, recipe.proof.step].map(({ title }) => title.toLowerCase());
  const twice = titles.find((title, index) => titles.indexOf(title) !== index);
  return [
    ...(twice === undefined ? [] : [{ where: `‘${twice}’`, wrong: 'two steps have this title', right: 'one each' }]),
    ...(recipe.words.length === 0
      ? [{ where: 'words', wrong: 'nothing to find it by', right: 'what a keeper says for it' }]
      : []),
    ...(recipe.writeDown.length === 0
      ? [{ where: 'what to write down', wrong: 'nothing', right: 'what the next one will ask' }]
      : []),
  ];
}
