import type { Minute } from '../../problem.ts';
import type { CompiledStep } from '../compiled.ts';
import { hinderedByThings } from '../hindrances.ts';
import type { Taken } from '../taken.ts';

/** How many of each tool, and how much room in each zone, the steps placed leave at each minute. */
export class ThingsLeft {
  private readonly tools: readonly Int16Array[];
  private readonly room: readonly Int16Array[];
  /** by zone: whether all hands at once could be too many */
  private readonly isNarrow: readonly boolean[];

  /** @param taken  what has begun already */
  constructor({ toolLeft, roomLeft, busy }: Taken) {
    this.tools = toolLeft.map((left) => Int16Array.from(left));
    this.room = roomLeft.map((left) => Int16Array.from(left));
    this.isNarrow = roomLeft.map((left) => left.some((room) => room < busy.length));
  }

  take(step: CompiledStep, start: Minute, finish: Minute): void {
    this.change(step, start, finish, -1);
  }

  giveBack(step: CompiledStep, start: Minute, finish: Minute): void {
    this.change(step, start, finish, 1);
  }

  private change(step: CompiledStep, start: Minute, finish: Minute, sign: number): void {
    const { tools } = step;
    for (let k = 0; k < tools.length; k++) {
      const { tool, count } = tools[k]!;
      const left = this.tools[tool]!;
      for (let minute = start; minute < finish; minute++) left[minute]! += sign * count;
    }
    if (!this.asksForRoom(step)) return;
    const left = this.room[step.zone]!;
    for (let minute = start; minute < finish; minute++) left[minute]! += sign * step.hands;
  }

  /** A later start to try where tools or room are taken; −1: they are free. */
  hinders(step: CompiledStep, start: Minute, finish: Minute): Minute {
    if (step.tools.length === 0 && !this.asksForRoom(step)) return -1;
    return hinderedByThings(step, this.tools, this.room, start, finish);
  }

  private asksForRoom({ zone, hands }: CompiledStep): boolean {
    return zone >= 0 && hands > 0 && this.isNarrow[zone]!;
  }
}
