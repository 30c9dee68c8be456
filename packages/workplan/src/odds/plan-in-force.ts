import type { Minute } from '../problem.ts';
import type { Compiled } from '../search/compiled.ts';
import { PlanAgain } from './plan-again.ts';
import type { PlannedMove, PlanToFollow } from './plan-to-follow.ts';
import { isOpen, type RunState } from './run-state.ts';
import type { SetUpMoves } from './set-up-moves.ts';

/** A keeper this far behind the plan lays the rest of it again. Our assumption. [min] */
const assumedBehind_min = 30;
/** Between two layings of the rest in a day so much goes by. Our assumption. [min] */
const assumedBetween_min = 60;

/** The plan a run goes by: the one given, until it has slipped; then what was laid of the rest, again and again. */
export class PlanInForce {
  readonly plan: PlanToFollow;
  /** steps of the plan, first things first */
  readonly order: number[];
  /** what the plan has before anything has slipped */
  private readonly first: Pick<PlanToFollow, 'starts' | 'hands' | 'batchOf' | 'moves' | 'sheltered'>;
  private readonly firstOrder: readonly number[];
  private readonly again: PlanAgain;
  private readonly compiled: Compiled;
  private readonly setUpMoves: SetUpMoves;
  /** when it was last laid again in this run; −Infinity: it is the plan given */
  private laidAt: Minute = Number.NEGATIVE_INFINITY;

  constructor(compiled: Compiled, plan: PlanToFollow, setUpMoves: SetUpMoves) {
    this.compiled = compiled;
    this.plan = plan;
    this.setUpMoves = setUpMoves;
    const { starts, hands, batchOf, moves, sheltered } = plan;
    this.order = [...starts.keys()]
      .filter((step) => starts[step]! >= 0)
      .sort((a, b) => starts[a]! - starts[b]! || a - b);
    this.firstOrder = [...this.order];
    this.first = {
      starts: Int32Array.from(starts),
      hands: [...hands],
      batchOf: Int32Array.from(batchOf),
      moves: [...moves],
      sheltered: Uint8Array.from(sheltered),
    };
    this.again = new PlanAgain(compiled);
  }

  /** For a new run: the plan as it was given. */
  begin(): void {
    const { plan, first, order, firstOrder } = this;
    plan.starts.set(first.starts);
    plan.batchOf.set(first.batchOf);
    plan.sheltered.set(first.sheltered);
    for (let step = 0; step < plan.hands.length; step++) plan.hands[step] = first.hands[step]!;
    for (let day = 0; day < plan.moves.length; day++) plan.moves[day] = first.moves[day]!;
    for (let at = 0; at < order.length; at++) order[at] = firstOrder[at]!;
    this.laidAt = Number.NEGATIVE_INFINITY;
    this.again.begin();
  }

  /** true where it is no longer the plan that was given */
  get isLaidAgain(): boolean {
    return this.laidAt >= 0;
  }

  /**
   * Lays what is left again, where something of the plan that could still be done has not begun in its time.
   *
   * @param workedDay  the day at hand, where there has been work on it; −1: it is morning
   * @returns          whether it did
   */
  laidAgain(state: RunState, now: Minute, workedDay: number): boolean {
    if (state.changing !== null || !this.isBehind(state, now)) return false;
    if (workedDay >= 0 && now < this.laidAt + assumedBetween_min) return false;
    this.layAgain(state, now, workedDay);
    return true;
  }

  private isBehind(state: RunState, now: Minute): boolean {
    for (const step of this.order) {
      if (this.plan.starts[step]! + assumedBehind_min >= now) return false;
      if (state.status[step] === isOpen && state.jobLost[this.compiled.steps[step]!.job] === 0) return true;
    }
    return false;
  }

  private layAgain(state: RunState, now: Minute, workedDay: number): void {
    const { plan, order, compiled } = this;
    this.laidAt = now;
    const laid = this.again.lay(state, order, plan.starts, now, workedDay);
    const late = compiled.horizon + 1;
    for (const step of order) {
      if (state.status[step] !== isOpen) continue;
      const hasPlace = laid.finish[step]! >= 0;
      plan.starts[step] = hasPlace ? laid.start[step]! : late;
      plan.batchOf[step] = hasPlace ? laid.batchOf[step]! : -1;
      if (hasPlace) plan.hands[step] = laid.hands[step]!;
    }
    order.sort((a, b) => plan.starts[a]! - plan.starts[b]! || a - b);
    const moves: PlannedMove[][] = plan.moves.map(() => []);
    plan.sheltered.fill(0);
    laid.lines.forEach((line, aspect) => {
      const { sheltering } = compiled.aspects[aspect]!;
      line.forEach((spell, at) => {
        for (const { change, start, day } of spell.before)
          moves[day]!.push({ move: this.setUpMoves.between(aspect, change.from, change.to)!, start });
        if ((sheltering & (1 << spell.state)) === 0) return;
        const from = Math.max(now, spell.from);
        const next = line[at + 1];
        const to = next === undefined ? compiled.horizon : (next.before[0]?.start ?? next.from);
        for (let hour = Math.ceil(from / 60); hour * 60 + 60 <= to; hour++) plan.sheltered[hour] = 1;
      });
    });
    moves.forEach((list, day) => {
      plan.moves[day] = list.sort((a, b) => a.start - b.start);
    });
  }

  /** The soonest minute after one, up to another, at which the plan has something of the day begin. */
  nextStart(day: number, now: Minute, to: Minute): Minute {
    let next = to;
    for (const step of this.order) {
      const start = this.plan.starts[step]!;
      if (start > now && start < next) next = start;
    }
    for (const { start } of this.plan.moves[day]!) if (start > now && start < next) next = start;
    return next;
  }
}
