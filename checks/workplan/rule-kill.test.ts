import { describe, expect, it } from 'vitest';
import { rules, violations } from '#workplan';
import { agreement, sameWorth, searched } from './agreement.ts';
import { digestOf, readKills } from './stored-answers.ts';
import { seededProblem } from './varied-problem.ts';
import { notSwitchable, withoutRule } from './without-rule.ts';

// Each row is a problem whose proved best, by the constraint model, is another one without the rule.
const kills = readKills()?.kills ?? {};
const iterations = 300;
const perRule = 5;

describe('every rule matters, and the search obeys it', () => {
  it('only the rule on names of things cannot be taken out', () => {
    expect(notSwitchable).toEqual(['known things']);
    expect(Object.keys(kills)).toEqual(rules.filter((rule) => !notSwitchable.includes(rule)));
  });

  for (const rule of rules.filter((one) => !notSwitchable.includes(one)))
    it(`${rule}: with it switched off in the search, at least ${perRule} problems disagree with the proved best`, () => {
      const rows = kills[rule] ?? [];
      expect(rows.length).toBeGreaterThanOrEqual(perRule);
      const faults: string[] = [];
      let disagree = 0;
      for (const row of rows) {
        const problem = seededProblem(row.seed, row.options);
        const off = withoutRule(problem, rule);
        if (digestOf(problem) !== row.problem || off === null) {
          faults.push(`seed ${row.seed}: another problem than was answered; run make-rule-kills.ts`);
          continue;
        }
        const withIt = agreement(problem, searched(problem, iterations), row);
        if (withIt.kind === 'fault') faults.push(`seed ${row.seed}: ${withIt.what}`);
        const without = searched(off, iterations);
        const forgotten = agreement(off, without, row.without);
        if (forgotten.kind === 'fault') faults.push(`seed ${row.seed} without '${rule}': ${forgotten.what}`);
        const breaks = violations(without.plan, problem).some((one) => one.rule === rule);
        if (breaks || !sameWorth(without.worth, row)) disagree++;
      }
      expect(faults).toEqual([]);
      expect(disagree).toBeGreaterThanOrEqual(perRule);
    }, 120_000);
});
