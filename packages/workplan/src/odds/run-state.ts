import { belowMinimum, type CureLaw, curePerMinute } from '#materials';
import { dewMargin_C } from '#sky';
import type { Minute, PlanHour } from '../problem.ts';
import type { Compiled, CompiledStep, Tie } from '../search/compiled.ts';
import type { Move } from './set-up-moves.ts';

export const isOpen = 0;
export const isRunning = 1;
export const isDone = 2;

/** A wait that runs, or will when its step is finished. */
interface RunningWait {
  readonly step: number;
  readonly wait: number;
  readonly from: Minute;
  readonly end: Minute;
  /** −60 °C: it does not ask */
  readonly cold_C: number;
  readonly dry: boolean;
  /** until it is dry to the touch dew must not come near it; `from`: it does not ask */
  readonly sticksTo: Minute;
  readonly dewMargin_min_C: number;
}

export interface Airborne {
  readonly step: number;
  readonly zone: number;
  readonly from: Minute;
  to: Minute;
}

export interface MadeMove {
  readonly move: Move;
  readonly start: Minute;
  readonly finish: Minute;
  readonly hands: readonly number[];
  readonly day: number;
}

/** A step that spoils more often than this is given up. Our assumption. */
const assumedMostTries = 4;

/**
 * How things stand in one run: what is under way, done and waiting, how the set-ups stand, what rain or cold has
 * spoiled. A coat that rain reaches, or a cure that gets too cold, is to be done again with all that came after it.
 */
export class RunState {
  readonly compiled: Compiled;
  hours: readonly PlanHour[];
  /** how far the run has come */
  cursor: Minute = 0;
  readonly status: Uint8Array;
  readonly start: Int32Array;
  readonly finish: Int32Array;
  readonly day: Int32Array;
  readonly batchOf: Int32Array;
  readonly abrade: Int32Array;
  readonly hands: (readonly number[])[];
  /** by step and wait; −1: not over by the horizon */
  readonly waitEnd: Int32Array[];
  readonly tries: Uint8Array;
  /** share of a step's time still to be done; under 1 where it was begun and left off at a day's end */
  readonly left: Float64Array;
  /** 1: what is under way of the step will be left off at its `finish`, with `leftThen` of it still to be done */
  readonly cut: Uint8Array;
  readonly leftThen: Float64Array;
  readonly jobLost: Uint8Array;
  standing: number[] = [];
  changing: MadeMove | null = null;
  made: MadeMove[] = [];
  readonly busyTo: Int32Array;
  readonly running: number[] = [];
  waits: RunningWait[] = [];
  dust: Airborne[] = [];
  wet: Airborne[] = [];
  readonly batches: { step: number; mixed: Minute }[][];
  /** grows with whatever is begun, finished or spoiled */
  changes = 0;
  readonly toolsUsed: Int32Array;
  readonly roomUsed: Int32Array;

  /** by step and wait: the number of its law; by law and hour: its rate, kept from one asking to the next of a run */
  private readonly lawOf: readonly (readonly number[])[];
  private readonly touchLawOf: readonly (readonly number[])[];
  private readonly rates: readonly { readonly known: Int32Array; readonly perMinute: Float64Array }[];
  private run = 0;

  constructor(compiled: Compiled) {
    this.compiled = compiled;
    this.hours = compiled.problem.hours;
    const { problem, steps } = compiled;
    this.status = new Uint8Array(steps.length);
    this.start = new Int32Array(steps.length);
    this.finish = new Int32Array(steps.length);
    this.day = new Int32Array(steps.length);
    this.batchOf = new Int32Array(steps.length);
    this.abrade = new Int32Array(steps.length);
    this.hands = steps.map(() => []);
    this.waitEnd = steps.map((step) => new Int32Array(step.waits.length));
    this.tries = new Uint8Array(steps.length);
    this.left = new Float64Array(steps.length).fill(1);
    this.cut = new Uint8Array(steps.length);
    this.leftThen = new Float64Array(steps.length);
    this.jobLost = new Uint8Array(problem.jobs.length);
    this.busyTo = new Int32Array(problem.hands.length);
    this.batches = problem.mixes.map(() => []);
    this.toolsUsed = new Int32Array(problem.tools.length);
    this.roomUsed = new Int32Array(problem.zones.length);
    const laws = new Map<string, number>();
    const numberOf = (law: CureLaw) => {
      const key = JSON.stringify(law);
      if (!laws.has(key)) laws.set(key, laws.size);
      return laws.get(key)!;
    };
    this.lawOf = steps.map(({ source }) => source.waits.map(({ law }) => numberOf(law)));
    this.touchLawOf = steps.map(({ source }) =>
      source.waits.map(({ needs }) => (needs.beforeDew === undefined ? -1 : numberOf(needs.beforeDew.touchDry))),
    );
    const hours = problem.hours.length;
    this.rates = Array.from({ length: laws.size }, () => ({
      known: new Int32Array(hours),
      perMinute: new Float64Array(hours),
    }));
  }

  /** Begins a run with what has begun already. */
  begin(hours: readonly PlanHour[]): void {
    const { compiled } = this;
    this.hours = hours;
    this.run++;
    this.cursor = compiled.now;
    this.status.fill(isOpen);
    this.tries.fill(0);
    this.left.fill(1);
    this.cut.fill(0);
    this.jobLost.fill(0);
    this.busyTo.fill(0);
    this.toolsUsed.fill(0);
    this.roomUsed.fill(0);
    this.standing = compiled.aspects.map(({ initial }) => initial);
    this.changing = null;
    this.made = [];
    this.running.length = 0;
    this.waits = [];
    this.dust = [];
    this.wet = [];
    for (const list of this.batches) list.length = 0;
    for (const step of compiled.steps) {
      if (step.fixed === null) continue;
      const { start, finish, hands } = step.fixed;
      this.enter(step, { start, finish, hands, day: -1, batchOf: -1, abrade: 0 });
      if (finish <= compiled.now || step.source.progress.kind !== 'under way') {
        this.leave(step);
        this.running.pop();
      }
    }
  }

  /** Takes a step up. Its end, and the ends of its waits, are those of this run. */
  enter(
    step: CompiledStep,
    at: { start: Minute; finish: Minute; hands: readonly number[]; day: number; batchOf: number; abrade: Minute },
    leftThen = 0,
  ): void {
    const { index, zone } = step;
    const { start, finish, hands } = at;
    this.changes++;
    this.status[index] = isRunning;
    this.start[index] = start;
    this.finish[index] = finish;
    this.day[index] = at.day;
    this.batchOf[index] = at.batchOf;
    this.abrade[index] = at.abrade;
    this.hands[index] = hands;
    this.running.push(index);
    this.cut[index] = leftThen > 0 ? 1 : 0;
    this.leftThen[index] = leftThen;
    for (const hand of hands) this.busyTo[hand] = Math.max(this.busyTo[hand]!, finish);
    for (const { tool, count } of step.tools) this.toolsUsed[tool]! += count;
    if (zone >= 0) {
      this.roomUsed[zone]! += hands.length;
      if (step.source.dusty) this.dust.push({ step: index, zone, from: start, to: finish });
      else if (at.abrade > 0) this.dust.push({ step: index, zone, from: start, to: start + at.abrade });
      if (step.source.wet) this.wet.push({ step: index, zone, from: start, to: finish });
    }
    if (leftThen > 0) return;
    if (step.mix >= 0 && at.batchOf < 0 && step.fixed === null)
      this.batches[step.mix]!.push({ step: index, mixed: start + at.abrade + step.mixing });
    step.waits.forEach((wait, number) => {
      const end = this.cureEnd(step, number, finish);
      this.waitEnd[index]![number] = end;
      const to = end < 0 && finish >= 0 ? this.compiled.horizon : end;
      if (to <= Math.max(finish, this.compiled.now)) return;
      if (wait.wet && zone >= 0) this.wet.push({ step: index, zone, from: finish, to });
      const cold_C = step.fixed === null ? (step.source.waits[number]!.needs.air_min_C ?? -60) : -60;
      const dry = wait.dry && (step.fixed === null || this.sheltered());
      const asks = step.fixed === null && wait.beforeDew !== null;
      const sticksTo = asks ? this.sticksTo(step, number, finish, to) : finish;
      const dewMargin_min_C = step.source.waits[number]!.needs.beforeDew?.dewMargin_min_C ?? 0;
      this.waits.push({ step: index, wait: number, from: finish, end: to, cold_C, dry, sticksTo, dewMargin_min_C });
    });
  }

  private leave({ index, zone, tools }: CompiledStep): void {
    this.changes++;
    this.status[index] = isDone;
    for (const { tool, count } of tools) this.toolsUsed[tool]! -= count;
    if (zone >= 0) this.roomUsed[zone]! -= this.hands[index]!.length;
  }

  /** When a wait that starts at a minute is over in this run; −1: not by the horizon. As `waitAfter` reckons it. */
  cureEnd(step: CompiledStep, wait: number, from: Minute): Minute {
    return this.lawEnd(step.source.waits[wait]!.law, this.lawOf[step.index]![wait]!, from);
  }

  /** Until when the coat of a wait that asks to be dry to the touch before dew is not, in this run. */
  sticksTo(step: CompiledStep, wait: number, from: Minute, over: Minute): Minute {
    const { touchDry } = step.source.waits[wait]!.needs.beforeDew!;
    const dry = this.lawEnd(touchDry, this.touchLawOf[step.index]![wait]!, from);
    return dry < 0 ? over : Math.min(dry, over);
  }

  private lawEnd(law: CureLaw, number: number, from: Minute): Minute {
    const { horizon } = this.compiled;
    if (from < 0 || law.kind === 'never cures') return from;
    if (law.kind === 'set time') {
      const end = from + Math.ceil(law.minutes);
      return end <= horizon ? end : -1;
    }
    const { known, perMinute } = this.rates[number]!;
    let left = 1 - 1e-9;
    for (let minute = from; minute < horizon; ) {
      const index = Math.floor(minute / 60);
      if (known[index] !== this.run) {
        const hour = this.hours[index]!;
        known[index] = this.run;
        perMinute[index] = belowMinimum(law, hour) ? 0 : curePerMinute(law, hour);
      }
      const rate = perMinute[index]!;
      const inHour = index * 60 + 60 - minute;
      const needed = rate > 0 ? Math.ceil(left / rate) : Number.POSITIVE_INFINITY;
      if (needed <= inHour) return minute + needed;
      left -= rate * inHour;
      minute += inHour;
    }
    return -1;
  }

  /** When what a tie waits for is over; Infinity: it has not begun, or is not over by the horizon. */
  endOf(tie: Tie): Minute {
    if (this.status[tie.before] === isOpen || this.cut[tie.before] === 1) return Number.POSITIVE_INFINITY;
    if (tie.wait < 0) return this.finish[tie.before]!;
    const end = this.waitEnd[tie.before]![tie.wait]!;
    return end < 0 && this.finish[tie.before]! >= 0 ? Number.POSITIVE_INFINITY : end;
  }

  /** Starts a change of a set-up. */
  change(made: MadeMove): void {
    this.changing = made;
    this.standing[made.move.aspect] = -1;
    for (const hand of made.hands) this.busyTo[hand] = made.finish;
    this.made.push(made);
  }

  /** Lets the time run on to a minute: work is finished, waits end, rain and cold spoil what they reach. */
  runTo(to: Minute): void {
    while (true) {
      let next = to;
      for (const index of this.running) if (this.finish[index]! < next) next = this.finish[index]!;
      if (this.changing !== null && this.changing.finish < next) next = this.changing.finish;
      if (next > this.cursor) this.weather(this.cursor, next);
      this.cursor = Math.max(this.cursor, next);
      if (this.changing !== null && this.changing.finish <= this.cursor) {
        this.standing[this.changing.move.aspect] = this.changing.move.to;
        this.changing = null;
      }
      for (let at = this.running.length - 1; at >= 0; at--) {
        const index = this.running[at]!;
        if (this.finish[index]! > this.cursor) continue;
        this.running.splice(at, 1);
        this.leave(this.compiled.steps[index]!);
        if (this.cut[index] === 0) continue;
        this.status[index] = isOpen;
        this.left[index] = this.leftThen[index]!;
      }
      if (this.cursor >= to) return;
    }
  }

  sheltered(): boolean {
    const { aspects } = this.compiled;
    for (let aspect = 0; aspect < aspects.length; aspect++) {
      const state = this.standing[aspect]!;
      if (state >= 0 && (aspects[aspect]!.sheltering & (1 << state)) !== 0) return true;
    }
    return false;
  }

  /** An aspect shelters a wait from rain in this hour or the next, so that it must stay as it is. */
  rainOnWaits(from: Minute, to: Minute): boolean {
    for (const { dry, from: begins, end } of this.waits) {
      if (!dry || end <= from || begins >= to) continue;
      const last = Math.min(this.hours.length - 1, Math.floor((Math.min(end, to) - 1) / 60));
      for (let hour = Math.floor(Math.max(from, begins) / 60); hour <= last; hour++) {
        const { rain, sheltered } = this.hours[hour]!;
        if (rain && !sheltered) return true;
      }
    }
    return false;
  }

  private weather(from: Minute, to: Minute): void {
    if (this.waits.length === 0) return;
    this.waits = this.waits.filter((wait) => wait.end > from);
    const covered = this.sheltered();
    const spoiled: number[] = [];
    for (const { step, from: begins, end, dry, cold_C, sticksTo, dewMargin_min_C } of this.waits) {
      const [a, b] = [Math.max(from, begins), Math.min(to, end)];
      if (b <= a || (cold_C === -60 && (!dry || covered) && sticksTo <= a)) continue;
      for (let hour = Math.floor(a / 60); hour * 60 < b; hour++) {
        const now = this.hours[hour]!;
        const { rain, sheltered, air_C } = now;
        const dewed = Math.max(a, hour * 60) < sticksTo && !sheltered && dewMargin_C(now) < dewMargin_min_C;
        if (!(air_C < cold_C || dewed || (dry && !covered && rain && !sheltered))) continue;
        spoiled.push(step);
        break;
      }
    }
    for (const step of spoiled) this.spoil(step, to);
  }

  /** A step is to be done again, and what was done or begun after it. */
  private spoil(index: number, now: Minute): void {
    if (this.status[index] === isOpen) return;
    const step = this.compiled.steps[index]!;
    if (step.fixed !== null) {
      this.jobLost[step.job] = 1;
      return;
    }
    if (this.status[index] === isRunning) {
      this.running.splice(this.running.indexOf(index), 1);
      this.leave(step);
    }
    this.status[index] = isOpen;
    this.left[index] = 1;
    this.changes++;
    this.tries[index]!++;
    if (this.tries[index]! >= assumedMostTries) this.jobLost[step.job] = 1;
    this.waits = this.waits.filter((wait) => wait.step !== index);
    for (const airborne of [...this.wet, ...this.dust])
      if (airborne.step === index) airborne.to = Math.min(airborne.to, now);
    for (const tie of step.after) this.spoil(tie.after, now);
  }

  /** Whether an aspect must stay as it is for work or a wait over a span. */
  locked(aspect: number, from: Minute, to: Minute): boolean {
    const { steps } = this.compiled;
    for (const index of this.running) {
      const step = steps[index]!;
      const asked = step.fixed === null || this.standsFor(step, aspect);
      if (asked && step.setUps.some((need) => need.aspect === aspect)) return true;
    }
    for (const { step: index, wait, from: begins, end } of this.waits) {
      if (end <= from || (begins >= to && this.status[index] !== isRunning)) continue;
      const { setUps, still } = steps[index]!.waits[wait]!;
      if (still.includes(aspect)) return true;
      if (!setUps.some((need) => need.aspect === aspect)) continue;
      if (steps[index]!.fixed === null || this.standsFor(steps[index]!, aspect)) return true;
    }
    const state = this.standing[aspect]!;
    const shelters = state >= 0 && (this.compiled.aspects[aspect]!.sheltering & (1 << state)) !== 0;
    return shelters && this.rainOnWaits(from, to + 60);
  }

  /** Whether what a begun step asks of an aspect stood at `now`; otherwise nothing is held against the plan. */
  private standsFor(step: CompiledStep, aspect: number): boolean {
    const { initial } = this.compiled.aspects[aspect]!;
    const all = [...step.setUps, ...step.waits.flatMap(({ setUps }) => setUps)];
    return all.some((need) => need.aspect === aspect && (need.mask & (1 << initial)) !== 0);
  }
}
