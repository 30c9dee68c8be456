/** The schemas of jury rigs and of how far they came to be trusted, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, day, id, number, text, title, whole } from './field-schemas.ts';

/** Trusted until the day, and within the limits, whichever comes first. */
export const trustFields = {
  trustedUntil: day,
  wind_max_kn: z.nullable(number(0, 120)),
  sails_max: z.nullable(whole(0, 1000)),
  notOnRoad: z.boolean(),
};

export const juryRigSchema = z.strictObject({
  title,
  job: z.nullable(id),
  zone: z.nullable(id),
  reason: text,
  made: day,
  ...trustFields,
  state: z.enum(['standing', 'removed']),
});

export const rigTrustSchema = z.strictObject({
  rig: id,
  on: day,
  ...trustFields,
  reason: title,
  entered: at,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
