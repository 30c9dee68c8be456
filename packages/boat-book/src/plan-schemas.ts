/** The schema of a plan that was kept: the planner's answer, as it was given. */
import { z } from 'zod/mini';
import type { Obstacle, Plan, Verdict } from '#workplan';
import { at, id, list, number, text, whole } from './field-schemas.ts';
import type { KeptPlan } from './records.ts';

/** Minutes from the plan's start; work that began before it lies below 0. */
const minute = whole(-10_000_000, 10_000_000);
const long = <T extends z.core.SomeType>(of: T) => z.array(of).check(z.maxLength(20_000));

const planSchema: z.ZodMiniType<Plan> = z.strictObject({
  steps: long(
    z.strictObject({
      step: id,
      start: minute,
      finish: minute,
      hands: list(id),
      day: z.nullable(id),
      batchOf: z.nullable(id),
      abrade_min: whole(0, 1440),
    }),
  ),
  waits: long(z.strictObject({ step: id, wait: id, start: minute, finish: minute, tooCold: z.boolean() })),
  changes: long(
    z.strictObject({
      aspect: id,
      from: id,
      to: id,
      start: minute,
      finish: minute,
      hands: list(id),
      day: id,
    }),
  ),
  leftOut: long(id),
});

const kind = <K extends string>(name: K) => z.literal(name);
const jobStep = { job: id, step: id };

const obstacleSchema: z.ZodMiniType<Obstacle> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: kind('not in stores'), ...jobStep, store: id, from: z.nullable(minute) }),
  z.strictObject({ kind: kind('no second hand'), ...jobStep }),
  z.strictObject({ kind: kind('no hands'), ...jobStep, need: z.number() }),
  z.strictObject({ kind: kind('no tool'), ...jobStep, tool: id }),
  z.strictObject({ kind: kind('no such place'), ...jobStep, feature: text }),
  z.strictObject({
    kind: kind('weather'),
    ...jobStep,
    condition: text,
    need_min: z.number(),
    best_min: z.number(),
    bestDay: z.nullable(text),
  }),
  z.strictObject({ kind: kind('set-up out of reach'), ...jobStep, aspect: id, states: list(id) }),
  z.strictObject({ kind: kind('longer than any day'), ...jobStep, minutes: z.number(), longest_min: z.number() }),
  z.strictObject({ kind: kind('wait not over in time'), ...jobStep, wait: id, by: minute }),
  z.strictObject({ kind: kind('wait needs not kept'), ...jobStep, wait: id, need: text }),
  z.strictObject({ kind: kind('deadline'), job: id, earliest: z.nullable(minute), deadline: minute }),
  z.strictObject({ kind: kind('window missed'), ...jobStep, before: id }),
  z.strictObject({ kind: kind('waits for a job left out'), ...jobStep, other: id }),
  z.strictObject({ kind: kind('steps wait for each other'), job: id, steps: list(id) }),
  z.strictObject({ kind: kind('held elsewhere'), ...jobStep }),
  z.strictObject({ kind: kind('no room left'), job: id, need_min: z.number(), free_min: z.number() }),
]);

const bound = z.number();
const gap = number(-1, 1);

const verdictSchema: z.ZodMiniType<Verdict> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: kind('proved best'), finishToo: z.boolean() }),
  z.strictObject({ kind: kind('good, gap known'), bound, gap }),
  z.strictObject({
    kind: kind('impossible, because'),
    because: long(obstacleSchema),
    rest: z.enum(['proved best', 'good, gap known', 'stopped early']),
    bound,
    gap,
  }),
  z.strictObject({ kind: kind('stopped early'), bound, gap }),
]);

export const keptPlanSchema = z.strictObject({
  made: at,
  startsAt: at,
  plan: planSchema,
  verdict: verdictSchema,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
}) satisfies z.ZodMiniType<KeptPlan>;
