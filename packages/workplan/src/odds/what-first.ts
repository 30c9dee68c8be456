import type { Plan } from '../plan.ts';
import type { Minute } from '../problem.ts';
import type { Compiled } from '../search/compiled.ts';
import { isOpen, type RunState } from './run-state.ts';

/** Of every day so much is lost between steps that cannot be cut to fit. Our assumption. [min] */
const assumedLost_min = 20;
/** A keeper this far behind the plan looks at what can still be done. Our assumption. [min] */
const assumedBehind_min = 10;
/** Where so little is left before a date, what it needs comes first. Our assumption. [min] */
const assumedTight_min = 45;

/**
 * What is done first when a plan has slipped: replanning in a cheap form. Going by worth as the planner does (needed
 * jobs first, then those worth most for their time), jobs are kept as long as their hands-on time still fits into the
 * hours of hands before each date; the others are put behind, and done if time is found after all. Of the kept ones
 * those come first whose date leaves little over.
 */
export class WhatFirst {
  /** steps of the plan, first things first */
  readonly order: number[];
  private readonly compiled: Compiled;
  private readonly planned: Int32Array;
  private readonly asPlanned: readonly number[];
  /** minutes of hands in the days' work before a minute */
  private readonly handMinutes: Int32Array;
  private readonly setUpChanges: Plan['changes'];
  private readonly dueBy: readonly Minute[];
  private readonly jobsInPlan: readonly number[];
  private readonly dates: readonly Minute[];
  private changesSeen = -1;
  private looked = 0;
  private readonly left: Float64Array;
  private readonly rank: Float64Array;

  /** @param planned  by step: its start in the plan, −1: not in it */
  constructor(compiled: Compiled, plan: Plan, planned: Int32Array) {
    const { problem, horizon } = compiled;
    this.compiled = compiled;
    this.planned = planned;
    this.asPlanned = [...planned.keys()]
      .filter((at) => planned[at]! >= 0)
      .sort((a, b) => planned[a]! - planned[b]! || a - b);
    this.order = [...this.asPlanned];
    this.setUpChanges = plan.changes;
    this.handMinutes = new Int32Array(horizon + 1);
    for (const { from, to } of compiled.stretches)
      for (const absent of compiled.absent)
        for (let minute = from; minute < to; minute++) if (absent[minute] === 0) this.handMinutes[minute + 1]!++;
    for (let minute = 0; minute < horizon; minute++) this.handMinutes[minute + 1]! += this.handMinutes[minute]!;
    this.jobsInPlan = [...new Set(this.asPlanned.map((step) => compiled.steps[step]!.job))];
    this.dueBy = compiled.jobs.map(({ index, deadline }) => {
      const steps = new Set(compiled.steps.filter(({ job }) => job === index).map(({ source }) => source.id));
      const worked = Math.max(0, ...plan.steps.filter(({ step }) => steps.has(step)).map(({ finish }) => finish));
      const over = Math.max(worked, ...plan.waits.filter(({ step }) => steps.has(step)).map(({ finish }) => finish));
      return Math.max(0, Math.min(horizon, deadline - (over - worked)));
    });
    this.dates = [...new Set([...this.jobsInPlan.map((job) => this.dueBy[job]!), horizon])].sort((a, b) => a - b);
    this.left = new Float64Array(problem.jobs.length);
    this.rank = new Float64Array(problem.jobs.length);
    for (const job of this.jobsInPlan) this.rank[job] = 0;
  }

  /** The plan's own order, for a new run. */
  asInPlan(): void {
    this.looked = Number.NEGATIVE_INFINITY;
    this.asPlanned.forEach((step, at) => {
      this.order[at] = step;
    });
  }

  /** Looks again at what comes first, where something has changed since, or half an hour has gone by. */
  look(state: RunState, now: Minute): void {
    if (state.changes === this.changesSeen && now < this.looked + 30) return;
    this.changesSeen = state.changes;
    this.looked = now;
    const { compiled, left, rank, planned } = this;
    let behind = false;
    left.fill(0);
    for (const step of this.asPlanned) {
      const { job, hands, minutes } = compiled.steps[step]!;
      if (state.status[step] !== isOpen || state.jobLost[job] === 1) continue;
      if (planned[step]! + assumedBehind_min < now) behind = true;
      left[job]! += minutes * hands;
    }
    if (!behind) return;
    const room = this.dates.map((date) => this.roomBefore(date, state, now));
    const open = this.jobsInPlan.filter((job) => left[job]! > 0);
    open.sort((a, b) => this.worth(b) - this.worth(a));
    rank.fill(0);
    for (const job of open) {
      const from = this.dates.indexOf(this.dueBy[job]!);
      let fits = true;
      for (let at = from; at < room.length; at++) if (room[at]! < left[job]!) fits = false;
      if (!fits) {
        rank[job] = 2;
        continue;
      }
      for (let at = from; at < room.length; at++) room[at]! -= left[job]!;
    }
    for (const job of open) {
      if (rank[job] !== 0) continue;
      const from = this.dates.indexOf(this.dueBy[job]!);
      rank[job] = from < room.length - 1 && room[from]! < assumedTight_min ? 0 : 1;
    }
    this.order.sort(
      (a, b) => rank[compiled.steps[a]!.job]! - rank[compiled.steps[b]!.job]! || planned[a]! - planned[b]! || a - b,
    );
  }

  private worth(job: number): number {
    const { weight, needed } = this.compiled.jobs[job]!;
    return (needed ? 1e9 : 0) + weight / this.left[job]!;
  }

  private daysBefore(date: Minute, now: Minute): number {
    let [days, last] = [0, -1];
    for (const { day, from, to } of this.compiled.stretches) {
      if (day === last || to <= now || from >= date) continue;
      last = day;
      days++;
    }
    return days;
  }

  /** Minutes of hands from now to a date, less the changes the plan still has in that time and what is under way. */
  private roomBefore(date: Minute, state: RunState, now: Minute): Minute {
    let room = this.handMinutes[date]! - this.handMinutes[now]!;
    for (const { start, finish } of this.setUpChanges) if (start >= now && start < date) room -= finish - start;
    room -= assumedLost_min * this.daysBefore(date, now);
    for (const busy of state.busyTo) if (busy > now) room -= Math.min(busy, date) - now;
    return room;
  }
}
