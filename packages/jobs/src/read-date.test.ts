/** Days in words against another reader of dates, chrono-node 2.10.3, on each day of two years. */
import * as chrono from 'chrono-node/en';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '#units';
import { lineText } from './line-text.ts';
import { readDate } from './read-date.ts';

const agreed = [
  'today',
  'tonight',
  'tomorrow',
  'the day after tomorrow',
  'in ten days',
  'within three weeks',
  'twelve days from now',
  'a month from now',
  'by 12 June',
  'by June 12th',
  'by the first of June',
  'due 2028-02-29',
  'by the end of the month',
];

/** Said on a day when the two do not differ in what the words mean. */
const inChrono = (words: string, today: string): string | undefined => {
  const [year, month, date] = today.split('-').map(Number) as [number, number, number];
  // noon by this device's clock, and the parts are read back by the same clock
  const found = chrono.casual.parse(words, new Date(year, month - 1, date, 12), { forwardDate: true })[0]?.start;
  if (!found) return undefined;
  const two = (value: number | null) => String(value).padStart(2, '0');
  return `${found.get('year')}-${two(found.get('month'))}-${two(found.get('day'))}`;
};
const ours = (words: string, today: string) => readDate(lineText(words), today)?.value;

describe('a day in words', () => {
  it.each(agreed)('%s: both readers take it for the same day', (words) => {
    let compared = 0;
    for (let day = '2027-01-01'; day < '2029-01-01'; day = addDays(day, 7)) {
      // of the months without such a date the other takes the day after their last, we the last
      if (words.includes('month from') && Number(day.slice(8)) > 28) continue;
      expect(ours(words, day), `${words}, said on ${day}`).toBe(inChrono(words, day));
      compared++;
    }
    expect(compared).toBeGreaterThanOrEqual(95);
  });

  it('what the other reader gets wrong or leaves: days of weeks after, middles of months, fortnights', () => {
    const today = '2027-04-08'; // a Thursday
    for (const [words, day] of [
      ['in a fortnight', '2027-04-22'],
      ['a week on Saturday', '2027-04-17'],
      ['by Sunday week', '2027-04-18'],
      ['by mid May', '2027-05-15'],
      ['the second weekend in May', '2027-05-09'],
      ['by the last Friday of May', '2027-05-28'],
      ['next week', '2027-04-18'],
      ['next month', '2027-05-31'],
      ['by the end of next week', '2027-04-18'],
      ['before May', '2027-04-30'],
    ] as const) {
      expect(ours(words, today), words).toBe(day);
      expect(inChrono(words, today), words).not.toBe(day);
    }
  });

  it('a day that is over is not one to be done by', () => {
    expect(ours("we couldn't get her down on Sunday", '2027-04-08')).toBe(undefined);
    expect(ours('I pumped them up on Sunday', '2027-04-08')).toBe(undefined);
  });

  it('is never before today', () => {
    for (const words of [
      ...agreed.filter((each) => !each.includes('2028')),
      'by Friday',
      'by the 31st',
      'this weekend',
    ])
      for (let day = '2027-12-20'; day < '2028-03-10'; day = addDays(day, 1)) {
        const read = ours(words, day);
        expect(read && daysBetween(day, read), `${words}, said on ${day}`).toBeGreaterThanOrEqual(0);
      }
  });
});
