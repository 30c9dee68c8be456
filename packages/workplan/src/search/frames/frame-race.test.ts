import { describe, expect, it } from 'vitest';
import type { Plan } from '../../plan.ts';
import type { Problem } from '../../problem.ts';
import { violations } from '../../violations.ts';
import { boundsAlone } from '../alone.ts';
import { compile } from '../compiled.ts';
import { crowdedProblem } from '../crowded-problem.ts';
import { Dice } from '../dice.ts';
import { FreeGround } from '../free-ground.ts';
import { KeptSteps, type Lay, layOf, stepsInOrder } from '../kept-steps.ts';
import { Placing } from '../placing.ts';
import { PressingSearch } from '../pressing-search.ts';
import { writtenPlan } from '../written-plan.ts';
import type { Frame } from './frame.ts';
import { FrameMoves } from './frame-moves.ts';
import { FrameRace } from './frame-race.ts';

// What holds a plan to the rules of the trade is `violations`, which shares no code with the search.

function caseOf(problem: Problem, seed: number) {
  const compiled = compile(problem);
  const alone = boundsAlone(compiled, new Placing(compiled));
  const possible = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
  const dice = new Dice(seed);
  const ground = new FreeGround(compiled, dice);
  const pressing = new PressingSearch(compiled, possible, dice, ground);
  const unitOf = Int32Array.from(compiled.steps, ({ job }) => compiled.jobs[job]!.unit);
  const more = (): Lay => {
    pressing.step();
    return layOf(ground.placing.taken);
  };
  return { problem, compiled, possible, dice, unitOf, more };
}

const crowd = { jobs: 26, days: 3, dayMinutes: 150, still: true };

/** Nothing but the changes of a frame. */
function changesAlone(frame: Frame, { days, aspects, hands, jobs }: Problem): Plan {
  const changes = frame.flatMap((made, aspect) =>
    made.map(({ change, start, finish, hands: busy, day }) => ({
      aspect: aspects[aspect]!.id,
      from: aspects[aspect]!.states[change.from]!.id,
      to: aspects[aspect]!.states[change.to]!.id,
      start,
      finish,
      hands: busy.map((hand) => hands[hand]!.id),
      day: days[day]!.id,
    })),
  );
  changes.sort((a, b) => a.start - b.start || a.finish - b.finish);
  return { steps: [], waits: [], changes, leftOut: jobs.map(({ id }) => id) };
}

describe('moves of frames', () => {
  it('lead to frames whose changes can be made, none like the one before', () => {
    let moved = 0;
    for (let seed = 0; seed < 8; seed++) {
      const { problem, compiled, dice, more } = caseOf(crowdedProblem(seed, crowd), seed);
      const moves = new FrameMoves(compiled, dice, new Placing(compiled));
      const donors = Array.from({ length: 6 }, () => more().frame);
      let frame = donors[0]!;
      for (let n = 0; n < 150; n++) {
        const next = moves.moved(frame, donors[dice.below(donors.length)]!);
        if (next === null) continue;
        const starts = (of: Frame) => of.map((made) => made.map(({ start, change }) => [start, change.to]));
        expect(starts(next)).not.toEqual(starts(frame));
        expect(violations(changesAlone(next, problem), problem), `seed ${seed}`).toEqual([]);
        frame = next;
        moved++;
      }
    }
    expect(moved).toBeGreaterThan(200);
  });
});

describe('the race of frames', () => {
  /** Plans the race finds, each laid again without the changes it does not need. */
  function found(problem: Problem, seed: number, steps: number) {
    const { compiled, possible, dice, unitOf, more } = caseOf(problem, seed);
    const race = new FrameRace(compiled, possible, dice, new Placing(compiled), unitOf);
    const placing = new Placing(compiled);
    const kept = new KeptSteps(compiled, placing, unitOf);
    race.enter(more());
    const first = race.best;
    const plans: { readonly value: number; readonly plan: Plan }[] = [];
    for (let n = 0; n < steps; n++) {
      if (race.isIdle) {
        race.enter(more());
        continue;
      }
      const lay = race.step();
      if (lay === null) continue;
      kept.layAgain(lay, stepsInOrder(lay), new Uint8Array(compiled.units.length));
      plans.push({ value: race.best, plan: writtenPlan(placing.taken) });
    }
    return { first, plans, best: race.best };
  }

  it('finds plans that break no rule, each better than all before', () => {
    let better = 0;
    for (let seed = 0; seed < 8; seed++) {
      const problem = crowdedProblem(seed, crowd);
      const { first, plans } = found(problem, seed, 250);
      let last = first;
      for (const { value, plan } of plans) {
        expect(value).toBeGreaterThan(last);
        expect(violations(plan, problem), `seed ${seed}`).toEqual([]);
        last = value;
      }
      if (plans.length > 0) better++;
    }
    expect(better).toBeGreaterThan(4);
  });

  it('finds the same with the same chance', () => {
    const problem = crowdedProblem(3, crowd);
    expect(found(problem, 5, 200)).toEqual(found(problem, 5, 200));
  });
});
