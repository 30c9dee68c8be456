import { type Band, estimateBattery } from '#battery';
import type { Book, Id } from '#boat-book';
import type { Span } from '#units';
import { measuredFlows, type ReadBlocks } from './power-blocks.ts';
import { batteryHistory, batteryOfBook } from './power-history.ts';
import { powerPlace } from './power-place.ts';
import { courseWorking } from './power-working.ts';
import type { FigureWorking } from './told-line.ts';

const seed = 1;
/** Longer than this at once, a day's rise and fall would be lost between the steps of the estimate. [days] */
const mostCourse_days = 30;

/** What is believed of the charge over the time of a block of readings. [ms, %] */
export interface ReadingsCourse {
  readonly at: Float64Array;
  readonly low: Float32Array;
  readonly likely: Float32Array;
  readonly high: Float32Array;
  /** what it is worth, by these readings. [Ah] */
  readonly capacity_Ah: Band;
  /** readings that do not go with the rest */
  readonly odd: number;
  /** readings of volts it was worked out from */
  readonly counted: number;
  readonly working: FigureWorking;
}

/** Why nothing can be said. */
export type NoCourse = 'no place' | 'no volts' | 'not here';

/**
 * The charge over a time within one block of readings, from it and from what the book knows of that time.
 *
 * @param block   of the book's `readingBlocks`
 * @param within  cut to the time of the block; of one longer than `mostCourse_days` the end
 */
export function readingsCourse(book: Book, block: Id, blocks: ReadBlocks, within: Span): ReadingsCourse | NoCourse {
  const record = book.readingBlocks[block];
  const columns = record && blocks.get(record.blob);
  if (record === undefined || columns === undefined || columns.at.length === 0) return 'not here';
  const battery = batteryOfBook(book, record.battery, new Map([[record.blob, columns]]));
  if (battery === null) return 'not here';
  const end = Math.min(columns.at.at(-1)!, within.end);
  const start = Math.max(columns.at[0]!, within.start, end - mostCourse_days * 86_400_000);
  if (start > end) return 'no volts';
  const span = { start, end };
  const place = powerPlace(book, span.end, null);
  if (place === null) return 'no place';
  const history = batteryHistory(book, battery, place, span);
  if (history.readings.length === 0) return 'no volts';
  const estimate = estimateBattery(history, { seed });
  const { series, capacity_Ah, odd } = estimate;
  const measured_ms = measuredFlows(battery.blocks, span).spans.reduce((sum, each) => sum + each.end - each.start, 0);
  return {
    at: series.at,
    low: Float32Array.from(series.low),
    likely: Float32Array.from(series.likely),
    high: Float32Array.from(series.high),
    capacity_Ah,
    odd: odd.length,
    counted: history.readings.length,
    working: courseWorking(battery, estimate, history.readings.length, measured_ms / Math.max(1, end - start)),
  };
}
