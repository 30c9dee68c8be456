import { describe, expect, it } from 'vitest';
import type { Problem } from './problem.ts';
import { aStep, aWait, hoursBut, planWith, problemWith, theCover, theDay, theMast } from './rules/smallest-plan.ts';
import { violations } from './violations.ts';

describe('violations', () => {
  it('says which rule, in a sentence with the figures, where and when', () => {
    const problem = problemWith([aStep('sand the rail', { needs: { wind_max_kn: 12 } })], {
      hours: hoursBut({ 11: { wind_kn: 16 } }),
    });
    expect(violations(planWith(problem, { 'sand the rail': 655 }), problem)).toEqual([
      {
        rule: 'wind',
        what: 'sand the rail: the hour from minute 660 does not meet wind_max_kn 12',
        where: { step: 'sand the rail' },
        minute: 660,
      },
    ]);
  });

  it('finds nothing in a large plan that keeps every rule: 250 steps, 125 waits and 16 changes over 90 days', () => {
    const { problem, plan } = large();
    expect(violations(plan, problem)).toEqual([]);
  });
});

/** 250 steps on 8 job days of 7 hours, one after the other by one hand; the mast up and down on each day. */
function large() {
  const days = Array.from({ length: 8 }, (_, i) => ({
    ...theDay,
    id: `day-${i}`,
    from: 1440 * i + 480,
    to: 1440 * i + 1080,
  }));
  const steps = Array.from({ length: 250 }, (_, i) =>
    aStep(`s${i}`, {
      job: `job-${i >> 2}`,
      zone: `zone-${i % 4}`,
      needs: { dry: true, wind_max_kn: 15, air_min_C: 5, dewMargin_min_C: 3, daylight: true },
      tools: [{ tool: `tool-${i % 3}`, count: 1 }],
      setUps: [{ aspect: 'mast', states: ['up'] }],
      dusty: i % 8 === 1,
      wet: i % 8 === 4,
      waits:
        i % 2 === 0
          ? [
              aWait('w', {
                law: {
                  kind: 'reacts',
                  atReference_min: 600,
                  reference_C: 20,
                  doublesPer_C: 10,
                  minimum_C: 5,
                  from: 'our assumption',
                },
                needs: { dry: true, air_min_C: 5 },
                still: ['cover'],
              }),
            ]
          : [],
    }),
  );
  const problem: Problem = problemWith(steps, {
    horizon: 90 * 1440,
    days,
    hours: Array.from({ length: 90 }, () => hoursBut({})).flat(),
    hands: [{ id: 'keeper', name: 'the keeper', present: [{ from: 0, to: 90 * 1440 }] }],
    daylight: Array.from({ length: 90 }, (_, i) => ({ from: 1440 * i + 300, to: 1440 * i + 1260 })),
    tools: [0, 1, 2].map((i) => ({
      id: `tool-${i}`,
      name: 'tool',
      capacity: [{ from: 0, to: 90 * 1440, count: 1 }],
    })),
    zones: [0, 1, 2, 3].map((i) => ({ id: `zone-${i}`, name: 'zone', room: 1, inside: false, near: [] })),
    aspects: [theMast, theCover],
    precedence: steps.slice(1).map(({ id }, i) => ({
      before: `s${i}`,
      wait: null,
      after: id,
      least_min: 0,
      greatest_min: null,
      past: { kind: 'forbidden' } as const,
    })),
  });
  // 32 steps a day from 490 on, each quarter of an hour; the mast goes down after them and up in the morning
  const starts = Object.fromEntries(
    steps.map(({ id }, i) => [
      id,
      { start: 1440 * Math.floor(i / 32) + 490 + 15 * (i % 32), day: `day-${Math.floor(i / 32)}` },
    ]),
  );
  const changes = days.flatMap(({ id: day }, i) => [
    { aspect: 'mast', from: 'up', to: 'down', start: 1440 * i + 1000, day },
    ...(i < 7 ? [{ aspect: 'mast', from: 'down', to: 'up', start: 1440 * (i + 1) + 480, day: `day-${i + 1}` }] : []),
  ]);
  return { problem, plan: planWith(problem, starts, changes) };
}
