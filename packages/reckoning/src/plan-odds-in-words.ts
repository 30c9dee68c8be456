import type { Book, Id } from '#boat-book';
import type { Chance, Odds, Problem } from '#workplan';
import { oddsInWords } from './odds-in-words.ts';
import { dayInWords, localMinute, minuteInWords } from './when-in-words.ts';

/** One chance of a plan in a sentence, and how far counting so few runs may be off: `26 to 32`. */
export interface OddsLine {
  readonly words: string;
  /** of 100, at 95 times of 100 */
  readonly band: string;
}

/** The chances of a plan in sentences: of what each date needs as a whole, of each job day, of each job in the plan. */
export interface PlanOdds {
  readonly runs: number;
  readonly dates: readonly OddsLine[];
  readonly days: readonly OddsLine[];
  readonly jobs: Readonly<Record<Id, OddsLine>>;
  /** by outing: that all jobs that stand before it, as far as they are in the problem, are over when it begins */
  readonly outings: Readonly<Record<Id, Chance>>;
}

/**
 * Puts the odds of a plan into sentences. Jobs left out are not told of; the date that needs one has no chance and
 * says which.
 */
export function planOddsInWords(odds: Odds, problem: Problem, book: Book): PlanOdds {
  const title = (job: Id) => problem.jobs.find(({ id }) => id === job)?.title ?? job;
  const dates = odds.deadlines.map(({ deadline, jobs, allInTime }): OddsLine => {
    const outings = new Set(jobs.flatMap((job) => book.outings[book.jobs[job]?.outing ?? '']?.title ?? []));
    const what =
      jobs.length === 1
        ? `‘${title(jobs[0]!)}’ done by ${minuteInWords(deadline, problem)}`
        : outings.size === 1
          ? `Ready for ${[...outings][0]} (${jobs.length} jobs by ${minuteInWords(deadline, problem)})`
          : `All ${jobs.length} jobs due by ${minuteInWords(deadline, problem)} done`;
    return { words: `${what} in ${tries(allInTime)} of the weather and the clock`, band: band(allInTime) };
  });
  const days = odds.days.map(({ day, allDone }): OddsLine => {
    const from = problem.days.find(({ id }) => id === day)?.from ?? 0;
    const name = dayInWords(localMinute(from, problem).day);
    return { words: `All that is planned for ${name} done by its end in ${tries(allDone)}`, band: band(allDone) };
  });
  const jobs = odds.jobs.map(
    ({ job, deadline, inTime }) =>
      [
        job,
        {
          words: `${deadline === null ? 'Done within these job days' : 'Done in time'} in ${tries(inTime)}`,
          band: band(inTime),
        },
      ] as const,
  );
  return {
    runs: odds.runs,
    dates,
    days,
    jobs: Object.fromEntries(jobs),
    outings: Object.fromEntries(odds.sets.map(({ set, allInTime }) => [set, allInTime])),
  };
}

/** `29 of 100 tries` */
const tries = (chance: Chance) => `${oddsInWords(chance)} tries`;

const band = ({ low, high }: Chance) => `${Math.floor(100 * low)} to ${Math.ceil(100 * high)}`;

/** How the odds of a plan were worked out, what they rest on and what is not in them, a sentence each. */
export function oddsWorking(problem: Problem, { runs, seed }: { readonly runs: number; readonly seed: number }) {
  const first = Math.floor(problem.now / 60);
  const inDays = problem.hours.filter((_, hour) =>
    problem.days.some(({ from, to }) => from < hour * 60 + 60 && to > hour * 60),
  );
  const given = inDays.filter(({ rainOdds_pct }) => rainOdds_pct !== undefined).length;
  const said = inDays.filter(({ rainOdds_pct, basis }) => rainOdds_pct === undefined && basis !== 'climate').length;
  const spread = problem.steps.filter(
    ({ minutes, minutes_low, minutes_high }) =>
      (minutes_low ?? minutes) < minutes || (minutes_high ?? minutes) > minutes,
  ).length;
  return [
    {
      title: 'How',
      lines: [
        `The plan was followed ${runs} times from ${minuteInWords(first * 60, problem)} on, each time with other times for the steps and another sky; seed ${seed} gives the same runs again.`,
        'Where it slips by half an hour, what is left is laid again: what dates need first, then what is worth most. A set of jobs is counted together in each run; chances are not multiplied.',
        'The figures in brackets hold the chance 95 times of 100 as far as counting so many runs goes (Wilson 1927). What the model leaves out is not in them.',
      ],
    },
    {
      title: 'Times',
      lines: [
        `${spread} of ${problem.steps.length} steps have a low and a high: their time is drawn from a PERT-beta distribution (Malcolm and others 1959; λ = 4, Vose 2000; titles from memory), one time in ten outside low to high.`,
        'Steps of one day go together: correlation 0.3, our assumption. A keeper slow at one is slow at the rest.',
      ],
    },
    {
      title: 'Weather',
      lines: [
        `Of ${inDays.length} hours on job days ${given} have a chance of rain given with the weather.`,
        `${said} have weather but no chance of rain: a forecast said dry is taken to turn wet 5 times of 100 today and 3 more for each day ahead, at most 25; said wet it turns dry 15 of 100 and 5 more a day, at most 50. Our assumption.`,
        'Wet and dry hours come in spells: 0.9 from hour to hour, our assumption. Five hours at 80 % dry are all dry about 6 times of 10, where hours by themselves would make it 33 of 100.',
        'The air is off by 1.0 °C today and 0.36 °C more for each day ahead (Met Office, three-hourly temperatures within 2 °C; MetGIS, errors on days 1 to 5).',
        'Hours without weather stay as the plan takes them: cautious, and certain.',
      ],
    },
    {
      title: 'Not in it',
      lines: [
        'Set-up changes take their minutes, parts come on their day, hands stay as long as said, nobody falls ill, no new work is found. Jobs left out stay out.',
      ],
    },
  ] as const;
}
