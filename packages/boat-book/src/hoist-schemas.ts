/** The schemas of the records of what lifts the board, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, id, number, text, title, whole } from './field-schemas.ts';

const bearing = z.enum(['ball', 'plain', 'old']);

const lineSchema = z.strictObject({
  of: z.enum([
    ...(['1x19', '7x7', '7x19'] as const),
    ...(['polyester', 'nylon', 'polypropylene', 'polyester-braid', 'polyethylene-braid'] as const),
  ]),
  size_mm: number(0.5, 24),
  ending: z.nullable(
    z.enum([
      ...(['ferrule', 'swage', 'cone', 'clips', 'hand-splice', 'socket', 'wedge'] as const),
      ...(['bowline', 'figure-eight-loop', 'anchor-bend', 'round-turn', 'eye-splice'] as const),
    ]),
  ),
});

export const boardHoistSchema = z.strictObject({
  name: title,
  zone: z.nullable(id),
  plate: z.strictObject({
    length_m: number(0.1, 4),
    breadth_m: number(0.02, 2),
    density_kg_m3: number(300, 12_000),
    mass: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('weighed'), mass_kg: number(0.5, 500) }),
      z.strictObject({ kind: z.literal('by its sizes'), thickness_mm: number(1, 200) }),
    ]),
  }),
  moves: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('turns'),
      massAlong_m: number(0.01, 4),
      massSquare_m: number(-1, 1),
      attachedAlong_m: number(-1, 4),
      attachedSquare_m: number(-1, 1),
      leadAft_m: number(-2, 4),
      leadUp_m: number(0, 4),
      down_deg: number(10, 110),
      up_deg: number(-20, 60),
    }),
    z.strictObject({
      kind: z.literal('slides'),
      travel_m: number(0.05, 3),
      topAboveWater_m: number(-3, 3),
      offMiddle_m: number(-1, 1),
      held_m: number(0.05, 3),
    }),
  ]),
  wire: lineSchema,
  leads: z.strictObject({ count: whole(0, 6), bearing, sheave_mm: z.nullable(number(5, 300)) }),
  tackles: z
    .array(
      z.strictObject({
        movingSheaves: whole(0, 4),
        fixedSheaves: whole(0, 4),
        endAt: z.enum(['moving', 'fixed']),
        bearing,
      }),
    )
    .check(z.maxLength(3)),
  cord: z.nullable(lineSchema),
  winch: z.nullable(
    z.strictObject({
      gear: number(1, 20),
      handle_mm: number(50, 600),
      drum_mm: number(10, 400),
      width_mm: number(5, 300),
      woundWhenDown_m: number(0, 20),
    }),
  ),
  note: text,
});

export const hoistForceSchema = z.strictObject({
  hoist: id,
  at,
  handling: z.enum(['hoisting', 'lowering']),
  hauled_pct: z.nullable(number(0, 100)),
  in: z.enum(['air', 'sea']),
  hand_N: number(0, 2000),
  foretold_N: number(0, 100_000),
  with: text,
  note: text,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
