/** Job days, weather, the outing, jury rigs and the log, all by days from today. */
import type { Book, JuryRig, LogEntry, RigTrustRecord, WeatherEntry } from '#boat-book';
import { instantAt } from '#units';
import { demoPlaces } from './boat.ts';
import type { DemoDates } from './writing.ts';

const zone = demoPlaces.drive!.timeZone;

export const demoOutings = ({ day }: DemoDates): Book['outings'] => ({
  'creek-night': {
    title: 'A night in the creek',
    date: day(-13),
    from: '17:00',
    nights: 1,
    place: 'Withy Creek, above the bend',
    wind_kn: null,
  },
  'outer-bar': {
    title: 'Two nights at the outer bar',
    date: day(21),
    from: '09:00',
    nights: 2,
    place: 'From Withy Creek to the outer bar and back',
    wind_kn: 14,
    windLeast_kn: 8,
    gust_kn: 20,
    crew: 1,
    way: 'water',
  },
});

export const demoJobDays = ({ day }: DemoDates): Book['jobDays'] => {
  const common = {
    place: 'drive',
    setOut_min: 15,
    clearUp_min: 20,
    breaks: [{ from: '12:30', minutes: 30 }],
    hands: [],
    endsIn: [{ setUp: 'cover', state: 'on' }],
  } as const;
  return {
    'day-1': { ...common, date: day(2), from: '08:00', to: '17:00' },
    'day-2': {
      ...common,
      date: day(3),
      from: '08:00',
      to: '17:00',
      hands: [{ id: 'joss', name: 'Joss', from: '09:30', to: '16:00' }],
    },
    'day-3': {
      ...common,
      date: day(9),
      from: '08:00',
      to: '17:00',
      // she is towed on to the creek after it
      endsIn: [
        { setUp: 'cover', state: 'on' },
        { setUp: 'mast', state: 'down' },
        { setUp: 'boat', state: 'trailer' },
        { setUp: 'board', state: 'housed' },
      ],
    },
  };
};

/** A breezy dry morning before a shower; a fine day with a humid evening; a mild morning before a windy afternoon. */
export const demoWeather = ({ today, day }: DemoDates): WeatherEntry[] => {
  const part = (
    n: number,
    fromHour: number,
    toHour: number,
    air_C: number,
    wind_kn: number,
    humidity_pct: number,
    rainOdds_pct: number,
    rain = false,
  ): WeatherEntry => ({
    place: 'drive',
    date: day(n),
    fromHour,
    toHour,
    rain,
    rainOdds_pct,
    wind_kn,
    air_C,
    surface_C: null,
    humidity_pct,
    basis: 'typed',
    entered: atClock(today, '07:00'),
  });
  return [
    part(2, 6, 9, 13, 9, 78, 5),
    part(2, 9, 12, 17, 14, 66, 15),
    part(2, 12, 14, 14, 16, 92, 80, true),
    part(2, 14, 21, 15, 13, 84, 20),
    part(3, 6, 10, 14, 4, 74, 5),
    part(3, 10, 16, 19, 7, 58, 5),
    part(3, 16, 21, 15, 3, 89, 10),
    part(9, 6, 14, 15, 8, 64, 15),
    part(9, 14, 20, 17, 19, 60, 20),
  ];
};

export const demoJuryRigs = ({ day }: DemoDates): Book['juryRigs'] => ({
  'rig-lashing': {
    title: 'Lashing beside the starboard shroud',
    job: 'shroud-plate',
    zone: 'side-deck',
    reason: 'Takes some of the load off the weeping plate until it is rebedded.',
    made: day(-40),
    trustedUntil: day(-6),
    wind_max_kn: 14,
    sails_max: 4,
    notOnRoad: true,
    state: 'standing',
  } satisfies JuryRig,
  'rig-strop': {
    title: 'Rope strop on the board',
    job: 'board-wire',
    zone: 'board-case',
    reason: 'Holds the board up if the frayed wire lets go. Not to be sailed with.',
    made: day(-11),
    trustedUntil: day(20),
    wind_max_kn: null,
    sails_max: 0,
    notOnRoad: false,
    state: 'standing',
  } satisfies JuryRig,
  'rig-tape': {
    title: 'Tape round the forehatch',
    job: 'forehatch-seal',
    zone: 'foredeck',
    reason: 'Keeps the rain out on the drive; lifts in a sea.',
    made: day(-10),
    trustedUntil: day(35),
    wind_max_kn: 10,
    sails_max: null,
    notOnRoad: true,
    state: 'standing',
  } satisfies JuryRig,
});

export function demoRigTrusts(dates: DemoDates): RigTrustRecord[] {
  const rigs = demoJuryRigs(dates);
  const said = (rig: string, n: number, reason: string, trust: Partial<RigTrustRecord> = {}): RigTrustRecord => {
    const { trustedUntil, wind_max_kn, sails_max, notOnRoad } = rigs[rig]!;
    const on = dates.day(n);
    return {
      rig,
      on,
      trustedUntil,
      wind_max_kn,
      sails_max,
      notOnRoad,
      reason,
      entered: atClock(on, '16:20'),
      ...trust,
    };
  };
  return [
    said('rig-lashing', -40, 'as is usual for a lashing', { trustedUntil: dates.day(-20) }),
    said('rig-lashing', -21, 'Looked over after a calm sail: no chafe, turns put on afresh.'),
    said('rig-strop', -11, 'as it was made'),
    said('rig-tape', -10, 'as is usual for tape'),
  ].map((trust, i) => ({ ...trust, order: i + 1 }));
}

export const demoLog = ({ day }: DemoDates): LogEntry[] => [
  {
    at: atClock(day(-1826), '15:30'),
    kind: 'bedded',
    job: null,
    step: null,
    zone: 'side-deck',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Starboard shroud plate bedded with brown polysulphide',
    fitting: 'plate-starboard',
    with: [{ name: 'brown polysulphide' }],
  },
  {
    at: atClock(day(-40), '16:20'),
    kind: 'jury rig made',
    job: 'shroud-plate',
    step: null,
    zone: 'side-deck',
    who: 'Ida Fenn',
    spent_min: 25,
    text: 'Lashed the lower shroud to the toe rail with three turns of 8 mm cord.',
  },
  {
    at: atClock(day(-25), '11:05'),
    kind: 'measured',
    job: 'board-wire',
    step: null,
    zone: 'board-case',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Eleven broken strands counted within 60 mm of the thimble.',
  },
  {
    at: atClock(day(-12), '18:40'),
    kind: 'note',
    job: 'battery-fuse',
    step: null,
    zone: 'cabin',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Followed the main lead: no fuse between battery and panel. Battery switched off since.',
  },
  {
    at: atClock(day(-420), '15:10'),
    kind: 'bedded',
    job: null,
    step: null,
    zone: 'transom',
    who: 'Ida Fenn',
    spent_min: 50,
    text: 'Drain ring bedded again after the old thread of putty had gone; three screws, wood still sound.',
    fitting: 'ring-drain',
    with: [{ name: 'neutral silicone', amount: 1, unit: 'tube' }],
  },
  {
    at: atClock(day(-421), '10:00'),
    kind: 'got',
    job: null,
    step: null,
    zone: 'transom',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Silicone and three stainless screws for the drain ring.',
    fitting: 'ring-drain',
    cost: { amount: 11.8, currency: 'EUR' },
  },
  {
    at: atClock(day(-390), '17:30'),
    kind: 'got',
    job: null,
    step: null,
    zone: 'mast',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'A pair of halyards, 8 mm, spliced by the chandler.',
    cost: { amount: 96.5, currency: 'EUR' },
  },
  {
    at: atClock(day(-300), '12:00'),
    kind: 'got',
    job: null,
    step: null,
    zone: null,
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Insurance for the year.',
    cost: { amount: 84, currency: 'EUR' },
  },
  {
    at: atClock(day(-60), '14:20'),
    kind: 'note',
    job: 'shroud-plate',
    step: null,
    zone: 'side-deck',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Pressed round the starboard shroud plate with a thumb: firm, but water stood on the deck ring after rain.',
    fitting: 'plate-starboard',
  },
  {
    at: atClock(day(-33), '16:05'),
    kind: 'got',
    job: 'board-wire',
    step: null,
    zone: 'board-case',
    who: 'Ida Fenn',
    spent_min: null,
    text: 'Three metres of 4 mm wire, 7×19, and two thimbles.',
    fitting: 'wire-board',
    with: [{ name: 'wire 4 mm, 7×19', amount: 3, unit: 'm' }],
    cost: { amount: 23.4, currency: 'EUR' },
  },
];

function atClock(day: string, clock: string): string {
  return new Date(instantAt(day, clock, zone)).toISOString();
}
