/** The invented boat's power: a battery of three summers, a small panel, what draws, and a season of readings. */
import { type Book, contentId, type ReadingRecord } from '#boat-book';
import { instantAt } from '#units';
import { demoPlaces } from './boat.ts';
import type { DemoDates } from './writing.ts';

const battery = 'house';

export const demoBatteries = ({ day }: DemoDates): Book['batteries'] => ({
  [battery]: {
    name: 'House battery',
    zone: 'cabin',
    chemistry: 'agm',
    nominal_Ah: 17,
    nominal_V: 12,
    made: day(-940),
    floor_pct: 50,
    meter: 'the yellow hand-held meter',
    note: 'Under the companionway step, strapped.',
    isolator: true,
  },
});

export const demoPanels: Book['panels'] = {
  'hatch-panel': {
    name: 'Panel on the hatch',
    battery,
    peak_W: 10,
    tilt_deg: 0,
    heading_deg: 0,
    regulator: 'simple',
    coefficient_pct_C: null,
    leads: { lengthThereAndBack_m: 5, area_mm2: 1.5 },
    kept_pct: 75,
    fuse_A: 3,
  },
};

export const demoChargers: Book['chargers'] = {
  bench: { name: 'Charger on the bench', battery, kind: 'mains', amps: 3, volts_max: 14.7 },
};

export const demoCircuits: Book['circuits'] = {
  'anchor-light': {
    name: 'Anchor light',
    battery,
    watts: 2.5,
    duty_pct: 100,
    uses: { kind: 'sun', from: 'sunset', to: 'sunrise' },
    fuse_A: 3,
    fuseAt_m: 0.2,
    conductor: { area_mm2: 1.5, insulation_C: 105, lengthThereAndBack_m: 19, bundled: 2, engineSpace: false },
    needs: 'critical',
    zone: 'mast',
  },
  'cabin-light': {
    name: 'Cabin light',
    battery,
    watts: 4,
    duty_pct: 100,
    uses: { kind: 'sun', from: 'sunset', to: '22:30' },
    fuse_A: 5,
    fuseAt_m: 0.2,
    conductor: { area_mm2: 1, insulation_C: 70, lengthThereAndBack_m: 4, bundled: 3, engineSpace: false },
    needs: 'other',
    zone: 'cabin',
  },
  sounder: {
    name: 'Echo sounder',
    battery,
    watts: 2,
    duty_pct: 100,
    uses: { kind: 'hours', hours_a_day: 4 },
    fuse_A: 2,
    // in the lead behind the sounder's bulkhead: the fault that its drawing shows
    fuseAt_m: 0.65,
    conductor: { area_mm2: 0.75, insulation_C: 70, lengthThereAndBack_m: 7, bundled: 3, engineSpace: false },
    needs: 'critical',
    zone: 'cockpit',
  },
  regulator: {
    name: 'The regulator itself',
    battery,
    watts: 0.06,
    duty_pct: 100,
    uses: { kind: 'always' },
    fuse_A: 3,
    fuseAt_m: 0.15,
    conductor: { area_mm2: 1.5, insulation_C: 70, lengthThereAndBack_m: 1.2, bundled: 2, engineSpace: false },
    needs: 'other',
    zone: 'cabin',
  },
  'bilge-pump': {
    name: 'Bilge pump',
    battery,
    watts: 36,
    duty_pct: 100,
    uses: { kind: 'hours', hours_a_day: 0.05 },
    fuse_A: 5,
    fuseAt_m: 0.2,
    conductor: { area_mm2: 1.5, insulation_C: 70, lengthThereAndBack_m: 8, bundled: 3, engineSpace: false },
    needs: 'critical',
    zone: 'cabin',
  },
};

type Said = readonly [day: number, clock: string, volts: number, air_C: number, how: Partial<ReadingRecord>];
const rested = { circumstance: 'rested', panelDark: true } as const;
const lit = (...on: string[]) => ({ circumstance: 'under load', panelDark: true, on }) as const;

/** Day from today, clock, volts, air. In the order of time. */
const said: readonly Said[] = [
  // the same lamp for four hours, a year ago
  [-371, '20:30', 12.86, 16, { circumstance: 'rested', panelDark: true }],
  [-371, '21:30', 12.7, 15, lit()],
  [-371, '22:30', 12.61, 15, lit()],
  [-371, '23:30', 12.53, 14, lit()],
  [-370, '00:30', 12.46, 13, lit()],
  [-370, '05:20', 12.56, 12, rested],
  [-41, '05:20', 12.79, 8, rested],
  [-34, '05:30', 12.77, 9, rested],
  [-27, '13:10', 13.6, 17, { circumstance: 'on charge', panelDark: false }],
  [-20, '05:10', 12.78, 10, rested],
  // the night at anchor in the creek
  [-13, '21:15', 12.66, 15, lit('anchor-light', 'cabin-light')],
  [-12, '05:05', 12.47, 9, lit('anchor-light')],
  [-10, '05:15', 12.66, 11, rested],
  // a lamp of 12 W for four hours
  [-6, '20:30', 12.82, 15, { circumstance: 'rested', panelDark: true }],
  [-6, '21:30', 12.66, 14, lit()],
  [-6, '22:30', 12.55, 14, lit()],
  [-6, '23:30', 12.46, 13, lit()],
  [-5, '00:30', 12.37, 12, lit()],
  [-5, '05:10', 12.48, 11, rested],
  [-2, '05:05', 12.67, 11, rested],
  [0, '05:00', 12.74, 12, rested],
];

function readings({ day }: DemoDates): ReadingRecord[] {
  const zone = demoPlaces.drive!.timeZone;
  return said.map(([n, clock, volts, air_C, how], i) => ({
    battery,
    at: new Date(instantAt(day(n), clock, zone)).toISOString(),
    volts,
    current_A: null,
    air_C,
    circumstance: 'not said',
    on: [],
    panelDark: null,
    by: 'hand',
    ...how,
    order: i + 1,
  }));
}

export const demoReadings = (dates: DemoDates): Book['readings'] =>
  Object.fromEntries(readings(dates).map((reading) => [contentId(reading), reading]));

export const demoLoadTests = (dates: DemoDates): Book['loadTests'] => ({
  'last-summer': {
    battery,
    readings: readings(dates).slice(0, 5).map(contentId),
    circuit: null,
    watts: 12,
    note: 'The old anchor lamp, 12 W.',
  },
  spring: {
    battery,
    readings: readings(dates).slice(13, 18).map(contentId),
    circuit: null,
    watts: 12,
    note: 'The old anchor lamp, 12 W, from half past eight.',
  },
});

type Foretold = readonly [morning: number, low: number, likely: number, high: number, charge_pct: number];

/** What was foretold on the evening in the creek and on evenings since. */
const foretold: readonly Foretold[] = [
  [-12, 12.36, 12.51, 12.63, 75],
  [-10, 12.53, 12.68, 12.8, 87],
  [-5, 12.4, 12.54, 12.66, 78],
  [-2, 12.55, 12.69, 12.81, 88],
];

export function demoNightsAhead({ day }: DemoDates): Book['nightsAhead'] {
  const zone = demoPlaces.drive!.timeZone;
  const nights = foretold.map(([morning, low, likely, high, charge_pct], i) => ({
    battery,
    made: new Date(instantAt(day(morning - 1), '21:20', zone)).toISOString(),
    morning: day(morning),
    at: new Date(instantAt(day(morning), '05:50', zone)).toISOString(),
    volts: { low, likely, high },
    charge_pct: { low: charge_pct - 12, likely: charge_pct, high: Math.min(100, charge_pct + 10) },
    order: i + 1,
  }));
  return Object.fromEntries(nights.map((night) => [contentId(night), night]));
}
