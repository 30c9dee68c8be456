/** Operations on what lifts the board, and on what the hand was seen to pull. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import type { BoardHoistRecord } from './hoist-records.ts';
import { hoistForceSchema } from './hoist-schemas.ts';
import { hoistMeasured, logMeasured, logTakenOut } from './measured-entry.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';

const [addBoardHoist, changeBoardHoist, removeBoardHoist] = plainThree<
  'addBoardHoist',
  'changeBoardHoist',
  'removeBoardHoist'
>('boardHoists', (record) => refuseWhatCannotHoist(record as BoardHoistRecord));

function refuseWhatCannotHoist({ moves, tackles, cord }: BoardHoistRecord): void {
  if (moves.kind === 'turns' && moves.up_deg >= moves.down_deg)
    refuse(
      'moves › up_deg',
      `up at ${moves.up_deg}° is not above down at ${moves.down_deg}°, both below level`,
      `less than ${moves.down_deg}°`,
    );
  if (tackles.length > 0 && cord === null) refuse('cord', 'nothing is rove through the tackle', 'its cord');
}

export const hoistOperations = {
  addBoardHoist,
  changeBoardHoist,
  removeBoardHoist,
  enterHoistForce: {
    title: 'Enter a pull',
    does: 'Enters what the hand was seen to pull at the board’s hoist, beside what was foretold of it.',
    undoes: true,
    fields: z.strictObject(without(hoistForceSchema, ['order'])),
    run(fields: OperationFields<'enterHoistForce'>, edit) {
      edit.need('boardHoists', fields.hoist, 'hoist');
      logMeasured(edit, hoistMeasured(edit, fields));
      return edit.fix('hoistForces', fields);
    },
  },
  removeHoistForce: {
    title: 'Take out a pull',
    does: 'Takes what the hand was seen to pull out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: force }: OperationFields<'removeHoistForce'>, edit) {
      logTakenOut(edit, hoistMeasured(edit, edit.need('hoistForces', force, 'id')));
      edit.unfix('hoistForces', force);
      return null;
    },
  },
} satisfies Partial<Operations>;
