import type { Plan } from '../plan.ts';
import type { Minute } from '../problem.ts';
import type { AspectNeed, Compiled } from '../search/compiled.ts';
import type { AllowedMinutes } from './allowed-minutes.ts';
import type { Move, SetUpMoves } from './set-up-moves.ts';

export interface PlannedMove {
  readonly move: Move;
  readonly start: Minute;
}

/** A plan in the form its follower reads: by index of step and day. */
export interface PlanToFollow {
  /** starts; −1: not in the plan, or begun already */
  readonly starts: Int32Array;
  readonly hands: (readonly number[])[];
  /** −1: it mixes its own */
  readonly batchOf: Int32Array;
  /** changes of set-ups by day, in order of time */
  readonly moves: (readonly PlannedMove[])[];
  /** by hour: something shelters throughout */
  readonly sheltered: Uint8Array;
  /** the number of each step's conditions */
  readonly kinds: readonly number[];
  /** set-ups each step needs while it is done, and its waits at once after */
  readonly needs: readonly (readonly AspectNeed[])[];
  /** minutes at which something may change of itself, in order */
  readonly edges: readonly Minute[];
}

export function planToFollow(
  compiled: Compiled,
  plan: Plan,
  allowed: AllowedMinutes,
  moves: SetUpMoves,
  byTheClock: boolean,
): PlanToFollow {
  const { problem, horizon } = compiled;
  const inside = new Set(problem.zones.filter((zone) => zone.inside).map(({ id }) => id));
  const index = new Map(problem.steps.map(({ id }, at) => [id, at]));
  const handIndex = new Map(problem.hands.map(({ id }, at) => [id, at]));
  const starts = new Int32Array(compiled.steps.length).fill(-1);
  const batchOf = new Int32Array(compiled.steps.length).fill(-1);
  const hands: number[][] = compiled.steps.map(() => []);
  for (const step of plan.steps) {
    const at = index.get(step.step)!;
    if (compiled.steps[at]!.fixed !== null) continue;
    starts[at] = step.start;
    hands[at] = step.hands.map((hand) => handIndex.get(hand)!);
    if (step.batchOf !== null) batchOf[at] = index.get(step.batchOf)!;
  }
  const edges = new Set<Minute>();
  for (let minute = 0; minute <= horizon; minute += 60) edges.add(minute);
  for (const { present } of problem.hands) for (const { from, to } of present) edges.add(from).add(to);
  for (const { capacity } of problem.tools) for (const { from, to } of capacity) edges.add(from).add(to);
  for (const { from, to } of problem.daylight) edges.add(from).add(to);
  for (const { earliest } of compiled.steps) edges.add(earliest);
  if (byTheClock) for (const start of starts) edges.add(start);
  if (byTheClock) for (const { start } of plan.changes) edges.add(start);
  return {
    starts,
    hands,
    batchOf,
    moves: problem.days.map((day) =>
      plan.changes
        .filter((change) => change.day === day.id)
        .sort((a, b) => a.start - b.start)
        .map(({ aspect, from, to, start }) => {
          const at = problem.aspects.findIndex(({ id }) => id === aspect);
          const state = (name: string) => problem.aspects[at]!.states.findIndex(({ id }) => id === name);
          return { move: moves.between(at, state(from), state(to))!, start };
        }),
    ),
    sheltered: shelteredHours(compiled, plan),
    kinds: problem.steps.map(({ needs, zone }) => allowed.kindOf({ needs, inside: zone !== null && inside.has(zone) })),
    needs: compiled.steps.map(({ setUps, waits, source }) => [
      ...setUps,
      ...waits.flatMap((wait, at) => (source.waits[at]!.law.kind === 'never cures' ? [] : wait.setUps)),
    ]),
    edges: [...edges].filter((edge) => edge >= 0 && edge <= horizon).sort((a, b) => a - b),
  };
}

/** Hours over which something shelters throughout, as the plan has it. */
function shelteredHours({ problem, aspects, horizon }: Compiled, plan: Plan): Uint8Array {
  const minutes = new Uint8Array(horizon);
  problem.aspects.forEach((aspect, index) => {
    const { sheltering } = aspects[index]!;
    const shelters = (state: string) => (sheltering & (1 << aspect.states.findIndex(({ id }) => id === state))) !== 0;
    let [from, state] = [0, aspect.initial];
    for (const change of plan.changes.filter((each) => each.aspect === aspect.id).sort((a, b) => a.start - b.start)) {
      if (shelters(state)) minutes.fill(1, from, change.start);
      from = change.finish;
      state = change.to;
    }
    if (shelters(state)) minutes.fill(1, from, horizon);
  });
  return Uint8Array.from(problem.hours, (_, hour) => (minutes.subarray(hour * 60, hour * 60 + 60).includes(0) ? 0 : 1));
}
