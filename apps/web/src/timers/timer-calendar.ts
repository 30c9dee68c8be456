import { calendarFile } from '#calendar';

/**
 * A timer as a calendar file with an alarm, for the device's own calendar: that one tells it though this program is closed.
 *
 * @param uid    of the timer, the same each time it is put out
 * @param now    when the file is made. [ms]
 * @param ends   [ms]
 * @returns      the file's text
 */
export const timerCalendar = (uid: string, words: string, now: number, ends: number): string =>
  calendarFile({
    name: words,
    made: now,
    events: [
      {
        uid: `timer.${uid}@boat-book`,
        title: words,
        when: { kind: 'span', start: ends, end: ends + 5 * 60_000 },
        reminder_min: 0,
      },
    ],
  });
