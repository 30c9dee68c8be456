import type { Outcome, Plan, Worth } from '../../plan.ts';
import type { Problem } from '../../problem.ts';
import { violations } from '../../violations.ts';
import { worthOf } from '../../worth.ts';
import { Dice } from '../dice.ts';
import { Proof, proofFits } from '../plain-proof/proof.ts';
import { finishBound } from './finish-bound.ts';
import type { PlainCase } from './plain-case.ts';
import { Population } from './population.ts';

/** The proof waits for so many lists, so that it begins from a fair plan and with few minutes to choose from. */
const listsBeforeProof = 100;
/** What the proof may take first of all, one contradiction a list: it closes most that can be closed at all. */
const firstSpell = 600;
/** After that a contradiction every so many lists, a twentieth of the time, while lists still bring something. */
const listsAContradiction = 8;
/**
 * Lists without a sooner finish after which the search has stalled. Above 40 activities one more proof in a hundred
 * would cost a tenth of a percent of finish, so lists go on for longer.
 */
const listsToStall = (activities: number) => (activities <= 40 ? 4000 : 30_000);
/** Contradictions a list once it has: most of the time where a proof is likely, else two fifths. */
const onceStalled = (activities: number) => (activities <= 40 ? 4 : 1);

/**
 * The machine for the plain case: everything is done, and what is looked for is the soonest finish. A population looks
 * for sooner ones, an exact search beside it for the proof that there is none, each starting from what the other found.
 */
export function startPlainSearch(problem: Problem, plain: PlainCase, seed: number) {
  const population = new Population(plain, new Dice(seed));
  const bound = problem.jobs.reduce((sum, job) => sum + job.weight, 0);
  const least = finishBound(plain);
  let iterations = 0;
  let proof: Proof | null = null;
  let bestSince = 0;

  const prove = () => {
    if (proof === null) {
      if (iterations < listsBeforeProof || !proofFits(plain, population.best)) return;
      proof = new Proof(plain, population.best);
    }
    proof.know(population.best);
    if (proof.conflicts < firstSpell) proof.advance(1);
    else if (iterations - bestSince > listsToStall(plain.count)) proof.advance(onceStalled(plain.count));
    else if (iterations % listsAContradiction === 0) proof.advance(1);
    if (proof.improved && proof.finish < population.best) {
      population.best = proof.finish;
      population.bestStart.set(proof.start);
      bestSince = iterations;
    }
  };

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
  const worth = (): Worth => ({ missed: 0, weight: bound, setUp_min: 0, moved_min: 0, lastFinish: population.best });
  const finished = () => population.best <= least || proof?.closed === true;
  const advance = (count: number) => {
    for (let n = 0; n < count && !finished(); n++) {
      const was = population.best;
      population.step();
      iterations++;
      if (population.best < was) bestSince = iterations;
      if (!finished()) prove();
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
