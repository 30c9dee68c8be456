import type { Conditions } from '#sky';
import type { Minute, PlanHour, Problem } from '../problem.ts';
import { type Compiled, suitsHour } from '../search/compiled.ts';

interface Kind {
  readonly needs: Conditions;
  readonly inside: boolean;
}

/** What allows work at a minute, whatever the plan: the days, who is there, light, things, and the hours of a run. */
export class AllowedMinutes {
  readonly problem: Problem;
  /** end of the stretch of work a minute lies in; 0: none */
  readonly stretchTo: Int32Array;
  /** until when a hand stays without a gap, by hand and minute; 0: not there */
  readonly presentTo: readonly Int32Array[];
  /** until when two hands at least are there without a gap; 0: they are not */
  readonly twoTo: Int32Array;
  private readonly lightTo: Int32Array;
  private readonly kinds: Kind[] = [];
  private readonly kindNumber = new Map<string, number>();
  private known = new Int32Array(0);
  private run = 0;
  private hours: readonly PlanHour[];

  constructor(compiled: Compiled) {
    const { problem, horizon } = compiled;
    this.problem = problem;
    this.hours = problem.hours;
    this.stretchTo = new Int32Array(horizon + 1);
    for (const { from, to } of compiled.stretches) this.stretchTo.fill(to, from, to);
    this.presentTo = compiled.absent.map((absent) => endsOf(horizon, (minute) => absent[minute] === 0));
    const there = (minute: Minute) =>
      compiled.absent.reduce((count, absent) => count + (absent[minute] === 0 ? 1 : 0), 0);
    this.twoTo = endsOf(horizon, (minute) => there(minute) > 1);
    this.lightTo = new Int32Array(horizon + 1);
    for (const { from, to } of problem.daylight) this.lightTo.fill(to, Math.max(0, from), Math.min(horizon, to));
  }

  /** The number by which the conditions of a kind of work are asked for. */
  kindOf(kind: Kind): number {
    const key = JSON.stringify(kind);
    const known = this.kindNumber.get(key);
    if (known !== undefined) return known;
    this.kinds.push(kind);
    this.kindNumber.set(key, this.kinds.length - 1);
    return this.kinds.length - 1;
  }

  /** Takes the hours of a new run. */
  under(hours: readonly PlanHour[]): void {
    this.hours = hours;
    const cells = this.kinds.length * hours.length;
    if (this.known.length !== cells) this.known = new Int32Array(cells);
    this.run++;
  }

  /** The last hour of a span that does not suit; −1: all do. Daylight aside. */
  lastUnsuited(kind: number, from: Minute, to: Minute): number {
    for (let hour = Math.min(this.hours.length, Math.ceil(to / 60)) - 1; hour >= Math.floor(from / 60); hour--)
      if (!this.suits(kind, hour)) return hour;
    return -1;
  }

  /** Whether a span lies in the light, where its kind asks for it. */
  light(kind: number, from: Minute, to: Minute): boolean {
    return this.kinds[kind]!.needs.daylight !== true || this.lightTo[from]! >= to;
  }

  private suits(kind: number, hour: number): boolean {
    const cell = kind * this.hours.length + hour;
    const known = this.known[cell]!;
    if (known >> 1 === this.run) return (known & 1) === 1;
    const suits = suitsHour(this.kinds[kind]!, this.hours[hour]!);
    this.known[cell] = this.run * 2 + (suits ? 1 : 0);
    return suits;
  }

  /** Whether so many of a tool are there throughout a span, beside those in use. */
  toolsThere(tool: number, from: Minute, to: Minute, count: number): boolean {
    const { capacity } = this.problem.tools[tool]!;
    const enough = (minute: Minute) =>
      capacity.some((span) => span.from <= minute && minute < span.to && span.count >= count);
    if (!enough(from)) return false;
    return capacity.every((span) => {
      const starts = span.from > from && span.from < to;
      const ends = span.to > from && span.to < to;
      return (!starts || enough(span.from)) && (!ends || enough(span.to));
    });
  }

  /** Whether so many hands, the keeper among them, are there throughout a span. */
  handsThere(count: number, from: Minute, to: Minute): boolean {
    if (this.presentTo[0]![from]! < to) return false;
    let there = 0;
    for (const until of this.presentTo) if (until[from]! >= to) there++;
    return there >= count;
  }
}

function endsOf(horizon: Minute, is: (minute: Minute) => boolean): Int32Array {
  const ends = new Int32Array(horizon + 1);
  for (let minute = horizon - 1; minute >= 0; minute--)
    if (is(minute)) ends[minute] = Math.max(minute + 1, ends[minute + 1]!);
  return ends;
}
