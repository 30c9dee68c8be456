/** The schemas of the morning lists, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, id, list, number, text, title, whole } from './field-schemas.ts';

const listName = z.enum(['pack', 'tow', 'rig', 'launch', 'recover']);
/** An id, or one of another collection after its word: `rig.` and the id of a jury rig. */
export const lineNamed = z.string().check(z.minLength(1), z.maxLength(120));

export const morningLineSchema = z.strictObject({
  list: listName,
  outing: z.nullable(id),
  of: z.nullable(lineNamed),
  text: z.nullable(title),
  out: z.nullable(z.boolean()),
  place: z.nullable(number(-1_000_000, 1_000_000)),
  setAside: list(z.strictObject({ before: lineNamed, after: lineNamed, reason: title })),
});

export const morningTickSchema = z.strictObject({
  outing: id,
  list: listName,
  round: whole(1, 1000),
  line: z.nullable(lineNamed),
  text,
  came: z.enum(['good', 'failed', 'list done']),
  job: z.nullable(id),
  at,
  who: text,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
