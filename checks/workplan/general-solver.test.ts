import { expect, it } from 'vitest';
import { solveModel, solverName } from './general-solver.ts';

// By hand: xy ≤ 100 with y ≥ 3 gives x ≤ 33, but x ≤ 30; at x = 30, y = 3, so 3·30 + 3 = 93. At x = 25, y = 4: 79.
const small = `var 1..30: x; var 3..30: y; var int: best = 3*x + y;
constraint x*y <= 100; solve maximize best;`;

it('solves a small model to its proved best, with no network', async () => {
  expect(solverName).toMatch(/\d+\.\d+\.\d+$/);
  const answer = await solveModel(small, { timeLimit_ms: 20_000 });
  expect(answer).toEqual({ kind: 'optimal', values: expect.objectContaining({ x: 30, y: 3 }) });
});

it('says so where nothing satisfies the model', async () => {
  const model = 'var 1..3: x; constraint x > 2; constraint x < 3; solve maximize x;';
  expect(await solveModel(model, { timeLimit_ms: 20_000 })).toEqual({ kind: 'unsatisfiable' });
});

it('throws where the text is not a model', async () => {
  await expect(
    solveModel('var 1..3: x; constraint y > 2; solve maximize x;', { timeLimit_ms: 20_000 }),
  ).rejects.toThrow(/undefined identifier/);
});
