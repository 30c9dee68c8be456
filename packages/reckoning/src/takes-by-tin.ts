/** What a step takes of the stores, by the coverage its tins say where that sets the amount. */
import type { Book, Id, Step, StepTake } from '#boat-book';
import { showNumber } from '#units';
import { type TinOfBook, tinFor } from './product-tin.ts';
import { amountInWords } from './store-amounts.ts';

/** How far a litre of a product goes in one coat, and whose figure that is. */
export interface Coverage {
  /** [m²/l] */
  readonly m2_l: number;
  /** the tin that says so; null: our figure */
  readonly tin: TinOfBook | null;
}

/**
 * The coverage of a family's product: the tin's where one speaks for it and says so, else ours.
 *
 * @param family     id in `cureLaws`
 * @param ours_m2_l  our figure. [m²/l], over 0
 * @param store      the thing in the stores it is; null: none of them, so that only a tin of no one thing speaks
 */
export function coverageOf(
  book: Pick<Book, 'tins'>,
  { family, ours_m2_l }: { readonly family: string; readonly ours_m2_l: number },
  store: Id | null,
): Coverage {
  const tin = tinFor(book, family, [store ?? '']);
  const said = tin?.tin.spread_m2_l ?? null;
  return said === null ? { m2_l: ours_m2_l, tin: null } : { m2_l: said, tin };
}

/** `12 m² a litre, from the tin of Hull varnish`, or that it is our figure. */
export const coverageInWords = ({ m2_l, tin }: Coverage): string =>
  `${showNumber(m2_l, 2).replace(/\.?0+$/, '')} m² a litre, ${tin === null ? 'our figure; the tin wins' : `from the tin of ${tin.tin.name}`}`;

export interface TakeByTin extends StepTake {
  /** how far a litre was taken to go; null: the amount hangs on no coverage */
  readonly goes: Coverage | null;
}

/** `0.32 l, at 12 m² a litre, from the tin of Hull varnish`; only the amount where it hangs on no coverage. */
export const takeInWords = ({ amount, unit, goes }: TakeByTin): string =>
  `${amountInWords(amount, unit)}${goes === null ? '' : `, at ${coverageInWords(goes)}`}`;

/**
 * What a step takes of each store, as the tins have it. What is stored was worked out at our coverage: twice the
 * coverage is half the amount, so a tin put in after the job, or taken out again, has its say.
 */
export function takesByTin(book: Pick<Book, 'tins'>, { takes }: Pick<Step, 'takes'>): readonly TakeByTin[] {
  return (takes ?? []).map((take) => {
    if (take.coverage == null) return { ...take, goes: null };
    const goes = coverageOf(book, take.coverage, take.store);
    return { ...take, amount: (take.amount * take.coverage.ours_m2_l) / goes.m2_l, goes };
  });
}
