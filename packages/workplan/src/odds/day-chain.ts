import type { Minute } from '../problem.ts';
import type { AspectNeed, Compiled, CompiledStep, CompiledWait } from '../search/compiled.ts';
import type { AllowedMinutes } from './allowed-minutes.ts';
import type { RunState } from './run-state.ts';
import { type Move, meets, type SetUpMoves, standingAfter, withoutLoops } from './set-up-moves.ts';

/**
 * The set-up changes still to be made on a day, in order, and by when: the latest minute at which those that must be
 * made (without what goes there and back for nothing) can still all be made before the day is over.
 */
export class DayChain {
  day = 0;
  /** the end of the day's work */
  workEnd: Minute = 0;
  /** the latest start of the next change that must be made; the end of the day's work where none must */
  latest: Minute = 0;
  private chain: readonly Move[] = [];
  private closing: readonly Move[] = [];
  private closingStarts: readonly Minute[] = [];
  private planned: readonly { readonly move: Move; readonly start: Minute }[] = [];
  private readonly state: RunState;
  private readonly allowed: AllowedMinutes;
  private readonly stretches: Compiled['stretches'];
  private readonly days: Compiled['days'];
  private from: Minute = 0;

  constructor(state: RunState, allowed: AllowedMinutes, compiled: Compiled) {
    this.state = state;
    this.allowed = allowed;
    this.stretches = compiled.stretches;
    this.days = compiled.days;
  }

  /** Opens a day with its changes; false: they cannot be made, so nothing is begun on it. */
  open(
    day: number,
    moves: readonly Move[],
    planned: readonly { readonly move: Move; readonly start: Minute }[],
  ): boolean {
    this.day = day;
    this.workEnd = this.stretches.findLast((stretch) => stretch.day === day)?.to ?? 0;
    this.planned = planned;
    this.from = this.state.cursor;
    this.take(moves);
    return this.latest >= this.from;
  }

  take(moves: readonly Move[]): void {
    this.chain = moves;
    this.reckon();
  }

  next(): Move | null {
    return this.chain[0] ?? null;
  }

  /** The next change, where it must be made today; null where it only goes there and back, or there is none. */
  mustMake(): Move | null {
    const next = this.chain[0];
    return next !== undefined && this.closing[0] === next ? next : null;
  }

  /** When the plan has the next change; 0: it is not in the plan. */
  plannedStart(): Minute {
    return this.planned.find(({ move }) => move === this.chain[0])?.start ?? 0;
  }

  shorten(): void {
    this.take(this.closing);
  }

  /** Takes note that a change is being made. It must be the first of the chain. */
  made(move: Move): void {
    if (this.chain[0] !== move) throw new RangeError('a change is made out of turn');
    this.chain = this.chain.slice(1);
    const first = this.planned.findIndex((each) => each.move === move);
    this.planned = this.planned.filter((_, at) => at !== first);
    this.reckon();
  }

  /** How the boat stands once the change under way is over. */
  private standing(): readonly number[] {
    const { changing, standing } = this.state;
    return changing === null ? standing : standingAfter(standing, [changing.move]);
  }

  private reckon(): void {
    this.closing = withoutLoops(this.standing(), this.chain);
    this.closingStarts = this.latestStarts(this.closing);
    this.latest = this.closingStarts[0] ?? this.workEnd;
  }

  /** By when each of some changes must start so that all can be made today; −1: it cannot. */
  private latestStarts(moves: readonly Move[]): Minute[] {
    const starts: Minute[] = new Array(moves.length);
    let before = this.workEnd;
    for (let at = moves.length - 1; at >= 0; at--) {
      before = before < 0 ? -1 : this.latestStart(moves[at]!, before);
      starts[at] = before;
    }
    return starts;
  }

  private latestStart({ minutes, hands, kind }: Move, before: Minute): Minute {
    for (let n = this.stretches.length - 1; n >= 0; n--) {
      const { day, from, to } = this.stretches[n]!;
      if (day !== this.day || from >= before) continue;
      for (let start = Math.min(to, before) - minutes; start >= from; ) {
        const bad = this.allowed.lastUnsuited(kind, start, start + minutes);
        if (bad >= 0) start = bad * 60 - minutes;
        else if (
          this.allowed.light(kind, start, start + minutes) &&
          this.allowed.handsThere(hands, start, start + minutes)
        )
          return start;
        else start--;
      }
    }
    return -1;
  }

  /** Whether a change may be made from a minute on, hands aside. */
  canMake({ aspect, from, minutes, hands, setUps, kind }: Move, now: Minute): boolean {
    const { state, allowed } = this;
    const to = now + minutes;
    return (
      state.standing[aspect] === from &&
      setUps.every((need) => meets(state.standing, need)) &&
      allowed.stretchTo[now]! >= to &&
      allowed.handsThere(hands, now, to) &&
      allowed.light(kind, now, to) &&
      allowed.lastUnsuited(kind, now, to) < 0 &&
      !state.locked(aspect, now, to)
    );
  }

  /** The chain, if going along it leads to the needs with time enough for the work and for what must follow. */
  wayTo(needs: readonly AspectNeed[], lasts: Minute, now: Minute): readonly Move[] | null {
    let standing = [...this.state.standing];
    let spent = 0;
    for (let at = 0; at < this.chain.length; at++) {
      const move = this.chain[at]!;
      standing = standingAfter(standing, [move]);
      spent += move.minutes;
      if (!needs.every((need) => meets(standing, need))) continue;
      return this.fits(standing, this.chain.slice(at + 1), now + spent + lasts) ? this.chain : null;
    }
    return null;
  }

  /** Minutes of changes along the chain until the needs are met; −1: they are, or are not on that way. */
  minutesTo(needs: readonly AspectNeed[]): Minute {
    if (this.chain.length === 0 || needs.every((need) => meets(this.state.standing, need))) return -1;
    const standing = [...this.state.standing];
    let spent = 0;
    for (const move of this.chain) {
      standing[move.aspect] = move.to;
      spent += move.minutes;
      if (needs.every((need) => meets(standing, need))) return spent;
    }
    return -1;
  }

  /** The chain with changes to the needs, and back to where it goes on, put before it. */
  wayAndBack(needs: readonly AspectNeed[], lasts: Minute, now: Minute, moves: SetUpMoves): readonly Move[] | null {
    const { standing } = this.state;
    const there = moves.route(standing, needs);
    if (there === null || there.length === 0) return null;
    const then = standingAfter(standing, there);
    const back = moves.routeBack(then, standing);
    if (back === null) return null;
    const spent = there.reduce((sum, { minutes }) => sum + minutes, 0);
    const rest = [...back, ...this.chain];
    return this.fits(then, rest, now + spent + lasts) ? [...there, ...rest] : null;
  }

  /** The chain with a change before it, made sound after it, if what must be made today can still be. */
  wayRound(move: Move, moves: SetUpMoves, now: Minute): readonly Move[] | null {
    const then = standingAfter(this.state.standing, [move]);
    const rest = moves.sound(then, this.chain, this.days[this.day]!.endsIn);
    return rest !== null && this.fits(then, rest, now + move.minutes) ? [move, ...rest] : null;
  }

  private fits(standing: readonly number[], rest: readonly Move[], now: Minute): boolean {
    const closing = withoutLoops(standing, rest);
    return closing.length === 0 ? now <= this.workEnd : this.latestStarts(closing)[0]! >= now;
  }

  /** Whether the changes that must be made today can be made beside a step, by the hands that it leaves. */
  goesBeside({ hands, setUps, waits }: CompiledStep, there: number): boolean {
    const asks = ({ aspect }: Move) =>
      setUps.some((need) => need.aspect === aspect) ||
      waits.some((wait) => wait.still.includes(aspect) || wait.setUps.some((need) => need.aspect === aspect));
    return this.closing.every((move) => move.hands + hands <= there && !asks(move));
  }

  /** Whether the changes that must be made today can wait until a wait is over. */
  leavesBe({ setUps, still }: CompiledWait, end: Minute): boolean {
    return this.closing.every(
      ({ aspect }, at) =>
        this.closingStarts[at]! >= end || !(still.includes(aspect) || setUps.some((need) => need.aspect === aspect)),
    );
  }
}
