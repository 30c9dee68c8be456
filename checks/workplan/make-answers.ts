/**
 * Makes `stored-answers.json`: the proved best of more than 500 small problems by the constraint model.
 *
 *     nice npx tsx checks/workplan/make-answers.ts [how many more at most]
 *
 * What is stored and still the answer to the same problem by the same solver is kept, so a run can be stopped and
 * gone on with. A problem the solver cannot settle in a minute is named and left out.
 */

import { rules } from '#workplan';
import { bestPlan } from './best-plan.ts';
import { solverName } from './general-solver.ts';
import { digestOf, readAnswers, type StoredAnswer, writeAnswers } from './stored-answers.ts';
import { type SeededOptions, seededProblem } from './varied-problem.ts';
import { notSwitchable } from './without-rule.ts';

const limit_ms = 60_000;

/** 300 small, 60 tiny, 100 varied, and four for each rule that it comes up often in. */
function wanted(): { seed: number; options: SeededOptions }[] {
  const all: { seed: number; options: SeededOptions }[] = [];
  for (let seed = 0; seed < 300; seed++) all.push({ seed, options: {} });
  for (let seed = 1000; seed < 1060; seed++) all.push({ seed, options: { size: 'tiny' } });
  for (let seed = 5000; seed < 5100; seed++) all.push({ seed, options: { varied: true } });
  for (const [index, rule] of rules.entries()) {
    if (notSwitchable.includes(rule)) continue;
    for (let seed = 2000 + 10 * index; seed < 2004 + 10 * index; seed++) all.push({ seed, options: { rules: [rule] } });
  }
  return all;
}

const most = Number(process.argv[2] ?? 1000);
const stored = readAnswers();
const known = new Map<string, StoredAnswer>();
if (stored?.solver === solverName) for (const answer of stored.answers) known.set(keyOf(answer), answer);
let made = 0;
for (const { seed, options } of wanted()) {
  const problem = seededProblem(seed, options);
  const digest = digestOf(problem);
  const key = keyOf({ seed, options });
  if (known.get(key)?.problem === digest || made >= most) continue;
  made++;
  known.delete(key);
  const best = await bestPlan(problem, limit_ms);
  if (best.kind === 'proved best') known.set(key, { seed, options, problem: digest, ...best.worth });
  else console.log(`${key}: not settled in ${limit_ms / 1000} s`);
  if (made % 20 === 0) store();
}
console.log(`${store()} answers stored, ${made} of them made or tried now`);

function store(): number {
  const answers = wanted().flatMap((one) => known.get(keyOf(one)) ?? []);
  writeAnswers({ solver: solverName, madeBy: 'checks/workplan/make-answers.ts', answers });
  return answers.length;
}

function keyOf({ seed, options }: { readonly seed: number; readonly options: SeededOptions }): string {
  return `${seed} ${JSON.stringify(options)}`;
}
