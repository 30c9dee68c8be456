import { assumedArrival_clock, gainInWords, leastInWords, wayInWords } from '#reckoning';
import { type Outcome, type Problem, type Reasons, startReasons } from '#workplan';
import type { Surroundings } from './surroundings.ts';

/**
 * The changes that would let in what is left out, each seen to work, and the one that gains most. Says so where the
 * time was over before all had been looked at.
 *
 * @param most_ms  the longest it may take. [ms]
 */
export function reasonsInLines(
  outcome: Outcome,
  problem: Problem,
  {
    seed,
    elapsed,
    most_ms,
  }: { readonly seed: number; readonly elapsed: Surroundings['elapsed']; readonly most_ms: number },
): string[] {
  if (outcome.plan.leftOut.length === 0) return [];
  const run = startReasons(problem, outcome, { seed, arrival_clock: assumedArrival_clock });
  const ends = elapsed() + most_ms;
  let reasons: Reasons = run.advance(1);
  while (!reasons.finished && elapsed() < ends) reasons = run.advance(20);
  const lines = ['', 'What would let them in, one change at a time:'];
  if (reasons.better !== null) {
    const { leftOut } = reasons.better;
    const more = outcome.plan.leftOut.filter((id) => !leftOut.includes(id)).map((id) => `'${titleOf(id, problem)}'`);
    return [...lines, `  No change: a longer search finds room for ${more.join(' and ')}. Give it more --seconds.`];
  }
  for (const { job, ways, finished } of reasons.ways) {
    lines.push(`  ${titleOf(job, problem)}`);
    for (const way of ways) lines.push(`    ${[wayInWords(way, problem), leastInWords(way) ?? ''].join(' ').trim()}`);
    if (ways.length > 0) continue;
    lines.push(
      finished
        ? '    No single change that was looked at would let it in beside the rest.'
        : '    Not looked at to the end: the time was over. Give it more --seconds.',
    );
  }
  if (reasons.gain !== null)
    lines.push('', 'What would gain most:', `  ${gainInWords(reasons.gain, problem, outcome.worth.weight)}`);
  return lines;
}

function titleOf(job: string, problem: Problem): string {
  return problem.jobs.find(({ id }) => id === job)?.title ?? job;
}
