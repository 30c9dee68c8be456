/** How the search's answer stands to a proved best: what the checks of this folder judge it by. */
import { type Outcome, type Problem, startSearch, violations } from '#workplan';
import type { Steadiest } from './best-plan.ts';
import type { ModelWorth } from './model.ts';

export type Agreement =
  /** as good as the proved best; `proved` where the search says so itself */
  | { readonly kind: 'same'; readonly proved: boolean }
  /** less good, and the verdict leaves room for better */
  | { readonly kind: 'gap admitted' }
  /** the search is wrong, or the model is */
  | { readonly kind: 'fault'; readonly what: string };

/**
 * Searches with a bounded effort, never by the clock: the same on every machine.
 *
 * @param iterations  at most so many, in slices of 50; fewer where the search says it has finished
 */
export function searched(problem: Problem, iterations: number): Outcome {
  const search = startSearch(problem, { seed: 1 });
  for (let done = 0; done < iterations; done += 50) if (search.advance(50).finished) break;
  return search.outcome();
}

/** Holds an outcome to the proved best of the same problem. */
export function agreement(problem: Problem, outcome: Outcome, best: ModelWorth): Agreement {
  const broken = violations(outcome.plan, problem);
  if (broken.length > 0) return { kind: 'fault', what: `the plan breaks '${broken[0]!.rule}': ${broken[0]!.what}` };
  const { worth, verdict } = outcome;
  const told = `search ${worthText(worth)}, model ${worthText(best)}, verdict '${verdict.kind}'`;
  const less = worth.missed - best.missed || best.weight - worth.weight || worth.setUp_min - best.setUp_min;
  if (less < 0) return { kind: 'fault', what: `better than the proved best: ${told}` };
  const claims =
    verdict.kind === 'impossible, because' ? verdict.rest === 'proved best' : verdict.kind === 'proved best';
  if (less > 0 && claims) return { kind: 'fault', what: `said to be proved best and is not: ${told}` };
  if (verdict.kind === 'impossible, because' && best.missed === 0)
    return { kind: 'fault', what: `said to be impossible and is not: ${told}` };
  if (verdict.kind !== 'proved best' && best.weight > verdict.bound + 1e-9)
    return { kind: 'fault', what: `the bound of ${verdict.bound} is too low: ${told}` };
  return less === 0 ? { kind: 'same', proved: claims } : { kind: 'gap admitted' };
}

export const worthText = ({ missed, weight, setUp_min }: ModelWorth): string =>
  `missed ${missed}, weight ${weight}, set-ups ${setUp_min} min`;

export const sameWorth = (one: ModelWorth, other: ModelWorth): boolean => worthText(one) === worthText(other);

/**
 * How a plan stands to the steadiest there is of its worth: over 0 where it is better, which cannot be; 0 where it moves
 * as little and finishes as soon; under 0 where it does not.
 */
export function steadier({ plan }: Outcome, problem: Problem, best: Steadiest): number {
  const open = plan.steps.filter(({ step }) => problem.steps.find(({ id }) => id === step)!.progress.kind === 'open');
  const moved_min = open.reduce((sum, { step, start }) => {
    const was = problem.previous.find((one) => one.step === step);
    return sum + (was ? Math.abs(start - was.start) : 0);
  }, 0);
  const lastFinish = Math.max(0, ...open.map(({ finish }) => finish));
  return best.moved_min - moved_min || best.lastFinish - lastFinish;
}
