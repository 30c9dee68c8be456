/** The schema of a paper, held to its type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, day, id, text, title, whole } from './field-schemas.ts';

/** The most one paper has: a manual of a few hundred pages. [bytes] */
export const mostPaper_bytes = 20_000_000;

export const paperSchema = z.strictObject({
  title,
  kind: z.enum(['registration', 'insurance', 'manual', 'receipt', 'survey', 'other']),
  blob: z.string().check(z.regex(/^[0-9a-f]{64}$/, 'a SHA-256 as 64 hexadecimal figures')),
  bytes: whole(1, mostPaper_bytes),
  type: z.enum(['application/pdf', 'image/jpeg', 'image/png', 'text/plain']),
  file: text,
  added: at,
  expires: z.nullable(day),
  fitting: z.nullable(id),
  job: z.nullable(id),
  note: text,
});
