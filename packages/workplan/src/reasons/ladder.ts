import type { Plan } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { violations } from '../violations.ts';
import { attempt, type Footing, type Work } from './attempt.ts';
import { type Relaxation, relaxed } from './relaxation.ts';

/** Relaxations of one kind that each allow all the one before does and more: the first asks least. */
export interface Ladder {
  readonly rungs: number;
  at(rung: number): Relaxation;
}

/** A relaxation that was seen to work. */
export interface Found {
  readonly relaxation: Relaxation;
  /** a plan of the changed problem in which `violations` finds nothing */
  readonly plan: Plan;
  /** true: the bound shows that a step less of the same kind on the same day does not do. false: none was found */
  readonly leastProved: boolean;
}

/**
 * The lowest rung found that works: the highest is tried first; what its plan does not use is taken off; then the
 * middle between what works and what does not, until the two meet. Smallest found: a heuristic search stands behind
 * every 'does not', but where `leastProved` says otherwise.
 *
 * @param tries  of the search at each rung
 */
export function* lowestRung(
  footing: Footing,
  ladder: Ladder,
  wanted: readonly string[],
  tries: number,
): Work<Found | null> {
  if (ladder.rungs === 0) return null;
  const top = yield* attempt(footing, [ladder.at(ladder.rungs - 1)], wanted, tries);
  if (top.kind !== 'found') return null;
  let plan = top.plan;
  let works = lowestThatKeeps(plan, footing.problem, ladder, ladder.rungs - 1);
  let fails = -1;
  let leastProved = false;
  while (works - fails > 1) {
    const middle = Math.floor((works + fails) / 2);
    const looked = yield* attempt(footing, [ladder.at(middle)], wanted, tries);
    if (looked.kind === 'found') {
      plan = looked.plan;
      works = lowestThatKeeps(plan, footing.problem, ladder, middle);
    } else {
      fails = middle;
      leastProved = looked.kind === 'proved not';
    }
  }
  return { relaxation: ladder.at(works), plan, leastProved };
}

/** The lowest rung at which a plan still breaks no rule. */
function lowestThatKeeps(plan: Plan, problem: Problem, ladder: Ladder, top: number): number {
  let [low, high] = [0, top];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (violations(plan, relaxed(problem, ladder.at(middle))).length === 0) high = middle;
    else low = middle + 1;
  }
  return high;
}
