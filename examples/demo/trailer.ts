/** The invented boat’s trailer, and what stands on it. Masses, places and limits are those such a trailer could have. */
import { type BallWeighing, type Book, type CarriedRecord, contentId } from '#boat-book';
import { instantAt } from '#units';
import { demoPlaces } from './boat.ts';
import type { DemoDates } from './writing.ts';

const trailer = 'road-trailer';
const ballAhead_m = 4.05;
const emptyBall_kg = 22;

export function demoTrailers({ day }: DemoDates): Book['trailers'] {
  return {
    [trailer]: {
      name: 'The trailer',
      zone: 'trailer',
      ballAhead_m,
      axles: 1,
      braked: true,
      emptyMass: { low_kg: 230, likely_kg: 235, high_kg: 240 },
      emptyPlace: { kind: 'ball weighed', ball_kg: emptyBall_kg, give_kg: 2 },
      stemAhead_m: 3.05,
      wheel_m: 0.55,
      boatMoves: { aft_m: 0.15, forward_m: 0.1 },
      carBall_kg: 75,
      barBall_kg: 50,
      couplingBall_kg: 100,
      gross_kg: 1000,
      axle_kg: 1000,
      train_kg: 2450,
      carKerb_kg: 1180,
      carLaden_kg: 1420,
      limitsRead: day(-150),
      advice: 'uk',
      tyres: {
        size: '155/70 R13',
        count: 2,
        loadIndex: 84,
        speed: 'N',
        pressure_kPa: 250,
        asked_kPa: 250,
        wheels: [
          { wheel: 'Left', spare: false, code: weekCode(day(-1300)), tread_mm: 5.1 },
          { wheel: 'Right', spare: false, code: weekCode(day(-1300)), tread_mm: 5.3 },
          { wheel: 'Spare', spare: true, code: weekCode(day(-2800)), tread_mm: 6.8 },
        ],
        readOn: day(-13),
      },
      towed_km_h: 90,
      friction: null,
      post_N: null,
      boardRests: true,
      lashings: [
        {
          id: 'aft',
          name: 'Transom straps, two',
          kind: 'strap',
          holds: 'rearward',
          capacity_N: 7500,
          above_deg: 35,
          aside_deg: 20,
          hull_N: 4000,
        },
        {
          id: 'beam',
          name: 'Strap over the foredeck',
          kind: 'strap',
          holds: 'sideways',
          capacity_N: 7500,
          above_deg: 60,
          aside_deg: 0,
          hull_N: null,
        },
        {
          id: 'winch',
          name: 'Winch strap at the bow eye',
          kind: 'winch line',
          holds: 'forward',
          capacity_N: null,
          above_deg: 10,
          aside_deg: 0,
          hull_N: null,
        },
      ],
      note: 'Limits read off the plates of trailer, bar and coupling, and out of the car’s papers.',
    },
  };
}

const thing = (
  name: string,
  [low_kg, likely_kg, high_kg]: readonly [number, number, number],
  ahead_m: number,
  give_m: number,
  rest: Partial<CarriedRecord> = {},
): CarriedRecord => ({
  trailer,
  name,
  rides: 'boat',
  mass: { low_kg, likely_kg, high_kg },
  massFrom: 'guessed',
  ahead_m,
  give_m,
  up_m: null,
  moves: null,
  aboard: true,
  hoist: null,
  battery: null,
  note: '',
  ...rest,
});

export const demoCarried: Book['carried'] = {
  hull: thing('Hull, deck and fittings', [360, 385, 415], 0.17, 0.08, {
    up_m: 1,
    note: 'From a crane’s scale, less what was in her.',
  }),
  board: thing('The board, up', [61, 62, 63], 0.36, 0.03, { massFrom: 'weighed', up_m: 0.85, hoist: 'board' }),
  mast: thing('Mast, boom and wires', [25, 27, 30], -0.28, 0.1, { up_m: 2.1 }),
  anchor: thing('Anchor and rode', [13, 14, 15], 2.75, 0.1, { massFrom: 'weighed', up_m: 1.2 }),
  battery: thing('The battery', [5.8, 6, 6.2], -0.55, 0.05, {
    massFrom: 'its maker',
    up_m: 0.8,
    moves: { aftmost_m: -1.9, foremost_m: 1.2 },
    battery: 'house',
  }),
  water: thing('The water cans', [10, 20, 20], 1.1, 0.1, {
    up_m: 0.75,
    moves: { aftmost_m: -0.4, foremost_m: 1.6 },
  }),
  gear: thing('Sails and gear in the cabin', [25, 35, 45], 0.6, 0.3, { up_m: 1.1 }),
  outboard: thing('The outboard', [26, 27, 28], -1.55, 0.1, {
    massFrom: 'its maker',
    up_m: 1.2,
    note: 'Laid on the cockpit sole for the road.',
    moves: { aftmost_m: -1.9, foremost_m: -0.9 },
  }),
  fuel: thing('The fuel can', [5, 9, 11], -1.8, 0.1, { up_m: 1 }),
};

/** The ball on a bathroom scale, in the spring, laden as the table has it. */
export function demoBallWeighings({ day }: DemoDates): Book['ballWeighings'] {
  const stood: BallWeighing['stood'] = [
    {
      carried: null,
      name: 'The trailer',
      mass_kg: 235,
      ahead_m: (emptyBall_kg * ballAhead_m) / 235,
      give_kg: 2,
      ball_kg: emptyBall_kg,
    },
    ...Object.entries(demoCarried).map(([carried, { name, mass, ahead_m, give_m }]) => ({
      carried,
      name,
      mass_kg: mass.likely_kg,
      ahead_m,
      ball_kg: (mass.likely_kg * ahead_m) / ballAhead_m,
      give_kg:
        Math.hypot(
          Math.max(mass.high_kg - mass.likely_kg, mass.likely_kg - mass.low_kg) * ahead_m,
          mass.likely_kg * give_m,
        ) / ballAhead_m,
    })),
  ];
  const weighing: BallWeighing = {
    trailer,
    at: new Date(instantAt(day(-61), '09:20', demoPlaces.drive!.timeZone)).toISOString(),
    scale_kg: 38.4,
    arm_mm: 800,
    beam_mm: 1000,
    told_kg: stood.reduce((sum, { ball_kg }) => sum + ball_kg, 0),
    stood,
    note: 'Plank on a block, the coupling at the height it tows at.',
    order: 1,
  };
  return { [contentId(weighing)]: weighing };
}

/** `3519`: week and year of a day, as a tyre’s code has them; week 1 holds the 4th of January. */
function weekCode(day: string): string {
  const middle = Date.parse(`${day}T00:00:00Z`);
  const thursday = new Date(middle + (3 - ((new Date(middle).getUTCDay() + 6) % 7)) * 86_400_000);
  const year = thursday.getUTCFullYear();
  const week = 1 + Math.floor((thursday.getTime() - Date.UTC(year, 0, 1)) / (7 * 86_400_000));
  return `${String(week).padStart(2, '0')}${String(year % 100).padStart(2, '0')}`;
}
