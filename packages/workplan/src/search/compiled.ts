import { type Conditions, dewMargin_C, underRoof, unmetConditions } from '#sky';
import type { Minute, PlanHour, Problem, ProblemStep, SetUpNeed } from '../problem.ts';
import { CureTimes } from './cure-times.ts';

/** A problem in the form the search reads: indices for ids, arrays by minute for what the sky and the days allow. */
export interface Compiled {
  readonly problem: Problem;
  readonly horizon: Minute;
  readonly now: Minute;
  /** stretches of a day's work between set-out, breaks and clear-up, from `now` on, in order of time */
  readonly stretches: readonly Stretch[];
  readonly steps: readonly CompiledStep[];
  readonly jobs: readonly CompiledJob[];
  readonly units: readonly Unit[];
  readonly aspects: readonly CompiledAspect[];
  readonly days: readonly { readonly to: Minute; readonly endsIn: readonly AspectNeed[] }[];
  /** first minute from a minute on at which rain reaches what lies outside; horizon + 1: none */
  readonly nextRain: Int32Array;
  /** zones whose dust reaches a zone, itself among them */
  readonly near: readonly (readonly number[])[];
  /** 1 where a hand is not there, by hand and minute */
  readonly absent: readonly Uint8Array[];
  /** how many of a tool there are, by tool and minute */
  readonly toolCount: readonly Int16Array[];
  readonly previous: Int32Array;
  readonly runs: Runs;
}

export interface Stretch {
  readonly day: number;
  readonly from: Minute;
  readonly to: Minute;
}

/** One of the states in `mask` (bit by index in the aspect) is asked for. */
export interface AspectNeed {
  readonly aspect: number;
  readonly mask: number;
}

export interface CompiledJob {
  readonly index: number;
  readonly weight: number;
  readonly needed: boolean;
  /** the horizon where it has none */
  readonly deadline: Minute;
  /** its place in `units`; −1: it has no open step and needs no planning */
  readonly unit: number;
}

/** Jobs that are in a plan together or not at all, because steps of each wait for steps of the other; mostly one. */
export interface Unit {
  readonly jobs: readonly number[];
  readonly weight: number;
  readonly missedWeight: number;
  /** open steps, each after those it waits for */
  readonly open: readonly number[];
  /** other units that must be in the plan for this one to be */
  readonly waitsFor: readonly number[];
  /** steps that wait for each other in a ring, so that it can be in no plan; null: none */
  readonly ring: readonly number[] | null;
}

export interface CompiledStep {
  readonly index: number;
  readonly source: ProblemStep;
  readonly job: number;
  readonly minutes: Minute;
  readonly hands: number;
  readonly keeper: boolean;
  readonly notAlone: boolean;
  /** −1: none */
  readonly zone: number;
  readonly tools: readonly { readonly tool: number; readonly count: number }[];
  readonly setUps: readonly AspectNeed[];
  /** −1: none */
  readonly mix: number;
  readonly mixing: Minute;
  readonly potLife: Minute;
  readonly waits: readonly CompiledWait[];
  /** minutes in a row from a minute on in which days, light, weather and the hands there allow it */
  readonly run: Int32Array;
  readonly earliest: Minute;
  readonly latestFinish: Minute;
  readonly before: readonly Tie[];
  readonly after: readonly Tie[];
  readonly fixed: { readonly start: Minute; readonly finish: Minute; readonly hands: readonly number[] } | null;
}

export interface CompiledWait {
  readonly id: string;
  readonly cure: CureTimes;
  readonly dry: boolean;
  /** first minute after a minute in which the air is too cold for it; horizon + 1: none. null: it does not ask */
  readonly nextCold: Int32Array | null;
  /** when it is dry to the touch, and the first minute after a minute in which dew is near; null: it does not ask */
  readonly beforeDew: { readonly touchDry: CureTimes; readonly nextNear: Int32Array } | null;
  readonly setUps: readonly AspectNeed[];
  readonly still: readonly number[];
  readonly wet: boolean;
}

/** `after` waits for `before`, or for its wait number `wait` (−1: the step itself). */
export interface Tie {
  readonly before: number;
  readonly wait: number;
  readonly after: number;
  readonly least: Minute;
  /** −1: none */
  readonly greatest: Minute;
  /** minutes more past the greatest; −1: forbidden */
  readonly abrade: Minute;
}

export interface CompiledAspect {
  readonly index: number;
  readonly states: number;
  readonly initial: number;
  /** bits of the states in which a wait stays dry */
  readonly sheltering: number;
  readonly changes: readonly CompiledChange[];
  /** least minutes from state to state over any changes; Infinity: no way */
  readonly minutes: readonly (readonly number[])[];
  /** the change to make first on that way; −1: none */
  readonly firstChange: readonly (readonly number[])[];
}

export interface CompiledChange {
  readonly aspect: number;
  readonly from: number;
  readonly to: number;
  readonly minutes: Minute;
  readonly hands: number;
  readonly setUps: readonly AspectNeed[];
  /** the last minute up to a minute at which it can start; −1: none */
  readonly startUpTo: Int32Array;
  /** the first minute from a minute on at which it can start; horizon + 1: none */
  readonly startFrom: Int32Array;
}

/** Compiles a sound problem. */
export function compile(problem: Problem): Compiled {
  const { horizon, now } = problem;
  const indexOf = (things: readonly { readonly id: string }[]) =>
    new Map(things.map((thing, index) => [thing.id, index]));
  const [steps, jobs, hands, tools, zones, aspects, mixes] = [
    indexOf(problem.steps),
    indexOf(problem.jobs),
    indexOf(problem.hands),
    indexOf(problem.tools),
    indexOf(problem.zones),
    indexOf(problem.aspects),
    indexOf(problem.mixes),
  ];
  const stateIndex = problem.aspects.map((aspect) => indexOf(aspect.states));
  const need = ({ aspect, states }: SetUpNeed): AspectNeed => {
    const index = aspects.get(aspect)!;
    return { aspect: index, mask: states.reduce((mask, state) => mask | (1 << stateIndex[index]!.get(state)!), 0) };
  };

  const stretches = stretchesOf(problem);
  const absent = problem.hands.map((hand) => {
    const away = new Uint8Array(horizon + 1).fill(1);
    for (const span of hand.present) away.fill(0, span.from, span.to);
    return away;
  });
  const runs = new Runs(problem, stretches, absent);
  const cures = new Map<string, CureTimes>();
  const cure = (law: ProblemStep['waits'][number]['law']) => {
    const key = JSON.stringify(law);
    let times = cures.get(key);
    if (times === undefined) {
      times = new CureTimes(law, problem.hours);
      cures.set(key, times);
    }
    return times;
  };
  const colds = new Map<number, Int32Array>();
  const nextCold = (least_C: number) => {
    let next = colds.get(least_C);
    if (next === undefined) {
      next = nextHour(problem, ({ air_C }) => air_C < least_C);
      colds.set(least_C, next);
    }
    return next;
  };
  const nears = new Map<number, Int32Array>();
  const nextNear = (margin_C: number) => {
    let next = nears.get(margin_C);
    if (next === undefined) {
      next = nextHour(problem, (hour) => !hour.sheltered && dewMargin_C(hour) < margin_C);
      nears.set(margin_C, next);
    }
    return next;
  };

  const ties: Tie[] = problem.precedence.map((tie) => {
    const before = steps.get(tie.before)!;
    return {
      before,
      wait: tie.wait === null ? -1 : problem.steps[before]!.waits.findIndex((wait) => wait.id === tie.wait),
      after: steps.get(tie.after)!,
      least: tie.least_min,
      greatest: tie.greatest_min ?? -1,
      abrade: tie.past.kind === 'abrade' ? tie.past.minutes : -1,
    };
  });

  const compiledSteps = problem.steps.map((source, index): CompiledStep => {
    const job = problem.jobs[jobs.get(source.job)!]!;
    const { progress } = source;
    let earliest = now;
    for (const store of source.stores) {
      const from = problem.stores.find((line) => line.id === store)?.from ?? null;
      earliest = from === null ? horizon + 1 : Math.max(earliest, from);
    }
    if (source.held !== null) earliest = Math.max(earliest, source.held.from);
    const latestFinish = Math.min(horizon, source.held?.to ?? horizon, job.deadline ?? horizon);
    const mix = source.mix === null ? null : problem.mixes[mixes.get(source.mix)!]!;
    return {
      index,
      source,
      job: jobs.get(source.job)!,
      minutes: source.minutes,
      hands: source.hands,
      keeper: source.keeper,
      notAlone: source.notAlone,
      zone: source.zone === null ? -1 : zones.get(source.zone)!,
      tools: source.tools.map((use) => ({ tool: tools.get(use.tool)!, count: use.count })),
      setUps: source.setUps.map(need),
      mix: source.mix === null ? -1 : mixes.get(source.mix)!,
      mixing: mix?.mixing_min ?? 0,
      potLife: mix?.potLife_min ?? 0,
      waits: source.waits.map((wait) => ({
        id: wait.id,
        cure: cure(wait.law),
        dry: wait.needs.dry === true && !isInside(problem, source.zone),
        nextCold: wait.needs.air_min_C === undefined ? null : nextCold(wait.needs.air_min_C),
        beforeDew:
          wait.needs.beforeDew === undefined || isInside(problem, source.zone)
            ? null
            : {
                touchDry: cure(wait.needs.beforeDew.touchDry),
                nextNear: nextNear(wait.needs.beforeDew.dewMargin_min_C),
              },
        setUps: wait.setUps.map(need),
        still: wait.still.map((aspect) => aspects.get(aspect)!),
        wet: wait.wet,
      })),
      run: runs.of(runNeeds(problem, source)),
      earliest,
      latestFinish,
      before: ties.filter((tie) => tie.after === index),
      after: ties.filter((tie) => tie.before === index),
      fixed:
        progress.kind === 'open'
          ? null
          : {
              start: progress.start,
              finish: progress.kind === 'done' ? progress.finish : progress.expectedFinish,
              hands: progress.kind === 'done' ? [] : progress.hands.map((hand) => hands.get(hand)!),
            },
    };
  });

  const { units, unitOfJob } = unitsOf(problem, compiledSteps);
  return {
    problem,
    horizon,
    now,
    stretches,
    steps: compiledSteps,
    jobs: problem.jobs.map(
      (job, index): CompiledJob => ({
        index,
        weight: job.weight,
        needed: job.deadline !== null || !job.optional,
        deadline: job.deadline ?? horizon,
        unit: unitOfJob[index]!,
      }),
    ),
    units,
    aspects: problem.aspects.map((aspect, index): CompiledAspect => {
      const changes = aspect.changes.map(
        (change): CompiledChange => ({
          aspect: index,
          from: stateIndex[index]!.get(change.from)!,
          to: stateIndex[index]!.get(change.to)!,
          minutes: change.minutes,
          hands: change.hands,
          setUps: change.setUps.map(need),
          ...startsOf(
            runs.of({
              needs: change.needs,
              features: [],
              inside: false,
              keeper: true,
              present: change.hands,
            }),
            change.minutes,
          ),
        }),
      );
      const states = aspect.states.length;
      return {
        index,
        states,
        initial: stateIndex[index]!.get(aspect.initial)!,
        sheltering: aspect.states.reduce((mask, state, at) => (state.shelters ? mask | (1 << at) : mask), 0),
        changes,
        ...leastWays(states, changes),
      };
    }),
    days: problem.days.map((day) => ({
      to: day.to,
      endsIn: day.endsIn.map(({ aspect, state }) => need({ aspect, states: [state] })),
    })),
    nextRain: nextHour(problem, ({ rain, sheltered }) => rain && !sheltered),
    near: problem.zones.map((zone, index) => [
      index,
      ...problem.zones.flatMap((other, at) =>
        at !== index && (zone.near.includes(other.id) || other.near.includes(zone.id)) ? [at] : [],
      ),
    ]),
    absent,
    toolCount: problem.tools.map((tool) => {
      const count = new Int16Array(horizon + 1);
      for (const span of tool.capacity) count.fill(span.count, span.from, span.to);
      return count;
    }),
    previous: previousStarts(problem),
    runs,
  };
}

function startsOf(run: Int32Array, minutes: Minute) {
  const horizon = run.length - 1;
  const startUpTo = new Int32Array(horizon + 1).fill(-1);
  const startFrom = new Int32Array(horizon + 2).fill(horizon + 1);
  const least = Math.max(1, minutes);
  for (let minute = 0; minute <= horizon; minute++)
    startUpTo[minute] = run[minute]! >= least ? minute : minute > 0 ? startUpTo[minute - 1]! : -1;
  for (let minute = horizon; minute >= 0; minute--)
    startFrom[minute] = run[minute]! >= least ? minute : startFrom[minute + 1]!;
  return { startUpTo, startFrom };
}

/** What a step asks of the minutes it lies in. */
export function runNeeds(problem: Problem, step: ProblemStep): RunNeeds {
  return {
    needs: step.needs,
    features: step.features,
    inside: isInside(problem, step.zone),
    keeper: step.keeper,
    present: Math.max(step.hands, step.notAlone ? 2 : 0),
  };
}

function previousStarts(problem: Problem): Int32Array {
  const starts = new Map(problem.previous.map(({ step, start }) => [step, start]));
  return Int32Array.from(problem.steps, (step) => starts.get(step.id) ?? -1);
}

/** By minute: itself where its hour is one of those looked for, else the next minute of one; horizon + 1: none. */
function nextHour({ hours, horizon }: Problem, isOne: (hour: PlanHour) => boolean): Int32Array {
  const next = new Int32Array(horizon + 2).fill(horizon + 1);
  const is = hours.map(isOne);
  for (let minute = horizon - 1; minute >= 0; minute--)
    next[minute] = is[Math.floor(minute / 60)]! ? minute : next[minute + 1]!;
  return next;
}

/** The first minute at which dew is near a wait that begins at a minute, before it is dry to the touch; −1: none. */
export function dewNear({ beforeDew }: CompiledWait, begins: Minute, over: Minute): Minute {
  if (beforeDew === null) return -1;
  const near = beforeDew.nextNear[begins]!;
  if (near >= over) return -1;
  const dry = beforeDew.touchDry.finish(begins);
  return dry >= 0 && near >= dry ? -1 : near;
}

function isInside(problem: Problem, zone: string | null): boolean {
  return zone !== null && problem.zones.some((other) => other.id === zone && other.inside);
}

function stretchesOf(problem: Problem): Stretch[] {
  const stretches: Stretch[] = [];
  problem.days.forEach((day, index) => {
    let from = Math.max(problem.now, day.from + day.setOut_min);
    const end = Math.min(day.to - day.clearUp_min, problem.horizon);
    const breaks = [...day.breaks].sort((a, b) => a.from - b.from);
    for (const pause of [...breaks, { from: end, to: end }]) {
      const to = Math.min(pause.from, end);
      if (to > from) stretches.push({ day: index, from, to });
      from = Math.max(from, pause.to);
    }
  });
  return stretches;
}

export interface RunNeeds {
  readonly needs: Conditions;
  readonly features: readonly string[];
  readonly inside: boolean;
  readonly keeper: boolean;
  /** how many hands must be there at least */
  readonly present: number;
}

/** Minutes in a row that allow a kind of work, made once for each kind. */
export class Runs {
  private readonly problem: Problem;
  private readonly stretches: readonly Stretch[];
  private readonly absent: readonly Uint8Array[];
  private readonly known = new Map<string, Int32Array>();
  private readonly allowed = new WeakMap<Int32Array, Int32Array>();
  private readonly light: Uint8Array;
  private readonly present: Uint8Array;

  constructor(problem: Problem, stretches: readonly Stretch[], absent: readonly Uint8Array[]) {
    this.problem = problem;
    this.stretches = stretches;
    this.absent = absent;
    this.light = new Uint8Array(problem.horizon + 1);
    for (const span of problem.daylight) this.light.fill(1, span.from, span.to);
    this.present = new Uint8Array(problem.horizon + 1);
    for (const away of absent)
      for (const { from, to } of stretches)
        for (let minute = from; minute < to; minute++) if (away[minute] === 0) this.present[minute]!++;
  }

  of(kind: RunNeeds): Int32Array {
    const key = JSON.stringify(kind);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const { problem } = this;
    const suits = Uint8Array.from(problem.hours, (hour) => (suitsHour(kind, hour) ? 1 : 0));
    const daylight = kind.needs.daylight === true;
    const run = new Int32Array(problem.horizon + 1);
    const keeperAway = this.absent[0];
    for (const { day, from, to } of this.stretches) {
      const place = problem.days[day]!.features;
      if (!kind.features.every((feature) => (place as readonly string[]).includes(feature))) continue;
      let minutes = 0;
      for (let minute = to - 1; minute >= from; minute--) {
        const fits =
          suits[Math.floor(minute / 60)] === 1 &&
          (!daylight || this.light[minute] === 1) &&
          this.present[minute]! >= kind.present &&
          (!kind.keeper || (keeperAway !== undefined && keeperAway[minute] === 0));
        minutes = fits ? minutes + 1 : 0;
        run[minute] = minutes;
      }
    }
    this.known.set(key, run);
    return run;
  }

  /** By minute: the first from it on that has any minutes in a row; horizon + 1: none. `run`: one given by `of` */
  allowedFrom(run: Int32Array): Int32Array {
    const known = this.allowed.get(run);
    if (known !== undefined) return known;
    const from = new Int32Array(run.length + 1).fill(run.length);
    for (let minute = run.length - 1; minute >= 0; minute--)
      from[minute] = run[minute]! > 0 ? minute : from[minute + 1]!;
    this.allowed.set(run, from);
    return from;
  }
}

/** Whether an hour of weather allows a kind of work. */
export function suitsHour(kind: { readonly needs: Conditions; readonly inside: boolean }, hour: PlanHour): boolean {
  return unmetConditions(kind.needs, kind.inside || hour.sheltered ? underRoof(hour) : hour).length === 0;
}

function leastWays(states: number, changes: readonly CompiledChange[]) {
  const minutes = Array.from({ length: states }, (_, from) =>
    Array.from({ length: states }, (_, to) => (from === to ? 0 : Number.POSITIVE_INFINITY)),
  );
  const firstChange = Array.from({ length: states }, () => new Array<number>(states).fill(-1));
  changes.forEach((change, index) => {
    // of two changes between the same states the rules know the first
    if (changes.findIndex(({ from, to }) => from === change.from && to === change.to) !== index) return;
    if (change.from !== change.to && change.minutes < minutes[change.from]![change.to]!) {
      minutes[change.from]![change.to] = change.minutes;
      firstChange[change.from]![change.to] = index;
    }
  });
  for (let over = 0; over < states; over++)
    for (let from = 0; from < states; from++)
      for (let to = 0; to < states; to++) {
        const way = minutes[from]![over]! + minutes[over]![to]!;
        if (way < minutes[from]![to]!) {
          minutes[from]![to] = way;
          firstChange[from]![to] = firstChange[from]![over]!;
        }
      }
  return { minutes, firstChange };
}

/** Jobs in groups that stand or fall together (strongly connected by what waits for what), each with its step order. */
function unitsOf(problem: Problem, steps: readonly CompiledStep[]): { units: Unit[]; unitOfJob: number[] } {
  const jobCount = problem.jobs.length;
  const open = problem.jobs.map((_, job) => steps.filter((step) => step.job === job && step.fixed === null));
  const reach = Array.from({ length: jobCount }, () => new Uint8Array(jobCount));
  for (const step of steps) {
    if (step.fixed !== null) continue;
    for (const tie of step.before) if (steps[tie.before]!.fixed === null) reach[step.job]![steps[tie.before]!.job] = 1;
  }
  const direct = reach.map((row) => Uint8Array.from(row));
  for (let over = 0; over < jobCount; over++)
    for (let from = 0; from < jobCount; from++)
      if (reach[from]![over] === 1)
        for (let to = 0; to < jobCount; to++) if (reach[over]![to] === 1) reach[from]![to] = 1;

  const unitOfJob = new Array<number>(jobCount).fill(-1);
  const groups: number[][] = [];
  for (let job = 0; job < jobCount; job++) {
    if (open[job]!.length === 0 || unitOfJob[job]! >= 0) continue;
    const group = [job];
    for (let other = job + 1; other < jobCount; other++)
      if (reach[job]![other] === 1 && reach[other]![job] === 1) group.push(other);
    for (const member of group) unitOfJob[member] = groups.length;
    groups.push(group);
  }
  const units = groups.map((jobs, index): Unit => {
    const { order, ring } = stepOrder(
      steps,
      jobs.flatMap((job) => open[job]!.map((step) => step.index)),
    );
    const waitsFor = new Set<number>();
    for (const job of jobs)
      for (let other = 0; other < jobCount; other++)
        if (direct[job]![other] === 1 && unitOfJob[other] !== index) waitsFor.add(unitOfJob[other]!);
    let [weight, missedWeight] = [0, 0];
    for (const job of jobs) {
      const { weight: worth, deadline, optional } = problem.jobs[job]!;
      weight += worth;
      if (deadline !== null || !optional) missedWeight += worth;
    }
    return { jobs, weight, missedWeight, open: order, waitsFor: [...waitsFor], ring };
  });
  return { units, unitOfJob };
}

function stepOrder(steps: readonly CompiledStep[], members: readonly number[]) {
  const order: number[] = [];
  const inside = new Set(members);
  const closed = new Set<number>();
  const chain: number[] = [];
  let ring: number[] | null = null;
  const visit = (index: number) => {
    if (!inside.has(index) || closed.has(index)) return;
    if (chain.includes(index)) {
      ring ??= chain.slice(chain.indexOf(index));
      return;
    }
    chain.push(index);
    for (const tie of steps[index]!.before) visit(tie.before);
    chain.pop();
    closed.add(index);
    order.push(index);
  };
  for (const index of members) visit(index);
  return { order, ring: ring as number[] | null };
}
