/** The schema of a photograph, held to its type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, id, number, text, whole } from './field-schemas.ts';

/** The most a photograph has once it is made smaller; 500 of them still go in a boat file. [bytes] */
export const mostPhoto_bytes = 400_000;

export const photoSchema = z.strictObject({
  blob: z.string().check(z.regex(/^[0-9a-f]{64}$/, 'a SHA-256 as 64 hexadecimal figures')),
  bytes: whole(1, mostPhoto_bytes),
  width_px: whole(1, 4096),
  height_px: whole(1, 4096),
  taken: at,
  job: z.nullable(id),
  step: z.nullable(id),
  fitting: z.nullable(id),
  entry: z.nullable(id),
  shows: z.nullable(z.enum(['before', 'after', 'proof'])),
  words: text,
  position: z.nullable(z.strictObject({ latitude_deg: number(-90, 90), longitude_deg: number(-180, 180) })),
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
