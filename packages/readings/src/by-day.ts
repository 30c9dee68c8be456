/** Readings day by day or month by month: the drawing in words. */
import { addDays, type Day, instantAt, localAt } from '#units';
import type { ReadingColumns } from './reading-columns.ts';

export interface DayOfReadings {
  /** the day, or the first of the month */
  readonly day: Day;
  readonly count: number;
  /** null: no volts were read. [V] */
  readonly volts: { readonly least: number; readonly most: number; readonly last: number } | null;
}

export interface ReadingsByDay {
  readonly by: 'day' | 'month';
  readonly days: readonly DayOfReadings[];
}

/** More days than this are told by the month. */
const mostDays = 62;

/** What was read of each day, or of each month where there are many days. Days are those of the zone. */
export function readingsByDay({ at, volts }: ReadingColumns, zone: string): ReadingsByDay {
  if (at.length === 0) return { by: 'day', days: [] };
  const first = localAt(at[0]!, zone).day;
  const last = localAt(at.at(-1)!, zone).day;
  const by = at.at(-1)! - at[0]! > mostDays * 86_400_000 ? 'month' : 'day';
  const days: DayOfReadings[] = [];
  let i = 0;
  for (let day: Day = by === 'day' ? first : firstOf(first); day <= last; ) {
    const next = by === 'day' ? addDays(day, 1) : firstOf(addDays(day, 31));
    const end = instantAt(next, '00:00', zone);
    let count = 0;
    let [least, most, latest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN];
    for (; i < at.length && at[i]! < end; i++) {
      count++;
      const value = volts === null ? Number.NaN : volts[i]!;
      if (Number.isNaN(value)) continue;
      least = Math.min(least, value);
      most = Math.max(most, value);
      latest = value;
    }
    if (count > 0) days.push({ day, count, volts: Number.isNaN(latest) ? null : { least, most, last: latest } });
    day = next;
  }
  return { by, days };
}

const firstOf = (day: Day): Day => `${day.slice(0, 8)}01` as Day;
