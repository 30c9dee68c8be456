/** The schemas of the records of the trailer, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, day, id, list, number, text, title, whole } from './field-schemas.ts';

const massBand = z.strictObject({ low_kg: number(0, 5000), likely_kg: number(0, 5000), high_kg: number(0, 5000) });
const ahead = number(-10, 10);
const limit_kg = (most: number) => z.nullable(number(1, most));
const kPa = z.nullable(number(50, 1000));

export const trailerSchema = z.strictObject({
  name: title,
  zone: z.nullable(id),
  ballAhead_m: number(1, 10),
  axles: z.union([z.literal(1), z.literal(2)]),
  braked: z.boolean(),
  emptyMass: massBand,
  emptyPlace: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('ball weighed'), ball_kg: number(-200, 500), give_kg: number(0, 100) }),
    z.strictObject({ kind: z.literal('centre'), ahead_m: ahead, give_m: number(0, 3) }),
  ]),
  stemAhead_m: z.nullable(ahead),
  wheel_m: z.nullable(number(0.2, 1.2)),
  boatMoves: z.nullable(z.strictObject({ aft_m: number(0, 3), forward_m: number(0, 3) })),
  carBall_kg: limit_kg(500),
  barBall_kg: limit_kg(500),
  couplingBall_kg: limit_kg(500),
  gross_kg: limit_kg(20_000),
  axle_kg: limit_kg(20_000),
  train_kg: limit_kg(40_000),
  carKerb_kg: limit_kg(20_000),
  carLaden_kg: limit_kg(20_000),
  limitsRead: z.nullable(day),
  advice: z.enum(['uk', 'us']),
  tyres: z.nullable(
    z.strictObject({
      size: text,
      count: whole(1, 8),
      loadIndex: z.nullable(whole(20, 200)),
      speed: z.nullable(z.string().check(z.regex(/^[A-Z][1-8]?$/, 'the letter after the load index, as N'))),
      pressure_kPa: kPa,
      asked_kPa: kPa,
      wheels: list(
        z.strictObject({
          wheel: title,
          spare: z.boolean(),
          code: z.nullable(z.string().check(z.maxLength(20))),
          tread_mm: z.nullable(number(0, 20)),
        }),
      ),
      readOn: day,
    }),
  ),
  towed_km_h: z.nullable(number(5, 200)),
  friction: z.nullable(number(0, 1)),
  post_N: z.nullable(number(0, 200_000)),
  boardRests: z.nullable(z.boolean()),
  lashings: list(
    z.strictObject({
      id,
      name: title,
      kind: z.enum(['strap', 'winch line']),
      holds: z.enum(['forward', 'sideways', 'rearward']),
      capacity_N: z.nullable(number(1, 200_000)),
      above_deg: number(0, 90),
      aside_deg: number(0, 90),
      hull_N: z.nullable(number(0, 200_000)),
    }),
  ),
  note: text,
});

export const carriedSchema = z.strictObject({
  trailer: id,
  name: title,
  rides: z.enum(['boat', 'trailer']),
  mass: massBand,
  massFrom: z.enum(['weighed', 'its maker', 'guessed']),
  ahead_m: ahead,
  give_m: number(0, 3),
  up_m: z.nullable(number(-1, 15)),
  moves: z.nullable(z.strictObject({ aftmost_m: ahead, foremost_m: ahead })),
  aboard: z.boolean(),
  hoist: z.nullable(id),
  battery: z.nullable(id),
  note: text,
});

export const ballWeighingSchema = z.strictObject({
  trailer: id,
  at,
  scale_kg: number(0, 250),
  arm_mm: number(1, 5000),
  beam_mm: number(10, 10_000),
  told_kg: number(-5000, 5000),
  stood: list(
    z.strictObject({
      carried: z.nullable(id),
      name: title,
      mass_kg: number(0, 5000),
      ahead_m: ahead,
      ball_kg: number(-5000, 5000),
      give_kg: number(0, 5000),
    }),
  ),
  note: text,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
