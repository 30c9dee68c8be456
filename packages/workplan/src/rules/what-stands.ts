/** Rules: known things, whole job, already begun, not before now, step time. */
import type { Plan, PlannedChange, PlannedStep } from '../plan.ts';
import type { Problem } from '../problem.ts';
import type { LaidPlan, Report, SoundPlan } from './laid-out.ts';

/** Puts aside, and reports, what the plan names that is not in the problem, twice, or not in whole minutes. */
export function soundParts(plan: Plan, problem: Problem, report: Report): SoundPlan {
  const stepOf = new Map(problem.steps.map((step) => [step.id, step]));
  const dayIds = new Set(problem.days.map((day) => day.id));
  const handIds = new Set(problem.hands.map((hand) => hand.id));
  const whole = (...minutes: number[]) => minutes.every((minute) => Number.isSafeInteger(minute));

  const steps = new Map<string, PlannedStep>();
  for (const planned of plan.steps) {
    const wrong = (what: string) => report('known things', what, { step: planned.step });
    const unknownHand = planned.hands.find((hand) => !handIds.has(hand));
    if (!stepOf.has(planned.step)) wrong(`there is no step ${planned.step}`);
    else if (steps.has(planned.step)) wrong(`step ${planned.step} is in the plan twice`);
    else if (!whole(planned.start, planned.finish)) wrong(`step ${planned.step} is not in whole minutes`);
    else if (!whole(planned.abrade_min) || planned.abrade_min < 0)
      wrong(`step ${planned.step} has ${planned.abrade_min} minutes of abrading; it must be a whole number from 0`);
    else if (planned.day !== null && !dayIds.has(planned.day)) wrong(`there is no job day ${planned.day}`);
    else if (unknownHand !== undefined) wrong(`there is no hand ${unknownHand}`);
    else steps.set(planned.step, planned);
  }

  const waits = new Set<string>();
  for (const planned of plan.waits) {
    const where = { step: planned.step, wait: planned.wait };
    const key = JSON.stringify([planned.step, planned.wait]);
    if (!stepOf.get(planned.step)?.waits.some((wait) => wait.id === planned.wait))
      report('known things', `step ${planned.step} has no wait ${planned.wait}`, where);
    else if (waits.has(key)) report('known things', `wait ${planned.wait} is in the plan twice`, where);
    waits.add(key);
  }

  const changes: PlannedChange[] = [];
  for (const planned of plan.changes) {
    const wrong = (what: string) => report('known things', what, { aspect: planned.aspect });
    const aspect = problem.aspects.find((candidate) => candidate.id === planned.aspect);
    const unknownHand = planned.hands.find((hand) => !handIds.has(hand));
    const known = (state: string) => aspect?.states.some(({ id }) => id === state);
    if (aspect === undefined) wrong(`there is no set-up ${planned.aspect}`);
    else if (!known(planned.from) || !known(planned.to))
      wrong(`set-up ${planned.aspect} has no state ${known(planned.from) ? planned.to : planned.from}`);
    else if (!whole(planned.start, planned.finish)) wrong(`a change of ${planned.aspect} is not in whole minutes`);
    else if (!dayIds.has(planned.day)) wrong(`there is no job day ${planned.day}`);
    else if (unknownHand !== undefined) wrong(`there is no hand ${unknownHand}`);
    else changes.push(planned);
  }

  const left = new Set<string>();
  for (const job of plan.leftOut) {
    if (!problem.jobs.some(({ id }) => id === job)) report('known things', `there is no job ${job}`, { job });
    else if (left.has(job)) report('known things', `job ${job} is left out twice`, { job });
    left.add(job);
  }
  return { steps, changes };
}

/** All open steps of a job are in the plan or none; the left-out list names, in order, the jobs with none. */
export function wholeJobs(laid: LaidPlan, report: Report): void {
  const { problem, plan } = laid;
  const open = new Map<string, { all: number; laid: number }>();
  for (const step of problem.steps) {
    if (step.progress.kind !== 'open') continue;
    const count = open.get(step.job) ?? { all: 0, laid: 0 };
    count.all++;
    if (laid.stepOf.has(step.id)) count.laid++;
    open.set(step.job, count);
  }
  for (const [job, count] of open)
    if (count.laid > 0 && count.laid < count.all)
      report('whole job', `${count.laid} of the ${count.all} open steps of ${job} are in the plan`, { job });
  const left = problem.jobs.filter(({ id }) => open.get(id)?.laid === 0).map(({ id }) => id);
  const told = plan.leftOut.filter((job) => problem.jobs.some(({ id }) => id === job));
  for (const job of left)
    if (!told.includes(job)) report('whole job', `${job} is not in the plan and not said to be left out`, { job });
  for (const job of told)
    if (!left.includes(job)) report('whole job', `${job} is said to be left out and is in the plan`, { job });
  if (left.length === told.length && left.every((job) => told.includes(job)) && left.some((job, i) => told[i] !== job))
    report('whole job', 'the jobs left out are not in the order of the problem', {});
}

/** What is done or under way stands in the plan with its own times and hands. */
export function alreadyBegun(laid: LaidPlan, report: Report, sound: SoundPlan): void {
  for (const { step, open, from, to, hands } of laid.steps) {
    if (open) continue;
    const planned = sound.steps.get(step.id);
    const where = { step: step.id };
    if (planned === undefined)
      report('already begun', `${step.title} is ${step.progress.kind} and not in the plan`, where);
    else if (planned.start !== from || planned.finish !== to)
      report(
        'already begun',
        `${step.title} ran from ${from} to ${to}, the plan has ${planned.start} to ${planned.finish}`,
        where,
        from,
      );
    else if (planned.day !== null || planned.batchOf !== null || planned.abrade_min !== 0)
      report('already begun', `${step.title} has begun: it has no job day, batch or abrading in the plan`, where);
    else if (planned.hands.length !== hands.length || hands.some((hand) => !planned.hands.includes(hand)))
      report('already begun', `${step.title} has begun with other hands than the plan says`, where);
  }
}

export function timesOfSteps(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  for (const { step, open, from, to, batchOf, abrade_min } of laid.steps) {
    if (!open) continue;
    const mixing_min = batchOf === null ? 0 : (problem.mixes.find((mix) => mix.id === step.mix)?.mixing_min ?? 0);
    const minutes = step.minutes - mixing_min + abrade_min;
    if (to - from !== minutes)
      report(
        'step time',
        `${step.title} takes ${minutes} min, the plan gives it ${to - from}`,
        { step: step.id },
        from,
      );
    if (from < problem.now)
      report('not before now', `${step.title} starts at ${from}, before now (${problem.now})`, { step: step.id }, from);
  }
  for (const { aspect, from } of laid.changes)
    if (from < problem.now)
      report(
        'not before now',
        `a change of the ${aspect.name} starts at ${from}, before now (${problem.now})`,
        { aspect: aspect.id },
        from,
      );
}
