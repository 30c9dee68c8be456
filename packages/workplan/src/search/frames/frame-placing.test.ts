import { describe, expect, it } from 'vitest';
import { checkProblem } from '../../check-problem.ts';
import type { Plan, PlannedStep } from '../../plan.ts';
import type { Problem } from '../../problem.ts';
import { aStep, problemWith } from '../../rules/smallest-plan.ts';
import { violations } from '../../violations.ts';
import { waitAfter } from '../../wait-after.ts';
import { boundsAlone } from '../alone.ts';
import { type Compiled, compile } from '../compiled.ts';
import { crowdedProblem } from '../crowded-problem.ts';
import { Dice } from '../dice.ts';
import { type Lay, layOfPlan } from '../kept-steps.ts';
import { ListSearch } from '../list-search.ts';
import { Placing } from '../placing.ts';
import { writtenPlan } from '../written-plan.ts';
import { FramePlacing } from './frame-placing.ts';

/** A problem, a plan of it that the search found, and a placing in the frame of that plan. */
interface Case {
  readonly problem: Problem;
  readonly compiled: Compiled;
  readonly possible: readonly number[];
  readonly plan: Plan;
  readonly placing: FramePlacing;
}

function caseOf(problem: Problem, lists: number): Case {
  const compiled = compile(problem);
  const alone = boundsAlone(compiled, new Placing(compiled));
  const possible = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const search = new ListSearch(compiled, possible, new Dice(1), null, false);
  while (search.iterations < lists) search.step();
  const { plan } = search.best!;
  const placing = new FramePlacing(compiled, new Placing(compiled));
  placing.setFrame(layOfPlan(plan, compiled).frame);
  return { problem, compiled, possible, plan, placing };
}

function shuffled<T>(list: readonly T[], dice: Dice): T[] {
  const next = [...list];
  for (let k = next.length - 1; k > 0; k--) {
    const other = dice.below(k + 1);
    [next[k], next[other]] = [next[other]!, next[k]!];
  }
  return next;
}

/** Steps that lie so, with all set-up changes of a plan. */
function planInFrame({ compiled, plan }: Case, { steps }: Lay): Plan {
  const placing = new Placing(compiled);
  for (const [step, at] of steps.entries()) if (at !== null) placing.lay(step, at);
  return { ...writtenPlan(placing.taken), changes: plan.changes };
}

/** A placing made anew in which steps lie so. */
function anewWith({ frame, steps }: Lay, { compiled }: Case): FramePlacing {
  const placing = new FramePlacing(compiled, new Placing(compiled));
  placing.setFrame(frame);
  for (const [step, at] of steps.entries()) if (at !== null) placing.layStep(step, at);
  return placing;
}

/** What a placing would do with each of some units next; nothing stays placed. */
function nextOf({ compiled, placing }: Case, units: readonly number[]): unknown[] {
  return units.map((unit) => {
    const mark = placing.mark();
    if (!placing.placeUnit(unit, 0)) return null;
    const { steps } = placing.lay();
    placing.takeBackTo(mark);
    return compiled.units[unit]!.open.map((step) => steps[step]);
  });
}

const small = { jobs: 7, days: 2, dayMinutes: 120, still: true };
const tiny = { jobs: 5, days: 1, dayMinutes: 80, still: true };
const large = { jobs: 30, days: 5, dayMinutes: 300, still: true };

describe('placing within a frame', () => {
  it('is tried on sound problems', () => {
    for (const crowd of [small, large, tiny])
      for (let seed = 0; seed < 4; seed++) expect(checkProblem(crowdedProblem(seed, crowd)).kind).toBe('sound');
  });

  // `violations` shares no code with the search: it is the judge
  it.each([
    ['small problems', small, 12, 5],
    ['one of thirty jobs', large, 1, 10],
  ])('breaks no rule of the trade in whatever order units are placed: %s', (_, crowd, problems, orders) => {
    let [shared, ofNoTime] = [0, 0];
    for (let seed = 0; seed < problems; seed++) {
      const one = caseOf(crowdedProblem(seed, crowd), 8);
      const dice = new Dice(seed);
      for (let order = 0; order < orders; order++) {
        one.placing.clear();
        for (const unit of shuffled(one.possible, dice)) one.placing.placeUnit(unit, dice.chance(0.3) ? 700 : 0);
        const made = planInFrame(one, one.placing.lay());
        expect(violations(made, one.problem), `seed ${seed}`).toEqual([]);
        shared += made.steps.filter(({ batchOf }) => batchOf !== null).length;
        ofNoTime += made.steps.filter(({ batchOf, start, finish }) => batchOf !== null && start === finish).length;
      }
    }
    // the problems have what they are made for
    expect(shared).toBeGreaterThan(0);
    expect(ofNoTime).toBeGreaterThan(0);
  });

  it('lays a step where it is over at the soonest: at no minute and in no way could it legally be over before', () => {
    let [tried, laid] = [0, 0];
    for (let seed = 0; seed < 7; seed++) {
      const one = caseOf(crowdedProblem(seed, tiny), 8);
      const { compiled, possible, placing } = one;
      placing.clear();
      for (const index of possible.flatMap((unit) => compiled.units[unit]!.open)) {
        if (!compiled.steps[index]!.before.every((tie) => placing.isPlaced(tie.before))) continue;
        const isPlaced = placing.placeStep(index, 0, 0);
        if (isPlaced) laid++;
        const made = planInFrame(one, placing.lay());
        for (const other of everyWay(one, index, isPlaced ? placing.finish[index]! : one.problem.horizon)) {
          tried++;
          // steps come in one by one: their jobs are not whole
          const broken = violations(withStep(made, one.problem, other), one.problem);
          const name = `seed ${seed}: ${other.step} at ${other.start} for ${other.hands.join()}`;
          expect(
            broken.some(({ rule }) => rule !== 'whole job'),
            name,
          ).toBe(true);
        }
      }
    }
    expect(laid).toBeGreaterThan(30);
    expect(tried).toBeGreaterThan(1000);
  });

  it('is as a placing made anew after steps were taken out, and as it was when they are put back', () => {
    // by reasoning: what is free, left, in the air or ready mixed depends on what lies, not on how it came there
    let found = 0;
    for (let seed = 0; seed < 12; seed++) {
      const one = caseOf(crowdedProblem(seed, small), 8);
      const { compiled, possible, placing } = one;
      const dice = new Dice(seed);
      placing.clear();
      const placed = shuffled(possible, dice).filter((unit, n) => n % 3 > 0 && placing.placeUnit(unit, 0));
      const rest = possible.filter((unit) => !placed.includes(unit));
      placing.keep();
      const before = placing.lay();
      const next = nextOf(one, rest);
      for (let times = 0; times < 3; times++) {
        const out = placed.filter(() => dice.chance(0.5));
        const steps = out.flatMap((unit) => compiled.units[unit]!.open);
        for (const step of shuffled(steps, dice)) placing.takeOut(step);
        placing.keep();
        const without = nextOf(one, [...rest, ...out]);
        found += without.filter((at) => at !== null).length;
        expect(without, `seed ${seed}`).toEqual(
          nextOf({ ...one, placing: anewWith(placing.lay(), one) }, [...rest, ...out]),
        );
        for (const step of shuffled(steps, dice)) placing.layStep(step, before.steps[step]!);
        placing.keep();
        expect(placing.lay(), `seed ${seed}`).toEqual(before);
        expect(nextOf(one, rest), `seed ${seed}`).toEqual(next);
      }
    }
    expect(found).toBeGreaterThan(50);
  });

  it('lays what takes no time at the end of the day too', () => {
    // the day ends at 720, and with it the step of its whole 120 minutes
    const steps = [aStep('all day', { minutes: 120 }), aStep('a look', { minutes: 0, hands: 0 })];
    const past = { kind: 'forbidden' } as const;
    const follows = { before: 'all day', wait: null, after: 'a look', least_min: 0, greatest_min: null, past };
    const { placing } = caseOf(problemWith(steps, { precedence: [follows] }), 1);
    expect(placing.placeUnit(0, 0)).toBe(true);
    expect([...placing.start]).toEqual([600, 720]);
  });

  it('forgets one frame for another', () => {
    // the same two frames in turn: the second time as the first
    const one = caseOf(crowdedProblem(3, small), 8);
    const { compiled, possible, placing, plan } = one;
    const steps = compiled.steps.map(() => null);
    const frames = [layOfPlan(plan, compiled).frame, compiled.aspects.map(() => [])];
    const placedIn = frames.map((frame) => nextOf({ ...one, placing: anewWith({ frame, steps }, one) }, possible));
    expect(placedIn[0]).not.toEqual(placedIn[1]);
    for (const turn of [0, 1, 0, 1]) {
      placing.setFrame(frames[turn]!);
      expect(nextOf(one, possible)).toEqual(placedIn[turn]);
      for (const unit of possible) placing.placeUnit(unit, 0);
    }
  });
});

/** A step at every minute of the job days and in every way in which it would be over before a minute. */
function* everyWay({ compiled, problem, placing }: Case, index: number, before: number): Generator<PlannedStep> {
  const step = compiled.steps[index]!;
  const sharers = [...placing.finish.keys()].filter(
    (other) =>
      other !== index && step.mix >= 0 && placing.finish[other]! >= 0 && compiled.steps[other]!.mix === step.mix,
  );
  const abrades = new Set([0, ...step.before.map((tie) => Math.max(0, tie.abrade))]);
  const teams = step.hands === 1 ? [['keeper'], ['friend']] : [['keeper', 'friend']];
  for (const day of problem.days)
    for (const batchOf of [-1, ...sharers])
      for (const abrade_min of abrades) {
        const lasts = step.minutes + abrade_min - (batchOf < 0 ? 0 : step.mixing);
        for (let start = day.from; start + lasts < before && start <= day.to; start++)
          for (const hands of teams)
            yield {
              step: step.source.id,
              start,
              finish: start + lasts,
              hands,
              day: day.id,
              batchOf: batchOf < 0 ? null : problem.steps[batchOf]!.id,
              abrade_min,
            };
      }
}

/** The plan with a step so, whether it has it already or not. */
function withStep(plan: Plan, { steps, hours, horizon }: Problem, planned: PlannedStep): Plan {
  const { step, finish: start } = planned;
  return {
    ...plan,
    steps: [...plan.steps.filter((other) => other.step !== step), planned],
    waits: [
      ...plan.waits.filter((other) => other.step !== step),
      ...steps
        .find(({ id }) => id === step)!
        .waits.map((wait) => {
          const { finish, tooCold } = waitAfter(wait, start, hours);
          return { step, wait: wait.id, start, finish: finish ?? horizon, tooCold };
        }),
    ],
  };
}
