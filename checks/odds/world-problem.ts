/**
 * A keeper's problem with the truth behind it: jobs for two or three days, a keeper mostly alone, estimates as people
 * give them. True times are lognormal; the same keeper is out the same way all over; some days everything is slow.
 */
import type { CureLaw } from '#materials';
import type { Hand, Precedence, Problem, ProblemDay, ProblemJob, ProblemStep, SetUpAspect } from '#workplan';
import { type ChanceSource, chanceSource } from './chance-source.ts';
import { type WorldWeather, worldWeather } from './world-weather.ts';

export interface World {
  readonly problem: Problem;
  readonly weather: WorldWeather;
  /** how long a step takes when it is done on a day. whole minutes */
  trueMinutes(step: number, day: number): number;
}

const from = 'our assumption';
const cures: readonly CureLaw[] = [
  { kind: 'set time', minutes: 60, from },
  { kind: 'set time', minutes: 240, from },
  { kind: 'reacts', atReference_min: 300, reference_C: 20, doublesPer_C: 10, minimum_C: 5, from },
  { kind: 'dries', atReference_min: 360, reference_C: 20, doublesPer_C: 12, stopsAt_pct: 90, minimum_C: 5, from },
];

export function world(seed: number): World {
  const chance = chanceSource(seed * 31 + 7);
  const { whole, one, share, normal } = chance;
  const dayCount = whole(2, 3);
  const gap = one([1, 1, 2]);
  const dates = Array.from({ length: dayCount }, (_, day) => day * gap);
  const horizon = 1440 * (dates.at(-1)! + 4);
  const hasCover = share() < 0.7;
  const days = dates.map((date, day): ProblemDay => {
    const start = 1440 * date + whole(16, 20) * 30;
    const end = start + whole(9, 15) * 30;
    const pause = { from: Math.floor((start + end) / 2), to: Math.floor((start + end) / 2) + 30 };
    return {
      id: `day-${day + 1}`,
      label: `job day ${day + 1}`,
      from: start,
      to: end,
      setOut_min: 10,
      clearUp_min: 15,
      breaks: share() < 0.5 ? [pause] : [],
      features: [],
      endsIn: hasCover ? [{ aspect: 'cover', state: 'on' }] : [],
    };
  });
  const hands: Hand[] = [
    { id: 'keeper', name: 'the keeper', present: days.map((day) => ({ from: day.from, to: day.to })) },
  ];
  if (share() < 0.3)
    hands.push({ id: 'second', name: 'a second hand', present: [{ from: days[0]!.from + 60, to: days[0]!.to }] });
  const aspects = setUps(hasCover, share() < 0.5);
  const work = jobsAndSteps(chance, days, aspects, hands.length);
  const weather = worldWeather(seed * 131 + 5, horizon / 60);

  const keeperOff = 0.08 * normal();
  const spreads = work.steps.map(() => 0.18 + 0.2 * share());
  const dayOff = days.map(() => 0.12 * normal() + (share() < 0.12 ? 0.25 : 0));
  const medians = work.steps.map((step) => step.minutes * Math.exp(keeperOff + 0.03));
  const own = work.steps.map(() => normal());
  const steps = work.steps.map((step, at): ProblemStep => {
    const spread = Math.hypot(spreads[at]!, 0.16);
    return {
      ...step,
      minutes_low: Math.max(5, Math.min(step.minutes, 5 * Math.round((step.minutes * Math.exp(-1.645 * spread)) / 5))),
      minutes_high: Math.max(step.minutes, 5 * Math.round((step.minutes * Math.exp(1.645 * spread)) / 5)),
    };
  });
  const now = days[0]!.from - one([30, 780]);
  const problem: Problem = {
    format: 1,
    startsAt: '2026-05-08T00:00:00Z',
    timeZone: 'UTC',
    horizon,
    now: Math.max(0, now),
    days,
    hands,
    tools: [],
    zones: [
      { id: 'deck', name: 'deck', room: 2, inside: false, near: ['mast'] },
      { id: 'mast', name: 'mast', room: 2, inside: false, near: [] },
      { id: 'cabin', name: 'cabin', room: 1, inside: true, near: [] },
    ],
    aspects,
    mixes: [],
    stores: [],
    hours: weather.said(Math.max(0, now)),
    daylight: Array.from({ length: horizon / 1440 }, (_, day) => ({ from: 1440 * day + 300, to: 1440 * day + 1260 })),
    jobs: work.jobs,
    steps,
    precedence: work.precedence,
    previous: [],
  };
  return {
    problem,
    weather,
    trueMinutes: (step, day) =>
      Math.max(1, Math.round(medians[step]! * Math.exp(spreads[step]! * own[step]! + dayOff[day]!))),
  };
}

function setUps(cover: boolean, mast: boolean): SetUpAspect[] {
  const change = (a: string, b: string, minutes: number, wind: number) => ({
    from: a,
    to: b,
    minutes,
    hands: 1,
    needs: { wind_max_kn: wind },
    setUps: [],
  });
  const state = (id: string, shelters: boolean) => ({ id, name: id, shelters });
  const aspects: SetUpAspect[] = [];
  if (cover)
    aspects.push({
      id: 'cover',
      name: 'cover',
      states: [state('on', true), state('off', false)],
      initial: 'on',
      changes: [change('on', 'off', 10, 25), change('off', 'on', 10, 25)],
    });
  if (mast)
    aspects.push({
      id: 'mast',
      name: 'mast',
      states: [state('up', false), state('down', false)],
      initial: 'up',
      changes: [change('up', 'down', 25, 16), change('down', 'up', 30, 16)],
    });
  return aspects;
}

function jobsAndSteps(
  chance: ChanceSource,
  days: readonly ProblemDay[],
  aspects: readonly SetUpAspect[],
  hands: number,
) {
  const { whole, one, share } = chance;
  const jobs: ProblemJob[] = [];
  const steps: ProblemStep[] = [];
  const precedence: Precedence[] = [];
  const last = days.at(-1)!;
  const outing = last.to + one([0, 600, 1500]);
  const time = days.reduce((sum, day) => sum + day.to - day.from - 55, 0);
  const load = (0.6 + 0.6 * share()) * time;
  const [hasCover, hasMast] = [aspects.some(({ id }) => id === 'cover'), aspects.some(({ id }) => id === 'mast')];
  for (let spent = 0; spent < load && jobs.length < 14; ) {
    const job = `job-${jobs.length + 1}`;
    jobs.push({
      id: job,
      title: job,
      weight: one([3, 10, 10, 30, 30, 100]),
      deadline: share() < 0.3 ? outing : share() < 0.15 ? one(days).to : null,
      optional: true,
    });
    const outside = share() < 0.7;
    const mast = hasMast && share() < 0.35 ? one(['up', 'down']) : null;
    const count = whole(1, 3);
    let before: ProblemStep | null = null;
    for (let k = 0; k < count; k++) {
      const coat = outside && share() < 0.3;
      const setUpsOf = [
        ...(hasCover && outside ? [{ aspect: 'cover', states: ['off'] }] : []),
        ...(mast !== null ? [{ aspect: 'mast', states: [mast] }] : []),
      ];
      const id = `${job}-step-${k + 1}`;
      const wait = coat || share() < 0.15;
      const step: ProblemStep = {
        id,
        job,
        title: id,
        minutes: 5 * whole(3, 20),
        hands: hands > 1 && share() < 0.08 ? 2 : 1,
        keeper: share() < 0.3,
        notAlone: false,
        zone: outside ? one(['deck', 'mast']) : 'cabin',
        needs: {
          ...(outside && (coat || share() < 0.4) ? { dry: true as const } : {}),
          ...(coat ? { air_min_C: whole(5, 12) } : {}),
          ...(outside && share() < 0.1 ? { wind_max_kn: 14 } : {}),
        },
        features: [],
        tools: [],
        setUps: setUpsOf,
        stores: [],
        dusty: false,
        wet: false,
        mix: null,
        waits: wait
          ? [
              {
                id: `${id}-wait`,
                title: 'wait',
                law: one(cures),
                needs: outside && share() < 0.5 ? { dry: true as const } : {},
                setUps: [],
                still: [],
                wet: false,
              },
            ]
          : [],
        held: null,
        progress: { kind: 'open' },
      };
      steps.push(step);
      spent += step.minutes;
      if (before !== null)
        precedence.push({
          before: before.id,
          wait: before.waits[0]?.id ?? null,
          after: id,
          least_min: 0,
          greatest_min: null,
          past: { kind: 'forbidden' },
        });
      before = step;
    }
  }
  return { jobs, steps, precedence };
}
