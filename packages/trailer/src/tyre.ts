import type { Day } from '#units';
import { loadIndex_kg, speedSymbol_km_h } from '../tables/load-index.read-2026-11.ts';

/** What one tyre of an index may carry, or null where the table has no such index. */
export function tyreLoad(index: number): { readonly kg: number; readonly recalled: boolean } | null {
  const row = loadIndex_kg.find(({ mark }) => mark === index);
  return row ? { kg: row.value, recalled: row.recalled === true } : null;
}

/** The least index that carries so much a tyre, or null where the table ends before it. */
export function leastIndex(each_kg: number): number | null {
  const row = loadIndex_kg.find(({ value }) => value >= each_kg);
  return row ? Number(row.mark) : null;
}

/** The lowest and the highest load index the table has. */
export const indexRange = {
  low: Number(loadIndex_kg[0]!.mark),
  high: Number(loadIndex_kg.at(-1)!.mark),
} as const;

export const speedSymbols: readonly string[] = speedSymbol_km_h.map(({ mark }) => String(mark));

/** The highest speed of a symbol, or null where the table has none such. */
export function tyreSpeed(symbol: string): { readonly km_h: number; readonly recalled: boolean } | null {
  const row = speedSymbol_km_h.find(({ mark }) => mark === symbol.toUpperCase());
  return row ? { km_h: row.value, recalled: row.recalled === true } : null;
}

/** Years a trailer tyre is kept: best changed at the first, never used past the second. */
export const tyreYears = { replace: 5, most: 7 } as const;
/** Least tread. [mm] */
export const leastTread_mm = 1.6;

/** When a tyre was made, as its code says. */
export type TyreMade =
  | { readonly kind: 'week'; readonly week: number; readonly year: number }
  | { readonly kind: 'before 2000'; readonly week: number; readonly endsIn: number }
  | { readonly kind: 'not a date'; readonly because: string };

/**
 * Week and year out of the last figures of the code that begins with DOT.
 *
 * Four figures are week and year since 2000. Three are a week of a year before 2000 that ends in the last figure: of which ten
 * years it does not say.
 */
export function tyreMade(code: string): TyreMade {
  const figures = /(?:^|[^0-9])(\d{3,4})$/.exec(code.trim())?.[1];
  if (!figures) return { kind: 'not a date', because: 'the code ends in four figures, week and year, as in 3519' };
  const week = Number(figures.slice(0, 2));
  if (week < 1 || week > 53) return { kind: 'not a date', because: `a year has no week ${week}` };
  return figures.length === 4
    ? { kind: 'week', week, year: 2000 + Number(figures.slice(2)) }
    : { kind: 'before 2000', week, endsIn: Number(figures[2]) };
}

/** Years between the Monday of the week it was made and a day; at least, where the code does not say which ten years. */
export function tyreAge_years(made: Exclude<TyreMade, { kind: 'not a date' }>, today: Day): number {
  const year = made.kind === 'week' ? made.year : 1990 + made.endsIn;
  // ISO 8601: week 1 holds the 4th of January
  const fourth = Date.UTC(year, 0, 4);
  const weekday = (new Date(fourth).getUTCDay() + 6) % 7;
  const monday = fourth + ((made.week - 1) * 7 - weekday) * 86_400_000;
  return (Date.parse(`${today}T00:00:00Z`) - monday) / (365.2425 * 86_400_000);
}
