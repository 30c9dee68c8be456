/**
 * Small problems with what `smallProblem` never makes: several waits after one step, needs that allow more than one
 * state, steps of no minutes, tools of which there are more at one time than another, hands who come twice a day,
 * breaks back to back, two recoat windows on one step, steps both dusty and wet, days that must end in several
 * set-ups. So that the rules' odd corners are compared too.
 */
import type { Precedence, Problem, ProblemStep, SetUpNeed, Wait } from '#workplan';
import type { SmallProblemOptions } from './small-problems/chance.ts';
import { smallProblem } from './small-problems.ts';

/** How a problem is made from its seed. */
export type SeededOptions = SmallProblemOptions & {
  /** with what `smallProblem` never makes; the other options do not count then */
  readonly varied?: true;
  /** waits of set times twenty times as long, so that some are not over by the horizon */
  readonly slow?: true;
};

export function seededProblem(seed: number, { varied, slow, ...options }: SeededOptions): Problem {
  const problem = varied ? variedProblem(seed) : smallProblem(seed, options);
  return slow ? slowed(problem) : problem;
}

const slowed = (problem: Problem): Problem => ({
  ...problem,
  steps: problem.steps.map((step) => ({
    ...step,
    waits: step.waits.map((wait) =>
      wait.law.kind === 'set time' ? { ...wait, law: { ...wait.law, minutes: 20 * wait.law.minutes } } : wait,
    ),
  })),
});

/**
 * @param seed  any whole number
 * @returns     `smallProblem(seed)` with about one step in three changed so
 */
function variedProblem(seed: number): Problem {
  const problem = smallProblem(seed);
  const dice = numbersFrom(seed);
  const one = <T>(of: readonly T[]): T => of[Math.floor(dice() * of.length)]!;
  const fives = (to: number) => 5 * Math.floor(dice() * (to / 5 + 1));

  const anyNeed = (): SetUpNeed[] => {
    if (problem.aspects.length === 0) return [];
    const { id, states } = one(problem.aspects);
    const first = one(states).id;
    const rest = states.filter((state) => state.id !== first && (states.length > 2 || dice() < 0.3)).slice(0, 1);
    return [{ aspect: id, states: [first, ...rest.map((state) => state.id)] }];
  };
  const anotherWait = (step: ProblemStep): Wait => ({
    id: `${step.id}-another`,
    title: 'another wait',
    law: one<Wait['law']>([
      { kind: 'never cures', from: 'our assumption' },
      { kind: 'set time', minutes: fives(90), from: 'our assumption' },
      {
        kind: 'reacts',
        atReference_min: 10 + fives(300),
        reference_C: 15,
        doublesPer_C: 8,
        minimum_C: 4,
        from: 'our assumption',
      },
    ]),
    needs: dice() < 0.4 ? { dry: true } : {},
    setUps: dice() < 0.4 ? anyNeed() : [],
    still: problem.aspects.filter(() => dice() < 0.2).map(({ id }) => id),
    wet: dice() < 0.4,
  });
  const changed = (step: ProblemStep): ProblemStep => {
    let next = step;
    if (dice() < 0.3) next = { ...next, waits: [...next.waits, anotherWait(step)] };
    if (dice() < 0.2) next = { ...next, setUps: anyNeed() };
    if (dice() < 0.15) next = { ...next, dusty: true, wet: true };
    if (dice() < 0.1) next = { ...next, minutes: 0, hands: 0, keeper: false, notAlone: false, mix: null };
    if (dice() < 0.15 && problem.tools.length > 0) next = { ...next, tools: [{ tool: 'drill', count: 2 }] };
    return next;
  };
  const steps = problem.steps.map((step) => (step.progress.kind === 'open' ? changed(step) : step));

  const [first] = problem.days;
  const noon = first!.from + 30 + fives(40);
  const tools = problem.tools.map((tool) => ({
    ...tool,
    capacity: [
      { from: 0, to: noon, count: 2 },
      { from: noon, to: problem.horizon, count: dice() < 0.5 ? 1 : 3 },
    ],
  }));
  const hands = problem.hands.map((hand) => {
    if (dice() < 0.7) return hand;
    const gap = { from: noon, to: noon + (dice() < 0.3 ? 0 : 10) };
    return {
      ...hand,
      present: hand.present.flatMap((span) =>
        span.from < gap.from && gap.to < span.to
          ? [
              { from: span.from, to: gap.from },
              { from: gap.to, to: span.to },
            ]
          : [span],
      ),
    };
  });
  const days = problem.days.map((day) => {
    const back = day.breaks[0];
    const breaks = back && dice() < 0.5 ? [back, { from: back.to, to: back.to + 5 }] : day.breaks;
    const several = dice() < 0.25;
    const endsIn = several
      ? problem.aspects.map(({ id, states }) => ({ aspect: id, state: one(states).id }))
      : day.endsIn;
    return { ...day, breaks, endsIn };
  });

  const precedence = [...problem.precedence];
  for (const [at, after] of steps.entries()) {
    const before = steps[at - 2];
    if (!before || after.progress.kind !== 'open' || dice() > 0.15) continue;
    const past: Precedence['past'] = dice() < 0.7 ? { kind: 'abrade', minutes: 5 + fives(15) } : { kind: 'forbidden' };
    const wait = before.waits.at(-1)?.id ?? null;
    precedence.push({ before: before.id, wait, after: after.id, least_min: 0, greatest_min: fives(20), past });
  }
  return { ...problem, steps, tools, hands, days, precedence };
}

/** Numbers in [0, 1), the same for a seed everywhere: multiplication by a full-period factor modulo 2³¹ − 1. */
function numbersFrom(seed: number): () => number {
  let state = (Math.abs(seed) % 2147483646) + 1;
  const next = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let warm = 0; warm < 8; warm++) next();
  return next;
}
