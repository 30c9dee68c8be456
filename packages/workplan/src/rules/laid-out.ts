/**
 * A plan laid over its problem: what the rules are judged on. What the plan names wrongly has been put aside (and
 * is reported under 'known things'); what is done or under way stands as the problem has it, whatever the plan says.
 */
import type { Plan, PlannedChange, PlannedStep } from '../plan.ts';
import type {
  Minute,
  MinuteSpan,
  Problem,
  ProblemDay,
  ProblemStep,
  SetUpAspect,
  SetUpChange,
  SetUpNeed,
  Wait,
} from '../problem.ts';
import type { Rule, Violation } from '../rules.ts';
import { waitAfter } from '../wait-after.ts';
import { overlap } from './spans.ts';

export interface LaidStep extends MinuteSpan {
  readonly step: ProblemStep;
  /** not begun by `now`: the plan may lay it as it likes */
  readonly open: boolean;
  readonly hands: readonly string[];
  readonly day: ProblemDay | null;
  readonly batchOf: string | null;
  readonly abrade_min: number;
}

export interface LaidWait extends MinuteSpan {
  readonly of: LaidStep;
  readonly wait: Wait;
  /** false: it is not over by the horizon, where it is taken to stand until then */
  readonly over: boolean;
  readonly tooCold: boolean;
}

export interface LaidChange extends MinuteSpan {
  readonly aspect: SetUpAspect;
  readonly planned: PlannedChange;
  /** the change as the aspect lists it; null: there is no such change */
  readonly listed: SetUpChange | null;
  readonly day: ProblemDay;
}

/** A stretch over which an aspect stands in one state; null while it is being changed. */
export interface Standing extends MinuteSpan {
  readonly state: string | null;
}

export interface LaidPlan {
  readonly problem: Problem;
  readonly plan: Plan;
  /** every step that is done, under way or in the plan */
  readonly steps: readonly LaidStep[];
  readonly stepOf: ReadonlyMap<string, LaidStep>;
  readonly waits: readonly LaidWait[];
  readonly changes: readonly LaidChange[];
  /** from long before minute 0 to long after the horizon */
  readonly standing: ReadonlyMap<string, readonly Standing[]>;
}

export type Report = (rule: Rule, what: string, where: Violation['where'], minute?: Minute) => void;

export function layOut(plan: Plan, problem: Problem, sound: SoundPlan): LaidPlan {
  const dayOf = new Map(problem.days.map((day) => [day.id, day]));
  const steps: LaidStep[] = [];
  for (const step of problem.steps) {
    const { progress } = step;
    if (progress.kind === 'open') {
      const planned = sound.steps.get(step.id);
      if (planned === undefined) continue;
      steps.push({
        step,
        open: true,
        from: planned.start,
        to: planned.finish,
        hands: planned.hands,
        day: planned.day === null ? null : (dayOf.get(planned.day) ?? null),
        batchOf: planned.batchOf,
        abrade_min: planned.abrade_min,
      });
    } else {
      const to = progress.kind === 'done' ? progress.finish : progress.expectedFinish;
      const hands = progress.kind === 'done' ? [] : progress.hands;
      steps.push({ step, open: false, from: progress.start, to, hands, day: null, batchOf: null, abrade_min: 0 });
    }
  }
  const waits = steps.flatMap((of) =>
    of.step.waits.map((wait): LaidWait => {
      const { finish, tooCold } = waitAfter(wait, of.to, problem.hours);
      return { of, wait, from: of.to, to: finish ?? problem.horizon, over: finish !== null, tooCold };
    }),
  );
  const aspectOf = new Map(problem.aspects.map((aspect) => [aspect.id, aspect]));
  const changes = sound.changes
    .map((planned): LaidChange => {
      const aspect = aspectOf.get(planned.aspect)!;
      const listed = aspect.changes.find(({ from, to }) => from === planned.from && to === planned.to) ?? null;
      return { aspect, planned, listed, day: dayOf.get(planned.day)!, from: planned.start, to: planned.finish };
    })
    .sort((a, b) => a.from - b.from || a.to - b.to);
  const standing = new Map(problem.aspects.map((aspect) => [aspect.id, standingOf(aspect, changes)]));
  return { problem, plan, steps, stepOf: new Map(steps.map((laid) => [laid.step.id, laid])), waits, changes, standing };
}

/** The parts of a plan that name only known things, once, in whole minutes. */
export interface SoundPlan {
  readonly steps: ReadonlyMap<string, PlannedStep>;
  readonly changes: readonly PlannedChange[];
}

function standingOf(aspect: SetUpAspect, changes: readonly LaidChange[]): Standing[] {
  const standing: Standing[] = [];
  let state = aspect.initial;
  let from = Number.NEGATIVE_INFINITY;
  for (const change of changes) {
    if (change.aspect !== aspect) continue;
    standing.push({ from, to: change.from, state });
    standing.push({ from: change.from, to: change.to, state: null });
    state = change.planned.to;
    from = change.to;
  }
  standing.push({ from, to: Number.POSITIVE_INFINITY, state });
  return standing;
}

/** The first minute of a span at which a set-up need does not hold; null when it holds throughout. */
export function firstUnmetSetUp(need: SetUpNeed, span: MinuteSpan, laid: LaidPlan): Minute | null {
  for (const stretch of laid.standing.get(need.aspect) ?? []) {
    if (!overlap(stretch, span)) continue;
    if (stretch.state === null || !need.states.includes(stretch.state)) return Math.max(stretch.from, span.from);
  }
  return null;
}

/** True when the aspect stands, at `now`, in one of the states. */
export function standsNow(need: SetUpNeed, problem: Problem): boolean {
  return problem.aspects.some((aspect) => aspect.id === need.aspect && need.states.includes(aspect.initial));
}
