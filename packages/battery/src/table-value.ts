/**
 * Value of a printed table at `x`, on the straight line between its rows.
 *
 * @param rows  (x, value) with x rising; two at least
 * @param past  what stands past either end: its end value, or its last slope drawn on
 */
export function tableValue(
  rows: readonly (readonly [number, number])[],
  x: number,
  past: 'end value' | 'slope drawn on' = 'end value',
): number {
  const [first, last] = [rows[0]!, rows.at(-1)!];
  if (past === 'end value' && x <= first[0]) return first[1];
  if (past === 'end value' && x >= last[0]) return last[1];
  let i = 1;
  while (i < rows.length - 1 && x > rows[i]![0]) i++;
  const [x0, y0] = rows[i - 1]!;
  const [x1, y1] = rows[i]!;
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}

export function requireBetween(what: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high))
    throw new RangeError(`${what} must be from ${low} to ${high} ${unit}, got ${value}`);
}
