/** In the planner's Worker: the odds of a settled plan, worked out in slices and told as more runs are made. */
import { outingSets, planOddsInWords } from '#reckoning';
import { startOdds } from '#workplan';
import { breath, nextSlice, type SettledPlan } from './worker-slices.ts';

/** the first figures are told after so many runs */
const firstRuns = 50;
/** then no sooner than this after those before. [ms] */
const sayEvery_ms = 1000;

/** Begins the odds of a plan. What it returns tells them until so many runs are made, or a newer request comes. */
export function oddsToTell(settled: SettledPlan): (runs: number) => Promise<void> {
  const { problem, outcome, book, seed, tell, isCurrent } = settled;
  const run = startOdds(problem, outcome.plan, { seed, sets: outingSets(book, problem) });
  let slice = 1;
  let done = 0;
  return async (runs) => {
    let toldAt = Number.NEGATIVE_INFINITY;
    while (done < runs) {
      const from = performance.now();
      const odds = run.advance(Math.min(slice, runs - done));
      const at = performance.now();
      done = odds.runs;
      slice = nextSlice(slice, at - from);
      if (done >= runs || (done >= firstRuns && at - toldAt > sayEvery_ms)) {
        toldAt = at;
        tell({ kind: 'odds', odds: planOddsInWords(odds, problem, book) });
      }
      await breath();
      if (!isCurrent()) return;
    }
  };
}
