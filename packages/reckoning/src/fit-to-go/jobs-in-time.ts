import type { Book, Day, Id, KeptPlan } from '#boat-book';
import { localAt } from '#units';

/** When the plan has a job done, against the hour an outing begins. */
export type JobInTime =
  /** the plan has its last step or wait over then */
  | { readonly kind: 'in time' | 'too late'; readonly day: Day; readonly clock: string }
  | { readonly kind: 'left out' }
  /** it was put in, or given steps, after that plan was made */
  | { readonly kind: 'not in that plan' }
  | { readonly kind: 'no plan' };

/** @param starts  the instant the outing begins */
export function jobInTime(book: Book, job: Id, plan: KeptPlan | null, starts: number, zone: string): JobInTime {
  if (plan === null) return { kind: 'no plan' };
  if (plan.plan.leftOut.includes(job)) return { kind: 'left out' };
  const open = Object.entries(book.steps).filter(([, step]) => step.job === job && step.progress.kind !== 'done');
  const planned = open.map(([id]) => plan.plan.steps.find(({ step }) => step === id));
  if (open.length === 0 || planned.some((step) => step === undefined)) return { kind: 'not in that plan' };
  const ends = [
    ...planned.map((step) => step?.finish ?? 0),
    ...plan.plan.waits.filter(({ step }) => book.steps[step]?.job === job).map(({ finish }) => finish),
  ];
  const over = Date.parse(plan.startsAt) + Math.max(...ends) * 60_000;
  const { day, clock } = localAt(over, zone);
  return { kind: over <= starts ? 'in time' : 'too late', day, clock };
}
