/** The schema of what a tin says, held to its type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { day, id, number, text, title } from './field-schemas.ts';

const time = z.nullable(z.strictObject({ hours: number(0.01, 8760), at_C: number(-20, 60) }));

export const tinSchema = z.strictObject({
  name: title,
  family: id,
  store: z.nullable(id),
  readOn: day,
  nextCoat: time,
  latestCoat_h: z.nullable(number(0.01, 8760)),
  worked: time,
  full: time,
  firstDay_mm: z.nullable(number(0.1, 20)),
  minimum_C: z.nullable(number(-20, 40)),
  humidity_max_pct: z.nullable(number(5, 100)),
  potLife: z.nullable(
    z.strictObject({ minutes: number(0.5, 10_080), at_C: number(-20, 60), of_g: z.nullable(number(1, 100_000)) }),
  ),
  ratio: z.nullable(
    z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('parts'),
        by: z.enum(['weight', 'volume']),
        resin: number(0.01, 1000),
        hardener: number(0.01, 1000),
      }),
      z.strictObject({ kind: z.literal('catalyst'), low_pct: number(0.1, 10), high_pct: number(0.1, 10) }),
    ]),
  ),
  spread_m2_l: z.nullable(number(0.1, 100)),
  strokePair_g: z.nullable(number(0.1, 1000)),
  note: text,
});
