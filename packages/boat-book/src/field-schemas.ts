/**
 * The forms of single fields. The message of each check says what would be right; `plain-words.ts` puts it beside
 * what was given. Ranges are our judgement of what a small boat and a job day can be, wide enough for any true one.
 */
import { z } from 'zod/mini';
import { isClock, isDay, isTimeZone } from '#units';

const plain = {};
/** Ids: letters and figures with . _ : - between; nothing that means something to JavaScript or to a path. */
export function isId(value: string): boolean {
  return /^[A-Za-z0-9](?:[A-Za-z0-9._:-]{0,98}[A-Za-z0-9])?$/.test(value) && !value.includes('..') && !(value in plain);
}

const isInstant = (value: string): boolean =>
  /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::[0-5]\d(?:\.\d{1,3})?)?Z$/.test(value) &&
  isDay(value.slice(0, 10)) &&
  isClock(value.slice(11, 16));

export const id = z.string().check(z.refine(isId, 'an id of at most 100 letters, figures and . _ : -'));
export const day = z.string().check(z.refine((v) => isDay(v), 'a day there is, as YYYY-MM-DD, from 1900 to 2199'));
export const clock = z.string().check(z.refine((v) => isClock(v), 'a clock time from 00:00 to 23:59, as HH:MM'));
export const at = z.string().check(z.refine(isInstant, 'an instant in UTC, as YYYY-MM-DDTHH:MM:SSZ'));
export const timeZone = z.string().check(z.refine((v) => isTimeZone(v), 'a time zone there is, as Area/Place'));

/** A name or title: something must stand in it. At most 300 characters. */
export const title = z.string().check(
  z.refine((v) => v.trim() !== '', 'some words'),
  z.maxLength(300),
);
/** Free words, also none. At most 20,000 characters. */
export const text = z.string().check(z.maxLength(20_000));

export const number = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
export const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
/** At most 1,000 of them. */
export const list = <T extends z.core.SomeType>(of: T) => z.array(of).check(z.maxLength(1000));
export const yes = z.literal(true);

/** How the two parts of a mix go together. */
export const mixRatio = z.strictObject({
  by: z.enum(['weight', 'volume']),
  resin: number(0.01, 1000),
  hardener: number(0.01, 1000),
});
