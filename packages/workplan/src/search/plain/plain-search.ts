import type { Outcome, Plan, Worth } from '../../plan.ts';
import type { Problem } from '../../problem.ts';
import { violations } from '../../violations.ts';
import { worthOf } from '../../worth.ts';
import { Dice } from '../dice.ts';
import { Proof, proofFits } from '../plain-proof/proof.ts';
import { finishBound as soonestFinish } from './finish-bound.ts';
import type { PlainCase } from './plain-case.ts';
import { Population } from './population.ts';

/** The proof waits for so many lists, so that it begins from a fair plan and with few minutes to choose from. */
const listsBeforeProof = 400;
/** What the proof may take first of all, a contradiction every so many lists: it closes most that can be closed. */
const firstSpell = 600;
const listsAContradictionAtFirst = 4;
/** After that a contradiction every so many lists, a twentieth of the time, while lists still bring something. */
const listsAContradiction = 160;
/**
 * Lists without a sooner finish after which the search has stalled. Above 40 activities one more proof in a hundred
 * would cost a tenth of a percent of finish, so lists go on for longer.
 */
const listsToStall = (activities: number) => (activities <= 40 ? 20_000 : 400_000);
/** Once it has, most of the time goes to the proof where one is likely, else a quarter. */
const listsAContradictionOnceStalled = (activities: number) => (activities <= 40 ? 1 : 12);

/**
 * The machine for the plain case: everything is done, and what is looked for is the soonest finish. A population looks
 * for sooner ones, an exact search beside it for the proof that there is none, each starting from what the other found.
 */
export function startPlainSearch(problem: Problem, plain: PlainCase, seed: number) {
  const population = new Population(plain, new Dice(seed));
  const bound = problem.jobs.reduce((sum, job) => sum + job.weight, 0);
  const least = soonestFinish(plain);
  let iterations = 0;
  let proof: Proof | null = null;
  let bestSince = 0;

  const prove = () => {
    if (proof === null) {
      if (iterations < listsBeforeProof || !proofFits(plain, population.best)) return;
      proof = new Proof(plain, population.best);
    }
    if (population.best < proof.finish) proof.know(population.best);
    const stalled = iterations - bestSince > listsToStall(plain.count);
    let every = listsAContradiction;
    if (proof.conflicts < firstSpell) every = listsAContradictionAtFirst;
    else if (stalled) every = listsAContradictionOnceStalled(plain.count);
    if (iterations % every === 0) proof.advance(1);
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
    const finishBound = Math.max(least, proof?.lowerBound ?? 0);
    return { iterations, worth: iterations > 0 ? worth() : null, bound, finishBound, finished: finished() };
  };
  const adopt = (found: Plan): boolean => {
    const { lastFinish } = worthOf(found, problem);
    if (lastFinish >= population.best || found.leftOut.length > 0 || violations(found, problem).length > 0)
      return false;
    const starts = new Map(found.steps.map(({ step, start }) => [step, start]));
    for (let i = 0; i < plain.count; i++) population.bestStart[i] = starts.get(problem.steps[plain.stepOf[i]!]!.id)!;
    population.best = lastFinish;
    bestSince = iterations;
    return true;
  };
  return {
    advance,
    best: () => (population.best < Number.POSITIVE_INFINITY ? { plan: plan(), worth: worth() } : null),
    adopt,
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
