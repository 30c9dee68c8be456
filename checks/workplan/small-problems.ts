/**
 * Small invented plan problems, made from a seed, which between them use every rule: what brute force, the
 * constraint model and the search are held against each other on. The same seed and options give the same problem.
 */
import type { CureLaw } from '#materials';
import type { Conditions } from '#sky';
import type {
  Hand,
  MinuteSpan,
  Mix,
  PlanHour,
  Precedence,
  Problem,
  ProblemDay,
  ProblemJob,
  ProblemStep,
  Rule,
  SetUpAspect,
  SetUpNeed,
  StoreLine,
  Tool,
  Wait,
  WorkZone,
} from '#workplan';

export interface SmallProblemOptions {
  /**
   * 'all': any rule may come up. A list: these rules come up often and others seldom, so that they bite.
   * Default 'all'.
   */
  readonly rules?: 'all' | readonly Rule[];
  /** 'tiny': one job day, 2–4 steps; 'small': one or two job days, 3–9 steps. Default 'small'. */
  readonly size?: 'tiny' | 'small';
  /**
   * Every figure of time a multiple of five minutes, waits of set times only and no abrading, so that brute force
   * may step by five. Default false.
   */
  readonly onFives?: boolean;
}

interface Dice {
  /** true with this chance */
  chance(of: number): boolean;
  /** whole number from..to, both included */
  whole(from: number, to: number): number;
  /** multiple of five from..to, both included */
  fives(from: number, to: number): number;
  one<T>(of: readonly T[]): T;
}

/** The same numbers for the same seed on every machine (mulberry32, public domain). */
function diceFrom(seed: number): Dice {
  let a = seed >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  return {
    chance: (of) => next() < of,
    whole,
    fives: (from, to) => 5 * whole(from / 5, to / 5),
    one: (of) => of[whole(0, of.length - 1)]!,
  };
}

const set = (minutes: number): CureLaw => ({ kind: 'set time', minutes, from: 'our assumption' });

/**
 * One small problem.
 *
 * @param seed  any whole number
 * @returns     a problem that `checkProblem` finds sound. It always has the plan that leaves every job out
 */
export function smallProblem(seed: number, options: SmallProblemOptions = {}): Problem {
  const { rules = 'all', size = 'small', onFives = false } = options;
  const dice = diceFrom(Math.imul(seed + 1, 0x9e3779b1));
  const tiny = size === 'tiny';
  /** chance that something of a rule comes up: often where it is asked for, seldom where others are */
  const often = (chance: number, ...named: Rule[]) => {
    if (rules === 'all') return dice.chance(chance);
    return dice.chance(named.some((rule) => rules.includes(rule)) ? 0.8 : chance / 4);
  };
  const asked = (...named: Rule[]) => rules !== 'all' && named.some((rule) => rules.includes(rule));

  const begun = often(0.2, 'already begun', 'not before now');
  const dayCount = tiny ? 1 : asked('wait warm', 'wait dry', 'day ends in') ? 2 : dice.whole(1, 2);
  const horizon = 1440 * (dayCount + 1);

  // The boat's things.
  const setUpRules: Rule[] = [
    'step set-up',
    'wait set-up',
    'still',
    'set-up chain',
    'change set-up',
    'day ends in',
    'wait dry',
  ];
  const aspects: SetUpAspect[] = [];
  const change = (from: string, to: string, hands: number, needs: Conditions, setUps: SetUpNeed[] = []) => ({
    from,
    to,
    minutes: dice.fives(5, 15),
    hands,
    needs,
    setUps,
  });
  const coverFirst = often(0.4, 'change set-up');
  if (often(0.55, ...setUpRules)) {
    const hands = often(0.2, 'hands') ? 2 : 1;
    const needs: Conditions = often(0.3, 'wind') ? { wind_max_kn: 12 } : {};
    const coverOff: SetUpNeed[] = coverFirst ? [{ aspect: 'cover', states: ['off'] }] : [];
    aspects.push({
      id: 'mast',
      name: 'mast',
      states: [
        { id: 'up', name: 'up', shelters: false },
        { id: 'down', name: 'down', shelters: false },
      ],
      initial: dice.one(['up', 'down']),
      changes: [change('up', 'down', hands, needs, coverOff), change('down', 'up', hands, needs, coverOff)],
    });
  }
  if (coverFirst ? aspects.length > 0 : often(0.35, 'wait dry', 'change set-up')) {
    aspects.push({
      id: 'cover',
      name: 'cover',
      states: [
        { id: 'on', name: 'on', shelters: true },
        { id: 'off', name: 'off', shelters: false },
      ],
      initial: dice.one(['on', 'off']),
      changes: [change('on', 'off', 1, {}), change('off', 'on', 1, {})],
    });
  }
  if (!tiny && often(0.2, 'set-up chain')) {
    aspects.push({
      id: 'board',
      name: 'board',
      states: [
        { id: 'housed', name: 'housed', shelters: false },
        { id: 'lowered', name: 'lowered', shelters: false },
        { id: 'removed', name: 'removed', shelters: false },
      ],
      initial: dice.one(['housed', 'lowered', 'removed']),
      // it is removed and put back lowered, so housed to removed takes two changes
      changes: [
        change('housed', 'lowered', 1, {}),
        change('lowered', 'housed', 1, {}),
        change('lowered', 'removed', 1, {}),
        change('removed', 'lowered', 1, {}),
      ],
    });
  }
  const zones: WorkZone[] = [
    { id: 'deck', name: 'deck', room: often(0.3, 'room in the zone') ? 1 : 2, inside: false, near: ['cabin'] },
    { id: 'cabin', name: 'cabin', room: often(0.4, 'room in the zone') ? 1 : 2, inside: true, near: [] },
    { id: 'trailer', name: 'trailer', room: 2, inside: false, near: [] },
  ];
  const mixes: Mix[] = often(0.3, 'batch', 'pot life')
    ? [{ id: 'epoxy', name: 'epoxy', mixing_min: dice.fives(5, 10), potLife_min: dice.fives(15, 35) }]
    : [];

  // The days.
  const days: ProblemDay[] = [];
  for (let i = 0; i < dayCount; i++) {
    const from = 1440 * i + dice.fives(8 * 60, 11 * 60);
    const setOut_min = often(0.3, 'set-out and clear-up') ? dice.fives(5, 20) : 0;
    const clearUp_min = often(0.3, 'set-out and clear-up') ? dice.fives(5, 20) : 0;
    const span = setOut_min + clearUp_min + (tiny ? dice.fives(40, 80) : dice.fives(40, 150));
    const breakAt = from + setOut_min + dice.fives(15, Math.max(15, span - setOut_min - clearUp_min - 20));
    const pause: MinuteSpan[] = often(0.3, 'break') ? [{ from: breakAt, to: breakAt + dice.one([5, 10, 20]) }] : [];
    const features = (['water', 'mains', 'level'] as const).filter(() => !often(0.3, 'place'));
    const endsIn = aspects
      .filter(() => often(0.2, 'day ends in'))
      .map((aspect) => ({ aspect: aspect.id, state: dice.one(aspect.states).id }));
    days.push({
      id: `day-${i + 1}`,
      label: `job day ${i + 1}`,
      from,
      to: from + span,
      setOut_min,
      clearUp_min,
      breaks: pause,
      features,
      endsIn,
    });
  }
  const first = days[0]!;
  const now = begun ? first.from + first.setOut_min + dice.fives(0, 25) : 0;

  // Hands, tools, stores.
  const handCount = asked('hand present', 'not alone', 'keeper', 'hands')
    ? 2
    : dice.one(tiny ? [1, 1, 2] : [1, 1, 2, 2, 3]);
  const hands: Hand[] = [];
  for (let h = 0; h < handCount; h++) {
    const present: MinuteSpan[] = [];
    for (const day of days) {
      const whole = !often(h === 0 ? 0.15 : 0.6, 'hand present', 'not alone', 'keeper');
      if (whole) present.push({ from: day.from, to: day.to });
      else if (h === 0 || dice.chance(0.85)) {
        const from = day.from + dice.fives(0, Math.floor((day.to - day.from) / 10) * 5);
        present.push({ from, to: Math.max(from + 5, day.to - dice.fives(0, 20)) });
      }
    }
    hands.push({ id: h === 0 ? 'keeper' : `hand-${h}`, name: h === 0 ? 'the keeper' : `hand ${h}`, present });
  }
  const tools: Tool[] = often(0.4, 'tools')
    ? [
        {
          id: 'drill',
          name: 'drill',
          capacity: often(0.3, 'tools')
            ? [{ from: first.from + dice.fives(0, 40), to: horizon, count: 1 }]
            : [{ from: 0, to: horizon, count: dice.whole(1, 2) }],
        },
      ]
    : [];
  const stores: StoreLine[] = often(0.35, 'stores')
    ? [
        { id: 'screws', name: 'screws', from: first.from + dice.fives(0, 60) },
        { id: 'runners', name: 'runners', from: often(0.3, 'stores') ? null : days.at(-1)!.from + dice.fives(0, 40) },
      ]
    : [];

  // The weather and the light.
  const hours: PlanHour[] = [];
  const wet = often(0.6, 'dry', 'wait dry') ? 0.35 : 0.1;
  for (let h = 0; h < horizon / 60; h++) {
    const night = h % 24 < 7 || h % 24 > 19;
    const air_C = night ? dice.whole(1, 11) : dice.whole(7, 24);
    hours.push({
      rain: dice.chance(wet),
      wind_kn: dice.whole(3, 20),
      air_C,
      surface_C: dice.chance(0.5) ? null : air_C + dice.whole(-4, 5),
      humidity_pct: dice.whole(50, 97),
      basis: 'typed',
      sheltered: dice.chance(0.05),
    });
  }
  const daylight = Array.from({ length: horizon / 1440 }, (_, i) => {
    const day = days[i];
    if (day === undefined || !often(0.25, 'daylight')) return { from: 1440 * i + 300, to: 1440 * i + 1260 };
    return dice.chance(0.5)
      ? { from: day.from + dice.fives(5, 30), to: 1440 * i + 1260 }
      : { from: 1440 * i + 300, to: day.to - dice.fives(5, 30) };
  });

  // Jobs and steps.
  const jobs: ProblemJob[] = [];
  const steps: ProblemStep[] = [];
  const precedence: Precedence[] = [];
  const jobCount = tiny ? dice.whole(1, 3) : dice.whole(2, 5);
  const most = tiny ? 4 : 9;
  const step_least = tiny ? 2 : 3;
  const needsSetUp = (rule: Rule, chance: number): SetUpNeed[] =>
    aspects
      .filter(() => often(chance, rule, 'set-up chain'))
      .map((aspect) => ({ aspect: aspect.id, states: [dice.one(aspect.states).id] }));

  const aWait = (step: string): Wait => {
    const cure = onFives ? 0 : dice.whole(0, 9);
    const law: CureLaw =
      cure <= 3
        ? set(dice.fives(5, asked('wait over', 'wait warm', 'wait dry') ? 300 : 60))
        : cure <= 5
          ? {
              kind: 'reacts',
              atReference_min: dice.whole(20, asked('wait time', 'wait over') ? 600 : 200),
              reference_C: 20,
              doublesPer_C: 10,
              minimum_C: 6,
              from: 'our assumption',
            }
          : cure <= 6
            ? {
                kind: 'moisture',
                depth_mm: 1,
                firstDay_mm: dice.whole(2, 5),
                reference_C: 23,
                reference_pct: 50,
                minimum_C: 5,
                from: 'our assumption',
              }
            : cure <= 8
              ? {
                  kind: 'dries',
                  atReference_min: dice.whole(20, 240),
                  reference_C: 20,
                  doublesPer_C: 12,
                  stopsAt_pct: 92,
                  minimum_C: 5,
                  from: 'our assumption',
                }
              : { kind: 'never cures', from: 'our assumption' };
    const stays = often(0.25, 'wait dry');
    const warm = often(0.2, 'wait warm');
    return {
      id: `${step}-wait`,
      title: 'wait',
      law,
      needs: { ...(stays ? { dry: true as const } : {}), ...(warm ? { air_min_C: dice.whole(3, 9) } : {}) },
      setUps: often(0.15, 'wait set-up') ? needsSetUp('wait set-up', 0.5) : [],
      still: aspects.filter(() => often(0.15, 'still')).map((aspect) => aspect.id),
      wet: often(0.4, 'dust and wet'),
    };
  };

  for (let j = 0; j < jobCount || steps.length < step_least; j++) {
    const job = `job-${j + 1}`;
    jobs.push({
      id: job,
      title: `job ${j + 1}`,
      weight: dice.one([3, 4, 7, 10, 13, 30, 31]),
      deadline: often(0.25, 'deadline') ? dice.one(days).from + dice.fives(20, 120) : null,
      optional: dice.chance(0.8),
    });
    const room = most - steps.length;
    const count = Math.max(1, Math.min(room, dice.whole(1, tiny ? 2 : 3)));
    for (let k = 0; k < count; k++) {
      const id = `${job}-step-${k + 1}`;
      const needs: Conditions = {
        ...(often(0.3, 'dry') ? { dry: true as const } : {}),
        ...(often(0.15, 'wind') ? { wind_max_kn: dice.whole(8, 15) } : {}),
        ...(often(0.1, 'air') ? { air_min_C: dice.whole(8, 15) } : {}),
        ...(often(0.05, 'air') ? { air_max_C: dice.whole(16, 22) } : {}),
        ...(often(0.1, 'surface') ? { surface_min_C: dice.whole(8, 14) } : {}),
        ...(often(0.1, 'humidity') ? { humidity_max_pct: dice.whole(65, 90) } : {}),
        ...(often(0.1, 'dew margin') ? { dewMargin_min_C: 3 } : {}),
        ...(often(0.2, 'daylight') ? { daylight: true as const } : {}),
      };
      const mix = mixes.length > 0 && often(0.5, 'batch', 'pot life') ? 'epoxy' : null;
      const two = handCount > 1 && often(0.25, 'hands');
      const nobody = !two && dice.chance(0.06);
      const wet = often(0.2, 'dust and wet') && dice.chance(0.7);
      steps.push({
        id,
        job,
        title: `step ${k + 1} of job ${j + 1}`,
        minutes: Math.max(dice.fives(5, 40), mix === null ? 5 : mixes[0]!.mixing_min + 5),
        hands: nobody ? 0 : two ? 2 : 1,
        keeper: !nobody && often(0.2, 'keeper'),
        notAlone: often(0.1, 'not alone'),
        zone: dice.chance(0.85) ? dice.one(zones).id : null,
        needs,
        features: often(0.15, 'place') ? [dice.one(['water', 'mains', 'level'] as const)] : [],
        tools: tools.length > 0 && often(0.5, 'tools') ? [{ tool: 'drill', count: 1 }] : [],
        setUps: needsSetUp('step set-up', 0.45),
        stores: stores.length > 0 && often(0.4, 'stores') ? [dice.one(stores).id] : [],
        dusty: !wet && often(0.25, 'dust and wet'),
        wet,
        mix,
        waits: often(
          0.35,
          'wait time',
          'wait over',
          'wait dry',
          'wait warm',
          'wait set-up',
          'still',
          'least lag',
          'greatest lag',
          'abrading',
          'dust and wet',
        )
          ? [aWait(id)]
          : [],
        held: null,
        progress: { kind: 'open' },
      });
    }
  }

  // Order of steps: chains within jobs, a few ties between jobs.
  const tie = (before: ProblemStep, after: ProblemStep) => {
    const greatest = often(0.25, 'greatest lag', 'abrading');
    const least_min = often(0.2, 'least lag') ? dice.fives(5, 25) : 0;
    precedence.push({
      before: before.id,
      wait: before.waits.length > 0 && dice.chance(0.75) ? before.waits[0]!.id : null,
      after: after.id,
      least_min,
      greatest_min: greatest ? least_min + dice.fives(0, 30) : null,
      past:
        greatest && often(0.5, 'abrading') && !onFives
          ? { kind: 'abrade', minutes: dice.fives(5, 15) }
          : { kind: 'forbidden' },
    });
  };
  for (let i = 1; i < steps.length; i++) {
    const [before, after] = [steps[i - 1]!, steps[i]!];
    const within = before.job === after.job;
    if (within ? dice.chance(0.75) : often(0.12, 'comes after', 'least lag', 'greatest lag')) tie(before, after);
  }

  // A step held to a time, and steps begun before now.
  for (const [i, step] of steps.entries()) {
    if (!often(0.08, 'held')) continue;
    const day = dice.one(days);
    const from = day.from + dice.fives(0, 40);
    steps[i] = { ...step, held: { from, to: from + dice.fives(step.minutes, step.minutes + 40) } };
  }
  if (begun) {
    const held = new Set(precedence.map((p) => p.after));
    const ready = [...steps.keys()].filter((i) => !held.has(steps[i]!.id)).slice(0, tiny ? 1 : 2);
    for (const [n, i] of ready.entries()) {
      const step = steps[i]!;
      if (n > 0 && !dice.chance(0.5)) continue;
      const done = dice.chance(0.5);
      const finish = now - dice.fives(0, 15);
      const start = now - dice.fives(0, 10);
      steps[i] = {
        ...step,
        progress: done
          ? { kind: 'done', start: finish - step.minutes, finish }
          : {
              kind: 'under way',
              start,
              expectedFinish: now + dice.fives(0, 20),
              hands: hands.slice(0, step.hands).map((hand) => hand.id),
            },
      };
      if (!done) break;
    }
  }
  const previous = steps
    .filter((step) => step.progress.kind === 'open' && dice.chance(0.3))
    .map((step) => ({ step: step.id, start: first.from + dice.fives(0, 60) }));

  return {
    format: 1,
    startsAt: '2026-05-02T00:00:00Z',
    timeZone: 'UTC',
    horizon,
    now,
    days,
    hands,
    tools,
    zones,
    aspects,
    mixes,
    stores,
    hours,
    daylight,
    jobs,
    steps,
    precedence,
    previous,
  };
}
