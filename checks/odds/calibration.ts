/** Many problems planned, their odds worked out, and played out; and how often what was given so much came true. */
import { chanceOf, startOdds, startSearch } from '#workplan';
import { playOut } from './play-out.ts';
import { world } from './world-problem.ts';

export interface Forecast {
  readonly seed: number;
  readonly job: string;
  /** the chance given, from 0 to 1 */
  readonly given: number;
  readonly came: boolean;
}

export interface CalibrationSize {
  /** follow-throughs for each chance */
  readonly runs: number;
  /** of the full planner: for the first plan, and for each made on the way */
  readonly first: number;
  readonly onTheWay: number;
}

/** The chances given to the jobs of one problem's plan, and what came of them. */
export function forecastsOf(seed: number, { runs, first, onTheWay }: CalibrationSize): Forecast[] {
  const of = world(seed);
  const search = startSearch(of.problem, { seed });
  search.advance(first);
  const { plan } = search.outcome();
  const odds = startOdds(of.problem, plan, { seed }).advance(runs);
  const { inTime } = playOut(of, plan, onTheWay);
  const left = new Set(plan.leftOut);
  return odds.jobs
    .filter(({ job }) => !left.has(job))
    .map(({ job, inTime: chance }) => ({ seed, job, given: chance.share, came: inTime.has(job) }));
}

export interface ReliabilityRow {
  readonly from: number;
  readonly to: number;
  readonly jobs: number;
  /** mean chance given, and share that came true; NaN where there is no job */
  readonly given: number;
  readonly came: number;
  /** what counting so few jobs leaves open about `came` */
  readonly low: number;
  readonly high: number;
}

/** How often what was given a chance in each band came true. A band up to 1 holds it. */
export function reliability(forecasts: readonly Forecast[], edges: readonly number[]): ReliabilityRow[] {
  return edges.slice(1).map((to, at) => {
    const from = edges[at]!;
    const inBand = forecasts.filter(({ given }) => given >= from && (given < to || to === 1));
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const { low, high } = chanceOf(inBand.filter(({ came }) => came).length, Math.max(1, inBand.length));
    return {
      from,
      low,
      high,
      to,
      jobs: inBand.length,
      given: mean(inBand.map(({ given }) => given)),
      came: mean(inBand.map(({ came }) => (came ? 1 : 0))),
    };
  });
}
