import type { Courses } from './circuit-model.ts';
import type { Fitting } from './fitting.ts';
import { copyDraw, type Draws, emptyDraws } from './priors.ts';

/** Batteries that may be the one looked at, and what each comes to in a history and would have shown. Rows are batteries. */
export interface Batteries {
  readonly size: number;
  /** standard normal unknowns, rows of `dimensions` */
  readonly zs: Float64Array;
  readonly draws: Draws;
  /** rows of stretches */
  readonly courses: Courses;
  /** volts each would have shown, rows of readings, and the spread of a reading's own error */
  readonly shown: Float64Array;
  readonly error: Float64Array;
  /** what each reading takes off the odds, as a factor; and the logarithm of the odds of all */
  readonly less: Float64Array;
  readonly ofReadings: Float64Array;
}

export function emptyBatteries({ dimensions, stretches, said_V }: Fitting, size: number): Batteries {
  const rowsOf = (width: number) => new Float64Array(size * width);
  const { count } = stretches;
  return {
    size,
    zs: rowsOf(dimensions),
    draws: emptyDraws(size),
    courses: { amps: rowsOf(count), hand: rowsOf(count), rest: rowsOf(count), surface_V: rowsOf(count) },
    shown: rowsOf(said_V.length),
    error: rowsOf(said_V.length),
    less: rowsOf(said_V.length),
    ofReadings: rowsOf(1),
  };
}

/** Makes row `n` what row `from` of `others` is; what it comes to and shows, from a stretch and a reading on. */
export function copyBattery(
  others: Batteries,
  from: number,
  into: Batteries,
  n: number,
  stretch: number,
  reading: number,
): void {
  copyRow(others.zs, others.size, from, into.zs, n, 0);
  copyDraw(others.draws, from, into.draws, n);
  const [was, is] = [others.courses, into.courses];
  copyRow(was.amps, others.size, from, is.amps, n, stretch);
  copyRow(was.hand, others.size, from, is.hand, n, stretch);
  copyRow(was.rest, others.size, from, is.rest, n, stretch);
  copyRow(was.surface_V, others.size, from, is.surface_V, n, stretch);
  copyRow(others.shown, others.size, from, into.shown, n, reading);
  copyRow(others.error, others.size, from, into.error, n, reading);
  copyRow(others.less, others.size, from, into.less, n, reading);
  into.ofReadings[n] = others.ofReadings[from]!;
}

function copyRow(from: Float64Array, rows: number, row: number, to: Float64Array, n: number, first: number): void {
  const width = from.length / rows;
  for (let i = first; i < width; i++) to[n * width + i] = from[row * width + i]!;
}
