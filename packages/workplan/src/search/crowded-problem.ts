/** For tests: invented problems in which steps crowd each other, from a seed. */
import type { PlanHour, Precedence, Problem, ProblemDay, ProblemStep, Wait } from '../problem.ts';
import { aStep, aWait, fairHour, problemWith, theCover, theDay, theMast } from '../rules/smallest-plan.ts';
import { Dice } from './dice.ts';

interface Crowd {
  readonly jobs: number;
  readonly days: number;
  /** minutes of a job day. multiples of 5 */
  readonly dayMinutes: number;
  /** with waits that need the mast still */
  readonly still: boolean;
}

/**
 * One problem: two hands, one drill, a deck where one hand finds room beside a cockpit, a mast that is raised and
 * lowered with the cover off, days that end covered, some with the mast down. Steps are dusty or wet, mix or share a
 * batch (with it some last no time at all), wait for cures and must follow in time or be abraded first. All can be left
 * out.
 */
export function crowdedProblem(seed: number, { jobs, days: dayCount, dayMinutes, still }: Crowd): Problem {
  const dice = new Dice(seed);
  const fives = (from: number, to: number) => from + 5 * dice.below((to - from) / 5 + 1);
  const horizon = 1440 * (dayCount + 1);
  const days = Array.from({ length: dayCount }, (_, n): ProblemDay => {
    const from = 1440 * n + 600;
    const noon = from + fives(20, dayMinutes - 20);
    return {
      ...theDay,
      id: `day-${n}`,
      from,
      to: from + dayMinutes,
      breaks: dice.chance(0.6) ? [{ from: noon, to: noon + fives(5, 15) }] : [],
      features: dice.chance(0.7) ? ['water'] : [],
      endsIn: [{ aspect: 'cover', state: 'on' }, ...(dice.chance(0.4) ? [{ aspect: 'mast', state: 'down' }] : [])],
    };
  });
  const steps: ProblemStep[] = [];
  const precedence: Precedence[] = [];
  for (let job = 0; job < jobs; job++) {
    const count = 1 + dice.below(4);
    for (let n = 0; n < count; n++) {
      steps.push(crowdedStep(dice, `job-${job}`, `job-${job}-${n}`, still));
      if (n > 0) precedence.push(tied(dice, steps.at(-2)!, steps.at(-1)!));
    }
    if (job > 0 && dice.chance(0.2)) {
      const before = steps[dice.below(steps.length - count)]!;
      precedence.push(tied(dice, before, steps.at(-count)!, true));
    }
  }
  return problemWith(steps, {
    horizon,
    days,
    hands: [
      { id: 'keeper', name: 'the keeper', present: [{ from: 0, to: horizon }] },
      { id: 'friend', name: 'a friend', present: days.map(({ from, to }) => ({ from: from + 10, to: to - 10 })) },
    ],
    tools: [{ id: 'drill', name: 'drill', capacity: [{ from: 0, to: horizon, count: 1 }] }],
    zones: [
      { id: 'deck', name: 'deck', room: 1, inside: false, near: ['cockpit'] },
      { id: 'cockpit', name: 'cockpit', room: 2, inside: false, near: [] },
      { id: 'cabin', name: 'cabin', room: 2, inside: true, near: [] },
    ],
    aspects: [
      {
        ...theMast,
        changes: theMast.changes.map((change) => ({ ...change, setUps: [{ aspect: 'cover', states: ['off'] }] })),
      },
      theCover,
    ],
    mixes: [{ id: 'epoxy', name: 'epoxy', mixing_min: 10, potLife_min: 30 }],
    hours: someHours(dice, horizon / 60),
    daylight: [{ from: 0, to: horizon }],
    precedence,
    jobs: Array.from({ length: jobs }, (_, job) => ({
      id: `job-${job}`,
      title: `job ${job}`,
      weight: 1 + dice.below(30),
      deadline: dice.chance(0.2) ? horizon - 60 * dice.below(12) : null,
      optional: true,
    })),
  });
}

function crowdedStep(dice: Dice, job: string, id: string, still: boolean): ProblemStep {
  const zone = ['deck', 'cockpit', 'cabin', null][dice.below(4)]!;
  const mixes = dice.chance(0.25);
  const makes = dice.below(4);
  // one as long as the mixing lasts no time at all where it shares a batch; what lasts none anyway asks for no hands
  const minutes = mixes ? 10 + 5 * dice.below(3) : dice.chance(0.2) ? 0 : 1 + dice.below(24);
  const wait: Wait = aWait(`${id}-cure`, {
    law: { kind: 'set time', minutes: 5 * dice.below(40), from: 'our assumption' },
    needs: dice.chance(0.3) ? { dry: true } : {},
    setUps: dice.chance(0.15) ? [{ aspect: 'mast', states: ['down'] }] : [],
    still: still && dice.chance(0.5) ? ['mast'] : [],
    wet: dice.chance(0.5),
  });
  return aStep(id, {
    job,
    minutes,
    hands: minutes === 0 ? 0 : dice.chance(0.2) ? 2 : 1,
    keeper: minutes > 0 && dice.chance(0.4),
    notAlone: minutes > 0 && dice.chance(0.1),
    zone,
    needs: dice.chance(0.3) ? { dry: true } : {},
    features: dice.chance(0.1) ? ['water'] : [],
    tools: dice.chance(0.25) ? [{ tool: 'drill', count: 1 }] : [],
    setUps: [
      ...(zone === 'deck' ? [{ aspect: 'cover', states: ['off'] }] : []),
      ...(dice.chance(0.3) ? [{ aspect: 'mast', states: [dice.chance(0.5) ? 'up' : 'down'] }] : []),
    ],
    dusty: makes === 1,
    wet: makes === 2,
    mix: mixes ? 'epoxy' : null,
    waits: dice.chance(0.4) ? [wait] : [],
  });
}

function tied(dice: Dice, before: ProblemStep, after: ProblemStep, isLoose = false): Precedence {
  return {
    before: before.id,
    wait: before.waits[0]?.id ?? null,
    after: after.id,
    least_min: dice.chance(0.3) ? 5 : 0,
    greatest_min: isLoose || dice.chance(0.5) ? null : 5 + 5 * dice.below(20),
    past: dice.chance(0.5) ? { kind: 'abrade', minutes: 5 } : { kind: 'forbidden' },
  };
}

/** Hours with a shower now and then. */
function someHours(dice: Dice, count: number): PlanHour[] {
  let rain = false;
  return Array.from({ length: count }, () => {
    rain = dice.chance(rain ? 0.5 : 0.15);
    return { ...fairHour, rain };
  });
}
