/** The schemas of the records of what bears load, held to their types at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { day, id, list, number, text, title, whole } from './field-schemas.ts';

const size_mm = number(0.5, 200);
const measured = z.nullable(number(0.1, 1000));
const metal = z.enum(['stainless', 'galvanised', 'bronze', 'aluminium', 'plastic']);
const fibre = z.enum(['polyester', 'nylon', 'polypropylene', 'polyester-braid', 'polyethylene-braid']);
const seen = z.nullable(z.boolean());

/** What every part has, whatever it is. */
const ofAnyPart = {
  id,
  name: z.string().check(z.maxLength(300)),
  since: z.nullable(day),
  juryRig: z.nullable(id),
  marked: z.nullable(
    z.strictObject({ force_kN: number(0.001, 1000), as: z.enum(['working load', 'breaking load']), by: text }),
  ),
  signs: z.nullable(
    list(
      z.enum([
        'faded',
        'stiff',
        'chafed',
        'cut strand',
        'broken wires',
        'kinked',
        'rust',
        'pitted',
        'worn',
        'bent',
        'cracked',
      ]),
    ),
  ),
};

const partSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('rope'), fibre, size_mm, ...ofAnyPart }),
  z.strictObject({ kind: z.literal('lashing'), fibre, size_mm, passes: whole(1, 50), ...ofAnyPart }),
  z.strictObject({
    kind: z.literal('wire'),
    laid: z.enum(['1x19', '7x7', '7x19']),
    size_mm,
    make: z.enum(['316', 'aircraft']),
    ...ofAnyPart,
  }),
  z.strictObject({
    kind: z.literal('chain'),
    grade: z.nullable(z.enum(['30', '40', '43', '70'])),
    size_mm,
    metal: z.enum(['galvanised', 'stainless']),
    inside_mm: measured,
    ...ofAnyPart,
  }),
  z.strictObject({
    kind: z.literal('shackle'),
    make: z.enum(['lifting', 'stainless', 'galvanised']),
    size_mm,
    pin_mm: measured,
    jaw_mm: measured,
    moused: seen,
    ...ofAnyPart,
  }),
  z.strictObject({ kind: z.literal('thimble'), size_mm, metal, opening_mm: measured, ...ofAnyPart }),
  z.strictObject({
    kind: z.literal('ending'),
    ending: z.enum([
      'bowline',
      'figure-eight-loop',
      'figure-eight-end',
      'square-knot',
      'becket-bend',
      'clove-hitch',
      'round-turn',
      'anchor-bend',
      'overhand',
      'eye-splice',
      'short-splice',
      'ferrule',
      'swage',
      'cone',
      'clips',
      'hand-splice',
      'socket',
      'wedge',
    ]),
    ...ofAnyPart,
  }),
  z.strictObject({
    kind: z.literal('block'),
    sheave_mm: measured,
    line_mm: measured,
    turn_deg: z.nullable(number(0, 180)),
    metal,
    ...ofAnyPart,
  }),
  z.strictObject({
    kind: z.literal('fitting'),
    what: z.enum(['anchor', 'pad eye', 'cleat', 'post', 'chain plate', 'ring', 'hook', 'other']),
    metal,
    eye_mm: measured,
    thickness_mm: measured,
    ...ofAnyPart,
  }),
  z.strictObject({ kind: z.literal('pin'), size_mm, metal, secured: seen, ...ofAnyPart }),
  z.strictObject({
    kind: z.literal('rigging screw'),
    thread_mm: size_mm,
    metal,
    pin_mm: measured,
    jaw_mm: measured,
    locked: seen,
    ...ofAnyPart,
  }),
  z.strictObject({
    kind: z.literal('fastenings'),
    how: z.enum(['screws', 'bolts']),
    count: whole(1, 100),
    size_mm,
    metal,
    into: z.enum(['laminate', 'plywood', 'timber', 'aluminium', 'steel']),
    thickness_mm: measured,
    backing: z.enum(['none', 'washers', 'plate']),
    pulled: z.enum(['out', 'across']),
    ...ofAnyPart,
  }),
  z.strictObject({ kind: z.literal('winch'), ratio: z.nullable(number(1, 200)), ...ofAnyPart }),
  z.strictObject({ kind: z.literal('hand'), how: z.enum(['pull', 'crank']), ...ofAnyPart }),
]);

export const loadPathSchema = z.strictObject({
  name: title,
  use: z.enum(['standing-rigging', 'running-rigging', 'ground-tackle', 'hoist']),
  zone: z.nullable(id),
  parts: list(partSchema),
  cases: list(
    z.strictObject({
      id,
      name: title,
      force_N: number(0.1, 1_000_000),
      wind_kn: z.nullable(number(1, 120)),
      from: text,
    }),
  ),
  note: text,
});
