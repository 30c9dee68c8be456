import { describe, expect, it } from 'vitest';
import type { Rule } from '#workplan';
import { violations } from '#workplan';
import { agreement, searched, steadier } from './agreement.ts';
import { bestPlan, steadiestAmong } from './best-plan.ts';
import { readKills } from './stored-answers.ts';
import { seededProblem } from './varied-problem.ts';

/**
 * Problems, one for each of thirty-one rules, out of the rule's table, so that the rule decides its best plan: the
 * first, but where it holds the solver for a minute. The solver runs now; nothing is read from the stored answers but
 * which seed to take.
 */
const decisive: readonly Rule[] = [
  'already begun',
  'set-out and clear-up',
  'break',
  'place',
  'hands',
  'hand present',
  'one thing at a time',
  'keeper',
  'not alone',
  'tools',
  'room in the zone',
  'dry',
  'wind',
  'dew margin',
  'daylight',
  'stores',
  'held',
  'deadline',
  'least lag',
  'greatest lag',
  'abrading',
  'wait time',
  'wait dry',
  'wait warm',
  'step set-up',
  'wait set-up',
  'still',
  'set-up chain',
  'day ends in',
  'dust and wet',
  'before dew',
];

const soonerSolved: Partial<Record<Rule, number>> = { 'day ends in': 4, still: 1 };

describe('the search against the constraint model, solved now', () => {
  let compared = 0;
  const kills = readKills()?.kills ?? {};
  it.each(decisive)(
    'a problem decided by the rule %s',
    async (rule) => {
      const row = kills[rule]?.[soonerSolved[rule] ?? 0];
      if (!row) throw new Error(`rule-kill.json has no problem for '${rule}'; run make-rule-kills.ts`);
      const problem = seededProblem(row.seed, row.options);
      const model = await bestPlan(problem, 100_000);
      if (model.kind !== 'proved best') throw new Error('the solver ran out of time');
      expect(violations(model.plan, problem)).toEqual([]);
      const outcome = searched(problem, 1000);
      const found = agreement(problem, outcome, model.worth);
      expect(found, found.kind === 'fault' ? found.what : '').not.toMatchObject({ kind: 'fault' });
      if (found.kind === 'same') {
        const steadiest = await steadiestAmong(problem, model.worth, 100_000);
        if (steadiest === null) throw new Error('the solver ran out of time');
        expect(steadier(outcome, problem, steadiest)).toBeLessThanOrEqual(0);
      }
      compared++;
    },
    120_000,
  );

  it('all thirty-one were compared', () => {
    expect(decisive).toHaveLength(31);
    expect(compared).toBe(31);
  });
});
