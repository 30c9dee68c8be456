/**
 * Invented keeper's problems of a given size, from a seed: a boat with a mast, a cover and a board, job days with
 * mixed weather, jobs of a few steps with cures, dust, tools, stores and dates. The same seed gives the same problem.
 */
import type {
  MinuteSpan,
  PlanHour,
  Precedence,
  Problem,
  ProblemDay,
  ProblemJob,
  ProblemStep,
  SetUpNeed,
  Wait,
} from '#workplan';

export interface KeeperSize {
  readonly jobs: number;
  readonly steps: number;
  readonly days: number;
}

export const keeperSizes: readonly KeeperSize[] = [
  { jobs: 14, steps: 45, days: 3 },
  { jobs: 30, steps: 120, days: 5 },
  { jobs: 60, steps: 250, days: 8 },
  { jobs: 150, steps: 600, days: 14 },
];

/** One problem of a size. */
export function keeperProblem({ jobs: jobCount, steps: stepCount, days: dayCount }: KeeperSize, seed: number): Problem {
  const chance = numbersFrom(seed);
  const whole = (from: number, to: number) => from + Math.floor(chance() * (to - from + 1));
  const fives = (from: number, to: number) => 5 * whole(from / 5, to / 5);
  const maybe = (share: number) => chance() < share;
  const one = <T>(of: readonly T[]) => of[whole(0, of.length - 1)]!;

  const spread = dayCount * 2 + 4;
  const horizon = 1440 * spread;
  const days: ProblemDay[] = Array.from({ length: dayCount }, (_, n) => {
    const date = 1 + 2 * n;
    const from = 1440 * date + fives(480, 570);
    const to = 1440 * date + fives(960, 1080);
    return {
      id: `day-${n + 1}`,
      label: `job day ${n + 1}`,
      from,
      to,
      setOut_min: 20,
      clearUp_min: 20,
      breaks: [{ from: 1440 * date + 750, to: 1440 * date + 785 }],
      features: maybe(0.8) ? ['water', 'mains', 'level'] : ['level'],
      endsIn: [
        { aspect: 'cover', state: 'on' },
        { aspect: 'mast', state: 'down' },
      ],
    };
  });
  const friend: MinuteSpan[] = days
    .filter(() => maybe(0.4))
    .map((day) => ({ from: day.from + 60, to: day.from + 300 }));

  const hours: PlanHour[] = [];
  let rain = false;
  let wind_kn = 8;
  for (let h = 0; h < horizon / 60; h++) {
    const clock = h % 24;
    rain = maybe(rain ? 0.75 : 0.07);
    wind_kn = Math.min(24, Math.max(2, wind_kn + whole(-3, 3)));
    const air_C = Math.round(13 + 6 * Math.sin(((clock - 9) / 24) * 2 * Math.PI) + whole(-2, 2));
    const humidity_pct = rain ? whole(85, 97) : whole(50, 80);
    hours.push({ rain, wind_kn, air_C, surface_C: null, humidity_pct, basis: 'forecast', sheltered: false });
  }

  const zones = ['foredeck', 'mast', 'cockpit', 'cabin', 'case', 'topsides', 'trailer', 'rudder'];
  const jobs: ProblemJob[] = [];
  const steps: ProblemStep[] = [];
  const precedence: Precedence[] = [];
  let left = stepCount;
  for (let j = 0; j < jobCount; j++) {
    const job = `job-${j + 1}`;
    const count = j === jobCount - 1 ? left : Math.min(left - (jobCount - 1 - j), Math.max(1, whole(2, 6)));
    left -= count;
    const weight = one([3, 3, 3, 10, 10, 10, 30, 30, 100]) * (1 + whole(0, 10) / 10);
    const isNeeded = maybe(0.2);
    jobs.push({ id: job, title: `job ${j + 1}`, weight, deadline: isNeeded ? horizon - 1440 : null, optional: true });
    const zone = one(zones);
    const setUps: SetUpNeed[] = [
      ...(maybe(0.3) ? [{ aspect: 'mast', states: [one(['up', 'down', 'down'])] }] : []),
      ...(zone !== 'cabin' && zone !== 'trailer' ? [{ aspect: 'cover', states: ['off'] }] : []),
      ...(zone === 'case' ? [{ aspect: 'board', states: [one(['lowered', 'removed'])] }] : []),
    ];
    const paints = maybe(0.25);
    for (let k = 0; k < count; k++) {
      const id = `${job}-step-${k + 1}`;
      const coats = paints && k > 0;
      const cures = coats || maybe(0.15);
      const wait: Wait = {
        id: `${id}-cure`,
        title: 'cure',
        law: {
          kind: 'reacts',
          atReference_min: fives(60, 600),
          reference_C: 20,
          doublesPer_C: 10,
          minimum_C: 4,
          from: 'our assumption',
        },
        needs: coats ? { dry: true } : {},
        setUps: [],
        still: maybe(0.1) ? ['mast'] : [],
        wet: coats,
      };
      steps.push({
        id,
        job,
        title: `step ${k + 1} of job ${j + 1}`,
        minutes: fives(10, 50),
        hands: maybe(0.04) ? 2 : 1,
        keeper: maybe(0.5),
        notAlone: maybe(0.03),
        zone,
        needs: coats ? { dry: true, air_min_C: 8 } : zone === 'cabin' ? {} : maybe(0.5) ? { dry: true } : {},
        features: maybe(0.1) ? ['mains'] : [],
        tools: maybe(0.2) ? [{ tool: 'drill', count: 1 }] : [],
        setUps,
        stores: maybe(0.04) ? ['parcel'] : [],
        dusty: paints && k === 0,
        wet: coats,
        mix: coats && maybe(0.3) ? 'epoxy' : null,
        waits: cures ? [wait] : [],
        held: null,
        progress: { kind: 'open' },
      });
      if (k === 0) continue;
      const before = steps.at(-2)!;
      precedence.push({
        before: before.id,
        wait: before.waits[0]?.id ?? null,
        after: id,
        least_min: 0,
        greatest_min: coats && maybe(0.3) ? 2880 : null,
        past: coats ? { kind: 'abrade', minutes: 15 } : { kind: 'forbidden' },
      });
    }
    if (j > 0 && maybe(0.08)) {
      const before = one(steps.filter((step) => step.job !== job));
      const after = steps.find((step) => step.job === job)!;
      precedence.push({
        before: before.id,
        wait: null,
        after: after.id,
        least_min: 0,
        greatest_min: null,
        past: { kind: 'forbidden' },
      });
    }
  }
  return {
    format: 1,
    startsAt: '2026-05-02T00:00:00Z',
    timeZone: 'UTC',
    horizon,
    now: 0,
    days,
    hands: [
      { id: 'keeper', name: 'keeper', present: days.map(({ from, to }) => ({ from, to })) },
      { id: 'friend', name: 'a friend', present: friend },
    ],
    tools: [{ id: 'drill', name: 'drill', capacity: [{ from: 0, to: horizon, count: 1 }] }],
    zones: zones.map((id) => ({ id, name: id, room: 2, inside: id === 'cabin', near: [] })),
    aspects: [
      {
        id: 'mast',
        name: 'mast',
        states: [
          { id: 'up', name: 'up', shelters: false },
          { id: 'down', name: 'down', shelters: false },
        ],
        initial: 'down',
        changes: [
          {
            from: 'down',
            to: 'up',
            minutes: 35,
            hands: 1,
            needs: { wind_max_kn: 12, daylight: true },
            setUps: [{ aspect: 'cover', states: ['off'] }],
          },
          {
            from: 'up',
            to: 'down',
            minutes: 25,
            hands: 1,
            needs: { wind_max_kn: 14, daylight: true },
            setUps: [{ aspect: 'cover', states: ['off'] }],
          },
        ],
      },
      {
        id: 'cover',
        name: 'cover',
        states: [
          { id: 'on', name: 'on', shelters: true },
          { id: 'off', name: 'off', shelters: false },
        ],
        initial: 'on',
        changes: [
          { from: 'on', to: 'off', minutes: 10, hands: 1, needs: {}, setUps: [] },
          { from: 'off', to: 'on', minutes: 15, hands: 1, needs: {}, setUps: [] },
        ],
      },
      {
        id: 'board',
        name: 'board',
        states: [
          { id: 'housed', name: 'housed', shelters: false },
          { id: 'lowered', name: 'lowered', shelters: false },
          { id: 'removed', name: 'removed', shelters: false },
        ],
        initial: 'housed',
        changes: [
          { from: 'housed', to: 'lowered', minutes: 10, hands: 1, needs: {}, setUps: [] },
          { from: 'lowered', to: 'housed', minutes: 15, hands: 1, needs: {}, setUps: [] },
          { from: 'lowered', to: 'removed', minutes: 45, hands: 1, needs: {}, setUps: [] },
          { from: 'removed', to: 'lowered', minutes: 60, hands: 1, needs: {}, setUps: [] },
        ],
      },
    ],
    mixes: [{ id: 'epoxy', name: 'epoxy', mixing_min: 10, potLife_min: 40 }],
    stores: [{ id: 'parcel', name: 'a parcel', from: days[Math.floor(dayCount / 2)]!.from }],
    hours,
    daylight: Array.from({ length: spread }, (_, date) => ({ from: 1440 * date + 330, to: 1440 * date + 1230 })),
    jobs,
    steps,
    precedence,
    previous: [],
  };
}

/** Numbers from 0, under 1: the same for the same seed (mulberry32, public domain). */
export function numbersFrom(seed: number): () => number {
  let a = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x2545f491) >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
