/** The schemas of the records of a boat's rig, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { day, id, number, text, title, whole } from './field-schemas.ts';

const thread = z.enum([
  'unf-1-4',
  'unf-5-16',
  'unf-3-8',
  'unf-7-16',
  'unf-1-2',
  'unf-5-8',
  'm5',
  'm6',
  'm8',
  'm10',
  'm12',
]);

export const staySchema = z.strictObject({
  name: title,
  zone: z.nullable(id),
  laid: z.enum(['1x19', '7x7', '7x19']),
  size_mm: number(1, 20),
  length_m: number(0.5, 30),
  screw: z.nullable(z.strictObject({ thread, ends: z.enum(['both', 'one']) })),
  aim_pct: z.nullable(number(1, 40)),
  made: z.nullable(day),
  note: text,
});

export const stayReadingSchema = z.strictObject({
  stay: id,
  on: day,
  moment: z.enum(['as set', 'before towing', 'after towing', 'in between']),
  told: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('stretch'), stretch_mm: number(0, 60), measured_m: number(0.5, 12) }),
    z.strictObject({
      kind: z.literal('pull'),
      pulledAt_m: number(0.2, 15),
      pull_N: number(5, 1000),
      aside_mm: number(1, 1000),
    }),
    z.strictObject({ kind: z.literal('sway'), sway_mm: number(0, 1000) }),
  ]),
  turns: number(-40, 40),
  note: text,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});

export const mastSchema = z.strictObject({
  name: title,
  mass_kg: number(2, 300),
  massAt_m: number(0.3, 12),
  lineAt_m: number(1, 20),
  led: z.nullable(
    z.strictObject({
      by: z.enum(['pole', 'A-frame']),
      length_m: number(0.3, 6),
      heelAhead_m: number(-0.5, 3),
      heelUp_m: number(-1, 0.8),
      lean_deg: number(-30, 70),
      spread_m: z.nullable(number(0.1, 4)),
    }),
  ),
  bowAhead_m: number(0.5, 8),
  bowUp_m: number(-2, 1),
  from_deg: number(-10, 60),
  to_deg: number(45, 89),
  shrouds: z.nullable(
    z.strictObject({ at_m: number(0.5, 20), ahead_m: number(-2, 1), up_m: number(-1, 1), out_m: number(0.1, 3) }),
  ),
  vang: z.nullable(
    z.strictObject({
      lift_N: number(1, 20_000),
      liftAt_m: number(0.3, 8),
      along_m: number(0.1, 5),
      below_m: number(0.05, 3),
      aft_m: number(-0.5, 1.5),
    }),
  ),
  note: text,
});
