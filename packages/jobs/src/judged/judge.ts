/**
 * Whether there is work in what was said, by weights learned from the marked talk of `corpus/`: a sum over the words and what the
 * rules take them for. What it learned from, and how well it does on talk it did not, is told there.
 */
import type { Features } from './features.ts';
import { jobWeights, rigWeights } from './weights.ts';

export type Weights = ReadonlyMap<string, number>;

/** For a topic, whether there is a job in it; for a clause, whether it is a fix that holds for now. */
export interface Judges {
  readonly job: Weights;
  readonly rig: Weights;
}

/** One line a feature: its name, a tab, its weight in hundredths. */
function weightsIn(lines: string): Weights {
  return new Map(
    lines.split('\n').map((line) => {
      const at = line.lastIndexOf('\t');
      return [line.slice(0, at), Number(line.slice(at + 1)) / 100];
    }),
  );
}

/** How much speaks for it; the logarithm of the odds. */
export function sumOf(features: Features, weights: Weights): number {
  let sum = weights.get('') ?? 0;
  for (const [name, much] of features) sum += much * (weights.get(name) ?? 0);
  return sum;
}

let ours: Judges | null = null;
export const ourJudges = (): Judges => (ours ??= { job: weightsIn(jobWeights), rig: weightsIn(rigWeights) });
