/** What a battery’s chargers bring on the days ahead: as they are run anyway, and what one more run would change. */
import type { Book, ChargerRecord, Id } from '#boat-book';
import type { Chance, ChargingSpan, Endurance, PowerPlace } from '#power';
import { addDays, instantAt, localAt, type Span } from '#units';
import { aboardSpans } from './power-place.ts';

const hour = 3_600_000;
/** Assumed: what runs so many hours a day starts at nine; what would run past midnight, so much sooner. [clock hour] */
export const assumedChargingFrom_h = 9;

/** The chargers of one battery, in the order they were put in. */
export const chargersOf = (book: Pick<Book, 'chargers'>, battery: Id): ChargerRecord[] =>
  Object.values(book.chargers).filter((charger) => charger.battery === battery);

/**
 * When the chargers run on the days ahead: those of which it is said how long they run on a day aboard, and no others.
 *
 * @param span    what is left of the running day counts too
 * @param aboard  spans with someone aboard; null: all the time
 */
export function chargingAhead(
  chargers: readonly ChargerRecord[],
  place: PowerPlace,
  span: Span,
  aboard: readonly Span[] | null,
): ChargingSpan[] {
  const spans: ChargingSpan[] = [];
  for (const { name, amps, hours_a_day } of chargers) {
    if (hours_a_day === undefined || hours_a_day === null || hours_a_day === 0) continue;
    const first = Math.min(assumedChargingFrom_h, 24 - hours_a_day);
    for (let day = localAt(span.start, place.zone).day; ; day = addDays(day, 1)) {
      const midnight = instantAt(day, '00:00', place.zone);
      if (midnight >= span.end) break;
      const start = midnight + first * hour;
      const whole = { start: Math.max(start, span.start), end: Math.min(start + hours_a_day * hour, span.end) };
      for (const there of aboard ?? [whole]) {
        const part = { start: Math.max(whole.start, there.start), end: Math.min(whole.end, there.end) };
        if (part.end > part.start) spans.push({ name, amps, ...part });
      }
    }
  }
  return spans;
}

/** The same for a battery of a book, aboard all the time or on its outings. */
export const chargingOfBook = (book: Book, battery: Id, place: PowerPlace, span: Span, aboard: 'all' | 'outings') =>
  chargingAhead(chargersOf(book, battery), place, span, aboard === 'all' ? null : aboardSpans(book, place.zone));

/** What one charger would change, were it run besides. */
export interface ChargingHelp {
  readonly charger: ChargerRecord;
  /** from now until then, for a mains charger; null: an hour a day, for an outboard */
  readonly until: number | null;
  /** where the charge then stands, at the end of the run or at the first sunset. [%] */
  readonly reached_pct: number;
  readonly nights: number;
  readonly without: Chance;
  readonly with: Chance;
}

/** Nearly full: what is left to gain takes hours and hardly shows. Assumed. [%] */
const nearlyFull_pct = 95;
/** A charger is looked at no longer than this. [h] */
const longestCharge_h = 24;

/**
 * What each charger would change of the nights ahead: a mains charger put on now until the battery is nearly full, an outboard
 * run an hour a day.
 *
 * @param base    the nights ahead as they are
 * @param rerun   the same nights with more charging
 * @returns       none where the nights are sure without, or the battery is nearly full
 */
export function chargingHelp(
  chargers: readonly ChargerRecord[],
  base: Endurance,
  place: PowerPlace,
  rerun: (more: readonly ChargingSpan[]) => Endurance,
): ChargingHelp[] {
  const from = base.course.at[0]!;
  const end = base.course.at.at(-1)!;
  const last = base.nights.at(-1)!;
  const sure = last.lasts.of >= 0.99 * last.lasts.runs;
  if (sure || base.course.likely[0]! >= nearlyFull_pct) return [];
  return chargers.map((charger): ChargingHelp => {
    const { name, amps } = charger;
    const told = (found: Endurance, at: number, until: number | null): ChargingHelp => ({
      charger,
      until,
      reached_pct: found.course.likely[found.course.at.findLastIndex((each) => each <= at)]!,
      nights: base.nights.length,
      without: last.lasts,
      with: found.nights.at(-1)!.lasts,
    });
    if (charger.kind === 'outboard') {
      const spans = chargingAhead([{ ...charger, hours_a_day: 1 }], place, { start: from, end }, null);
      return told(rerun(spans), base.nights.at(-1)!.start, null);
    }
    const long = rerun([{ name, amps, start: from, end: Math.min(end, from + longestCharge_h * hour) }]);
    const full = long.course.likely.findIndex((pct) => pct >= nearlyFull_pct);
    const until = full < 0 ? Math.min(end, from + longestCharge_h * hour) : long.course.at[full]!;
    return told(rerun([{ name, amps, start: from, end: until }]), until, until);
  });
}
