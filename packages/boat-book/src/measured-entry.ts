/** What the log says of something measured: one entry, about the thing it was measured on. */
import type { Edit } from './edit.ts';
import type { HoistForceRecord } from './hoist-records.ts';
import { correcting, logged, type NewLogEntry } from './log-entry.ts';
import type { LoadTest, ReadingBlock, ReadingRecord } from './power-records.ts';
import type { Id } from './records.ts';
import type { StayReading } from './rig-records.ts';
import type { BallWeighing } from './trailer-records.ts';

type Measured = Pick<NewLogEntry, 'text' | 'at' | 'of'>;

/** Writes that it was measured. */
export const logMeasured = (edit: Edit, measured: Measured): Id => logged(edit, { kind: 'measured', ...measured });

/** Writes that a measurement was taken out of the book, and takes back the entry that told of it alone. */
export function logTakenOut(edit: Edit, measured: Measured): void {
  const { of, text } = measured;
  const matches = correcting(
    edit,
    (entry) => entry.kind === 'measured' && entry.of?.id === of?.id && entry.text === text && entry.at === measured.at,
  );
  logged(edit, { kind: 'taken back', ...(of === undefined ? {} : { of }), text: `Taken out: ${text}`, ...matches });
}

const ofBattery = (id: Id) => ({ collection: 'batteries' as const, id });
const volts = (value: number): string => `${value.toFixed(2)} V`;

/** `The battery: 12.55 V, rested, 9 °C`; of several, from the lowest to the highest. */
export function readingsMeasured(edit: Edit, battery: Id, readings: readonly ReadingRecord[]): Measured {
  const { name } = edit.need('batteries', battery, 'battery');
  const [only] = readings;
  const all = readings.map((reading) => reading.volts);
  const words =
    readings.length === 1 && only !== undefined
      ? [
          volts(only.volts),
          ...(only.circumstance === 'not said' ? [] : [only.circumstance]),
          ...(only.current_A === null ? [] : [`${only.current_A} A`]),
          ...(only.air_C === null ? [] : [`${only.air_C} °C`]),
        ].join(', ')
      : `${readings.length} readings, ${volts(Math.min(...all))} to ${volts(Math.max(...all))}`;
  return { of: ofBattery(battery), at: readings.at(-1)?.at ?? edit.now, text: `${name}: ${words}` };
}

export function blockMeasured(edit: Edit, { battery, count, file, to }: ReadingBlock): Measured {
  const { name } = edit.need('batteries', battery, 'battery');
  return { of: ofBattery(battery), at: to, text: `${name}: ${count} readings from ‘${file}’` };
}

export function loadTestMeasured(
  edit: Edit,
  { battery, circuit, watts, note }: Omit<LoadTest, 'readings'>,
  readings: readonly ReadingRecord[],
): Measured {
  const { name } = edit.need('batteries', battery, 'battery');
  const [first, last] = [readings[0], readings.at(-1)];
  const load = circuit === null ? `${watts} W` : (edit.find('circuits', circuit)?.name ?? 'a circuit');
  const span =
    first === undefined || last === undefined
      ? ''
      : `, ${volts(first.volts)} to ${volts(last.volts)} in ${Math.round((Date.parse(last.at) - Date.parse(first.at)) / 60_000)} min`;
  return {
    of: ofBattery(battery),
    at: last?.at ?? edit.now,
    text: `${name}: load test with ${load}${span}${note === '' ? '' : `. ${note}`}`,
  };
}

export function stayMeasured(edit: Edit, { stay, on, moment, told, turns, note }: StayReading): Measured {
  const { name } = edit.need('stays', stay, 'stay');
  const what =
    told.kind === 'stretch'
      ? `${told.stretch_mm} mm of stretch over ${told.measured_m} m`
      : told.kind === 'pull'
        ? `${told.aside_mm} mm aside under ${told.pull_N} N`
        : `slack, ${told.sway_mm} mm to either side`;
  const turned = turns === 0 ? '' : `, after ${Math.abs(turns)} ${turns > 0 ? 'turns tighter' : 'turns easier'}`;
  return {
    of: { collection: 'stays', id: stay },
    at: edit.momentOn(on),
    text: `${name}: ${what}${turned}, ${moment}${note === '' ? '' : `. ${note}`}`,
  };
}

export function hoistMeasured(
  edit: Edit,
  { hoist, at, handling, hand_N, foretold_N, note }: HoistForceRecord,
): Measured {
  const { name } = edit.need('boardHoists', hoist, 'hoist');
  return {
    of: { collection: 'boardHoists', id: hoist },
    at,
    text: `${name}: ${Math.round(hand_N)} N by hand ${handling}, ${Math.round(foretold_N)} N foretold${note === '' ? '' : `. ${note}`}`,
  };
}

export function ballMeasured(
  edit: Edit,
  { trailer, at, scale_kg, arm_mm, beam_mm, told_kg, note }: Omit<BallWeighing, 'order'>,
): Measured {
  const { name } = edit.need('trailers', trailer, 'trailer');
  const ball_kg = (scale_kg * beam_mm) / arm_mm;
  return {
    of: { collection: 'trailers', id: trailer },
    at,
    text: `${name}: ${ball_kg.toFixed(1)} kg on the ball by the scale, ${told_kg.toFixed(1)} kg by the table${note === '' ? '' : `. ${note}`}`,
  };
}
