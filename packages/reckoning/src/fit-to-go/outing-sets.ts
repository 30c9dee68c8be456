import type { Book } from '#boat-book';
import { instantAt } from '#units';
import type { Problem, WantedSet } from '#workplan';
import { jobsOfOuting } from './job-findings.ts';

/** For each outing that has not begun the jobs that stand before it, as far as the problem has them: its chance is asked for. */
export function outingSets(book: Book, problem: Problem): readonly WantedSet[] {
  const planned = new Set(problem.jobs.map(({ id }) => id));
  return Object.entries(book.outings).flatMap(([id, outing]): readonly WantedSet[] => {
    const starts = instantAt(outing.date, outing.from, problem.timeZone);
    const by = Math.floor((starts - Date.parse(problem.startsAt)) / 60_000);
    const jobs = jobsOfOuting(book, id, outing).flatMap(([job]) => (planned.has(job) ? [job] : []));
    return by <= problem.now || jobs.length === 0 ? [] : [{ id, jobs, by }];
  });
}
