/** The schema of recipes, the house's and the keeper's, held to the type of `#jobs` at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { id, list, mixRatio, number, title, whole, yes } from './field-schemas.ts';
import { conditionsSchema, cureLawSchema, minutesSchema, stepMinutes } from './law-schemas.ts';

/** A sentence or two: something must stand in it. At most 2,000 characters. */
const sentence = z.string().check(
  z.refine((v) => v.trim() !== '', 'some words'),
  z.maxLength(2000),
);
/** A name inside the recipe: letters, figures and hyphens. */
const key = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,40}$/, 'small letters, figures and hyphens'));

const setUp = z.strictObject({ setUp: title, state: title });

const input = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('asked'), ask: key, times: z.exactOptional(number(0.001, 1000)) }),
  z.strictObject({ from: z.literal('boat'), size: z.enum(['length_m', 'beam_m', 'draft_m', 'mastHeight_m']) }),
  z.strictObject({ from: z.literal('set'), value: z.union([z.number(), title]) }),
  z.strictObject({ from: z.literal('coverage'), family: id, ours_m2_l: number(0.5, 50) }),
]);
const amount = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('each'),
    of: key,
    times: number(0.001, 1000),
    spare: number(0, 1000),
    unit: z.string().check(z.maxLength(20)),
  }),
  z.strictObject({
    kind: z.literal('question'),
    question: z.string().check(z.regex(/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/, 'subject.question in small letters')),
    inputs: z.record(title, input),
    figure: title,
    waste_pct: number(0, 200),
    unit: title,
  }),
  z.strictObject({
    kind: z.literal('set'),
    amount: number(0.001, 10_000),
    unit: z.string().check(z.maxLength(20)),
    because: sentence,
  }),
]);

const consequence = z.enum(['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort']);
const pack = z.nullable(z.strictObject({ holds: number(0.001, 10_000), word: title }));

const wait = z.strictObject({
  title: title,
  law: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('product'), product: key, depth_mm: z.exactOptional(number(0.1, 100)) }),
    z.strictObject({ kind: z.literal('set time'), minutes: whole(1, 129_600), because: sentence }),
    z.strictObject({ kind: z.literal('own law'), law: cureLawSchema }),
  ]),
  needs: z.strictObject({ dry: z.exactOptional(yes), air_min_C: z.exactOptional(number(-60, 60)) }),
  setUps: list(setUp),
  still: list(title),
  wet: z.boolean(),
});

const step = z.strictObject({
  title: title,
  minutes: minutesSchema,
  hands: whole(0, 8),
  notAlone: z.boolean(),
  needs: conditionsSchema,
  features: list(z.enum(['water', 'mains', 'level', 'slope'])),
  tools: list(title),
  setUps: list(setUp),
  stores: list(
    z.strictObject({ name: title, words: list(title).check(z.minLength(1)), amount, size: z.nullable(key), pack }),
  ),
  dusty: z.boolean(),
  wet: z.boolean(),
  mix: z.nullable(
    z.strictObject({
      name: title,
      family: z.nullable(id),
      mixing_min: whole(0, 1440),
      potLife_min: whole(1, 10_080),
      of: z.nullable(title),
      density_g_ml: number(0.1, 10),
      ratio: z.exactOptional(z.nullable(mixRatio)),
    }),
  ),
  waits: list(wait),
  window: z.nullable(
    z.strictObject({
      greatest_min: whole(1, 129_600),
      past: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('forbidden') }),
        z.strictObject({ kind: z.literal('abrade'), minutes: stepMinutes }),
      ]),
    }),
  ),
  cautions: list(sentence),
});

export const followUpSchema = z.strictObject({
  title,
  because: sentence,
  minutes: minutesSchema,
  consequence,
  after: z.discriminatedUnion('kind', [
    z
      .strictObject({ kind: z.literal('days'), least_days: whole(0, 400), most_days: whole(0, 400) })
      .check(z.refine((after) => after.least_days <= after.most_days, 'the least days first, then the most')),
    z.strictObject({ kind: z.literal('next outing'), else_days: whole(1, 400) }),
  ]),
});

export const proofKind = z.enum([
  'load',
  'hoist',
  'hose',
  'continuity',
  'pull',
  'photograph',
  'measure',
  'run',
  'look',
  'soak',
]);

export const recipeSchema = z.strictObject({
  title: title,
  group: z.enum([
    'ground tackle',
    'standing rigging',
    'running rigging',
    'sails and covers',
    'board and case',
    'rudder and steering',
    'hull and deck',
    'through-hulls, drains and leaks',
    'paint and varnish',
    'electrics',
    'trailer',
    'outboard',
    'safety gear',
    'cabin',
    'lay-up and fit-out',
  ]),
  words: list(title),
  when: sentence,
  consequence,
  zones: list(title),
  asks: list(
    z.strictObject({
      id: key,
      words: title,
      unit: z.enum(['', 'mm', 'm', 'm²', 'l', 'h']),
      low: number(0, 100_000),
      high: number(0, 100_000),
      whole: z.boolean(),
    }),
  ),
  steps: list(step).check(z.minLength(1)),
  proof: z.strictObject({
    kind: proofKind,
    step,
  }),
  followUps: list(followUpSchema),
  writeDown: list(sentence),
});

/** The id of a recipe of the house. */
const houseId = z.string().check(z.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'the id of a recipe of the house'));

export const recipeRecordSchema = z.strictObject({
  ...recipeSchema.shape,
  standsFor: z.nullable(houseId),
  fromJob: z.nullable(id),
});
