/**
 * A timer as a calendar file with an alarm, for the device's own calendar: that one tells it though this program is
 * closed. Form: RFC 5545 (iCalendar) §3.1, §3.3.11, §3.6.1, §3.6.6.
 */

/**
 * @param uid    of the timer, the same each time it is put out
 * @param now    when the file is made. [ms]
 * @param ends   [ms]
 * @returns      the file's text
 */
export function timerCalendar(uid: string, words: string, now: number, ends: number): string {
  const stamp = (instant: number) =>
    new Date(instant)
      .toISOString()
      .replace(/[-:]/g, '')
      .replace(/\.\d+Z$/, 'Z');
  const text = words.replace(/[\\;,]/g, (sign) => `\\${sign}`).replace(/\r?\n/g, '\\n');
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Fettle//Timer//EN',
    'BEGIN:VEVENT',
    `UID:${uid}@fettle`,
    `DTSTAMP:${stamp(now)}`,
    `DTSTART:${stamp(ends)}`,
    'DURATION:PT5M',
    `SUMMARY:${text}`,
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'TRIGGER:PT0S',
    `DESCRIPTION:${text}`,
    'END:VALARM',
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return `${lines.map(folded).join('\r\n')}\r\n`;
}

/** A line of more than 75 octets goes on in the next, after a space; no letter is cut in two. */
function folded(line: string): string {
  const bytes = new TextEncoder();
  let out = '';
  let length = 0;
  for (const letter of line) {
    const size = bytes.encode(letter).length;
    if (length + size > 75) {
      out += '\r\n ';
      length = 1;
    }
    out += letter;
    length += size;
  }
  return out;
}
