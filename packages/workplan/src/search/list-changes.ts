import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { inOrder } from './first-lists.ts';
import type { StepList } from './step-list.ts';
import type { Taken } from './taken.ts';

/** Makes a list from another by small changes, or by many. */
export class ListChanges {
  private readonly compiled: Compiled;
  private readonly possible: readonly number[];
  private readonly dice: Dice;
  private readonly unitOf: Int32Array;
  /** by unit: hand-minutes it takes, at least 1 */
  private readonly minutes: Float64Array;
  /** starts and finishes of the list in hand */
  private readonly start: Int32Array;
  private readonly finish: Int32Array;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, unitOf: Int32Array) {
    this.compiled = compiled;
    this.possible = possible;
    this.dice = dice;
    this.unitOf = unitOf;
    this.minutes = Float64Array.from(compiled.units, ({ open }) =>
      open.reduce((sum, step) => sum + compiled.steps[step]!.minutes * compiled.steps[step]!.hands, 1),
    );
    this.start = new Int32Array(compiled.steps.length).fill(-1);
    this.finish = new Int32Array(compiled.steps.length).fill(-1);
  }

  /** Notes where the steps of the list in hand lie. */
  note({ start, finish }: Taken): void {
    this.start.set(start);
    this.finish.set(finish);
  }

  /** The list with much of its order thrown. */
  thrown(list: StepList): StepList {
    const { dice, possible } = this;
    let order = [...list.order];
    for (const unit of possible) if (dice.chance(0.35)) order = this.withUnitAt(order, unit, dice.below(order.length));
    const cleared = new Int32Array(list.notBefore.length);
    return { ...list, order: inOrder(this.compiled, order, this.unitOf), notBefore: cleared };
  }

  /** The list in hand with one or a few things changed. */
  changed(from: StepList): StepList {
    const { dice, compiled, possible, start } = this;
    let order = [...from.order];
    const notBefore = Int32Array.from(from.notBefore);
    const extra = Float64Array.from(from.extra);
    const skips = new Uint8Array(from.skips.length);
    let { backLate } = from;
    if (order.length === 0) return from;
    const times = 1 + (dice.chance(0.35) ? 1 + dice.below(2) : 0);
    for (let n = 0; n < times; n++) {
      const unit = possible[dice.below(possible.length)]!;
      const pick = dice.share();
      if (pick < 0.12 && from.skips.includes(1)) {
        order = this.swapped(order, from.skips);
      } else if (pick < 0.22) {
        const out = possible.filter((other) => from.skips[other] === 1);
        const chosen = out.length > 0 ? out[dice.below(out.length)]! : unit;
        order = this.withUnitAt(order, chosen, dice.below(order.length));
        skips[chosen] = 0;
        for (const step of compiled.units[chosen]!.open) notBefore[step] = 0;
        extra[chosen] = dice.chance(0.3) ? Number.POSITIVE_INFINITY : 0;
      } else if (pick < 0.4) {
        order = this.withUnitAt(order, unit, dice.below(order.length));
      } else if (pick < 0.55) {
        const at = dice.below(order.length);
        const reach = 1 + dice.below(Math.max(2, Math.floor(order.length / 3)));
        const to = Math.max(0, Math.min(order.length - 1, at + (dice.chance(0.6) ? -reach : reach)));
        const [step] = order.splice(at, 1);
        order.splice(to, 0, step!);
      } else if (pick < 0.62) {
        const other = possible[dice.below(possible.length)]!;
        order = this.mixed(order, unit, other);
      } else if (pick < 0.78) {
        const { open } = compiled.units[unit]!;
        const when = this.someStart();
        if (dice.chance(0.5)) for (const step of open) notBefore[step] = when;
        else notBefore[open[dice.below(open.length)]!] = when;
      } else if (pick < 0.86) {
        extra[unit] = extra[unit]! > 0 ? 0 : Number.POSITIVE_INFINITY;
      } else if (pick < 0.89) {
        backLate = !backLate;
      } else if (pick < 0.92) {
        for (const other of possible) if (dice.chance(0.5)) extra[other] = 0;
      } else if (pick < 0.97) {
        const when = (step: number) => (start[step]! < 0 ? compiled.horizon : start[step]!);
        order.sort((a, b) => when(a) - when(b));
      } else {
        for (const step of order) if (dice.chance(0.5)) notBefore[step] = 0;
      }
    }
    return { order: inOrder(compiled, order, this.unitOf), notBefore, extra, skips, backLate };
  }

  /** A unit left out goes ahead of all, and lesser ones that take as much time go to the end. */
  private swapped(order: readonly number[], skips: Uint8Array): number[] {
    const { dice, compiled, possible, unitOf } = this;
    const out = possible.filter((unit) => skips[unit] === 1);
    if (out.length === 0) return [...order];
    let chosen = out[dice.below(out.length)]!;
    const other = out[dice.below(out.length)]!;
    if (this.density(other) > this.density(chosen)) chosen = other;
    const lesser = possible.filter(
      (unit) =>
        skips[unit] === 0 && compiled.units[unit]!.missedWeight === 0 && this.density(unit) < this.density(chosen),
    );
    const { minutes } = this;
    const last = new Set<number>();
    let freed = 0;
    while (freed < minutes[chosen]! && lesser.length > 0) {
      const [unit] = lesser.splice(dice.below(lesser.length), 1);
      last.add(unit!);
      freed += minutes[unit!]!;
    }
    const at = dice.below(3) === 0 ? 0 : dice.below(order.length);
    const ordered = this.withUnitAt(order, chosen, at);
    return [
      ...ordered.filter((step) => !last.has(unitOf[step]!)),
      ...ordered.filter((step) => last.has(unitOf[step]!)),
    ];
  }

  private density(unit: number): number {
    return this.compiled.units[unit]!.weight / this.minutes[unit]!;
  }

  private withUnitAt(order: readonly number[], unit: number, at: number): number[] {
    const rest = order.filter((step) => this.unitOf[step] !== unit);
    rest.splice(Math.min(at, rest.length), 0, ...order.filter((step) => this.unitOf[step] === unit));
    return rest;
  }

  /** Two units' steps shuffled into each other where the first of them stands. */
  private mixed(order: readonly number[], one: number, other: number): number[] {
    const isOf = (step: number) => this.unitOf[step] === one || this.unitOf[step] === other;
    const at = order.findIndex(isOf);
    const [a, b] = [
      order.filter((step) => this.unitOf[step] === one),
      order.filter((step) => this.unitOf[step] === other),
    ];
    const mixed: number[] = [];
    if (one === other) mixed.push(...a.sort(() => this.dice.share() - 0.5));
    else while (a.length + b.length > 0) mixed.push((this.dice.below(a.length + b.length) < a.length ? a : b).shift()!);
    const rest = order.filter((step) => !isOf(step));
    rest.splice(at, 0, ...mixed);
    return rest;
  }

  private someStart(): Minute {
    const { dice } = this;
    const { stretches } = this.compiled;
    if (stretches.length === 0 || dice.chance(0.3)) return 0;
    const { from, to } = stretches[dice.below(stretches.length)]!;
    if (dice.chance(0.5)) return from;
    // when some step now finishes, or any minute
    const { finish } = this;
    const step = dice.below(finish.length);
    return dice.chance(0.6) && finish[step]! > 0 ? finish[step]! : from + dice.below(to - from);
  }
}
