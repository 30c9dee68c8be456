import { describe, expect, it } from 'vitest';
import { readPsplib } from './psplib.ts';
import { startSearch } from './search.ts';
import { violations } from './violations.ts';

/**
 * Five activities of our own on one resource of 2. Chain 2 → 4 takes 3 + 4 = 7; 3 (2 of the resource, 2 long) and
 * 5 (1, 3 long, after 3) and 6 (1, 2 long). Work: 3·1 + 2·2 + 4·1 + 3·1 + 2·1 = 16, so at least 8 on 2.
 * 8 is reached: 3 at 0–2, then 2 at 2–5 and 4 at 5–9 would take 9; 2 and 6 first (0–3, 0–2) leaves 1 idle minute
 * before 3 (3–5), then 4 (5–9) beside 5 (5–8): 9. 3 must run alone, so the chain of 7 and its 2 make 9 the least.
 */
const text = `************************************************************************
projects                      :  1
jobs (incl. supersource/sink ):  7
horizon                       :  14
RESOURCES
  - renewable                 :  1   R
************************************************************************
PRECEDENCE RELATIONS:
jobnr.    #modes  #successors   successors
   1        1          3           2   3   6
   2        1          1           4
   3        1          1           5
   4        1          1           7
   5        1          1           7
   6        1          1           7
   7        1          0
************************************************************************
REQUESTS/DURATIONS:
jobnr. mode duration  R 1
------------------------------------------------------------------------
  1      1     0       0
  2      1     3       1
  3      1     2       2
  4      1     4       1
  5      1     3       1
  6      1     2       1
  7      1     0       0
************************************************************************
RESOURCEAVAILABILITIES:
  R 1
    2
************************************************************************
`;

describe('the reader of the plain case', () => {
  it('reads activities, their order and resources', () => {
    const { problem, criticalPath } = readPsplib(text);
    expect(criticalPath).toBe(7);
    expect(problem.steps.map(({ id, minutes }) => [id, minutes])).toEqual([
      ['a2', 3],
      ['a3', 2],
      ['a4', 4],
      ['a5', 3],
      ['a6', 2],
    ]);
    expect(problem.precedence.map(({ before, after }) => [before, after])).toEqual([
      ['a2', 'a4'],
      ['a3', 'a5'],
    ]);
    expect(problem.tools[0]!.capacity[0]!.count).toBe(2);
  });

  it('gives a problem whose best plan takes 9, as reasoned above', () => {
    const { problem } = readPsplib(text);
    const search = startSearch(problem, { seed: 1 });
    search.advance(200);
    const { plan, worth, verdict } = search.outcome();
    expect(violations(plan, problem)).toEqual([]);
    expect(worth.lastFinish).toBe(9);
    expect(verdict.kind).toBe('proved best');
  });

  it.each([
    ['no count of jobs', text.replace('jobs (incl', 'tasks (incl'), /jobs \(incl/],
    ['a missing section', text.replace('REQUESTS/DURATIONS:', 'REQUESTS:'), /REQUESTS\/DURATIONS/],
    ['a successor that is not there', text.replace('           4\n', '           9\n'), /successor 9/],
    [
      'a count of successors that is wrong',
      text.replace('2        1          1 ', '2        1          2 '),
      /announced/,
    ],
    ['more than one mode', text.replace('   5        1          1', '   5        2          1'), /one mode/],
    ['words for numbers', text.replace('  4      1     4       1', '  4      1     four    1'), /whole numbers/],
    [
      'activities in a ring',
      text.replace('5        1          1           7', '5        1          1           3'),
      /waits for itself/,
    ],
  ])('refuses %s, with what is wrong', (_, wrong, message) => {
    expect(() => readPsplib(wrong)).toThrow(message);
  });
});
