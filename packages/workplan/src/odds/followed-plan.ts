import { dewMargin_C } from '#sky';
import type { Plan } from '../plan.ts';
import type { Minute, PlanHour } from '../problem.ts';
import type { Compiled, CompiledStep, CompiledWait } from '../search/compiled.ts';
import { AllowedMinutes } from './allowed-minutes.ts';
import { DayChain } from './day-chain.ts';
import { PlanInForce } from './plan-in-force.ts';
import { type PlanToFollow, planToFollow } from './plan-to-follow.ts';
import { type Airborne, isDone, isOpen, RunState } from './run-state.ts';
import { type Move, meets, SetUpMoves } from './set-up-moves.ts';

/** Why a step cannot start now. */
const reason = { started: 0, notNow: 1, later: 2, setUps: 3 } as const;

/** The keeper waits this long, rather than change a set-up, for work planned before it. Our assumption. [min] */
const assumedPatience_min = 30;

/**
 * A plan as it is followed when steps take longer or shorter and the sky is other than said.
 *
 * The keeper goes by the plan's order: whatever comes first and can be done, is done, with the set-up changes the plan
 * has, each by the latest minute at which it and those after it can still be made that day. Where it has slipped by
 * half an hour, and in the morning after such a day, what is left is laid again (`plan-again.ts`): what dates need
 * first, then what is worth most. Between those, what slips comes in where there is time. A step
 * is begun where its likely time fits; it may run over into a break, and is left off where the day's last set-up
 * changes must begin, the rest to be done another day. The sky over a step is seen when it begins, that over a wait is
 * not: what rain reaches is to be done again. A
 * job that can no longer be in time is given up. Nothing the plan leaves out is taken in. What is executed keeps the
 * rules of `violations`, with the times and the sky of the run; a test holds it to that.
 */
export class FollowedPlan {
  readonly compiled: Compiled;
  readonly state: RunState;
  /** days with work in them that did not end in the set-ups they must: nothing could be done about it */
  readonly openDays: number[] = [];
  private readonly allowed: AllowedMinutes;
  private readonly moves: SetUpMoves;
  private readonly chain: DayChain;
  private readonly inForce: PlanInForce;
  private readonly plan: PlanToFollow;
  /** nothing is begun before its planned minute */
  private readonly byTheClock: boolean;
  private minutesOf: (step: number, day: number) => Minute = () => 0;
  private until: Minute = 0;
  /** until when the hands free now are kept for a step that needs more of them */
  private reserved: Minute = Number.POSITIVE_INFINITY;
  /** steps that can soon be started as the set-ups stand */
  private readonly patient: number[] = [];
  private worked = false;

  constructor(compiled: Compiled, plan: Plan, byTheClock: boolean) {
    this.compiled = compiled;
    this.byTheClock = byTheClock;
    this.allowed = new AllowedMinutes(compiled);
    this.moves = new SetUpMoves(compiled, this.allowed);
    this.state = new RunState(compiled);
    this.chain = new DayChain(this.state, this.allowed, compiled);
    this.plan = planToFollow(compiled, plan, this.allowed, this.moves, byTheClock);
    this.inForce = new PlanInForce(compiled, this.plan, this.moves);
  }

  /**
   * Follows the plan through one run.
   *
   * @param hours      the weather of the run
   * @param minutesOf  how long a step takes when it is done on a day (by index), mixing in it. whole, ≥ 1
   */
  follow(hours: readonly PlanHour[], minutesOf: (step: number, day: number) => Minute): void {
    const { state, compiled, chain } = this;
    this.allowed.under(hours);
    this.minutesOf = minutesOf;
    this.openDays.length = 0;
    state.begin(hours);
    this.inForce.begin();
    let today = -1;
    let usable = false;
    for (const stretch of compiled.stretches) {
      state.runTo(stretch.from);
      if (stretch.day !== today) {
        this.closeDay(today);
        today = stretch.day;
        this.worked = false;
        this.inForce.laidAgain(state, stretch.from, -1);
        const { endsIn } = compiled.days[today]!;
        const planned = this.plan.moves[today]!;
        const moves = this.moves.sound(
          state.standing,
          planned.map(({ move }) => move),
          endsIn,
        );
        const usual = moves ?? this.moves.route(state.standing, endsIn);
        usable = usual !== null && chain.open(today, usual, planned);
      }
      if (usable) this.workThrough(stretch.from, stretch.to);
    }
    this.closeDay(today);
    state.runTo(compiled.horizon);
  }

  /** Takes the changes of the day at hand from the plan as it is now. */
  private openAgain(): void {
    const { state, chain } = this;
    const planned = this.plan.moves[chain.day]!;
    const moves = this.moves.sound(
      state.standing,
      planned.map(({ move }) => move),
      this.compiled.days[chain.day]!.endsIn,
    );
    if (moves !== null) chain.open(chain.day, moves, planned);
  }

  private closeDay(day: number): void {
    if (day < 0 || !this.worked) return;
    this.state.runTo(Math.max(this.state.cursor, Math.min(this.compiled.horizon, this.compiled.days[day]!.to)));
    if (!this.compiled.days[day]!.endsIn.every((need) => meets(this.state.standing, need))) this.openDays.push(day);
  }

  private workThrough(from: Minute, to: Minute): void {
    const { state } = this;
    let now = from;
    let edge = this.plan.edges.findIndex((minute) => minute > now);
    while (now < to) {
      state.runTo(now);
      if (this.inForce.laidAgain(state, now, this.worked ? this.chain.day : -1)) this.openAgain();
      this.dispatch(now);
      let next = to;
      while (this.plan.edges[edge]! <= now) edge++;
      next = Math.min(next, this.plan.edges[edge] ?? to);
      for (const index of state.running) next = Math.min(next, Math.max(now + 1, state.finish[index]!));
      if (state.changing !== null) next = Math.min(next, state.changing.finish);
      for (const { end } of state.waits) if (end > now && end < next) next = end;
      const latest = this.chain.latest;
      if (latest > now && latest < next) next = latest;
      if (this.until > now && this.until < next) next = this.until;
      if (this.byTheClock && this.inForce.isLaidAgain) next = this.inForce.nextStart(this.chain.day, now, next);
      now = next;
    }
    state.runTo(now);
  }

  /** Starts whatever is to be started at a minute. */
  private dispatch(now: Minute): void {
    for (let again = true; again; ) {
      again = false;
      if (!this.coverUp(now)) this.changeDue(now);
      let guard = Number.POSITIVE_INFINITY;
      let next = Number.POSITIVE_INFINITY;
      let wished = false;
      this.patient.length = 0;
      this.reserved = Number.POSITIVE_INFINITY;
      for (const index of this.inForce.order) {
        if (this.state.status[index] !== isOpen) continue;
        const step = this.compiled.steps[index]!;
        if (this.state.jobLost[step.job] === 1) continue;
        const before = guard;
        let why = this.tryStart(step, now, guard);
        if (why === reason.started) again = true;
        else if (why === reason.later) {
          if (this.until > now) next = Math.min(next, this.until);
          // what comes first keeps its hands free, and the set-ups it needs
          if (step.hands > 0 && this.plan.starts[index]! <= now + 240) guard = Math.min(guard, this.until);
          if (this.until <= now + assumedPatience_min && this.hasSetUps(step)) this.patient.push(index);
          const way_min = this.chain.minutesTo(step.setUps);
          const due = this.chain.plannedStart();
          if (this.until <= now + way_min || (way_min >= 0 && due > 0 && due <= now)) why = reason.setUps;
        }
        if (why !== reason.setUps) continue;
        wished = true;
        if (this.state.changing === null && this.state.busyTo[0]! <= now && this.changeFor(index, now, before))
          again = true;
      }
      this.until = next;
      if (again) continue;
      if (this.state.changing !== null || this.state.busyTo[0]! > now) return;
      if (this.chain.latest <= now || (!wished && next === Number.POSITIVE_INFINITY)) again = this.close(now);
    }
  }

  /** Makes the change that the plan has now and that must be made today, where no step before it still waits. */
  private changeDue(now: Minute): boolean {
    const { chain, state } = this;
    const due = chain.plannedStart();
    const move = chain.mustMake();
    if (move === null || due <= 0 || due > now || state.changing !== null || state.busyTo[0]! > now) return false;
    const stands = this.inForce.order.some((index) => {
      if (this.plan.starts[index]! >= due || state.status[index] !== isOpen) return false;
      if (state.jobLost[this.compiled.steps[index]!.job] === 1) return false;
      return this.plan.needs[index]!.some(
        ({ aspect, mask }) => aspect === move.aspect && (mask & (1 << move.to)) === 0,
      );
    });
    return !stands && this.make(move, now);
  }

  private hasSetUps(step: CompiledStep): boolean {
    return step.setUps.every((need) => meets(this.state.standing, need));
  }

  /** Makes the next change that must still be made today, leaving out what would go there and back for nothing. */
  private close(now: Minute): boolean {
    this.chain.shorten();
    const move = this.chain.next();
    if (move === null) return false;
    if (this.byTheClock && this.chain.plannedStart() > now && this.chain.latest > now) return false;
    return this.make(move, now);
  }

  private make(move: Move, now: Minute): boolean {
    const { state, chain } = this;
    const hands = this.handsFree(move.hands, true, now, now + move.minutes, []);
    if (hands === null || state.changing !== null || !chain.canMake(move, now)) return false;
    state.change({ move, start: now, finish: now + move.minutes, hands, day: chain.day });
    chain.made(move);
    this.worked = true;
    return true;
  }

  /** Makes the first change on the way to what a step needs, if there is time for it all. */
  private changeFor(index: number, now: Minute, guard: Minute): boolean {
    const { chain } = this;
    const step = this.compiled.steps[index]!;
    const needs = this.plan.needs[index]!;
    const lasts = this.lastsNow(step, step.minutes, this.state.left[index]!);
    if (!this.byTheClock && this.plan.starts[index]! > now && now + lasts > guard) return false;
    const way = chain.wayTo(needs, lasts, now) ?? chain.wayAndBack(needs, lasts, now, this.moves);
    const move = way?.[0];
    if (way === null || move === undefined) return false;
    if (this.byTheClock && chain.next() === move && chain.plannedStart() > now) return false;
    if (!chain.canMake(move, now) || this.handsFree(move.hands, true, now, now + move.minutes, []) === null)
      return false;
    const waited = (other: number) =>
      this.plan.starts[other]! <= this.plan.starts[index]! &&
      this.compiled.steps[other]!.setUps.some(
        ({ aspect, mask }) => aspect === move.aspect && (mask & (1 << move.to)) === 0,
      );
    if (this.patient.some((other) => other !== index && waited(other)) && step.hands > 0) return false;
    chain.take(way);
    return this.make(move, now);
  }

  /** Covers what must stay dry when rain is coming within the hour. */
  private coverUp(now: Minute): boolean {
    const { state, compiled } = this;
    if (state.waits.length === 0 || state.changing !== null || state.busyTo[0]! > now) return false;
    if (state.sheltered() || !state.rainOnWaits(now, (Math.floor(now / 60) + 2) * 60)) return false;
    for (const { index, sheltering, states } of compiled.aspects)
      for (let state_ = 0; state_ < states; state_++) {
        if ((sheltering & (1 << state_)) === 0) continue;
        const move = this.moves.between(index, state.standing[index]!, state_);
        if (move === null || !this.chain.canMake(move, now)) continue;
        const back = this.chain.wayRound(move, this.moves, now);
        if (back === null) continue;
        this.chain.take(back);
        if (this.make(move, now)) return true;
      }
    return false;
  }

  /** Whether something could be put on over a wait between the end of its step and the rain. */
  private coversBy(wait: CompiledWait, finish: Minute, rain: Minute): boolean {
    const { state } = this;
    return this.compiled.aspects.some(({ index, sheltering, states }) => {
      if (wait.still.includes(index) || wait.setUps.some(({ aspect }) => aspect === index)) return false;
      for (let to = 0; to < states; to++) {
        const move = (sheltering & (1 << to)) === 0 ? null : this.moves.between(index, state.standing[index]!, to);
        if (move !== null && finish + move.minutes <= rain) return true;
      }
      return false;
    });
  }

  /** Starts a step if it can be started at a minute; `until`: when to look again, where it says later. */
  private tryStart(step: CompiledStep, now: Minute, guard: Minute): number {
    const { state, compiled, allowed, chain } = this;
    const { index } = step;
    const early = this.plan.starts[index]! > now;
    if (this.byTheClock && early) return this.later(this.plan.starts[index]!);
    let ready = step.earliest;
    let abrade = 0;
    for (const tie of step.before) {
      const end = state.endOf(tie);
      if (end === Number.POSITIVE_INFINITY) return reason.notNow;
      ready = Math.max(ready, end + tie.least);
      if (tie.greatest < 0 || Math.max(now, ready) <= end + tie.greatest) continue;
      if (tie.abrade < 0) {
        state.jobLost[step.job] = 1;
        return reason.notNow;
      }
      abrade = Math.max(abrade, tie.abrade);
    }
    const stretchTo = allowed.stretchTo[now]!;
    if (ready > now) return ready < compiled.days[chain.day]!.to ? this.later(ready) : reason.notNow;
    const left = state.left[index]!;
    let lasts = this.lastsNow(step, this.minutesOf(index, chain.day), left) + abrade;
    let likely = this.lastsNow(step, step.minutes, left) + abrade;
    let batchOf = -1;
    if (step.mix >= 0)
      for (const { step: other, mixed } of state.batches[step.mix]!) {
        if (other === index) continue;
        if (mixed > now) {
          if (other === this.plan.batchOf[index]) return this.later(mixed);
          continue;
        }
        if (now + lasts - step.mixing > mixed + step.potLife) continue;
        batchOf = other;
        lasts -= step.mixing;
        likely -= step.mixing;
        break;
      }
    const { deadline } = compiled.jobs[step.job]!;
    if (now + lasts > Math.min(deadline, step.latestFinish)) {
      state.jobLost[step.job] = 1;
      return reason.notNow;
    }
    const dayTo = compiled.days[chain.day]!.to;
    // a step may run over into a break, and is left off where it would run over what the day must end with
    const beside = step.hands === 0 || (!step.keeper && chain.goesBeside(step, this.handsThereAt(now)));
    const limit = beside ? chain.workEnd : Math.min(chain.latest, chain.workEnd);
    if (now + Math.min(likely, lasts) > stretchTo) {
      const then = compiled.stretches.find(({ from, day }) => from > now && day === chain.day);
      return then === undefined || likely > then.to - then.from ? reason.notNow : this.later(then.from);
    }
    if (now + Math.min(likely, lasts) > limit) return reason.notNow;
    const isCut = now + lasts > limit;
    if (isCut && (step.mix >= 0 || step.hands === 0)) return reason.notNow;
    const finish = isCut ? limit : now + lasts;
    const leftThen = isCut ? left * (1 - (limit - now) / lasts) : 0;
    if (step.hands > 0 && finish > this.reserved) return reason.notNow;
    if (early && finish > guard) return reason.notNow;
    for (const feature of step.source.features)
      if (!compiled.problem.days[chain.day]!.features.includes(feature)) return reason.notNow;
    const kind = this.plan.kinds[index]!;
    const bad = allowed.lastUnsuited(kind, now, finish);
    if (bad >= 0)
      return (bad + 1) * 60 + lasts <= dayTo ? this.later(Math.max(now + 60, (bad + 1) * 60)) : reason.notNow;
    if (!allowed.light(kind, now, finish)) return reason.notNow;
    if (step.notAlone && allowed.twoTo[now]! < finish) return reason.notNow;
    const things = this.thingsInTheWay(step, now, finish, step.source.dusty ? finish : Math.min(finish, now + abrade));
    if (things > 0) return this.later(things);
    for (let wait = 0; wait < step.waits.length && !isCut; wait++) {
      const why = this.waitInTheWay(step, wait, finish, deadline);
      if (why !== reason.started) return why === reason.later ? this.later(now + 60) : why;
    }
    const hands = this.handsFree(step.hands, step.keeper, now, finish, this.plan.hands[index]!);
    if (hands === null) {
      const free = this.handsFreeFrom(step, now);
      if (free >= dayTo) return reason.notNow;
      if (step.hands > 1) this.reserved = Math.min(this.reserved, free);
      return this.later(free);
    }
    if (beside && finish > chain.latest && hands.includes(0)) return reason.notNow;
    if (!this.plan.needs[index]!.every((need) => meets(state.standing, need))) return reason.setUps;
    state.enter(step, { start: now, finish, hands, day: chain.day, batchOf, abrade }, leftThen);
    this.worked = true;
    return reason.started;
  }

  /** What is left of a step's time. */
  private lastsNow({ hands, mixing }: CompiledStep, minutes: Minute, left: number): Minute {
    return left === 1 ? minutes : Math.max(hands > 0 ? 1 : 0, mixing, Math.round(minutes * left));
  }

  private handsThereAt(now: Minute): number {
    let there = 0;
    for (const until of this.allowed.presentTo) if (until[now]! > now) there++;
    return there;
  }

  /** When as many hands as a step needs have finished what they are at; Infinity: there are not so many. */
  private handsFreeFrom({ hands, keeper }: CompiledStep, now: Minute): Minute {
    const { busyTo } = this.state;
    const free: Minute[] = [];
    for (let hand = 0; hand < busyTo.length; hand++)
      if (this.allowed.presentTo[hand]![now]! > now) free.push(Math.max(now, busyTo[hand]!));
    free.sort((a, b) => a - b);
    const from = free[hands - 1] ?? Number.POSITIVE_INFINITY;
    const all = keeper ? Math.max(from, busyTo[0]!) : from;
    return all > now ? all : Number.POSITIVE_INFINITY;
  }

  private later(minute: Minute): number {
    this.until = minute;
    return reason.later;
  }

  /** When the tools, the room or clean air a step needs may be free; 0: they are. */
  private thingsInTheWay(step: CompiledStep, now: Minute, finish: Minute, dustTo: Minute): Minute {
    const { state, compiled, allowed } = this;
    let free = 0;
    for (const { tool, count } of step.tools)
      if (!allowed.toolsThere(tool, now, finish, count + state.toolsUsed[tool]!)) free = now + 30;
    if (step.zone < 0) return free;
    if (step.hands > 0 && state.roomUsed[step.zone]! + step.hands > compiled.problem.zones[step.zone]!.room)
      free = now + 30;
    if (dustTo > now)
      for (const wet of state.wet) if (this.reaches(wet, step, now, dustTo)) free = Math.max(free, wet.to);
    for (const dust of state.dust) {
      if (dust.to <= now) continue;
      const wetAfter =
        dust.to > finish && step.waits.some(({ wet }, at) => wet && step.source.waits[at]!.law.kind !== 'never cures');
      if (step.source.wet && this.reaches(dust, step, now, finish)) free = Math.max(free, dust.to);
      else if (wetAfter && this.reaches(dust, step, finish, dust.to)) free = Math.max(free, dust.to);
    }
    return free;
  }

  private reaches(air: Airborne, step: CompiledStep, from: Minute, to: Minute): boolean {
    return (
      air.step !== step.index &&
      Math.max(air.from, from) < Math.min(air.to, to) &&
      this.compiled.near[step.zone]!.includes(air.zone)
    );
  }

  /** Whether a wait would keep its needs, as far as one can tell when its step begins. */
  private waitInTheWay(step: CompiledStep, number: number, finish: Minute, deadline: Minute): number {
    const { state, compiled } = this;
    const wait = step.waits[number]!;
    const end = state.cureEnd(step, number, finish);
    if (end < 0 || end > deadline) {
      if (end > deadline) state.jobLost[step.job] = 1;
      return reason.notNow;
    }
    if (end <= finish) return reason.started;
    if (!this.chain.leavesBe(wait, end)) return reason.notNow;
    const { changing } = state;
    if (changing !== null && changing.finish > finish && wait.still.includes(changing.move.aspect)) return reason.later;
    const least_C = step.source.waits[number]!.needs.air_min_C ?? -60;
    const sticksTo = wait.beforeDew === null ? finish : state.sticksTo(step, number, finish, end);
    const margin_C = step.source.waits[number]!.needs.beforeDew?.dewMargin_min_C ?? 0;
    const last = Math.ceil(end / 60) - 1;
    for (let hour = Math.floor(finish / 60); hour <= last; hour++) {
      // the hour at hand and the next are seen, later ones are as said
      const seen = hour * 60 < finish + 60 ? state.hours[hour]! : compiled.problem.hours[hour]!;
      if (seen.air_C < least_C) return reason.notNow;
      if (Math.max(finish, hour * 60) < sticksTo && !seen.sheltered && dewMargin_C(seen) < margin_C)
        return reason.notNow;
      if (!wait.dry || !seen.rain || seen.sheltered || this.plan.sheltered[hour] === 1 || state.sheltered()) continue;
      if (!this.coversBy(wait, finish, hour * 60)) return reason.later;
    }
    return reason.started;
  }

  /** Hands that are there and free, those planned first; the keeper is spared where he is not asked for. */
  private handsFree(
    count: number,
    keeper: boolean,
    from: Minute,
    to: Minute,
    planned: readonly number[],
  ): readonly number[] | null {
    if (count === 0) return [];
    if (keeper && !this.isFree(0, from, to)) return null;
    const hands = keeper ? [0] : [];
    for (const hand of planned)
      if (hands.length < count && !hands.includes(hand) && this.isFree(hand, from, to)) hands.push(hand);
    for (let hand = this.state.busyTo.length - 1; hand >= 0 && hands.length < count; hand--)
      if (!hands.includes(hand) && this.isFree(hand, from, to)) hands.push(hand);
    return hands.length === count ? hands : null;
  }

  private isFree(hand: number, from: Minute, to: Minute): boolean {
    return this.state.busyTo[hand]! <= from && this.allowed.presentTo[hand]![from]! >= to;
  }

  /** Whether all open steps of a job, and all its waits, were over by its deadline, or by another minute. */
  jobInTime(job: number, deadline: number = this.compiled.jobs[job]!.deadline): boolean {
    const { state, compiled } = this;
    if (state.jobLost[job] === 1) return false;
    for (const step of compiled.steps) {
      if (step.job !== job) continue;
      if (state.status[step.index] !== isDone || state.finish[step.index]! > deadline) return false;
      for (const end of state.waitEnd[step.index]!)
        if (end > deadline || (end < 0 && state.finish[step.index]! >= 0)) return false;
    }
    return true;
  }
}
