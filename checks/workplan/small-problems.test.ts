import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { checkProblem, type Problem, type ProblemStep, type Rule, rules, violations } from '#workplan';
import { emptyPlan } from './brute-force.ts';
import { smallProblem } from './small-problems.ts';

const seeds = Array.from({ length: 400 }, (_, seed) => seed);

describe('the small problems', () => {
  it.each(['small', 'tiny'] as const)('are sound, and leaving everything out is always a plan (%s)', (size) => {
    for (const seed of seeds) {
      const problem = smallProblem(seed, { size });
      expect(checkProblem(problem), `seed ${seed}`).toEqual({ kind: 'sound', problem });
      expect(violations(emptyPlan(problem), problem), `seed ${seed}`).toEqual([]);
    }
  });

  it('are the same for the same seed', () => {
    for (const seed of seeds.slice(0, 20)) expect(smallProblem(seed)).toEqual(smallProblem(seed));
  });

  it('are still those that the stored answers were worked out for', () => {
    // a snapshot, not a check: it tells a change of the draws from a change of the planner
    const hash = createHash('sha256');
    for (const seed of seeds)
      for (const size of ['tiny', 'small'] as const) hash.update(JSON.stringify(smallProblem(seed, { size })));
    for (const rule of rules)
      for (const seed of seeds.slice(0, 20)) hash.update(JSON.stringify(smallProblem(seed, { rules: [rule] })));
    expect(hash.digest('hex')).toBe('ca2202c2f8821327e1045c4f46271c1a244678acd367f3516180403b9173a996');
  });

  it.each(rules)('with %s asked for, are sound and have something for it to bite on', (rule) => {
    const asked = seeds.slice(0, 40).map((seed) => smallProblem(seed, { rules: [rule] }));
    for (const problem of asked) expect(checkProblem(problem).kind).toBe('sound');
    expect(asked.filter((problem) => touches[rule](problem)).length).toBeGreaterThanOrEqual(20);
  });

  it('with fives asked for, have no figure of time between them', () => {
    for (const seed of seeds) {
      const problem = smallProblem(seed, { size: 'tiny', onFives: true });
      const times = JSON.stringify(problem, (key, value) => (key === 'hours' || key === 'weight' ? null : value))
        .match(/"(?:\w+_min|minutes|from|to|start|finish|expectedFinish|deadline|now|horizon)":-?\d+/g)!
        .map((text) => Number(text.split(':')[1]));
      expect(
        times.every((time) => time % 5 === 0),
        `seed ${seed}`,
      ).toBe(true);
    }
  });
});

const some = (test: (step: ProblemStep) => boolean) => (problem: Problem) => problem.steps.some(test);
const someWait = (test: (wait: ProblemStep['waits'][number]) => boolean) => some((step) => step.waits.some(test));
const always = () => true;

/** Whether a problem has something in it that a plan could break the rule by. */
const touches: Record<Rule, (problem: Problem) => boolean> = {
  'known things': always,
  'whole job': (problem) => problem.steps.length > problem.jobs.length,
  'already begun': some((step) => step.progress.kind !== 'open'),
  'not before now': (problem) => problem.now > 0,
  'step time': always,
  'job day': always,
  'set-out and clear-up': (problem) => problem.days.some((day) => day.setOut_min > 0 || day.clearUp_min > 0),
  break: (problem) => problem.days.some((day) => day.breaks.length > 0),
  place: some((step) => step.features.length > 0),
  hands: some((step) => step.hands > 1),
  'hand present': (problem) =>
    problem.hands.some((hand) =>
      problem.days.some((day) => !hand.present.some((span) => span.from <= day.from && day.to <= span.to)),
    ),
  'one thing at a time': always,
  keeper: some((step) => step.keeper),
  'not alone': some((step) => step.notAlone),
  tools: some((step) => step.tools.length > 0),
  'room in the zone': (problem) => problem.zones.some((zone) => zone.room === 1),
  dry: some((step) => step.needs.dry === true),
  wind: some((step) => step.needs.wind_max_kn !== undefined),
  air: some((step) => step.needs.air_min_C !== undefined),
  surface: some((step) => step.needs.surface_min_C !== undefined),
  humidity: some((step) => step.needs.humidity_max_pct !== undefined),
  'dew margin': some((step) => step.needs.dewMargin_min_C !== undefined),
  daylight: some((step) => step.needs.daylight === true),
  stores: some((step) => step.stores.length > 0),
  held: some((step) => step.held !== null),
  deadline: (problem) => problem.jobs.some((job) => job.deadline !== null),
  'comes after': (problem) => {
    const jobOf = new Map(problem.steps.map((step) => [step.id, step.job]));
    return problem.precedence.some(({ before, after }) => jobOf.get(before) !== jobOf.get(after));
  },
  'least lag': (problem) => problem.precedence.some(({ least_min }) => least_min > 0),
  'greatest lag': (problem) =>
    problem.precedence.some(({ past, greatest_min }) => greatest_min !== null && past.kind === 'forbidden'),
  abrading: (problem) => problem.precedence.some(({ past }) => past.kind === 'abrade'),
  'wait time': (problem) => problem.precedence.some(({ wait }) => wait !== null),
  'wait over': someWait(() => true),
  'wait dry': someWait((wait) => wait.needs.dry === true),
  'wait warm': someWait((wait) => wait.needs.air_min_C !== undefined),
  'step set-up': some((step) => step.setUps.length > 0),
  'wait set-up': someWait((wait) => wait.setUps.length > 0),
  still: someWait((wait) => wait.still.length > 0),
  'set-up chain': (problem) => problem.aspects.length > 0,
  'change set-up': (problem) =>
    problem.aspects.some((aspect) => aspect.changes.some((change) => change.setUps.length > 0)),
  'day ends in': (problem) => problem.days.some((day) => day.endsIn.length > 0),
  batch: (problem) => problem.steps.filter((step) => step.mix !== null).length > 1,
  'pot life': (problem) => problem.steps.filter((step) => step.mix !== null).length > 1,
  'dust and wet': (problem) =>
    problem.steps.some((step) => step.dusty) &&
    problem.steps.some((step) => step.wet || step.waits.some((wait) => wait.wet)),
  'before dew': someWait((wait) => wait.needs.beforeDew !== undefined),
};
