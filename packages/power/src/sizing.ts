import type { Chemistry } from '#battery';
import type { Instant } from '#units';
import type { CircuitDraw } from './circuit-draw.ts';
import type { PowerPlace } from './circuit-times.ts';
import { endurance } from './endurance.ts';
import type { SunDraws } from './night-runs.ts';
import type { Chance } from './spread.ts';

/** Sizes that batteries and panels are usually sold in; common practice, from memory. [Ah] and [W] */
export const usualSizes = {
  battery_Ah: [7, 10, 12, 14, 18, 20, 24, 28, 33, 40, 50, 60, 75, 90, 100, 120, 150, 200],
  panel_W: [0, 5, 10, 20, 30, 40, 50, 60, 80, 100, 120, 160, 200],
} as const;

/** Assumed: a battery is replaced when it has fallen to this share of its label, so it is sized to do then. [%] */
export const assumedWorn_pct = 80;

export interface SizingCase {
  readonly chemistry: Chemistry;
  readonly nominal_V: 6 | 12 | 24;
  readonly floor_pct: number;
  /** charge at the start. [%] */
  readonly start_pct: number;
  /** of the label that the battery still holds. [%], over 0 to 110 */
  readonly kept_pct: number;
  readonly circuits: readonly CircuitDraw[];
  readonly place: PowerPlace;
  readonly from: Instant;
  readonly nights: number;
  /** wanted: all nights over the floor in so many of 100. [%], over 0, under 100 */
  readonly chance_pct: number;
  /** amps for each watt of panel; null: no panel is looked at */
  readonly sunPerWatt: SunDraws | null;
  /** rising */
  readonly battery_Ah: readonly number[];
  /** rising */
  readonly panel_W: readonly number[];
  readonly runs: number;
  readonly seed: number;
}

/** One pair of sizes and how often it does. */
export interface SizeTried {
  readonly battery_Ah: number;
  readonly panel_W: number;
  readonly lasts: Chance;
}

export interface Sizing {
  /** for each panel the smallest battery that does, smallest panel first; a bigger panel is left out that saves no battery */
  readonly enough: readonly SizeTried[];
  /** for each of them the next smaller battery with the same panel: what the step buys */
  readonly oneSmaller: readonly (SizeTried | null)[];
  /** every pair that was looked at */
  readonly tried: readonly SizeTried[];
}

/**
 * The smallest battery and panel for the nights wanted at a chance.
 *
 * The chance rises with either size, so one walk along the edge between enough and not enough finds every pair on it: from
 * the largest battery and no panel, smaller battery by smaller battery while it does, larger panel by larger panel when it
 * does not.
 *
 * @throws RangeError for a chance or share out of range, or no sizes
 */
export function sizing(given: SizingCase): Sizing {
  const { battery_Ah, kept_pct, chance_pct, sunPerWatt, start_pct } = given;
  if (!(chance_pct > 0 && chance_pct < 100))
    throw new RangeError(`the chance must be over 0 and under 100 %, got ${chance_pct} %`);
  if (!(kept_pct > 0 && kept_pct <= 110))
    throw new RangeError(`what it still holds must be over 0 to 110 %, got ${kept_pct} %`);
  const panel_W = sunPerWatt === null ? [0] : given.panel_W;
  if (battery_Ah.length === 0 || panel_W.length === 0)
    throw new RangeError('one size at least of battery and panel is needed');
  const tried: SizeTried[] = [];
  const known = new Map<string, SizeTried>();
  const look = (b: number, p: number): SizeTried => {
    const Ah = battery_Ah[b]!;
    const W = panel_W[p]!;
    const found = known.get(`${b} ${p}`);
    if (found) return found;
    const sun: SunDraws | null =
      sunPerWatt === null || W === 0 ? null : { ...sunPerWatt, amps: sunPerWatt.amps.map((amps) => amps * W) };
    const { nights } = endurance({
      ...given,
      states: { charge_pct: Float64Array.of(start_pct), capacity_Ah: Float64Array.of((Ah * kept_pct) / 100) },
      aboard: null,
      sun,
      chargers: [],
    });
    const each = { battery_Ah: Ah, panel_W: W, lasts: nights.at(-1)!.lasts };
    known.set(`${b} ${p}`, each);
    tried.push(each);
    return each;
  };
  const enough: SizeTried[] = [];
  const oneSmaller: (SizeTried | null)[] = [];
  let b = battery_Ah.length - 1;
  for (let p = 0; p < panel_W.length && b >= 0; p++) {
    let last: SizeTried | null = null;
    while (b >= 0) {
      const each = look(b, p);
      if (each.lasts.chance_pct < chance_pct) break;
      last = each;
      b--;
    }
    if (!last) continue;
    enough.push(last);
    oneSmaller.push(b >= 0 ? look(b, p) : null);
  }
  return { enough, oneSmaller, tried };
}
