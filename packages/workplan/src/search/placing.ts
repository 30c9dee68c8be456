import type { Minute } from '../problem.ts';
import type { Compiled, CompiledStep, Tie } from './compiled.ts';
import { type Air, hinderedByAir, hinderedByThings, hinderedByWeather, isPlaceFor } from './hindrances.ts';
import { SetUpLines } from './set-up-lines.ts';
import { type Laid, Taken } from './taken.ts';
import type { StepPlacing } from './unit-placing.ts';
import { type Way, Ways } from './ways.ts';

/** Places steps one at a time, each at the earliest start at which every rule is kept beside what is placed already. */
export class Placing implements StepPlacing {
  readonly compiled: Compiled;
  readonly taken: Taken;
  readonly lines: SetUpLines;
  readonly start: Int32Array;
  private readonly ways: Ways;
  /** the mark after what has begun already */
  private clean: number;
  /** by step: whether it or its waits ask for a set-up */
  private readonly hasSetUps: readonly boolean[];
  /** after a search that found no start: the least extra set-up minutes that were refused; Infinity: none were */
  refusedCost = Number.POSITIVE_INFINITY;
  /** how many starts have been looked for so far: a measure of work that is the same on every machine */
  effort = 0;

  constructor(compiled: Compiled) {
    this.compiled = compiled;
    this.taken = new Taken(compiled);
    this.lines = new SetUpLines(this.taken);
    this.start = this.taken.start;
    this.ways = new Ways(compiled, this.taken.finish, this.taken.batches);
    this.hasSetUps = compiled.steps.map(
      ({ setUps, waits }) => setUps.length > 0 || waits.some((wait) => wait.setUps.length + wait.still.length > 0),
    );
    for (const step of compiled.steps) if (step.fixed !== null) this.begin(step);
    this.clean = this.taken.mark();
  }

  clear(): void {
    this.taken.takeBack(this.clean);
  }

  mark(): number {
    return this.taken.mark();
  }

  takeBackTo(mark: number): void {
    this.taken.takeBack(mark);
  }

  isPlaced(step: number): boolean {
    return this.taken.isPlaced(step);
  }

  endOf(tie: Tie): Minute {
    return this.ways.endOf(tie);
  }

  /**
   * Begins anew where `now`, the stretches of work left, the set-ups and what has begun in `compiled` were changed.
   *
   * @param workedDay  a day with work in it already, to be ended as it must; −1: none
   */
  beginAgain(workedDay: number): void {
    const { taken, compiled } = this;
    taken.takeBack(0);
    taken.readStretches();
    compiled.aspects.forEach(({ initial }, aspect) => {
      taken.lines[aspect] = [{ from: Number.NEGATIVE_INFINITY, to: compiled.now, state: initial, before: [] }];
    });
    for (const step of compiled.steps) if (step.fixed !== null) this.begin(step);
    const mark = taken.mark();
    this.lines.forgetWindows();
    if (workedDay >= 0 && !this.lines.workDay(workedDay)) taken.takeBack(mark);
    this.clean = taken.mark();
  }

  /** What is done or under way takes what it takes; only what the plan can help is held against it. */
  private begin(step: CompiledStep): void {
    const { taken, lines, compiled } = this;
    const { now } = compiled;
    const { start, finish, hands } = step.fixed!;
    const underWay = step.source.progress.kind === 'under way';
    if (underWay && finish > now) {
      for (const hand of hands) taken.takeHand(hand, Math.max(0, start), Math.min(finish, compiled.horizon));
      const to = Math.min(finish, compiled.horizon);
      for (const { tool, count } of step.tools) taken.takeTool(tool, Math.max(0, start), to, count);
      if (step.zone >= 0) taken.takeRoom(step.zone, Math.max(0, start), to, hands.length);
    }
    const stands = (aspect: number, mask: number) => (mask & (1 << compiled.aspects[aspect]!.initial)) !== 0;
    for (const { aspect, mask } of step.setUps)
      if (finish > now && stands(aspect, mask)) lines.hold(aspect, Math.max(now, start), finish, mask);
    if (step.zone >= 0) {
      if (step.source.dusty) taken.addDust(step.zone, step.index, start, finish);
      if (step.source.wet) taken.addWet(step.zone, step.index, start, finish);
    }
    for (const wait of step.waits) {
      const over = finish < 0 ? finish : wait.cure.finish(finish);
      const to = over < 0 && finish >= 0 ? compiled.horizon : over;
      const from = Math.max(now, finish);
      if (wait.wet && step.zone >= 0) taken.addWet(step.zone, step.index, finish, to);
      if (to <= from) continue;
      for (const { aspect, mask } of wait.setUps) if (stands(aspect, mask)) lines.hold(aspect, from, to, mask);
      for (const aspect of wait.still) lines.hold(aspect, from, to, -1);
      if (wait.dry) {
        const shelter = compiled.aspects.find((aspect) => (aspect.sheltering & (1 << aspect.initial)) !== 0);
        if (shelter !== undefined) this.keepDry(from, to, shelter.index);
      }
    }
  }

  /**
   * Places one step at its earliest start from `notBefore` on, with at most `extra` more minutes of set-up changes.
   * What it comes after must be placed or begun.
   */
  placeStep(index: number, notBefore: Minute, extra: Minute, ignoreGreatest = false): boolean {
    this.effort++;
    this.refusedCost = Number.POSITIVE_INFINITY;
    const step = this.compiled.steps[index]!;
    const ways = this.ways.of(step, notBefore, ignoreGreatest);
    if (ways.length === 1) return this.search(step, ways[0]!, extra) >= 0;
    const { taken } = this;
    const mark = taken.mark();
    let best: Way | null = null;
    let soonest = Number.POSITIVE_INFINITY;
    for (const way of ways) {
      if (way.from + way.lasts >= soonest) continue;
      const start = this.search(step, way, extra);
      if (start < 0) continue;
      taken.takeBack(mark);
      if (start + way.lasts < soonest) {
        soonest = start + way.lasts;
        best = { ...way, from: start };
      }
    }
    return best !== null && this.search(step, best, extra) >= 0;
  }

  /**
   * The earliest start from `from` at which a step of `lasts` minutes could lie beside what has begun already, if
   * all else made way for it and set-ups could be changed in no time; −1: none. Nothing is taken.
   */
  earliestAlone(step: CompiledStep, from: Minute, lasts: Minute, to: Minute): Minute {
    const latest = Math.min(to, step.latestFinish - lasts, this.compiled.horizon - lasts);
    const way = { batchOf: -1, abrade: 0, lasts, from, to: latest };
    return this.search(step, way, Number.POSITIVE_INFINITY, false);
  }

  /** The earliest start in a way's window at which the step fits, with everything taken for it; −1: none. */
  private search(step: CompiledStep, way: Way, extra: Minute, takes = true): Minute {
    const { compiled, taken, lines } = this;
    const { stretches } = compiled;
    const { lasts } = way;
    const latest = way.to;
    const deadline = compiled.jobs[step.job]!.deadline;
    const dusty = step.zone >= 0 && (step.source.dusty || way.abrade > 0);
    const hasSetUps = this.hasSetUps[step.index]!;
    const { run } = step;
    const allowed = compiled.runs.allowedFrom(run);
    const setUpsAtStart = taken.setUpMinutes;
    let tries = 0;
    let moved = 0;
    if (hasSetUps && takes) lines.forgetWindows();
    // a step of no minutes may lie at the end of a stretch
    for (let at = taken.stretchAt(lasts > 0 ? way.from : way.from - 1); at < stretches.length; at++) {
      const stretch = stretches[at]!;
      if (stretch.from > latest) break;
      if (!this.hasRoom(step, lasts, at)) continue;
      let start = Math.max(stretch.from, way.from);
      const last = Math.min(stretch.to - lasts, latest);
      if (lasts === 0 && !isPlaceFor(step, compiled.problem.days[stretch.day]!)) continue;
      let opened = -1;
      while (start <= last) {
        if (lasts > 0 && run[start]! < lasts) {
          start = allowed[start + run[start]!]!;
          continue;
        }
        const finish = start + lasts;
        let hands = lines.handsFor(step.hands, step.keeper, start, finish, false);
        let moves = false;
        if (hands === null) {
          const blockedUntil = lines.blockedUntil;
          if (!takes || moved >= 5 || !lines.handsBesideChanges(step.hands, step.keeper, start, finish)) {
            start = blockedUntil;
            continue;
          }
          // changes of set-up are in the way: see whether they can be made at another time
          moved++;
          const mark = taken.mark();
          hands = lines.handsByMoving(step.hands, step.keeper, start, finish);
          taken.takeBack(mark);
          if (hands === null) {
            start = blockedUntil;
            continue;
          }
          moves = true;
        }
        let next = hinderedByThings(step, taken.toolLeft, taken.roomLeft, start, finish);
        if (next < 0 && step.zone >= 0) {
          if (dusty) next = this.hinderedBy(taken.wet, step, start, step.source.dusty ? finish : start + way.abrade);
          if (next < 0 && step.source.wet) next = this.hinderedBy(taken.dust, step, start, finish);
        }
        if (next < 0) {
          next = this.hinderedByWaits(step, finish, deadline);
          if (next === Number.POSITIVE_INFINITY) {
            if (opened >= 0) taken.takeBack(opened);
            return -1;
          }
          if (next >= 0) next -= lasts;
        }
        if (next >= 0) {
          start = Math.max(start + 1, next);
          continue;
        }
        if (takes && opened < 0 && taken.worked[stretch.day] === 0) {
          // the first work of a day: what the day must end in is asked for from here on
          opened = taken.mark();
          lines.forgetWindows();
          if (!lines.workDay(stretch.day) || taken.setUpMinutes - setUpsAtStart > extra) {
            this.refuse(taken.setUpMinutes - setUpsAtStart, extra);
            break;
          }
          continue;
        }
        if (hasSetUps && lasts > 0) {
          next = this.hinderedBySetUps(step, start, lasts, extra - (taken.setUpMinutes - setUpsAtStart), takes);
          if (next === Number.POSITIVE_INFINITY) break;
          if (next >= 0) {
            start = Math.max(start + 1, next);
            continue;
          }
        }
        if (!takes) return start;
        const mark = taken.mark();
        if (moves) hands = lines.handsByMoving(step.hands, step.keeper, start, finish);
        if (hands !== null && this.take(step, way, start, stretch.day, hands)) {
          const more = taken.setUpMinutes - setUpsAtStart;
          if (more <= extra) return start;
          this.refuse(more, extra);
        }
        taken.takeBack(mark);
        tries++;
        if (tries > 40) break;
        start += tries < 6 ? 1 : tries * 2;
      }
      if (opened >= 0) {
        taken.takeBack(opened);
        lines.forgetWindows();
      }
    }
    return -1;
  }

  /** Whether enough hands have so many minutes in a row free of steps in a stretch of work, each by itself. */
  private hasRoom(step: CompiledStep, lasts: Minute, stretch: number): boolean {
    if (step.hands === 0) return true;
    const { taken } = this;
    if (step.keeper && taken.longestFree(0, stretch) < lasts) return false;
    let free = 0;
    for (let hand = 0; hand < taken.busy.length; hand++) if (taken.longestFree(hand, stretch) >= lasts) free++;
    return free >= step.hands;
  }

  private refuse(cost: Minute, extra: Minute): void {
    if (cost > extra) this.refusedCost = Math.min(this.refusedCost, cost);
  }

  /** A later start to try where set-ups stand in the way; −1: none do; Infinity: no later one of this stretch. */
  private hinderedBySetUps(step: CompiledStep, start: Minute, lasts: Minute, extra: Minute, takes: boolean): Minute {
    const { lines } = this;
    let cost = 0;
    for (const { aspect, mask } of step.setUps) {
      const one = lines.costToHold(aspect, start, start + lasts, mask);
      if (one === Number.POSITIVE_INFINITY || cost + one > extra) {
        if (one < Number.POSITIVE_INFINITY) this.refusedCost = Math.min(this.refusedCost, one);
        const next = lines.nextTry(aspect, start, lasts);
        return next < 0 ? Number.POSITIVE_INFINITY : next;
      }
      cost += one;
      if (!takes) continue;
      let window = lines.windowToHold(aspect, start, start + lasts, mask);
      // what the step asks for besides may be what this one can only be changed in
      if (window.soonest === Number.POSITIVE_INFINITY && step.setUps.length > 1)
        window = lines.windowBeside(step.setUps, aspect, start, start + lasts, mask);
      if (start < window.soonest || start + lasts > window.latest) {
        const next = start < window.soonest ? window.soonest : lines.nextTry(aspect, start, lasts);
        return next < 0 ? Number.POSITIVE_INFINITY : next;
      }
    }
    return -1;
  }

  /** The end of something in the air (dust, or something wet it would settle on) that reaches the step; −1: none. */
  private hinderedBy(air: Air, step: CompiledStep, from: Minute, to: Minute): Minute {
    return hinderedByAir(air, this.compiled.near[step.zone]!, step, from, to);
  }

  /** A later finish to try so that the waits keep their needs; −1: they do; Infinity: no later one can. */
  private hinderedByWaits(step: CompiledStep, finish: Minute, deadline: Minute): Minute {
    const { compiled, taken } = this;
    for (const wait of step.waits) {
      const over = wait.cure.finish(finish);
      if (over < 0 || over > deadline) return Number.POSITIVE_INFINITY;
      if (over <= finish) continue;
      const next = hinderedByWeather(wait, finish, over);
      if (next >= 0) return next;
      if (wait.dry && compiled.nextRain[finish]! < over && compiled.aspects.every((aspect) => aspect.sheltering === 0))
        return compiled.nextRain[finish]! + 1;
      if (wait.wet && step.zone >= 0) {
        const until = this.hinderedBy(taken.dust, step, finish, over);
        if (until >= 0) return Math.max(finish + 1, until);
      }
    }
    return -1;
  }

  private take(step: CompiledStep, way: Way, start: Minute, day: number, hands: readonly number[]): boolean {
    const finish = start + way.lasts;
    this.lay(step.index, { start, finish, day, batchOf: way.batchOf, abrade: way.abrade, hands });
    return this.holdFor(step.index);
  }

  /** Takes what a step takes where it lies, but for its set-ups; nothing is asked. */
  lay(index: number, at: Laid): void {
    const { taken } = this;
    const step = this.compiled.steps[index]!;
    const { start, finish, hands } = at;
    for (const hand of hands) taken.takeHand(hand, start, finish);
    for (const { tool, count } of step.tools) taken.takeTool(tool, start, finish, count);
    if (step.zone >= 0) {
      if (step.hands > 0) taken.takeRoom(step.zone, start, finish, step.hands);
      if (step.source.dusty) taken.addDust(step.zone, step.index, start, finish);
      else if (at.abrade > 0) taken.addDust(step.zone, step.index, start, start + at.abrade);
      if (step.source.wet) taken.addWet(step.zone, step.index, start, finish);
      for (const wait of step.waits)
        if (wait.wet) taken.addWet(step.zone, step.index, finish, wait.cure.finish(finish));
    }
    if (step.mix >= 0 && at.batchOf < 0)
      taken.addBatch(step.mix, { step: step.index, mixed: start + at.abrade + step.mixing });
    taken.placeStep(step.index, at);
  }

  /** Holds the set-ups that a step which lies already and its waits ask for; false where that cannot be. */
  holdFor(index: number): boolean {
    const { taken, lines } = this;
    const step = this.compiled.steps[index]!;
    const [start, finish] = [taken.start[index]!, taken.finish[index]!];
    if (!lines.holdAll(step.setUps, start, finish)) return false;
    for (const wait of step.waits) {
      const over = wait.cure.finish(finish);
      for (const { aspect, mask } of wait.setUps) if (!lines.hold(aspect, finish, over, mask)) return false;
      if (wait.dry && !this.keepDry(finish, over, -1)) return false;
      for (const aspect of wait.still) if (!lines.hold(aspect, finish, over, -1)) return false;
    }
    return true;
  }

  /** Something that shelters stands over every rainy minute of a span; `only`: by this aspect, −1: by any. */
  private keepDry(from: Minute, to: Minute, only: number): boolean {
    const { compiled, taken, lines } = this;
    let minute = compiled.nextRain[from]!;
    while (minute < to) {
      let end = minute;
      while (end < to && compiled.nextRain[end] === end) end++;
      let least = Number.POSITIVE_INFINITY;
      let by = -1;
      for (const { index, sheltering } of compiled.aspects) {
        if (sheltering === 0 || (only >= 0 && index !== only)) continue;
        const cost = lines.costToHold(index, minute, end, sheltering);
        if (cost < least) {
          least = cost;
          by = index;
        }
      }
      if (by < 0 || !lines.hold(by, minute, end, taken.compiled.aspects[by]!.sheltering)) return false;
      minute = compiled.nextRain[end]!;
    }
    return true;
  }
}
