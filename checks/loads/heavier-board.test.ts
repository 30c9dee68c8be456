import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { questions } from '../../apps/cli/src/questions.ts';
import { heavierBoard } from '../../scripts/heavier-board.ts';

const page = readFileSync(new URL('../../docs/heavier-board.md', import.meta.url), 'utf8');

it('docs/heavier-board.md says what the questions say now', () => {
  expect(page).toBe(heavierBoard(questions()));
});

it('what it says of a plate half as heavy again can be worked out by hand', () => {
  const rows = page
    .split('\n')
    .filter((line) => /^\| (60|90) kg/.test(line))
    .map((line) => line.split('|').map((cell) => Number.parseFloat(cell)));
  expect(rows).toHaveLength(4);
  const [light, , heavy, afloat] = rows.map((row) => row.slice(3, 7)) as [number[], number[], number[], number[]];
  for (const [n, force] of heavy.entries()) {
    expect(force / light[n]!).toBeGreaterThan(1.47);
    expect(force / light[n]!).toBeLessThan(1.53);
    // cast iron under sea water keeps 1 − 1025/7200 of its weight (Archimedes)
    expect(afloat[n]! / force).toBeCloseTo(1 - 1025 / 7200, 1);
  }
  // holding: half the wire's pull, by a 140 mm crank on the third layer of 8 mm cord on 50 mm: 90/2 mm in the middle
  const [wire, , holding] = heavy as [number, number, number];
  expect(holding).toBeGreaterThan((wire / 2) * (45 / 140) * 0.97);
  expect(holding).toBeLessThan((wire / 2) * (45 / 140) * 1.03);
});
