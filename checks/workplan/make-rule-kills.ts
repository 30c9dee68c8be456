/**
 * Makes `rule-kill.json`: for each rule, small problems whose proved best plan is another one when the rule is left
 * out, by the constraint model on both sides.
 *
 *     nice npx tsx checks/workplan/make-rule-kills.ts [rules to look at, parted by commas]
 *
 * The search only picks out likely seeds, so that the solver need not be asked about each; what is stored is the
 * model's. Rows that are still right are kept, so a run can be stopped and gone on with.
 */
import { type Problem, type Rule, rules, startSearch } from '#workplan';
import { bestPlan } from './best-plan.ts';
import { solverName } from './general-solver.ts';
import type { ModelWorth } from './model.ts';
import { digestOf, type RuleKill, readKills, writeKills } from './stored-answers.ts';
import { type SeededOptions, seededProblem } from './varied-problem.ts';
import { notSwitchable, withoutRule } from './without-rule.ts';

/** One more than the five that a rule needs. */
const wanted = 6;
const seedsTried = 3000;
const limit_ms = 30_000;

const asked = process.argv[2]?.split(',');
const stored = readKills();
const kills: Partial<Record<Rule, readonly RuleKill[]>> = stored?.solver === solverName ? { ...stored.kills } : {};
for (const [index, rule] of rules.entries()) {
  if (notSwitchable.includes(rule) || (asked && !asked.includes(rule))) continue;
  const rows = (kills[rule] ?? []).filter(
    ({ seed, options, problem }) => digestOf(seededProblem(seed, options)) === problem,
  );
  const options: SeededOptions = rule === 'wait over' ? { rules: [rule], slow: true } : { rules: [rule] };
  for (let seed = 10_000 * index; rows.length < wanted && seed < 10_000 * index + seedsTried; seed++) {
    if (rows.some((row) => row.seed === seed)) continue;
    const row = await killOf(rule, seed, options);
    if (row) rows.push(row);
  }
  kills[rule] = rows;
  const inOrder = Object.fromEntries(rules.flatMap((one) => (kills[one] ? [[one, kills[one]]] : [])));
  writeKills({ solver: solverName, madeBy: 'checks/workplan/make-rule-kills.ts', kills: inOrder });
  console.log(`${rule}: ${rows.length}`);
}

async function killOf(rule: Rule, seed: number, options: SeededOptions): Promise<RuleKill | null> {
  const problem = seededProblem(seed, options);
  const changed = withoutRule(problem, rule);
  if (!changed || worthText(soonFound(problem)) === worthText(soonFound(changed))) return null;
  const full = await bestPlan(problem, limit_ms);
  const without = full.kind === 'proved best' ? await bestPlan(changed, limit_ms) : full;
  if (full.kind !== 'proved best' || without.kind !== 'proved best') return null;
  if (worthText(full.worth) === worthText(without.worth)) return null;
  return { seed, options, problem: digestOf(problem), ...full.worth, without: without.worth };
}

function soonFound(problem: Problem): ModelWorth {
  const search = startSearch(problem, { seed: 1 });
  search.advance(60);
  return search.outcome().worth;
}

function worthText({ missed, weight, setUp_min }: ModelWorth): string {
  return `${missed} ${weight} ${setUp_min}`;
}
