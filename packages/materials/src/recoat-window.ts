import type { WeatherHour } from '#sky';
import { cureFinish } from './cure-finish.ts';
import type { CureLaw } from './cure-law.ts';
import { cureLawOf, type FigureSource } from './cure-laws.ts';

/** Earliest and latest time for the next coat, at the product's reference temperature. */
export interface RecoatFigures {
  readonly product: string;
  /** past this the coat must be abraded first; null: no latest time known. [h] */
  readonly latest_h: number | null;
  readonly figure: FigureSource;
}

const latest = (
  product: string,
  latest_h: number | null,
  low: number,
  high: number,
  source: string,
): RecoatFigures => ({
  product,
  latest_h,
  figure: { figure: `${latest_h} h without abrading`, band: [low, high], unit: 'h', source, seen: 'common practice' },
});

/** Latest times for a coat without abrading; the earliest is the product's own law in `cureLaws`. The tin wins. */
export const recoatFigures: readonly RecoatFigures[] = [
  latest('varnish-one-pot', 48, 24, 72, 'tins on the shelf'),
  latest('varnish-two-pot', 48, 24, 72, 'tins on the shelf'),
  latest('epoxy-primer', 96, 72, 168, 'tins on the shelf, epoxy primer under polyurethane'),
];

export type RecoatWindow =
  /** next coat from this minute, and before that one */
  | { readonly kind: 'window'; readonly earliest: number; readonly latest: number }
  | { readonly kind: 'open window'; readonly earliest: number; readonly because: string }
  | { readonly kind: 'no window'; readonly because: string };

/**
 * When the next coat may go on, for a coat finished at a minute of the hours given.
 *
 * Both ends run by the product's own law, so warmth brings both nearer: the film that is ready sooner is also too
 * hard sooner.
 *
 * @param product  id in `cureLaws`
 * @param hours    hour i holds for minutes [60·i, 60·i + 60)
 * @param start    minute the coat was finished. whole, ≥ 0
 * @returns        minutes; an end after the hours given has no figure and is said so
 */
export function recoatWindow(product: string, hours: readonly WeatherHour[], start: number): RecoatWindow {
  const { law, title } = cureLawOf(product);
  const earliest = cureFinish(law, hours, start).finish;
  if (earliest === null)
    return { kind: 'no window', because: `${title.toLowerCase()} is not ready within the ${hours.length} h looked at` };
  const figures = recoatFigures.find((row) => row.product === product);
  if (!figures || figures.latest_h === null || !('atReference_min' in law))
    return {
      kind: 'open window',
      earliest,
      because: `no latest time is known for ${title.toLowerCase()}: see the tin`,
    };
  const slower: CureLaw = { ...law, atReference_min: figures.latest_h * 60 };
  const end = cureFinish(slower, hours, start).finish;
  if (end === null)
    return { kind: 'open window', earliest, because: `its latest time lies after the ${hours.length} h looked at` };
  return { kind: 'window', earliest, latest: end };
}
