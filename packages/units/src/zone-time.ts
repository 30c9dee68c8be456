import { type Clock, clockOfMinute, type Day, dayNumber, minuteOfClock } from './day.ts';
import type { Instant } from './instant.ts';

const msInDay = 86_400_000;

/** A reader of local time for each zone asked about; making one is slow, using it is quick. */
const readers = new Map<string, Intl.DateTimeFormat>();

/** True for the IANA name of a time zone that this device knows ('Europe/Berlin', 'UTC'); bare offsets are not names. */
export function isTimeZone(value: unknown): value is string {
  if (typeof value !== 'string' || !/^[A-Za-z][A-Za-z0-9_+/-]*$/.test(value)) return false;
  try {
    reader(value);
    return true;
  } catch {
    return false;
  }
}

/**
 * The instant at which the clocks of a zone show a time on a day.
 *
 * @param day    YYYY-MM-DD
 * @param clock  HH:MM. A time the clocks skip in spring moves forward by what they skip (02:30 becomes 03:30); a time
 *               they show twice in autumn is the first of the two.
 * @param zone   IANA name
 * @throws RangeError when one of them is not well formed
 *
 * Source of the zones' rules: the IANA time zone database, as this device carries it (Intl).
 * Not covered: a zone that changes its clocks twice within two days.
 */
export function instantAt(day: string, clock: string, zone: string): Instant {
  const wall = dayNumber(day) * msInDay + minuteOfClock(clock) * 60_000;
  const before = offset_ms(wall - msInDay, zone);
  const after = offset_ms(wall + msInDay, zone);
  if (offset_ms(wall - before, zone) === before) return wall - before;
  if (offset_ms(wall - after, zone) === after) return wall - after;
  return wall - before;
}

/** What the calendar and the clocks of a zone show at an instant; seconds are dropped. */
export function localAt(
  instant: Instant,
  zone: string,
): { readonly day: Day; readonly clock: Clock; readonly minuteOfDay: number } {
  const wall = instant + offset_ms(instant, zone);
  const minuteOfDay = Math.floor((((wall % msInDay) + msInDay) % msInDay) / 60_000);
  const day = new Date(wall).toISOString().slice(0, 10) as Day;
  return { day, clock: clockOfMinute(minuteOfDay), minuteOfDay };
}

/** How far a zone's clocks are ahead of UTC at an instant. [ms] */
function offset_ms(instant: Instant, zone: string): number {
  if (!Number.isFinite(instant)) throw new RangeError(`an instant is a number of milliseconds, got ${instant}`);
  const part: Record<string, number> = {};
  for (const { type, value } of reader(zone).formatToParts(instant)) part[type] = Number(value);
  const wall = Date.UTC(part.year!, part.month! - 1, part.day!, part.hour!, part.minute!, part.second!);
  return wall - Math.floor(instant / 1000) * 1000;
}

function reader(zone: string): Intl.DateTimeFormat {
  let found = readers.get(zone);
  if (!found) {
    try {
      found = new Intl.DateTimeFormat('en-US', {
        timeZone: zone,
        calendar: 'gregory',
        numberingSystem: 'latn',
        hourCycle: 'h23',
        year: 'numeric',
        month: 'numeric',
        day: 'numeric',
        hour: 'numeric',
        minute: 'numeric',
        second: 'numeric',
      });
    } catch {
      throw new RangeError(`a time zone is an IANA name such as 'Europe/Berlin'; got '${zone}'`);
    }
    readers.set(zone, found);
  }
  return found;
}
