/**
 * The files that are written and read, held to the forms that their standards print (RFC 5545, RFC 4180, NMEA 0183), row by
 * row. The rows keep their source and their provenance; those recalled are marked so.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calendarFile, calendarType, folded } from '#calendar';
import { checksumOf, readSentence, rowsOf, timeOf } from '#readings';
import type { Day } from '#units';
import { handbookFolder, handbookHere } from '../all-checks.ts';

interface FormRow {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: unknown;
  readonly expected: unknown;
  readonly provenance: string;
}

const rows = JSON.parse(readFileSync(new URL('./rows.json', import.meta.url), 'utf8')) as readonly FormRow[];

const octets = (text: string) => new TextEncoder().encode(text).length;
const parts = (line: string) =>
  folded(line)
    .split('\r\n')
    .map((part, i) => octets(part) - (i > 0 ? 1 : 0));
const at = Date.parse('1998-01-19T07:00:00Z');
const span = { kind: 'span', start: at, end: at + 3_600_000 } as const;
const file = (words = '', when: Parameters<typeof calendarFile>[0]['events'][number]['when'] = span) =>
  calendarFile({ name: 'A', made: at, events: [{ uid: 'a@x', title: 'A', words, when, reminder_min: 60 }] });
const count = (line: string, within = file()) => within.split('\r\n').filter((each) => each.startsWith(line)).length;
const once = (names: readonly string[]) => names.filter((name) => count(`${name}:`) === 1);
const sum = ({ inputs }: FormRow) => checksumOf(String(inputs));
const oneRecord = (text: string) => rowsOf(text, ',', 10)[0];

/** What we have for each row, in the form it is printed. */
const ours: Readonly<Record<string, (row: FormRow) => unknown>> = {
  'ics.fold': () => Math.max(...parts('é'.repeat(400)), ...parts('x'.repeat(400))),
  'ics.eol': () => (file().endsWith('\r\n') && !/[^\r]\n|\r[^\n]/.test(file()) ? 'CRLF' : 'another'),
  'ics.unfold': () => (folded('x'.repeat(76)) === `${'x'.repeat(75)}\r\n x` ? 'CRLF SP' : 'another'),
  'ics.contbudget': () => parts('x'.repeat(300))[1],
  'ics.fold.75': () => parts('x'.repeat(75)),
  'ics.fold.76': () => parts('x'.repeat(76)),
  'ics.fold.149': () => parts('x'.repeat(149)),
  'ics.fold.150': () => parts('x'.repeat(150)),
  'ics.fold.200': () => parts('x'.repeat(200)),
  'ics.utf8': () => parts(`${'a'.repeat(74)}é`),
  'ics.exact75': () => (folded('x'.repeat(75)) === 'x'.repeat(75) ? 'no fold' : 'folded'),
  'ics.req.cal': () => once(['PRODID', 'VERSION']),
  'ics.req.event': () => once(['UID', 'DTSTAMP']),
  'ics.excl': () => (count('DTEND') === 1 && count('DURATION') === 0 ? 'exclusive' : 'both'),
  'ics.colon': () => /DESCRIPTION:(.*)/.exec(file('12:30 "x"'))?.[1],
  'ics.utc': () => /DTSTART:(.*)/.exec(file())?.[1],
  'ics.allday': () => {
    const written = file('', { kind: 'days', first: '2026-05-01' as Day, last: '2026-05-01' as Day });
    return [/DTSTART;VALUE=DATE:(.*)/.exec(written)?.[1], /DTEND;VALUE=DATE:(.*)/.exec(written)?.[1]];
  },
  'ics.uid': () => {
    const event = { uid: 'a', title: 'A', when: span } as const;
    expect(() => calendarFile({ name: 'A', made: at, events: [event, event] })).toThrow('two events have the uid');
    return 'unique';
  },
  'ics.alarm': () => /TRIGGER:.*/.exec(file())?.[0],
  'ics.mime': () => calendarType.split(';')[0],
  'csv.newline': () => (oneRecord('"b\nbb",c')?.[0] === 'b\nbb' ? 'one field' : 'two'),
  'csv.space': () => oneRecord(' a ,b')?.[0],
  'csv.empty': () => {
    const fields = oneRecord('x,,y');
    return fields?.length === 3 && fields[1] === '' ? 'three fields, middle empty' : fields;
  },
  'csv.count': () => (rowsOf('a,b\nc,d', ',', 10).every(({ length }) => length === 2) ? 'equal' : 'not'),
  'nmea.ck.gga': sum,
  'nmea.ck.rmc': sum,
  'nmea.ck.gst': sum,
  'nmea.ck.aivdm': sum,
  'nmea.ck.dpt': sum,
  'nmea.ck.mwv': sum,
  'nmea.ck.gll': sum,
  'nmea.ck.bad': ({ inputs }) => {
    const read = readSentence(`$${String(inputs)}*42`);
    return read.kind === 'refused' ? `42 ≠ ${/adds up to (\w+)/.exec(read.wrong)?.[1]}` : 'read';
  },
  'nmea.date': () => {
    const read = readSentence('$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A');
    const time = read.kind === 'sentence' ? timeOf(read.type, read.fields) : null;
    return time === null ? null : new Date(time).toISOString().slice(0, 10);
  },
};

/** What is not done here, so that no form of it can be kept. */
const notDone: Readonly<Record<string, string>> = {
  'nmea.lat': 'no position is read',
  'nmea.lon': 'no position is read',
  'nmea.knots': 'no speed over the ground is read',
  'nmea.len': 'longer sentences are read: makers write them',
  'nmea.end': 'no sentence is written',
  'nmea.case': 'no sentence is written',
  'ics.rrule': 'no event comes round by itself: each due is worked out anew',
  'ics.duration': 'no duration is read',
  'csv.header': 'no table is written',
  'csv.eol': 'no table is written',
  'csv.quote': 'no table is written',
  'csv.dquote': 'no table is written',
  'csv.inject': 'no table is written',
};

describe('forms of files', () => {
  it('holds every row that is kept', () => {
    expect(rows.map(({ id }) => id).sort()).toEqual(
      Object.keys(ours)
        .map((id) => `interchange.${id}`)
        .sort(),
    );
    expect(rows).toHaveLength(33);
  });

  it.each(rows.map((row) => [row.id, row] as const))('%s', (id, row) => {
    expect(ours[id.replace('interchange.', '')]!(row)).toEqual(row.expected);
  });

  it.skipIf(!handbookHere)(
    `has every row of the handbook, or says why not${handbookHere ? '' : ' (skipped: no data)'}`,
    () => {
      const all = JSON.parse(readFileSync(`${handbookFolder}/interchange.json`, 'utf8')) as readonly FormRow[];
      const known = [...Object.keys(ours), ...Object.keys(notDone)].map((id) => `interchange.${id}`);
      expect(all.map(({ id }) => id).sort()).toEqual(known.sort());
    },
  );
});
