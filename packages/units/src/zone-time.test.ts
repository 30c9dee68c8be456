import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instantAt, isTimeZone, localAt } from './zone-time.ts';

const utc = (text: string) => Date.parse(text);

describe('clock times in a zone', () => {
  it('keeps UTC as it is', () => {
    expect(instantAt('2026-11-25', '11:40', 'UTC')).toBe(utc('2026-11-25T11:40Z'));
  });

  // Directive 2000/84/EC: clocks in the EU change at 01:00 UTC on the last Sundays of March and October.
  // 29 March and 25 October 2026; Berlin is UTC+1 in winter.
  it('moves a time that the spring change skips forward by what is skipped', () => {
    expect(instantAt('2026-03-29', '01:59', 'Europe/Berlin')).toBe(utc('2026-03-29T00:59Z'));
    expect(instantAt('2026-03-29', '02:30', 'Europe/Berlin')).toBe(utc('2026-03-29T01:30Z'));
    expect(localAt(utc('2026-03-29T01:30Z'), 'Europe/Berlin').clock).toBe('03:30');
    expect(instantAt('2026-03-29', '03:00', 'Europe/Berlin')).toBe(utc('2026-03-29T01:00Z'));
  });
  it('takes the first of a time that the autumn change shows twice', () => {
    expect(instantAt('2026-10-25', '02:30', 'Europe/Berlin')).toBe(utc('2026-10-25T00:30Z'));
    expect(instantAt('2026-10-25', '03:00', 'Europe/Berlin')).toBe(utc('2026-10-25T02:00Z'));
    expect(localAt(utc('2026-10-25T01:30Z'), 'Europe/Berlin').clock).toBe('02:30');
  });

  // US Energy Policy Act of 2005, 15 USC 260a: second Sunday of March, first Sunday of November, 02:00 local.
  // 8 March and 1 November 2026; New York is UTC−5 in winter.
  it('follows the American dates', () => {
    expect(instantAt('2026-03-08', '02:30', 'America/New_York')).toBe(utc('2026-03-08T07:30Z'));
    expect(instantAt('2026-11-01', '01:30', 'America/New_York')).toBe(utc('2026-11-01T05:30Z'));
    expect(instantAt('2026-11-01', '02:00', 'America/New_York')).toBe(utc('2026-11-01T07:00Z'));
  });

  // IANA time zone database: this zone shifts by half an hour (UTC+10:30 / +11), first Sundays of April, October.
  it('follows a half-hour change', () => {
    expect(instantAt('2026-10-04', '02:15', 'Australia/Lord_Howe')).toBe(utc('2026-10-03T15:45Z'));
    expect(localAt(utc('2026-10-03T15:45Z'), 'Australia/Lord_Howe').clock).toBe('02:45');
  });

  // IANA: UTC+5:45 since 1986, no summer time. Also a day ahead of UTC.
  it('follows quarter-hour zones and the change of date', () => {
    expect(instantAt('2026-07-01', '00:00', 'Asia/Kathmandu')).toBe(utc('2026-06-30T18:15Z'));
    expect(localAt(utc('2026-06-30T18:15Z'), 'Asia/Kathmandu')).toEqual({
      day: '2026-07-01',
      clock: '00:00',
      minuteOfDay: 0,
    });
  });

  it('reads back every clock time that is not skipped', () => {
    const zones = [
      'UTC',
      'Europe/Berlin',
      'America/St_Johns',
      'Australia/Lord_Howe',
      'Pacific/Auckland',
      'Pacific/Chatham',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: utc('1972-01-01T00:00Z') / 60_000, max: utc('2037-01-01T00:00Z') / 60_000 }),
        (zone, minute) => {
          const local = localAt(minute * 60_000, zone);
          const again = instantAt(local.day, local.clock, zone);
          expect(localAt(again, zone)).toEqual(local);
          // the same instant, or the earlier of the two that show this time
          expect(again === minute * 60_000 || minute * 60_000 - again <= 3_600_000).toBe(true);
          expect(again).toBeLessThanOrEqual(minute * 60_000);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('refuses what is not a zone, a day or a clock time', () => {
    expect(isTimeZone('Europe/Berlin')).toBe(true);
    for (const zone of ['Europe/Nowhere', '+01:00', '', 'local', 7]) expect(isTimeZone(zone), String(zone)).toBe(false);
    expect(() => instantAt('2026-01-01', '12:00', 'Europe/Nowhere')).toThrow(/Europe\/Nowhere/);
    expect(() => instantAt('2026-02-30', '12:00', 'UTC')).toThrow(/2026-02-30/);
    expect(() => instantAt('2026-02-01', '25:00', 'UTC')).toThrow(/25:00/);
    expect(() => localAt(Number.NaN, 'UTC')).toThrow(/milliseconds/);
  });
});
