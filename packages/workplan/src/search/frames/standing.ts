import type { Minute } from '../../problem.ts';
import type { Compiled } from '../compiled.ts';
import { type Frame, never } from './frame.ts';

/** What stands when in a frame: the states of the set-ups by minute, what they keep dry, the days they end right. */
export class Standing {
  private readonly compiled: Compiled;
  /** by aspect and minute: the bit of the state it stands in; 0: it is being changed */
  private readonly stateAt: readonly Int32Array[];
  /** by aspect and minute: when that, or the change under way, is over */
  private readonly endAt: readonly Int32Array[];
  /** the first minute from a minute on at which rain reaches what must stay dry; horizon + 1: none */
  readonly nextWet: Int32Array;
  /** by day: 1 where it ends in the set-ups it must end in, and so can be worked */
  readonly canBeWorked: Uint8Array;
  /** spells of rain, in order of time */
  private readonly rains: readonly { readonly from: Minute; readonly to: Minute }[];
  /** aspects of which a state shelters */
  private readonly shelters: readonly number[];

  constructor(compiled: Compiled) {
    const { horizon, aspects, days } = compiled;
    this.compiled = compiled;
    this.stateAt = aspects.map(() => new Int32Array(horizon + 2));
    this.endAt = aspects.map(() => new Int32Array(horizon + 2));
    this.nextWet = new Int32Array(horizon + 2);
    this.canBeWorked = new Uint8Array(days.length);
    this.rains = rainsOf(compiled);
    this.shelters = aspects.flatMap(({ sheltering }, aspect) => (sheltering === 0 ? [] : [aspect]));
  }

  /** Returns whether other days can be worked than before. */
  setFrame(frame: Frame): boolean {
    for (let aspect = 0; aspect < frame.length; aspect++) this.stand(aspect, frame[aspect]!);
    this.readRain();
    return this.readDays();
  }

  private stand(aspect: number, changes: Frame[number]): void {
    const stateAt = this.stateAt[aspect]!;
    const endAt = this.endAt[aspect]!;
    let from = 0;
    let state = this.compiled.aspects[aspect]!.initial;
    for (const { change, start, finish } of changes) {
      stateAt.fill(1 << state, from, start);
      endAt.fill(start, from, start);
      stateAt.fill(0, start, finish);
      endAt.fill(finish, start, finish);
      from = finish;
      state = change.to;
    }
    stateAt.fill(1 << state, from);
    endAt.fill(never, from);
  }

  private readRain(): void {
    const { nextWet, rains } = this;
    let next = this.compiled.horizon + 1;
    let end = nextWet.length;
    for (let k = rains.length - 1; k >= 0; k--) {
      const { from, to } = rains[k]!;
      nextWet.fill(next, to, end);
      for (let minute = to - 1; minute >= from; minute--) {
        if (!this.isSheltered(minute)) next = minute;
        nextWet[minute] = next;
      }
      end = from;
    }
    nextWet.fill(next, 0, end);
  }

  private isSheltered(minute: Minute): boolean {
    const { shelters } = this;
    for (let k = 0; k < shelters.length; k++) {
      const aspect = shelters[k]!;
      if ((this.stateAt[aspect]![minute]! & this.compiled.aspects[aspect]!.sheltering) !== 0) return true;
    }
    return false;
  }

  private readDays(): boolean {
    const { canBeWorked } = this;
    const { days, horizon } = this.compiled;
    let others = false;
    for (let day = 0; day < days.length; day++) {
      const { to, endsIn } = days[day]!;
      const end = Math.min(to, horizon);
      const can = endsIn.every(({ aspect, mask }) => (this.stateAt[aspect]![end]! & mask) !== 0) ? 1 : 0;
      if (can !== canBeWorked[day]) others = true;
      canBeWorked[day] = can;
    }
    return others;
  }

  /**
   * When what stands at `from` is over, where it is none of the states asked for or does not stand until `to`;
   * −1: one of them stands throughout.
   */
  hinders(aspect: number, mask: number, from: Minute, to: Minute): Minute {
    const end = this.endAt[aspect]![from]!;
    return end >= to && (this.stateAt[aspect]![from]! & mask) !== 0 ? -1 : end;
  }
}

function rainsOf({ nextRain, horizon }: Compiled): { from: Minute; to: Minute }[] {
  const rains: { from: Minute; to: Minute }[] = [];
  let minute = nextRain[0]!;
  while (minute < horizon) {
    const from = minute;
    while (minute < horizon && nextRain[minute] === minute) minute++;
    rains.push({ from, to: minute });
    minute = nextRain[minute]!;
  }
  return rains;
}
