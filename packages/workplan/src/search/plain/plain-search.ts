import type { Outcome, Plan, Worth } from '../../plan.ts';
import type { Problem } from '../../problem.ts';
import { violations } from '../../violations.ts';
import { worthOf } from '../../worth.ts';
import { Dice } from '../dice.ts';
import { finishBound } from './finish-bound.ts';
import type { PlainCase } from './plain-case.ts';
import { Population } from './population.ts';

/** The machine for the plain case: everything is done, and what is looked for is the soonest finish. */
export function startPlainSearch(problem: Problem, plain: PlainCase, seed: number) {
  const population = new Population(plain, new Dice(seed));
  const bound = problem.jobs.reduce((sum, job) => sum + job.weight, 0);
  const least = finishBound(plain);
  let iterations = 0;

  const plan = (): Plan => {
    const startOf = new Map<number, number>();
    for (let i = 0; i < plain.count; i++) startOf.set(plain.stepOf[i]!, population.bestStart[i]!);
    return {
      steps: problem.steps.map((step, index) => {
        const start = startOf.get(index)!;
        const day = problem.days[0]!.id;
        return { step: step.id, start, finish: start + step.minutes, hands: [], day, batchOf: null, abrade_min: 0 };
      }),
      waits: [],
      changes: [],
      leftOut: [],
    };
  };
  const worth = (): Worth => ({ missed: 0, weight: bound, setUp_min: 0, lastFinish: population.best, moved: 0 });
  const finished = () => population.best <= least;
  const advance = (count: number) => {
    for (let n = 0; n < count && !finished(); n++) {
      population.step();
      iterations++;
    }
    return { iterations, worth: iterations > 0 ? worth() : null, bound, finished: finished() };
  };
  return {
    advance,
    outcome(): Outcome {
      if (iterations === 0) advance(1);
      const made = plan();
      const breaches = violations(made, problem);
      if (breaches.length > 0) throw new RangeError(`the plan breaks a rule: ${breaches[0]!.what}`);
      return {
        plan: made,
        worth: worthOf(made, problem),
        verdict: { kind: 'proved best', finishToo: finished() },
        obstacles: [],
        effort: { seed, iterations },
      };
    },
  };
}
