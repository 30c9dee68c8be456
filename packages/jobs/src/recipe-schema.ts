/** The form of a recipe, held to the types of `recipe.ts` in both directions at the foot of this file. */
import { z } from 'zod/mini';
import type { Recipe } from './recipe.ts';

/** A name, title or sentence: something must stand in it. */
const words = (most: number) =>
  z.string().check(
    z.refine((v) => v.trim() !== '' && v === v.trim(), 'some words, without spaces around them'),
    z.maxLength(most),
  );
const number = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
const list = <T extends z.core.SomeType>(of: T, most = 100) => z.array(of).check(z.maxLength(most));
/** A name inside the recipe: letters, figures and hyphens. */
const key = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,40}$/, 'small letters, figures and hyphens'));

const minutes = z
  .strictObject({ low: whole(1, 1440), likely: whole(1, 1440), high: whole(1, 1440) })
  .check(
    z.refine(
      ({ low, likely, high }) => low <= likely && likely <= high,
      'low no more than likely, likely no more than high',
    ),
  );
const yes = z.literal(true);
const conditions = z.strictObject({
  dry: z.exactOptional(yes),
  wind_max_kn: z.exactOptional(number(0, 120)),
  air_min_C: z.exactOptional(number(-60, 60)),
  air_max_C: z.exactOptional(number(-60, 60)),
  surface_min_C: z.exactOptional(number(-60, 100)),
  humidity_max_pct: z.exactOptional(number(1, 100)),
  dewMargin_min_C: z.exactOptional(number(0, 30)),
  daylight: z.exactOptional(yes),
});
const setUp = z.strictObject({ setUp: words(60), state: words(60) });

const input = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('asked'), ask: key, times: z.exactOptional(number(0.001, 1000)) }),
  z.strictObject({ from: z.literal('boat'), size: z.enum(['length_m', 'beam_m', 'draft_m', 'mastHeight_m']) }),
  z.strictObject({ from: z.literal('set'), value: z.union([z.number(), words(60)]) }),
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
    inputs: z.record(words(60), input),
    figure: words(40),
    waste_pct: number(0, 200),
    unit: words(20),
  }),
  z.strictObject({
    kind: z.literal('set'),
    amount: number(0.001, 10_000),
    unit: z.string().check(z.maxLength(20)),
    because: words(200),
  }),
]);

const pack = z.nullable(z.strictObject({ holds: number(0.001, 10_000), word: words(30) }));

const wait = z.strictObject({
  title: words(120),
  law: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('product'), product: key, depth_mm: z.exactOptional(number(0.1, 100)) }),
    z.strictObject({ kind: z.literal('set time'), minutes: whole(1, 129_600), because: words(200) }),
  ]),
  needs: z.strictObject({ dry: z.exactOptional(yes), air_min_C: z.exactOptional(number(-60, 60)) }),
  setUps: list(setUp),
  still: list(words(60)),
  wet: z.boolean(),
});

const step = z.strictObject({
  title: words(300),
  minutes,
  hands: whole(0, 8),
  notAlone: z.boolean(),
  needs: conditions,
  features: list(z.enum(['water', 'mains', 'level', 'slope'])),
  tools: list(words(60)),
  setUps: list(setUp),
  stores: list(z.strictObject({ name: words(120), words: list(words(40)).check(z.minLength(1)), amount, pack })),
  dusty: z.boolean(),
  wet: z.boolean(),
  waits: list(wait),
  window: z.nullable(
    z.strictObject({
      greatest_min: whole(1, 129_600),
      past: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('forbidden') }),
        z.strictObject({ kind: z.literal('abrade'), minutes: whole(1, 1440) }),
      ]),
    }),
  ),
  cautions: list(words(500)),
});

export const recipeSchema = z.strictObject({
  title: words(120),
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
  words: list(words(60)),
  when: words(1000),
  consequence: z.enum(['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort']),
  zones: list(words(60)),
  asks: list(
    z.strictObject({
      id: key,
      words: words(120),
      unit: z.enum(['', 'mm', 'm', 'm²', 'l', 'h']),
      low: number(0, 100_000),
      high: number(0, 100_000),
      whole: z.boolean(),
    }),
    20,
  ),
  steps: list(step).check(z.minLength(1)),
  proof: z.strictObject({
    kind: z.enum(['load', 'hoist', 'hose', 'continuity', 'pull', 'photograph', 'measure', 'run', 'look', 'soak']),
    step,
  }),
  followUps: list(z.strictObject({ title: words(120), because: words(300), minutes }), 20),
  writeDown: list(words(200), 30),
});

type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
type Loose<T> = T extends readonly (infer E)[]
  ? readonly Loose<E>[]
  : T extends object
    ? { readonly [K in keyof T]: Loose<T[K]> }
    : T;
/** @public read by nobody: it is the place where schema and type are held together */
export type SchemaHoldsRecipe = [Same<Loose<z.output<typeof recipeSchema>>, Loose<Recipe>>] extends [true]
  ? true
  : never;
