import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Plan,
  type PlannedChange,
  type PlannedStep,
  type Problem,
  type Rule,
  startSearch,
  violations,
} from '#workplan';
import { breachesByTheMinute } from './minute-by-minute.ts';
import { smallProblem } from './small-problems.ts';

/** A problem and a plan of it that keeps every rule, with something in it. */
function goodPlans(count: number): { problem: Problem; plan: Plan; seed: number }[] {
  const good = [];
  for (let seed = 5000; good.length < count; seed++) {
    const problem = smallProblem(seed);
    const search = startSearch(problem, { seed: 1 });
    search.advance(20);
    const { plan } = search.outcome();
    if (isOpen(problem, plan).length > 0) good.push({ problem, plan, seed });
  }
  return good;
}

function isOpen(problem: Problem, plan: Plan): PlannedStep[] {
  const open = new Set(problem.steps.filter(({ progress }) => progress.kind === 'open').map(({ id }) => id));
  return plan.steps.filter(({ step }) => open.has(step));
}

const good = goodPlans(60);
const broken = (plan: Plan, problem: Problem) => violations(plan, problem).map(({ rule }) => rule);

/** Each edit of the step that breaks the rule, whatever the plan. */
const stepEdits: readonly [string, Rule, (step: PlannedStep, problem: Problem) => PlannedStep | null][] = [
  ['a minute longer', 'step time', (step) => ({ ...step, finish: step.finish + 1 })],
  ['a minute shorter', 'step time', (step) => ({ ...step, finish: step.finish - 1 })],
  ['from a quarter past a minute', 'known things', (step) => ({ ...step, start: step.start + 0.25 })],
  ['by a hand unknown', 'known things', (step) => ({ ...step, hands: [...step.hands, 'a stranger'] })],
  ['by one hand fewer', 'hands', (step) => (step.hands.length === 0 ? null : { ...step, hands: step.hands.slice(1) })],
  [
    'by one hand twice',
    'hands',
    (step) => (step.hands.length === 0 ? null : { ...step, hands: [...step.hands, step.hands[0]!] }),
  ],
  ['on no day', 'job day', (step) => ({ ...step, day: null })],
  [
    'abraded without need',
    'abrading',
    (step) => ({ ...step, abrade_min: step.abrade_min + 1, finish: step.finish + 1 }),
  ],
  ['with a batch of its own', 'batch', (step) => ({ ...step, batchOf: step.step })],
  [
    'a day before it all',
    'job day',
    (step) => ({ ...step, start: step.start - 1440 * 4, finish: step.finish - 1440 * 4 }),
  ],
  [
    'on the other day',
    'job day',
    (step, problem) => {
      const other = problem.days.find(({ id }) => id !== step.day);
      return other === undefined ? null : { ...step, day: other.id };
    },
  ],
];

describe('an edit of a good plan is caught', () => {
  it.each(stepEdits)('a step %s: %s', (_, rule, edit) => {
    let edited = 0;
    for (const { problem, plan, seed } of good)
      for (const step of isOpen(problem, plan)) {
        const wrong = edit(step, problem);
        if (wrong === null) continue;
        edited++;
        const steps = plan.steps.map((planned) => (planned === step ? wrong : planned));
        expect(broken({ ...plan, steps }, problem), `seed ${seed}, ${step.step}`).toContain(rule);
      }
    expect(edited).toBeGreaterThan(30);
  });

  it('a step taken out or put in twice: whole job, known things', () => {
    for (const { problem, plan, seed } of good)
      for (const step of isOpen(problem, plan)) {
        const without = { ...plan, steps: plan.steps.filter((planned) => planned !== step) };
        expect(broken(without, problem), `seed ${seed}`).toContain('whole job');
        expect(broken({ ...plan, steps: [...plan.steps, step] }, problem), `seed ${seed}`).toContain('known things');
      }
  });

  it('a job said to be left out that is not, or the other way round: whole job', () => {
    for (const { problem, plan, seed } of good) {
      const laid = isOpen(problem, plan).map(({ step }) => problem.steps.find(({ id }) => id === step)!.job);
      const more = { ...plan, leftOut: [...plan.leftOut, laid[0]!] };
      expect(broken(more, problem), `seed ${seed}`).toContain('whole job');
      if (plan.leftOut.length > 0)
        expect(broken({ ...plan, leftOut: plan.leftOut.slice(1) }, problem), `seed ${seed}`).toContain('whole job');
    }
  });

  it('a wait taken out, moved, cut short or said to be too cold: wait time', () => {
    let edited = 0;
    for (const { problem, plan, seed } of good)
      for (const wait of plan.waits) {
        edited++;
        const others = plan.waits.filter((planned) => planned !== wait);
        for (const waits of [
          others,
          [...others, { ...wait, finish: wait.finish - 1 }],
          [...others, { ...wait, start: wait.start + 1, finish: wait.finish + 1 }],
          [...others, { ...wait, tooCold: !wait.tooCold }],
        ])
          expect(broken({ ...plan, waits }, problem), `seed ${seed}`).toContain('wait time');
      }
    expect(edited).toBeGreaterThan(30);
  });

  const changeEdits: readonly [string, Rule, (change: PlannedChange) => PlannedChange][] = [
    ['a minute longer', 'set-up chain', (change) => ({ ...change, finish: change.finish + 1 })],
    ['the wrong way', 'set-up chain', (change) => ({ ...change, from: change.to, to: change.from })],
    ['by nobody', 'keeper', (change) => ({ ...change, hands: [] })],
    ['to a state unknown', 'known things', (change) => ({ ...change, to: 'half way' })],
  ];
  it.each(changeEdits)('a set-up change %s: %s', (_, rule, edit) => {
    let edited = 0;
    for (const { problem, plan, seed } of good)
      for (const change of plan.changes) {
        edited++;
        const changes = plan.changes.map((planned) => (planned === change ? edit(change) : planned));
        expect(broken({ ...plan, changes }, problem), `seed ${seed}`).toContain(rule);
      }
    expect(edited).toBeGreaterThan(5);
  });
});

describe('a plan moved about', () => {
  it('breaks just the rules that a count minute by minute finds broken', () => {
    const moved = fc.record({
      which: fc.nat(good.length - 1),
      moves: fc.array(fc.record({ step: fc.nat(20), by: fc.integer({ min: -40, max: 40 }), hand: fc.nat(3) }), {
        minLength: 1,
        maxLength: 4,
      }),
    });
    const seen = new Set<Rule>();
    fc.assert(
      fc.property(moved, ({ which, moves }) => {
        const { problem, plan } = good[which]!;
        const steps = [...plan.steps];
        for (const { step, by, hand } of moves) {
          const at = step % steps.length;
          const planned = steps[at]!;
          if (planned.day === null) continue;
          const hands = planned.hands.length === 1 ? [problem.hands[hand % problem.hands.length]!.id] : planned.hands;
          steps[at] = { ...planned, start: planned.start + by, finish: planned.finish + by, hands };
        }
        const judged = new Set(broken({ ...plan, steps }, problem));
        const counted = breachesByTheMinute({ ...plan, steps }, problem);
        for (const [rule, isBroken] of counted) {
          if (isBroken) seen.add(rule);
          expect(judged.has(rule), rule).toBe(isBroken);
        }
      }),
      { numRuns: 600, seed: 20261125 },
    );
    // each of the rules counted came up broken at least once
    expect([...seen].sort()).toEqual([...breachesByTheMinute(good[0]!.plan, good[0]!.problem).keys()].sort());
  });
});

describe('a plan that is nonsense', () => {
  const word = fc.constantFrom(
    'keeper',
    'hand-1',
    'job-1',
    'job-1-step-1',
    'job-2-step-1',
    'mast',
    'up',
    'down',
    'day-1',
    '',
    '__proto__',
    'x',
  );
  const figure = fc.oneof(
    fc.integer({ min: -10_000, max: 10_000 }),
    fc.double(),
    fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.MAX_SAFE_INTEGER, -1e300),
  );
  const maybe = fc.option(word, { nil: null });
  const nonsense: fc.Arbitrary<Plan> = fc.record({
    steps: fc.array(
      fc.record({
        step: word,
        start: figure,
        finish: figure,
        hands: fc.array(word),
        day: maybe,
        batchOf: maybe,
        abrade_min: figure,
      }),
    ),
    waits: fc.array(
      fc.record({
        step: word,
        wait: fc.constantFrom('job-1-step-1-wait', 'x'),
        start: figure,
        finish: figure,
        tooCold: fc.boolean(),
      }),
    ),
    changes: fc.array(
      fc.record({
        aspect: word,
        from: word,
        to: word,
        start: figure,
        finish: figure,
        hands: fc.array(word),
        day: word,
      }),
    ),
    leftOut: fc.array(word),
  });

  it('is judged and never thrown on', () => {
    fc.assert(
      fc.property(fc.nat(200), nonsense, (seed, plan) => {
        expect(Array.isArray(violations(plan, smallProblem(seed)))).toBe(true);
      }),
      { numRuns: 500, seed: 20261125 },
    );
  });
});
