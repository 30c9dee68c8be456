/**
 * Where a thing on her is in a drawing, and where a touch of the drawing is on her. A place is kept as shares, so that it
 * stays where it was when her sizes are put right: along from the stem 0 to the stern 1, up in freeboards from the
 * waterline, across in half beams, starboard positive.
 */
import { deckHeight } from './deck-profile.ts';
import type { Stance, View } from './drawing.ts';
import { type HullForm, hullForm } from './hull-form.ts';
import { at, type Point } from './line.ts';
import { lyingMast, onSpar, standingMast } from './rig-profile.ts';
import type { BoatSizes } from './sizes.ts';

export interface PlaceOnBoat {
  readonly along: number;
  readonly up: number;
  /** left out: nobody said on which side; drawn on the centreline */
  readonly across?: number | undefined;
}

/** Places are no further from her than this: along, up and across, in their own shares. */
export const placeLimits = { along: [-1, 2], up: [-10, 30], across: [-3, 3] } as const;

/** What stands higher over the mast's foot than a person reaches is up the mast. [m] Our judgement. */
const assumedReach_m = 0.4;

/** True for what is up the mast, and lies along it when the mast is down. */
export function isAloft(sizes: BoatSizes, place: PlaceOnBoat): boolean {
  return aloft(hullForm(sizes), place);
}

function aloft(form: HullForm, { along, up }: PlaceOnBoat): boolean {
  const { length_m: length, mastFromBow_m: mast, freeboard_m: freeboard, mastHeight_m: height } = form.sizes;
  if (height === 0 || Math.abs(along * length - mast) >= 0.2 * length) return false;
  return up * freeboard > Math.max(standingMast(form).foot.y, deckHeight(form, mast)) + assumedReach_m;
}

/** Places of things in a drawing, in its metres. Made once for a drawing. */
export function placesIn(sizes: BoatSizes, view: View, stance: Stance): (place: PlaceOnBoat) => Point {
  const form = hullForm(sizes);
  const lying = lyingMast(form);
  const standing = standingMast(form);
  return (place) => {
    const height_m = place.up * sizes.freeboard_m;
    const onMast = !stance.mastUp && aloft(form, place);
    const share = Math.min(1, Math.max(0, (height_m - standing.foot.y) / (standing.head.y - standing.foot.y || 1)));
    if (view === 'plan') {
      const x = onMast ? onSpar(lying, share).x : place.along * sizes.length_m;
      return at(x, (-(place.across ?? 0) * sizes.beam_m) / 2);
    }
    return onMast ? onSpar(lying, share) : at(place.along * sizes.length_m, height_m);
  };
}

/**
 * The place on her that a point of a drawing is. Of the side it tells nothing of across; of the plan nothing of up, and a
 * thing nobody gave a height is taken to stand on deck.
 *
 * @param point   in the drawing's metres
 * @param before  where the thing was; null: it had no place yet
 */
export function placeAt(
  sizes: BoatSizes,
  view: View,
  stance: Stance,
  point: Point,
  before: PlaceOnBoat | null,
): PlaceOnBoat {
  const form = hullForm(sizes);
  const side = before?.across === undefined ? {} : { across: before.across };
  if (view === 'plan') {
    const along = within(point.x / sizes.length_m, placeLimits.along);
    return {
      along,
      up: before?.up ?? share(deckHeight(form, Math.min(sizes.length_m, Math.max(0, point.x))) / sizes.freeboard_m),
      across: within((-2 * point.y) / sizes.beam_m, placeLimits.across),
    };
  }
  const lying = lyingMast(form);
  const onLying = (point.x - lying.foot.x) / (lying.head.x - lying.foot.x || 1);
  // a touch of the mast where it lies is a touch of that place up the mast
  if (
    !stance.mastUp &&
    sizes.mastHeight_m > 0 &&
    onLying >= 0 &&
    onLying <= 1 &&
    Math.abs(point.y - onSpar(lying, onLying).y) < 0.12
  ) {
    const place = onSpar(standingMast(form), onLying);
    const held = { along: share(place.x / sizes.length_m), up: share(place.y / sizes.freeboard_m), ...side };
    if (aloft(form, held)) return held;
  }
  return {
    along: within(point.x / sizes.length_m, placeLimits.along),
    up: within(point.y / sizes.freeboard_m, placeLimits.up),
    ...side,
  };
}

const share = (value: number) => Math.round(value * 1000) / 1000;
const within = (value: number, [least, most]: readonly [number, number]) =>
  share(Math.min(most, Math.max(least, value)));
