import type { Book, Job } from '#boat-book';
import type { CostOfHold, Problem } from '#workplan';
import { dayInWords, lengthInWords, listInWords, weekdayInWords } from './when-in-words.ts';

export interface CostOfHoldWords {
  readonly job: string;
  /** `Holding it to Saturday costs nothing.` */
  readonly words: string;
  readonly nothing: boolean;
}

/** `Saturday`, `Saturday 14:00`; with the date where another job day is on that weekday; null: not held */
export function holdInWords(
  book: Pick<Book, 'jobDays'>,
  { heldTo, heldAt }: Pick<Job, 'heldTo' | 'heldAt'>,
): string | null {
  const day = heldTo === null ? undefined : book.jobDays[heldTo];
  if (day === undefined) return null;
  const alike = Object.values(book.jobDays).some(
    (other) => other.date !== day.date && weekdayInWords(other.date) === weekdayInWords(day.date),
  );
  return `${alike ? dayInWords(day.date) : weekdayInWords(day.date)}${heldAt === null ? '' : ` ${heldAt}`}`;
}

/**
 * What a hold costs, in a sentence: jobs left out for it with their weights, more set-up changing, a later finish.
 *
 * @param to  what it is held to, as `holdInWords` says it
 */
export function costOfHoldInWords(cost: CostOfHold, problem: Problem, to: string): CostOfHoldWords {
  const { job, held, free, lost, won, proved } = cost;
  const named = (ids: readonly string[]) =>
    listInWords(
      ids.map((id) => {
        const found = problem.jobs.find((each) => each.id === id);
        return `‘${found?.title ?? id}’ (weight ${figure(found?.weight ?? 0)})`;
      }),
    );
  const others = lost.filter((id) => id !== job);
  const parts: string[] = [];
  if (lost.includes(job))
    parts.push(`the job itself left out (weight ${figure(problem.jobs.find((each) => each.id === job)?.weight ?? 0)})`);
  if (others.length > 0) parts.push(`${named(others)} left out`);
  const sameJobs = lost.length === 0 && won.length === 0;
  if (held.setUp_min > free.setUp_min)
    parts.push(`${lengthInWords(held.setUp_min - free.setUp_min)} more of set-up changes`);
  if (sameJobs && held.setUp_min >= free.setUp_min && held.lastFinish > free.lastFinish)
    parts.push(`a finish ${lengthInWords(held.lastFinish - free.lastFinish)} later`);
  const said = proved ? '' : ', as far as was looked';
  if (parts.length === 0) return { job, words: `Holding it to ${to} costs nothing${said}.`, nothing: true };
  const instead = won.length > 0 ? `; ${named(won)} in instead` : '';
  return {
    job,
    words: `Holding it to ${to} costs${said === '' ? '' : `${said},`} ${listInWords(parts)}${instead}.`,
    nothing: false,
  };
}

const figure = (weight: number): string => String(Math.round(weight * 10) / 10);
