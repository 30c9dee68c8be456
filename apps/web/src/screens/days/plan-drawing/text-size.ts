/** How much room words take, so that the drawing can give it to them. */

/** Width of a text in a size. [px] */
export type Measure = (text: string, size_px: number) => number;

/** Measures with a canvas in the drawing's own type. */
export function canvasMeasure(face: string): Measure {
  const context = document.createElement('canvas').getContext('2d');
  if (!context) return roughMeasure;
  return (text, size_px) => {
    context.font = `500 ${size_px}px ${face}`;
    // the page sets figures of one width; a canvas does not, and its 0 is the widest
    return context.measureText(text.replace(/\d/g, '0')).width;
  };
}

/** For where there is no canvas: a letter of the face is a little over half as wide as its size. */
export const roughMeasure: Measure = (text, size_px) => text.length * size_px * 0.56;

/** Lines that a text takes when broken at its spaces (not at those that hold a figure to its unit); a word wider than the line is broken in itself. ≥ 1 */
export function lineCount(text: string, size_px: number, width_px: number, measure: Measure): number {
  const space = measure(' ', size_px);
  let lines = 1;
  let used = 0;
  for (const word of text.split(/ +/)) {
    const wide = measure(word, size_px);
    if (used > 0 && used + space + wide <= width_px) {
      used += space + wide;
      continue;
    }
    if (used > 0) lines++;
    lines += Math.max(0, Math.ceil(wide / width_px) - 1);
    used = wide > width_px ? wide % width_px : wide;
  }
  return lines;
}
