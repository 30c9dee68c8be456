/** How much better a plan gets when it is looked for thirty times as long, on invented keeper's problems of one size. */

import { startSearch, violations, type Worth } from '#workplan';
import type { BesideThread } from '../apps/cli/src/beside/beside-thread.ts';
import { keeperProblem, keeperSizes } from './keeper-problems.ts';

export interface LongerSearch {
  readonly problem: number;
  /** one for each seed */
  readonly soon: readonly Worth[];
  readonly late: Worth;
}

const seeds = [1, 2, 3, 4];
const size = keeperSizes[2]!;

/**
 * Searches each of so many problems of 60 jobs and 250 steps with four seeds for the short time, and goes on with the
 * first for the long one.
 *
 * @param seconds  by the clock: the short time and the long
 * @param beside   a thread that is up, to search in beside; null: one search alone
 * @param told     is given a line for each problem
 * @throws RangeError where a plan found breaks a rule: what it is worth would be no figure
 */
export function longerSearches(
  problems: number,
  seconds: { readonly soon: number; readonly late: number },
  beside: BesideThread | null,
  told: (line: string) => void,
): LongerSearch[] {
  // the code is warm, as it is in an app that has made a plan before
  search(0, 1, [seconds.soon], beside);
  return Array.from({ length: problems }, (_, at) => {
    const problem = at + 1;
    const [first, late] = search(problem, seeds[0]!, [seconds.soon, seconds.late], beside) as [Worth, Worth];
    const rest = seeds.slice(1).map((seed) => search(problem, seed, [seconds.soon], beside)[0]!);
    const row = { problem, soon: [first, ...rest], late };
    told(longerSearchRow(row));
    return row;
  });
}

/** What the best plan is worth after each of some times. */
function search(problem: number, seed: number, after_s: readonly number[], beside: BesideThread | null): Worth[] {
  const task = keeperProblem(size, problem);
  const started = performance.now();
  const running = startSearch(task, { seed });
  let progress = running.advance(1);
  beside?.begin(running, task, { seed });
  const worths = after_s.map((seconds) => {
    while (!progress.finished && performance.now() - started < 1000 * seconds) {
      progress = running.advance(5);
      beside?.swap();
    }
    return progress.worth!;
  });
  beside?.end();
  const breach = violations(running.best()!.plan, task)[0];
  if (breach !== undefined) throw new RangeError(`problem ${problem}, seed ${seed}: ${breach.what}`);
  return worths;
}

/** The best of all that was found of a problem. */
function bestOf({ soon, late }: LongerSearch): Worth {
  return [...soon, late].reduce((best, worth) =>
    worth.missed < best.missed || (worth.missed === best.missed && worth.weight > best.weight) ? worth : best,
  );
}

/** By seed, how far the weight after the short time is below the best of all, in per cent; 100: it misses more. */
function shorts(row: LongerSearch): number[] {
  const best = bestOf(row);
  return row.soon.map(({ weight, missed }) =>
    missed > best.missed ? 100 : (100 * (best.weight - weight)) / best.weight,
  );
}

function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
}

export const longerSearchHead = [
  '| problem | weight, soon, by seed | missed | weight, late, first seed | missed | short of the best, median | worst |',
  '| --- | --- | --- | --- | --- | --- | --- |',
];

export function longerSearchRow(row: LongerSearch): string {
  const { problem, soon, late } = row;
  const weights = soon.map(({ weight }) => weight.toFixed(0)).join(', ');
  const missed = [...new Set(soon.map((worth) => worth.missed.toFixed(0)))].join(', ');
  const short = shorts(row);
  return `| ${problem} | ${weights} | ${missed} | ${late.weight.toFixed(0)} | ${late.missed.toFixed(0)} | ${median(short).toFixed(1)} % | ${Math.max(...short).toFixed(1)} % |`;
}

/** The median of all seeds of all problems, and how many problems have their own within one per cent. */
export function longerSearchSum(rows: readonly LongerSearch[]): string {
  const all = rows.flatMap(shorts);
  const within = rows.filter((row) => median(shorts(row)) <= 1).length;
  return `Median of all ${all.length}: ${median(all).toFixed(2)} % short. Problems with a median within 1 %: ${within} of ${rows.length}.`;
}
