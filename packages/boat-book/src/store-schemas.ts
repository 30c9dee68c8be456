/** The schemas of the stores' records; `schemas.ts` holds them to the types of `store-records.ts`. */
import { z } from 'zod/mini';
import { day, id, number, text, title, whole } from './field-schemas.ts';

/** A field that is left out where nobody was asked. */
const unasked = <T extends z.core.SomeType>(of: T) => z.exactOptional(z.nullable(of));

export const storeUnit = z.enum([
  '',
  'mm',
  'm',
  'm²',
  'ml',
  'l',
  'g',
  'kg',
  'pair',
  'set',
  'pack',
  'roll',
  'tube',
  'tin',
]);
export const storeAmount = number(0, 1_000_000);
/** More than none, at most a million. */
const someAmount = z.number().check(z.gt(0), z.lte(1_000_000));
const money = number(0, 10_000_000);

export const stowageSchema = z.strictObject({ name: title, within: z.nullable(id), aboard: z.boolean() });

export const storeSchema = z.strictObject({
  name: title,
  keptAt: text,
  onHand: z.boolean(),
  expected: z.nullable(day),
  lead_days: z.nullable(whole(0, 365)),
  note: text,
  stowage: unasked(id),
  amount: unasked(storeAmount),
  unit: unasked(storeUnit),
  pack: unasked(z.strictObject({ word: title, holds: someAmount })),
  got: unasked(day),
  opened: unasked(day),
  expires: unasked(day),
  keepsOpened_months: unasked(number(0, 600)),
  from: unasked(text),
  price: unasked(money),
});

export const toolSchema = z.strictObject({
  name: title,
  count: whole(0, 1000),
  keptAt: text,
  stowage: unasked(id),
  lent: unasked(z.strictObject({ to: title, count: whole(1, 1000), since: day, back: z.nullable(day) })),
});

export const stepTakeSchema = z.strictObject({
  store: id,
  amount: someAmount,
  unit: storeUnit,
  coverage: unasked(z.strictObject({ family: id, ours_m2_l: number(0.1, 100) })),
});
