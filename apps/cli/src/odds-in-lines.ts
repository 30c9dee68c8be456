import type { Book } from '#boat-book';
import { planOddsInWords } from '#reckoning';
import { type Outcome, type Problem, startOdds } from '#workplan';

const mostRuns = 1000;

/**
 * How likely a plan is to be done in time, as it is printed: dates, job days, the jobs in it.
 *
 * @param elapsed  a clock that only goes forward. [ms]
 * @param most_ms  no more runs are begun after so long; the lines say how many were made
 */
export function oddsInLines(
  { plan }: Outcome,
  problem: Problem,
  {
    book,
    seed,
    elapsed,
    most_ms,
  }: { readonly book: Book; readonly seed: number; readonly elapsed: () => number; readonly most_ms: number },
): string[] {
  const run = startOdds(problem, plan, { seed });
  const ends = elapsed() + most_ms;
  let odds = run.advance(10);
  while (odds.runs < mostRuns && elapsed() < ends) odds = run.advance(10);
  const told = planOddsInWords(odds, problem, book);
  const line = ({ words, band }: { readonly words: string; readonly band: string }) => `  ${words} (${band})`;
  return [
    '',
    `Odds, from ${odds.runs} runs with seed ${seed} (in brackets: what so few runs leave open):`,
    ...told.dates.map(line),
    ...told.days.map(line),
    ...problem.jobs
      .filter(({ id }) => !plan.leftOut.includes(id))
      .flatMap(({ id, title }) => (told.jobs[id] ? [`  ${title}: ${line(told.jobs[id]).trim()}`] : [])),
  ];
}
