import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, addMonths, clockOfMinute, daysBetween, isClock, isDay, minuteOfClock, weekday } from './day.ts';

describe('days', () => {
  it('takes only days that there are', () => {
    for (const day of ['2026-02-28', '2024-02-29', '2000-02-29', '1900-01-01', '2199-12-31'])
      expect(isDay(day), day).toBe(true);
    // 1900 was no leap year (Gregorian rule)
    for (const day of [
      '2026-02-29',
      '1900-02-29',
      '2026-04-31',
      '2026-13-01',
      '2026-1-1',
      '26-01-01',
      '',
      'today',
      null,
      20260101,
    ])
      expect(isDay(day), String(day)).toBe(false);
  });

  it('knows the days of the week', () => {
    // Well-known dates: 1969-07-20 was a Sunday, 2000-01-01 a Saturday, 1970-01-01 a Thursday
    expect(weekday('1969-07-20')).toBe(6);
    expect(weekday('2000-01-01')).toBe(5);
    expect(weekday('1970-01-01')).toBe(3);
  });

  it('counts over leap days and year ends', () => {
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(addDays('2026-02-28', 1)).toBe('2026-03-01');
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(daysBetween('2026-01-01', '2027-01-01')).toBe(365);
    expect(daysBetween('2024-01-01', '2025-01-01')).toBe(366);
  });

  it('adds months to the same day of the month, or to its last', () => {
    // ECMAScript's proposal Temporal, PlainDate.add with overflow 'constrain': 31 January and a month is the last of February
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(addMonths('2024-01-31', 1)).toBe('2024-02-29');
    expect(addMonths('2024-02-29', 12)).toBe('2025-02-28');
    expect(addMonths('2026-11-15', 42)).toBe('2030-05-15');
    expect(addMonths('2026-03-31', -1)).toBe('2026-02-28');
    expect(addMonths('2026-05-07', 0)).toBe('2026-05-07');
    expect(() => addMonths('2199-12-01', 1)).toThrow(/2199/);
    expect(() => addMonths('2026-05-07', 0.5)).toThrow(/whole number/);
  });

  it('adding and counting undo each other', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 60_000 }), (n) => {
        const day = addDays('1970-01-01', n);
        expect(daysBetween('1970-01-01', day)).toBe(n);
        expect(addDays(day, -n)).toBe('1970-01-01');
        expect(weekday(addDays(day, 7))).toBe(weekday(day));
        expect(weekday(addDays(day, 1))).toBe((weekday(day) + 1) % 7);
      }),
    );
  });

  it('refuses a day there is not, a part of a day, and years out of range', () => {
    expect(() => addDays('2026-02-30', 1)).toThrow(/2026-02-30/);
    expect(() => addDays('2026-02-01', 0.5)).toThrow(/whole number/);
    expect(() => addDays('2199-12-31', 1)).toThrow(/1900 to 2199/);
    expect(() => addDays('2026-01-01', 1e12)).toThrow(/1900 to 2199/);
  });
});

describe('clock times', () => {
  it('takes 00:00 to 23:59 in two figures each', () => {
    for (const clock of ['00:00', '09:05', '23:59']) expect(isClock(clock)).toBe(true);
    for (const clock of ['24:00', '9:05', '12:60', '12.30', '', null]) expect(isClock(clock)).toBe(false);
  });

  it('turns minutes into clock times and back', () => {
    for (let minute = 0; minute < 1440; minute++) expect(minuteOfClock(clockOfMinute(minute))).toBe(minute);
    expect(() => clockOfMinute(1440)).toThrow(/0 to 1439/);
  });
});

it('every day that the calendar of JavaScript has is a day, and no other of the form', () => {
  // Date.UTC carries a day that is not there over into the next month (ECMAScript, MakeDay)
  let days = 0;
  for (let year = 1900; year < 2200; year++)
    for (let month = 1; month <= 12; month++)
      for (let day = 1; day <= 31; day++) {
        const two = (figure: number) => String(figure).padStart(2, '0');
        const there = new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day;
        if (isDay(`${year}-${two(month)}-${two(day)}`) !== there) throw new Error(`${year}-${month}-${day}`);
        if (there) days++;
      }
  // from 1900-01-01 to 2199-12-31: 300 years of 365 days and 73 leap days (not 1900, 2100)
  expect(days).toBe(300 * 365 + 73);
});
