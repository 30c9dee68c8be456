/** From the board's hoist in the book to what is reckoned of it, and back with a change made. */
import type { BoardHoistRecord } from '#boat-book';
import {
  assumedCaseFriction,
  type HoistChange,
  newCord,
  plateMass_kg,
  reevingOf,
  seaWater_kg_m3,
  type WholeHoist,
} from '#loads';

/** Where the boat lies while it is hoisted. */
export type HoistedIn = 'air' | 'sea';

/** Mass of a plate as it was weighed, or by its sizes. [kg] */
export function massOf_kg({ mass, length_m, breadth_m, density_kg_m3 }: BoardHoistRecord['plate']): number {
  return mass.kind === 'weighed'
    ? mass.mass_kg
    : plateMass_kg(length_m, breadth_m, mass.thickness_mm / 1000, density_kg_m3);
}

/** The hoist of the book as it is reckoned. */
export function wholeHoist(record: BoardHoistRecord, hoistedIn: HoistedIn): WholeHoist {
  const { plate, moves, wire, leads, tackles, cord, winch } = record;
  const material = { mass_kg: massOf_kg(plate), density_kg_m3: plate.density_kg_m3 };
  return {
    board:
      moves.kind === 'turns'
        ? {
            kind: 'pivoting',
            plate: {
              ...material,
              centreOfMass: { along_m: moves.massAlong_m, square_m: moves.massSquare_m },
              attachment: { along_m: moves.attachedAlong_m, square_m: moves.attachedSquare_m },
              lead: { aft_m: moves.leadAft_m, up_m: moves.leadUp_m },
            },
            downTo_deg: moves.down_deg,
            upTo_deg: moves.up_deg,
          }
        : {
            kind: 'sliding',
            plate: {
              ...material,
              length_m: plate.length_m,
              topAboveWater_m: moves.topAboveWater_m,
              offMiddle_m: moves.offMiddle_m,
              held_m: moves.held_m,
              friction: assumedCaseFriction,
            },
            travel_m: moves.travel_m,
          },
    wire,
    leads,
    tackles,
    cord: tackles.length > 0 ? cord : null,
    winch,
    water_kg_m3: hoistedIn === 'sea' ? seaWater_kg_m3 : null,
  };
}

/** The record of a hoist with a plate of another mass; its sizes and places stay. */
export function withMass(record: BoardHoistRecord, mass_kg: number): BoardHoistRecord {
  return { ...record, plate: { ...record.plate, mass: { kind: 'weighed', mass_kg } } };
}

/** The record of a hoist with one thing changed. */
export function withChange(record: BoardHoistRecord, change: HoistChange): BoardHoistRecord {
  const { wire, cord, leads, tackles, winch } = record;
  const last = tackles.at(-1);
  switch (change.kind) {
    case 'wire':
      return { ...record, wire: { ...wire, size_mm: change.to_mm } };
    case 'cord':
      return { ...record, cord: cord && { ...cord, size_mm: change.to_mm } };
    case 'better sheaves':
      return {
        ...record,
        leads: { ...leads, bearing: 'ball' },
        tackles: tackles.map((tackle) => ({ ...tackle, bearing: 'ball' })),
      };
    case 'bigger leads':
      return { ...record, leads: { ...leads, sheave_mm: change.to_mm } };
    case 'parts':
      return {
        ...record,
        tackles: [...tackles.slice(0, -1), { ...reevingOf(change.to), bearing: last?.bearing ?? leads.bearing }],
        cord: cord ?? newCord(record),
      };
    case 'second tackle':
      return last
        ? { ...record, tackles: [...tackles, { ...reevingOf(change.parts), bearing: last.bearing }] }
        : record;
    case 'longer crank':
      return { ...record, winch: winch && { ...winch, handle_mm: change.to_mm } };
  }
}
