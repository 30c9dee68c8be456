/** What the load tests of a battery say it is worth, and whether that falls over the years. */
import { type Band, type BatteryDraws, bandOf, estimateBattery } from '#battery';
import type { Book, Id } from '#boat-book';
import { type PowerPlace, usualVolts } from '#power';
import { localAt } from '#units';
import { type BatteryOfBook, batteryHistory } from './power-history.ts';

const hour = 3_600_000;
const year = 365.25 * 24 * hour;
const seed = 1;

/** What one load test says the battery is worth. Bands hold 90 of 100. */
export interface LoadTestResult {
  readonly id: Id;
  /** of its first reading. [epoch ms] */
  readonly at: number;
  readonly day: string;
  /** from full at the 20-hour current, 25 °C */
  readonly capacity_Ah: Band;
  /** shown after some minutes under a small load, 25 °C */
  readonly resistance_mohm: Band;
  /** charge when it was over. [%] */
  readonly left_pct: Band;
  /** by what is said of the load, first reading to last */
  readonly drawn_Ah: number;
  readonly hours: number;
  readonly readings: number;
}

/** The load tests of a battery, oldest first, and what becomes of it over them. */
export interface LoadTestTrend {
  readonly tests: readonly LoadTestResult[];
  /** between the first and the last test by a straight line, of what it held then; null: not two tests half a year apart */
  readonly capacityChange_pct_year: Band | null;
  readonly resistanceChange_pct_year: Band | null;
}

/** Tests nearer to one another than this say nothing of a year. [years] */
const leastApart_years = 0.5;

/**
 * Every load test with two readings at least, each estimated by itself from its own days alone: the three before it and the
 * nine hours after, for where the volts settle says how far it went. Its age is not told to the estimate: what falls from test
 * to test is what was read, not what was thought.
 */
export function loadTestTrend(book: Book, battery: BatteryOfBook, place: PowerPlace): LoadTestTrend {
  const found = battery.loadTests
    .flatMap(([id, test]) => {
      const times = test.readings.flatMap((each) => (book.readings[each] ? [Date.parse(book.readings[each].at)] : []));
      if (times.length < 2) return [];
      const start = Math.min(...times);
      const end = Math.max(...times);
      const history = batteryHistory(book, battery, place, { start: start - 3 * 24 * hour, end: end + 9 * hour });
      const ageless = { ...history, battery: { ...history.battery, age_years: null } };
      const { capacity_Ah, resistance_mohm, draws, series } = estimateBattery(ageless, { seed });
      const over = series.at.findLastIndex((at) => at <= end);
      const watts = test.watts ?? circuitWatts(book, test.circuit);
      const amps = watts / usualVolts(battery.record.chemistry, battery.record.nominal_V);
      const hours = (end - start) / hour;
      const result: LoadTestResult = {
        id,
        at: start,
        day: localAt(start, place.zone).day,
        capacity_Ah,
        resistance_mohm,
        left_pct: { low: series.low[over]!, likely: series.likely[over]!, high: series.high[over]! },
        drawn_Ah: amps * hours,
        hours,
        readings: times.length,
      };
      return [{ result, draws }];
    })
    .sort((a, b) => a.result.at - b.result.at);
  const years = found.map(({ result }) => result.at / year);
  const change = (of: (draws: BatteryDraws) => Float64Array) =>
    changeInYear_pct(
      years,
      found.map(({ draws }) => of(draws)),
    );
  return {
    tests: found.map(({ result }) => result),
    capacityChange_pct_year: change(({ capacity_Ah }) => capacity_Ah),
    resistanceChange_pct_year: change(({ loaded_mohm }) => loaded_mohm),
  };
}

/** What a circuit draws while it is on, its duty taken into account; none where it is not in the book any more. [W] */
function circuitWatts(book: Book, circuit: Id | null): number {
  const found = circuit === null ? undefined : book.circuits[circuit];
  return found === undefined ? 0 : (found.watts * found.duty_pct) / 100;
}

/** The slope of a straight line through one draw of each test, as often as there are draws. [% of the first a year] */
function changeInYear_pct(years: readonly number[], values: readonly Float64Array[]): Band | null {
  const [first, last] = [years[0], years.at(-1)];
  if (first === undefined || last === undefined || last - first < leastApart_years) return null;
  const mean = years.reduce((sum, each) => sum + each, 0) / years.length;
  const spread = years.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const slopes = values[0]!.map((_, n) => {
    let slope = 0;
    // one place further in each test: draws of two tests know nothing of each other
    const at = (test: number) => values[test]![(n + 37 * test) % values[test]!.length]!;
    for (let test = 0; test < years.length; test++) slope += ((years[test]! - mean) * at(test)) / spread;
    return (100 * slope) / at(0);
  });
  return bandOf(slopes);
}
