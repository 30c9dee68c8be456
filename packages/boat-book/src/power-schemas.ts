/** The schemas of the records of a boat's power, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { isClock } from '#units';
import { at, clock, day, id, list, number, text, title, whole } from './field-schemas.ts';

/** Said by some records only: left out where nobody was asked. */
const saidOr = <T extends z.core.SomeType>(schema: T) => z.exactOptional(z.nullable(schema));
const order = z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER));

export const batterySchema = z.strictObject({
  name: title,
  zone: z.nullable(id),
  chemistry: z.enum(['flooded', 'agm', 'gel', 'lifepo4']),
  nominal_Ah: number(1, 2000),
  nominal_V: z.union([z.literal(6), z.literal(12), z.literal(24)]),
  made: z.nullable(day),
  floor_pct: number(0, 95),
  meter: text,
  note: text,
  isolator: saidOr(z.boolean()),
  fault_A: saidOr(number(1, 100_000)),
  mainFuseKind: saidOr(z.enum(['glass', 'blade', 'strip', 'block', 'cartridge', 'none'])),
});

export const panelSchema = z.strictObject({
  name: title,
  battery: id,
  peak_W: number(0.1, 5000),
  tilt_deg: number(0, 90),
  heading_deg: number(0, 360),
  regulator: z.enum(['none', 'simple', 'tracking']),
  coefficient_pct_C: z.nullable(number(-2, 0)),
  leads: z.nullable(z.strictObject({ lengthThereAndBack_m: number(0, 100), area_mm2: number(0.1, 200) })),
  kept_pct: z.nullable(number(0, 100)),
  fuse_A: saidOr(number(0.1, 1000)),
});

export const chargerSchema = z.strictObject({
  name: title,
  battery: id,
  kind: z.enum(['mains', 'outboard']),
  amps: number(0.1, 500),
  volts_max: number(5, 32),
  fuse_A: saidOr(number(0.1, 1000)),
  hours_a_day: saidOr(number(0, 24)),
});

const sunOrClock = z
  .string()
  .check(
    z.refine(
      (v) => ['sunset', 'sunrise', 'dusk', 'dawn'].includes(v) || isClock(v),
      'sunset, sunrise, dusk, dawn or a clock time as HH:MM',
    ),
  );
export const circuitSchema = z.strictObject({
  name: title,
  battery: id,
  watts: number(0, 10_000),
  duty_pct: number(0, 100),
  uses: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('always') }),
    z.strictObject({ kind: z.literal('clock'), from: clock, to: clock }),
    z.strictObject({ kind: z.literal('sun'), from: sunOrClock, to: sunOrClock }),
    z.strictObject({ kind: z.literal('hours'), hours_a_day: number(0, 24) }),
  ]),
  fuse_A: z.nullable(number(0.1, 1000)),
  fuseAt_m: z.nullable(number(0, 50)),
  fuseKind: saidOr(z.enum(['glass', 'blade', 'strip', 'block', 'cartridge'])),
  sheathed: saidOr(z.boolean()),
  conductor: z.nullable(
    z.strictObject({
      area_mm2: number(0.1, 200),
      insulation_C: z.union([
        z.literal(60),
        z.literal(70),
        z.literal(75),
        z.literal(85),
        z.literal(90),
        z.literal(105),
      ]),
      lengthThereAndBack_m: number(0, 200),
      bundled: whole(1, 100),
      engineSpace: z.boolean(),
    }),
  ),
  needs: z.enum(['critical', 'other']),
  zone: z.nullable(id),
});

export const readingSchema = z.strictObject({
  battery: id,
  at,
  volts: number(0, 60),
  current_A: z.nullable(number(-1000, 1000)),
  air_C: z.nullable(number(-60, 60)),
  circumstance: z.enum(['rested', 'under load', 'on charge', 'not said']),
  on: list(id),
  panelDark: z.nullable(z.boolean()),
  by: z.enum(['hand', 'file']),
  order,
});

export const readingBlockSchema = z.strictObject({
  battery: id,
  blob: z.string().check(z.regex(/^[0-9a-f]{64}$/, 'a SHA-256 as 64 hexadecimal figures')),
  from: at,
  to: at,
  count: whole(1, 10_000_000),
  columns: list(z.enum(['volts', 'current', 'air'])),
  file: text,
  order,
});

export const loadTestSchema = z.strictObject({
  battery: id,
  readings: list(id),
  circuit: z.nullable(id),
  watts: z.nullable(number(0, 10_000)),
  note: text,
});

const threeOf = (least: number, most: number) =>
  z
    .strictObject({ low: number(least, most), likely: number(least, most), high: number(least, most) })
    .check(z.refine((m) => m.low <= m.likely && m.likely <= m.high, 'low at most likely, and likely at most high'));

export const nightAheadSchema = z.strictObject({
  battery: id,
  made: at,
  morning: day,
  at,
  volts: threeOf(0, 60),
  charge_pct: threeOf(0, 100),
  order,
});
