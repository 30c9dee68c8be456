import type { Minute } from '../problem.ts';
import type { Compiled, CompiledChange } from './compiled.ts';
import type { Air } from './hindrances.ts';

/** A stretch over which something needs an aspect to stand in one state, with the changes made just before it. */
export interface Spell {
  readonly from: Minute;
  readonly to: Minute;
  readonly state: number;
  readonly before: readonly MadeChange[];
}

export interface MadeChange {
  readonly change: CompiledChange;
  readonly start: Minute;
  readonly finish: Minute;
  readonly hands: readonly number[];
  readonly day: number;
}

/** Where a step lies. */
export interface Laid {
  readonly start: Minute;
  readonly finish: Minute;
  readonly day: number;
  /** −1: it mixes its own, or nothing */
  readonly batchOf: number;
  readonly abrade: Minute;
  readonly hands: readonly number[];
}

/** A batch of a mix that a step mixed, and from when on others can share it. */
export interface Batch {
  readonly step: number;
  readonly mixed: Minute;
}

const write = { hand: 0, free: 1, tool: 2, zone: 3, dust: 4, wet: 5, line: 6, day: 7, step: 8, batch: 9, minutes: 10 };

/**
 * What is taken when: hands, tools, room, set-ups, dust and wet, and where the steps lie. Everything written is
 * remembered in order, so that a job that does not fit can be taken back whole.
 */
export class Taken {
  readonly compiled: Compiled;
  /** by hand and minute: 1 where a hand is away or busy with a step, 2 with a change of set-up, which may yet be moved */
  readonly busy: readonly Uint8Array[];
  readonly toolLeft: readonly Int16Array[];
  readonly roomLeft: readonly Int16Array[];
  readonly dust: Air;
  readonly wet: Air;
  /** by aspect, in order of time, apart from each other; the first is how it stands at `now`. They are changed in place */
  readonly lines: Spell[][];
  readonly worked: Uint8Array;
  readonly batches: readonly Batch[][];
  /** −1: not placed */
  readonly start: Int32Array;
  readonly finish: Int32Array;
  readonly day: Int32Array;
  readonly batchOf: Int32Array;
  readonly abrade: Int32Array;
  readonly hands: (readonly number[])[];
  setUpMinutes = 0;
  private trail = new Int32Array(4096);
  private length = 0;
  /** spells taken out of the lines, the last on top */
  private readonly oldSpells: Spell[] = [];
  /** by minute: the first stretch of work that ends after it */
  private readonly stretchFrom: Int16Array;
  /** by hand and stretch: the most minutes in a row without a step; −1: not known */
  private readonly freeRuns: readonly Int32Array[];

  constructor(compiled: Compiled) {
    const { problem, horizon, now } = compiled;
    this.compiled = compiled;
    this.busy = compiled.absent.map((away) => Uint8Array.from(away));
    this.toolLeft = compiled.toolCount.map((count) => Int16Array.from(count));
    this.roomLeft = problem.zones.map((zone) => new Int16Array(horizon + 1).fill(Math.min(zone.room, 32000)));
    this.dust = problem.zones.map(() => []);
    this.wet = problem.zones.map(() => []);
    this.lines = compiled.aspects.map((aspect) => [
      { from: Number.NEGATIVE_INFINITY, to: now, state: aspect.initial, before: [] },
    ]);
    this.worked = new Uint8Array(problem.days.length);
    this.batches = problem.mixes.map(() => []);
    const count = compiled.steps.length;
    this.start = new Int32Array(count).fill(-1);
    this.finish = new Int32Array(count).fill(-1);
    this.day = new Int32Array(count).fill(-1);
    this.batchOf = new Int32Array(count).fill(-1);
    this.abrade = new Int32Array(count);
    this.hands = new Array<readonly number[]>(count).fill([]);
    this.stretchFrom = new Int16Array(horizon + 1);
    this.freeRuns = compiled.absent.map(() => new Int32Array(compiled.stretches.length));
    this.readStretches();
  }

  /** To be called where the stretches of work in `compiled` were changed: fewer, or shorter, never more. */
  readStretches(): void {
    const { stretches } = this.compiled;
    this.stretchFrom.fill(stretches.length);
    for (let at = stretches.length - 1; at >= 0; at--) this.stretchFrom.fill(at, 0, stretches[at]!.to);
    for (const runs of this.freeRuns) runs.fill(-1);
  }

  /** the first stretch of work that ends after a minute; as many as there are: none does */
  stretchAt(minute: Minute): number {
    return minute >= this.stretchFrom.length ? this.compiled.stretches.length : this.stretchFrom[Math.max(0, minute)]!;
  }

  /** the day whose stretch of work a minute lies in */
  dayAt(minute: Minute): number {
    return this.compiled.stretches[this.stretchFrom[minute]!]!.day;
  }

  /** a mark to take everything back to */
  mark(): number {
    return this.length;
  }

  takeHand(hand: number, from: Minute, to: Minute): void {
    this.busy[hand]!.fill(1, from, to);
    this.forgetRuns(hand, from, to);
    this.remember(write.hand, hand, from, to, 0);
  }

  takeForChange(hand: number, from: Minute, to: Minute): void {
    this.busy[hand]!.fill(2, from, to);
    this.remember(write.hand, hand, from, to, 1);
  }

  freeFromChange(hand: number, from: Minute, to: Minute): void {
    this.busy[hand]!.fill(0, from, to);
    this.remember(write.free, hand, from, to, 0);
  }

  /** the most minutes in a row within a stretch of work in which a hand is there and has no step */
  longestFree(hand: number, stretch: number): Minute {
    const runs = this.freeRuns[hand]!;
    const known = runs[stretch]!;
    if (known >= 0) return known;
    const busy = this.busy[hand]!;
    const { from, to } = this.compiled.stretches[stretch]!;
    let longest = 0;
    let since = from;
    for (let minute = from; minute < to; minute++)
      if (busy[minute] === 1) {
        if (minute - since > longest) longest = minute - since;
        since = minute + 1;
      }
    if (to - since > longest) longest = to - since;
    runs[stretch] = longest;
    return longest;
  }

  private forgetRuns(hand: number, from: Minute, to: Minute): void {
    const { stretches } = this.compiled;
    const runs = this.freeRuns[hand]!;
    for (let at = this.stretchFrom[from]!; at < stretches.length && stretches[at]!.from < to; at++) runs[at] = -1;
  }

  takeTool(tool: number, from: Minute, to: Minute, count: number): void {
    const left = this.toolLeft[tool]!;
    for (let minute = from; minute < to; minute++) left[minute]! -= count;
    this.remember(write.tool, tool, from, to, count);
  }

  takeRoom(zone: number, from: Minute, to: Minute, hands: number): void {
    const left = this.roomLeft[zone]!;
    for (let minute = from; minute < to; minute++) left[minute]! -= hands;
    this.remember(write.zone, zone, from, to, hands);
  }

  addDust(zone: number, step: number, from: Minute, to: Minute): void {
    this.dust[zone]!.push(step, from, to);
    this.remember(write.dust, zone, 0, 0, 0);
  }

  addWet(zone: number, step: number, from: Minute, to: Minute): void {
    this.wet[zone]!.push(step, from, to);
    this.remember(write.wet, zone, 0, 0, 0);
  }

  /** Puts one to three spells in place of `gone` spells of a line, from its place `at` on. */
  replaceSpells(aspect: number, at: number, gone: number, one: Spell, two: Spell | null, three: Spell | null): void {
    const line = this.lines[aspect]!;
    for (let k = 0; k < gone; k++) this.oldSpells.push(line[at + k]!);
    const come = two === null ? 1 : three === null ? 2 : 3;
    makeRoom(line, at, gone, come);
    line[at] = one;
    if (two !== null) line[at + 1] = two;
    if (three !== null) line[at + 2] = three;
    this.remember(write.line, aspect, at, gone, come);
  }

  workDay(day: number): void {
    this.worked[day] = 1;
    this.remember(write.day, day, 0, 0, 0);
  }

  addSetUpMinutes(minutes: Minute): void {
    this.setUpMinutes += minutes;
    this.remember(write.minutes, 0, 0, 0, minutes);
  }

  addBatch(mix: number, batch: Batch): void {
    this.batches[mix]!.push(batch);
    this.remember(write.batch, mix, 0, 0, 0);
  }

  placeStep(step: number, at: Laid): void {
    this.start[step] = at.start;
    this.finish[step] = at.finish;
    this.day[step] = at.day;
    this.batchOf[step] = at.batchOf;
    this.abrade[step] = at.abrade;
    this.hands[step] = at.hands;
    this.remember(write.step, step, 0, 0, 0);
  }

  isPlaced(step: number): boolean {
    return this.finish[step]! >= 0 || this.compiled.steps[step]!.fixed !== null;
  }

  /** Takes back everything since a mark, the last first. */
  takeBack(mark: number): void {
    const { trail } = this;
    while (this.length > mark) {
      this.length -= 5;
      const at = this.length;
      const index = trail[at + 1]!;
      const from = trail[at + 2]!;
      const to = trail[at + 3]!;
      const amount = trail[at + 4]!;
      switch (trail[at]!) {
        case write.hand:
          this.busy[index]!.fill(0, from, to);
          if (amount === 0) this.forgetRuns(index, from, to);
          break;
        case write.free:
          this.busy[index]!.fill(2, from, to);
          break;
        case write.tool: {
          const left = this.toolLeft[index]!;
          for (let minute = from; minute < to; minute++) left[minute]! += amount;
          break;
        }
        case write.zone: {
          const left = this.roomLeft[index]!;
          for (let minute = from; minute < to; minute++) left[minute]! += amount;
          break;
        }
        case write.dust:
          dropThree(this.dust[index]!);
          break;
        case write.wet:
          dropThree(this.wet[index]!);
          break;
        case write.line:
          this.restoreSpells(this.lines[index]!, from, to, amount);
          break;
        case write.day:
          this.worked[index] = 0;
          break;
        case write.step:
          this.start[index] = -1;
          this.finish[index] = -1;
          break;
        case write.batch:
          this.batches[index]!.pop();
          break;
        default:
          this.setUpMinutes -= amount;
      }
    }
  }

  private restoreSpells(line: Spell[], at: number, gone: number, come: number): void {
    makeRoom(line, at, come, gone);
    for (let k = gone - 1; k >= 0; k--) line[at + k] = this.oldSpells.pop()!;
  }

  private remember(kind: number, index: number, from: number, to: number, amount: number): void {
    if (this.length + 5 > this.trail.length) {
      const longer = new Int32Array(this.trail.length * 2);
      longer.set(this.trail);
      this.trail = longer;
    }
    const { trail, length } = this;
    trail[length] = kind;
    trail[length + 1] = index;
    trail[length + 2] = from;
    trail[length + 3] = to;
    trail[length + 4] = amount;
    this.length = length + 5;
  }
}

function dropThree(list: number[]): void {
  list.pop();
  list.pop();
  list.pop();
}

/** Moves what lies behind `gone` spells from `at` on, so that `come` find room there. */
function makeRoom(line: Spell[], at: number, gone: number, come: number): void {
  const more = come - gone;
  if (more === 0) return;
  const { length } = line;
  if (more > 0) {
    for (let k = 0; k < more; k++) line.push(line[length - 1]!);
    for (let k = length - 1; k >= at + gone; k--) line[k + more] = line[k]!;
    return;
  }
  for (let k = at + gone; k < length; k++) line[k + more] = line[k]!;
  for (let k = more; k < 0; k++) line.pop();
}
