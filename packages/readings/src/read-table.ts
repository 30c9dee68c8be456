/** A table in text read into columns of readings, as the keeper said what stands where. */
import Papa from 'papaparse';
import { readFigureText } from './figure-text.ts';
import { gather, type OrderedReadings, type ReadingLimits } from './ordered-readings.ts';
import type { ReadColumn } from './reading-columns.ts';
import { type FaultTally, faultList } from './row-faults.ts';
import { rowsOf, type Separator, type TableLook } from './table-look.ts';
import { readTime, shown, type TimeForm, timeExamples } from './time-text.ts';
import { type ZoneClock, zoneClock } from './zone-clock.ts';

/** What stands where. Columns are counted from 0. */
export interface TablePlan {
  readonly separator: Separator;
  readonly headRows: number;
  readonly decimal: '.' | ',';
  readonly time: {
    readonly column: number;
    /** where the time of day stands by itself; null: with the date */
    readonly clockColumn: number | null;
    readonly form: TimeForm;
    /** IANA name of the zone that times without one are in */
    readonly zone: string;
  };
  readonly volts: { readonly column: number; readonly unit: 'V' | 'mV' };
  readonly current: {
    readonly column: number;
    readonly unit: 'A' | 'mA';
    /** which way a figure over nought flows */
    readonly positive: 'out of the battery' | 'into the battery';
  } | null;
  readonly air: { readonly column: number; readonly unit: '°C' | '°F' } | null;
}

export interface ReadFile extends OrderedReadings {
  readonly faults: FaultTally;
  /** rows or sentences that should hold a reading */
  readonly rows: number;
}

/** Characters read at a time, between two tellings of how far it is. */
const piece = 1_000_000;

/**
 * Reads a whole table.
 * @param told  called now and then with the share that is read, 0–1
 */
export function readTable(
  text: string,
  plan: TablePlan,
  limits: ReadingLimits,
  told: (share: number) => void = () => {},
): ReadFile {
  const faults = faultList();
  const readings = gather(columnsOf(plan), limits, faults);
  const read = rowReader(plan, readings.add, faults.add);
  let row = 0;
  let rows = 0;
  const config = {
    delimiter: plan.separator,
    chunkSize: piece,
    chunk({ data, meta }: { readonly data: string[][]; readonly meta: { readonly cursor: number } }) {
      for (const cells of data) {
        row++;
        // an empty line is no row; most files end with one
        if (row <= plan.headRows || (cells.length === 1 && cells[0]!.trim() === '')) continue;
        rows++;
        read(row, cells);
      }
      told(Math.min(1, meta.cursor / Math.max(1, text.length)));
    },
  };
  Papa.parse<string[]>(text, config);
  const ordered = readings.inOrder();
  return { ...ordered, faults: faults.tally(), rows };
}

const columnsOf = ({ current, air }: TablePlan): ReadColumn[] => [
  'volts',
  ...(current === null ? [] : (['current'] as const)),
  ...(air === null ? [] : (['air'] as const)),
];

type Add = ReturnType<typeof gather>['add'];
type Fault = ReturnType<typeof faultList>['add'];

/** What reads one row. */
function rowReader(plan: TablePlan, add: Add, fault: Fault): (row: number, cells: readonly string[]) => void {
  const { time, volts, current, air, decimal } = plan;
  const clocks = zoneClock(time.zone);
  const least = Math.max(time.column, time.clockColumn ?? 0, volts.column);
  let last = Number.NEGATIVE_INFINITY;
  return (row, cells) => {
    const refuse = (wrong: string, right: string) => fault({ row, lost: 'row', wrong, right });
    if (cells.length <= least)
      return refuse(
        `it has ${cells.length === 1 ? 'one field' : `${cells.length} fields`}, ‘${shown(cells.join(plan.separator))}’`,
        `at least ${least + 1} fields, as the other rows have`,
      );
    const written =
      time.clockColumn === null
        ? cells[time.column]!
        : `${cells[time.column]!.trim()} ${cells[time.clockColumn]!.trim()}`;
    const read = instantOf(written, time.form, clocks, last);
    if (typeof read !== 'number') return refuse(read.wrong, read.right ?? `a time such as ${timeExamples[time.form]}`);
    last = read;
    const figure = (column: number, name: string, example: string): number | null => {
      const value = readFigureText(cells[column] ?? '', decimal);
      if (value === undefined) return Number.NaN;
      if (value === null) {
        const lost = name === 'volts' ? 'row' : 'figure';
        fault({
          row,
          lost,
          wrong: `the ${name} ‘${shown(cells[column]!.trim())}’ are no figure`.replace(
            /^the (current|air)(.*) are/,
            'the $1$2 is',
          ),
          right: `a figure such as ${decimal === ',' ? example.replace('.', ',') : example}, or nothing where nothing was read`,
        });
        return null;
      }
      return value;
    };
    const read_V = figure(volts.column, 'volts', volts.unit === 'V' ? '12.45' : '12450');
    if (read_V === null) return;
    const read_A = current === null ? Number.NaN : (figure(current.column, 'current', '1.2') ?? Number.NaN);
    const read_C = air === null ? Number.NaN : (figure(air.column, 'air', '18.5') ?? Number.NaN);
    add(
      row,
      read,
      volts.unit === 'V' ? read_V : read_V / 1000,
      (current?.unit === 'mA' ? read_A / 1000 : read_A) * (current?.positive === 'into the battery' ? -1 : 1),
      air?.unit === '°F' ? ((read_C - 32) * 5) / 9 : read_C,
    );
  };
}

/** The instant of a time; of one that the clocks show twice, the first that is not before the row above. */
function instantOf(
  written: string,
  form: TimeForm,
  clocks: ZoneClock,
  last: number,
): number | { readonly wrong: string; readonly right?: string } {
  const time = readTime(written, form);
  if (time.kind === 'refused') return time;
  if (time.kind === 'instant') return time.at;
  const instants = clocks(time.wall_ms);
  if (instants.length === 0)
    return {
      wrong: `‘${shown(written)}’ was skipped when the clocks went forward`,
      right: 'a time that the clocks of the zone showed; the logger may have been on UTC',
    };
  return instants.find((instant) => instant >= last) ?? instants[0]!;
}

/** What is wrong with a plan, by what it is about; nothing where it can be read. */
export type PlanFaults = Partial<Record<'time' | 'clock' | 'form' | 'volts' | 'current' | 'air', string>>;

/** Rows a plan is tried on. */
const triedRows = 300;

/**
 * Tries a plan on the first rows of a text: a column that holds something else is told by what stands in it, with the one
 * that looks right.
 */
export function planFaults(text: string, look: TableLook, plan: TablePlan, limits: ReadingLimits): PlanFaults {
  const body = rowsOf(text, plan.separator, plan.headRows + triedRows)
    .slice(plan.headRows)
    .filter((row) => row.length > 1);
  const found: PlanFaults = {};
  const name = (n: number) => `‘${look.columns[n]?.name ?? `column ${n + 1}`}’`;
  const likely = (what: 'time' | 'clock' | ReadColumn, but: number) => {
    const other = look.columns.findIndex(({ guess }, n) => guess === what && n !== but);
    return other < 0 ? '' : ` ${name(other)} looks right.`;
  };
  const some = (n: number) =>
    body
      .slice(0, 3)
      .map((row) => row[n]?.trim() || 'nothing')
      .join(', ');
  const clocks = zoneClock(plan.time.zone);
  const times = body.map((row) => {
    const { column, clockColumn } = plan.time;
    return clockColumn === null
      ? (row[column] ?? '')
      : `${(row[column] ?? '').trim()} ${(row[clockColumn] ?? '').trim()}`;
  });
  const readTimes = times.map((written) => instantOf(written, plan.time.form, clocks, Number.NEGATIVE_INFINITY));
  const asTimes = readTimes.filter((time) => typeof time === 'number');
  if (asTimes.length * 2 < body.length)
    found.time = `${name(plan.time.column)} holds ${some(plan.time.column)}: no times such as ${timeExamples[plan.time.form]}.${likely('time', plan.time.column)}`;
  else if (asTimes.filter((at) => at > limits.now + 86_400_000).length * 2 > body.length)
    found.form = `So read, the times lie ahead, from ${new Date(asTimes[0]!).toISOString().slice(0, 10)}. See which comes first, day or month.`;
  const figures = (column: number) =>
    body.flatMap((row) => {
      const value = readFigureText(row[column] ?? '', plan.decimal);
      return typeof value === 'number' ? value : [];
    });
  const taken = new Map<number, string>([[plan.time.column, 'the time']]);
  const check = (
    what: ReadColumn,
    column: number,
    scale: number,
    [low, high]: readonly [number, number],
    unit: string,
  ) => {
    const other = taken.get(column);
    taken.set(column, `the ${what}`);
    const values = figures(column).map((value) => value * scale);
    const right = values.filter((value) => value >= low && value <= high).length;
    if (other !== undefined) found[what] = `${name(column)} is taken as ${other} already.${likely(what, column)}`;
    else if (values.length * 2 < body.length && (what === 'volts' || values.length === 0))
      found[what] = `${name(column)} holds ${some(column)}: no figures.${likely(what, column)}`;
    else if (right * 2 < values.length) {
      const [least, most] = [Math.min(...values), Math.max(...values)].map((value) => Number(value.toPrecision(4)));
      found[what] =
        `${name(column)} runs from ${least} to ${most} ${unit}; ${what} here lie from ${low} to ${high} ${unit}. Is it another column, or another unit?${likely(what, column)}`;
    }
  };
  check('volts', plan.volts.column, plan.volts.unit === 'V' ? 1 : 0.001, limits.volts, 'V');
  if (plan.current) check('current', plan.current.column, plan.current.unit === 'A' ? 1 : 0.001, [-1000, 1000], 'A');
  if (plan.air) check('air', plan.air.column, 1, plan.air.unit === '°C' ? [-60, 60] : [-76, 140], plan.air.unit);
  return found;
}
