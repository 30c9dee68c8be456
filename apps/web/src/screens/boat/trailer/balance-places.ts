/** Where everything on the trailer is drawn: metres along from the axle and up from the road, to pixels. */
import type { Boat, TrailerRecord } from '#boat-book';
import type { Standing } from '#reckoning';
import { boatProfile } from '../boat-profile.ts';

/** What is drawn where it was not measured, as is usual on a trailer for a boat of her length. */
const assumedKeelUp_m = 0.5;
const assumedWheel_m = 0.56;
const ballUp_m = 0.42;

export interface BalancePlaces {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly across: (ahead_m: number) => number;
  readonly down: (up_m: number) => number;
  readonly aheadAt: (x: number) => number;
  readonly stemAhead_m: number;
  readonly keelUp_m: number;
  readonly wheel_m: number;
  readonly ballUp_m: number;
  readonly profile: ReturnType<typeof boatProfile>;
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

export function balancePlaces(
  boat: Boat,
  record: TrailerRecord,
  standings: readonly Standing[],
  width: number,
): BalancePlaces {
  const profile = boatProfile(boat, { mastUp: false, boardDown: false });
  const stemAhead_m = record.stemAhead_m ?? Math.min(record.ballAhead_m - 0.8, boat.length_m * 0.55);
  const keelUp_m = record.keelUp_m ?? assumedKeelUp_m;
  const places = standings.map(({ ahead_m }) => ahead_m);
  const aftmost = Math.min(stemAhead_m - profile.right, -0.6, ...places) - 0.1;
  const foremost = Math.max(record.ballAhead_m + 0.35, stemAhead_m - profile.left, ...places) + 0.1;
  const scale = Math.min((width - 2 * margin) / (foremost - aftmost), 110);
  const side = (width - (foremost - aftmost) * scale) / 2;
  const top_m = keelUp_m + boat.draft_m + profile.top + 0.15;
  const head = 20;
  return {
    width,
    height: head + top_m * scale + 46,
    scale,
    across: (ahead_m) => side + (ahead_m - aftmost) * scale,
    down: (up_m) => head + (top_m - up_m) * scale,
    aheadAt: (x) => aftmost + (x - side) / scale,
    stemAhead_m,
    keelUp_m,
    wheel_m: record.wheel_m ?? assumedWheel_m,
    ballUp_m,
    profile,
    guessed: [
      ...(record.stemAhead_m === null ? ['where she stands on it'] : []),
      ...(record.keelUp_m === null ? ['how high she stands'] : []),
      ...(record.wheel_m === null ? ['the wheels'] : []),
    ],
  };
}

/** A mark for each thing, its area as its mass; a number is moved up where it would stand on another. */
export function massMarks(places: BalancePlaces, standings: readonly Standing[], boat: Boat): MassMark[] {
  const taken: { readonly x: number; readonly y: number }[] = [];
  return standings.map((standing, n) => {
    const radius = 3.5 + 0.55 * Math.sqrt(standing.mass.likely_kg);
    const x = places.across(standing.ahead_m);
    const usual_m =
      standing.rides === 'boat' ? places.keelUp_m + boat.draft_m + boat.freeboard_m * 0.4 : places.keelUp_m - 0.1;
    const y = places.down(standing.up_m ?? usual_m);
    const label = { x, y: y - radius - 4 };
    while (taken.some((other) => Math.abs(other.x - label.x) < 17 && Math.abs(other.y - label.y) < 14) && label.y > 12)
      label.y -= 14;
    taken.push({ ...label });
    return { standing, number: n + 1, x, y, radius, label };
  });
}
