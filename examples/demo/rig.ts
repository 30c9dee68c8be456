/** The invented boat's stays with what was read of them, and how her mast goes up. */
import { type Book, contentId, type StayReading, type StayRecord } from '#boat-book';
import type { DemoDates } from './writing.ts';

const stay = (
  made: string | null,
  part: Pick<StayRecord, 'name' | 'zone' | 'length_m'> & Partial<StayRecord>,
): StayRecord => ({
  laid: '1x19',
  size_mm: 4,
  screw: { thread: 'unf-5-16', ends: 'both' },
  aim_pct: 12,
  made,
  note: '',
  ...part,
});

export const demoStays = ({ day }: DemoDates): Book['stays'] => ({
  forestay: stay(day(-1190), {
    name: 'Forestay',
    zone: 'bow',
    length_m: 6.4,
    note: 'Pinned last when the mast goes up.',
  }),
  'cap-port': stay(day(-1190), { name: 'Cap shroud, port', zone: 'side-deck', length_m: 6.15 }),
  'cap-starboard': stay(day(-1190), { name: 'Cap shroud, starboard', zone: 'side-deck', length_m: 6.15 }),
  'lower-port': stay(null, { name: 'Lower shroud, port', zone: 'side-deck', length_m: 3.4, size_mm: 3, aim_pct: 8 }),
  'lower-starboard': stay(null, {
    name: 'Lower shroud, starboard',
    zone: 'side-deck',
    length_m: 3.4,
    size_mm: 3,
    aim_pct: 8,
  }),
});

type Said = readonly [
  day: number,
  stay: string,
  moment: StayReading['moment'],
  told: StayReading['told'],
  turns?: number,
];
const pulled = (aside_mm: number): StayReading['told'] => ({ kind: 'pull', pulledAt_m: 1.5, pull_N: 50, aside_mm });
const stretched = (stretch_mm: number): StayReading['told'] => ({ kind: 'stretch', stretch_mm, measured_m: 2 });

/** In the order of time. The starboard cap shroud's plate weeps and gives: its shroud is the one that loses. */
const said: readonly Said[] = [
  [-190, 'forestay', 'as set', stretched(2.3)],
  [-190, 'cap-port', 'as set', pulled(39)],
  [-190, 'cap-starboard', 'as set', pulled(39)],
  [-102, 'forestay', 'in between', pulled(38)],
  [-102, 'cap-port', 'in between', pulled(40)],
  [-102, 'cap-starboard', 'in between', pulled(47)],
  [-33, 'cap-port', 'in between', pulled(40)],
  [-33, 'cap-starboard', 'in between', pulled(57)],
];

export function demoStayReadings({ day }: DemoDates): Book['stayReadings'] {
  const readings = said.map(
    ([n, of, moment, told, turns = 0], i): StayReading => ({
      stay: of,
      on: day(n),
      moment,
      told,
      turns,
      note: '',
      order: i + 1,
    }),
  );
  return Object.fromEntries(readings.map((reading) => [contentId(reading), reading]));
}

export const demoMasts: Book['masts'] = {
  mast: {
    name: 'The mast',
    mass_kg: 21,
    massAt_m: 3.2,
    lineAt_m: 6.2,
    led: { by: 'pole', length_m: 1.4, heelAhead_m: 0, heelUp_m: 0, lean_deg: 0, spread_m: null },
    bowAhead_m: 1.85,
    bowUp_m: -0.2,
    from_deg: 4,
    to_deg: 85,
    shrouds: { at_m: 6.1, ahead_m: -0.22, up_m: -0.05, out_m: 0.95 },
    vang: { lift_N: 260, liftAt_m: 2.45, along_m: 0.9, below_m: 0.5, aft_m: 0 },
    note: '',
  },
};
