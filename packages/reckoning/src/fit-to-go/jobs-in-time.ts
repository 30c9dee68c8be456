import type { Book, Day, Id, KeptPlan } from '#boat-book';
import { localAt } from '#units';

/** When the plan has a job done, against the hour an outing begins. */
export type JobInTime =
  /** the plan has its last step or wait over then */
  | { readonly kind: 'in time' | 'too late' | 'gone by'; readonly day: Day; readonly clock: string }
  | { readonly kind: 'left out' }
  /** it was put in, or given steps, after that plan was made */
  | { readonly kind: 'not in that plan' }
  /** there is nothing of it that could be planned */
  | { readonly kind: 'no steps' }
  | { readonly kind: 'no plan' };

/**
 * @param starts  the instant the outing begins
 * @param now     the instant it is asked: what was to be over by then, and is not, has gone by
 */
export function jobInTime(
  book: Book,
  job: Id,
  plan: KeptPlan | null,
  { starts, now, zone }: { readonly starts: number; readonly now: number; readonly zone: string },
): JobInTime {
  const steps = Object.entries(book.steps).filter(([, step]) => step.job === job);
  const open = steps.filter(([, step]) => step.progress.kind !== 'done');
  if (open.length === 0) return { kind: 'no steps' };
  if (plan === null) return { kind: 'no plan' };
  if (plan.plan.leftOut.includes(job)) return { kind: 'left out' };
  const planned = open.map(([id]) => plan.plan.steps.find(({ step }) => step === id));
  if (planned.some((step) => step === undefined)) return { kind: 'not in that plan' };
  const work = Date.parse(plan.startsAt) + Math.max(...planned.map((step) => step?.finish ?? 0)) * 60_000;
  const ends = plan.plan.waits.filter(({ step }) => book.steps[step]?.job === job).map(({ finish }) => finish);
  const over = Math.max(work, ...ends.map((finish) => Date.parse(plan.startsAt) + finish * 60_000));
  const { day, clock } = localAt(over, zone);
  return { kind: work <= now ? 'gone by' : over <= starts ? 'in time' : 'too late', day, clock };
}
