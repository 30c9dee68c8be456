/** The schemas of a log entry and of what is in it. */
import { z } from 'zod/mini';
import { at, id, list, number, text, title, whole } from './field-schemas.ts';

export const currency = z.string().check(z.regex(/^[A-Z]{3}$/, 'the three letters of a currency, such as EUR'));

export const costSchema = z.strictObject({ amount: number(0, 10_000_000), currency });

export const logSchema = z.strictObject({
  at,
  kind: z.enum([
    'step done',
    'job done',
    'proved',
    'measured',
    'bedded',
    'fitted',
    'got',
    'used',
    'jury rig made',
    'jury rig trusted',
    'jury rig removed',
    'outing',
    'note',
    'taken back',
  ]),
  job: z.nullable(id),
  step: z.nullable(id),
  zone: z.nullable(id),
  who: text,
  spent_min: z.nullable(number(0, 100_000)),
  text,
  fitting: z.exactOptional(id),
  of: z.exactOptional(
    z.strictObject({
      collection: z.enum([
        'batteries',
        'stays',
        'boardHoists',
        'rodes',
        'loadPaths',
        'trailers',
        'juryRigs',
        'stores',
        'outings',
      ]),
      id,
    }),
  ),
  with: z.exactOptional(
    list(
      z.strictObject({
        name: title,
        store: z.exactOptional(id),
        amount: z.exactOptional(number(0, 1_000_000)),
        unit: z.exactOptional(text),
      }),
    ),
  ),
  cost: z.exactOptional(costSchema),
  photos: z.exactOptional(list(id)),
  corrects: z.exactOptional(id),
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
