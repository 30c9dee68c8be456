/**
 * Small invented plan problems, made from a seed, which between them use every rule: what brute force, the
 * constraint model and the search are held against each other on. The same seed and options give the same problem.
 */
import type { Problem } from '#workplan';
import { someAspects, someMixes, someStores, someTools, someZones } from './small-problems/boat.ts';
import { chanceFrom, type SmallProblemOptions } from './small-problems/chance.ts';
import { someDaylight, someDays, someHands, someHours } from './small-problems/days.ts';
import { someBegun, someHeld, someOrder } from './small-problems/order.ts';
import { someWork } from './small-problems/work.ts';

export type { SmallProblemOptions };

/**
 * One small problem.
 *
 * @param seed  any whole number
 * @returns     a problem that `checkProblem` finds sound. It always has the plan that leaves every job out
 */
export function smallProblem(seed: number, options: SmallProblemOptions = {}): Problem {
  const draw = chanceFrom(seed, options);
  const begun = draw.often(0.2, 'already begun', 'not before now');
  const twoDays = draw.asked('wait warm', 'wait dry', 'day ends in');
  const dayCount = draw.tiny ? 1 : draw.middling ? draw.whole(2, 3) : twoDays ? 2 : draw.whole(1, 2);
  const horizon = 1440 * (dayCount + 1);

  const aspects = someAspects(draw);
  const zones = someZones(draw);
  const mixes = someMixes(draw);
  const days = someDays(draw, dayCount, aspects);
  const first = days[0]!;
  const now = begun ? first.from + first.setOut_min + draw.fives(0, 25) : 0;
  const hands = someHands(draw, days);
  const tools = someTools(draw, first, horizon);
  const stores = someStores(draw, days);
  const hours = someHours(draw, horizon);
  const daylight = someDaylight(draw, days, horizon);
  const work = someWork(draw, { days, hands, tools, zones, aspects, mixes, stores });
  const precedence = someOrder(draw, work.steps);
  const held = someHeld(draw, work.steps, days);
  const steps = begun ? someBegun(draw, held, precedence, hands, now) : held;
  const previous = steps
    .filter((step) => step.progress.kind === 'open' && draw.chance(0.3))
    .map((step) => ({ step: step.id, start: first.from + draw.fives(0, 60) }));

  return {
    format: 1,
    startsAt: '2026-05-02T00:00:00Z',
    timeZone: 'UTC',
    horizon,
    now,
    days,
    hands,
    tools,
    zones,
    aspects,
    mixes,
    stores,
    hours,
    daylight,
    jobs: work.jobs,
    steps,
    precedence,
    previous,
  };
}
