/** What blocks of readings say to the estimate of a battery: volts now and then, the current all along, the air. */
import type { Flow, VoltReading } from '#battery';
import { gapFrom_ms, type ReadingColumns, readBlock } from '#readings';
import type { Span } from '#units';

/** Blocks of readings by the SHA-256 that the book names them by. */
export type ReadBlocks = ReadonlyMap<string, ReadingColumns>;

/** The blocks among blobs, read; what is damaged or no block is left out, as one that is not here. */
export function readBlocks(blobs: ReadonlyMap<string, Uint8Array>): ReadBlocks {
  return new Map(
    [...blobs].flatMap(([hash, bytes]) => {
      const read = readBlock(bytes);
      return read.kind === 'block' ? [[hash, read.columns] as const] : [];
    }),
  );
}

/** Readings of volts given to an estimate: it takes the newest and some of the others, and more would say no more. */
const mostVolts = 200;
/** Stretches in which a measured current is taken as steady: no shorter than this, and no more than so many. */
const leastStretch_ms = 10 * 60_000;
const mostStretches = 300;
/** Assumed: a measured current may be so much off, of itself and besides. */
export const assumedMeter = { share: 0.03, amps: 0.02 } as const;
/** The air is followed every so often. [ms] */
const airEvery_ms = 3 * 3_600_000;

/** The first place in `at` that is not before an instant. */
function placeOf(at: Float64Array, instant: number): number {
  let low = 0;
  let high = at.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at[middle]! < instant) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Places of a block that lie in a span: from the first up to, not including, the second. */
const placesIn = ({ at }: ReadingColumns, { start, end }: Span): readonly [number, number] => [
  placeOf(at, start),
  placeOf(at, end + 1),
];

/** How many readings of volts lie in a span. */
export function voltsIn(blocks: readonly ReadingColumns[], span: Span): number {
  let count = 0;
  for (const block of blocks) {
    const [first, end] = placesIn(block, span);
    for (let i = first; i < end; i++) if (block.volts !== null && !Number.isNaN(block.volts[i]!)) count++;
  }
  return count;
}

/** The first instant of the blocks that is not before another; null: there is none up to `now`. */
export function firstSince(blocks: readonly ReadingColumns[], since: number, now: number): number | null {
  const firsts = blocks.flatMap(({ at }) => {
    const first = at[placeOf(at, since)];
    return first === undefined || first > now ? [] : [first];
  });
  return firsts.length === 0 ? null : Math.min(...firsts);
}

/** Readings of volts in a span, evenly over their number, with the current of the moment where it was measured. */
export function voltsRead(blocks: readonly ReadingColumns[], span: Span, meter: string): VoltReading[] {
  const all = voltsIn(blocks, span);
  const every = Math.max(1, all / mostVolts);
  const found: VoltReading[] = [];
  let seen = 0;
  let next = 0;
  for (const block of blocks) {
    const [first, end] = placesIn(block, span);
    for (let i = first; i < end; i++) {
      const volts = block.volts?.[i];
      if (volts === undefined || Number.isNaN(volts)) continue;
      seen++;
      // the last is always among them: it is the one that counts most
      if (seen - 1 < next && seen < all) continue;
      next += every;
      const current = block.current?.[i];
      found.push({
        at: block.at[i]!,
        volts,
        meter,
        current_A: current === undefined || Number.isNaN(current) ? null : current,
      });
    }
  }
  return found.sort((a, b) => a.at - b.at);
}

export interface MeasuredFlows {
  readonly flows: readonly Flow[];
  /** when the current was measured: nothing else is said to flow then. In order */
  readonly spans: readonly Span[];
}

/** The current as it was measured, in stretches; it is all that flows, whatever the circuits and the sun were thought to do. */
export function measuredFlows(blocks: readonly ReadingColumns[], span: Span): MeasuredFlows {
  const flows: Flow[] = [];
  const spans: Span[] = [];
  const stretch_ms = Math.max(leastStretch_ms, (span.end - span.start) / mostStretches);
  for (const block of blocks) {
    const { at, current } = block;
    if (current === null) continue;
    const gap_ms = gapFrom_ms(at);
    const [first, end] = placesIn(block, span);
    let from = -1;
    let before = -1;
    let start = -1;
    let charge = 0;
    /** ends a stretch of the mean current at the place `before` */
    const put = () => {
      if (from >= 0 && before > from) {
        const likely = charge / (at[before]! - at[from]!);
        const off = assumedMeter.share * Math.abs(likely) + assumedMeter.amps;
        flows.push({
          from: at[from]!,
          to: at[before]!,
          low_A: likely - off,
          likely_A: likely,
          high_A: likely + off,
          source: 'measured current',
        });
      }
      from = before;
      charge = 0;
    };
    const close = () => {
      put();
      if (start >= 0 && before > start) spans.push({ start: at[start]!, end: at[before]! });
    };
    for (let i = first; i < end; i++) {
      if (Number.isNaN(current[i]!)) continue;
      if (before < 0 || at[i]! - at[before]! > gap_ms) {
        if (before >= 0) close();
        from = i;
        start = i;
        charge = 0;
      } else {
        charge += ((current[i]! + current[before]!) / 2) * (at[i]! - at[before]!);
      }
      before = i;
      if (at[i]! - at[from]! >= stretch_ms) put();
    }
    if (before >= 0) close();
  }
  return { flows, spans: spans.sort((a, b) => a.start - b.start) };
}

/** The air as it was measured, now and then. */
export function airRead(
  blocks: readonly ReadingColumns[],
  span: Span,
): { readonly at: number; readonly air_C: number }[] {
  const points: { at: number; air_C: number }[] = [];
  for (const block of blocks) {
    const { at, air } = block;
    if (air === null) continue;
    const [first, end] = placesIn(block, span);
    let last = Number.NEGATIVE_INFINITY;
    for (let i = first; i < end; i++) {
      if (Number.isNaN(air[i]!) || at[i]! - last < airEvery_ms) continue;
      last = at[i]!;
      points.push({ at: last, air_C: air[i]! });
    }
  }
  return points;
}
