/** The form of a problem, field by field. What must agree between fields is in `problem-faults.ts`. */
import { z } from 'zod/mini';
import type { CureLaw } from '#materials';
import type { Conditions } from '#sky';
import { isTimeZone } from '#units';
import type { Problem, StepProgress } from './problem.ts';

/** 90 days. The most a plan may span. */
export const longestHorizon_min = 90 * 24 * 60;

const most = <T extends z.core.SomeType>(of: T, length: number) => z.array(of).check(z.maxLength(length));
const list = <T extends z.core.SomeType>(of: T) => most(of, 5000);
const whole = (least: number, greatest: number) => z.int().check(z.gte(least), z.lte(greatest));
const number = (least: number, greatest: number) => z.number().check(z.gte(least), z.lte(greatest));
const over0 = (greatest: number) => z.number().check(z.gt(0), z.lte(greatest));

const id = z.string().check(z.minLength(1), z.maxLength(200));
const words = z.string().check(z.maxLength(1000));
/** A minute that may lie before the start, as that of a step done long ago. */
const anyMinute = whole(-100_000_000, 100_000_000);
const minute = whole(0, longestHorizon_min);
const minutes = whole(0, longestHorizon_min);
const count = whole(0, 10_000);
const span = z.strictObject({ from: anyMinute, to: anyMinute });
const air_C = number(-45, 60);

const conditions: z.ZodMiniType<Conditions> = z.strictObject({
  dry: z.exactOptional(z.literal(true)),
  wind_max_kn: z.exactOptional(number(0, 120)),
  air_min_C: z.exactOptional(number(-60, 60)),
  air_max_C: z.exactOptional(number(-60, 60)),
  surface_min_C: z.exactOptional(number(-60, 90)),
  humidity_max_pct: z.exactOptional(number(1, 100)),
  dewMargin_min_C: z.exactOptional(number(0, 60)),
  daylight: z.exactOptional(z.literal(true)),
});

const from = z.enum(['the tin', 'common practice', 'a published source', 'our assumption']);
const law: z.ZodMiniType<CureLaw> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('set time'), minutes: number(0, 10_000_000), from }),
  z.strictObject({
    kind: z.literal('reacts'),
    atReference_min: over0(10_000_000),
    reference_C: air_C,
    doublesPer_C: over0(100),
    minimum_C: number(-60, 60),
    from,
  }),
  z.strictObject({
    kind: z.literal('moisture'),
    depth_mm: over0(1000),
    firstDay_mm: over0(1000),
    reference_C: air_C,
    reference_pct: number(1, 100),
    minimum_C: number(-60, 60),
    from,
  }),
  z.strictObject({
    kind: z.literal('dries'),
    atReference_min: over0(10_000_000),
    reference_C: air_C,
    doublesPer_C: over0(100),
    stopsAt_pct: number(1, 101),
    minimum_C: number(-60, 60),
    from,
  }),
  z.strictObject({ kind: z.literal('never cures'), from }),
]);

const setUpNeed = z.strictObject({ aspect: id, states: list(id).check(z.minLength(1)) });

const hour = z.strictObject({
  rain: z.boolean(),
  wind_kn: number(0, 120),
  air_C,
  surface_C: z.nullable(number(-60, 90)),
  skyCooling_C: z.exactOptional(number(0, 40)),
  humidity_pct: number(1, 100),
  basis: z.enum(['typed', 'forecast', 'climate']),
  sheltered: z.boolean(),
  rainOdds_pct: z.exactOptional(number(0, 100)),
});

const feature = z.enum(['water', 'mains', 'level', 'slope']);

const progress: z.ZodMiniType<StepProgress> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('open') }),
  z.strictObject({
    kind: z.literal('under way'),
    start: anyMinute,
    expectedFinish: anyMinute,
    hands: list(id),
  }),
  z.strictObject({ kind: z.literal('done'), start: anyMinute, finish: anyMinute }),
]);

const wait = z.strictObject({
  id,
  title: words,
  law,
  needs: z.strictObject({
    dry: z.exactOptional(z.literal(true)),
    air_min_C: z.exactOptional(number(-60, 60)),
    beforeDew: z.exactOptional(z.strictObject({ dewMargin_min_C: number(0, 60), touchDry: law })),
  }),
  setUps: list(setUpNeed),
  still: list(id),
  wet: z.boolean(),
});

export const problemSchema: z.ZodMiniType<Problem> = z.strictObject({
  format: z.literal(1),
  startsAt: z
    .string()
    .check(
      z.refine(
        (at) => /^\d{4}-\d{2}-\d{2}T\d{2}:00(?::00(?:\.0{1,3})?)?Z$/.test(at) && Number.isFinite(Date.parse(at)),
        'an instant on a whole hour in UTC, as YYYY-MM-DDTHH:00:00Z',
      ),
    ),
  timeZone: z.string().check(z.refine((zone) => isTimeZone(zone), 'a time zone there is, as Area/Place')),
  horizon: whole(60, longestHorizon_min).check(z.multipleOf(60)),
  now: minute,
  days: list(
    z.strictObject({
      id,
      label: words,
      from: minute,
      to: minute,
      setOut_min: minutes,
      clearUp_min: minutes,
      breaks: list(span),
      features: list(feature),
      endsIn: list(z.strictObject({ aspect: id, state: id })),
    }),
  ),
  hands: list(z.strictObject({ id, name: words, present: list(span) })).check(z.minLength(1)),
  tools: list(
    z.strictObject({
      id,
      name: words,
      capacity: list(z.strictObject({ from: anyMinute, to: anyMinute, count })),
    }),
  ),
  zones: list(z.strictObject({ id, name: words, room: whole(1, 10_000), inside: z.boolean(), near: list(id) })),
  aspects: list(
    z.strictObject({
      id,
      name: words,
      states: list(z.strictObject({ id, name: words, shelters: z.boolean() })).check(z.minLength(1)),
      initial: id,
      changes: list(
        z.strictObject({
          from: id,
          to: id,
          minutes: whole(1, longestHorizon_min),
          hands: whole(1, 10_000),
          needs: conditions,
          setUps: list(setUpNeed),
        }),
      ),
    }),
  ),
  mixes: list(z.strictObject({ id, name: words, mixing_min: minutes, potLife_min: minutes })),
  stores: list(z.strictObject({ id, name: words, from: z.nullable(anyMinute) })),
  hours: list(hour),
  daylight: list(span),
  jobs: list(
    z.strictObject({
      id,
      title: words,
      weight: over0(1_000_000_000),
      deadline: z.nullable(anyMinute),
      optional: z.boolean(),
    }),
  ),
  steps: list(
    z.strictObject({
      id,
      job: id,
      title: words,
      minutes,
      minutes_low: z.exactOptional(minutes),
      minutes_high: z.exactOptional(minutes),
      hands: count,
      keeper: z.boolean(),
      notAlone: z.boolean(),
      zone: z.nullable(id),
      needs: conditions,
      features: list(feature),
      tools: list(z.strictObject({ tool: id, count: whole(1, 10_000) })),
      setUps: list(setUpNeed),
      stores: list(id),
      dusty: z.boolean(),
      wet: z.boolean(),
      mix: z.nullable(id),
      waits: list(wait),
      held: z.nullable(span),
      progress,
    }),
  ),
  precedence: most(
    z.strictObject({
      before: id,
      wait: z.nullable(id),
      after: id,
      least_min: minutes,
      greatest_min: z.nullable(minutes),
      past: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('forbidden') }),
        z.strictObject({ kind: z.literal('abrade'), minutes: whole(1, longestHorizon_min) }),
      ]),
    }),
    50_000,
  ),
  previous: list(z.strictObject({ step: id, start: anyMinute })),
});
