import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Dice } from './dice.ts';
import { Placing } from './placing.ts';
import type { Ground } from './pressing-search.ts';
import { UnitPlacing } from './unit-placing.ts';

/** Units placed with set-ups changed as they ask for it, where nothing can be had without at any cost. */
export class FreeGround implements Ground {
  readonly placing: Placing;
  private readonly dice: Dice;
  private readonly units: UnitPlacing;

  constructor(compiled: Compiled, dice: Dice) {
    this.placing = new Placing(compiled);
    this.dice = dice;
    this.units = new UnitPlacing(compiled, this.placing);
  }

  clear(): void {
    this.placing.clear();
    this.placing.lines.backLate = this.dice.chance(0.5);
  }

  placeUnit(unit: number, from: Minute | Int32Array): boolean {
    const { units } = this;
    const anyExtra = Number.POSITIVE_INFINITY;
    if (from !== 0) return units.place(unit, from, anyExtra);
    return units.place(unit, 0, 0) || (units.refusedCost < anyExtra && units.place(unit, 0, anyExtra));
  }

  placeAmong(units: readonly number[], dice: Dice): boolean {
    return this.units.placeAmong(units, Number.POSITIVE_INFINITY, dice);
  }
}
