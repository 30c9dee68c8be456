import { describe, expect, it } from 'vitest';
import type { Plan, PlannedChange } from '../plan.ts';
import type { Problem } from '../problem.ts';
import { violations } from '../violations.ts';
import { worthOf } from '../worth.ts';
import { compile } from './compiled.ts';
import { crowdedProblem } from './crowded-problem.ts';
import { Dice } from './dice.ts';
import { KeptSteps, layOfPlan } from './kept-steps.ts';
import { ListSearch } from './list-search.ts';
import { Placing } from './placing.ts';
import { writtenPlan } from './written-plan.ts';

/** A plan of a problem, and how it is laid again without some jobs. */
function caseOf(problem: Problem, lists: number) {
  const compiled = compile(problem);
  const units = compiled.units.map((_, unit) => unit);
  const search = new ListSearch(compiled, units, new Dice(1), null, false);
  while (search.iterations < lists) search.step();
  const { plan } = search.best!;
  const lay = layOfPlan(plan, compiled);
  const order = [...lay.steps.keys()]
    .filter((step) => lay.steps[step] !== null)
    .sort((a, b) => lay.steps[a]!.start - lay.steps[b]!.start || a - b);
  const placing = new Placing(compiled);
  const unitOf = Int32Array.from(compiled.steps, (step) => compiled.jobs[step.job]!.unit);
  const kept = new KeptSteps(compiled, placing, unitOf);
  const without = (jobs: ReadonlySet<string>): Plan => {
    const isOut = (unit: number) => compiled.units[unit]!.jobs.some((job) => jobs.has(problem.jobs[job]!.id));
    kept.layAgain(
      lay,
      order,
      Uint8Array.from(units, (unit) => (isOut(unit) ? 1 : 0)),
    );
    return writtenPlan(placing.taken);
  };
  return { problem, plan, without };
}

/** Jobs that cannot stay without some: a step of theirs comes after one of those, or shares its batch; and so on. */
function withDependent({ steps, precedence }: Problem, plan: Plan, jobs: readonly string[]): Set<string> {
  const jobOf = new Map(steps.map(({ id, job }) => [id, job]));
  const ties = [
    ...precedence.map(({ before, after }) => [before, after] as const),
    ...plan.steps.flatMap(({ step, batchOf }) => (batchOf === null ? [] : [[batchOf, step] as const])),
  ];
  const out = new Set(jobs);
  for (let size = -1; size !== out.size; ) {
    size = out.size;
    for (const [before, after] of ties) if (out.has(jobOf.get(before)!)) out.add(jobOf.get(after)!);
  }
  return out;
}

const setUpMinutes = ({ changes }: Plan) => changes.reduce((sum, { start, finish }) => sum + finish - start, 0);

/** The plans that lack a run of changes of one set-up, from a state back to the same. */
function withoutChanges(plan: Plan): Plan[] {
  const plans: Plan[] = [];
  for (const aspect of new Set(plan.changes.map((change) => change.aspect))) {
    const own = plan.changes.filter((change) => change.aspect === aspect);
    for (const [first, { from }] of own.entries())
      for (let last = first + 1; last < own.length; last++) {
        if (own[last]!.to !== from) continue;
        const gone = new Set<PlannedChange>(own.slice(first, last + 1));
        plans.push({ ...plan, changes: plan.changes.filter((change) => !gone.has(change)) });
      }
  }
  return plans;
}

describe('a plan laid again', () => {
  // `violations` shares no code with the search: it is the judge
  it.each([
    ['small problems', { jobs: 9, days: 3, dayMinutes: 120, still: false }, [...Array(8).keys()]],
    ['one of thirty jobs', { jobs: 30, days: 5, dayMinutes: 300, still: false }, [1]],
    ['with waits that need the mast still', { jobs: 9, days: 3, dayMinutes: 120, still: true }, [...Array(5).keys()]],
  ])('keeps every step that can stay, and no set-up change that nobody asks for: %s', (_, crowd, seeds) => {
    let [left, fewer, sharers] = [0, 0, 0];
    for (const seed of seeds) {
      const { problem, plan, without } = caseOf(crowdedProblem(seed, crowd), 8);
      const dice = new Dice(seed);
      const jobOf = new Map(problem.steps.map(({ id, job }) => [id, job]));
      sharers += plan.steps.filter(({ batchOf }) => batchOf !== null).length;
      for (let times = 0; times < 4; times++) {
        const chosen = times === 0 ? [] : problem.jobs.map(({ id }) => id).filter(() => dice.chance(0.25));
        const name = `seed ${seed}, without ${chosen.join(', ')}`;
        const again = without(new Set(chosen));
        const out = withDependent(problem, plan, chosen);
        expect(again.steps, name).toEqual(plan.steps.filter(({ step }) => !out.has(jobOf.get(step)!)));
        expect(violations(again, problem), name).toEqual([]);
        expect(setUpMinutes(again), name).toBeLessThanOrEqual(setUpMinutes(plan));
        if (chosen.length === 0) expect(worthOf(again, problem).weight, name).toBe(worthOf(plan, problem).weight);
        left += again.changes.length;
        fewer += plan.changes.length - again.changes.length;
        // a mast that must only be still may stand as it does: those changes may be more than are asked for
        if (crowd.still) continue;
        for (const less of withoutChanges(again)) expect(violations(less, problem), name).not.toEqual([]);
      }
    }
    // the plans have what is looked for
    expect(Math.min(left, fewer)).toBeGreaterThan(0);
    expect(sharers).toBeGreaterThan(0);
  });
});
