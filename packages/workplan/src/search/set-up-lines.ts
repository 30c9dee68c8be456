import type { Minute } from '../problem.ts';
import type { AspectNeed, CompiledAspect, CompiledChange } from './compiled.ts';
import type { MadeChange, Spell, Taken } from './taken.ts';

/** a window in which nothing can stand */
const noWindow = { soonest: Number.POSITIVE_INFINITY, latest: 0 };
/** no changes; of no hands */
const none: readonly never[] = [];

/**
 * A gap between two spells in which changes are being laid. A change may need another aspect changed first, and that
 * change this aspect as it stands before or after: so what stands on either side may be drawn out into the gap.
 */
interface Gap {
  was: Spell;
  next: Spell;
  /** the change being laid; null: none yet */
  laying: CompiledChange | null;
  start: Minute;
  finish: Minute;
}

/** How soon and how long an aspect can stand in a state before the spell at a place of its line. */
interface Window {
  readonly aspect: number;
  readonly state: number;
  readonly place: number;
  /** the day on which it was looked for; −1: from the spell before on */
  readonly day: number;
  readonly soonest: Minute;
  readonly latest: Minute;
}

/**
 * Keeps an aspect in a state for as long as something needs it, with the changes of set-up that takes: before, after
 * what stood before, and back again before what was already asked for later.
 */
export class SetUpLines {
  private readonly taken: Taken;
  /** where a change back can lie anywhere in a gap: as late as it can, or as soon */
  backLate = true;
  /** the gaps in which changes are being laid, by aspect */
  private readonly open: (Gap | null)[];
  /** by aspect: its gap, used again and again */
  private readonly gaps: readonly Gap[];
  private depth = 0;
  private readonly windows: Window[] = [];
  private windowCount = 0;
  /** after `makeWay`: what stands on either side, drawn out into the gap where a change asked for it */
  private wayWas: Spell | null = null;
  private wayNext: Spell | null = null;
  private readonly handsFound: Int32Array;
  /** by hand: it alone; by two hands: both in that order */
  private readonly oneHand: readonly (readonly number[])[];
  private readonly twoHands: readonly (readonly number[])[];
  /** after `handsFor` finds none: the minute to try next from */
  blockedUntil = 0;

  /** by aspect and state: the least minutes to change to another state and back */
  private readonly roundTrip: readonly (readonly number[])[];
  /** by aspect and state: 1 for each day that must end in another state */
  private readonly endsOtherwise: readonly (readonly Uint8Array[])[];
  /** by aspect, state and other state: the changes from one to the other, in order */
  private readonly chains: readonly (readonly (readonly (readonly CompiledChange[])[])[])[];

  constructor(taken: Taken) {
    this.taken = taken;
    this.roundTrip = taken.compiled.aspects.map(({ minutes, states }) =>
      Array.from({ length: states }, (_, state) =>
        Math.min(
          ...minutes[state]!.map((there, other) => (other === state ? Infinity : there + minutes[other]![state]!)),
        ),
      ),
    );
    const { aspects, days } = taken.compiled;
    this.endsOtherwise = aspects.map(({ index, states }) =>
      Array.from({ length: states }, (_, state) =>
        Uint8Array.from(days, ({ endsIn }) =>
          endsIn.some(({ aspect, mask }) => aspect === index && (mask & (1 << state)) === 0) ? 1 : 0,
        ),
      ),
    );
    this.chains = taken.compiled.aspects.map((aspect) =>
      Array.from({ length: aspect.states }, (_, from) =>
        Array.from({ length: aspect.states }, (__, to) => chainOf(aspect, from, to)),
      ),
    );
    this.open = taken.compiled.aspects.map(() => null);
    this.gaps = taken.lines.map(([first]) => ({ was: first!, next: first!, laying: null, start: 0, finish: 0 }));
    const hands = taken.busy.map((_, hand) => hand);
    this.handsFound = new Int32Array(hands.length);
    this.oneHand = hands.map((hand) => [hand]);
    this.twoHands = hands.flatMap((one) => hands.map((other) => [one, other]));
  }

  /** the least minutes of change more that holding would take; Infinity where another need stands against it */
  costToHold(aspect: number, from: Minute, to: Minute, mask: number): Minute {
    const line = this.taken.lines[aspect]!;
    const { minutes, states } = this.taken.compiled.aspects[aspect]!;
    let i = line.length - 1;
    while (i > 0 && line[i - 1]!.to > from) i--;
    if (line[i]!.to <= from) i++;
    if (i < line.length && line[i]!.from < to) {
      const { state } = line[i]!;
      if ((mask & (1 << state)) === 0) return Number.POSITIVE_INFINITY;
      for (let k = i + 1; k < line.length && line[k]!.from < to; k++)
        if (line[k]!.state !== state || line[k]!.before.length > 0) return Number.POSITIVE_INFINITY;
      return 0;
    }
    const was = line[i - 1]!.state;
    const next = i < line.length ? line[i]!.state : -1;
    const now = next < 0 ? 0 : minutes[was]![next]!;
    let least = Number.POSITIVE_INFINITY;
    for (let state = 0; state < states; state++) {
      if ((mask & (1 << state)) === 0) continue;
      const cost = minutes[was]![state]! + (next < 0 ? 0 : minutes[state]![next]!) - now;
      if (cost < least) least = cost;
    }
    return least;
  }

  /** the first minute after `from` at which what stands in the way of holding may be over; −1: never */
  nextTry(aspect: number, from: Minute, lasts: Minute): Minute {
    const line = this.taken.lines[aspect]!;
    for (let i = 0; i < line.length; i++) {
      const spell = line[i]!;
      if (spell.to > from && spell.from < from + lasts) return spell.to;
      if (spell.from >= from + lasts) return spell.from - lasts + 1;
    }
    return -1;
  }

  /**
   * Keeps the aspect in one of the states of `mask` over [from, to), making or moving changes where needed.
   * Where it returns false the caller takes everything back to its own mark.
   */
  hold(aspect: number, from: Minute, to: Minute, mask: number): boolean {
    if (to <= from) return true;
    const gap = this.open[aspect]!;
    if (gap !== null) return holdsBeside(gap, from, to, mask);
    if (this.depth > 6) return false;
    const { taken } = this;
    const line = taken.lines[aspect]!;
    const { minutes, states } = taken.compiled.aspects[aspect]!;
    let i = line.length - 1;
    while (i > 0 && line[i - 1]!.to > from) i--;
    if (line[i]!.to <= from) i++;
    let j = i;
    while (j < line.length && line[j]!.from < to) j++;
    const was = line[i - 1];
    const next = line[j];

    if (j > i) {
      const { state } = line[i]!;
      if ((mask & (1 << state)) === 0) return false;
      for (let k = i + 1; k < j; k++) if (line[k]!.state !== state || line[k]!.before.length > 0) return false;
      const first = line[i]!.from <= from;
      const last = line[j - 1]!.to >= to;
      if (j === i + 1 && first && last) return true;
      const spellFrom = first ? line[i]!.from : from;
      const spellTo = last ? line[j - 1]!.to : to;
      const { before } = line[i]!;
      // changes lie in order of time
      const keepBefore = before.length === 0 || before[before.length - 1]!.finish <= spellFrom;
      const keepAfter = next === undefined || next.before.length === 0 || next.before[0]!.start >= spellTo;
      return this.rewrite(
        aspect,
        i,
        j,
        { from: spellFrom, to: spellTo, state, before },
        keepBefore,
        keepAfter ? (next?.before ?? none) : null,
      );
    }

    // Nothing asks for it in that time: stand in the state that costs least; of equals the one it stands in then.
    const existing = next?.before ?? none;
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    let standing = was!.state;
    let madeBefore = 0;
    for (const made of existing) {
      if (made.finish > from) break;
      standing = made.change.to;
      madeBefore++;
    }
    for (let state = 0; state < states; state++) {
      if ((mask & (1 << state)) === 0) continue;
      const cost =
        minutes[was!.state]![state]! +
        (next === undefined ? 0 : minutes[state]![next.state]!) -
        (state === standing ? 0.5 : 0);
      if (cost < least) {
        least = cost;
        best = state;
      }
    }
    if (best < 0 || least === Number.POSITIVE_INFINITY) return false;
    const trip = this.roundTrip[aspect]![best]!;
    const joinsBefore = best === was!.state && madeBefore === 0 && from - was!.to < trip;
    const joinsAfter = next !== undefined && existing.length === 0 && next.state === best && next.from - to < trip;
    if ((joinsBefore || joinsAfter) && (existing.length === 0 || existing[0]!.start >= to)) {
      // too short a time on that side to change to anything else and back: one spell does for both
      const joined: Spell = {
        from: joinsBefore ? was!.from : from,
        to: joinsAfter ? next.to : to,
        state: best,
        before: joinsBefore ? was!.before : none,
      };
      const at = joinsBefore ? i - 1 : i;
      taken.replaceSpells(aspect, at, (joinsAfter ? i + 1 : i) - at, joined, null, null);
      return true;
    }
    if (best === standing && (madeBefore === existing.length || existing[madeBefore]!.start >= to)) {
      const before =
        madeBefore === 0 ? none : madeBefore === existing.length ? existing : existing.slice(0, madeBefore);
      const after = madeBefore === 0 ? existing : madeBefore === existing.length ? none : existing.slice(madeBefore);
      return this.rewrite(aspect, i, i, { from, to, state: best, before }, true, after);
    }
    return this.rewrite(aspect, i, i, { from, to, state: best, before: none }, false, next === undefined ? none : null);
  }

  /**
   * Puts a spell in place of spells i to j. Where `keepsBefore` is false the changes before it are made anew, and
   * where `after` is null those before the next spell.
   */
  private rewrite(
    aspect: number,
    i: number,
    j: number,
    spell: Spell,
    keepsBefore: boolean,
    after: readonly MadeChange[] | null,
  ): boolean {
    const { taken } = this;
    const line = taken.lines[aspect]!;
    // none where how it stands at first is drawn out
    const was = line[i - 1];
    const next = line[j];
    if (keepsBefore && after !== null) {
      // no change is made anew
      if (next === undefined || after === next.before) taken.replaceSpells(aspect, i, j - i, spell, null, null);
      else taken.replaceSpells(aspect, i, j - i + 1, spell, withBefore(next, after), null);
      return true;
    }
    this.depth++;
    // Changes that are made anew free their hands first.
    if (j > i && !keepsBefore) for (const made of line[i]!.before) this.unmake(made);
    if (next !== undefined && after === null) for (const made of next.before) this.unmake(made);
    let before: readonly MadeChange[] | null = keepsBefore ? spell.before : null;
    let late: readonly MadeChange[] | null = next === undefined ? none : after;
    let [left, middle, right]: [Spell | undefined, Spell, Spell | undefined] = [was, spell, next];
    if (before === null && was !== undefined) {
      before = this.makeWay(aspect, was, middle, true);
      if (before !== null) {
        left = this.wayWas!;
        middle = this.wayNext!;
      }
    }
    if (before !== null && late === null && next !== undefined) {
      late = this.makeWay(aspect, middle, next, this.backLate);
      if (late !== null) {
        middle = this.wayWas!;
        right = this.wayNext!;
      }
    }
    if (before === null || late === null) {
      this.depth--;
      return false;
    }
    const fresh = withBefore(middle, before);
    const last = right === undefined ? null : withBefore(right, late);
    const rightCount = right === undefined ? 0 : 1;
    if (left === undefined) taken.replaceSpells(aspect, i, j - i + rightCount, fresh, last, null);
    else taken.replaceSpells(aspect, i - 1, j - i + 1 + rightCount, left, fresh, last);
    const good = this.workDays(before) && this.workDays(late);
    this.depth--;
    return good;
  }

  /** Marks the days of some changes as worked in. */
  private workDays(changes: readonly MadeChange[]): boolean {
    for (const { day } of changes) if (this.taken.worked[day] === 0 && !this.workDay(day)) return false;
    return true;
  }

  /** Marks a day as worked in, so that it ends in the set-ups it must end in. */
  workDay(day: number): boolean {
    const { taken } = this;
    if (taken.worked[day] === 1) return true;
    taken.workDay(day);
    const { to, endsIn } = taken.compiled.days[day]!;
    return this.holdAll(endsIn, to, to + 1);
  }

  /** Holds several aspects over one span; in the order given, or where that fails in the other. */
  holdAll(needs: readonly AspectNeed[], from: Minute, to: Minute): boolean {
    const mark = this.taken.mark();
    const { length } = needs;
    let kept = 0;
    while (kept < length && this.hold(needs[kept]!.aspect, from, to, needs[kept]!.mask)) kept++;
    if (kept === length) return true;
    if (length < 2) return false;
    this.taken.takeBack(mark);
    kept = length;
    while (kept > 0 && this.hold(needs[kept - 1]!.aspect, from, to, needs[kept - 1]!.mask)) kept--;
    return kept === 0;
  }

  /** True where only changes of set-up stand in the way of enough hands over [from, to). */
  handsBesideChanges(count: number, keeper: boolean, from: Minute, to: Minute): boolean {
    const { busy } = this.taken;
    let free = 0;
    for (let hand = 0; hand < busy.length && free < count; hand++) {
      const taken = busy[hand]!;
      let minute = from;
      while (minute < to && taken[minute] !== 1) minute++;
      if (minute === to) free++;
      else if (keeper && hand === 0) return false;
    }
    return free >= count;
  }

  /**
   * Moves the changes of set-up that keep hands busy over [from, to) out of that time, and takes hands for it there;
   * null where they cannot be moved. Where it returns null the caller takes everything back to its own mark.
   */
  handsByMoving(count: number, keeper: boolean, from: Minute, to: Minute): readonly number[] | null {
    const { taken } = this;
    const gaps: { readonly aspect: number; readonly next: Spell }[] = [];
    for (let aspect = 0; aspect < taken.lines.length; aspect++)
      for (const spell of taken.lines[aspect]!) {
        if (!changesWithin(spell, from, to)) continue;
        if (this.open[aspect] !== null) return null;
        gaps.push({ aspect, next: spell });
      }
    if (gaps.length === 0) return null;
    for (const { next } of gaps) for (const made of next.before) this.unmake(made);
    const hands = this.handsFor(count, keeper, from, to, false);
    if (hands === null) return null;
    for (const hand of hands) taken.takeHand(hand, from, to);
    for (const { aspect, next } of gaps) {
      const line = taken.lines[aspect]!;
      const index = line.indexOf(next);
      const was = line[index - 1];
      // making another change has already rewritten this part of the line
      if (was === undefined) return null;
      const made = this.remake(aspect, was, next, this.backLate) ?? this.remake(aspect, was, next, !this.backLate);
      if (made === null) return null;
      taken.replaceSpells(aspect, index - 1, 2, this.wayWas!, withBefore(this.wayNext!, made), null);
      if (!this.workDays(made)) return null;
    }
    return hands;
  }

  private remake(aspect: number, was: Spell, next: Spell, late: boolean): readonly MadeChange[] | null {
    const mark = this.taken.mark();
    const made = this.makeWay(aspect, was, next, late);
    if (made === null) this.taken.takeBack(mark);
    return made;
  }

  private unmake(made: MadeChange): void {
    for (const hand of made.hands) this.taken.freeFromChange(hand, made.start, made.finish);
    this.taken.addSetUpMinutes(made.start - made.finish);
  }

  /**
   * Lays the changes from one standing to the next, each as late or as soon as it can lie; null: they find no place.
   * What stands on either side then is in `wayWas` and `wayNext`.
   */
  private makeWay(aspect: number, was: Spell, next: Spell, late: boolean): readonly MadeChange[] | null {
    this.wayWas = was;
    this.wayNext = next;
    if (was.state === next.state) return none;
    const chain = this.chains[aspect]![was.state]![next.state]!;
    if (chain.length === 0) return null;
    const gap = this.gaps[aspect]!;
    gap.was = was;
    gap.next = next;
    gap.laying = null;
    this.open[aspect] = gap;
    if (chain.length === 1) {
      const one = this.makeChange(chain[0]!, was.to, next.from, late, true, gap);
      this.open[aspect] = null;
      if (one === null) return null;
      this.wayWas = gap.was;
      this.wayNext = gap.next;
      return [one];
    }
    const made: MadeChange[] = [];
    let [soonest, latest] = [was.to, next.from];
    for (let k = 0; k < chain.length; k++) {
      const stands = late || k === chain.length - 1;
      const one = this.makeChange(chain[late ? chain.length - 1 - k : k]!, soonest, latest, late, stands, gap);
      if (one === null) {
        this.open[aspect] = null;
        return null;
      }
      made.push(one);
      if (late) latest = one.start;
      else soonest = one.finish;
    }
    this.open[aspect] = null;
    if (late) made.reverse();
    this.wayWas = gap.was;
    this.wayNext = gap.next;
    return made;
  }

  /**
   * Lays one change within [soonest, latest), as late or as soon as it can lie.
   *
   * @param stands  what it changes to stands until `latest`, over the ends of all days before
   */
  private makeChange(
    change: CompiledChange,
    soonest: Minute,
    latest: Minute,
    late: boolean,
    stands: boolean,
    gap: Gap,
  ): MadeChange | null {
    const { taken } = this;
    const { horizon, days, problem } = taken.compiled;
    const { minutes, setUps } = change;
    const barred = this.endsOtherwise[change.aspect]![change.to]!;
    const first = Math.max(0, soonest);
    const last = Math.min(horizon, latest) - minutes;
    let tries = 0;
    let start = late ? last : first;
    while (start >= first && start <= last) {
      start = late ? change.startUpTo[start]! : change.startFrom[start]!;
      if (start < first || start > last) return null;
      const day = taken.dayAt(start);
      if (stands && barred[day] === 1 && days[day]!.to < latest) {
        // made on that day it could not stand so any longer than to its end
        start = late ? problem.days[day]!.from - 1 : days[day]!.to;
        continue;
      }
      const finish = start + minutes;
      const hands = this.handsFor(change.hands, true, start, finish, late);
      if (hands === null) {
        start = late ? this.blockedUntil - minutes : this.blockedUntil;
        continue;
      }
      const mark = taken.mark();
      for (const hand of hands) taken.takeForChange(hand, start, finish);
      taken.addSetUpMinutes(minutes);
      const { was, next } = gap;
      gap.laying = change;
      gap.start = start;
      gap.finish = finish;
      let held = 0;
      while (held < setUps.length && this.hold(setUps[held]!.aspect, start, finish, setUps[held]!.mask)) held++;
      if (held === setUps.length) return { change, start, finish, hands, day };
      taken.takeBack(mark);
      gap.was = was;
      gap.next = next;
      // ever longer steps away from where it did not do
      if (++tries > (this.depth > 1 ? 5 : 9)) return null;
      const stride = 2 ** (tries - 1);
      start += late ? -stride : stride;
    }
    return null;
  }

  /**
   * The soonest an aspect can stand in one of some states after what it stands in before a minute, and the latest it
   * can go on doing so: outside this window holding it fails. Nothing is taken. Answers are kept until
   * `forgetWindows`; one holds for all spans between the same two spells.
   */
  windowToHold(aspect: number, from: Minute, to: Minute, mask: number): { soonest: Minute; latest: Minute } {
    const { taken } = this;
    const gap = this.gapFor(aspect, from, to, mask);
    if (gap === null) return { soonest: from, latest: to };
    const { place: i, state: best, was, next } = gap;
    if (best < 0) return noWindow;
    const day = taken.dayAt(from);
    let isFarKnown = false;
    for (let n = 0; n < this.windowCount; n++) {
      const known = this.windows[n]!;
      if (known.place !== i || known.aspect !== aspect || known.state !== best) continue;
      if (known.day < 0 || known.day === day) return known;
      isFarKnown = true;
    }
    let window = isFarKnown ? null : this.windowBetween(aspect, best, was, next);
    const dayFrom = taken.compiled.problem.days[day]!.from;
    let on = -1;
    if (window === null && was.to < dayFrom) {
      // tries from there on may be used up before they come to this day
      on = day;
      window = this.windowBetween(aspect, best, { ...was, to: dayFrom }, next);
    }
    const { soonest, latest } = window ?? noWindow;
    const found = { aspect, state: best, place: i, day: on, soonest, latest };
    this.windows[this.windowCount++] = found;
    return found;
  }

  /**
   * The same where other aspects are held over [from, to) too, looked for from that day on; never where they cannot be.
   *
   * @param needs  all of them, this one among them
   */
  windowBeside(
    needs: readonly AspectNeed[],
    aspect: number,
    from: Minute,
    to: Minute,
    mask: number,
  ): { soonest: Minute; latest: Minute } {
    const { taken } = this;
    const mark = taken.mark();
    let window: { readonly soonest: Minute; readonly latest: Minute } | null = null;
    if (needs.every((need) => need.aspect === aspect || this.hold(need.aspect, from, to, need.mask))) {
      const gap = this.gapFor(aspect, from, to, mask);
      if (gap !== null && gap.state >= 0) {
        const dayFrom = taken.compiled.problem.days[taken.dayAt(from)]!.from;
        const was = gap.was.to < dayFrom ? { ...gap.was, to: dayFrom } : gap.was;
        window = this.windowBetween(aspect, gap.state, was, gap.next);
      }
    }
    taken.takeBack(mark);
    return window ?? noWindow;
  }

  /**
   * Where nothing asks for an aspect over [from, to): the place in its line, the spells about it, and the state of
   * `mask` that costs least there (−1: none can be). Null where something does.
   */
  private gapFor(
    aspect: number,
    from: Minute,
    to: Minute,
    mask: number,
  ): { readonly place: number; readonly state: number; readonly was: Spell; readonly next: Spell | undefined } | null {
    const line = this.taken.lines[aspect]!;
    const { minutes, states } = this.taken.compiled.aspects[aspect]!;
    let i = line.length - 1;
    while (i > 0 && line[i - 1]!.to > from) i--;
    if (line[i]!.to <= from) i++;
    const next = line[i];
    const was = line[i - 1]!;
    if (next !== undefined && next.from < to) return null;
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let state = 0; state < states; state++) {
      if ((mask & (1 << state)) === 0) continue;
      const cost = minutes[was.state]![state]! + (next === undefined ? 0 : minutes[state]![next.state]!);
      if (cost < least) {
        least = cost;
        best = state;
      }
    }
    return { place: i, state: best, was, next };
  }

  /** How soon and how long an aspect can stand in a state between two spells; null: it was not found to. */
  private windowBetween(
    aspect: number,
    state: number,
    was: Spell,
    next: Spell | undefined,
  ): { readonly soonest: Minute; readonly latest: Minute } | null {
    const { taken } = this;
    const mark = taken.mark();
    if (next !== undefined) for (const made of next.before) this.unmake(made);
    const end = next?.from ?? taken.compiled.horizon;
    const before = this.makeWay(aspect, was, { from: end, to: end, state, before: none }, false);
    if (before === null) {
      taken.takeBack(mark);
      return null;
    }
    const soonest = before.length === 0 ? was.to : before[before.length - 1]!.finish;
    let latest = Number.POSITIVE_INFINITY;
    if (next !== undefined) {
      const after = this.makeWay(aspect, { from: soonest, to: soonest, state, before: none }, next, true);
      latest = after === null ? 0 : after.length === 0 ? next.from : after[0]!.start;
    }
    taken.takeBack(mark);
    return { soonest, latest };
  }

  /** Forgets the windows found so far: something has been taken since. */
  forgetWindows(): void {
    this.windowCount = 0;
  }

  /**
   * Hands free over [from, to), the keeper last unless asked for; null where there are too few, and then
   * `blockedUntil` is the end of (late: the start of) the nearest hindrance.
   */
  handsFor(count: number, keeper: boolean, from: Minute, to: Minute, late: boolean): readonly number[] | null {
    if (count === 0) return none;
    const { busy } = this.taken;
    const { length } = busy;
    const found = this.handsFound;
    let foundCount = 0;
    let nearest = late ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
    for (let n = 0; n < length && foundCount < count; n++) {
      // the keeper first where asked for, else last
      const hand = keeper ? n : n + 1 < length ? n + 1 : 0;
      const taken = busy[hand]!;
      let hindered = -1;
      if (late) {
        for (let minute = from; minute < to; minute++)
          if (taken[minute] !== 0) {
            hindered = minute;
            break;
          }
      } else {
        for (let minute = to - 1; minute >= from; minute--)
          if (taken[minute] !== 0) {
            hindered = minute;
            break;
          }
      }
      if (hindered < 0) found[foundCount++] = hand;
      else {
        nearest = late ? Math.max(nearest, hindered) : Math.min(nearest, hindered + 1);
        if (keeper && hand === 0) {
          nearest = late ? hindered : hindered + 1;
          break;
        }
      }
    }
    if (foundCount === count) {
      if (count === 1) return this.oneHand[found[0]!]!;
      return count === 2 ? this.twoHands[found[0]! * length + found[1]!]! : Array.from(found.subarray(0, count));
    }
    this.blockedUntil = Number.isFinite(nearest) ? nearest : late ? -1 : this.taken.compiled.horizon + 1;
    return null;
  }
}

/** The changes from one state of an aspect to another, in order; none where there is no way. */
function chainOf(
  { minutes, firstChange, changes }: CompiledAspect,
  from: number,
  to: number,
): readonly CompiledChange[] {
  if (from === to || minutes[from]![to] === Number.POSITIVE_INFINITY) return none;
  const chain: CompiledChange[] = [];
  for (let state = from; state !== to; state = chain[chain.length - 1]!.to)
    chain.push(changes[firstChange[state]![to]!]!);
  return chain;
}

function withBefore({ from, to, state }: Spell, before: readonly MadeChange[]): Spell {
  return { from, to, state, before };
}

/** Whether any change just before a spell lies within a span. */
function changesWithin({ before }: Spell, from: Minute, to: Minute): boolean {
  for (const made of before) if (made.start < to && made.finish > from) return true;
  return false;
}

/** Whether what stands on one side of a gap does, or can be drawn out to, keep a need over [from, to). */
function holdsBeside(gap: Gap, from: Minute, to: Minute, mask: number): boolean {
  const { was, next, laying } = gap;
  if ((mask & (1 << was.state)) !== 0 && from >= was.from) {
    if (to <= was.to) return true;
    if (laying !== null && laying.from === was.state && to <= gap.start) {
      gap.was = { from: was.from, to, state: was.state, before: was.before };
      return true;
    }
  }
  if ((mask & (1 << next.state)) !== 0 && to <= next.to) {
    if (from >= next.from) return true;
    if (laying !== null && laying.to === next.state && from >= gap.finish) {
      gap.next = { from, to: next.to, state: next.state, before: next.before };
      return true;
    }
  }
  return false;
}
