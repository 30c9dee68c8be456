import type { Book } from '#boat-book';
import { costOfHoldInWords, holdInWords } from '#reckoning';
import { type Outcome, type Problem, startHoldCosts } from '#workplan';

/**
 * What each hold costs.
 *
 * @param elapsed  time gone by. [ms]
 * @param most_ms  the longest to look. [ms]
 */
export function holdLines(
  outcome: Outcome,
  problem: Problem,
  {
    book,
    seed,
    elapsed,
    most_ms,
  }: { readonly book: Book; readonly seed: number; readonly elapsed: () => number; readonly most_ms: number },
): string[] {
  const run = startHoldCosts(problem, outcome, { seed });
  const ends = elapsed() + most_ms;
  let costs = run.advance(0);
  while (!costs.finished && elapsed() < ends) costs = run.advance(20);
  if (costs.of === 0) return [];
  const lines = costs.costs.map((cost) => {
    const job = book.jobs[cost.job];
    const to = (job === undefined ? null : holdInWords(book, job)) ?? 'its day';
    return `  ${job?.title ?? cost.job}: ${costOfHoldInWords(cost, problem, to).words}`;
  });
  const left = costs.of - costs.done;
  return ['', 'Held:', ...lines, ...(left > 0 ? [`  ${left} more were not looked at in the time.`] : [])];
}
