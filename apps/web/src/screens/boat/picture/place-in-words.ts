/** A place on her in words: `1.20 m from the stem, 0.35 m over the water`. */
import type { BoatSizes, PlaceOnBoat, View } from '#picture';

export function placeInWords(sizes: BoatSizes, view: View, { along, up, across }: PlaceOnBoat): string {
  const m = (value: number) => `${Math.abs(value).toFixed(2)} m`;
  const x = along * sizes.length_m;
  const y = up * sizes.freeboard_m;
  const side = ((across ?? 0) * sizes.beam_m) / 2;
  const from = x >= 0 ? `${m(x)} from the stem` : `${m(x)} ahead of the stem`;
  const height = y >= 0 ? `${m(y)} over the waterline` : `${m(y)} under the waterline`;
  const hand = Math.abs(side) < 0.03 ? 'on the centreline' : `${m(side)} to ${side > 0 ? 'starboard' : 'port'}`;
  return view === 'plan'
    ? `${from}, ${hand}`
    : across === undefined
      ? `${from}, ${height}`
      : `${from}, ${height}, ${hand}`;
}
