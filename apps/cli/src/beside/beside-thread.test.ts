import { availableParallelism } from 'node:os';
import { describe, expect, it } from 'vitest';
import { problemFrom } from '#reckoning';
import { startSearch } from '#workplan';
import { demoBook } from '../../../../examples/demo-book.ts';
import { besideThread } from './beside-thread.ts';

function demoProblem() {
  const matter = problemFrom(demoBook('2026-05-08'), { now: '2026-05-08T05:00:00Z' });
  if (matter.kind !== 'problem') throw new RangeError('the demo book has nothing to plan');
  return matter.problem;
}

const isAlone = availableParallelism() < 2;

describe(`a search in a thread beside a command's own${isAlone ? ' (skipped: one core)' : ''}`, () => {
  it.skipIf(isAlone)(
    'brings a plan to one that has none, and goes on when that fails',
    async () => {
      const problem = demoProblem();
      const thread = besideThread()!;
      try {
        await thread.isUp;
        const search = startSearch(problem, { seed: 1 });
        thread.begin(search, problem, { seed: 1 });
        const swapped = () => {
          thread.swap();
          return search.best();
        };
        await expect.poll(swapped, { timeout: 60_000 }).not.toBeNull();

        // what breaks the thread does not break the search: here a problem without anything in it
        const alone = startSearch(problem, { seed: 1 });
        thread.begin(alone, {} as typeof problem, { seed: 1 });
        for (let slice = 0; slice < 20; slice++) {
          alone.advance(2);
          thread.swap();
          await new Promise((later) => setTimeout(later, 20));
        }
        expect(alone.outcome('as it stands').plan.steps.length).toBeGreaterThan(0);
      } finally {
        thread.close();
      }
    },
    120_000,
  );
});
