import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import type { Placing } from './placing.ts';
import type { UnitPlacing } from './unit-placing.ts';

/** Times tried for the mixing before it is given up for now. */
const mostTries = 20;
/** Looked for in vain so often, one is looked for half as often from then on, and less and less. */
const inVain = 8;

/**
 * Finds a place for a unit that has none by itself but has one where another mixes what it can share: a step that does
 * not mix is shorter, and may just fit in before the rain or the end of the day.
 */
export class BatchPartners {
  private readonly compiled: Compiled;
  private readonly dice: Dice;
  private readonly placing: Placing;
  private readonly units: UnitPlacing;
  /** by unit: other units that mix what it mixes, and wait for nothing */
  private readonly partners: readonly (readonly number[])[];
  /** by unit: how often a partner was looked for in vain */
  private readonly failed: Int32Array;
  /** by step, of the place found last: not before this minute */
  readonly from: Int32Array;

  constructor(compiled: Compiled, possible: readonly number[], dice: Dice, placing: Placing, units: UnitPlacing) {
    this.compiled = compiled;
    this.dice = dice;
    this.placing = placing;
    this.units = units;
    this.from = new Int32Array(compiled.steps.length);
    this.failed = new Int32Array(compiled.units.length);
    const mixes = compiled.units.map(({ open }) => new Set(open.map((step) => compiled.steps[step]!.mix)));
    this.partners = compiled.units.map((_, unit) =>
      possible.filter(
        (other) =>
          other !== unit &&
          compiled.units[other]!.waitsFor.length === 0 &&
          [...mixes[other]!].some((mix) => mix >= 0 && mixes[unit]!.has(mix)),
      ),
    );
  }

  /**
   * Places a unit beside what lies in the placing, and a partner before it.
   *
   * @param not  units that must not be its partner
   * @returns    the partner; −1, with nothing taken, where none was found
   */
  place(unit: number, not: (other: number) => boolean): number {
    const { compiled, dice, placing, units, from } = this;
    const partners = this.partners[unit]!.filter((other) => !not(other));
    const { stretches } = compiled;
    if (partners.length === 0 || stretches.length === 0) return -1;
    if (!dice.chance(inVain / (inVain + this.failed[unit]!))) return -1;
    const mark = placing.taken.mark();
    for (let tries = 0; tries < mostTries; tries++) {
      const partner = partners[dice.below(partners.length)]!;
      const stretch = stretches[dice.below(stretches.length)]!;
      const minute = stretch.from + dice.below(Math.max(1, stretch.to - stretch.from));
      from.fill(0);
      for (const step of compiled.units[partner]!.open) if (compiled.steps[step]!.mix >= 0) from[step] = minute;
      if (units.place(partner, from, Number.POSITIVE_INFINITY) && units.place(unit, 0, Number.POSITIVE_INFINITY))
        return partner;
      placing.taken.takeBack(mark);
    }
    this.failed[unit]!++;
    return -1;
  }
}
