/** Places on her that other drawings start from: where the mast stands, where stays meet it, where she ends. */
import { type HullForm, hullForm } from './hull-form.ts';
import { boardPin } from './keel-profile.ts';
import { at, type Point } from './line.ts';
import { chainplate, gooseneck, onSpar, standingMast, staysMeet } from './rig-profile.ts';
import type { BoatSizes } from './sizes.ts';

/** In profile: x aft from the stem, y up from the waterline, with the mast standing. [m] */
export interface Landmarks {
  readonly stemHead: Point;
  readonly transomTop: Point;
  readonly mastFoot: Point;
  readonly mastHead: Point;
  readonly staysMeet: Point;
  readonly gooseneck: Point;
  readonly shroudPlate: Point;
  readonly boardPin: Point;
}

export function landmarks(sizes: BoatSizes): Landmarks {
  const form: HullForm = hullForm(sizes);
  const mast = standingMast(form);
  const plate = chainplate(form);
  return {
    stemHead: form.stemHead,
    transomTop: form.transomTop,
    mastFoot: mast.foot,
    mastHead: mast.head,
    staysMeet: onSpar(mast, staysMeet(form)),
    gooseneck: gooseneck(form),
    shroudPlate: at(plate, form.sheer(plate)),
    boardPin: boardPin(form),
  };
}
