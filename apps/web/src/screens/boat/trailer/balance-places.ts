/** Where everything on the trailer is drawn: metres along from the axle and up from the road, to pixels. */
import type { Boat, TrailerRecord } from '#boat-book';
import { boatDrawing, type Line } from '#picture';
import { type Standing, sizesOfBoat } from '#reckoning';
import { trailerDrawn } from './trailer-drawn.ts';

/** Two thirds of a page: the figures stand beside it. [CSS px] */
export const balanceOnPaper_px = 430;

export interface BalancePlaces {
  readonly width: number;
  readonly height: number;
  readonly across: (ahead_m: number) => number;
  readonly down: (up_m: number) => number;
  readonly aheadAt: (x: number) => number;
  /** she on her trailer, and how her own metres lie on the drawing */
  readonly lines: readonly Line[];
  readonly transform: string;
  /** of the boat’s own waterline above the road. [m] */
  readonly waterline_m: number;
  /** sizes that are not in the book */
  readonly guessed: readonly string[];
}

/** A mark of something with a mass, where it is drawn. */
export interface MassMark {
  readonly standing: Standing;
  /** from 1, as in the table */
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** of its number, beside it */
  readonly label: { readonly x: number; readonly y: number };
}

const margin = 12;
/** room above for a number, below for arrows and their figures. [px] */
const head = 20;
const foot = 46;

export function balancePlaces(
  boat: Boat,
  record: TrailerRecord,
  standings: readonly Standing[],
  width: number,
): BalancePlaces {
  const { sizes, guessed } = trailerDrawn(boat, record);
  const stemAhead_m = sizes.axleFromBow_m;
  const stance = { mastUp: false, board: 'up', coverOn: false } as const;
  const drawing = boatDrawing(sizesOfBoat(boat).sizes, 'trailer', stance, sizes);
  const { extent } = drawing;
  const waterline_m = -(drawing.ground_m ?? 0);
  const places = standings.map(({ ahead_m }) => ahead_m);
  const aftmost = Math.min(stemAhead_m - extent.right, ...places) - 0.1;
  const foremost = Math.max(stemAhead_m - extent.left, ...places) + 0.1;
  const scale = Math.min((width - 2 * margin) / (foremost - aftmost), 110);
  const side = (width - (foremost - aftmost) * scale) / 2;
  const highest = Math.max(extent.top + waterline_m, ...standings.map(({ up_m }) => up_m ?? 0)) + 0.15;
  const across = (ahead_m: number) => side + (ahead_m - aftmost) * scale;
  const down = (up_m: number) => head + (highest - up_m) * scale;
  return {
    width,
    height: head + highest * scale + foot,
    across,
    down,
    aheadAt: (x) => aftmost + (x - side) / scale,
    lines: drawing.lines,
    transform: `matrix(${-scale} 0 0 ${-scale} ${across(stemAhead_m)} ${down(waterline_m)})`,
    waterline_m,
    guessed,
  };
}

/** A mark for each thing, its area as its mass; a number is moved up where it would stand on another. */
export function massMarks(places: BalancePlaces, standings: readonly Standing[], boat: Boat): MassMark[] {
  const taken: { readonly x: number; readonly y: number }[] = [];
  return standings.map((standing, n) => {
    const radius = 3.5 + 0.55 * Math.sqrt(standing.mass.likely_kg);
    const x = places.across(standing.ahead_m);
    const usual_m = standing.rides === 'boat' ? places.waterline_m + 0.3 * boat.freeboard_m : 0.45;
    const y = places.down(standing.up_m ?? usual_m);
    // what stands on the trailer itself has its number below, where there is room
    const above = standing.rides === 'boat';
    let labelY = above ? y - radius - 4 : y + radius + 13;
    const stands = (at: number) => taken.some((other) => Math.abs(other.x - x) < 17 && Math.abs(other.y - at) < 14);
    while (stands(labelY) && labelY > 12 && labelY < places.height) labelY += above ? -14 : 14;
    taken.push({ x, y: labelY });
    return { standing, number: n + 1, x, y, radius, label: { x, y: labelY } };
  });
}
