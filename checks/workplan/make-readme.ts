/**
 * Writes README.md of this folder from what is stored and from a search of every stored problem now.
 *
 *     npx tsx checks/workplan/make-readme.ts
 */
import { writeFileSync } from 'node:fs';
import { ruleMeanings } from '#workplan';
import { agreement, searched, worthText } from './agreement.ts';
import { readAnswers, readKills, type StoredAnswer } from './stored-answers.ts';
import { seededProblem } from './varied-problem.ts';

const stored = readAnswers();
const kills = readKills();
if (!stored || !kills) throw new Error('make the answers first: make-answers.ts, make-rule-kills.ts');

interface Tally {
  problems: number;
  same: number;
  proved: number;
  faults: number;
}

const kindOf = ({ options }: StoredAnswer) => {
  if (options.rules) return options.rules.length > 1 ? 'rules that meet' : 'one rule often';
  return options.varied ? 'varied' : (options.size ?? 'small');
};
const tallies = new Map<string, Map<number, Tally>>();
const efforts = [50, 300, 1000];
for (const answer of stored.answers) {
  const problem = seededProblem(answer.seed, answer.options);
  for (const kind of [kindOf(answer), 'all'])
    if (!tallies.has(kind))
      tallies.set(kind, new Map(efforts.map((effort) => [effort, { problems: 0, same: 0, proved: 0, faults: 0 }])));
  for (const effort of efforts) {
    const found = agreement(problem, searched(problem, effort), answer);
    for (const kind of [kindOf(answer), 'all']) {
      const tally = tallies.get(kind)!.get(effort)!;
      tally.problems++;
      if (found.kind === 'same') tally.same++;
      if (found.kind === 'same' && found.proved) tally.proved++;
      if (found.kind === 'fault') tally.faults++;
    }
  }
}

const kindWords: Readonly<Record<string, string>> = {
  small: 'small: 3–9 steps, 1–2 days',
  tiny: 'tiny: 2–4 steps, one day',
  varied: 'varied: small, with odd corners',
  'one rule often': 'small, one rule often',
  'rules that meet': 'small, two or three rules often',
  middling: 'middling: 8–13 steps, 2–3 days',
  all: 'all',
};
const percent = (part: number, whole: number) => `${((100 * part) / whole).toFixed(1)} %`;
const agreementRows = [...tallies]
  .sort(([a], [b]) => Number(a === 'all') - Number(b === 'all'))
  .flatMap(([kind, byEffort]) =>
    [...byEffort].map(
      ([effort, { problems, same, proved, faults }]) =>
        `| ${kindWords[kind]} | ${effort} | ${problems} | ${percent(same, problems)} | ${percent(proved, problems)} | ${faults} |`,
    ),
  );
const killRows = Object.entries(kills.kills).map(([rule, rows]) => {
  const first = rows[0]!;
  return `| ${rule} | ${ruleMeanings[rule as keyof typeof ruleMeanings]} | ${rows.map(({ seed }) => seed).join(', ')} | ${worthText(first)} | ${worthText(first.without)} |`;
});

const text = `# Plans against a proved best

The planner's search is held to a second opinion: the whole plan problem as a constraint model, solved by a general
solver that proves its answers. The two share the problem, the rates of the cure laws and the dew point, which have
checks of their own, and nothing else. This page is written by \`make-readme.ts\`.

## The model

\`model.ts\` (with \`model-steps.ts\`, \`model-set-ups.ts\`, \`model-sharing.ts\`, and the tables of \`minute-tables.ts\`) turns
a problem into MiniZinc text. It is written from the trade's rules and from the meanings at the top of
\`packages/workplan/src/violations.ts\`, never from the search.

- Time is in whole minutes, as in the problem, so no grid loses a plan.
- What belongs to one step alone (job day, set-out, clear-up, breaks, place, weather, daylight, stores, what it is held
  to) is read off minute by minute into the set of starts that each length of the step may have.
- Waits are added up minute by minute into a table: end of the step → end of the wait.
- Hands have identities; for each pair of pieces of work that one hand is at, one is over before the other starts.
- Each aspect of set-up has a row of change slots, each used or not. How many slots can be needed is counted, not
  guessed; the argument stands at the top of \`model-set-ups.ts\`.
- Worth is one number: a needed job counts more than all weight, a unit of weight more than all set-up changing. A
  second run, with that fixed, finds the plan that moves least of the one before, and of those the soonest finish.

Not in it: two aspects that both shelter; aspects whose changes ask for each other's states;
weights that are not whole. It refuses these, it does not guess.

## The solver

${stored.solver}. \`general-solver.ts\` runs its WebAssembly in a Node thread; nothing is installed or fetched.

## What is compared

| check | what |
| --- | --- |
| \`general-solver.test.ts\` | the solver on models done by hand |
| \`model.test.ts\` | the model against trying all plans of tiny problems; its waits against the cure laws |
| \`live-problems.test.ts\` | 30 problems, each decided by another rule, solved while the test runs; the soonest finish too |
| \`stored-answers.test.ts\` | ${stored.answers.length} stored answers |
| \`rule-kill.test.ts\` | ${killRows.length} rules, each taken out, on at least five problems |

A fault is: a plan that breaks a rule; a plan better than the proved best (then the model is wrong); a plan said to be
proved best that is not; a job said to be impossible that is not; a bound under the best there is. No fault is allowed.
Every plan of the model is judged by \`violations\` too; and where the search finds a plan of the same worth, that plan
shows that the model's best can be had. A plan that is less good with a verdict that leaves room is not a fault, and is counted:

| problems | iterations | how many | as good as the proved best | proved by the search itself | faults |
| --- | --- | --- | --- | --- | --- |
${agreementRows.join('\n')}

## Each rule taken out

For each rule, problems whose proved best is another one without the rule (\`without-rule.ts\` says how it is taken out,
and where only in part). The test plans each with the rule and without: with it the search must agree with the
proved best, without it the plan must break the rule or be worth something else. The figures are of the first seed.
'known things' is a rule on what a plan may name; there is no problem without it.

| rule | what it asks | seeds | best with the rule | best without |
| --- | --- | --- | --- | --- |
${killRows.join('\n')}

## Making them again

\`\`\`
nice npx tsx checks/workplan/make-answers.ts
nice npx tsx checks/workplan/make-rule-kills.ts
npx tsx checks/workplan/make-readme.ts && npx biome check --write checks/workplan
\`\`\`

Each goes on where it stopped. An answer carries a digest of its problem: when the generator of small problems changes,
the tests say which answers are void, and these commands make them anew. About one second an answer on one core.
`;
writeFileSync(new URL('./README.md', import.meta.url), text);
