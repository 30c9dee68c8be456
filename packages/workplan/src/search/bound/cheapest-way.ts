import type { Minute } from '../../problem.ts';
import { type Alone, shortest } from '../alone.ts';
import { type Compiled, type CompiledStep, type CompiledWait, dewNear } from '../compiled.ts';
import type { WaitPlaces } from './wait-places.ts';
import type { WorkMinutes } from './work-minutes.ts';

/**
 * The ways a unit of jobs can be done as if it were alone, with its waits, weather, dates and the order of its steps,
 * and the cheapest of them where every minute has a price. Of several steps that one step waits for within the unit
 * only one is kept; where a step may take longer than its least it is given its least. So the cheapest way is never
 * dearer than any plan's way.
 */
export interface UnitWays {
  readonly unit: number;
  readonly steps: readonly StepWays[];
}

export interface StepWays {
  readonly step: number;
  readonly lasts: Minute;
  /** which row of prices its minutes have */
  readonly kind: number;
  /** by place: 1 where it may start */
  readonly may: Uint8Array;
  readonly firstMay: number;
  readonly lastMay: number;
  /** place in `steps` of the step it waits for, an earlier one; −1: none */
  readonly parent: number;
  /** by place of the parent's start: the first place it may then start at, and the last; null: any after `parent` */
  readonly from: Int32Array | null;
  readonly to: Int32Array | null;
  /** what its waits need for certain, by place of its start: from a place up to another */
  readonly waits: readonly WaitSpan[];
}

export interface WaitSpan {
  readonly kind: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** The longest a step can take: with its mixing, and all the abrading it may come to. */
function longest(step: CompiledStep): Minute {
  return step.minutes + step.before.reduce((most, { abrade }) => Math.max(most, abrade), 0);
}

/** @returns null where the unit has no way at all, so that it is in no plan */
export function waysOfUnit(
  compiled: Compiled,
  axis: WorkMinutes,
  places: WaitPlaces,
  alone: Alone,
  unit: number,
  kindOf: (step: CompiledStep) => number,
  waitKinds: (step: CompiledStep) => readonly { readonly wait: number; readonly kind: number }[],
): UnitWays | null {
  const { open } = compiled.units[unit]!;
  const at = new Map<number, number>();
  const steps: StepWays[] = [];
  for (const index of open) {
    const step = compiled.steps[index]!;
    const lasts = shortest(compiled, step);
    const may = mayStart(compiled, axis, alone, step, lasts);
    // of the steps it waits for, the one that leaves it least room: with a wait, else the last
    let tie = null;
    for (const one of step.before)
      if (at.has(one.before) && (tie === null || one.wait >= 0 || one.greatest >= 0 || tie.wait < 0)) tie = one;
    let [parent, from, to]: [number, Int32Array | null, Int32Array | null] = [-1, null, null];
    if (tie !== null) {
      parent = at.get(tie.before)!;
      const before = compiled.steps[tie.before]!;
      const cure = tie.wait < 0 ? null : before.waits[tie.wait]!.cure;
      from = places.after(cure, steps[parent]!.lasts, tie.least);
      if (tie.greatest >= 0 && tie.abrade < 0) to = places.upTo(cure, longest(before), tie.greatest);
    }
    const firstMay = may.indexOf(1);
    if (firstMay < 0) return null;
    at.set(index, steps.length);
    const lastMay = may.lastIndexOf(1);
    const late = longest(step);
    // it has begun by the latest finish, and is over no sooner than after the soonest
    const waits = waitKinds(step).map(
      ({ wait, kind }): WaitSpan => ({
        kind,
        from: places.begun(late),
        to: places.over(step.waits[wait]!.cure, lasts, late),
      }),
    );
    steps.push({ step: index, lasts, kind: kindOf(step), may, firstMay, lastMay, parent, from, to, waits });
  }
  return { unit, steps };
}

function mayStart(compiled: Compiled, axis: WorkMinutes, alone: Alone, step: CompiledStep, lasts: Minute): Uint8Array {
  const may = new Uint8Array(axis.count);
  const { deadline } = compiled.jobs[step.job]!;
  const isExact = longest(step) === lasts;
  const nothingShelters = compiled.aspects.every(({ sheltering }) => sheltering === 0);
  for (const { first, last } of axis.stretches)
    for (let place = first; place + lasts <= last; place++) {
      const start = axis.minute[place]!;
      if (start < alone.earliest[step.index]! || start + lasts > step.latestFinish) continue;
      if (lasts > 0 && step.run[start]! < lasts) continue;
      if (!isExact || step.waits.every((wait) => holds(compiled, wait, start + lasts, deadline, nothingShelters)))
        may[place] = 1;
    }
  return may;
}

function holds(
  compiled: Compiled,
  wait: CompiledWait,
  finish: Minute,
  deadline: Minute,
  nothingShelters: boolean,
): boolean {
  const over = wait.cure.finish(finish);
  if (over < 0 || over > deadline) return false;
  if (over <= finish) return true;
  if (wait.nextCold !== null && wait.nextCold[finish]! < over) return false;
  if (dewNear(wait, finish, over) >= 0) return false;
  return !(wait.dry && nothingShelters && compiled.nextRain[finish]! < over);
}

/** Works out cheapest ways; the arrays are kept from unit to unit. */
export class CheapestWays {
  private readonly axis: WorkMinutes;
  /** by step of the unit, by place of its start: least cost of it and of what waits for it */
  private readonly cost: Float64Array[] = [];
  /** the same from a place on */
  private readonly onward: Float64Array[] = [];
  /** by step of the unit: the place it starts at in the cheapest way found last */
  readonly start: number[] = [];

  constructor(axis: WorkMinutes) {
    this.axis = axis;
  }

  /**
   * Cost of the cheapest way of a unit; Infinity where it has none. `start` then says where its steps lie.
   *
   * @param upTo  by kind of work and place: what all minutes before the place cost together
   */
  cheapest({ steps }: UnitWays, upTo: readonly Float64Array[]): number {
    const { count } = this.axis;
    while (this.cost.length < steps.length) {
      this.cost.push(new Float64Array(count));
      this.onward.push(new Float64Array(count + 1));
    }
    for (const [n, { may, lasts, kind, firstMay, lastMay, waits }] of steps.entries()) {
      const cost = this.cost[n]!;
      const sums = upTo[kind]!;
      cost.fill(Number.POSITIVE_INFINITY);
      for (let place = firstMay; place <= lastMay; place++)
        if (may[place] === 1) cost[place] = sums[place + lasts]! - sums[place]!;
      for (const wait of waits) {
        const over = upTo[wait.kind]!;
        for (let place = firstMay; place <= lastMay; place++)
          cost[place]! += over[wait.to[place]!]! - over[wait.from[place]!]!;
      }
    }
    let whole = 0;
    for (let n = steps.length - 1; n >= 0; n--) {
      const { parent, from, to, firstMay, lastMay } = steps[n]!;
      const cost = this.cost[n]!;
      const onward = this.onward[n]!;
      let least = Number.POSITIVE_INFINITY;
      onward.fill(Number.POSITIVE_INFINITY, lastMay + 1);
      for (let place = lastMay; place >= firstMay; place--) {
        if (cost[place]! < least) least = cost[place]!;
        onward[place] = least;
      }
      onward.fill(least, 0, firstMay);
      if (parent < 0) {
        whole += least;
        continue;
      }
      const above = steps[parent]!;
      const total = this.cost[parent]!;
      for (let place = above.firstMay; place <= above.lastMay; place++)
        if (above.may[place] === 1)
          total[place]! += to === null ? onward[from![place]!]! : leastWithin(cost, from![place]!, to[place]!);
    }
    if (whole === Number.POSITIVE_INFINITY) return whole;
    for (const [n, { parent, from, to, firstMay, lastMay }] of steps.entries()) {
      const cost = this.cost[n]!;
      const first = parent < 0 ? firstMay : Math.max(firstMay, from![this.start[parent]!]!);
      const last = to === null ? lastMay : Math.min(lastMay, to[this.start[parent]!]!);
      let best = first;
      for (let place = first; place <= last; place++) if (cost[place]! < cost[best]!) best = place;
      this.start[n] = best;
    }
    return whole;
  }
}

function leastWithin(cost: Float64Array, from: number, to: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let place = from; place <= to; place++) if (cost[place]! < least) least = cost[place]!;
  return least;
}
