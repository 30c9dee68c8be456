/** Operations on the trailer, on what stands on it, and on what its ball was weighed to press. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { type Edit, refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { ballMeasured, logMeasured, logTakenOut } from './measured-entry.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import type { CarriedRecord, MassBand, TrailerRecord } from './trailer-records.ts';
import { ballWeighingSchema, carriedSchema } from './trailer-schemas.ts';

function refuseTurnedBand(where: string, { low_kg, likely_kg, high_kg }: MassBand): void {
  if (low_kg > likely_kg || likely_kg > high_kg)
    refuse(
      where,
      `${low_kg}, ${likely_kg} and ${high_kg} kg are not in order`,
      'the least first, then the likely, then the most',
    );
}

const [addTrailer, changeTrailer] = plainThree<'addTrailer', 'changeTrailer', 'removeTrailer'>('trailers', (record) => {
  const { emptyMass, lashings } = record as TrailerRecord;
  refuseTurnedBand('emptyMass', emptyMass);
  if (new Set(lashings.map((each) => each.id)).size !== lashings.length)
    refuse('lashings', 'two of them have the same id', 'an id of its own for each');
});

const [addCarried, changeCarried, removeCarried] = plainThree<'addCarried', 'changeCarried', 'removeCarried'>(
  'carried',
  (record) => refuseWhatCannotStand(record as CarriedRecord),
);

function refuseWhatCannotStand({ mass, moves, hoist, battery }: CarriedRecord): void {
  refuseTurnedBand('mass', mass);
  if (moves !== null && moves.aftmost_m > moves.foremost_m)
    refuse(
      'moves',
      `aftmost ${moves.aftmost_m} m lies ahead of foremost ${moves.foremost_m} m`,
      'the place farther aft first',
    );
  if (hoist !== null && battery !== null) refuse('battery', 'it is the board of a hoist already', 'one of the two');
}

/** Weighs a thing: where it is the board of a hoist, the hoist's plate with it, so that both know one mass. */
function weigh(edit: Edit, carried: string, mass: MassBand): void {
  edit.set('carried', carried, { mass, massFrom: 'weighed' });
  const { hoist } = edit.need('carried', carried, 'carried');
  if (hoist === null) return;
  const { plate } = edit.need('boardHoists', hoist, 'hoist');
  edit.set('boardHoists', hoist, { plate: { ...plate, mass: { kind: 'weighed', mass_kg: mass.likely_kg } } });
}

export const trailerOperations = {
  addTrailer,
  changeTrailer,
  removeTrailer: {
    title: 'Take out a trailer',
    does: 'Takes a trailer out of the book, with all that is written down to stand on it.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: trailer }: OperationFields<'removeTrailer'>, edit) {
      for (const [carried, record] of [...edit.all('carried')])
        if (record.trailer === trailer) edit.remove('carried', carried);
      edit.remove('trailers', trailer);
      return null;
    },
  },
  addCarried,
  changeCarried,
  removeCarried,
  changeLoad: {
    title: 'Change the load',
    does: 'Moves things on the trailer, or weighs them anew, all of them at once.',
    undoes: true,
    fields: z.strictObject({
      things: z
        .array(
          z.strictObject({
            carried: id,
            ahead_m: z.exactOptional(carriedSchema.shape.ahead_m),
            mass: z.exactOptional(carriedSchema.shape.mass),
          }),
        )
        .check(z.minLength(1), z.maxLength(200)),
    }),
    run({ things }: OperationFields<'changeLoad'>, edit) {
      for (const { carried, ahead_m, mass } of things) {
        if (ahead_m !== undefined) edit.set('carried', carried, { ahead_m });
        if (mass !== undefined) weigh(edit, carried, mass);
        refuseWhatCannotStand(edit.need('carried', carried, 'carried'));
      }
      return null;
    },
  },
  enterBallWeighing: {
    title: 'Enter a weighing of the ball',
    does: 'Enters what a bathroom scale said of the ball load, beside what the table told of it.',
    undoes: true,
    fields: z.strictObject(without(ballWeighingSchema, ['order'])),
    run(fields: OperationFields<'enterBallWeighing'>, edit) {
      edit.need('trailers', fields.trailer, 'trailer');
      if (fields.arm_mm > fields.beam_mm)
        refuse(
          'arm_mm',
          `the coupling at ${fields.arm_mm} mm presses past the scale at ${fields.beam_mm} mm`,
          `at most ${fields.beam_mm} mm`,
        );
      logMeasured(edit, ballMeasured(edit, fields));
      return edit.fix('ballWeighings', fields);
    },
  },
  removeBallWeighing: {
    title: 'Take out a weighing of the ball',
    does: 'Takes what a scale said of the ball load out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: weighing }: OperationFields<'removeBallWeighing'>, edit) {
      logTakenOut(edit, ballMeasured(edit, edit.need('ballWeighings', weighing, 'id')));
      edit.unfix('ballWeighings', weighing);
      return null;
    },
  },
  putTableRight: {
    title: 'Put the table right',
    does: 'Puts the place of a thing on the trailer right by what the scale said. It was not moved, so the weighing has it so too.',
    undoes: true,
    fields: z.strictObject({ weighing: id, carried: id, ahead_m: carriedSchema.shape.ahead_m }),
    run({ weighing, carried, ahead_m }: OperationFields<'putTableRight'>, edit) {
      const { order: _, ...said } = edit.need('ballWeighings', weighing, 'weighing');
      const { ballAhead_m } = edit.need('trailers', said.trailer, 'trailer');
      const stood = said.stood.find((each) => each.carried === carried);
      if (stood === undefined) refuse('carried', 'it did not stand on the trailer then', 'a thing that did');
      const gain_kg = (stood.mass_kg * (ahead_m - stood.ahead_m)) / ballAhead_m;
      edit.set('carried', carried, { ahead_m });
      edit.unfix('ballWeighings', weighing);
      return edit.fix('ballWeighings', {
        ...said,
        told_kg: said.told_kg + gain_kg,
        stood: said.stood.map((each) =>
          each.carried === carried ? { ...each, ahead_m, ball_kg: each.ball_kg + gain_kg } : each,
        ),
      });
    },
  },
} satisfies Partial<Operations>;
