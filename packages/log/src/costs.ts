/** What the boat has cost, by year and by zone, from the entries of the log that stand. */
import { type Book, type Id, standingLog } from '#boat-book';
import { localAt } from '#units';

export interface YearCost {
  readonly year: number;
  readonly amount: number;
}

export interface ZoneCost {
  /** null: the boat as a whole */
  readonly zone: Id | null;
  readonly amount: number;
  readonly years: readonly YearCost[];
}

/** The costs in one currency: sums in different currencies are never added. */
export interface CurrencyCosts {
  /** ISO 4217 code */
  readonly currency: string;
  readonly total: number;
  /** entries that say a cost */
  readonly entries: number;
  /** every year from the first to the last, also those without cost, oldest first */
  readonly years: readonly YearCost[];
  /** dearest first */
  readonly zones: readonly ZoneCost[];
}

/**
 * Costs by year and zone, one a currency, the one with most entries first. A cost is counted to the year of its entry
 * at the boat's place, and to the zone of its entry. Entries that were put right or taken back are not counted.
 * @param timeZone  IANA zone of the boat's place
 */
export function costsOf(book: Pick<Book, 'log'>, timeZone: string): readonly CurrencyCosts[] {
  const byCurrency = new Map<string, Map<Id | null, Map<number, number>>>();
  const counted = new Map<string, number>();
  for (const { cost, zone, at } of standingLog(book.log).values()) {
    if (cost === undefined) continue;
    const year = yearAt(at, timeZone);
    const zones = byCurrency.get(cost.currency) ?? new Map<Id | null, Map<number, number>>();
    byCurrency.set(cost.currency, zones);
    const years = zones.get(zone) ?? new Map<number, number>();
    zones.set(zone, years);
    years.set(year, (years.get(year) ?? 0) + cost.amount);
    counted.set(cost.currency, (counted.get(cost.currency) ?? 0) + 1);
  }
  return [...byCurrency]
    .map(([currency, zones]) => currencyCosts(currency, zones, counted.get(currency) ?? 0))
    .sort((a, b) => b.entries - a.entries || (a.currency < b.currency ? -1 : 1));
}

function currencyCosts(
  currency: string,
  zones: ReadonlyMap<Id | null, ReadonlyMap<number, number>>,
  entries: number,
): CurrencyCosts {
  const all = [...zones.values()].flatMap((years) => [...years.keys()]);
  const [first, last] = [Math.min(...all), Math.max(...all)];
  const span = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const inYear = (year: number): number =>
    toCents([...zones.values()].reduce((sum, years) => sum + (years.get(year) ?? 0), 0));
  const byZone = [...zones].map(([zone, years]) => ({
    zone,
    amount: toCents([...years.values()].reduce((sum, amount) => sum + amount, 0)),
    years: span.map((year) => ({ year, amount: toCents(years.get(year) ?? 0) })),
  }));
  return {
    currency,
    entries,
    total: toCents(byZone.reduce((sum, { amount }) => sum + amount, 0)),
    years: span.map((year) => ({ year, amount: inYear(year) })),
    zones: byZone.sort((a, b) => b.amount - a.amount || ((a.zone ?? '') < (b.zone ?? '') ? -1 : 1)),
  };
}

/** Only about the turn of the year does the zone's clock matter. */
function yearAt(at: string, timeZone: string): number {
  const day = /-(?:12-31|01-01)T/.test(at) ? localAt(Date.parse(at), timeZone).day : at;
  return Number(day.slice(0, 4));
}

/** Sums of hundredths, without what binary fractions leave behind. */
const toCents = (amount: number): number => Math.round(amount * 100) / 100;
