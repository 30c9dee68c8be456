import type { Book, Id, Step, WaitRecord } from '#boat-book';
import { cureFinish } from '#materials';
import type { PlanHour, Precedence, ProblemStep, Wait } from '#workplan';
import { type CoatWait, coatWaitOf } from './coat-before-dew.ts';

/** A step of the book with its id and what must come before it. */
export interface LinkedStep {
  readonly id: Id;
  readonly record: Step;
  /** its own job's and other jobs' steps that it waits for */
  readonly links: readonly Link[];
}

export type Link = Omit<Precedence, 'after'>;

const plainLink = (before: Id, wait: Id | null): Link => ({
  before,
  wait,
  least_min: 0,
  greatest_min: null,
  past: { kind: 'forbidden' },
});

/** A step's end is the end of each of its waits; of the step itself where it has none. */
const afterAllOf = (id: Id, step: Step): Link[] =>
  step.waits.length === 0 ? [plainLink(id, null)] : step.waits.map((wait) => plainLink(id, wait.id));

/** The steps of each job, in the job's order. */
export type StepsByJob = ReadonlyMap<Id, readonly (readonly [Id, Step])[]>;

export function stepsByJob(book: Book): StepsByJob {
  const byJob = new Map<Id, [Id, Step][]>();
  for (const entry of Object.entries(book.steps)) {
    const steps = byJob.get(entry[1].job);
    if (steps) steps.push(entry);
    else byJob.set(entry[1].job, [entry]);
  }
  for (const steps of byJob.values()) steps.sort(([idA, a], [idB, b]) => a.order - b.order || (idA < idB ? -1 : 1));
  return byJob;
}

/**
 * The steps of a job with what each waits for: the step before it and all its waits, or the follows written on it;
 * the first steps also wait for the last steps of the jobs that this one comes after.
 */
export function linkedSteps(book: Book, byJob: StepsByJob, jobId: Id): LinkedStep[] {
  const steps = byJob.get(jobId) ?? [];
  const own = new Set(steps.map(([id]) => id));
  const others = (book.jobs[jobId]?.afterJobs ?? []).flatMap((other) => lastLinks(byJob, other));
  return steps.map(([id, record], index) => {
    const before = steps[index - 1];
    const links: Link[] = record.follows
      ? record.follows.map((follow) => ({
          before: follow.step,
          wait: follow.wait,
          least_min: follow.least_min,
          greatest_min: follow.greatest_min,
          past: follow.past,
        }))
      : before
        ? afterAllOf(...before)
        : [];
    const first = !links.some((link) => own.has(link.before));
    return { id, record, links: first ? [...links, ...others] : links };
  });
}

/** Links to the last steps of a job (those that no other step of it follows) and all their waits. */
function lastLinks(byJob: StepsByJob, jobId: Id): Link[] {
  const steps = byJob.get(jobId) ?? [];
  const followed = new Set<Id>();
  steps.forEach(([, step], index) => {
    if (step.follows) for (const follow of step.follows) followed.add(follow.step);
    else if (index > 0) followed.add(steps[index - 1]![0]);
  });
  return steps.filter(([id]) => !followed.has(id)).flatMap((step) => afterAllOf(...step));
}

/**
 * When the last wait of a finished step is over, in minutes after `hours[0]`; null where it is not over within them.
 *
 * @param finish  minute the step was finished. ≥ 0
 */
export function waitsOver(waits: readonly WaitRecord[], hours: readonly PlanHour[], finish: number): number | null {
  let over = finish;
  for (const wait of waits) {
    const end = cureFinish(wait.law, hours, finish).finish;
    if (end === null) return null;
    over = Math.max(over, end);
  }
  return over;
}

/** A step of the book as the planner takes it, with its progress and what it is held to filled in by the caller. */
export function problemStep(
  id: Id,
  record: Step,
  jobZone: Id | null,
  rest: Pick<ProblemStep, 'held' | 'progress'>,
): ProblemStep {
  const whole = (minutes: number) => Math.max(record.hands > 0 ? 1 : 0, Math.round(minutes));
  const minutes = whole(record.minutes.likely);
  const [low, high] = [whole(record.minutes.low), whole(record.minutes.high)];
  const coat = coatWaitOf(record);
  return {
    id,
    job: record.job,
    title: record.title,
    minutes,
    ...(low < minutes ? { minutes_low: low } : {}),
    ...(high > minutes ? { minutes_high: high } : {}),
    hands: record.hands,
    keeper: record.keeper && record.hands > 0,
    notAlone: record.notAlone,
    zone: record.zone ?? jobZone,
    needs: record.needs,
    features: record.features,
    tools: record.tools,
    setUps: record.setUps.map((need) => ({ aspect: need.setUp, states: need.states })),
    stores: record.stores,
    dusty: record.dusty,
    wet: record.wet,
    mix: record.mix,
    waits: record.waits.map((wait) => problemWait(wait, coat)),
    ...rest,
  };
}

function problemWait(record: WaitRecord, coat: CoatWait | null): Wait {
  return {
    id: record.id,
    title: record.title,
    law: record.law,
    needs: coat?.wait === record.id ? { ...record.needs, beforeDew: coat.beforeDew } : record.needs,
    setUps: record.setUps.map((need) => ({ aspect: need.setUp, states: need.states })),
    still: record.still,
    wet: record.wet,
  };
}
