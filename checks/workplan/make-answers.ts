/**
 * Makes `stored-answers.json`: the proved best of more than 1,000 small and middling problems by the constraint model.
 *
 *     nice npx tsx checks/workplan/make-answers.ts [how many more at most] [again]
 *
 * What is stored and still the answer to the same problem by the same solver is kept, so a run can be stopped and
 * gone on with. A problem the solver cannot settle in a minute is named and left out.
 */

import { type Rule, rules } from '#workplan';
import { bestPlan, steadiestAmong } from './best-plan.ts';
import { solverName } from './general-solver.ts';
import { digestOf, readAnswers, type StoredAnswer, writeAnswers } from './stored-answers.ts';
import { type SeededOptions, seededProblem } from './varied-problem.ts';
import { notSwitchable } from './without-rule.ts';

const limit_ms = 60_000;

/** Rules that meet: what one asks is seldom hard without the other. */
const together: readonly (readonly Rule[])[] = [
  ['change set-up', 'set-up chain', 'wind'],
  ['change set-up', 'wait dry', 'still'],
  ['day ends in', 'set-up chain', 'deadline'],
  ['batch', 'pot life', 'deadline'],
  ['abrading', 'dust and wet', 'wait time'],
  ['not alone', 'hand present', 'deadline'],
  ['stores', 'tools', 'held'],
  ['already begun', 'held', 'wait set-up'],
  ['already begun', 'deadline', 'greatest lag'],
  ['wait dry', 'dry', 'day ends in'],
  ['comes after', 'deadline', 'hands'],
  ['room in the zone', 'hands', 'dust and wet'],
];

/** 360 small, 60 tiny, 160 varied, 6 for each rule that it comes up often in, 96 of rules that meet, 130 middling. */
function wanted(): { seed: number; options: SeededOptions }[] {
  const all: { seed: number; options: SeededOptions }[] = [];
  const take = (from: number, count: number, options: SeededOptions) => {
    for (let seed = from; seed < from + count; seed++) all.push({ seed, options });
  };
  take(0, 360, {});
  take(1000, 60, { size: 'tiny' });
  take(5000, 160, { varied: true });
  for (const [index, rule] of rules.entries())
    if (!notSwitchable.includes(rule)) take(2000 + 10 * index, 6, { rules: [rule] });
  for (const [index, some] of together.entries()) take(6000 + 10 * index, 8, { rules: some });
  take(7000, 130, { size: 'middling' });
  return all;
}

const most = Number(process.argv[2] ?? 2000);
/** also those stored without how steady and soon the best can be */
const again = process.argv[3] === 'again';
const stored = readAnswers();
const known = new Map<string, StoredAnswer>();
if (stored?.solver === solverName) for (const answer of stored.answers) known.set(keyOf(answer), answer);
let made = 0;
for (const { seed, options } of wanted()) {
  const problem = seededProblem(seed, options);
  const digest = digestOf(problem);
  const key = keyOf({ seed, options });
  const before = known.get(key);
  if ((before?.problem === digest && (before.lastFinish !== undefined || !again)) || made >= most) continue;
  made++;
  const fresh = before?.problem === digest ? before : await settled({ seed, options });
  const steadiest = fresh && (await steadiestAmong(problem, fresh, limit_ms));
  if (fresh) known.set(key, { ...fresh, ...steadiest });
  else known.delete(key);
  if (made % 20 === 0) store();
}
console.log(`${store()} answers stored, ${made} of them made or tried now`);

async function settled({ seed, options }: { seed: number; options: SeededOptions }): Promise<StoredAnswer | null> {
  const problem = seededProblem(seed, options);
  const best = await bestPlan(problem, limit_ms);
  if (best.kind === 'proved best') return { seed, options, problem: digestOf(problem), ...best.worth };
  console.log(`${keyOf({ seed, options })}: not settled in ${limit_ms / 1000} s`);
  return null;
}

function store(): number {
  const answers = wanted().flatMap((one) => known.get(keyOf(one)) ?? []);
  writeAnswers({ solver: solverName, madeBy: 'checks/workplan/make-answers.ts', answers });
  return answers.length;
}

function keyOf({ seed, options }: { readonly seed: number; readonly options: SeededOptions }): string {
  return `${seed} ${JSON.stringify(options)}`;
}
