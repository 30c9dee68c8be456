import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { Day } from '#units';
import { type CalendarEvent, calendarFile, versionOf } from './calendar-file.ts';
import { folded } from './content-line.ts';

const made = Date.parse('2026-11-26T05:00:00Z');
const file = (...events: CalendarEvent[]) => calendarFile({ name: 'Jobs', made, events });
const octets = (text: string) => new TextEncoder().encode(text).length;
const contentOctets = (line: string) =>
  folded(line)
    .split('\r\n')
    .map((part, i) => octets(part) - (i > 0 ? 1 : 0));

/** What an independent reader (ical.js) makes of a file. */
function readBy(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((each) => {
    const event = new ICAL.Event(each);
    return {
      uid: event.uid,
      title: event.summary,
      words: event.description,
      place: event.location,
      start: event.startDate,
      end: event.endDate,
      sequence: event.sequence,
      status: each.getFirstPropertyValue('status'),
      free: each.getFirstPropertyValue('transp') === 'TRANSPARENT',
      trigger: each.getFirstSubcomponent('valarm')?.getFirstPropertyValue('trigger')?.toString(),
    };
  });
}

describe('folded', () => {
  it.each([
    // RFC 5545 §3.1: 75 octets at most, the space of a part that goes on among them
    [75, [75]],
    [76, [75, 1]],
    [149, [75, 74]],
    [150, [75, 74, 1]],
    [200, [75, 74, 51]],
  ])('folds %i octets into %j', (length, parts) => {
    expect(contentOctets('x'.repeat(length))).toEqual(parts);
  });

  it('cuts no character', () => {
    expect(contentOctets(`${'a'.repeat(74)}é`)).toEqual([74, 2]);
    expect(folded(`${'a'.repeat(73)}⛵`).split('\r\n ')).toEqual(['a'.repeat(73), '⛵']);
  });

  it('is whole again when it is unfolded, whatever is in it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const line = folded(text.replace(/[\r\n]/g, ''));
        expect(line.replaceAll('\r\n ', '')).toBe(text.replace(/[\r\n]/g, ''));
        for (const part of line.split('\r\n')) expect(octets(part)).toBeLessThanOrEqual(75);
      }),
    );
  });
});

describe('calendarFile', () => {
  const span = {
    kind: 'span',
    start: Date.parse('2026-11-28T09:00:00Z'),
    end: Date.parse('2026-11-28T10:30:00Z'),
  } as const;

  it('writes times in UTC and whole days to the day after', () => {
    const text = file(
      { uid: 'a@x', title: 'Rebed the plate', when: span },
      {
        uid: 'b@x',
        title: 'On the water',
        when: { kind: 'days', first: '2026-05-01' as Day, last: '2026-05-01' as Day },
      },
    );
    expect(text).toContain('DTSTART:20261128T090000Z\r\nDTEND:20261128T103000Z\r\n');
    expect(text).toContain('DTSTART;VALUE=DATE:20260501\r\nDTEND;VALUE=DATE:20260502\r\n');
    for (const line of ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:', 'UID:a@x', 'DTSTAMP:20261126T050000Z'])
      expect(text).toContain(`${line}`);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('is read by an independent reader as it was meant', () => {
    const words =
      'Caution: gloves; no flame, no sparks.\nButyl "grey", \\ 2 × 300 ml – für die Püttings, при +5 °C 塗料';
    const [event, day, wait, gone] = readBy(
      file(
        { uid: '1@boat', title: 'Rebed, plate; port', when: span, place: 'Driveway', words, reminder_min: 60 },
        {
          uid: '2@boat',
          title: 'Two days out',
          when: { kind: 'days', first: '2026-12-24' as Day, last: '2026-12-26' as Day },
        },
        { uid: '3@boat', title: 'Cured', when: { ...span, start: span.end }, free: true, reminder_min: 0 },
        { uid: '4@boat', title: 'No more', when: span, off: true },
      ),
    );
    expect(event).toMatchObject({
      uid: '1@boat',
      title: 'Rebed, plate; port',
      place: 'Driveway',
      words,
      trigger: '-PT1H',
    });
    expect(event!.start.toJSDate().getTime()).toBe(span.start);
    expect(event!.end.toJSDate().getTime()).toBe(span.end);
    expect([day!.start.isDate, day!.start.toString(), day!.end.toString()]).toEqual([true, '2026-12-24', '2026-12-27']);
    expect(wait).toMatchObject({ free: true });
    expect(wait!.start.toJSDate().getTime()).toBe(span.end);
    expect(gone).toMatchObject({ status: 'CANCELLED' });
  });

  it('has a higher version the later it is made', () => {
    const one = (at: number) =>
      readBy(calendarFile({ name: '', made: at, events: [{ uid: 'a', title: '', when: span }] }))[0]!;
    expect(one(made + 60_000).sequence).toBe(one(made).sequence + 1);
    // the largest whole number of the standard (§3.3.8)
    expect(one(Date.UTC(5999, 0, 1)).sequence).toBeLessThanOrEqual(2_147_483_647);
  });

  it('goes above the version an event was written in before, within the same minute too', () => {
    const event: CalendarEvent = { uid: 'a', title: '', when: span };
    const version = versionOf(event, made);
    expect(readBy(file({ ...event, off: true, above: version }))[0]).toMatchObject({
      sequence: version + 1,
      status: 'CANCELLED',
    });
  });

  it('keeps every line within 75 octets and is read back whole, whatever is written', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 160 });
    const event = fc.record({
      title: text,
      words: text,
      place: text,
      start: fc.date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true }),
    });
    fc.assert(
      fc.property(fc.array(event, { maxLength: 6 }), (events) => {
        const written = file(
          ...events.map(({ start, ...each }, i): CalendarEvent => {
            const at = Math.floor(start.getTime() / 1000) * 1000;
            return { ...each, uid: `${i}@boat`, when: { kind: 'span', start: at, end: at + 3_600_000 } };
          }),
        );
        for (const line of written.split('\r\n')) expect(octets(line)).toBeLessThanOrEqual(75);
        // what a text may hold: no control characters but the tab and the new line
        const kept = (value: string) =>
          // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
          value.replace(/\r\n|\r/g, '\n').replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');
        expect(readBy(written).map(({ title, words }) => [title, words ?? ''])).toEqual(
          events.map(({ title, words }) => [kept(title), kept(words)]),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('refuses two events of one uid, and one that ends before it begins', () => {
    const event = { uid: 'a', title: 'A', when: span } as const;
    expect(() => file(event, event)).toThrow('two events have the uid a');
    expect(() => file({ ...event, when: { kind: 'span', start: span.end, end: span.start } })).toThrow(
      'ends before it begins',
    );
    expect(() =>
      file({ ...event, when: { kind: 'days', first: '2026-05-02' as Day, last: '2026-05-01' as Day } }),
    ).toThrow('ends before it begins');
  });
});
