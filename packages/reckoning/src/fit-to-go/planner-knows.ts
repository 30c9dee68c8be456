import type { Book, Id, Outing } from '#boat-book';
import type { Remedy } from '#fit-to-go';
import { planInForce } from '../plan-in-force.ts';
import type { PlanOdds } from '../plan-odds-in-words.ts';
import { dayInWords } from '../when-in-words.ts';
import { jobInTime } from './jobs-in-time.ts';
import type { OutingTime } from './outing-time.ts';

/** What the planner knows by now, beyond the plan that is kept in the book. */
export interface PlannerKnows {
  /** jobs that its plan leaves out: why, and what would let each in, in whole sentences */
  readonly leftOut: Readonly<Record<Id, { readonly why: string; readonly gain: string | null }>>;
  /** null: not worked out yet */
  readonly odds: PlanOdds | null;
  /** why there is nothing to plan; null: there is */
  readonly nothing: string | null;
}

/** Whether a job is done before an outing begins, as it is planned, in whole sentences. */
export function plannedInTime(
  book: Book,
  job: Id,
  outing: Outing,
  time: OutingTime,
  knows: PlannerKnows | null,
): NonNullable<Remedy['inTime']> {
  const found = jobInTime(book, job, planInForce(book), time);
  const not = (words: string) => ({ kind: 'not in time', words }) as const;
  const noDay = Object.values(book.jobDays).some(({ date }) => date >= time.today && date <= outing.date)
    ? ''
    : ' No job day lies before it: put one in under Days.';
  switch (found.kind) {
    case 'in time':
      return { kind: 'in time', words: `The plan has it over ${dayInWords(found.day)} ${found.clock}.` };
    case 'too late':
      return not(`The plan has it over only ${dayInWords(found.day)} ${found.clock}.${noDay}`);
    case 'gone by':
      return not(`The plan had its work over ${dayInWords(found.day)} ${found.clock}, and it is not.${noDay}`);
    case 'left out': {
      const known = knows?.leftOut[job];
      return not(
        known === undefined ? `The plan leaves it out.${noDay}` : `${known.why} ${known.gain ?? ''}${noDay}`.trim(),
      );
    }
    case 'not in that plan':
      return not(`It is not in the latest plan.${noDay}`);
    case 'no steps':
      return not('It has no step left to plan.');
    case 'no plan':
      return not(`There is no plan yet.${noDay}`);
  }
}
