/** The boat drawn: which lines make her, seen so, standing so. */
import { coverLines } from './cover-profile.ts';
import { deckLines } from './deck-profile.ts';
import { type HullForm, hullForm } from './hull-form.ts';
import { type BoardStance, keelLines } from './keel-profile.ts';
import { at, curved, type Extent, extentOf, type Line, shape } from './line.ts';
import { planLines } from './plan-lines.ts';
import { lyingRig, standingRig } from './rig-profile.ts';
import type { BoatSizes } from './sizes.ts';
import { outboardLines, rudderLines } from './steering-profile.ts';
import { onTrailer, type TrailerSizes } from './trailer-profile.ts';

/** profile: from the side, afloat; trailer: from the side, on the road; plan: from above */
export type View = 'profile' | 'plan' | 'trailer';

export interface Stance {
  readonly mastUp: boolean;
  readonly board: BoardStance;
  readonly coverOn: boolean;
}

export interface Drawing {
  readonly view: View;
  readonly lines: readonly Line[];
  /** what the lines span. [m] */
  readonly extent: Extent;
  /** height of the water, or of the ground she stands on; null: seen from above. [m] */
  readonly ground_m: number | null;
}

/**
 * The lines that make her, the hindmost first.
 *
 * @param sizes    all her sizes, as `completeSizes` gives them
 * @param view     from where she is seen
 * @param stance   mast, board and cover as they stand; what is fixed under her stands always
 * @param trailer  what is known of her trailer, where she is seen on it. [m]
 * @returns        lines in metres: in profile x aft from the stem and y up from the waterline, in plan y to port
 * @throws RangeError  where a size is no finite figure
 */
export function boatDrawing(
  sizes: BoatSizes,
  view: View,
  stance: Stance,
  trailer: { readonly [Name in keyof TrailerSizes]?: TrailerSizes[Name] | undefined } = {},
): Drawing {
  for (const [name, value] of Object.entries(sizes))
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new RangeError(`${name} must be a finite number of metres, got ${value}`);
  const form = hullForm(sizes);
  if (view === 'plan') {
    const lines = planLines(form, stance);
    return { view, lines, extent: extentOf(lines), ground_m: null };
  }
  const road = view === 'trailer' ? onTrailer(form, trailer) : null;
  const lines = [...(road?.lines ?? []), ...side(form, stance, road !== null)];
  return { view, lines, extent: extentOf(lines), ground_m: road?.ground_m ?? 0 };
}

function side(form: HullForm, stance: Stance, onRoad: boolean): readonly Line[] {
  const keel = keelLines(form, onRoad && stance.board === 'down' ? 'up' : stance.board);
  return [
    ...keel.filter(({ filled }) => filled),
    ...outboardLines(form, onRoad),
    // one on the transom is taken off for the road
    ...(onRoad && form.sizes.rudder === 'on the transom' ? [] : rudderLines(form)),
    ...hullLines(form),
    ...keel.filter(({ filled }) => !filled),
    ...deckLines(form),
    ...(stance.mastUp ? standingRig(form) : lyingRig(form)),
    ...(stance.coverOn ? coverLines(form, stance.mastUp) : []),
  ];
}

function hullLines({ sizes, sheer, underside, transomTop, transomFoot, stemHead }: HullForm): Line[] {
  const { length_m: length, freeboard_m: freeboard } = sizes;
  const along = (from: number, to: number, rows: number) =>
    Array.from({ length: rows }, (_, i) => from + ((to - from) * i) / (rows - 1));
  const top = along(0, transomTop.x, 12).map((x) => at(x, sheer(x)));
  const strake = along(0.012 * length, transomTop.x, 12).map((x) => at(x, sheer(x) - 0.1 * freeboard));
  // the boot top: a band just over the water
  const boot = 0.07 * freeboard;
  const aft = transomTop.x + ((transomTop.y - boot) / (transomTop.y - transomFoot.y)) * (transomFoot.x - transomTop.x);
  const fore = crossing(underside, boot);
  return [
    shape('hull', [top, [transomTop, transomFoot], [...underside].reverse()]),
    curved('rubbing strake', 'thin', strake),
    ...(boot > transomFoot.y
      ? [curved('boot top', 'thin', [at(fore, boot), at((fore + aft) / 2, boot - 0.004), at(aft, boot)])]
      : [curved('boot top', 'thin', [at(fore, boot), at(0.8 * length, boot)])]),
    curved('stem head', 'outline', [
      at(-0.006 * length, stemHead.y + 0.01),
      at(0.03 * length, sheer(0.03 * length) + 0.012),
    ]),
  ];
}

function crossing(run: readonly { readonly x: number; readonly y: number }[], y: number): number {
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1]!, run[i]!];
    if (a.y >= y && b.y <= y) return a.x + ((b.x - a.x) * (a.y - y)) / (a.y - b.y || 1);
  }
  return run[0]!.x;
}
