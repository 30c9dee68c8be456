import type { Band } from '#battery';
import { dayNumber } from '#units';

/** What a panel is, as far as its day's yield hangs on it. */
export interface DayPanel {
  readonly peak_W: number;
  readonly regulator: 'none' | 'simple' | 'tracking';
  /** of the sun that gets past mast, boom and ropes. [%]; null: not known */
  readonly kept_pct: number | null;
}

/**
 * Assumed: share of the sun outside the air that reaches a level panel in a dull, a usual and a fair day. A quarter when the sun
 * does not come out at all and three quarters when it shines all day are the figures of FAO paper 56 (from memory); the dull
 * day here is one with rain too.
 */
export const assumedThroughAir = { dull: 0.15, usual: 0.45, fair: 0.72 } as const;
/** Assumed: what heat, dirt, a bad angle and the leads leave of a panel's power. */
const assumedLeft = 0.8;
/** Assumed: kept of the sun on a small boat at anchor, where nobody has said. [%] */
export const assumedKept_pct = 80;
/** Volts at which a panel for 12 V batteries gives its peak power. [V] Usual, from memory. */
const usualPeak_V = 18;

/**
 * Sun outside the air on a level square metre in a day. [kWh/m²]
 *
 * @param dayOfYear  1–366
 * Source: FAO Irrigation and Drainage Paper 56, equations 21 to 25, from memory; its own example in the test, from memory too.
 */
export function sunOutsideAir_kWh(latitude_deg: number, dayOfYear: number): number {
  const turn = (2 * Math.PI * dayOfYear) / 365;
  const near = 1 + 0.033 * Math.cos(turn);
  const declination = 0.409 * Math.sin(turn - 1.39);
  const latitude = (latitude_deg * Math.PI) / 180;
  const sunset = Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination))));
  const constant_MJ_min = 0.082;
  const perDay_MJ =
    ((24 * 60) / Math.PI) *
    constant_MJ_min *
    near *
    (sunset * Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  return Math.max(0, perDay_MJ / 3.6);
}

/**
 * What a level panel may bring a 12 V battery in a day, from a dull one to a fair one, before the battery says what it takes.
 *
 * @returns [Ah]; a plain or no regulator passes on the panel's amps, one that tracks turns its spare volts into amps
 *
 * Not covered: a tilted panel, cloud forecasts, snow, a panel for 24 V.
 */
export function panelDay_Ah(panel: DayPanel, latitude_deg: number, day: string): Band {
  const dayOfYear = dayNumber(day) - dayNumber(`${day.slice(0, 4)}-01-01`) + 1;
  const outside = sunOutsideAir_kWh(latitude_deg, dayOfYear);
  const volts = panel.regulator === 'tracking' ? 13.2 / 0.95 : usualPeak_V;
  const full = ((panel.peak_W * outside) / volts) * assumedLeft * ((panel.kept_pct ?? assumedKept_pct) / 100);
  const { dull, usual, fair } = assumedThroughAir;
  return { low: dull * full, likely: usual * full, high: fair * full };
}
