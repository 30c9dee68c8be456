/**
 * What kind of day a day was, from its measurements alone: clear, or how much of it the sun was out. The clear sky of the
 * model goes in by its shape only, scaled to the day, so that no day is called clear for being as bright as the model says.
 */
import type { SkyWord } from '#solar';
import { skyWords } from '#solar';

/** One day's rows: those with a measured value while the sun is up. Lists of one length. */
export interface DayRows {
  /** middles of the rows' spans. [ms] */
  readonly at: Float64Array;
  readonly step_min: number;
  readonly global: Float64Array;
  readonly beam: Float64Array | null;
  readonly sky: Float64Array | null;
  readonly cloud_tenths: Float64Array | null;
  /** the model's clear sky, over the span of each row. [W/m²] */
  readonly clear: Float64Array;
  readonly clearBeam: Float64Array;
  readonly clearSky: Float64Array;
  /** on a level surface outside the air. [W/m²] */
  readonly outside: Float64Array;
  /** mean altitude of the sun in the span. [°] */
  readonly altitude: Float64Array;
}

/** How a day is called clear; stated in the page of the check. */
export const clearWhen = {
  /** only rows with the sun over so much are looked at: lower down every haze is a cloud. [°] */
  altitude_deg: 8,
  /** clearness free of the air crossed (R. Perez and others, 1990, from memory), median of the rows, at least */
  clearness: 0.72,
  /** this share of the light falls in rows within `steady` of the day's own scale, either way */
  share: 0.92,
  steady: 0.1,
  /** and the beam, where it is measured, is seldom cut off: a row with less than the usual 120 W/m² is cloud */
  beamOut: 0.03,
} as const;

/** World Meteorological Organization: the sun shines when the beam is over so much. [W/m²] WMO-No. 8, from memory */
const shines_W_m2 = 120;

export interface SkyOfDay {
  readonly clear: boolean;
  /** clearness free of the air crossed, median */
  readonly clearness: number;
  /** share of the light within `steady` of the day's scale */
  readonly steady: number;
  /** share of the time that the sun was out */
  readonly sunOut: number;
  readonly word: SkyWord;
}

/** The kind of a day; null where too little of it was measured with the sun high enough. */
export function skyOfDay(rows: DayRows): SkyOfDay | null {
  const high = [...rows.at.keys()].filter((i) => rows.altitude[i]! >= clearWhen.altitude_deg);
  const looked = high.length * rows.step_min >= 60 ? high : [...rows.at.keys()].filter((i) => rows.altitude[i]! >= 3);
  if (looked.length * rows.step_min < 60) return null;
  const ratios = looked.map((i) => rows.global[i]! / rows.clear[i]!);
  const scale = median(ratios);
  let light = 0;
  let steady = 0;
  looked.forEach((i, n) => {
    light += rows.clear[i]!;
    if (Math.abs(ratios[n]! - scale) <= clearWhen.steady * scale) steady += rows.clear[i]!;
  });
  const clearness = median(looked.map((i) => freeOfAir(rows.global[i]! / rows.outside[i]!, rows.altitude[i]!)));
  const out = looked.map((i) => sunIsOut(rows, i));
  const sunOut = out.reduce((sum, each) => sum + each, 0) / out.length;
  const clear =
    clearness >= clearWhen.clearness &&
    steady >= clearWhen.share * light &&
    (rows.beam === null || sunOut >= 1 - clearWhen.beamOut);
  return { clear, clearness, steady: steady / light, sunOut, word: wordFor(sunOut) };
}

/**
 * Whether the sun was out in a row, 0 or 1; part of it in rows of an hour. By the beam where it is measured; else the row is as
 * bright as light through broken cloud never is.
 */
function sunIsOut({ beam, global, clear, clearBeam, step_min }: DayRows, i: number): number {
  const measured = beam?.[i] ?? Number.NaN;
  if (Number.isFinite(measured)) {
    if (step_min <= 10) return measured >= Math.min(shines_W_m2, 0.4 * clearBeam[i]!) ? 1 : 0;
    return Math.min(1, measured / clearBeam[i]!);
  }
  const bright = global[i]! / clear[i]!;
  if (step_min <= 10) return bright >= 0.65 ? 1 : 0;
  return Math.min(1, Math.max(0, (bright - 0.35) / 0.65));
}

function wordFor(sunOut: number): SkyWord {
  const found = (Object.keys(skyWords) as SkyWord[]).find(
    (word) => sunOut >= skyWords[word].low && sunOut <= skyWords[word].high,
  );
  return found ?? 'overcast';
}

/** R. Perez and others, Solar Energy 45 (1990), from memory: clearness that stays the same all through a clear day. */
function freeOfAir(clearness: number, altitude_deg: number): number {
  const air = 1 / (Math.sin((altitude_deg * Math.PI) / 180) + 0.15 * (altitude_deg + 3.885) ** -1.253);
  return clearness / (1.031 * Math.exp(-1.4 / (0.9 + 9.4 / air)) + 0.1);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}
