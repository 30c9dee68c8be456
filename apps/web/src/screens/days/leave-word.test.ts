import { expect, test } from 'vitest';
import type { Book } from '#boat-book';
import { quarterAfter, wordToLeave } from './leave-word.ts';

const book = { boat: { name: 'Dabchick' } } as Book;

test('the line says what, where and by when, and leaves out a place that is not known', () => {
  expect(wordToLeave(book, 'Raise the mast', ['The drive', 'Mast'], '14:30')).toBe(
    "I am working on Dabchick (The drive, Mast): Raise the mast. If you don't hear from me by 14:30, ring me; if I don't answer, come and look.",
  );
  expect(wordToLeave(book, 'Raise the mast', ['', ''], '14:30')).toMatch(/^I am working on Dabchick: Raise the mast\./);
});

test('the time is the next quarter after the minutes allowed: 13:50 and half an hour is 14:30', () => {
  const at = (hour: number, minute: number) => Date.UTC(2026, 4, 2, hour, minute);
  expect(quarterAfter(at(13, 50), 30)).toBe(at(14, 30));
  expect(quarterAfter(at(13, 45), 30)).toBe(at(14, 15));
});
