/** The order of a small problem's steps, what they are held to and what of them has begun. */
import type { Hand, Precedence, ProblemDay, ProblemStep } from '#workplan';
import type { Chance } from './chance.ts';

/** Chains within jobs, and a few ties between them. */
export function someOrder(draw: Chance, steps: readonly ProblemStep[]): Precedence[] {
  const { chance, fives, often, onFives } = draw;
  const precedence: Precedence[] = [];
  const tie = (before: ProblemStep, after: ProblemStep) => {
    const greatest = often(0.25, 'greatest lag', 'abrading');
    const least_min = often(0.2, 'least lag') ? fives(5, 25) : 0;
    precedence.push({
      before: before.id,
      wait: before.waits.length > 0 && chance(0.75) ? before.waits[0]!.id : null,
      after: after.id,
      least_min,
      greatest_min: greatest ? least_min + fives(0, 30) : null,
      past:
        greatest && often(0.5, 'abrading') && !onFives
          ? { kind: 'abrade', minutes: fives(5, 15) }
          : { kind: 'forbidden' },
    });
  };
  for (let i = 1; i < steps.length; i++) {
    const [before, after] = [steps[i - 1]!, steps[i]!];
    const within = before.job === after.job;
    if (within ? chance(0.75) : often(0.12, 'comes after', 'least lag', 'greatest lag')) tie(before, after);
  }
  return precedence;
}

/** The steps, a few of them held to a time. */
export function someHeld(draw: Chance, open: readonly ProblemStep[], days: readonly ProblemDay[]): ProblemStep[] {
  const { fives, often, one } = draw;
  const steps = [...open];
  for (const [i, step] of steps.entries()) {
    if (!often(0.08, 'held')) continue;
    const day = one(days);
    const from = day.from + fives(0, 40);
    steps[i] = { ...step, held: { from, to: from + fives(step.minutes, step.minutes + 40) } };
  }
  return steps;
}

/** The steps, one or two of those that come first done or under way at `now`. */
export function someBegun(
  draw: Chance,
  open: readonly ProblemStep[],
  precedence: readonly Precedence[],
  hands: readonly Hand[],
  now: number,
): ProblemStep[] {
  const { chance, fives, tiny } = draw;
  const steps = [...open];
  const held = new Set(precedence.map((p) => p.after));
  const ready = [...steps.keys()].filter((i) => !held.has(steps[i]!.id)).slice(0, tiny ? 1 : 2);
  for (const [n, i] of ready.entries()) {
    const step = steps[i]!;
    if (n > 0 && !chance(0.5)) continue;
    const done = chance(0.5);
    const finish = now - fives(0, 15);
    const start = now - fives(0, 10);
    steps[i] = {
      ...step,
      progress: done
        ? { kind: 'done', start: finish - step.minutes, finish }
        : {
            kind: 'under way',
            start,
            expectedFinish: now + fives(0, 20),
            hands: hands.slice(0, step.hands).map((hand) => hand.id),
          },
    };
    if (!done) break;
  }
  return steps;
}
