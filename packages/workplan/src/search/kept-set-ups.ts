import type { Minute } from '../problem.ts';
import type { Compiled } from './compiled.ts';
import type { Frame } from './frames/frame.ts';
import type { Placing } from './placing.ts';
import type { Spell } from './taken.ts';

/**
 * Makes the changes of a frame again at their minutes, but for those that nothing laid asks for any more, and holds
 * what the steps and waits that are laid ask for.
 */
export class KeptSetUps {
  private readonly compiled: Compiled;
  private readonly placing: Placing;
  private frame: Frame = [];
  /** by aspect and stand (before the first change, between two, after the last): asked for from and to */
  private readonly from: Minute[][];
  private readonly to: Minute[][];
  /** by aspect: which of its changes are made */
  private readonly made: boolean[][];

  constructor(compiled: Compiled, placing: Placing) {
    this.compiled = compiled;
    this.placing = placing;
    this.from = compiled.aspects.map(() => []);
    this.to = compiled.aspects.map(() => []);
    this.made = compiled.aspects.map(() => []);
  }

  /**
   * @param frame  of a plan that breaks no rule
   * @param steps  those of its steps that lie in `placing` now; no set-up is held for them yet
   */
  hold(frame: Frame, steps: readonly number[]): void {
    const { compiled, placing, from, to, made } = this;
    const { taken } = placing;
    this.frame = frame;
    frame.forEach((changes, aspect) => {
      from[aspect] = new Array<Minute>(changes.length + 1).fill(Number.POSITIVE_INFINITY);
      to[aspect] = new Array<Minute>(changes.length + 1).fill(Number.NEGATIVE_INFINITY);
      made[aspect] = new Array<boolean>(changes.length).fill(false);
      for (const spell of taken.lines[aspect]!) this.ask(aspect, spell.from, spell.to);
    });
    for (const step of steps) {
      this.askFor(step);
      this.work(taken.day[step]!);
    }
    while (this.makeWhatIsAskedFor());
    for (const { index } of compiled.aspects) this.write(index);
  }

  /** Asks for what a step and its waits need where they lie. */
  private askFor(index: number): void {
    const { taken } = this.placing;
    const step = this.compiled.steps[index]!;
    const [start, finish] = [taken.start[index]!, taken.finish[index]!];
    for (const { aspect } of step.setUps) this.ask(aspect, start, finish);
    for (const wait of step.waits) {
      if (wait.setUps.length === 0 && wait.still.length === 0 && !wait.dry) continue;
      const over = wait.cure.finish(finish);
      for (const { aspect } of wait.setUps) this.ask(aspect, finish, over);
      for (const aspect of wait.still) this.ask(aspect, finish, over);
      if (wait.dry) this.askForShelter(finish, over);
    }
  }

  /** Asks that what shelters in the frame stand over every rainy minute of a span. */
  private askForShelter(from: Minute, to: Minute): void {
    const { aspects, nextRain } = this.compiled;
    let minute = nextRain[from]!;
    while (minute < to) {
      let end = minute;
      while (end < to && nextRain[end] === end) end++;
      for (const { index, sheltering } of aspects) {
        const stand = this.standAt(index, minute);
        if ((sheltering & (1 << this.stateIn(index, stand))) === 0) continue;
        end = Math.min(end, this.frame[index]![stand]?.start ?? end);
        this.ask(index, minute, end);
        break;
      }
      minute = nextRain[end]!;
    }
  }

  /** Has a day end as it must: there is work in it. */
  private work(day: number): void {
    const { taken } = this.placing;
    if (taken.worked[day] === 1) return;
    taken.workDay(day);
    const { to, endsIn } = this.compiled.days[day]!;
    for (const { aspect } of endsIn) this.ask(aspect, to, to + 1);
  }

  /** Asks that what stands at a minute stand for a span that the frame does not change it in. */
  private ask(aspect: number, from: Minute, to: Minute): void {
    if (to <= from) return;
    const stand = this.standAt(aspect, from);
    if (from < this.from[aspect]![stand]!) this.from[aspect]![stand] = from;
    if (to > this.to[aspect]![stand]!) this.to[aspect]![stand] = to;
  }

  /** how many changes of an aspect are made by a minute */
  private standAt(aspect: number, minute: Minute): number {
    const changes = this.frame[aspect]!;
    let [low, high] = [0, changes.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (changes[middle]!.finish <= minute) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** the state of an aspect after so many changes of the frame */
  private stateIn(aspect: number, stand: number): number {
    return stand === 0 ? this.compiled.aspects[aspect]!.initial : this.frame[aspect]![stand - 1]!.change.to;
  }

  /** Makes the changes between the stands asked for; what they ask for in their turn may call for more: then true. */
  private makeWhatIsAskedFor(): boolean {
    let more = false;
    for (const { index: aspect } of this.compiled.aspects) {
      let last = 0;
      for (let stand = 1; stand < this.to[aspect]!.length; stand++) {
        if (this.to[aspect]![stand]! === Number.NEGATIVE_INFINITY) continue;
        for (const at of this.wayBetween(aspect, last, stand)) {
          if (this.made[aspect]![at]) continue;
          this.made[aspect]![at] = true;
          more = true;
          const { change, start, finish, day } = this.frame[aspect]![at]!;
          for (const need of change.setUps) this.ask(need.aspect, start, finish);
          this.work(day);
        }
        last = stand;
      }
    }
    return more;
  }

  /** The changes from one stand to another, without those that only lead away and back. */
  private wayBetween(aspect: number, one: number, other: number): readonly number[] {
    const way: number[] = [];
    const first = this.stateIn(aspect, one);
    for (let at = one; at < other; at++) {
      way.push(at);
      const state = this.stateIn(aspect, at + 1);
      if (state === first) way.length = 0;
      else {
        const was = way.findIndex((before) => this.stateIn(aspect, before + 1) === state);
        way.length = was + 1;
      }
    }
    return way;
  }

  /** Writes the stands asked for, with the changes before each, in place of what stood so far. */
  private write(aspect: number): void {
    const { taken } = this.placing;
    const begun = taken.lines[aspect]!;
    let last = 0;
    let count = 0;
    const first = begun[0]!;
    const length = begun.length;
    const put = (spell: Spell) => {
      taken.replaceSpells(aspect, count, count === 0 ? length : 0, spell, null, null);
      count++;
    };
    put({ from: first.from, to: Math.max(first.to, this.to[aspect]![0]!), state: first.state, before: first.before });
    for (let stand = 1; stand < this.to[aspect]!.length; stand++) {
      const [from, to] = [this.from[aspect]![stand]!, this.to[aspect]![stand]!];
      if (to === Number.NEGATIVE_INFINITY) continue;
      const before = this.wayBetween(aspect, last, stand).map((at) => this.frame[aspect]![at]!);
      for (const { hands, start, finish } of before) {
        for (const hand of hands) taken.takeForChange(hand, start, finish);
        taken.addSetUpMinutes(finish - start);
      }
      put({ from, to, state: this.stateIn(aspect, stand), before });
      last = stand;
    }
  }
}
