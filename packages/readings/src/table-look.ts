/** A first look at a table in text: what parts its columns, where its rows begin, and what each column may be. */
import Papa from 'papaparse';
import { readFigureText } from './figure-text.ts';
import type { ReadColumn } from './reading-columns.ts';
import { readTime, type TimeForm, timeExamples } from './time-text.ts';

export const separators = [',', ';', '\t', '|'] as const;
export type Separator = (typeof separators)[number];

export interface LookedColumn {
  /** as the heading says; `column 3` where there is none */
  readonly name: string;
  /** of the first rows */
  readonly samples: readonly string[];
  /** what it may be; null: nothing that is wanted */
  readonly guess: 'time' | 'clock' | ReadColumn | null;
}

export interface TableLook {
  readonly separator: Separator;
  /** rows before the first one with figures: headings and what stands above them */
  readonly headRows: number;
  readonly decimal: '.' | ',';
  readonly columns: readonly LookedColumn[];
  /** how its times are written; null: they can be read in more than one way, or in none */
  readonly timeForm: TimeForm | null;
  /** the times say their zone, or count from 1970 */
  readonly zoned: boolean;
  readonly units: { readonly volts: 'V' | 'mV'; readonly current: 'A' | 'mA'; readonly air: '°C' | '°F' };
}

export type LookedTable =
  | { readonly kind: 'table'; readonly look: TableLook }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** Text looked at. [characters] */
const lookedAt = 100_000;
const mostRows = 400;
/** More columns than any logger writes. */
const mostColumns = 200;

/** The rows of a text, as RFC 4180 has them; the last is left out where the text was cut. */
export function rowsOf(text: string, separator: Separator, most: number): string[][] {
  const cut = text.length > lookedAt ? text.slice(0, Math.max(0, text.lastIndexOf('\n', lookedAt))) : text;
  return Papa.parse<string[]>(cut, { delimiter: separator, preview: most, skipEmptyLines: false }).data;
}

/** Some rows at the end of a text. */
function endRows(text: string, separator: Separator): string[][] {
  const end = text.slice(-20_000);
  return rowsOf(end.slice(end.indexOf('\n') + 1), separator, mostRows);
}

/**
 * @param volts  what a battery of the kind can show. [V]
 * @param given  what parts the columns, where the keeper said so; null: it is found out
 */
export function lookAtTable(
  text: string,
  volts: readonly [least: number, most: number],
  given: Separator | null = null,
): LookedTable {
  const looks = (given === null ? separators : [given]).map((separator) => ({
    separator,
    rows: rowsOf(text, separator, mostRows),
  }));
  const best = looks.map((each) => ({ ...each, score: scoreOf(each.rows) })).sort((a, b) => b.score - a.score)[0]!;
  if (best.score <= 0)
    return {
      kind: 'refused',
      wrong: 'No columns can be told apart in the file.',
      right: 'a time and volts in each row, parted by a comma, a semicolon, a tab or an upright line',
    };
  const { separator, rows } = best;
  const width = Math.min(mostColumns, usualWidth(rows));
  const headRows = headRowsOf(rows, width);
  if (headRows < 0)
    return { kind: 'refused', wrong: 'There is no row of figures in the file.', right: 'a time and volts in each row' };
  const body = rows.slice(headRows).filter((row) => row.length >= Math.min(2, width) && !blank(row));
  const heading = rows.slice(0, headRows).findLast((row) => row.length > 1 && row.some((cell) => /\p{L}/u.test(cell)));
  const units = rows.slice(0, headRows);
  const cells = Array.from({ length: width }, (_, n) => body.map((row) => row[n] ?? ''));
  const decimal = decimalOf(cells, separator);
  const named = (n: number) =>
    units
      .map((row) => row[n] ?? '')
      .join(' ')
      // `batt_mV` and `battV` are two words
      .replace(/_/g, ' ')
      .replace(/([a-z]{2})([A-Z])/g, '$1 $2')
      .trim();
  // the first rows may all be of one day: the last tell day and month apart
  const ends = endRows(text, separator).filter((row) => row.length === width);
  const shown = (value: number) => value >= volts[0] && value <= volts[1];
  const { columns, timeForm, zoned } = guessed(cells, ends, named, decimal, shown);
  return {
    kind: 'table',
    look: {
      separator,
      headRows,
      decimal,
      columns: columns.map((guess, n) => ({
        name: heading?.[n]?.trim() || `column ${n + 1}`,
        samples: cells[n]!.slice(0, 6),
        guess,
      })),
      timeForm,
      zoned,
      units: unitsOf(columns, cells, named, decimal, shown),
    },
  };
}

const blank = (row: readonly string[]): boolean => row.every((cell) => cell.trim() === '');
const anyForm = Object.keys(timeExamples) as TimeForm[];
const datedForms = ['year first', 'day first', 'month first'] as const;
const isClock = (text: string) => /^\d{1,2}:\d{2}(:\d{2}([.,]\d+)?)?(\s*[ap]\.?m\.?)?$/i.test(text.trim());
const isDate = (text: string) => datedForms.some((form) => readTime(`${text.trim()} 00:00`, form).kind !== 'refused');
const isDated = (text: string) => datedForms.some((form) => readTime(text, form).kind !== 'refused');
const isFigure = (text: string) => typeof (readFigureText(text, '.') ?? readFigureText(text, ',')) === 'number';

/** Of two ways to part the columns the better has more cells that can be read, in rows of one width; 0: none. */
function scoreOf(rows: readonly string[][]): number {
  const full = rows.filter((row) => !blank(row));
  const width = usualWidth(full);
  if (width < 2 || full.length === 0) return 0;
  const alike = full.filter((row) => row.length === width);
  let read = 0;
  let empty = 0;
  for (const row of alike)
    for (const cell of row) {
      if (cell.trim() === '') empty++;
      else if (readable(cell)) read++;
    }
  if (read === 0) return 0;
  return ((read + empty) / (alike.length * width)) * (alike.length / full.length) + Math.min(width, 8) / 1000;
}

function usualWidth(rows: readonly string[][]): number {
  const times = new Map<number, number>();
  for (const row of rows) if (!blank(row)) times.set(row.length, (times.get(row.length) ?? 0) + 1);
  return [...times].sort(([a, x], [b, y]) => y - x || b - a)[0]?.[0] ?? 0;
}

const readable = (cell: string): boolean => isFigure(cell) || isDated(cell) || isClock(cell) || isDate(cell);

/** Rows before the first that has figures or times in it and is as wide as the others; −1: there is none. */
function headRowsOf(rows: readonly string[][], width: number): number {
  return rows.findIndex((row) => row.length === width && row.filter(readable).length >= Math.min(2, width));
}

function decimalOf(cells: readonly (readonly string[])[], separator: Separator): '.' | ',' {
  if (separator === ',') {
    // inside quotes a comma may still be one
    const commas = cells.flat().filter((cell) => /^[+-]?\d+,\d+$/.test(cell.trim())).length;
    return commas * 4 > cells.flat().length ? ',' : '.';
  }
  return cells.flat().some((cell) => /^[+-]?\d+,\d+$/.test(cell.trim())) ? ',' : '.';
}

const words = {
  time: /time|date|stamp|utc|clock|zeit|datum|uhr|fecha|heure|dato|tid/i,
  volts: /volt|spann|\bu\b|\[?\(?\bm?v\b\)?\]?|bat/i,
  current: /curr|amp|strom|\bi\b|\(?\bm?a\b\)?|corr/i,
  air: /temp|air|luft|°|\bdeg|\bt\b|aire/i,
} as const;

function guessed(
  cells: readonly (readonly string[])[],
  ends: readonly (readonly string[])[],
  named: (n: number) => string,
  decimal: '.' | ',',
  batteryVolts: (volts: number) => boolean,
) {
  const columns: LookedColumn['guess'][] = cells.map(() => null);
  const share = (n: number, holds: (text: string) => boolean) => {
    const full = cells[n]!.filter((cell) => cell.trim() !== '');
    return full.length === 0 ? 0 : full.filter(holds).length / full.length;
  };
  const best = (score: (n: number) => number): number | null => {
    let found: number | null = null;
    let most = 0;
    for (let n = 0; n < cells.length; n++) {
      const each = columns[n] === null ? score(n) : 0;
      if (each > most) [found, most] = [n, each];
    }
    return found;
  };
  const says = (n: number, what: keyof typeof words) => words[what].test(named(n));

  let timeForm: TimeForm | null = null;
  let zoned = false;
  const dated = best((n) => (share(n, isDated) > 0.8 ? 1 + Number(says(n, 'time')) : 0));
  const date =
    dated === null ? best((n) => (share(n, isDate) > 0.8 && !allFigures(n) ? 1 + Number(says(n, 'time')) : 0)) : null;
  const clockColumn = date === null ? null : best((n) => (share(n, isClock) > 0.8 ? 1 : 0));
  if (dated !== null || (date !== null && clockColumn !== null)) {
    columns[dated ?? date!] = 'time';
    if (clockColumn !== null) columns[clockColumn] = 'clock';
    const both = (day: string, clock: string) => (clockColumn === null ? day : `${day.trim()} ${clock.trim()}`);
    const texts = [
      ...cells[dated ?? date!]!.map((cell, i) => both(cell, clockColumn === null ? '' : cells[clockColumn]![i]!)),
      ...ends.map((row) => both(row[dated ?? date!]!, clockColumn === null ? '' : row[clockColumn]!)),
    ];
    timeForm = formOf(texts);
    zoned = timeForm !== null && texts.some((text) => readTime(text, timeForm!).kind === 'instant');
  } else {
    const counted = best((n) => {
      const form = countedForm(figuresOf(n));
      return form === null ? 0 : 1 + 2 * Number(says(n, 'time'));
    });
    if (counted !== null) {
      columns[counted] = 'time';
      timeForm = countedForm(figuresOf(counted));
      zoned = timeForm !== 'sheet days';
    }
  }
  function figuresOf(n: number): number[] {
    return cells[n]!.flatMap((cell) => readFigureText(cell, decimal) ?? []);
  }
  function allFigures(n: number): boolean {
    return share(n, (cell) => typeof readFigureText(cell, decimal) === 'number') > 0.8;
  }
  /** a column of figures that may be it: by its heading, and by what stands in it */
  const figures = (what: ReadColumn, plausible: (value: number) => boolean) =>
    best((n) => {
      if (!allFigures(n)) return 0;
      const values = figuresOf(n);
      const right = values.filter(plausible).length / Math.max(1, values.length);
      const other = (['volts', 'current', 'air'] as const).some((else_) => else_ !== what && says(n, else_));
      return says(n, what) ? 2 + right : what === 'volts' && !other && right > 0.9 ? right : 0;
    });
  const volts = figures('volts', (v) => batteryVolts(v) || batteryVolts(v / 1000));
  if (volts !== null) columns[volts] = 'volts';
  const current = figures('current', (a) => Math.abs(a) < 1000);
  if (current !== null) columns[current] = 'current';
  const air = figures('air', (t) => t > -40 && t < 120);
  if (air !== null) columns[air] = 'air';
  return { columns, timeForm, zoned };
}

function countedForm(values: readonly number[]): TimeForm | null {
  if (values.length === 0) return null;
  const all = (low: number, high: number) => values.every((value) => value >= low && value <= high);
  // 2001 to 2100
  if (all(978e6, 4103e6)) return 'seconds';
  if (all(978e9, 4103e9)) return 'milliseconds';
  if (all(36_892, 73_051)) return 'sheet days';
  return null;
}

/** The one form in which all these can be read; of day first and month first the one that puts them in order. */
function formOf(texts: readonly string[]): TimeForm | null {
  const fit = anyForm
    .filter((form) => datedForms.includes(form as (typeof datedForms)[number]))
    .map((form) => ({ form, times: texts.map((text) => readTime(text, form)) }))
    .map(({ form, times }) => {
      const read = times.flatMap((time) =>
        time.kind === 'refused' ? [] : time.kind === 'wall' ? time.wall_ms : time.at,
      );
      const back = read.filter((time, i) => i > 0 && time < read[i - 1]!).length;
      const span = read.length > 1 ? Math.max(...read) - Math.min(...read) : 0;
      return { form, read: read.length, back, span, all: read.join() };
    });
  const most = Math.max(...fit.map(({ read }) => read));
  if (most === 0) return null;
  const fitting = fit.filter(({ read }) => read === most).sort((a, b) => a.back - b.back || a.span - b.span);
  const [one, two] = fitting;
  // with points between them the day comes first: common practice where dates are written so
  if (
    texts.every((text) => /^\d{1,2}\.\d{1,2}\./.test(text.trim())) &&
    fitting.some(({ form }) => form === 'day first')
  )
    return 'day first';
  if (!two || one!.all === two.all) return one!.form;
  // so many in a row out of order, or so much further apart, that it is no chance
  if (two.back > one!.back) return one!.form;
  return two.span > 5 * one!.span && one!.span > 0 ? one!.form : null;
}

function unitsOf(
  columns: readonly LookedColumn['guess'][],
  cells: readonly (readonly string[])[],
  named: (n: number) => string,
  decimal: '.' | ',',
  batteryVolts: (volts: number) => boolean,
): TableLook['units'] {
  const middle = (n: number) => {
    const values = cells[n]!.flatMap((cell) => readFigureText(cell, decimal) ?? []).sort((a, b) => a - b);
    return values[values.length >> 1] ?? Number.NaN;
  };
  const says = (what: ReadColumn, unit: RegExp) => {
    const n = columns.indexOf(what);
    return n >= 0 && (unit.test(named(n)) || cells[n]!.some((cell) => unit.test(cell)));
  };
  const volts = columns.indexOf('volts');
  const air = columns.indexOf('air');
  return {
    volts: says('volts', /\bmv\b|millivolt/i) || (volts >= 0 && batteryVolts(middle(volts) / 1000)) ? 'mV' : 'V',
    current: says('current', /\bma\b|milliamp/i) ? 'mA' : 'A',
    air: says('air', /°\s?f\b|\bfahr|degf|\(f\)|\bf\b/i) || (air >= 0 && middle(air) > 50) ? '°F' : '°C',
  };
}
