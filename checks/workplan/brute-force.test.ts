import { describe, expect, it } from 'vitest';
import { type Outcome, type Problem, type Rule, startSearch, violations } from '#workplan';
import { bruteForce } from './brute-force.ts';
import { smallProblem } from './small-problems.ts';

/** Plans tried for one problem before it is passed over as too large. */
const most = 4000;

const kinds: readonly (readonly Rule[] | 'all')[] = [
  'all',
  ['set-up chain', 'step set-up', 'day ends in'],
  ['wait dry', 'wait set-up', 'still'],
  ['batch', 'pot life'],
  ['greatest lag', 'least lag', 'deadline'],
  ['hand present', 'not alone', 'hands', 'keeper'],
];

/** One job of two steps in an hour, with the mast to be put down between them. */
function byHand(): Problem {
  const blank = smallProblem(0, { size: 'tiny', onFives: true });
  const change = { minutes: 10, hands: 1, needs: {}, setUps: [] };
  const step = {
    ...blank.steps[0]!,
    job: 'job',
    minutes: 20,
    hands: 1,
    keeper: false,
    notAlone: false,
    zone: null,
    needs: {},
    features: [],
    tools: [],
    stores: [],
    mix: null,
    waits: [],
    held: null,
    progress: { kind: 'open' },
  } as const;
  return {
    ...blank,
    now: 0,
    days: [
      {
        id: 'day',
        label: 'the day',
        from: 600,
        to: 660,
        setOut_min: 0,
        clearUp_min: 0,
        breaks: [],
        features: [],
        endsIn: [],
      },
    ],
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 600, to: 660 }] }],
    aspects: [
      {
        id: 'mast',
        name: 'mast',
        states: [
          { id: 'up', name: 'up', shelters: false },
          { id: 'down', name: 'down', shelters: false },
        ],
        initial: 'up',
        changes: [
          { ...change, from: 'up', to: 'down' },
          { ...change, from: 'down', to: 'up' },
        ],
      },
    ],
    jobs: [{ id: 'job', title: 'job', weight: 10, deadline: null, optional: true }],
    steps: [
      { ...step, id: 'a', setUps: [{ aspect: 'mast', states: ['up'] }] },
      { ...step, id: 'b', setUps: [{ aspect: 'mast', states: ['down'] }] },
    ],
    precedence: [],
    previous: [],
  };
}

describe('brute force', () => {
  it('finds what reasoning by hand finds', () => {
    // 20 + 20 minutes of work and 10 of lowering the mast once between them fill 50 of the 60 minutes.
    const problem = byHand();
    const found = bruteForce(problem, most);
    expect(found.kind === 'best' && found.worth).toMatchObject({ missed: 0, weight: 10, setUp_min: 10 });

    // If b must come first, the mast goes down and up again: 20 + 20 + 10 + 10 fill the 60 exactly.
    const turned = {
      ...problem,
      precedence: [
        { before: 'b', wait: null, after: 'a', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } as const },
      ],
    };
    const twice = bruteForce(turned, most);
    expect(twice.kind === 'best' && twice.worth).toMatchObject({ weight: 10, setUp_min: 20 });

    // Five minutes of clearing up, and it does not fit any more.
    const short = { ...turned, days: [{ ...problem.days[0]!, clearUp_min: 5 }] };
    const none = bruteForce(short, most);
    expect(none.kind === 'best' && none.worth).toMatchObject({ weight: 0, setUp_min: 0 });
    expect(none.kind === 'best' && none.plan.leftOut).toEqual(['job']);
  });
});

describe('the search against brute force', () => {
  const claimsProof = ({ verdict }: Outcome) =>
    verdict.kind === 'proved best' || (verdict.kind === 'impossible, because' && verdict.rest === 'proved best');

  it.each(kinds.map((rules, set) => ({ rules, set })))('on tiny problems of $rules', ({ rules, set }) => {
    let compared = 0;
    let same = 0;
    for (let n = 0; n < 25; n++) {
      const seed = 1000 * set + n;
      const problem = smallProblem(seed, { size: 'tiny', onFives: true, rules });
      const best = bruteForce(problem, most);
      if (best.kind === 'too many') continue;
      compared++;
      expect(violations(best.plan, problem)).toEqual([]);

      const search = startSearch(problem, { seed: 1 });
      search.advance(300);
      const outcome = search.outcome();
      const weighed = ({ missed, weight, setUp_min }: typeof outcome.worth) => ({ missed, weight, setUp_min });
      const agree = JSON.stringify(weighed(outcome.worth)) === JSON.stringify(weighed(best.worth));
      if (agree) same++;
      // nothing is better than the best, nobody claims proof of less, and the bound is one
      const shortfall =
        outcome.worth.missed - best.worth.missed ||
        best.worth.weight - outcome.worth.weight ||
        outcome.worth.setUp_min - best.worth.setUp_min;
      expect(shortfall, `seed ${seed}`).toBeGreaterThanOrEqual(0);
      if (claimsProof(outcome)) expect(weighed(outcome.worth), `seed ${seed}`).toEqual(weighed(best.worth));
      if ('bound' in outcome.verdict)
        expect(outcome.verdict.bound, `seed ${seed}`).toBeGreaterThanOrEqual(best.worth.weight);
    }
    expect(compared).toBeGreaterThanOrEqual(10);
    // a search that is worth its name finds the best of such small ones nearly always
    expect(same).toBeGreaterThanOrEqual(Math.floor(0.9 * compared));
  });
});
