/** What a panel keeps of the sun, taught by rested readings. */
import { type Band, restCharge, storedShare } from '#battery';
import type { Book } from '#boat-book';
import type { PowerPlace } from '#power';
import { type BroughtPair, keptLearnt } from '#solar';
import { type BatteryOfBook, batteryHistory } from './power-history.ts';
import { keptAsGuessed, sunUnshaded, usualAir_C } from './power-sun.ts';

const hour = 3_600_000;
/** Shade and rig are taken to stay the same for so long. [days] */
const assumedSame_days = 60;
/** Two rested readings that tell what the sun brought between them. */
const pairOf = { least_h: 10, most_h: 120, fullest_pct: 92 } as const;
/** Assumed: what sets a battery apart from the tables moves both readings alike; of each band so much is the reading's own. */
const assumedOwn = 0.4;
/** More than the whole sun, by so much, came from somewhere else. */
const mostOverSun = 1.2;

/** What the panels keep of the sun by the readings. */
export interface KeptByReadings {
  readonly pairs: number;
  /** [0–1] */
  readonly guessed: Band;
  readonly learnt: Band;
}

/**
 * What rig and shade leave of the panels' sun, learnt from rested readings: between two of them what came in is what the
 * charge rose by, and what was drawn, over the share that a charge stores. Stretches that ended nearly full are left out, for
 * a full battery takes less; so are those in which more came in than the sun could bring.
 *
 * @returns null: no panel, or no pair of readings that tells
 */
export function keptByReadings(
  book: Book,
  battery: BatteryOfBook,
  place: PowerPlace,
  capacity_Ah: Band,
  now: number,
): KeptByReadings | null {
  const { record, panels } = battery;
  const [first] = panels;
  if (first === undefined) return null;
  const rested = battery.readings.flatMap(([, { at, circumstance, volts, air_C }]) => {
    const read = Date.parse(at);
    if (circumstance !== 'rested' || read > now || read < now - assumedSame_days * 24 * hour) return [];
    return [{ at: read, volts, air_C: air_C ?? usualAir_C(place, read) }];
  });
  if (rested.length < 2) return null;
  const span = { start: rested[0]!.at, end: rested.at(-1)!.at };
  const { flows } = batteryHistory(book, { ...battery, panels: [], blocks: [] }, place, span);
  const pairs: BroughtPair[] = [];
  for (const [i, later] of rested.entries()) {
    const earlier = rested[i - 1];
    if (earlier === undefined) continue;
    const hours = (later.at - earlier.at) / hour;
    if (hours < pairOf.least_h || hours > pairOf.most_h) continue;
    const charge = (read: typeof later) => restCharge(record.chemistry, read.volts, read.air_C, record.nominal_V);
    const [was, is] = [charge(earlier), charge(later)];
    if (is.likely > pairOf.fullest_pct) continue;
    let drawn = 0;
    let drawnOff = 0;
    for (const { from, to, low_A, likely_A, high_A } of flows) {
      const shared = (Math.min(to, later.at) - Math.max(from, earlier.at)) / hour;
      if (shared <= 0 || likely_A <= 0) continue;
      drawn += likely_A * shared;
      drawnOff += ((high_A - low_A) / 2) * shared;
    }
    const stored = storedShare(record.chemistry, Math.min(100, Math.max(0, (was.likely + is.likely) / 2)));
    const rise = ((is.likely - was.likely) / 100) * capacity_Ah.likely;
    const off =
      Math.hypot(
        assumedOwn * ((is.high - is.low) / 200) * capacity_Ah.likely,
        assumedOwn * ((was.high - was.low) / 200) * capacity_Ah.likely,
        (rise * (capacity_Ah.high - capacity_Ah.low)) / 2 / capacity_Ah.likely,
        drawnOff,
      ) / stored;
    const brought = (rise + drawn) / stored;
    const expected = sunUnshaded(book, battery, place, { start: earlier.at, end: later.at });
    if (expected.likely <= 0 || brought - off > mostOverSun * expected.high) continue;
    pairs.push({
      expected_Ah: expected,
      brought_Ah: { low: Math.max(0, brought - off), likely: Math.max(0, brought), high: Math.max(0, brought) + off },
    });
  }
  if (pairs.length === 0) return null;
  const guessed = keptAsGuessed(first);
  return { pairs: pairs.length, guessed, learnt: keptLearnt(guessed, pairs) };
}
