/**
 * What an outing needs: its jobs, whether the latest plan has them done in time, and the jury rigs it goes beyond.
 * It weighs nothing and gives no verdict: it says what was looked at and what stands against the date.
 */
import type { Book, Id, JuryRig, KeptPlan, Outing } from '#boat-book';
import { instantAt, localAt } from '#units';
import { type NamedJob, openJobs, stepsOf } from './open-work.ts';
import { zoneOf } from './today.ts';

export type JobInTime =
  /** the plan has its last step or wait over then */
  | { readonly kind: 'in time'; readonly day: string; readonly clock: string }
  | { readonly kind: 'too late'; readonly day: string; readonly clock: string }
  | { readonly kind: 'left out' }
  /** it was put in, or given steps, after that plan was made */
  | { readonly kind: 'not in that plan' }
  | { readonly kind: 'no plan' };

export interface RigBeyond {
  readonly id: Id;
  readonly rig: JuryRig;
  readonly beyond: readonly string[];
  /** when the job it stands in for is done by the plan; null: it stands in for none that is open */
  readonly jobInTime: JobInTime | null;
}

export interface OutingWork {
  readonly jobs: readonly (NamedJob & { readonly inTime: JobInTime; readonly asked: boolean })[];
  readonly rigs: readonly RigBeyond[];
  /** jury rigs that stay within their limits, as far as they are known */
  readonly within: readonly { readonly id: Id; readonly rig: JuryRig }[];
  readonly planMade: string | null;
}

/** The latest plan that was kept. */
export function latestPlan(book: Book): KeptPlan | null {
  // fixed records stand in the book in the order they were known in, oldest first
  return Object.values(book.plans).at(-1) ?? null;
}

/**
 * @param outing  one of the book's
 * @returns jobs tied to the outing, and besides them every open danger, unlawful and stops-sailing job
 */
export function outingWork(book: Book, id: Id, outing: Outing): OutingWork {
  const plan = latestPlan(book);
  const starts = instantAt(outing.date, outing.from, zoneOf(book));
  const jobs = openJobs(book)
    .filter(({ job }) => job.outing === id || ['danger', 'unlawful', 'stops-sailing'].includes(job.consequence))
    .map((named) => ({ ...named, asked: named.job.outing === id, inTime: jobInTime(book, named.id, plan, starts) }))
    .sort((a, b) => Number(b.asked) - Number(a.asked));
  const standing = Object.entries(book.juryRigs).filter(([, rig]) => rig.state === 'standing');
  const looked = standing.map(([rigId, rig]) => ({
    id: rigId,
    rig,
    beyond: beyondTrust(rig, outing),
    jobInTime: rig.job !== null && book.jobs[rig.job]?.state === 'open' ? jobInTime(book, rig.job, plan, starts) : null,
  }));
  return {
    jobs,
    rigs: looked.filter(({ beyond }) => beyond.length > 0),
    within: looked.filter(({ beyond }) => beyond.length === 0),
    planMade: plan?.made ?? null,
  };
}

function jobInTime(book: Book, job: Id, plan: KeptPlan | null, starts: number): JobInTime {
  if (plan === null) return { kind: 'no plan' };
  if (plan.plan.leftOut.includes(job)) return { kind: 'left out' };
  const open = stepsOf(book, job).filter(({ step }) => step.progress.kind !== 'done');
  const planned = open.map(({ id }) => plan.plan.steps.find((step) => step.step === id));
  if (open.length === 0 || planned.some((step) => step === undefined)) return { kind: 'not in that plan' };
  const ends = [
    ...planned.map((step) => step?.finish ?? 0),
    ...plan.plan.waits.filter((wait) => book.steps[wait.step]?.job === job).map((wait) => wait.finish),
  ];
  const over = Date.parse(plan.startsAt) + Math.max(...ends) * 60_000;
  const { day, clock } = localAt(over, zoneOf(book));
  return { kind: over <= starts ? 'in time' : 'too late', day, clock };
}

/** What the outing asks of a jury rig beyond what it is trusted for, in words. */
export function beyondTrust(rig: JuryRig, outing: Outing): readonly string[] {
  const beyond: string[] = [];
  if (rig.trustedUntil < outing.date) beyond.push('its trust is over by then');
  if (rig.wind_max_kn !== null && outing.wind_kn !== null && outing.wind_kn > rig.wind_max_kn)
    beyond.push(`it is good to ${rig.wind_max_kn} knots; ${outing.wind_kn} are expected`);
  if (rig.sails_max !== null && rig.sails_max < 1) beyond.push('it is not to be sailed with');
  if (rig.notOnRoad) beyond.push('it is not for the road, and she goes there on her trailer');
  return beyond;
}
