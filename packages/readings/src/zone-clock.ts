import { dayNumber, localAt } from '#units';

/** The instants at which the clocks of a zone showed a time; none where they skipped it, two where they showed it twice. */
export type ZoneClock = (wall_ms: number) => readonly number[];

const day_ms = 86_400_000;

/**
 * A reader of what the clocks of a zone showed, quick for many times.
 *
 * @param zone  IANA name
 * @throws RangeError for what is no zone
 */
export function zoneClock(zone: string): ZoneClock {
  /** by day: its one offset, or null where the clocks change about then */
  const steady = new Map<number, number | null>();
  const offsetAt = (instant: number) => {
    const minute = Math.floor(instant / 60_000) * 60_000;
    const { day, minuteOfDay } = localAt(minute, zone);
    return dayNumber(day) * day_ms + minuteOfDay * 60_000 - minute;
  };
  offsetAt(0);
  return (wall_ms) => {
    const day = Math.floor(wall_ms / day_ms);
    let offset = steady.get(day);
    if (offset === undefined) {
      const [before, after] = [offsetAt((day - 1) * day_ms), offsetAt((day + 2) * day_ms)];
      offset = before === after ? before : null;
      steady.set(day, offset);
    }
    if (offset !== null) return [wall_ms - offset];
    const offsets = [...new Set([offsetAt(wall_ms - day_ms), offsetAt(wall_ms + day_ms)])];
    return offsets
      .map((each) => wall_ms - each)
      .filter((instant) => offsetAt(instant) === wall_ms - instant)
      .sort((a, b) => a - b);
  };
}
