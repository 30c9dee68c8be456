/** Weights from marked talk: a logistic fit, held small by its squares; the same from the same talk. */
import type { Features } from '../src/judged/features.ts';

export interface Example {
  readonly features: Features;
  readonly is: boolean;
  /** whose page it is from: what only one page says is not learned */
  readonly page: string;
}

/**
 * Dual coordinate descent for logistic regression, as Yu, Huang and Lin, Machine Learning 85 (2011) 41–75, algorithm 5.
 *
 * @param trust  how much an example weighs against the smallness of the weights
 * @returns weights by feature; '' is what is added whatever is said
 */
export function learn(examples: readonly Example[], trust: number, leastPages = 3): Map<string, number> {
  const pages = new Map<string, Set<string>>();
  for (const { features, page } of examples)
    for (const name of features.keys()) pages.set(name, (pages.get(name) ?? new Set()).add(page));
  const places = new Map<string, number>([['', 0]]);
  for (const [name, of] of pages) if (of.size >= leastPages) places.set(name, places.size);
  const rows = examples.map(({ features, is }) => {
    const known = [...features].flatMap(([name, much]) =>
      places.has(name) ? [[places.get(name)!, much] as const] : [],
    );
    const at = Int32Array.from([0, ...known.map(([place]) => place)]);
    const much = Float64Array.from([1, ...known.map(([, each]) => each)]);
    return { at, much, sign: is ? 1 : -1, square: much.reduce((sum, each) => sum + each * each, 0) };
  });
  const w = new Float64Array(places.size);
  const alpha = new Float64Array(rows.length).fill(Math.min(0.001 * trust, 1e-8));
  for (const [n, row] of rows.entries())
    for (const [k, at] of row.at.entries()) w[at]! += alpha[n]! * row.sign * row.much[k]!;
  let seed = 7;
  const below = (n: number) => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return Math.floor((seed / 2 ** 32) * n);
  };
  const order = Array.from(rows.keys());
  for (let round = 0; round < 60; round++) {
    for (let n = order.length - 1; n > 0; n--) {
      const other = below(n + 1);
      [order[n], order[other]] = [order[other]!, order[n]!];
    }
    let farthest = 0;
    for (const n of order) {
      const row = rows[n]!;
      let margin = 0;
      for (const [k, at] of row.at.entries()) margin += w[at]! * row.much[k]!;
      margin *= row.sign;
      // minimise over z: z log z + (c − z) log (c − z) + ½ square (z − alpha)² + margin (z − alpha)
      let z = alpha[n]!;
      for (let step = 0; step < 20; step++) {
        const slope = Math.log(z / (trust - z)) + row.square * (z - alpha[n]!) + margin;
        const next = z - slope / (trust / (z * (trust - z)) + row.square);
        z = next <= 0 ? z / 2 : next >= trust ? (z + trust) / 2 : next;
        if (Math.abs(slope) < 1e-6) break;
      }
      const by = z - alpha[n]!;
      farthest = Math.max(farthest, Math.abs(by));
      alpha[n] = z;
      for (const [k, at] of row.at.entries()) w[at]! += by * row.sign * row.much[k]!;
    }
    if (farthest < 1e-4 * trust) break;
  }
  return new Map([...places].map(([name, place]) => [name, w[place]!]));
}

/** The text of weights, without those that say next to nothing. */
export const weightLines = (weights: ReadonlyMap<string, number>, least = 0.015): string =>
  [...weights]
    .filter(([name, weight]) => name === '' || Math.abs(weight) >= least)
    .map(([name, weight]) => `${name}\t${Math.round(weight * 100)}`)
    .join('\n');
