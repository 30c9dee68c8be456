/**
 * Two quantiles of weighted values.
 *
 * @param sorted   rising
 * @param weights  of each, not negative; all nought counts as all alike
 * @param low      0–1, under `high`
 */
export function quantilesOf(
  sorted: Float64Array,
  weights: Float64Array,
  low: number,
  high: number,
): readonly [number, number] {
  let sum = 0;
  for (const weight of weights) sum += weight;
  const even = !(sum > 0);
  const whole = even ? sorted.length : sum;
  let passed = 0;
  let from = sorted[0]!;
  for (let i = 0; i < sorted.length; i++) {
    const before = passed;
    passed += even ? 1 : weights[i]!;
    if (before < low * whole && passed >= low * whole) from = sorted[i]!;
    if (passed >= high * whole) return [from, sorted[i]!];
  }
  return [from, sorted.at(-1)!];
}
