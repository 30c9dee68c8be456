/** What is filled in of a load test, read into what the book takes: what was wrong is refused under its own name. */
import type { BatteryRecord, Id, OperationFields } from '#boat-book';
import { addDays, instantAt, minuteOfClock } from '#units';
import { type Faults, formReading } from '../../../parts/read-form.ts';

/** A line of the test: the clock at the boat, and what the meter showed. */
export interface TestLine {
  readonly clock: string;
  readonly volts: string;
}

export interface LoadTestDraft {
  /** a circuit's id, `watts`, or nothing chosen yet */
  readonly load: string;
  readonly watts: string;
  /** the day it was switched on */
  readonly day: string;
  readonly start: TestLine;
  /** all had been off for hours before, and the panel dark */
  readonly rested: boolean;
  readonly lines: readonly TestLine[];
  readonly air: string;
  readonly note: string;
}

export type TestField = 'load' | 'watts' | 'day' | 'clock' | 'volts' | 'air' | `clock ${number}` | `volts ${number}`;

/** Nobody reads a meter all night and the day after: a line later than this is a slip of the clock. [h] */
const longest_h = 24;

/**
 * @param zone  of the boat
 * @param now   epoch ms: nothing is read in the time to come
 * @returns     the fields of `enterLoadTest`, or what was refused
 *
 * A line whose clock is not after the one before it is the next day's. Lines left wholly empty are passed over.
 */
export function readLoadTest(
  draft: LoadTestDraft,
  { nominal_V }: Pick<BatteryRecord, 'nominal_V'>,
  battery: Id,
  zone: string,
  now: number,
):
  | { readonly kind: 'sound'; readonly fields: OperationFields<'enterLoadTest'> }
  | { readonly kind: 'refused'; readonly faults: Faults<TestField> } {
  const form = formReading<TestField>();
  const scale = nominal_V / 12;
  const limits = { min: 8 * scale, max: 16.5 * scale, unit: 'V' };
  const load = form.chosen('load', draft.load, 'Choose what drew.');
  const watts = load === 'watts' ? form.figure('watts', draft.watts, { min: 0.1, max: 10_000, unit: 'W' }) : null;
  const day = form.day('day', draft.day);
  const air_C = form.figureOrNone('air', draft.air, { min: -30, max: 50, unit: '°C' });
  const read: { readonly at: number; readonly volts: number }[] = [];
  let on = day;
  let before: string | null = null;
  const take = (line: TestLine, clockField: TestField, voltsField: TestField) => {
    const clock = form.clock(clockField, line.clock);
    const volts = form.figure(voltsField, line.volts, limits);
    if (!form.sound()) return;
    if (before !== null && minuteOfClock(clock) <= minuteOfClock(before)) on = addDays(on, 1);
    before = clock;
    const at = instantAt(on, clock, zone);
    const first = read[0]?.at ?? at;
    if (at > now) form.refuse(clockField, `${clock} on ${on} is still to come. Give the time it was read.`);
    else if (at - first > longest_h * 3_600_000)
      form.refuse(
        clockField,
        `${clock} would be more than ${longest_h} hours after the start. Give a time after the line before.`,
      );
    read.push({ at, volts });
  };
  take(draft.start, 'clock', 'volts');
  draft.lines.forEach((line, i) => {
    if (line.volts.trim() !== '') take(line, `clock ${i}`, `volts ${i}`);
  });
  if (form.sound() && read.length < 2)
    form.refuse('volts 0', 'There is no reading under load. Give one at least, an hour or more after the start.');
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  const circuit = load === 'watts' ? null : load;
  return {
    kind: 'sound',
    fields: {
      battery,
      circuit,
      watts,
      note: draft.note.trim(),
      readings: read.map(({ at, volts }, i) => ({
        battery,
        at: new Date(at).toISOString(),
        volts,
        current_A: null,
        air_C,
        circumstance: i > 0 ? 'under load' : draft.rested ? 'rested' : 'not said',
        on: i > 0 && circuit !== null ? [circuit] : [],
        panelDark: i > 0 || draft.rested ? true : null,
        by: 'hand',
      })),
    },
  };
}

/** The clock an hour on. */
export function hourAfter(clock: string): string {
  if (!/^\d\d:\d\d/.test(clock)) return '';
  const [hours, minutes] = clock.split(':') as [string, string];
  return `${String((Number(hours) + 1) % 24).padStart(2, '0')}:${minutes}`;
}
