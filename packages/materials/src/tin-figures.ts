import type { CureLaw } from './cure-law.ts';
import { cureLawOf } from './cure-laws.ts';

/** A time as a tin gives it: so long at a temperature. */
export interface TinTime {
  /** [h], over 0 */
  readonly hours: number;
  /** [°C] */
  readonly at_C: number;
}

/** How a tin says its parts go together. */
export type TinRatio =
  /** parts of resin (or paint) to parts of hardener */
  | {
      readonly kind: 'parts';
      readonly by: 'weight' | 'volume';
      readonly resin: number;
      readonly hardener: number;
    }
  /** catalyst as a share of the resin by weight, from least to most. [%] */
  | { readonly kind: 'catalyst'; readonly low_pct: number; readonly high_pct: number };

/**
 * What a tin, a tube or its sheet says of a product, as the keeper read it there. Null: it says nothing of it, and our
 * figure for the family stands in. What it does say always wins.
 */
export interface TinFigures {
  /** id in `cureLaws` */
  readonly family: string;
  /** the next coat from this long */
  readonly nextCoat: TinTime | null;
  /** past this it must be abraded before the next coat; at the temperature of `nextCoat`. [h] */
  readonly latestCoat_h: number | null;
  /** it may be sanded, or the clamps come off */
  readonly worked: TinTime | null;
  /** full strength */
  readonly full: TinTime | null;
  /** a one-part sealant: depth cured in the first 24 h. [mm] */
  readonly firstDay_mm: number | null;
  /** not to be used colder than this. [°C] */
  readonly minimum_C: number | null;
  /** not to be used in air damper than this. [%] */
  readonly humidity_max_pct: number | null;
  /** how long a pot of it may be used, at a temperature, for a mass where it says so. [min], [°C], [g] */
  readonly potLife: { readonly minutes: number; readonly at_C: number; readonly of_g: number | null } | null;
  readonly ratio: TinRatio | null;
  /** area a litre covers in one coat. [m²/l] */
  readonly spread_m2_l: number | null;
}

/** What a wait by a family's law is waited for: which of a tin's times it goes by. */
export type CureStage = 'next coat' | 'worked' | 'full' | 'first day' | 'none';

const stages: Readonly<Record<string, CureStage>> = {
  'epoxy-fast': 'worked',
  'epoxy-slow': 'worked',
  'polyester-resin': 'worked',
  gelcoat: 'worked',
  'polyester-filler': 'worked',
  'wood-glue': 'worked',
  'epoxy-full-strength': 'full',
  threadlocker: 'full',
  'varnish-one-pot': 'next coat',
  'varnish-two-pot': 'next coat',
  'paint-one-pot': 'next coat',
  'paint-two-pot': 'next coat',
  'epoxy-primer': 'next coat',
  antifouling: 'next coat',
};

/** Which of a tin's times a wait of this family goes by. @param family id in `cureLaws` */
export function cureStage(family: string): CureStage {
  return stages[family] ?? (cureLawOf(family).law.kind === 'moisture' ? 'first day' : 'none');
}

/** Whether a tin of one family speaks for a wait of another: an epoxy's tin also says when it has its full strength. */
export const tinSpeaksFor = (tinFamily: string, waitFamily: string): boolean =>
  tinFamily === waitFamily ||
  (waitFamily === 'epoxy-full-strength' && (tinFamily === 'epoxy-fast' || tinFamily === 'epoxy-slow'));

/** A law with what the tin says in it. `says` names the figures that are the tin's; the others stay ours. */
export interface LawFromTin {
  readonly law: CureLaw;
  readonly says: readonly ('time' | 'depth' | 'temperature' | 'humidity')[];
}

/**
 * The law of a wait with the tin's own figures in place of ours; null where the tin says nothing that bears on it.
 *
 * How much slower it is in the cold stays ours (no tin says it), so the tin's time is that at the tin's temperature. A
 * bead keeps the depth the wait gives it.
 *
 * @param law     as it stands: our family's law, with the wait's own depth where it is a bead
 * @param family  of the wait; id in `cureLaws`
 */
export function lawFromTin(law: CureLaw, family: string, tin: TinFigures): LawFromTin | null {
  if (!tinSpeaksFor(tin.family, family)) return null;
  const says: LawFromTin['says'][number][] = [];
  let told = law;
  const stage = cureStage(family);
  const time =
    stage === 'next coat' ? tin.nextCoat : stage === 'worked' ? tin.worked : stage === 'full' ? tin.full : null;
  if (time !== null && (told.kind === 'reacts' || told.kind === 'dries')) {
    told = { ...told, atReference_min: time.hours * 60, reference_C: time.at_C };
    says.push('time');
  }
  if (tin.firstDay_mm !== null && told.kind === 'moisture') {
    told = { ...told, firstDay_mm: tin.firstDay_mm };
    says.push('depth');
  }
  if (tin.minimum_C !== null && 'minimum_C' in told) {
    told = { ...told, minimum_C: tin.minimum_C };
    says.push('temperature');
  }
  if (tin.humidity_max_pct !== null && told.kind === 'dries') {
    // a tin says the dampest air it may be used in; at that humidity it still dries
    told = { ...told, stopsAt_pct: Math.min(100, tin.humidity_max_pct + 1) };
    says.push('humidity');
  }
  return says.length === 0 ? null : { law: { ...told, from: 'the tin' }, says };
}
