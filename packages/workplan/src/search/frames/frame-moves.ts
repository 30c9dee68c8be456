import type { Minute } from '../../problem.ts';
import type { AspectNeed, Compiled } from '../compiled.ts';
import type { Dice } from '../dice.ts';
import type { Placing } from '../placing.ts';
import type { MadeChange, Spell } from '../taken.ts';
import type { Frame } from './frame.ts';

/** Of ten moves so many take a day from another frame, and so many shift a change; the rest drop one and its way back. */
const dayInTen = 3;
const shiftInTen = 5;
/** A change is shifted by up to so many times so many minutes. */
const jitter: Minute = 5;
const mostJitters = 12;

/** Makes a frame from another by one move, as long as its changes can be made. */
export class FrameMoves {
  private readonly compiled: Compiled;
  private readonly dice: Dice;
  /** by aspect: what has begun already asks for */
  private readonly begun: readonly (readonly Spell[])[];

  constructor(compiled: Compiled, dice: Dice, placing: Placing) {
    this.compiled = compiled;
    this.dice = dice;
    placing.clear();
    this.begun = placing.taken.lines.map((line) => [...line]);
  }

  /**
   * A frame that differs by one move; null where the one that came up cannot be made.
   *
   * @param donor  to take a day from
   */
  moved(frame: Frame, donor: Frame): Frame | null {
    const pick = this.dice.below(10);
    let other: Frame | null;
    if (pick < dayInTen) other = this.withDayOf(frame, donor);
    else if (pick < dayInTen + shiftInTen) other = this.withShift(frame);
    else other = this.withoutOne(frame);
    return other !== null && this.canBeMade(other) ? other : null;
  }

  /** With the changes of a day of another frame; an aspect that stands otherwise before or after it there keeps its own. */
  private withDayOf(frame: Frame, donor: Frame): Frame | null {
    const day = this.dice.below(this.compiled.days.length);
    let isOther = false;
    const grafted = frame.map((changes, aspect): readonly MadeChange[] => {
      const { initial } = this.compiled.aspects[aspect]!;
      const before = standingBefore(changes, day, initial);
      if (before !== standingBefore(donor[aspect]!, day, initial)) return changes;
      const ours = changes.filter((made) => made.day === day);
      const theirs = donor[aspect]!.filter((made) => made.day === day);
      if ((ours.at(-1)?.change.to ?? before) !== (theirs.at(-1)?.change.to ?? before)) return changes;
      if (ours.length === theirs.length && ours.every(({ start }, at) => start === theirs[at]!.start)) return changes;
      isOther = true;
      return [...changes.filter((made) => made.day < day), ...theirs, ...changes.filter((made) => made.day > day)];
    });
    return isOther ? grafted : null;
  }

  /** With one change sooner or later, or set against another of its day. */
  private withShift(frame: Frame): Frame | null {
    const { dice } = this;
    const all = frame.flat();
    if (all.length === 0) return null;
    const chosen = all[dice.below(all.length)]!;
    let start = chosen.start + jitter * (dice.below(2 * mostJitters + 1) - mostJitters);
    if (dice.chance(0.5)) {
      const sameDay = all.filter((made) => made.day === chosen.day && made !== chosen);
      if (sameDay.length === 0) return null;
      const other = sameDay[dice.below(sameDay.length)]!;
      start = dice.chance(0.5) ? other.finish : other.start - chosen.change.minutes;
    }
    if (start === chosen.start) return null;
    const shifted = { ...chosen, start, finish: start + chosen.finish - chosen.start };
    return frame.map((changes) => changes.map((made) => (made === chosen ? shifted : made)));
  }

  /** Without a change, and what is changed until it is taken back. */
  private withoutOne(frame: Frame): Frame | null {
    const { dice } = this;
    const places = frame.flatMap((changes, aspect) => changes.map((_, at) => ({ aspect, at })));
    if (places.length === 0) return null;
    const { aspect, at } = places[dice.below(places.length)]!;
    const changes = frame[aspect]!;
    const back = changes.findIndex((made, other) => other > at && made.change.to === changes[at]!.change.from);
    if (back < 0) return null;
    return frame.map((all, index) => (index === aspect ? [...all.slice(0, at), ...all.slice(back + 1)] : all));
  }

  private canBeMade(frame: Frame): boolean {
    return (
      frame.every((changes, aspect) => this.isInOrder(changes, aspect)) && this.isFree(frame) && this.daysEndWell(frame)
    );
  }

  /** Each change from where the one before led, when weather, days and hands allow it, and nothing begun stands against it. */
  private isInOrder(changes: readonly MadeChange[], aspect: number): boolean {
    const { compiled } = this;
    let state = compiled.aspects[aspect]!.initial;
    let from: Minute = compiled.now;
    for (const { change, start, finish, hands, day } of changes) {
      if (change.from !== state || start < from || finish > compiled.horizon) return false;
      if (change.startFrom[start] !== start || !this.liesIn(day, start, finish)) return false;
      if (hands.some((hand) => compiled.absent[hand]!.subarray(start, finish).includes(1))) return false;
      state = change.to;
      from = finish;
    }
    return this.begun[aspect]!.every((spell) => this.stands(changes, aspect, spell.from, spell.to, 1 << spell.state));
  }

  private liesIn(day: number, start: Minute, finish: Minute): boolean {
    return this.compiled.stretches.some(
      (stretch) => stretch.day === day && stretch.from <= start && finish <= stretch.to,
    );
  }

  /** No hand at two changes at once, and each other aspect stands as a change asks for it. */
  private isFree(frame: Frame): boolean {
    const all = frame.flat().sort((a, b) => a.start - b.start);
    for (let at = 0; at < all.length; at++) {
      const one = all[at]!;
      for (let next = at + 1; next < all.length && all[next]!.start < one.finish; next++)
        if (all[next]!.hands.some((hand) => one.hands.includes(hand))) return false;
      for (const { aspect, mask } of one.change.setUps)
        if (!this.stands(frame[aspect]!, aspect, one.start, one.finish, mask)) return false;
    }
    return true;
  }

  private daysEndWell(frame: Frame): boolean {
    const worked = new Set(frame.flatMap((changes) => changes.map(({ day }) => day)));
    for (const day of worked) {
      const { to, endsIn } = this.compiled.days[day]!;
      if (!endsIn.every(({ aspect, mask }: AspectNeed) => this.stands(frame[aspect]!, aspect, to, to + 1, mask)))
        return false;
    }
    return true;
  }

  /** Whether an aspect stands in one state of a mask over a span. */
  private stands(changes: readonly MadeChange[], aspect: number, from: Minute, to: Minute, mask: number): boolean {
    let state = this.compiled.aspects[aspect]!.initial;
    for (const { change, start, finish } of changes) {
      if (start >= to) break;
      if (finish > from) return false;
      state = change.to;
    }
    return (mask & (1 << state)) !== 0;
  }
}

/** How an aspect stands before a day. */
function standingBefore(changes: readonly MadeChange[], day: number, initial: number): number {
  return changes.reduce((state, made) => (made.day < day ? made.change.to : state), initial);
}
