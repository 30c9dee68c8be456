/**
 * Measured runs of batteries, as files in the forms of the data folder's README. A file is known by its columns; the current
 * comes out positive where it leaves the battery, whatever its file's own sign.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Chemistry } from '#battery';

/** One run of a battery of about 12 V. Lists of one length. */
export interface MeasuredRun {
  readonly kind: 'run';
  readonly file: string;
  readonly chemistry: Chemistry;
  readonly nominal_Ah: number;
  readonly hours: Float64Array;
  readonly volts: Float64Array;
  /** positive out of the battery */
  readonly amps: Float64Array;
  readonly battery_C: number;
  /** single cells: as four or six in series */
  readonly inSeries: number;
}

/** A rest curve of a cell, near enough: volts at each charge. */
export interface MeasuredCurve {
  readonly kind: 'rest curve';
  readonly file: string;
  readonly chemistry: Chemistry;
  readonly charge_pct: Float64Array;
  /** as a battery of about 12 V */
  readonly volts: Float64Array;
}

export interface SkippedFile {
  readonly kind: 'skipped';
  readonly file: string;
  readonly because: string;
}

interface Form {
  readonly columns: readonly string[];
  readonly hours: (row: readonly string[]) => number;
  readonly volts: number;
  readonly amps: number;
  /** what the file's current is multiplied by, so that it is positive out of the battery */
  readonly sign: 1 | -1;
  readonly heat?: number;
}

/** A stamp without a zone is read as UTC: only differences count. */
const stamp_h = (text: string) => {
  const plain = text.trim().replace(' ', 'T');
  return Date.parse(/[zZ]|[+-]\d\d:?\d\d$/.test(plain) ? plain : `${plain}Z`) / 3_600_000;
};
const seconds_h = (text: string) => (text.trim() === '' ? Number.NaN : Number(text) / 3600);

const forms: readonly Form[] = [
  {
    columns: ['time', 'voltage', 'current', 'temperature'],
    hours: (row) => stamp_h(row[0] ?? ''),
    volts: 1,
    amps: 2,
    sign: 1,
    heat: 3,
  },
  {
    columns: ['time_s', 'ambient_c', 'current_a', 'voltage_v', 'battery_c'],
    hours: (row) => seconds_h(row[0] ?? ''),
    volts: 3,
    amps: 2,
    sign: -1,
    heat: 4,
  },
  {
    columns: ['time [s]', 'i[a]', 'u[v]'],
    hours: (row) => seconds_h(row[0] ?? ''),
    volts: 2,
    amps: 1,
    sign: -1,
  },
  {
    columns: ['time_utc', 'voltage', 'current'],
    hours: (row) => stamp_h(row[0] ?? ''),
    volts: 1,
    amps: 2,
    sign: -1,
  },
];

/** Every file of a folder: a run, a rest curve, or skipped with the reason. @throws Error when there is no such folder */
export function measuredFiles(folder: string): (MeasuredRun | MeasuredCurve | SkippedFile)[] {
  return readdirSync(folder)
    .filter((name) => !/\.md$/i.test(name))
    .sort()
    .map((file) =>
      /\.csv$/i.test(file)
        ? measuredFile(file, readFileSync(join(folder, file), 'utf8'))
        : { kind: 'skipped', file, because: 'not a .csv file' },
    );
}

/** One file read by its columns. */
export function measuredFile(file: string, text: string): MeasuredRun | MeasuredCurve | SkippedFile {
  const skipped = (because: string): SkippedFile => ({ kind: 'skipped', file, because });
  const [head, ...rows] = text
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) => line.split(','));
  if (!head) return skipped('it is empty');
  const columns = head.map((name) =>
    name
      .replace(/^\uFEFF/, '')
      .trim()
      .toLowerCase(),
  );
  const chemistry = chemistryIn(file);
  if (!chemistry) return skipped('its name says no kind of battery (agm, gel, flooded, lfp)');
  if (columns.join() === 'soc,ocv_v') {
    const points = rows
      .map((row) => [100 * Number(row[0]), Number(row[1])] as const)
      .filter(([pct, volts]) => Number.isFinite(pct) && Number.isFinite(volts))
      .sort((a, b) => a[0] - b[0]);
    if (points.length < 10) return skipped('it has fewer than ten points');
    const cells = seriesOf(chemistry, Math.max(...points.map(([, volts]) => volts)));
    return {
      kind: 'rest curve',
      file,
      chemistry,
      charge_pct: Float64Array.from(points, ([pct]) => pct),
      volts: Float64Array.from(points, ([, volts]) => volts * cells),
    };
  }
  const form = forms.find((each) => each.columns.every((name, i) => columns[i] === name));
  if (!form) return skipped(`its columns are not known: ${columns.join(', ')}`);
  const size = /(\d+(?:\.\d+)?)\s*ah/i.exec(file);
  if (!size) return skipped('its name gives no size (17ah, 2ah)');
  const read: { h: number; v: number; a: number }[] = [];
  const heats: number[] = [];
  for (const row of rows) {
    const cell = (at: number) => {
      const field = row[at]?.trim() ?? '';
      return field === '' ? Number.NaN : Number(field);
    };
    if (form.heat !== undefined && Number.isFinite(cell(form.heat))) heats.push(cell(form.heat));
    const each = { h: form.hours(row), v: cell(form.volts), a: form.sign * cell(form.amps) };
    if (Number.isFinite(each.h) && Number.isFinite(each.v) && Number.isFinite(each.a)) read.push(each);
  }
  read.sort((a, b) => a.h - b.h);
  if (read.length < 10) return skipped('it has fewer than ten rows with time, volts and current');
  const inSeries = seriesOf(chemistry, Math.max(...read.map(({ v }) => v)));
  const named_C = /(-?\d+)\s*deg/i.exec(file);
  const start = read[0]!.h;
  return {
    kind: 'run',
    file,
    chemistry,
    nominal_Ah: Number(size[1]),
    hours: Float64Array.from(read, ({ h }) => h - start),
    volts: Float64Array.from(read, ({ v }) => v * inSeries),
    amps: Float64Array.from(read, ({ a }) => a),
    battery_C: heats.length > 0 ? mean(heats) : named_C ? Number(named_C[1]) : 23,
    inSeries,
  };
}

const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;

function chemistryIn(file: string): Chemistry | null {
  if (/lfp|lifepo4/i.test(file)) return 'lifepo4';
  for (const each of ['agm', 'gel', 'flooded'] as const) if (file.toLowerCase().includes(each)) return each;
  return null;
}

/** Cells of one file that make a battery of about 12 V; 1 when the file is one already. */
const seriesOf = (chemistry: Chemistry, most_V: number) => (most_V > 6 ? 1 : chemistry === 'lifepo4' ? 4 : 6);

/** The part of a run in which it is let down to the cut-off under load. */
export interface Discharge {
  /** first and last row; the last is the first at or under the cut-off */
  readonly first: number;
  readonly last: number;
  /** taken out since `first`, at each row from it on. [Ah] */
  readonly out_Ah: Float64Array;
  /** usual current while it flows. [A] */
  readonly amps: number;
  /** volts it was let down to: the cut-off, or where the run stopped a little above it */
  readonly to_V: number;
}

/** A run that stops this little above the cut-off still counts: the end is steep. [V] */
const nearCutOff_V = 0.2;

const cutOffOfRun_V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 10 : 10.8);

/**
 * The discharge of a run that ends at the cut-off (10.8 V of lead, 2.5 V a cell of LiFePO4), pauses within it included; or
 * why there is none.
 */
export function dischargeOf(run: MeasuredRun): Discharge | { readonly none: string } {
  const { hours, volts, amps, nominal_Ah, chemistry } = run;
  const cutOff = cutOffOfRun_V(chemistry);
  const flowing = (i: number) => amps[i]! > 0.01 * nominal_Ah;
  let last = -1;
  for (let i = 1; i < hours.length; i++)
    if (flowing(i) && volts[i]! <= cutOff) {
      last = i;
      break;
    }
  if (last < 0) {
    // the lowest under load, when the run stops there
    let lowest = -1;
    for (let i = 0; i < hours.length; i++) if (flowing(i) && (lowest < 0 || volts[i]! <= volts[lowest]!)) lowest = i;
    if (lowest < 0 || volts[lowest]! > cutOff + nearCutOff_V)
      return { none: `it does not come to ${cutOff} V under load` };
    last = lowest;
  }
  // back to where it was last charged, or to the start of the file
  let first = last;
  while (first > 0 && amps[first - 1]! > -0.01 * nominal_Ah) first--;
  while (first < last && !flowing(first)) first++;
  const out_Ah = new Float64Array(last - first + 1);
  const strengths: number[] = [];
  for (let i = first + 1; i <= last; i++) {
    out_Ah[i - first] = out_Ah[i - first - 1]! + ((amps[i]! + amps[i - 1]!) / 2) * (hours[i]! - hours[i - 1]!);
    if (flowing(i)) strengths.push(amps[i]!);
  }
  strengths.sort((a, b) => a - b);
  if (strengths.length < 12) return { none: 'it has fewer than twelve rows under load' };
  const [weak, strong] = [0.1, 0.9].map((share) => strengths[Math.floor(share * strengths.length)]!) as [
    number,
    number,
  ];
  if (strong > 1.3 * weak)
    return { none: `its current is not that of one lamp: ${weak.toFixed(2)} to ${strong.toFixed(2)} A` };
  return { first, last, out_Ah, amps: strengths[strengths.length >> 1]!, to_V: Math.max(cutOff, volts[last]!) };
}
