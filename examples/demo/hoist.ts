/** The invented boat's board: an iron plate on a wire over two sheaves, wound by a small winch. */
import { type Book, contentId, type HoistForceRecord } from '#boat-book';
import { instantAt } from '#units';
import { demoPlaces } from './boat.ts';
import type { DemoDates } from './writing.ts';

const hoist = 'board';

export const demoBoardHoists: Book['boardHoists'] = {
  [hoist]: {
    name: 'The board’s hoist',
    zone: 'board-case',
    plate: { length_m: 1.2, breadth_m: 0.36, density_kg_m3: 7200, mass: { kind: 'weighed', mass_kg: 62 } },
    moves: {
      kind: 'turns',
      massAlong_m: 0.62,
      massSquare_m: 0.02,
      attachedAlong_m: 1.02,
      attachedSquare_m: 0.12,
      leadAft_m: 0.78,
      leadUp_m: 0.62,
      down_deg: 62,
      up_deg: 0,
    },
    wire: { of: '7x19', size_mm: 4, ending: 'ferrule' },
    leads: { count: 2, bearing: 'plain', sheave_mm: 45 },
    tackles: [],
    cord: null,
    winch: { gear: 1, handle_mm: 170, drum_mm: 50, width_mm: 40, woundWhenDown_m: 0.6 },
    note: 'Winch on the after face of the case. Its pawl is worn.',
  },
};

type Said = readonly [day: number, clock: string, hand_N: number, foretold_N: number];

/** A handful of pulls at the crank, each at the hardest place, by a luggage scale on the handle. */
const said: readonly Said[] = [
  [-392, '10:20', 85, 83],
  [-211, '11:05', 88, 83],
  [-96, '16:40', 97, 83],
  [-27, '09:30', 111, 83],
];

export function demoHoistForces({ day }: DemoDates): Book['hoistForces'] {
  const zone = demoPlaces.drive!.timeZone;
  const forces = said.map(
    ([n, clock, hand_N, foretold_N], i): HoistForceRecord => ({
      hoist,
      at: new Date(instantAt(day(n), clock, zone)).toISOString(),
      handling: 'hoisting',
      hauled_pct: null,
      in: 'air',
      hand_N,
      foretold_N,
      with: 'luggage scale on the handle',
      note: '',
      order: i + 1,
    }),
  );
  return Object.fromEntries(forces.map((force) => [contentId(force), force]));
}
