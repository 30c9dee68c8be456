import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTime, type TimeForm, timeExamples } from './time-text.ts';
import { zoneClock } from './zone-clock.ts';

const wall = (text: string) => Date.parse(`${text}Z`);

describe('times as loggers write them', () => {
  it.each<[string, TimeForm, string]>([
    ['2026-05-02 18:40:00', 'year first', '2026-05-02T18:40:00'],
    ['2026/5/2 6:40 pm', 'year first', '2026-05-02T18:40:00'],
    ['20260502T184000', 'year first', '2026-05-02T18:40:00'],
    ['02.05.2026 18:40', 'day first', '2026-05-02T18:40:00'],
    ['2-May-26 18:40:30,5', 'day first', '2026-05-02T18:40:30.500'],
    ['05/02/2026 12:10:00 AM', 'month first', '2026-05-02T00:10:00'],
    // spreadsheets count days from 1899-12-30: 25569 is 1970-01-01 (common practice)
    ['25569,5', 'sheet days', '1970-01-01T12:00:00'],
  ])('%s, %s', (text, form, expected) => {
    expect(readTime(text, form)).toEqual({ kind: 'wall', wall_ms: wall(expected) });
  });

  // RFC 3339 §5.8: 19:39:57 eight hours behind UTC is the 20th at 00:39:57 UTC
  it.each([
    ['1996-12-19T16:39:57-08:00', '1996-12-20T00:39:57'],
    ['1985-04-12T23:20:50.52Z', '1985-04-12T23:20:50.520'],
    ['1990-12-31T23:59:60Z', '1991-01-01T00:00:00'],
  ])('reads the standard’s example %s', (text, expected) => {
    expect(readTime(text, 'year first')).toEqual({ kind: 'instant', at: wall(expected) });
  });

  it('counts from 1970', () => {
    expect(readTime('1777747200', 'seconds')).toEqual({ kind: 'instant', at: wall('2026-05-02T18:40:00') });
    expect(readTime('1777747200000', 'milliseconds')).toEqual({ kind: 'instant', at: wall('2026-05-02T18:40:00') });
  });

  it.each<[string, TimeForm, RegExp]>([
    ['', 'year first', /empty/],
    ['2026-02-30 10:00', 'year first', /no day of the calendar/],
    ['31.04.2026 10:00', 'day first', /no day of the calendar/],
    ['13/13/2026 10:00', 'month first', /no day of the calendar/],
    ['2026-05-02', 'year first', /no time of day/],
    ['2026-05-02 24:10', 'year first', /no time of day/],
    ['12.45', 'year first', /‘12.45’ is no date/],
    ['2-Foo-2026 10:00', 'day first', /names no month/],
    ['soon', 'seconds', /no count of seconds/],
  ])('refuses ‘%s’ as %s', (text, form, why) => {
    const read = readTime(text, form);
    expect(read.kind === 'refused' && read.wrong).toMatch(why);
  });

  it('reads its own examples', () => {
    for (const [form, text] of Object.entries(timeExamples))
      expect(readTime(text, form as TimeForm).kind, text).not.toBe('refused');
  });

  it('reads back any time it is written as', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: wall('2001-01-01T00:00:00') / 1000, max: wall('2099-01-01T00:00:00') / 1000 }),
        (s) => {
          const iso = new Date(s * 1000).toISOString();
          const [, y, m, d, clock] = /^(\d+)-(\d+)-(\d+)T(.{8})/.exec(iso)!;
          const expected = { kind: 'wall', wall_ms: s * 1000 };
          expect(readTime(`${y}-${m}-${d} ${clock}`, 'year first')).toEqual(expected);
          expect(readTime(`${d}.${m}.${y} ${clock}`, 'day first')).toEqual(expected);
          expect(readTime(`${m}/${d}/${y} ${clock}`, 'month first')).toEqual(expected);
          expect(readTime(iso, 'year first')).toEqual({ kind: 'instant', at: s * 1000 });
        },
      ),
    );
  });
});

describe('clocks of a zone', () => {
  // Directive 2000/84/EC: at 01:00 UTC on the last Sundays of March and October; Berlin is UTC+1 in winter
  it('show a time once, twice or not at all', () => {
    const clocks = zoneClock('Europe/Berlin');
    expect(clocks(wall('2026-07-01T12:00:00'))).toEqual([wall('2026-07-01T10:00:00')]);
    expect(clocks(wall('2026-03-29T02:30:00'))).toEqual([]);
    expect(clocks(wall('2026-10-25T02:30:00'))).toEqual([wall('2026-10-25T00:30:00'), wall('2026-10-25T01:30:00')]);
    expect(() => zoneClock('Europe/Nowhere')).toThrow(/Nowhere/);
  });

  it('are those of the device, whatever the zone and the time', () => {
    const shows = (at: number, zone: string) =>
      new Date(at).toLocaleString('sv-SE', { timeZone: zone }).replace(' ', 'T');
    fc.assert(
      fc.property(
        fc.constantFrom('UTC', 'Europe/Berlin', 'America/St_Johns', 'Australia/Lord_Howe', 'Pacific/Chatham'),
        fc.integer({ min: wall('1990-01-01T00:00:00') / 1000, max: wall('2037-01-01T00:00:00') / 1000 }),
        (zone, s) => {
          const at = s * 1000;
          expect(zoneClock(zone)(wall(shows(at, zone)))).toContain(at);
        },
      ),
    );
  });
});
