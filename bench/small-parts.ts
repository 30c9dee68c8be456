/** What is asked again and again while a plan is made or a job is put in: the judging of a plan, the reading of a line. */
import { primeReader, readLine, readWalkRound } from '#jobs';
import { startSearch, violations } from '#workplan';
import { demoBook } from '../examples/demo-book.ts';
import { pages } from '../packages/jobs/corpus/open/pages.ts';
import { keeperProblem } from './keeper-problems.ts';

export const partTimeHead = ['| what | median | worst | budget | kept |', '| --- | --- | --- | --- | --- |'];

export function partTimes(): string[] {
  const problem = keeperProblem({ jobs: 60, steps: 250, days: 8 }, 1);
  const search = startSearch(problem, { seed: 1 });
  search.advance(5);
  const { plan } = search.outcome();
  const { zones, fittings, setUps, outings } = demoBook('2026-05-08');
  const lexicon = { zones, fittings, setUps, outings, today: '2026-05-08' };
  const line = 'starboard shroud plate weeps, take off and rebed, mast down, 90 min, worsens';
  const talk = pages.map(({ page }) => page).join('\n\n');
  const walkRound = `${talk}\n\n${talk}`.split(' ').slice(0, 2000).join(' ');
  for (const _ of primeReader(lexicon));
  const from = performance.now();
  readWalkRound(walkRound, lexicon);
  const first = performance.now() - from;
  return [
    `| read the first walk-round of 2,000 words, the reader primed | ${first.toFixed(2)} ms | | 200 ms | ${first <= 200 ? 'yes' : 'NO'} |`,
    row(`judge a plan of ${plan.steps.length} steps by every rule`, 20, () => violations(plan, problem)),
    row('read a line of plain talk', 5, () => readLine(line, lexicon)),
    row('read a walk-round of 2,000 words', 200, () => readWalkRound(walkRound, lexicon)),
  ];
}

function row(what: string, budget_ms: number, call: () => unknown): string {
  for (let n = 0; n < 20; n++) call();
  const took = Array.from({ length: 60 }, () => {
    const from = performance.now();
    call();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  const median = took[30]!;
  return `| ${what} | ${median.toFixed(2)} ms | ${took.at(-1)!.toFixed(2)} ms | ${budget_ms} ms | ${median <= budget_ms ? 'yes' : 'NO'} |`;
}
