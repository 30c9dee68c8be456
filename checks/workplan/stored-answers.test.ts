import { describe, expect, it } from 'vitest';
import { agreement, searched } from './agreement.ts';
import { digestOf, readAnswers } from './stored-answers.ts';
import { seededProblem } from './varied-problem.ts';

// The answers are Chuffed's, by a model that takes nothing from the search: see README.md.
const stored = readAnswers();
const answers = stored?.answers ?? [];
const iterations = 300;
const chunk = 44;
const tally = { compared: 0, same: 0, proved: 0 };

describe('the search against the stored proved bests', () => {
  it('there are at least 1,000 of them, by a named solver', () => {
    expect(stored?.solver).toMatch(/^Chuffed .* \d+\.\d+\.\d+$/);
    expect(answers.length).toBeGreaterThanOrEqual(1000);
  });

  for (let first = 0; first < answers.length; first += chunk)
    it(`answers ${first + 1} to ${Math.min(first + chunk, answers.length)}: as good, or the verdict leaves room`, () => {
      const faults: string[] = [];
      for (const answer of answers.slice(first, first + chunk)) {
        const { seed, options } = answer;
        const problem = seededProblem(seed, options);
        const name = `seed ${seed} ${JSON.stringify(options)}`;
        if (digestOf(problem) !== answer.problem) {
          faults.push(`${name}: another problem than was answered; run make-answers.ts`);
          continue;
        }
        const found = agreement(problem, searched(problem, iterations), answer);
        tally.compared++;
        if (found.kind === 'fault') faults.push(`${name}: ${found.what}`);
        if (found.kind === 'same') tally.same++;
        if (found.kind === 'same' && found.proved) tally.proved++;
      }
      expect(faults).toEqual([]);
    }, 120_000);

  it('all were compared; nine in ten are as good and half are proved by the search itself', () => {
    expect(tally.compared).toBe(answers.length);
    // floors well under what README.md reports, so that a search that only ever admits a gap does not pass
    expect(tally.same / tally.compared).toBeGreaterThanOrEqual(0.9);
    expect(tally.proved / tally.compared).toBeGreaterThanOrEqual(0.5);
  });
});
