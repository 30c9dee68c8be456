import type { Plan } from '../../plan.ts';
import type { Minute } from '../../problem.ts';
import type { Compiled } from '../compiled.ts';
import type { MadeChange, Taken } from '../taken.ts';

/** The changes of set-up of a plan: by aspect, in order of time, each at its minute. */
export type Frame = readonly (readonly MadeChange[])[];

/** A minute later than all there are. */
export const never: Minute = 0x3fffffff;

/** The changes made so far, as they are. */
export function frameOf({ lines }: Taken): Frame {
  return lines.map((line) => line.flatMap(({ before }) => before));
}

/** The changes of a plan that breaks no rule. */
export function frameOfPlan(plan: Plan, { problem, aspects }: Compiled): Frame {
  const indexOf = (things: readonly { readonly id: string }[]) => new Map(things.map(({ id }, index) => [id, index]));
  const [handAt, dayAt] = [indexOf(problem.hands), indexOf(problem.days)];
  return problem.aspects.map(({ id, states }, aspect) => {
    const stateAt = indexOf(states);
    return plan.changes
      .filter((made) => made.aspect === id)
      .sort((a, b) => a.start - b.start)
      .map(({ from, to, start, finish, hands, day }) => ({
        change: aspects[aspect]!.changes.find(
          (change) => change.from === stateAt.get(from) && change.to === stateAt.get(to),
        )!,
        start,
        finish,
        hands: hands.map((hand) => handAt.get(hand)!),
        day: dayAt.get(day)!,
      }));
  });
}
