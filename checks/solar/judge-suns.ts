/** Measured sun put beside what the model says of the same days, and what came of it. */
import { dayOfYear } from '#sky';
import { type Clouds, clearLight, lightsOf } from '#solar';
import { type MeasuredSun, measuredSuns } from './measured-sun.ts';
import { type DayRows, type SkyOfDay, skyOfDay } from './sky-of-day.ts';

/** What is asked: a clear day's energy within so much; a cloudy day in a band no wider than so much of the month's spread. */
export const asked = { clear_pct: 8, ofSpread: 0.5 } as const;

/** Assumed: cloud that an observer saw over a place is as far off what stood before its sun as a forecast is. [oktas] */
export const errorOfSeenCloud_oktas = 0.3;
const hour = 3_600_000;

/** One day, judged. Energies in kWh/m². */
export interface DayJudged {
  readonly day: string;
  readonly measured_kWh: number;
  readonly clearDay_kWh: number;
  readonly sky: SkyOfDay;
  /** what the model was told of the sky: nothing of a clear day but that it was clear */
  readonly told: string;
  /** clear day less measured, of measured. [%] */
  readonly off_pct: number;
  readonly beamOff_pct: number | null;
  readonly skyOff_pct: number | null;
  readonly low_kWh: number;
  readonly likely_kWh: number;
  readonly high_kWh: number;
  /** width of the month's days in 9 of 10, nothing told */
  readonly spread_kWh: number;
  readonly inBand: boolean;
  /** of the band, of the month's spread. [–] */
  readonly ofSpread: number;
  readonly holds: boolean;
}

export interface FileJudged {
  readonly file: string;
  readonly source: MeasuredSun;
  readonly days: readonly DayJudged[];
  /** days left out: too little of them measured, or no sun */
  readonly leftOut: number;
}

export interface FolderJudged {
  readonly files: readonly FileJudged[];
  readonly left: readonly { readonly file: string; readonly because: string }[];
}

export function judgeFolder(folder: string): FolderJudged {
  const files: FileJudged[] = [];
  const left: { file: string; because: string }[] = [];
  for (const each of measuredSuns(folder)) {
    if (each.kind === 'skipped') left.push(each);
    else files.push(judgeSun(each));
  }
  return { files, left };
}

/** Every day of a file. */
export function judgeSun(source: MeasuredSun): FileJudged {
  const days: DayJudged[] = [];
  let leftOut = 0;
  for (const rows of daysOf(source)) {
    const judged = rows === null ? null : judgeDay(source, rows);
    if (judged === null) leftOut++;
    else days.push(judged);
  }
  return { file: source.file, source, days, leftOut };
}

/**
 * The rows of a file day by day, sun up and measured; null for a day with more than a tenth of its light missing. A file of one
 * day is one day, by whatever clock it was cut; a longer one is cut at the sun's midnight.
 */
function daysOf(source: MeasuredSun): (DayRows | null)[] {
  const { at, step_min, place } = source;
  const one = at.at(-1)! - at[0]! < 25 * hour;
  const turn = (place.longitude_deg / 360) * 24 * hour;
  const days = new Map<number, number[]>();
  for (let i = 0; i < at.length; i++) {
    const day = one ? 0 : Math.floor((at[i]! + turn) / (24 * hour));
    const list = days.get(day);
    if (list) list.push(i);
    else days.set(day, [i]);
  }
  return [...days.values()].map((indices) => dayRows(source, indices, step_min, one));
}

function dayRows(source: MeasuredSun, indices: readonly number[], step_min: number, one: boolean): DayRows | null {
  const parts = step_min > 10 ? 12 : 1;
  const step_ms = step_min * 60_000;
  const from = source.at[indices[0]!]! - step_ms / 2;
  const count = Math.round((source.at[indices.at(-1)!]! + step_ms / 2 - from) / step_ms);
  const light = clearLight(source.place, { from, step_min: step_min / parts, count: count * parts }, null);
  const mean = (n: number, of: (moment: (typeof light)[number]) => number) => {
    // a file may have gaps: the row's own place in the day
    const first = Math.min(count - 1, Math.round((source.at[indices[n]!]! - step_ms / 2 - from) / step_ms)) * parts;
    let sum = 0;
    for (let k = first; k < first + parts; k++) sum += of(light[k]!);
    return sum / parts;
  };
  const sine = ({ zenith }: { readonly zenith: number }) => Math.max(0, Math.cos((zenith * Math.PI) / 180));
  const kept: number[] = [];
  let lit = 0;
  let missing = 0;
  indices.forEach((i, n) => {
    const clear = mean(n, ({ global_W_m2 }) => global_W_m2);
    if (clear <= 0) return;
    lit += clear;
    if (Number.isFinite(source.global[i]!)) kept.push(n);
    else missing += clear;
  });
  // a day that the file's ends cut through is no day, unless the file is that one day
  const noon = (indices.length * step_min) / 60 >= 12;
  const dark = (n: number) => mean(n, ({ global_W_m2 }) => global_W_m2) <= 0;
  const whole = one || (indices.length * step_min) / 60 >= 23 || (noon && dark(0) && dark(indices.length - 1));
  if (kept.length === 0 || missing > 0.1 * lit || !whole) return null;
  const list = (values: Float64Array) => Float64Array.from(kept, (n) => Math.max(0, values[indices[n]!]!));
  return {
    at: Float64Array.from(kept, (n) => source.at[indices[n]!]!),
    step_min,
    global: list(source.global),
    beam: source.beam && list(source.beam),
    sky: source.sky && list(source.sky),
    cloud_tenths: source.cloud_tenths && Float64Array.from(kept, (n) => source.cloud_tenths![indices[n]!]!),
    clear: Float64Array.from(kept, (n) => mean(n, ({ global_W_m2 }) => global_W_m2)),
    clearBeam: Float64Array.from(kept, (n) => mean(n, ({ beam_W_m2 }) => beam_W_m2)),
    clearSky: Float64Array.from(kept, (n) => mean(n, ({ diffuse_W_m2 }) => diffuse_W_m2)),
    outside: Float64Array.from(kept, (n) => mean(n, (moment) => moment.outside_W_m2 * sine(moment))),
    altitude: Float64Array.from(kept, (n) => (Math.asin(mean(n, sine)) * 180) / Math.PI),
  };
}

function judgeDay(source: MeasuredSun, rows: DayRows): DayJudged | null {
  const sky = skyOfDay(rows);
  if (sky === null) return null;
  const kWh = (values: ArrayLike<number>, only?: ArrayLike<number>) => {
    let sum = 0;
    for (let i = 0; i < values.length; i++) if (only === undefined || Number.isFinite(only[i]!)) sum += values[i]!;
    return (sum * rows.step_min) / 60_000;
  };
  const off_pct = (model: Float64Array, measured: Float64Array | null) => {
    if (measured === null || measured.some(Number.isNaN)) return null;
    const of = kWh(measured);
    return of > 0 ? (100 * (kWh(model) - of)) / of : null;
  };
  const middle = rows.at[rows.at.length >> 1]!;
  const turn = (source.place.longitude_deg / 360) * 24 * hour;
  const season = dayOfYear(middle);
  const { clouds, told } = cloudsTold(rows, sky, turn);
  const clock = Int32Array.from(rows.at, (at) => Math.floor((((at + turn) / hour) % 24) + 24) % 24);
  const band = bandOver(rows, clouds, source.place.latitude_deg, season, clock);
  const spread = bandOver(rows, { kind: 'season' }, source.place.latitude_deg, season, clock);
  const measured_kWh = kWh(rows.global);
  const clearDay_kWh = kWh(rows.clear);
  const off = (100 * (clearDay_kWh - measured_kWh)) / measured_kWh;
  const inBand = band.low <= measured_kWh && measured_kWh <= band.high;
  const spread_kWh = spread.high - spread.low;
  const ofSpread = (band.high - band.low) / spread_kWh;
  return {
    day: new Date(middle + turn).toISOString().slice(0, 10),
    measured_kWh,
    clearDay_kWh,
    sky,
    told: sky.clear ? 'clear' : told,
    off_pct: off,
    beamOff_pct: off_pct(rows.clearBeam, rows.beam),
    skyOff_pct: off_pct(rows.clearSky, rows.sky),
    low_kWh: band.low,
    likely_kWh: band.likely,
    high_kWh: band.high,
    spread_kWh,
    inBand,
    ofSpread,
    holds: sky.clear ? Math.abs(off) <= asked.clear_pct : inBand && ofSpread <= asked.ofSpread,
  };
}

/** What a keeper would have been told of the day's sky: cloud by the hour where an observer wrote it down, else one word. */
function cloudsTold(rows: DayRows, sky: SkyOfDay, turn: number): { readonly clouds: Clouds; readonly told: string } {
  const seen = rows.cloud_tenths;
  if (seen === null || seen.some((each) => !(each >= 0 && each <= 10)))
    return { clouds: { kind: 'word', word: sky.word }, told: sky.word };
  const mean = seen.reduce((sum, each) => sum + each, 0) / seen.length;
  const oktas = Array.from({ length: 24 }, () => Math.round(0.8 * mean));
  rows.at.forEach((at, i) => {
    oktas[Math.floor((((at + turn) / hour) % 24) + 24) % 24] = Math.round(0.8 * seen[i]!);
  });
  return {
    clouds: { kind: 'oktas', oktas, error_oktas: errorOfSeenCloud_oktas },
    told: `${Math.round(0.8 * mean)} oktas, by the hour`,
  };
}

/** What the model says of the light of these rows, in 9 of 10. [kWh/m²] */
function bandOver(rows: DayRows, clouds: Clouds, latitude_deg: number, season: number, clock: Int32Array) {
  const energies = lightsOf(clouds, latitude_deg, season)
    .map(({ covered, under, open }) => {
      let sum = 0;
      for (let i = 0; i < rows.clear.length; i++) {
        const share = covered.length === 1 ? covered[0]! : covered[clock[i]!]!;
        sum += rows.clear[i]! * (open * (1 - share) + share * under);
      }
      return (sum * rows.step_min) / 60_000;
    })
    .sort((a, b) => a - b);
  const at = (share: number) => energies[Math.round(share * (energies.length - 1))]!;
  return { low: at(0.05), likely: at(0.5), high: at(0.95) };
}
