/** The schemas of what falls due, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { isDay } from '#units';
import { at, day, id, number, text, title, whole } from './field-schemas.ts';

const use = z.enum(['sail', 'tow', 'launch', 'night', 'engine-hours', 'road-km']);
const season = z
  .string()
  .check(
    z.refine((v) => /^\d\d-\d\d$/.test(v) && isDay(`2024-${v}`), 'a day of the year there is, as MM-DD, such as 04-01'),
  );

export const dueSchema = z.strictObject({
  title,
  zone: z.nullable(id),
  fitting: z.nullable(id),
  consequence: z.enum(['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort']),
  printed: z.nullable(day),
  every: z.nullable(z.strictObject({ count: whole(1, 1000), unit: z.enum(['days', 'weeks', 'months', 'years']) })),
  season: z.nullable(season),
  uses: z.array(z.strictObject({ use, count: number(0.1, 100_000) })).check(z.maxLength(6)),
  condition: z.nullable(
    z.strictObject({
      measure: title,
      unit: text,
      limit: number(-100_000, 100_000),
      way: z.enum(['falls', 'rises']),
      within: number(0, 10_000),
    }),
  ),
  usual: z.nullable(id),
  recipe: z.nullable(title),
  source: text,
  lastDone: z.nullable(day),
  note: text,
});

const order = z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER));

export const useSchema = z.strictObject({
  use,
  on: day,
  count: number(0.01, 10_000),
  entered: at,
  note: text,
  order,
});

export const dueMeasureSchema = z.strictObject({
  due: id,
  on: day,
  value: number(-100_000, 100_000),
  entered: at,
  note: text,
  order,
});

export const seasonTickSchema = z.strictObject({
  list: z.enum(['lay-up', 'fit-out']),
  year: whole(1900, 2199),
  item: id,
  at,
  who: text,
  order,
});
