import type { KeptPlan } from '#boat-book';
import { daysBetween } from '#units';
import type { Minute, Plan, Problem } from '#workplan';
import { planInMinutesOf } from './plan-in-force.ts';
import { dayInWords, listInWords, localMinute, sentence, weekdayInWords } from './when-in-words.ts';

export interface StepMoved {
  readonly step: string;
  readonly job: string;
  /** where it was to start, in minutes of the problem; may lie before its minute 0 */
  readonly was: Minute;
  readonly now: Minute;
}

/** What is otherwise in a plan than in one before it. */
export interface PlanMoves {
  /** steps still to do that both plans have, at another time; in order of the time now */
  readonly moved: readonly StepMoved[];
  /** jobs that were in the plan before and are left out now */
  readonly out: readonly string[];
  /** jobs left out before that are in the plan now */
  readonly in: readonly string[];
}

/**
 * What moved from a plan before to a plan of this problem. What was done, begun, dropped or put in since has not moved.
 *
 * @param before  with the instant of its minute 0
 */
export function movesSince(before: Pick<KeptPlan, 'startsAt' | 'plan'>, plan: Plan, problem: Problem): PlanMoves {
  const then = planInMinutesOf(before, problem);
  const open = new Map(
    problem.steps.flatMap((step) => (step.progress.kind === 'open' ? [[step.id, step] as const] : [])),
  );
  const was = new Map(then.steps.map(({ step, start }) => [step, start]));
  const moved = plan.steps
    .flatMap(({ step, start }): StepMoved[] => {
      const [source, before] = [open.get(step), was.get(step)];
      return source === undefined || before === undefined || before === start
        ? []
        : [{ step, job: source.job, was: before, now: start }];
    })
    .sort((a, b) => a.now - b.now);
  const [outBefore, outNow] = [new Set(then.leftOut), new Set(plan.leftOut)];
  const stood = new Set([...open.values()].filter(({ id }) => was.has(id)).map(({ job }) => job));
  const jobs = problem.jobs.map(({ id }) => id);
  return {
    moved,
    out: jobs.filter((job) => outNow.has(job) && !outBefore.has(job) && stood.has(job)),
    in: jobs.filter((job) => outBefore.has(job) && !outNow.has(job)),
  };
}

export interface MovesWords {
  /** `3 things moved; left out now: …; in now: ….`; null: nothing did */
  readonly lead: string | null;
  /** `Bed the plate: 11:10 → 12:05`, in order of the time now */
  readonly each: readonly { readonly step: string; readonly words: string }[];
}

/** What moved, for a sentence above the plan and a line for each step. */
export function movesInWords(moves: PlanMoves, problem: Problem): MovesWords {
  const titles = (ids: readonly string[]) =>
    listInWords(ids.map((id) => `‘${problem.jobs.find((job) => job.id === id)?.title ?? id}’`));
  const count = moves.moved.length;
  const parts = [
    ...(count > 0 ? [`${count} ${count === 1 ? 'thing' : 'things'} moved`] : []),
    ...(moves.out.length > 0 ? [`left out now: ${titles(moves.out)}`] : []),
    ...(moves.in.length > 0 ? [`in now: ${titles(moves.in)}`] : []),
  ];
  return {
    lead: parts.length === 0 ? null : `${sentence(parts.join('; '))}.`,
    each: moves.moved.map((moved) => ({
      step: moved.step,
      words: `${problem.steps.find((step) => step.id === moved.step)?.title ?? moved.step}: ${moveInWords(moved, problem)}`,
    })),
  };
}

/** `11:10 → 12:05`; to another day `Saturday 11:10 → Sunday 09:30`, with dates where they are a week or more apart. */
export function moveInWords({ was, now }: Pick<StepMoved, 'was' | 'now'>, problem: Problem): string {
  const [before, after] = [localMinute(was, problem), localMinute(now, problem)];
  if (before.day === after.day) return `${before.clock} → ${after.clock}`;
  const named = Math.abs(daysBetween(before.day, after.day)) < 7 ? weekdayInWords : dayInWords;
  return `${named(before.day)} ${before.clock} → ${named(after.day)} ${after.clock}`;
}
