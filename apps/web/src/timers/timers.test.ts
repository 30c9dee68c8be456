import { expect, test } from 'vitest';
import type { Book } from '#boat-book';
import { timerCalendar } from './timer-calendar.ts';
import { leftInWords, timersOf } from './timers-of.ts';

const now = Date.UTC(2026, 4, 2, 11, 20);
const minutes = (count: number) => count * 60_000;

test('what is left of a timer is reckoned from its instant, and what is over comes first', () => {
  const timer = (ends: number) => ({
    step: 's',
    wait: null,
    words: '',
    started: '',
    ends: new Date(ends).toISOString(),
  });
  const book = {
    timers: { late: timer(now + minutes(90)), over: timer(now - minutes(5)), soon: timer(now + minutes(28)) },
  };
  expect(timersOf(book as unknown as Book, now).map(({ id, left_ms }) => [id, left_ms / 60_000])).toEqual([
    ['over', -5],
    ['soon', 28],
    ['late', 90],
  ]);
});

test('what is left in words: whole minutes, never 0 while there is some left', () => {
  expect([0.2, 1, 1.1, 28, 60, 80, 47 * 60, 72 * 60].map((count) => leftInWords(minutes(count)))).toEqual([
    'less than a minute',
    'less than a minute',
    '2 min',
    '28 min',
    '1 h 00',
    '1 h 20',
    '47 h 00',
    '3 days',
  ]);
});

test('a timer as a calendar file has its instant, an alarm at it, and lines as RFC 5545 §3.1 wants them', () => {
  const words =
    'Pot life: “thick” epoxy; shroud plate, starboard, and all that is still to be said of it over eighty octets';
  const file = timerCalendar('t1', words, now, now + minutes(28));
  expect(file).toContain('\r\nDTSTART:20260502T114800Z\r\n');
  expect(file).toContain('\r\nDTSTAMP:20260502T112000Z\r\n');
  expect(file.match(/BEGIN:VALARM\r\nACTION:DISPLAY\r\n[\s\S]*TRIGGER:PT0M\r\nEND:VALARM/)).not.toBeNull();
  const lines = file.split('\r\n');
  for (const line of lines) expect(new TextEncoder().encode(line).length, line).toBeLessThanOrEqual(75);
  expect(file.replace(/\r\n /g, '')).toContain(
    `SUMMARY:Pot life: “thick” epoxy\\; shroud plate\\, starboard\\, and all that is still to be said of it over eighty octets\r\n`,
  );
  expect(file.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
});
