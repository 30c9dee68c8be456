import type { Minute } from '../../problem.ts';
import type { Compiled, CompiledStep } from '../compiled.ts';
import { hinderedByWeather, isPlaceFor } from '../hindrances.ts';
import { type Frame, never } from './frame.ts';
import { Standing } from './standing.ts';

/** The first starts from each minute of work on, as far as they are known, of steps of one kind. */
interface Kind {
  /** whether set-ups or shelter count, and not only the days that can be worked */
  readonly hangsOnFrame: boolean;
  /** by minute of work: 0: not known; the number of the start's minute of work + 1; one more than there are: none */
  known: Uint16Array | Int32Array | null;
  /** for which frame, or days that can be worked, it is known */
  knownFor: number;
}

/** When a step can start as far as days, weather and what stands in a frame go, whatever else is placed. */
export class AllowedStarts {
  private readonly compiled: Compiled;
  private readonly standing: Standing;
  /** by minute: its number among the minutes of work; −1: it is none */
  private readonly numberOf: Int32Array;
  /** by number: the minute */
  private readonly minuteOf: Int32Array;
  /** by minute: the first stretch of work that ends after it */
  private readonly stretchFrom: Int16Array;
  /** by step: the first minute from a minute on that allows its kind of work */
  private readonly workable: readonly Int32Array[];
  private readonly kinds: readonly Kind[];
  private frames = 0;
  private daySets = 0;

  constructor(compiled: Compiled) {
    const { horizon, stretches, steps, runs } = compiled;
    this.compiled = compiled;
    this.standing = new Standing(compiled);
    this.numberOf = new Int32Array(horizon + 1).fill(-1);
    this.stretchFrom = new Int16Array(horizon + 2).fill(stretches.length);
    for (let at = stretches.length - 1; at >= 0; at--) this.stretchFrom.fill(at, 0, stretches[at]!.to);
    const minutes: Minute[] = [];
    for (const { from, to } of stretches)
      for (let minute = from; minute < to; minute++) this.numberOf[minute] = minutes.push(minute) - 1;
    this.minuteOf = Int32Array.from(minutes);
    this.workable = steps.map(({ run }) => runs.allowedFrom(run));
    this.kinds = kindsOf(compiled);
  }

  setFrame(frame: Frame): void {
    this.frames++;
    if (this.standing.setFrame(frame)) this.daySets++;
  }

  /** the stretch of work that a minute lies in or, if in none, the next */
  stretchAt(minute: Minute): number {
    const { stretchFrom } = this;
    return stretchFrom[minute < 0 ? 0 : minute >= stretchFrom.length ? stretchFrom.length - 1 : minute]!;
  }

  /** The first start from a minute on, so far as is asked: past `latest` it may be one or not. */
  next(step: CompiledStep, lasts: Minute, from: Minute, latest: Minute): Minute {
    if (lasts === 0) return this.nextOfNoTime(step, from, latest);
    if (lasts !== step.minutes || from > this.compiled.horizon) return this.find(step, lasts, from, latest);
    let number = this.numberOf[from]!;
    if (number < 0) {
      const { stretches } = this.compiled;
      const at = this.stretchAt(from);
      if (at >= stretches.length) return never;
      number = this.numberOf[stretches[at]!.from]!;
    }
    const known = this.knownOf(this.kinds[step.index]!);
    const none = this.minuteOf.length + 1;
    const before = known[number]!;
    if (before !== 0) return before === none ? never : this.minuteOf[before - 1]!;
    const found = this.find(step, lasts, this.minuteOf[number]!, never);
    known[number] = found === never ? none : this.numberOf[found]! + 1;
    return found;
  }

  private knownOf(kind: Kind): Uint16Array | Int32Array {
    const count = this.minuteOf.length;
    const now = kind.hangsOnFrame ? this.frames : this.daySets;
    if (kind.known === null) kind.known = count < 0xffff ? new Uint16Array(count) : new Int32Array(count);
    else if (kind.knownFor !== now) kind.known.fill(0);
    kind.knownFor = now;
    return kind.known;
  }

  private find(step: CompiledStep, lasts: Minute, from: Minute, latest: Minute): Minute {
    const { stretches } = this.compiled;
    const { canBeWorked } = this.standing;
    const { run } = step;
    const workable = this.workable[step.index]!;
    let start = from;
    for (let at = this.stretchAt(from); at < stretches.length; at++) {
      const stretch = stretches[at]!;
      if (stretch.from > latest) return never;
      if (canBeWorked[stretch.day] === 0) continue;
      const last = stretch.to - lasts;
      if (stretch.from > start) start = stretch.from;
      while (start <= last) {
        if (run[start]! < lasts) {
          start = workable[start + run[start]!]!;
          continue;
        }
        const next = this.hindered(step, start, lasts);
        if (next < 0) return start;
        if (next === never) return never;
        start = next;
      }
    }
    return never;
  }

  /** A step of no minutes asks for nothing but the place, and may lie at the end of a stretch. */
  private nextOfNoTime(step: CompiledStep, from: Minute, latest: Minute): Minute {
    const { stretches, problem } = this.compiled;
    const { canBeWorked } = this.standing;
    let start = from;
    for (let at = this.stretchAt(from - 1); at < stretches.length; at++) {
      const { day, from: begins, to } = stretches[at]!;
      if (begins > latest) return never;
      if (canBeWorked[day] === 0 || !isPlaceFor(step, problem.days[day]!)) continue;
      if (begins > start) start = begins;
      while (start <= to) {
        const next = this.hinderedByWaits(step, start);
        if (next < 0) return start;
        if (next === never) return never;
        start = next > start ? next : start + 1;
      }
    }
    return never;
  }

  /** A later start to try where set-ups or waits stand in the way; −1: none do; `never`: no later one can be. */
  private hindered(step: CompiledStep, start: Minute, lasts: Minute): Minute {
    const { standing } = this;
    const { setUps } = step;
    const finish = start + lasts;
    for (let k = 0; k < setUps.length; k++) {
      const next = standing.hinders(setUps[k]!.aspect, setUps[k]!.mask, start, finish);
      if (next >= 0) return next;
    }
    if (step.waits.length === 0) return -1;
    const next = this.hinderedByWaits(step, finish);
    if (next < 0 || next === never) return next;
    return next - lasts > start ? next - lasts : start + 1;
  }

  /** A later finish to try so that the waits keep their needs; −1: they do; `never`: no later one can be. */
  private hinderedByWaits({ job, waits }: CompiledStep, finish: Minute): Minute {
    const { standing } = this;
    const { deadline } = this.compiled.jobs[job]!;
    for (let k = 0; k < waits.length; k++) {
      const wait = waits[k]!;
      const over = wait.cure.finish(finish);
      if (over < 0 || over > deadline) return never;
      if (over <= finish) continue;
      const next = hinderedByWeather(wait, finish, over);
      if (next >= 0) return next;
      if (wait.dry && standing.nextWet[finish]! < over) return standing.nextWet[finish]! + 1;
      for (let n = 0; n < wait.setUps.length; n++) {
        const end = standing.hinders(wait.setUps[n]!.aspect, wait.setUps[n]!.mask, finish, over);
        if (end >= 0) return end;
      }
      for (let n = 0; n < wait.still.length; n++) {
        const end = standing.hinders(wait.still[n]!, -1, finish, over);
        if (end >= 0) return end;
      }
    }
    return -1;
  }
}

/** By step: its kind, one for all steps that days, weather and set-ups allow at the same minutes. */
function kindsOf({ steps }: Compiled): Kind[] {
  const kinds = new Map<string, Kind>();
  const runs: Int32Array[] = [];
  return steps.map(({ index, run, minutes, setUps, waits }) => {
    if (!runs.includes(run)) runs.push(run);
    // what has waits counts as a kind of its own: two with the same are rare
    const name = JSON.stringify([runs.indexOf(run), minutes, setUps, waits.length === 0 ? -1 : index]);
    const hangsOnFrame =
      setUps.length > 0 || waits.some((wait) => wait.dry || wait.setUps.length > 0 || wait.still.length > 0);
    const kind = kinds.get(name) ?? { hangsOnFrame, known: null, knownFor: -1 };
    kinds.set(name, kind);
    return kind;
  });
}
