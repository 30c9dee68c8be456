/** Readings thinned for drawing: of each column of pixels the first, the least, the most and the last, so that no peak is lost. */

/** What is drawn: x in the order of time, null where the line is broken. */
export interface DrawnLine {
  readonly at: Float64Array;
  readonly values: readonly (number | null)[];
}

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

/**
 * The line through readings between two instants, one more reading at each side so that it runs to the edge.
 *
 * @param at       in order. [ms]
 * @param values   NaN: not read
 * @param from,to  what is seen. [ms]
 * @param pixels   columns it is drawn in
 * @param gap_ms   a step longer than this breaks the line
 */
export function thinned(
  at: Float64Array,
  values: Float32Array,
  from: number,
  to: number,
  pixels: number,
  gap_ms: number,
): DrawnLine {
  const first = Math.max(0, placeOf(at, from) - 1);
  const last = Math.min(at.length, placeOf(at, to) + 1);
  const x: number[] = [];
  const y: (number | null)[] = [];
  const wide = (to - from) / pixels;
  let pixel = Number.NaN;
  let [one, least, most, other] = [-1, -1, -1, -1];
  const put = () => {
    if (one < 0) return;
    let before = -1;
    for (const i of [one, Math.min(least, most), Math.max(least, most), other]) {
      if (i === before) continue;
      x.push(at[i]!);
      y.push(values[i]!);
      before = i;
    }
  };
  for (let i = first; i < last; i++) {
    const value = values[i]!;
    if (Number.isNaN(value)) continue;
    const gap = other >= 0 && at[i]! - at[other]! > gap_ms;
    const here = Math.floor((at[i]! - from) / wide);
    if (gap || here !== pixel) {
      put();
      if (gap) {
        // the break stands in the middle of what was not read
        x.push((at[other]! + at[i]!) / 2);
        y.push(null);
      }
      pixel = here;
      one = least = most = i;
    } else {
      if (value < values[least]!) least = i;
      if (value > values[most]!) most = i;
    }
    other = i;
  }
  put();
  return { at: Float64Array.from(x), values: y };
}
