/** How far down the page each minute of a day lies. */
import type { Minute } from '#workplan';

export interface DayScale {
  /** [px] */
  readonly height: number;
  /** distance from the top of the day; minutes outside the day are held to its ends. [px] */
  readonly y: (minute: Minute) => number;
}

export interface Stretch {
  readonly from: Minute;
  readonly to: Minute;
  /** the least height it can be read at. [px] */
  readonly least_px: number;
}

/**
 * A scale that never runs backwards on which every stretch has at least its least height. Where the plain scale is
 * too short for one, the time it covers is drawn out evenly and everything below moves down: hours stay in order and
 * are all marked, but are not all equally long.
 *
 * @param marks  minutes at which the drawing has an edge of its own (hours), so that they keep their share
 */
export function dayScale({
  from,
  to,
  pxPerMinute,
  marks,
  stretches,
}: {
  readonly from: Minute;
  readonly to: Minute;
  readonly pxPerMinute: number;
  readonly marks: readonly Minute[];
  readonly stretches: readonly Stretch[];
}): DayScale {
  const inside = (minute: Minute) => Math.min(Math.max(minute, from), to);
  const edges = [
    ...new Set([from, to, ...marks.map(inside), ...stretches.flatMap((s) => [inside(s.from), inside(s.to)])]),
  ].sort((a, b) => a - b);
  const heights = edges.slice(1).map((edge, i) => (edge - edges[i]!) * pxPerMinute);
  // the longest first: a short one inside it may then have got its room already
  const longestFirst = [...stretches].sort((a, b) => b.to - b.from - (a.to - a.from));
  for (const stretch of longestFirst) {
    const first = edges.indexOf(inside(stretch.from));
    const last = edges.indexOf(inside(stretch.to));
    let height = 0;
    for (let i = first; i < last; i++) height += heights[i]!;
    if (height === 0 || height >= stretch.least_px) continue;
    for (let i = first; i < last; i++) heights[i]! *= stretch.least_px / height;
  }
  const tops = [0];
  for (const height of heights) tops.push(tops.at(-1)! + height);
  return {
    height: tops.at(-1)!,
    y(minute) {
      const at = inside(minute);
      let i = 0;
      while (i < heights.length - 1 && edges[i + 1]! <= at) i++;
      const span = (edges[i + 1] ?? at) - edges[i]!;
      return span === 0 ? tops[i]! : tops[i]! + ((at - edges[i]!) / span) * heights[i]!;
    },
  };
}
