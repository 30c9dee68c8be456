/** From where to where a load path runs on the boat. */
import type { Boat, Book, LoadPathRecord } from '#boat-book';
import { landmarks, type Point, placesIn } from '#picture';
import { sizesOfBoat } from '#reckoning';

/**
 * Both ends of a load path, by what it is for and where it is, with the mast standing, in the metres of her profile. What
 * holds an anchor is drawn a little over half her length down: only a sign for the depth.
 */
export function runOfPath(boat: Boat, zones: Book['zones'], { use, zone }: LoadPathRecord): readonly [Point, Point] {
  const { sizes } = sizesOfBoat(boat);
  const on = landmarks(sizes);
  const there = zone === null ? undefined : zones[zone];
  const place = there && placesIn(sizes, 'profile', { mastUp: true, board: 'down', coverOn: false })(there);
  switch (use) {
    case 'ground-tackle':
      return [on.stemHead, { x: -0.6 * boat.length_m, y: -0.6 * boat.length_m }];
    case 'standing-rigging':
      return [on.staysMeet, place ?? on.stemHead];
    case 'running-rigging':
      return [on.mastHead, place ?? on.mastFoot];
    case 'hoist':
      return [
        { x: on.boardPin.x + 0.14 * boat.length_m, y: on.boardPin.y },
        place ?? { x: 0.5 * boat.length_m, y: boat.freeboard_m },
      ];
  }
}
