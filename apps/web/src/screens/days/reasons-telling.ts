/** In the planner's Worker: the reasons of a settled plan, worked out in slices and told as they come. */
import { assumedArrival_clock, gainInWords, heldInWords, leastInWords, wayInWords } from '#reckoning';
import { type Plan, type Reasons, startReasons } from '#workplan';
import type { PlanReasons } from './plan-report.ts';
import { breath, nextSlice, type SettledPlan } from './worker-slices.ts';

/** how often it says how far it is where nothing new was found. [ms] */
const sayEvery_ms = 250;

/**
 * Tells the reasons of a plan until all are known or a newer request comes.
 *
 * @returns a plan that does more than the one in hand, where one was come upon; its reasons are then not gone on with.
 *          None where the keeper ended the search: the plan then stays as it is
 */
export async function tellReasons(settled: SettledPlan): Promise<Plan | null> {
  const { problem, outcome, seed, tell, isCurrent } = settled;
  const run = startReasons(problem, outcome, { seed, arrival_clock: assumedArrival_clock });
  let iterations = 1;
  let told = '';
  let toldAt = Number.NEGATIVE_INFINITY;
  for (;;) {
    const from = performance.now();
    const reasons = run.advance(iterations);
    const at = performance.now();
    iterations = nextSlice(iterations, at - from);
    if (!isCurrent()) return null;
    if (reasons.better !== null) {
      if (settled.stopped) tell({ kind: 'reasons', reasons: { ...inWords(reasons, settled), finished: true } });
      return settled.stopped ? null : reasons.better;
    }
    const news = newsOf(reasons);
    if (news !== told || at - toldAt > sayEvery_ms) {
      told = news;
      toldAt = at;
      tell({ kind: 'reasons', reasons: inWords(reasons, settled) });
    }
    if (reasons.finished) return null;
    await breath();
    if (!isCurrent()) return null;
  }
}

/** What of the reasons is worth telling at once. */
function newsOf({ ways, gain, finished }: Reasons): string {
  return JSON.stringify([
    ways.map((each) => [each.finished, each.ways.map(({ relaxation }) => relaxation)]),
    gain?.relaxation,
    finished,
  ]);
}

function inWords(reasons: Reasons, { problem, outcome }: SettledPlan): PlanReasons {
  const { ways, gain, steps, done, of, finished } = reasons;
  return {
    ways: ways.map((each) => ({
      job: each.job,
      finished: each.finished,
      ways: each.ways.map((way) => ({
        words: wayInWords(way, problem),
        least: leastInWords(way),
        relaxation: way.relaxation,
        job: way.job,
        plan: way.plan,
      })),
    })),
    gain:
      gain === null
        ? null
        : {
            words: gainInWords(gain, problem, outcome.worth.weight),
            least: null,
            relaxation: gain.relaxation,
            job: gain.jobs[0] ?? null,
            plan: gain.plan,
          },
    held: Object.fromEntries(steps.map((held) => [held.step, heldInWords(held, outcome.plan, problem)])),
    done,
    of,
    finished,
  };
}
