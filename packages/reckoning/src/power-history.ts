/** From the book's records of a battery to the history its estimate takes. */
import type { BatteryHistory, BatteryKnown, Flow, VoltReading } from '#battery';
import type { BatteryRecord, Book, CircuitRecord, Id, LoadTest, PanelRecord, ReadingRecord } from '#boat-book';
import {
  assumedSeenFor_min,
  type CircuitDraw,
  circuitFlows,
  type PowerPlace,
  type SwitchesSeen,
  usualVolts,
} from '#power';
import type { ReadingColumns } from '#readings';
import { daysBetween, localAt, type Span } from '#units';
import { cautiousClimate } from './cautious-climate.ts';
import { airRead, firstSince, measuredFlows, type ReadBlocks, voltsRead } from './power-blocks.ts';
import { aboardSpans } from './power-place.ts';
import { panelFlowsOf } from './power-sun.ts';
import { weatherInForce } from './weather/weather-in-force.ts';

/** No further back than this: what was read before says little of the charge now. [days] */
export const assumedLookBack_days = 21;
/** Watts of a load test that were measured or read off a label, this share either way. */
const assumedTestShare = 1.1;
const day_ms = 86_400_000;

/** A battery and all that hangs on it. */
export interface BatteryOfBook {
  readonly id: Id;
  readonly record: BatteryRecord;
  readonly circuits: readonly (readonly [Id, CircuitRecord])[];
  readonly panels: readonly PanelRecord[];
  /** in the order of time */
  readonly readings: readonly (readonly [Id, ReadingRecord])[];
  readonly loadTests: readonly (readonly [Id, LoadTest])[];
  /** readings from files, those that are on this device */
  readonly blocks: readonly ReadingColumns[];
}

/** Everything of one battery, or null where the book has no such battery. */
export function batteryOfBook(book: Book, id: Id, blocks: ReadBlocks = new Map()): BatteryOfBook | null {
  const record = book.batteries[id];
  if (record === undefined) return null;
  const of = <T extends { readonly battery: Id }>(records: Readonly<Record<Id, T>>) =>
    Object.entries(records).filter(([, each]) => each.battery === id);
  return {
    id,
    record,
    circuits: of(book.circuits),
    panels: of(book.panels).map(([, panel]) => panel),
    readings: of(book.readings).sort(([, a], [, b]) => Date.parse(a.at) - Date.parse(b.at)),
    loadTests: of(book.loadTests),
    blocks: of(book.readingBlocks).flatMap(([, { blob }]) => blocks.get(blob) ?? []),
  };
}

export function batteryKnown({ chemistry, nominal_Ah, nominal_V, made }: BatteryRecord, now: number): BatteryKnown {
  const age_years = made === null ? null : Math.max(0, (now - Date.parse(made)) / (365.25 * day_ms));
  return { chemistry, nominal_Ah, nominal_V, age_years };
}

/** A circuit as it draws. */
export const circuitDraw = ({ name, watts, duty_pct, uses }: CircuitRecord): CircuitDraw => ({
  name,
  watts,
  duty_pct,
  use: uses,
});

/**
 * The history of a battery over a span: what its circuits drew while someone was aboard, what its panels may have brought, and
 * what was read, with the switches as they were seen at each reading.
 */
export function batteryHistory(book: Book, battery: BatteryOfBook, place: PowerPlace, span: Span): BatteryHistory {
  const { record, circuits } = battery;
  const inSpan = battery.readings.filter(([, { at }]) => within(Date.parse(at), span));
  const volts = usualVolts(record.chemistry, record.nominal_V);
  const nameOf = new Map(circuits.map(([id, { name }]) => [id, name]));
  const named = (ids: readonly Id[]) => ids.flatMap((id) => nameOf.get(id) ?? []);
  const tests = battery.loadTests.flatMap(([, test]) => testSpan(book, test, span) ?? []);
  const seen: SwitchesSeen[] = inSpan.flatMap(([, reading]): SwitchesSeen[] => {
    const at = Date.parse(reading.at);
    if (tests.some((test) => at >= test.span.start && at <= test.span.end)) return [];
    if (reading.circumstance === 'rested') return [{ at, on: [], since_min: assumedSeenFor_min.rested }];
    return reading.on.length > 0 ? [{ at, on: named(reading.on), since_min: assumedSeenFor_min.on }] : [];
  });
  for (const test of tests)
    seen.push({
      at: test.span.end,
      on: test.circuit === null ? [] : named([test.circuit]),
      since_min: (test.span.end - test.span.start) / 60_000,
    });
  const testFlows = tests.flatMap(({ watts, span: { start, end } }): Flow[] => {
    if (watts === null) return [];
    const amps = watts / volts;
    const source = 'load test';
    return [
      { from: start, to: end, low_A: amps / assumedTestShare, likely_A: amps, high_A: amps * assumedTestShare, source },
    ];
  });
  // what is read rested or with the panel dark says that the sun brought nothing just before
  const dark = inSpan.flatMap(([, { at, circumstance, panelDark }]): Span[] => {
    if (panelDark !== true) return [];
    const since_min = circumstance === 'rested' ? assumedSeenFor_min.rested : assumedSeenFor_min.on;
    return [{ start: Date.parse(at) - since_min * 60_000, end: Date.parse(at) }];
  });
  const draws = circuits.map(([, circuit]) => circuitDraw(circuit));
  const aboard = aboardSpans(book, place.zone);
  const measured = measuredFlows(battery.blocks, span);
  return {
    battery: batteryKnown(record, span.end),
    from: span.start,
    to: span.end,
    flows: [
      ...[
        ...circuitFlows(draws, { place, span, volts, aboard, seen }),
        ...testFlows,
        ...panelFlowsOf(book, battery, place, span).flatMap((flow) => flowWithout(flow, dark)),
      ].flatMap((flow) => flowWithout(flow, measured.spans)),
      ...measured.flows,
    ].sort((a, b) => a.from - b.from),
    readings: [
      ...voltsRead(battery.blocks, span, record.meter),
      ...inSpan.map(
        ([, { at, volts: read, current_A }]): VoltReading => ({
          at: Date.parse(at),
          volts: read,
          meter: record.meter,
          current_A,
        }),
      ),
    ].sort((a, b) => a.at - b.at),
    temperatures: airOver(book, battery, place, span),
  };
}

/** From when to when a load test ran: its first reading to its last; null where none of them is in the span. */
export function testSpan(
  book: Book,
  test: LoadTest,
  span: Span,
): { readonly span: Span; readonly circuit: Id | null; readonly watts: number | null } | null {
  const times = test.readings
    .flatMap((id) => (book.readings[id] ? [Date.parse(book.readings[id].at)] : []))
    .filter((at) => within(at, span))
    .sort((a, b) => a - b);
  if (times.length < 2) return null;
  return { span: { start: times[0]!, end: times.at(-1)! }, circuit: test.circuit, watts: test.watts };
}

const within = (at: number, { start, end }: Span) => at >= start && at <= end;

/** A flow without the spans in which it did not flow. */
function flowWithout(flow: Flow, spans: readonly Span[]): Flow[] {
  let left: Flow[] = [flow];
  for (const { start, end } of spans)
    left = left.flatMap((part) => {
      if (end <= part.from || start >= part.to) return [part];
      return [
        ...(start > part.from ? [{ ...part, to: start }] : []),
        ...(end < part.to ? [{ ...part, from: end }] : []),
      ];
    });
  return left;
}

/** Assumed: the cautious climate is so much colder than the air mostly is. [°C] */
const assumedCautionTakenBack_C = 3;

/** The air by what was read, what was entered of the weather, else the plain picture of the climate at 03:00 and 15:00. */
function airOver(book: Book, battery: BatteryOfBook, place: PowerPlace, { start, end }: Span) {
  const entries = weatherInForce(book);
  const points: { at: number; air_C: number }[] = [];
  for (let at = Math.floor(start / day_ms) * day_ms; at <= end + day_ms / 2; at += day_ms / 2) {
    const local = localAt(at, place.zone);
    const hour = Math.floor(local.minuteOfDay / 60);
    const entry = entries.findLast(
      ({ date, fromHour, toHour }) => date === local.day && fromHour <= hour && hour < toHour,
    );
    const dayOfYear = daysBetween(`${local.day.slice(0, 4)}-01-01`, local.day) + 1;
    const air_C =
      entry?.air_C ?? cautiousClimate(place.latitude_deg, dayOfYear, hour).air_C + assumedCautionTakenBack_C;
    points.push({ at, air_C });
  }
  for (const [, reading] of battery.readings) {
    const at = Date.parse(reading.at);
    if (reading.air_C !== null && at >= start && at <= end) points.push({ at, air_C: reading.air_C });
  }
  points.push(...airRead(battery.blocks, { start, end }));
  return points.sort((a, b) => a.at - b.at);
}

/** From the first reading that still counts to now; null where there is none. */
export function spanOfReadings({ readings, blocks }: BatteryOfBook, now: number): Span | null {
  const since = now - assumedLookBack_days * day_ms;
  const counted = readings.map(([, { at }]) => Date.parse(at)).filter((read) => read <= now && read > since);
  const first = Math.min(counted[0] ?? now + 1, firstSince(blocks, since, now) ?? now + 1);
  return first > now ? null : { start: first - day_ms / 2, end: now };
}
