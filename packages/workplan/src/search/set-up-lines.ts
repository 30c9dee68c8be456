import type { Minute } from '../problem.ts';
import type { AspectNeed, CompiledChange } from './compiled.ts';
import type { MadeChange, Spell, Taken } from './taken.ts';

/** A stretch over which an aspect stands in one state. */
type Standing = Pick<Spell, 'from' | 'to' | 'state'>;

/**
 * A gap between two spells in which changes are being laid. A change may need another aspect changed first, and that
 * change this aspect as it stands before or after: so what stands on either side may be drawn out into the gap.
 */
interface Gap {
  was: Standing;
  next: Standing;
  /** the change being laid */
  laying: { readonly change: CompiledChange; readonly start: Minute; readonly finish: Minute } | null;
}

interface Way {
  readonly made: readonly MadeChange[];
  readonly was: Standing;
  readonly next: Standing;
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
  private readonly open = new Map<number, Gap>();
  private depth = 0;
  private readonly windows = new Map<number, { soonest: Minute; latest: Minute }>();
  private readonly handsFound: number[] = [];
  /** after `handsFor` finds none: the minute to try next from */
  blockedUntil = 0;

  /** by aspect and state: the least minutes to change to another state and back */
  private readonly roundTrip: readonly (readonly number[])[];

  constructor(taken: Taken) {
    this.taken = taken;
    this.roundTrip = taken.compiled.aspects.map(({ minutes, states }) =>
      Array.from({ length: states }, (_, state) =>
        Math.min(
          ...minutes[state]!.map((there, other) => (other === state ? Infinity : there + minutes[other]![state]!)),
        ),
      ),
    );
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
    const gap = this.open.get(aspect);
    if (gap !== undefined) return holdsBeside(gap, from, to, mask);
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
      const keepBefore = line[i]!.before.every((made) => made.finish <= spellFrom);
      const keepAfter = next === undefined || next.before.every((made) => made.start >= spellTo);
      return this.rewrite(aspect, i, j, {
        state,
        from: spellFrom,
        to: spellTo,
        before: keepBefore ? line[i]!.before : null,
        after: next === undefined ? [] : keepAfter ? next.before : null,
      });
    }

    // Nothing asks for it in that time: stand in the state that costs least; of equals the one it stands in then.
    const existing = next?.before ?? [];
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
        before: joinsBefore ? was!.before : [],
      };
      const fresh = line.slice(0, joinsBefore ? i - 1 : i);
      fresh.push(joined);
      for (let k = joinsAfter ? i + 1 : i; k < line.length; k++) fresh.push(line[k]!);
      taken.replaceLine(aspect, fresh);
      return true;
    }
    if (best === standing && existing.slice(madeBefore).every((made) => made.start >= to))
      return this.rewrite(aspect, i, i, {
        state: best,
        from,
        to,
        before: existing.slice(0, madeBefore),
        after: existing.slice(madeBefore),
      });
    return this.rewrite(aspect, i, i, { state: best, from, to, before: null, after: next === undefined ? [] : null });
  }

  /** Puts a spell in place of spells i to j; `before` and `after` null: make those changes anew. */
  private rewrite(
    aspect: number,
    i: number,
    j: number,
    spell: {
      readonly state: number;
      readonly from: Minute;
      readonly to: Minute;
      readonly before: readonly MadeChange[] | null;
      readonly after: readonly MadeChange[] | null;
    },
  ): boolean {
    const { taken } = this;
    const line = taken.lines[aspect]!;
    // none where how it stands at first is drawn out
    const was = line[i - 1];
    const next = line[j];
    if (spell.before !== null && spell.after !== null) {
      // no change is made anew
      const fresh = line.slice(0, i);
      fresh.push({ from: spell.from, to: spell.to, state: spell.state, before: spell.before });
      if (next !== undefined) fresh.push(spell.after === next.before ? next : { ...next, before: spell.after });
      for (let k = j + 1; k < line.length; k++) fresh.push(line[k]!);
      taken.replaceLine(aspect, fresh);
      return true;
    }
    this.depth++;
    // Changes that are made anew free their hands first.
    const kept = new Set([...(spell.before ?? []), ...(spell.after ?? [])]);
    const old = j > i ? [...line[i]!.before, ...(next?.before ?? [])] : (next?.before ?? []);
    for (const made of old) if (!kept.has(made)) this.unmake(made);
    let [before, after] = [spell.before, next === undefined ? [] : spell.after];
    let [left, middle, right]: [Spell | undefined, Standing, Spell | undefined] = [was, spell, next];
    if (before === null && was !== undefined) {
      const way = this.makeWay(aspect, was, middle, true);
      if (way !== null) {
        before = way.made;
        left = { ...was, to: way.was.to };
        middle = way.next;
      }
    }
    if (before !== null && after === null && next !== undefined) {
      const way = this.makeWay(aspect, middle, next, this.backLate);
      if (way !== null) {
        after = way.made;
        middle = way.was;
        right = { ...next, from: way.next.from };
      }
    }
    if (before === null || after === null) {
      this.depth--;
      return false;
    }
    const fresh: Spell[] = left === undefined ? [] : [...line.slice(0, i - 1), left];
    fresh.push({ from: middle.from, to: middle.to, state: spell.state, before });
    if (right !== undefined) fresh.push({ ...right, before: after }, ...line.slice(j + 1));
    taken.replaceLine(aspect, fresh);
    let good = true;
    for (const made of [...before, ...after]) if (good && taken.worked[made.day] === 0) good = this.workDay(made.day);
    this.depth--;
    return good;
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
    if (needs.every(({ aspect, mask }) => this.hold(aspect, from, to, mask))) return true;
    if (needs.length < 2) return false;
    this.taken.takeBack(mark);
    return [...needs].reverse().every(({ aspect, mask }) => this.hold(aspect, from, to, mask));
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
    const gaps: { aspect: number; next: Spell }[] = [];
    taken.lines.forEach((line, aspect) => {
      for (const spell of line)
        if (spell.before.some((made) => made.start < to && made.finish > from)) gaps.push({ aspect, next: spell });
    });
    if (gaps.length === 0 || gaps.some(({ aspect }) => this.open.has(aspect))) return null;
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
      const way = this.remake(aspect, was, next, this.backLate) ?? this.remake(aspect, was, next, !this.backLate);
      if (way === null || taken.lines[aspect] !== line) return null;
      taken.replaceLine(aspect, [
        ...line.slice(0, index - 1),
        { ...was, to: way.was.to },
        { ...next, from: way.next.from, before: way.made },
        ...line.slice(index + 1),
      ]);
      for (const made of way.made) if (taken.worked[made.day] === 0 && !this.workDay(made.day)) return null;
    }
    return hands;
  }

  private remake(aspect: number, was: Spell, next: Spell, late: boolean): Way | null {
    const mark = this.taken.mark();
    const way = this.makeWay(aspect, was, next, late);
    if (way === null) this.taken.takeBack(mark);
    return way;
  }

  private unmake(made: MadeChange): void {
    for (const hand of made.hands) this.taken.freeFromChange(hand, made.start, made.finish);
    this.taken.addSetUpMinutes(made.start - made.finish);
  }

  /** Lays the changes from one standing to the next, each as late or as soon as it can lie; null: they find no place. */
  private makeWay(aspect: number, was: Standing, next: Standing, late: boolean): Way | null {
    const { firstChange, changes, minutes } = this.taken.compiled.aspects[aspect]!;
    if (was.state === next.state) return { made: [], was, next };
    if (minutes[was.state]![next.state] === Number.POSITIVE_INFINITY) return null;
    const steps: CompiledChange[] = [];
    for (let state = was.state; state !== next.state; ) {
      const change = changes[firstChange[state]![next.state]!]!;
      steps.push(change);
      state = change.to;
    }
    const gap: Gap = { was, next, laying: null };
    this.open.set(aspect, gap);
    const made: MadeChange[] = [];
    for (let k = 0; k < steps.length; k++) {
      const [soonest, latest] = late
        ? [was.to, made[0]?.start ?? next.from]
        : [made.at(-1)?.finish ?? was.to, next.from];
      const one = this.makeChange(late ? steps[steps.length - 1 - k]! : steps[k]!, soonest, latest, late, gap);
      if (one === null) {
        this.open.delete(aspect);
        return null;
      }
      if (late) made.unshift(one);
      else made.push(one);
    }
    this.open.delete(aspect);
    return { made, was: gap.was, next: gap.next };
  }

  /** Lays one change within [soonest, latest), as late or as soon as it can lie. */
  private makeChange(
    change: CompiledChange,
    soonest: Minute,
    latest: Minute,
    late: boolean,
    gap: Gap,
  ): MadeChange | null {
    const { taken } = this;
    const { stretches, horizon } = taken.compiled;
    const { minutes } = change;
    const first = Math.max(0, soonest);
    const last = Math.min(horizon, latest) - minutes;
    let tries = 0;
    let start = late ? last : first;
    while (start >= first && start <= last) {
      start = late ? change.startUpTo[start]! : change.startFrom[start]!;
      if (start < first || start > last) return null;
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
      gap.laying = { change, start, finish };
      let good = true;
      for (const need of change.setUps) good = good && this.hold(need.aspect, start, finish, need.mask);
      if (good) {
        const at = start;
        const stretch = stretches.find(({ from, to }) => from <= at && at < to)!;
        return { change, start, finish, hands, day: stretch.day };
      }
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
    const line = taken.lines[aspect]!;
    const { minutes, states } = taken.compiled.aspects[aspect]!;
    let i = line.length - 1;
    while (i > 0 && line[i - 1]!.to > from) i--;
    if (line[i]!.to <= from) i++;
    const next = line[i];
    const was = line[i - 1]!;
    if (next !== undefined && next.from < to) return { soonest: from, latest: to };
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
    if (best < 0) return { soonest: Number.POSITIVE_INFINITY, latest: 0 };
    // an aspect has at most 32 states, and there are at most as many bits of one in a mask
    const key = (aspect * 32 + best) * 65536 + i;
    const known = this.windows.get(key);
    if (known !== undefined) return known;
    const mark = taken.mark();
    if (next !== undefined) for (const made of next.before) this.unmake(made);
    const end = next?.from ?? taken.compiled.horizon;
    const before = this.makeWay(aspect, was, { from: end, to: end, state: best }, false);
    const soonest = before === null ? Number.POSITIVE_INFINITY : (before.made.at(-1)?.finish ?? was.to);
    let latest = Number.POSITIVE_INFINITY;
    if (next !== undefined && before !== null) {
      const after = this.makeWay(aspect, { from: soonest, to: soonest, state: best }, next, true);
      latest = after === null ? 0 : (after.made[0]?.start ?? next.from);
    }
    taken.takeBack(mark);
    const window = { soonest, latest };
    this.windows.set(key, window);
    return window;
  }

  /** Forgets the windows found so far: something has been taken since. */
  forgetWindows(): void {
    this.windows.clear();
  }

  /**
   * Hands free over [from, to), the keeper last unless asked for; null where there are too few, and then
   * `blockedUntil` is the end of (late: the start of) the nearest hindrance.
   */
  handsFor(count: number, keeper: boolean, from: Minute, to: Minute, late: boolean): readonly number[] | null {
    if (count === 0) return [];
    const { busy } = this.taken;
    const found = this.handsFound;
    found.length = 0;
    let nearest = late ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
    for (let n = 0; n < busy.length; n++) {
      // the keeper first where asked for, else last
      const hand = keeper ? n : (n + 1) % busy.length;
      if (found.length === count) break;
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
      if (hindered < 0) found.push(hand);
      else {
        nearest = late ? Math.max(nearest, hindered) : Math.min(nearest, hindered + 1);
        if (keeper && hand === 0) {
          nearest = late ? hindered : hindered + 1;
          break;
        }
      }
    }
    if (found.length === count) return found.slice();
    this.blockedUntil = Number.isFinite(nearest) ? nearest : late ? -1 : this.taken.compiled.horizon + 1;
    return null;
  }
}

/** Whether what stands on one side of a gap does, or can be drawn out to, keep a need over [from, to). */
function holdsBeside(gap: Gap, from: Minute, to: Minute, mask: number): boolean {
  const { was, next, laying } = gap;
  if ((mask & (1 << was.state)) !== 0 && from >= was.from) {
    if (to <= was.to) return true;
    if (laying !== null && laying.change.from === was.state && to <= laying.start) {
      gap.was = { ...was, to };
      return true;
    }
  }
  if ((mask & (1 << next.state)) !== 0 && to <= next.to) {
    if (from >= next.from) return true;
    if (laying !== null && laying.change.to === next.state && from >= laying.finish) {
      gap.next = { ...next, from };
      return true;
    }
  }
  return false;
}
