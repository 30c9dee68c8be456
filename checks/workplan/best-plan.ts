/** The best plan of a problem by the constraint model, as a `Plan` like any other, so that it can be judged alike. */
import type { Plan, PlannedChange, PlannedStep, PlannedWait, Problem } from '#workplan';
import { violations, worthOf } from '#workplan';
import { solveModel } from './general-solver.ts';
import { waitFinish } from './minute-tables.ts';
import { type ConstraintModel, constraintModel, type ModelWorth } from './model.ts';
import type { StepTerms } from './model-draft.ts';

export type ModelAnswer =
  | { readonly kind: 'proved best'; readonly plan: Plan; readonly worth: ModelWorth }
  | { readonly kind: 'out of time' };

/** What ranks plans of the same missed, weight and set-up minutes: the first, then the second. */
export interface Steadiest {
  /** minutes by which open steps of the plan start elsewhere than in `problem.previous`, summed */
  readonly moved_min: number;
  /** when the last open step is finished, minute of the problem; 0 where there is none */
  readonly lastFinish: number;
}

/**
 * The best plan there is, proved: none misses less, does more weight, or does the same with less set-up changing.
 *
 * @param problem       a sound problem with whole weights
 * @param timeLimit_ms  for the solver
 * @throws Error        where its plan breaks a rule, or not even the plan that leaves all out is one: the model is wrong
 */
export async function bestPlan(problem: Problem, timeLimit_ms: number): Promise<ModelAnswer> {
  const model = constraintModel(problem);
  const answer = await solveModel(model.text, { timeLimit_ms });
  if (answer.kind === 'unsatisfiable') throw new Error('the model has no plan at all, though leaving all out is one');
  if (answer.kind === 'out of time') return { kind: 'out of time' };
  const plan = planFrom(problem, model, answer.values);
  const broken = violations(plan, problem)[0];
  if (broken) throw new Error(`the model's plan breaks '${broken.rule}': ${broken.what}`);
  const { missed, weight, setUp_min } = worthOf(plan, problem);
  return { kind: 'proved best', plan, worth: { missed, weight, setUp_min } };
}

/**
 * Of the plans of the best worth, the one that moves least of the plan before, and then finishes soonest.
 *
 * @returns  null where the solver runs out of time
 */
export async function steadiestAmong(problem: Problem, best: ModelWorth, limit_ms: number): Promise<Steadiest | null> {
  const answer = await solveModel(constraintModel(problem, best).text, { timeLimit_ms: limit_ms });
  if (answer.kind === 'unsatisfiable') throw new Error('the model has no plan as good as its own best');
  if (answer.kind === 'out of time') return null;
  return { moved_min: Number(answer.values.moved_min), lastFinish: Number(answer.values.last_finish) };
}

function planFrom(problem: Problem, model: ConstraintModel, values: Readonly<Record<string, unknown>>): Plan {
  const numberOf = (term: string) => (term in values ? Number(values[term]) : Number(term));
  const isTrue = (term: string) => term === 'true' || values[term] === true;
  const handsOf = (terms: readonly string[]) => problem.hands.filter((_, at) => isTrue(terms[at]!)).map(({ id }) => id);
  const dayAt = (minute: number) =>
    problem.days.find(({ from, to, clearUp_min }) => from <= minute && minute <= to - clearUp_min)?.id ?? null;

  const steps: PlannedStep[] = [];
  const waits: PlannedWait[] = [];
  for (const [index, terms] of model.steps.entries()) {
    if (!isTrue(terms.on)) continue;
    const [start, finish] = [numberOf(terms.from), numberOf(terms.to)];
    steps.push({
      step: terms.step.id,
      start,
      finish,
      hands: handsOf(terms.hands),
      day: terms.open ? dayAt(start) : null,
      batchOf: batchOf(model.steps, index, isTrue),
      abrade_min: numberOf(terms.abrade),
    });
    for (const { wait } of terms.waits) {
      const { finish: over, tooCold } = waitFinish(problem, wait, finish);
      waits.push({ step: terms.step.id, wait: wait.id, start: finish, finish: over ?? problem.horizon, tooCold });
    }
  }
  const changes: PlannedChange[] = model.changes
    .filter(({ kind }) => numberOf(kind) > 0)
    .map(({ kind, aspect, changes: kinds, from, to, hands }) => {
      const change = kinds[numberOf(kind) - 1]!;
      const start = numberOf(from);
      return {
        aspect: aspect.id,
        from: change.from,
        to: change.to,
        start,
        finish: numberOf(to),
        hands: handsOf(hands),
        day: dayAt(start)!,
      };
    });
  const leftOut = problem.jobs.filter((_, index) => values[`job_${index}`] !== true).map(({ id }) => id);
  return { steps, waits, changes, leftOut };
}

const batchOf = (steps: readonly StepTerms[], user: number, isTrue: (term: string) => boolean): string | null =>
  steps.find((_, other) => isTrue(`batch_${user}_${other}`))?.step.id ?? null;
