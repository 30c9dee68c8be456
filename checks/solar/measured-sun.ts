/**
 * Measured sun, as files in the forms of the data folder's README. A file is known by its first lines; every form comes out
 * as the same lists: the span of each row, and watts on a square metre.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type StationPlace, stationsFromMemory, stationsToldIn } from './stations.ts';

/** One file of measurements. Lists of one length; NaN where a value is missing. */
export interface MeasuredSun {
  readonly kind: 'sun';
  readonly file: string;
  readonly place: StationPlace;
  /** middle of each row's span. [ms] */
  readonly at: Float64Array;
  readonly step_min: number;
  /** on a level square metre. [W/m²] */
  readonly global: Float64Array;
  /** square to the beam, and from the sky without the sun. [W/m²]; null: not in the file */
  readonly beam: Float64Array | null;
  readonly sky: Float64Array | null;
  /** cloud seen by an observer, of ten; null: not in the file */
  readonly cloud_tenths: Float64Array | null;
  /** a typical year is put together from years and mostly modelled from the cloud that was seen */
  readonly typicalYear: boolean;
}

export interface SkippedFile {
  readonly kind: 'skipped';
  readonly file: string;
  readonly because: string;
}

/** One row of any form. `end` is the end of its span. [ms] */
interface Row {
  readonly end: number;
  readonly global: number;
  readonly beam?: number;
  readonly sky?: number;
  readonly cloud_tenths?: number;
}

/** What a form's reader makes of a file. */
interface FileRead {
  readonly rows: readonly Row[];
  /** where the file itself says that it stood */
  readonly place: StationPlace | null;
  readonly station: string | null;
  readonly typicalYear?: true;
}
type Form = (
  text: string,
  file: string,
  longitude_deg: number | null,
) => FileRead | { readonly because: string } | null;

/** Every file of a folder: sun, or skipped with the reason. @throws Error when there is no such folder */
export function measuredSuns(folder: string): (MeasuredSun | SkippedFile)[] {
  const names = readdirSync(folder).sort();
  const told = new Map(
    names
      .filter((name) => /\.md$/i.test(name))
      .flatMap((name) => [...stationsToldIn(readFileSync(join(folder, name), 'utf8'))]),
  );
  return names
    .filter((name) => !/\.md$/i.test(name))
    .map((file) => measuredSun(file, readFileSync(join(folder, file), 'utf8'), told.get(file) ?? null));
}

/**
 * One file read by its form.
 *
 * @param told  where the folder's README says it stood; null: it does not say
 */
export function measuredSun(file: string, text: string, told: StationPlace | null): MeasuredSun | SkippedFile {
  const skipped = (because: string): SkippedFile => ({ kind: 'skipped', file, because });
  const known = told ?? stationsFromMemory(file);
  for (const form of forms) {
    const read = form(text, file, known?.longitude_deg ?? null);
    if (read === null) continue;
    if ('because' in read) return skipped(read.because);
    const place = read.place ?? told ?? stationsFromMemory(`${file} ${read.station ?? ''}`);
    if (place === null)
      return skipped(
        'where it stood is not known: a README beside it with its name and `37.70 N, 105.92 W, 2317 m` would do',
      );
    const rows = [...read.rows].sort((a, b) => a.end - b.end);
    if (rows.length < 12) return skipped('it has fewer than twelve rows with a time');
    const step_min = usualStep_min(rows);
    const list = (pick: (row: Row) => number | undefined) => {
      const values = Float64Array.from(rows, (row) => measuredOr(pick(row)));
      return values.some(Number.isFinite) ? values : null;
    };
    const global = list((row) => row.global);
    if (global === null) return skipped('no row holds the sun on a level surface');
    return {
      kind: 'sun',
      file,
      place: { ...place, skyTold: told?.skyTold ?? place.skyTold },
      at: Float64Array.from(rows, ({ end }) => end - (step_min * 60_000) / 2),
      step_min,
      global,
      beam: list((row) => row.beam),
      sky: list((row) => row.sky),
      cloud_tenths: list((row) => row.cloud_tenths),
      typicalYear: read.typicalYear ?? false,
    };
  }
  return skipped('its form is not known');
}

/** A value, or NaN: the forms write what is missing as −9999.9, −7999, −9900 or −999, or leave it out. */
const measuredOr = (value: number | undefined) =>
  value === undefined || !Number.isFinite(value) || value <= -900 ? Number.NaN : value;

function usualStep_min(rows: readonly Row[]): number {
  const steps = rows.slice(1).map(({ end }, i) => (end - rows[i]!.end) / 60_000);
  return steps.filter((step) => step > 0).sort((a, b) => a - b)[steps.length >> 1] ?? 1;
}

const lines = (text: string) => text.split(/\r?\n/).filter((line) => line.trim() !== '');
/** An empty cell is missing, not nought. */
const figure = (cell: string | undefined) => (cell === undefined || cell.trim() === '' ? Number.NaN : Number(cell));

/** Three heads of one line each, then figures by spaces; quality 0 is good. Minutes as averages up to the time, in UTC. */
const surfrad: Form = (text, _, __) => {
  const [name, where, ...rest] = lines(text);
  const at = /^\s*(-?[\d.]+)\s+(-?[\d.]+)\s+(-?[\d.]+)\s*m\b/.exec(where ?? '');
  if (!name || !at) return null;
  const rows = rest.flatMap((line): Row[] => {
    const cells = line.trim().split(/\s+/).map(Number);
    if (cells.length < 16) return [];
    const good = (token: number) => (cells[token + 1] === 0 ? cells[token]! : Number.NaN);
    const end = Date.UTC(cells[0]!, cells[2]! - 1, cells[3]!, cells[4]!, cells[5]!);
    return Number.isFinite(end) ? [{ end, global: good(8), beam: good(12), sky: good(14) }] : [];
  });
  const [latitude, west, elevation] = at.slice(1).map(Number) as [number, number, number];
  return {
    rows,
    place: { latitude_deg: latitude, longitude_deg: -west, elevation_m: elevation, skyTold: null },
    station: null,
  };
};

/** A head of station, year and pairs of code and flag; then day of year, time up to 2400 at UTC−8, pairs of value and flag. */
const srml: Form = (text) => {
  const [head, ...rest] = lines(text).map((line) => line.trim().split(/\s+/).map(Number));
  if (!head || head.length < 4 || head.some((each) => !Number.isInteger(each)) || !(head[1]! > 1900 && head[1]! < 2200))
    return null;
  const codes = head.slice(2).filter((_, i) => i % 2 === 0);
  // 1000: level; 2010, 2011: beam; 3000: sky. 99 flags what is bad or missing
  const columnOf = (first: number) => codes.findIndex((code) => Math.floor(code / 1000) === first);
  const [level, beam, sky] = [1, 2, 3].map(columnOf) as [number, number, number];
  if (level < 0) return { because: 'it has no column of the sun on a level surface (code 1000)' };
  const rows = rest.flatMap((cells): Row[] => {
    const [day, clock] = cells as [number, number];
    if (!Number.isFinite(day) || !Number.isFinite(clock)) return [];
    const value = (column: number) =>
      column < 0 || cells[3 + 2 * column] === 99 ? Number.NaN : (cells[2 + 2 * column] ?? Number.NaN);
    const minutes = Math.floor(clock / 100) * 60 + (clock % 100);
    return [
      {
        end: Date.UTC(head[1]!, 0, day, 8) + minutes * 60_000,
        global: value(level),
        ...(beam < 0 ? {} : { beam: value(beam) }),
        ...(sky < 0 ? {} : { sky: value(sky) }),
      },
    ];
  });
  return { rows, place: null, station: String(head[0]) };
};

/** A head of station, name, state, hours from UTC, latitude, longitude, elevation; then hours that end at their time. */
const typicalYear: Form = (text) => {
  const [first, second, ...rest] = lines(text);
  if (!first || !second || !/^Date \(MM\/DD\/YYYY\),Time/i.test(second)) return null;
  const head = first.split(',').map((cell) => cell.replaceAll('"', '').trim());
  const columns = second.split(',').map((each) => each.trim());
  const column = (pattern: RegExp) => columns.findIndex((each) => pattern.test(each));
  const [level, beam, sky, cloud] = [/^GHI \(/i, /^DNI \(/i, /^DHI \(/i, /^TotCld \(/i].map(column) as [
    number,
    number,
    number,
    number,
  ];
  if (level < 0) return { because: `it has no column GHI: ${columns.join(', ')}` };
  const [zone, latitude, longitude, elevation] = head.slice(3).map(Number) as [number, number, number, number];
  const rows = rest.flatMap((line): Row[] => {
    const cells = line.split(',');
    const date = /^(\d+)\/(\d+)\/(\d+)$/.exec(cells[0]?.trim() ?? '');
    const hour = Number(cells[1]?.split(':')[0]);
    if (!date || !Number.isFinite(hour)) return [];
    const [month, day, year] = date.slice(1).map(Number) as [number, number, number];
    const of = (at: number) => (at < 0 ? Number.NaN : figure(cells[at]));
    const end = Date.UTC(year, month - 1, day, hour - zone);
    return [{ end, global: of(level), beam: of(beam), sky: of(sky), cloud_tenths: of(cloud) }];
  });
  return {
    rows,
    place: {
      latitude_deg: latitude,
      longitude_deg: longitude,
      elevation_m: elevation,
      skyTold: null,
    },
    station: head[0] ?? null,
    typicalYear: true,
  };
};

/** Hours from UTC of the clocks that the heads of American stations name. */
const clocks: Readonly<Record<string, number | null>> = {
  UTC: 0,
  GMT: 0,
  AST: -4,
  EST: -5,
  CST: -6,
  MST: -7,
  PST: -8,
  AKST: -9,
  HST: -10,
  /** local standard time: that of the longitude */
  LST: null,
};

/**
 * A head of names, then rows by commas: the time as a date and a clock, as year, day of year and HHMM, or as one stamp. Columns
 * are known by their names; sums, modelled values (`pvlib_…`) and other slopes are passed over.
 */
const named: Form = (text, file, longitude_deg) => {
  const [head, ...rest] = lines(text).map((line) => line.split(','));
  if (!head || head.length < 2) return null;
  const columns = head.map((name) =>
    name
      .replace(/^\uFEFF/, '')
      .replaceAll('"', '')
      .trim(),
  );
  const sunColumn = (...patterns: RegExp[]) => {
    for (const pattern of patterns) {
      const found = columns.findIndex(
        (name) =>
          pattern.test(name) &&
          !/pvlib|clear|accumulated|total|reflect|upwelling|temp|zenith|\buv|\bpar\b|mol/i.test(name) &&
          // where a unit stands in the name it is that of power
          (!/\[/.test(name) || /\[\s*W\s*\/\s*m/i.test(name)),
      );
      if (found >= 0) return found;
    }
    return -1;
  };
  const byName = sunColumn(
    /(^|[^a-z])ghi([^a-z]|$)/i,
    /global\s*horiz/i,
    /^global\b(?!.*(tilt|normal|latitude|poa|deg|°))/i,
  );
  // a file named for it with one column besides the time
  const level = byName < 0 && columns.length === 2 && /ghi|global/i.test(file) ? 1 : byName;
  if (level < 0) return null;
  const beam = sunColumn(/(^|[^a-z])dni([^a-z]|$)/i, /direct\s*norm/i, /^direct\b/i);
  const sky = sunColumn(/(^|[^a-z])dhi([^a-z]|$)/i, /diffuse\s*horiz/i, /^diffuse\b/i);
  const zoned = columns.findIndex((name) => name.toUpperCase() in clocks);
  const ofLongitude_h = longitude_deg === null ? null : Math.round(longitude_deg / 15);
  const zone_h = zoned >= 0 ? (clocks[columns[zoned]!.toUpperCase()] ?? ofLongitude_h) : ofLongitude_h;
  const index = (pattern: RegExp) => columns.findIndex((name) => pattern.test(name));
  const [date, year, dayOfYear] = [index(/^date\b/i), index(/^year$/i), index(/^(doy|day of year|julian day)$/i)] as [
    number,
    number,
    number,
  ];
  const endOf = (cells: readonly string[]): number => {
    const cell = (at: number) => cells[at]?.replaceAll('"', '').trim() ?? '';
    const zone_ms = (zone_h ?? Number.NaN) * 3_600_000;
    if (year >= 0 && dayOfYear >= 0 && zoned >= 0) {
      const clock = figure(cell(zoned));
      return Date.UTC(figure(cell(year)), 0, figure(cell(dayOfYear)), Math.floor(clock / 100), clock % 100) - zone_ms;
    }
    const american = date < 0 ? null : /^(\d+)\/(\d+)\/(\d+)$/.exec(cell(date));
    if (american && zoned >= 0) {
      const [month, day, of] = american.slice(1).map(Number) as [number, number, number];
      const [hours, minutes] = cell(zoned).split(':').map(Number) as [number, number];
      return Date.UTC(of, month - 1, day, hours, minutes) - zone_ms;
    }
    return stamp_ms(cell(0), zone_ms);
  };
  if (zone_h === null && !rest.some((cells) => Number.isFinite(endOf(cells))))
    return { because: 'neither its rows nor its head say what clock they are by, nor is it known where it stood' };
  const rows = rest.flatMap((cells): Row[] => {
    const end = endOf(cells);
    if (!Number.isFinite(end)) return [];
    const of = (at: number) => ({ value: figure(cells[at]?.replaceAll('"', '')) });
    return [
      {
        end,
        global: of(level).value,
        ...(beam < 0 ? {} : { beam: of(beam).value }),
        ...(sky < 0 ? {} : { sky: of(sky).value }),
      },
    ];
  });
  return { rows, place: null, station: `${file} ${columns.join(' ')}` };
};

/** `2021-04-01 12:05:00-07:00`, the same without its offset, or `4/1/2021 12:05`; NaN for anything else. */
function stamp_ms(text: string, zone_ms: number): number {
  const american = /^(\d+)\/(\d+)\/(\d{4})[ T](\d+):(\d+)/.exec(text);
  if (american) {
    const [month, day, year, hours, minutes] = american.slice(1).map(Number) as [
      number,
      number,
      number,
      number,
      number,
    ];
    return Date.UTC(year, month - 1, day, hours, minutes) - zone_ms;
  }
  const iso = /^(\d{4})-(\d\d)-(\d\d)[ T](\d+):(\d+)(?::(\d+)(?:\.\d+)?)?\s*(Z|[+-]\d\d:?\d\d)?$/i.exec(text);
  if (!iso) return Number.NaN;
  const [year, month, day, hours, minutes, seconds] = iso.slice(1, 7).map((each) => Number(each ?? 0)) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const plain = Date.UTC(year, month - 1, day, hours, minutes, seconds);
  const offset = iso[7];
  if (offset === undefined) return plain - zone_ms;
  if (/z/i.test(offset)) return plain;
  const ahead_min = Number(offset.slice(1, 3)) * 60 + Number(offset.slice(-2));
  return plain - (offset.startsWith('-') ? -1 : 1) * ahead_min * 60_000;
}

const forms: readonly Form[] = [surfrad, srml, typicalYear, named];
