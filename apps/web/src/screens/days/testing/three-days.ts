/** An invented plan of three job days for the tests of the drawing: everything it can show is in it once. */
import type { Book, Consequence, Job } from '#boat-book';
import type { Plan, PlanHour, Problem, ProblemStep } from '#workplan';

const job = (title: string, consequence: Consequence): Job => ({
  title,
  why: '',
  zone: null,
  fitting: null,
  consequence,
  opened: '2027-05-01',
  due: null,
  outing: null,
  state: 'open',
  closed: null,
  note: '',
  said: '',
  heldTo: null,
  heldAt: null,
  afterJobs: [],
});

export const jobs: Book['jobs'] = {
  lamp: job('Masthead lamp dim', 'stops-sailing'),
  sheave: job('Halyard sheave seized', 'stops-sailing'),
  seal: job('Hatch leaks on the cabin sole', 'worsens'),
  plate: job('Starboard shroud plate weeps', 'worsens'),
  coaming: job('Coamings: varnish', 'worsens'),
  rode: job('Anchor rode shackle one size under', 'danger'),
  pump: job('Bilge pump wire corroded', 'worsens'),
  lash: job('Lashings and lamps for the road', 'danger'),
  sounder: job('Sounder circuit', 'comfort'),
};

/** Minute 0 is Friday 11 June 2027, 22:00 UTC: midnight in Berlin. */
const clock = (day: number, hour: number, minute = 0) => day * 1440 + hour * 60 + minute;

const step = (
  id: string,
  ofJob: string,
  title: string,
  minutes: number,
  more: Partial<ProblemStep> = {},
): ProblemStep => ({
  id,
  job: ofJob,
  title,
  minutes,
  hands: 1,
  keeper: true,
  notAlone: false,
  zone: null,
  needs: {},
  features: [],
  tools: [],
  setUps: [],
  stores: [],
  dusty: false,
  wet: false,
  mix: null,
  waits: [],
  held: null,
  progress: { kind: 'open' },
  ...more,
});

const hours: PlanHour[] = Array.from({ length: 72 }, (_, i) => {
  const ofDay = i % 24;
  const day = Math.floor(i / 24);
  const rain = (day === 0 && ofDay >= 16 && ofDay < 18) || (day === 1 && ofDay >= 11 && ofDay < 13);
  return {
    rain,
    wind_kn: day === 0 ? 8 : 12,
    air_C: Math.round(14 + 4 * Math.sin(((ofDay - 9) / 12) * Math.PI)),
    surface_C: null,
    humidity_pct: 60 + (ofDay % 5) * 3,
    basis: ofDay >= 7 && ofDay < 19 && day < 2 ? 'typed' : 'climate',
    sheltered: false,
  };
});

export const problem: Problem = {
  format: 1,
  startsAt: '2027-06-11T22:00:00Z',
  timeZone: 'Europe/Berlin',
  horizon: 72 * 60,
  now: 0,
  days: [
    {
      id: 'sat',
      label: 'Saturday',
      from: clock(0, 8),
      to: clock(0, 18),
      setOut_min: 15,
      clearUp_min: 20,
      breaks: [{ from: clock(0, 12, 15), to: clock(0, 12, 45) }],
      features: ['water'],
      endsIn: [],
    },
    {
      id: 'sun',
      label: 'Sunday',
      from: clock(1, 8, 30),
      to: clock(1, 16),
      setOut_min: 10,
      clearUp_min: 20,
      breaks: [{ from: clock(1, 12), to: clock(1, 12, 30) }],
      features: [],
      endsIn: [
        { aspect: 'mast', state: 'down' },
        { aspect: 'cover', state: 'on' },
      ],
    },
    {
      id: 'mon',
      label: 'Monday',
      from: clock(2, 17),
      to: clock(2, 22, 30),
      setOut_min: 0,
      clearUp_min: 15,
      breaks: [],
      features: [],
      endsIn: [],
    },
  ],
  hands: [
    { id: 'keeper', name: 'keeper', present: [{ from: 0, to: 72 * 60 }] },
    { id: 'nn', name: 'a neighbour', present: [{ from: clock(0, 8), to: clock(0, 12) }] },
  ],
  tools: [],
  zones: [],
  aspects: [
    {
      id: 'mast',
      name: 'Mast',
      states: [
        { id: 'down', name: 'down', shelters: false },
        { id: 'up', name: 'up', shelters: false },
      ],
      initial: 'down',
      changes: [],
    },
    {
      id: 'cover',
      name: 'Cover',
      states: [
        { id: 'on', name: 'on', shelters: true },
        { id: 'off', name: 'off', shelters: false },
      ],
      initial: 'off',
      changes: [],
    },
  ],
  mixes: [{ id: 'epoxy', name: 'epoxy', mixing_min: 5, potLife_min: 28 }],
  stores: [],
  hours,
  daylight: [0, 1, 2].map((d) => ({ from: clock(d, 4, 45), to: clock(d, 21, 18) })),
  jobs: [],
  steps: [
    step('lamp1', 'lamp', 'Masthead lamp: new joint', 42),
    step('sheave1', 'sheave', 'Halyard sheave: new pin, clean and grease', 25),
    step('seal1', 'seal', 'Hatch seal off, clean the land', 70, { keeper: false }),
    step('shroud', 'lamp', 'Shrouds: even up, lock', 30),
    step('drill', 'plate', 'Plate off, drill the holes out oversize', 42, { dusty: true }),
    step('fill', 'plate', 'Fill the holes with thickened epoxy', 35, {
      needs: { dry: true, air_min_C: 10 },
      mix: 'epoxy',
      waits: [
        {
          id: 'cure',
          title: 'epoxy hard enough to drill',
          law: { kind: 'set time', minutes: 900, from: 'our assumption' },
          needs: { dry: true },
          setUps: [],
          still: [],
          wet: false,
        },
      ],
    }),
    step('wash', 'coaming', 'Wash and tack off', 36),
    step('coat', 'coaming', 'First coat', 66, {
      wet: true,
      waits: [
        {
          id: 'dry',
          title: 'varnish dust-dry',
          law: { kind: 'set time', minutes: 190, from: 'our assumption' },
          needs: { dry: true },
          setUps: [],
          still: [],
          wet: true,
        },
      ],
    }),
    step('rode1', 'rode', 'New shackle, mouse the pin', 12),
    step('read', 'pump', 'Read the battery', 5),
    step('pump1', 'pump', 'Run the new wire', 60),
    step('redrill', 'plate', 'Drill and bed the plate', 39),
    step('sounder1', 'sounder', 'Sounder circuit, inside', 85),
    step('lash1', 'lash', 'Lash down, lamps, ball load', 36, { progress: { kind: 'open' } }),
    step('late', 'sounder', 'Label the fuses', 40),
    step('late2', 'sounder', 'Coil and tie the spare cable', 25),
  ],
  precedence: [
    { before: 'drill', wait: null, after: 'fill', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
    { before: 'fill', wait: 'cure', after: 'redrill', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
  ],
  previous: [],
};

const at = (id: string, start: number, day: string, hands = ['keeper']) => ({
  step: id,
  start,
  finish: start + (problem.steps.find((s) => s.id === id)?.minutes ?? 0),
  hands,
  day,
  batchOf: null,
  abrade_min: 0,
});

export const plan: Plan = {
  steps: [
    at('lamp1', clock(0, 8, 15), 'sat'),
    at('sheave1', clock(0, 8, 57), 'sat'),
    at('seal1', clock(0, 8, 15), 'sat', ['nn']),
    at('shroud', clock(0, 10, 10), 'sat'),
    at('drill', clock(0, 10, 40), 'sat'),
    at('fill', clock(0, 11, 25), 'sat'),
    at('wash', clock(0, 12, 45), 'sat'),
    at('coat', clock(0, 13, 21), 'sat'),
    at('rode1', clock(0, 14, 27), 'sat'),
    at('read', clock(0, 14, 39), 'sat'),
    at('pump1', clock(0, 14, 44), 'sat'),
    at('redrill', clock(1, 8, 40), 'sun'),
    at('sounder1', clock(1, 10, 25), 'sun'),
    at('lash1', clock(1, 14), 'sun'),
    at('late', clock(2, 20, 30), 'mon'),
    at('late2', clock(2, 21, 40), 'mon'),
  ],
  waits: [
    { step: 'fill', wait: 'cure', start: clock(0, 12), finish: clock(1, 7, 10), tooCold: false },
    { step: 'coat', wait: 'dry', start: clock(0, 14, 27), finish: clock(0, 17, 37), tooCold: false },
  ],
  changes: [
    {
      aspect: 'mast',
      from: 'down',
      to: 'up',
      start: clock(0, 9, 28),
      finish: clock(0, 10, 10),
      hands: ['keeper', 'nn'],
      day: 'sat',
    },
    {
      aspect: 'mast',
      from: 'up',
      to: 'down',
      start: clock(1, 13, 20),
      finish: clock(1, 13, 55),
      hands: ['keeper'],
      day: 'sun',
    },
    {
      aspect: 'cover',
      from: 'off',
      to: 'on',
      start: clock(1, 14, 50),
      finish: clock(1, 15, 10),
      hands: ['keeper'],
      day: 'sun',
    },
  ],
  leftOut: [],
};
