/**
 * The whole plan problem as a constraint model for a general solver.
 *
 * Written from the trade's rules and from what `violations.ts` says of each, never from the search: where the two
 * give different answers one of them is wrong. Time is in whole minutes, as in the problem, so that no grid can
 * lose a plan. Weather, daylight, job days, breaks, stores, held spans and cure laws are read off minute by minute
 * into the sets of starts that each length of work may have (`minute-tables.ts`).
 */
import type { Problem, ProblemJob, Worth } from '#workplan';
import { type Draft, newDraft, type SlotTerms, type StepTerms, sumText } from './model-draft.ts';
import { setUpTerms } from './model-set-ups.ts';
import { sharingTerms } from './model-sharing.ts';
import { jobTerm, stepTerms } from './model-steps.ts';

export interface ConstraintModel {
  /** MiniZinc */
  readonly text: string;
  readonly steps: readonly StepTerms[];
  readonly changes: readonly SlotTerms[];
}

/** The worth of a plan as far as the model weighs it. Minutes and weights as in `Worth`. */
export type ModelWorth = Pick<Worth, 'missed' | 'weight' | 'setUp_min'>;

/**
 * @param problem  a sound problem; weights whole numbers
 * @param asGoodAs where given, only plans of this worth, and of them the one that moves least of `previous`, then
 *                 the one whose last open step is finished soonest
 * @returns        its model: least missed, then most weight, then least set-up changing, as one number to be made
 *                 as great as can be
 * @throws RangeError  for weights that are not whole, or too many for the solver's 32-bit numbers
 */
export function constraintModel(problem: Problem, asGoodAs?: ModelWorth): ConstraintModel {
  const draft = newDraft(problem);
  for (const index of problem.jobs.keys()) draft.variable('bool', `job_${index}`);
  const steps = stepTerms(draft);
  deadlines(draft, steps);
  const changes = setUpTerms(draft, steps);
  sharingTerms(draft, steps, changes);
  let goal = objective(draft, changes);
  if (asGoodAs) goal = steadiest(draft, steps, asGoodAs);
  return { text: draft.text(goal), steps, changes };
}

function steadiest(draft: Draft, steps: readonly StepTerms[], { missed, weight, setUp_min }: ModelWorth): string {
  const { jobs, horizon, previous } = draft.problem;
  if (previous.length * horizon * (horizon + 1) >= 2 ** 31)
    throw new RangeError('minutes moved are too many for one number');
  const sum = (some: (job: ProblemJob) => boolean) =>
    sumText(jobs.flatMap((job, index) => (some(job) ? [`${job.weight} * job_${index}`] : [])));
  const all = jobs.filter(isNeeded).reduce((total, job) => total + job.weight, 0);
  draft.rule('as good as the best, least moved, then finished soonest');
  draft.constraint(`${sum(isNeeded)} = ${all - missed}`);
  draft.constraint(`${sum(() => true)} = ${weight}`);
  draft.constraint(`setUp_min = ${setUp_min}`);
  draft.variable(`0..${horizon}`, 'last_finish');
  for (const { open, on, to } of steps) if (open) draft.constraint(`${on} -> last_finish >= ${to}`);
  const moved = steps.flatMap(({ step, open, on, from }, index) => {
    const was = previous.find((one) => one.step === step.id);
    if (!open || !was) return [];
    const term = draft.variable(`0..${horizon}`, `moved_${index}`);
    draft.constraint(`${term} = ${on} * abs(${from} - ${was.start})`);
    return [term];
  });
  draft.variable(`0..${Math.max(1, moved.length) * horizon}`, 'moved_min');
  draft.constraint(`moved_min = ${sumText(moved)}`);
  draft.variable('int', 'unrest');
  draft.constraint(`unrest = ${horizon + 1} * moved_min + last_finish`);
  return 'solve minimize unrest;';
}

const isNeeded = ({ deadline, optional }: ProblemJob) => deadline !== null || !optional;

function deadlines(draft: Draft, steps: readonly StepTerms[]): void {
  draft.rule('deadline');
  for (const job of draft.problem.jobs) {
    const own = steps.filter(({ step }) => step.job === job.id);
    const term = jobTerm(draft.problem, job.id);
    // with nothing left to lay it is in every plan, whatever its date
    if (!own.some(({ open }) => open)) draft.constraint(term);
    else if (job.deadline !== null)
      for (const { to, waits } of own) {
        draft.constraint(`${term} -> ${to} <= ${job.deadline}`);
        for (const wait of waits)
          draft.constraint(`${term} -> ${wait.over ? `${wait.to} <= ${job.deadline}` : 'false'}`);
      }
  }
}

function objective(draft: Draft, changes: readonly SlotTerms[]): string {
  const { jobs } = draft.problem;
  const total = jobs.reduce((sum, { weight }) => sum + weight, 0);
  const most_min = changes.reduce(
    (sum, { changes: kinds }) => sum + Math.max(...kinds.map(({ minutes }) => minutes)),
    0,
  );
  if (!jobs.every(({ weight }) => Number.isInteger(weight))) throw new RangeError('weights must be whole numbers');
  if ((total + 1) * (total + 1) * (most_min + 1) >= 2 ** 31)
    throw new RangeError(`weights of ${total} in all are too many for one number`);
  draft.rule('worth: a needed job counts more than all weight, a unit of weight more than all set-up changing');
  const parts = jobs.map(
    (job, index) => `${job.weight * (isNeeded(job) ? total + 2 : 1) * (most_min + 1)} * job_${index}`,
  );
  const setUp = draft.variable(`0..${most_min}`, 'setUp_min');
  draft.constraint(`${setUp} = ${sumText(changes.map(({ length }) => length))}`);
  draft.variable('int', 'worth');
  draft.constraint(`worth = ${sumText(parts)} - ${setUp}`);
  return 'solve maximize worth;';
}
