/**
 * The bound holds: whatever plan one search finds, no other search of the same problem, with another seed and another
 * number of tries, may have said that no plan does so much, or misses so little, or that a worse one is proved best.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareWorth, type Outcome, startSearch, violations } from '#workplan';
import { smallProblem } from './small-problems.ts';

/** sums of the same weights in another order differ in the last digits */
const close = 1e-6;

describe('the bound', () => {
  it('is never below the weight of a plan that another search finds', () => {
    const sizes = fc.constantFrom('tiny', 'small') as fc.Arbitrary<'tiny' | 'small'>;
    let proved = 0;
    fc.assert(
      fc.property(
        fc.nat({ max: 1_000_000 }),
        sizes,
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 1, max: 120 }),
        (of, size, seed, otherSeed, tries) => {
          const problem = smallProblem(of, { size });
          const one = startSearch(problem, { seed });
          one.advance(tries);
          const other = startSearch(problem, { seed: otherSeed });
          other.advance(150);
          const [said, found] = [one.outcome(), other.outcome()];
          expect(violations(found.plan, problem)).toEqual([]);
          if (said.verdict.kind === 'proved best') {
            proved++;
            expect(isBetter(found, said), 'a better plan than the one proved best').toBe(false);
          } else if (found.worth.missed <= said.worth.missed)
            expect(said.verdict.bound).toBeGreaterThanOrEqual(found.worth.weight - close);
        },
      ),
      { numRuns: 150 },
    );
    expect(proved).toBeGreaterThan(0);
  });
});

/** Misses less, or does more, or the same with less set-up changing: what a proof speaks of. */
function isBetter(a: Outcome, b: Outcome): boolean {
  const judged = ({ missed, weight, setUp_min }: Outcome['worth']) => ({
    missed,
    weight,
    setUp_min,
    moved_min: 0,
    lastFinish: 0,
  });
  if (Math.abs(a.worth.weight - b.worth.weight) < close && a.worth.missed === b.worth.missed)
    return a.worth.setUp_min < b.worth.setUp_min;
  return compareWorth(judged(a.worth), judged(b.worth)) < 0;
}
