/** The schema of the records of ground tackle, held to their type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { id, number, text, title } from './field-schemas.ts';

export const rodeSchema = z.strictObject({
  name: title,
  zone: z.nullable(id),
  chain: z.nullable(
    z.strictObject({
      size_mm: z.union([z.literal(5), z.literal(6), z.literal(7), z.literal(8), z.literal(10)]),
      length_m: number(0.1, 150),
    }),
  ),
  rope: z.nullable(
    z.strictObject({
      fibre: z.enum(['nylon', 'polyester', 'polyester-braid', 'polypropylene']),
      size_mm: z.union([z.literal(6), z.literal(8), z.literal(10), z.literal(12), z.literal(14), z.literal(16)]),
      length_m: number(0.1, 300),
    }),
  ),
  bow_m: number(0, 3),
  windage_m2: number(0.1, 60),
  below_m2: number(0, 2),
  limit_deg: number(0, 30),
  anchorage: z.nullable(
    z.strictObject({
      depth_m: number(0.2, 60),
      rise_m: number(0, 15),
      fall_m: number(0, 15),
      wind_kn: number(1, 80),
      current_kn: number(0, 8),
    }),
  ),
  path: z.nullable(id),
  note: text,
});
