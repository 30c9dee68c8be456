/** A battery of the book now, the night ahead of it, and the nights of an outing. */
import { assumedLoadedResistance_mohm, type Band, type BatteryEstimate, estimateBattery, restVolts } from '#battery';
import type { Book, ChargerRecord, NightAheadRecord, Outing } from '#boat-book';
import {
  type ChargingSpan,
  circuitSpans,
  type DailyDraw,
  dailyDraw,
  type Endurance,
  type EnduranceCase,
  endurance,
  type PowerPlace,
  usualVolts,
} from '#power';
import { addDays, daysBetween, localAt, type Span } from '#units';
import { cautiousClimate } from './cautious-climate.ts';
import { voltsIn } from './power-blocks.ts';
import { chargersOf, chargingOfBook } from './power-charging.ts';
import { type BatteryOfBook, batteryHistory, circuitDraw, spanOfReadings } from './power-history.ts';
import { type KeptByReadings, keptByReadings } from './power-kept.ts';
import { aboardSpans, nextNightsAboard, powerPlace } from './power-place.ts';
import { type KeptOf, keptAsGuessed, sunAhead, sunOfDay } from './power-sun.ts';

const hour = 3_600_000;
const seed = 1;
const runs = 1000;
/** Nights are looked at no further ahead than this. */
export const furthestNights = 30;

/** What is believed of a battery now. */
export interface BatteryNow {
  readonly place: PowerPlace;
  readonly span: Span;
  readonly estimate: BatteryEstimate;
  /** readings that were counted */
  readonly counted: number;
}

/** Why nothing can be said. */
export type NoBatteryNow = 'no reading' | 'no place';

/** Estimates a battery from what the book holds of its last weeks. */
export function batteryNow(book: Book, battery: BatteryOfBook, now: number): BatteryNow | NoBatteryNow {
  const place = powerPlace(book, now, null);
  if (place === null) return 'no place';
  const span = spanOfReadings(battery, now);
  if (span === null) return 'no reading';
  const estimate = estimateBattery(batteryHistory(book, battery, place, span), { seed });
  const byHand = battery.readings.filter(([, { at }]) => Date.parse(at) >= span.start && Date.parse(at) <= now);
  return { place, span, estimate, counted: byHand.length + voltsIn(battery.blocks, span) };
}

/** What the night ahead is worked out from and what came of it. */
export interface NightAheadOf {
  readonly place: PowerPlace;
  readonly from: number;
  readonly endurance: Endurance;
  readonly floor_pct: number;
  /** rested and with what is on at night, at the air of the morning */
  readonly floor_V: Band;
  readonly floorUnderLoad_V: Band;
  /** drawn at two in the morning. [A] */
  readonly nightLoad_A: number;
  readonly morning_C: number;
  /** what a voltmeter will show at the sunrise, with what is on then, before the panel brings anything. [V] */
  readonly morning_V: Band;
  /** Ah a day the panels may bring; null: no panel */
  readonly sunDay_Ah: Band | null;
  /** what the panels keep of it by the readings; null: they do not tell */
  readonly kept: KeptByReadings | null;
  readonly chargers: readonly ChargerRecord[];
  /** the same nights with more charging */
  readonly withMore: (more: readonly ChargingSpan[]) => Endurance;
  readonly draws: { readonly circuits: readonly DailyDraw[]; readonly sum_Ah: Band };
}

/**
 * The nights ahead of a battery.
 *
 * @param nights  1–`furthestNights`
 * @param aboard  'all': as if someone were aboard from now on; 'outings': only on the outings of the book
 */
export function nightAheadOf(
  book: Book,
  battery: BatteryOfBook,
  { place, estimate }: Pick<BatteryNow, 'place' | 'estimate'>,
  { now, nights, aboard }: { readonly now: number; readonly nights: number; readonly aboard: 'all' | 'outings' },
): NightAheadOf {
  const { record } = battery;
  const circuits = battery.circuits.map(([, circuit]) => circuitDraw(circuit));
  const { day } = localAt(now, place.zone);
  const kept = keptByReadings(book, battery, place, estimate.capacity_Ah, now);
  const keptOf: KeptOf = kept === null ? keptAsGuessed : () => kept.learnt;
  const sunDay_Ah = sunOfDay(book, battery, place, day, keptOf);
  const from = Math.floor(now / 60_000) * 60_000;
  const sunFrom = Math.floor(from / hour) * hour;
  const ahead = { start: from, end: from + (nights + 2) * 24 * hour };
  const charging = chargingOfBook(book, battery.id, place, ahead, aboard);
  const given: EnduranceCase = {
    chemistry: record.chemistry,
    nominal_V: record.nominal_V,
    states: {
      charge_pct: estimate.draws.charge.map((share) => Math.min(100, Math.max(0, 100 * share))),
      capacity_Ah: estimate.draws.capacity_Ah,
    },
    floor_pct: record.floor_pct,
    circuits,
    aboard: aboard === 'all' ? null : aboardSpans(book, place.zone),
    place,
    from,
    nights,
    sun: sunAhead(book, battery, place, keptOf, { from: sunFrom, days: nights + 4, draws: runs, seed: seed + 1 }),
    chargers: charging,
    runs,
    seed,
  };
  const found = endurance(given);
  const last = found.nights[0]!;
  const volts = usualVolts(record.chemistry, record.nominal_V);
  const late = last.end - 60_000;
  const someone =
    aboard === 'all' || aboardSpans(book, place.zone).some(({ start, end }) => start <= late && late < end);
  const nightLoad_A = circuits.reduce((sum, circuit) => {
    const on =
      circuit.use.kind === 'always' ||
      (someone &&
        circuit.use.kind !== 'hours' &&
        circuitSpans(circuit.use, place, { start: late, end: last.end }).length > 0);
    return sum + (on ? ((circuit.watts / volts) * circuit.duty_pct) / 100 : 0);
  }, 0);
  // the tables of rested volts go no colder than this
  const morning_C = Math.max(-20, Math.round(airAt(place, last.end)));
  const { resistance_mohm } = estimate;
  const sag = (amps: number): Band => {
    const bounds =
      estimate.draws.count > 0
        ? resistance_mohm
        : assumedLoadedResistance_mohm(record.chemistry, record.nominal_Ah, record.nominal_V);
    return {
      low: (amps * bounds.low) / 1000,
      likely: (amps * bounds.likely) / 1000,
      high: (amps * bounds.high) / 1000,
    };
  };
  const drop = sag(nightLoad_A);
  const under = ({ low, likely, high }: Band): Band => ({
    low: low - drop.high,
    likely: likely - drop.likely,
    high: high - drop.low,
  });
  const rested = (pct: number) => restVolts(record.chemistry, pct, morning_C, record.nominal_V);
  const floor_V = rested(record.floor_pct);
  const middle = rested(last.morning_pct.likely);
  // two spreads that know nothing of each other: of the charge and of this battery’s volts for a charge
  const across = (charge: number, volts_V: number) => Math.hypot(charge - middle.likely, volts_V - middle.likely);
  return {
    place,
    from,
    endurance: found,
    floor_pct: record.floor_pct,
    floor_V,
    floorUnderLoad_V: under(floor_V),
    nightLoad_A,
    morning_C,
    morning_V: under({
      low: middle.likely - across(rested(last.morning_pct.low).likely, middle.low),
      likely: middle.likely,
      high: middle.likely + across(rested(last.morning_pct.high).likely, middle.high),
    }),
    sunDay_Ah,
    kept,
    chargers: chargersOf(book, battery.id),
    withMore: (more) => endurance({ ...given, chargers: [...charging, ...more] }),
    draws: dailyDraw(circuits, place, { start: from, end: from + 24 * hour }, volts),
  };
}

/** Nearer to the sunrise than this a night is read, not foretold. [h] Assumed. */
const foretoldBefore_h = 6;

/**
 * What is foretold of the night that comes or runs, as the book has it: lamps only where an outing has someone aboard. To be
 * kept, and held beside the morning’s reading.
 *
 * @returns null: its sunrise is less than six hours away, so it says nothing that a look at the meter would not
 */
export function nightForetold(
  book: Book,
  battery: BatteryOfBook,
  known: Pick<BatteryNow, 'place' | 'estimate'>,
  now: number,
): NightForetold | null {
  const night = nightAheadOf(book, battery, known, { now, nights: 1, aboard: 'outings' });
  const { end, morning_pct } = night.endurance.nights[0]!;
  if (end - now < foretoldBefore_h * hour) return null;
  const kept = ({ low, likely, high }: Band, places: number): Band => {
    const rounded = (value: number) => Math.round(value * 10 ** places) / 10 ** places;
    return { low: rounded(low), likely: rounded(likely), high: rounded(high) };
  };
  return {
    battery: battery.id,
    morning: localAt(end, known.place.zone).day,
    at: new Date(Math.round(end / 60_000) * 60_000).toISOString(),
    volts: kept(night.morning_V, 3),
    charge_pct: kept(morning_pct, 1),
  };
}

/** As it is kept in the book. */
export type NightForetold = Omit<NightAheadRecord, 'made' | 'order'>;

/** The next outing with nights aboard and the nights until its last morning; null: none, or too far ahead to say. */
export function nightsToOuting(
  book: Book,
  place: PowerPlace,
  now: number,
): { readonly outing: Outing; readonly nights: number } | null {
  const outing = nextNightsAboard(book, now, place.zone);
  if (outing === null) return null;
  const { day, minuteOfDay } = localAt(now, place.zone);
  // past midnight and before noon the night that runs began the day before
  const nights =
    daysBetween(day, addDays(outing.date, outing.nights)) + (minuteOfDay < 12 * 60 && isNight(place, now) ? 1 : 0);
  return nights >= 1 && nights <= furthestNights ? { outing, nights } : null;
}

const isNight = (place: PowerPlace, now: number) =>
  circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, place, { start: now, end: now + 60_000 }).length > 0;

/** The plain picture of the climate at an instant; the cautious climate is 3 °C under it. [°C] */
function airAt(place: PowerPlace, at: number): number {
  const { day, minuteOfDay } = localAt(at, place.zone);
  const dayOfYear = daysBetween(`${day.slice(0, 4)}-01-01`, day) + 1;
  return cautiousClimate(place.latitude_deg, dayOfYear, Math.floor(minuteOfDay / 60)).air_C + 3;
}

/** A night foretold beside what was read in its morning. */
export interface NightCompared {
  readonly morning: string;
  readonly foretold_V: Band;
  readonly read_V: number;
  /** read less foretold; under 0: it fell further than was foretold. [V] */
  readonly off_V: number;
  readonly within: boolean;
}

/** Assumed: a reading this near the sunrise it was foretold for is that morning’s, where the panel was dark. [h] */
const morningReading_h = 2;

/** Every night foretold whose morning was read, oldest first: a battery that tires falls below what was foretold, more and more. */
export function nightsCompared(book: Book, battery: BatteryOfBook): NightCompared[] {
  return Object.values(book.nightsAhead)
    .filter((night) => night.battery === battery.id)
    .sort((a, b) => a.morning.localeCompare(b.morning))
    .flatMap((night): NightCompared[] => {
      const at = Date.parse(night.at);
      const near = battery.readings
        .map(([, reading]) => reading)
        .filter(
          (reading) =>
            Math.abs(Date.parse(reading.at) - at) < morningReading_h * hour &&
            reading.circumstance !== 'on charge' &&
            (reading.panelDark === true || Date.parse(reading.at) <= at),
        )
        .sort((a, b) => Math.abs(Date.parse(a.at) - at) - Math.abs(Date.parse(b.at) - at))[0];
      if (near === undefined) return [];
      const { low, likely, high } = night.volts;
      return [
        {
          morning: night.morning,
          foretold_V: night.volts,
          read_V: near.volts,
          off_V: near.volts - likely,
          within: near.volts >= low && near.volts <= high,
        },
      ];
    });
}
