/** How soon a whole plan stands, and how good it gets, on the demo book and on invented keeper's problems. */

import { problemFrom } from '#reckoning';
import { type Problem, startSearch, violations } from '#workplan';
import type { BesideThread } from '../apps/cli/src/beside/beside-thread.ts';
import { demoBook } from '../examples/demo-book.ts';
import { keeperProblem, keeperSizes } from './keeper-problems.ts';

export interface PlanTime {
  readonly name: string;
  readonly firstPlan_ms: number;
  readonly seconds: number;
  readonly weight: number;
  readonly missed: number;
  readonly setUp_min: number;
  readonly gap_pct: number;
  readonly verdict: string;
  readonly iterations: number;
  readonly violations: number;
}

/** The problem the demo book makes on a morning of its first job day's eve. */
export function demoProblem(): Problem {
  const matter = problemFrom(demoBook('2026-05-08'), { now: '2026-05-08T05:00:00Z' });
  if (matter.kind !== 'problem') throw new RangeError('the demo book has nothing to plan');
  return matter.problem;
}

/** @param beside  a thread that is up, to search in beside; null: one search alone */
export function planTime(name: string, problem: Problem, seconds: number, beside: BesideThread | null): PlanTime {
  // the median of five cold starts of the machine; the first of a process also pays for the code being compiled
  const firsts = Array.from({ length: 5 }, () => {
    const started = performance.now();
    startSearch(problem, { seed: 1 }).advance(1);
    return performance.now() - started;
  }).sort((a, b) => a - b);
  const started = performance.now();
  const search = startSearch(problem, { seed: 1 });
  let progress = search.advance(1);
  beside?.begin(search, problem, { seed: 1 });
  while (!progress.finished && performance.now() - started < seconds * 1000) {
    progress = search.advance(5);
    beside?.swap();
  }
  beside?.end();
  const { worth, verdict, plan } = search.outcome();
  const bound = verdict.kind === 'proved best' ? worth.weight : verdict.bound;
  return {
    name,
    firstPlan_ms: firsts[2]!,
    seconds: (performance.now() - started) / 1000,
    weight: worth.weight,
    missed: worth.missed,
    setUp_min: worth.setUp_min,
    gap_pct: bound > 0 ? (100 * (bound - worth.weight)) / bound : 0,
    verdict: verdict.kind === 'impossible, because' ? `${verdict.kind} (rest: ${verdict.rest})` : verdict.kind,
    iterations: progress.iterations,
    violations: violations(plan, problem).length,
  };
}

/** The demo and one problem of each keeper's size, for so many seconds each. */
export function planTimes(seconds: number, beside: BesideThread | null): PlanTime[] {
  return [
    planTime('demo book', demoProblem(), seconds, beside),
    ...keeperSizes.map((size) =>
      planTime(`${size.jobs} jobs, ${size.steps} steps, ${size.days} days`, keeperProblem(size, 1), seconds, beside),
    ),
  ];
}

export const planTimeHead = [
  '| problem | first plan | seconds | weight | missed | set-ups | gap | verdict | plans tried | violations |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
];

export function planTimeRow(row: PlanTime): string {
  return `| ${row.name} | ${row.firstPlan_ms.toFixed(0)} ms | ${row.seconds.toFixed(1)} | ${row.weight.toFixed(1)} | ${row.missed.toFixed(1)} | ${row.setUp_min} min | ${row.gap_pct.toFixed(1)} % | ${row.verdict} | ${row.iterations} | ${row.violations} |`;
}
