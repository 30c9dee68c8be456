import type { Minute } from '../problem.ts';
import type { AspectNeed, Compiled } from '../search/compiled.ts';
import type { AllowedMinutes } from './allowed-minutes.ts';

/** One change of a set-up that can be made in one go. */
export interface Move {
  readonly aspect: number;
  readonly from: number;
  readonly to: number;
  readonly minutes: Minute;
  readonly hands: number;
  readonly setUps: readonly AspectNeed[];
  /** the number of its conditions */
  readonly kind: number;
}

/** How each aspect stands, by index of its state; −1: it is being changed. */
export type Standing = readonly number[];

/** The changes there are, and the ways from one standing to another. */
export class SetUpMoves {
  private readonly compiled: Compiled;
  private readonly moves: readonly (readonly Move[])[];
  private readonly routes = new Map<string, readonly Move[] | null>();

  constructor(compiled: Compiled, allowed: AllowedMinutes) {
    this.compiled = compiled;
    this.moves = compiled.problem.aspects.map(({ changes }, aspect) =>
      changes.map(({ needs }, index): Move => {
        const { from, to, minutes, hands, setUps } = compiled.aspects[aspect]!.changes[index]!;
        return { aspect, from, to, minutes, hands, setUps, kind: allowed.kindOf({ needs, inside: false }) };
      }),
    );
  }

  /** The change of an aspect between two states; null: it cannot be made in one go. */
  between(aspect: number, from: number, to: number): Move | null {
    return this.moves[aspect]!.find((move) => move.from === from && move.to === to) ?? null;
  }

  /** Changes that lead from a standing to one that meets the needs, each allowed by those before; null: none found. */
  route(standing: Standing, needs: readonly AspectNeed[]): readonly Move[] | null {
    if (needs.every((need) => meets(standing, need))) return [];
    if (standing.includes(-1)) return null;
    const key = `${standing.join()}:${needs.map(({ aspect, mask }) => `${aspect},${mask}`).join(';')}`;
    const known = this.routes.get(key);
    if (known !== undefined) return known;
    const now = [...standing];
    const made: Move[] = [];
    let found = false;
    // a change may undo what an earlier need asked for: three rounds, then it is given up
    for (let round = 0; round < 3 && !found; round++) {
      for (const need of needs) if (!this.lead(now, need, made, 0)) break;
      found = needs.every((need) => meets(now, need));
    }
    const route = found && made.length <= 16 ? made : null;
    this.routes.set(key, route);
    return route;
  }

  private lead(now: number[], need: AspectNeed, made: Move[], depth: number): boolean {
    if (meets(now, need)) return true;
    if (depth > 3) return false;
    const { minutes, firstChange, states } = this.compiled.aspects[need.aspect]!;
    let [goal, least] = [-1, Number.POSITIVE_INFINITY];
    for (let state = 0; state < states; state++) {
      const cost = minutes[now[need.aspect]!]![state]!;
      if ((need.mask & (1 << state)) === 0 || cost >= least) continue;
      least = cost;
      goal = state;
    }
    if (goal < 0) return false;
    for (let n = 0; now[need.aspect] !== goal && n < states; n++) {
      const move = this.moves[need.aspect]![firstChange[now[need.aspect]!]![goal]!]!;
      for (const other of move.setUps) if (!this.lead(now, other, made, depth + 1)) return false;
      if (!move.setUps.every((other) => meets(now, other)) || now[need.aspect] !== move.from) return false;
      now[need.aspect] = move.to;
      made.push(move);
    }
    return now[need.aspect] === goal;
  }

  /** The route to where each aspect stands in the other standing. */
  routeBack(from: Standing, to: Standing): readonly Move[] | null {
    return this.route(
      from,
      to.map((state, aspect) => ({ aspect, mask: 1 << state })),
    );
  }

  /**
   * Planned changes made sound for how the boat really stands: one already made falls away, what is missing before
   * another is put in; null where there is no way.
   */
  sound(standing: Standing, planned: readonly Move[], ends: readonly AspectNeed[]): Move[] | null {
    const now = [...standing];
    const chain: Move[] = [];
    for (const move of planned) {
      if (now[move.aspect] === move.to) continue;
      const before = this.route(now, [...move.setUps, { aspect: move.aspect, mask: 1 << move.from }]);
      if (before === null) return null;
      for (const one of [...before, move]) {
        now[one.aspect] = one.to;
        chain.push(one);
      }
    }
    const after = this.route(now, ends);
    return after === null ? null : [...chain, ...after];
  }
}

export function meets(standing: Standing, { aspect, mask }: AspectNeed): boolean {
  const state = standing[aspect]!;
  return state >= 0 && (mask & (1 << state)) !== 0;
}

export function standingAfter(standing: Standing, moves: readonly Move[]): number[] {
  const after = [...standing];
  for (const { aspect, to } of moves) after[aspect] = to;
  return after;
}

/** The changes without those that go there and back again for nothing; what is left still leads to the same end. */
export function withoutLoops(standing: Standing, moves: readonly Move[]): readonly Move[] {
  let chain = moves;
  for (let again = true; again; ) {
    again = false;
    for (let first = 0; first < chain.length && !again; first++) {
      const { aspect, from } = chain[first]!;
      for (let last = chain.length - 1; last > first; last--) {
        if (chain[last]!.aspect !== aspect || chain[last]!.to !== from) continue;
        const shorter = chain.filter((move, at) => at < first || at > last || move.aspect !== aspect);
        if (!leads(standing, shorter)) continue;
        chain = shorter;
        again = true;
        break;
      }
    }
  }
  return chain;
}

function leads(standing: Standing, moves: readonly Move[]): boolean {
  const now = [...standing];
  for (const move of moves) {
    if (now[move.aspect] !== move.from || !move.setUps.every((need) => meets(now, need))) return false;
    now[move.aspect] = move.to;
  }
  return true;
}
