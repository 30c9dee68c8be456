/**
 * Writes checks/odds/README.md: the reliability of the odds over seeded problems of the world.
 * Run: nice npx tsx checks/odds/make-calibration.ts  (some minutes; two numbers after it: other seeds, printed and not written)
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { markdownTable } from '../markdown-table.ts';
import { type Forecast, forecastsOf, reliability } from './calibration.ts';

/** Seeds that nothing was tried on while the model was made (those were 9001 to 9220, and 1 to 400 for a first look). */
const asked = process.argv.slice(2).map(Number);
const [firstSeed, lastSeed] = asked.length === 2 ? [asked[0]!, asked[1]!] : [20_001, 20_400];
const size = { runs: 300, first: 150, onTheWay: 30 };

const forecasts: Forecast[] = [];
for (let seed = firstSeed; seed <= lastSeed; seed++) forecasts.push(...forecastsOf(seed, size));

const pct = (share: number) => (Number.isNaN(share) ? '–' : (100 * share).toFixed(1));
const rowsOf = (edges: readonly number[]) =>
  reliability(forecasts, edges).map(({ from, to, jobs, given, came, low, high }) => [
    `${Math.round(100 * from)} to ${Math.round(100 * to)}`,
    String(jobs),
    pct(given),
    pct(came),
    jobs === 0 ? '–' : `${pct(low)} to ${pct(high)}`,
  ]);
const brier = forecasts.reduce((sum, { given, came }) => sum + (given - (came ? 1 : 0)) ** 2, 0) / forecasts.length;
const base = forecasts.filter(({ came }) => came).length / forecasts.length;
const head = [
  { head: 'chance given, of 100' },
  ...['jobs', 'mean given', 'came true, of 100', 'counting alone'].map((name) => ({
    head: name,
    right: true as const,
  })),
];
const table = (edges: readonly number[]) => markdownTable(head, rowsOf(edges)).join('\n');

const page = `# Odds, held against a world of its own

Is what is given 80 of 100 done in time 80 times of 100? \`world-problem.ts\` and \`world-weather.ts\` make problems
with a truth behind them that the odds know nothing of, \`play-out.ts\` lets the truth happen while the full planner
plans again whenever something is other than planned, and \`calibration.ts\` counts.

|               | the odds' model                                      | the world                                                                        |
| ------------- | ---------------------------------------------------- | -------------------------------------------------------------------------------- |
| a step's time | PERT-beta from low, likely, high                     | lognormal, its spread from step to step another                                  |
| the day       | steps of a day go together (0.3)                     | slow and quick days, one in eight a quarter slower                               |
| the keeper    | right on the whole                                   | out by some 8 % the same way all over                                            |
| rain          | a slow normal quantity under the chance of each hour | fronts that come at any time and last as they like                               |
| the forecast  | as it stands when the odds are worked out            | made again every hour; fronts moved, missed, made up, the more the further ahead |
| air           | off by a slow error                                  | air masses that change by steps                                                  |
| replanning    | the plan moved later, then a few lists               | the full search, ${size.onTheWay} tries each time                                              |

Seeds ${firstSeed} to ${lastSeed}: ${lastSeed - firstSeed + 1} problems, ${forecasts.length} jobs in their first plans, ${size.runs} runs for each problem's odds,
${size.first} tries for each first plan. Nothing was tried on these seeds while the model was made.

${table([0.75, 0.85])}

The whole table:

${table([0, 0.05, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95, 1])}

‘Counting alone’ is the band of 95 of 100 for so few jobs (jobs of one problem share its sky, so it is rather wider).
All jobs together: given ${pct(forecasts.reduce((sum, { given }) => sum + given, 0) / forecasts.length)}, came true ${pct(base)}. Brier score ${brier.toFixed(4)}; the share that came true, said of every job,
would score ${(base * (1 - base)).toFixed(4)}.

What is off, and why: low chances are rather too low and high ones too high, because where not all fits, the full planner
and the cheap replanning give up different jobs of much the same worth. A set of jobs with one date is simulated
jointly, never multiplied. All this is left as it is: to mend it by a factor would be to fit the world made here.
`;
if (asked.length === 2) process.stdout.write(page);
else writeFileSync(fileURLToPath(new URL('README.md', import.meta.url)), page);
