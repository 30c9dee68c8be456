/** The schemas of conditions, minutes and cure laws, which steps, set-ups and recipes share. Held to their types in `schemas.ts`. */
import { z } from 'zod/mini';
import { number, whole, yes } from './field-schemas.ts';

export const conditionsSchema = z.strictObject({
  dry: z.exactOptional(yes),
  wind_max_kn: z.exactOptional(number(0, 120)),
  air_min_C: z.exactOptional(number(-60, 60)),
  air_max_C: z.exactOptional(number(-60, 60)),
  surface_min_C: z.exactOptional(number(-60, 100)),
  humidity_max_pct: z.exactOptional(number(1, 100)),
  dewMargin_min_C: z.exactOptional(number(0, 30)),
  daylight: z.exactOptional(yes),
});

const figureFrom = z.enum(['the tin', 'common practice', 'a published source', 'our assumption']);
/** Up to 90 days, the longest there is to plan. */
const cureMinutes = number(1, 129_600);

export const cureLawSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('set time'), minutes: whole(0, 129_600), from: figureFrom }),
  z.strictObject({
    kind: z.literal('reacts'),
    atReference_min: cureMinutes,
    reference_C: number(-60, 60),
    doublesPer_C: number(1, 60),
    minimum_C: number(-60, 60),
    from: figureFrom,
  }),
  z.strictObject({
    kind: z.literal('moisture'),
    depth_mm: number(0.1, 100),
    firstDay_mm: number(0.1, 100),
    reference_C: number(-60, 60),
    reference_pct: number(1, 100),
    minimum_C: number(-60, 60),
    from: figureFrom,
  }),
  z.strictObject({
    kind: z.literal('dries'),
    atReference_min: cureMinutes,
    reference_C: number(-60, 60),
    doublesPer_C: number(1, 60),
    stopsAt_pct: number(1, 100),
    minimum_C: number(-60, 60),
    from: figureFrom,
  }),
  z.strictObject({ kind: z.literal('never cures'), from: figureFrom }),
]);

/** A day and a night: no step is longer. */
export const stepMinutes = whole(1, 1440);

export const minutesSchema = z
  .strictObject({ low: stepMinutes, likely: stepMinutes, high: stepMinutes })
  .check(z.refine((m) => m.low <= m.likely && m.likely <= m.high, 'low at most likely, and likely at most high'));
