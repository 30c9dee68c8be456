/** What stands in a recipe, in words. */
import type { AmountRule, FollowUpTime, Recipe, RecipeLaw, RecipeProof } from '#jobs';
import { cureLawOf } from '#materials';
import { countInWords, minutesInWords } from '../../parts/in-words.ts';
import { lawInWords } from '../../reading/step-in-words.ts';

/** Minutes and steps of a recipe, the proof counted in. */
export function recipeExtent({ steps, proof }: Recipe): string {
  const all = [...steps, proof.step];
  const minutes = all.reduce((sum, step) => sum + step.minutes.likely, 0);
  return `${countInWords(all.length, 'step')}, ${minutesInWords(minutes)} hands-on`;
}

/** How long a wait of a recipe takes, and by whose figure. */
export function recipeLawInWords(law: RecipeLaw): string {
  if (law.kind === 'set time') return `${minutesInWords(law.minutes)}: ${law.because}`;
  if (law.kind === 'own law') return `${lawInWords(law.law)}, figure: ${law.law.from}`;
  const known = cureLawOf(law.product).law;
  const own = law.depth_mm !== undefined && known.kind === 'moisture' ? { ...known, depth_mm: law.depth_mm } : known;
  return `${lawInWords(own)}, figure: ${known.from}`;
}

/** `1 for each of: bolts through the deck, and 2 over`, `1 m for each m of: length of the wire`, `worked out from …`. */
export function amountInWords(amount: AmountRule, { asks }: Pick<Recipe, 'asks'>): string {
  const asked = (id: string) => asks.find((ask) => ask.id === id)?.words ?? id;
  const unit = amount.unit && ` ${amount.unit}`;
  if (amount.kind === 'set') return `${amount.amount}${unit}: ${amount.because}`;
  if (amount.kind === 'each') {
    const each = asks.find((ask) => ask.id === amount.of)?.unit;
    const over = amount.spare > 0 ? `, and ${amount.spare}${unit} over` : '';
    return `${amount.times}${unit} for each ${each ? `${each} ` : ''}of: ${asked(amount.of)}${over}`;
  }
  const of = Object.values(amount.inputs).flatMap((input) =>
    input.from === 'asked'
      ? [asked(input.ask)]
      : input.from === 'boat'
        ? ['the boat’s own sizes']
        : input.from === 'coverage'
          ? [`${input.ours_m2_l} m² a litre unless the tin says otherwise`]
          : [],
  );
  return `worked out from ${[...new Set(of)].join(', ')}${amount.waste_pct > 0 ? `, ${amount.waste_pct} % more for waste` : ''}`;
}

export function followUpTimeInWords(after: FollowUpTime): string {
  if (after.kind === 'next outing')
    return `after the next outing; without one, after ${countInWords(after.else_days, 'day')}`;
  if (after.least_days === 0) return `within ${countInWords(after.most_days, 'day')}`;
  return `${after.least_days} to ${countInWords(after.most_days, 'day')} after`;
}

export const proofNames: Readonly<Record<RecipeProof['kind'], string>> = {
  load: 'put a load on it',
  hoist: 'hoist or lift with it',
  hose: 'play a hose on it',
  continuity: 'measure its circuit',
  pull: 'pull at it',
  photograph: 'photograph it',
  measure: 'measure it',
  run: 'run it',
  look: 'look at it',
  soak: 'let it stand in water',
};
