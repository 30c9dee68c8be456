/** Operations on stays, on what was read of them, and on the mast. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { logMeasured, logTakenOut, stayMeasured } from './measured-entry.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import type { MastRecord } from './rig-records.ts';
import { stayReadingSchema } from './rig-schemas.ts';

const [addStay, changeStay, removeStay] = plainThree<'addStay', 'changeStay', 'removeStay'>('stays');
const [addMast, changeMast, removeMast] = plainThree<'addMast', 'changeMast', 'removeMast'>('masts', (record) => {
  const { from_deg, to_deg, led } = record as MastRecord;
  if (from_deg >= to_deg)
    refuse('from_deg', `it starts at ${from_deg}° and ends at ${to_deg}°`, `a start below ${to_deg}°`);
  if (led !== null && (led.by === 'A-frame') !== (led.spread_m !== null))
    refuse(
      'led › spread_m',
      led.by === 'pole' ? 'a pole has one heel' : 'how far apart its heels are is not said',
      led.by === 'pole' ? 'null' : 'metres',
    );
});

export const rigOperations = {
  addStay,
  changeStay,
  removeStay,
  addMast,
  changeMast,
  removeMast,
  enterStayReading: {
    title: 'Enter a reading of a stay',
    does: 'Enters how taut a stay was found, on a day, by what it was told.',
    undoes: true,
    fields: z.strictObject(without(stayReadingSchema, ['order'])),
    run(reading: OperationFields<'enterStayReading'>, edit) {
      const { length_m, screw } = edit.need('stays', reading.stay, 'stay');
      if (reading.turns !== 0 && screw === null)
        refuse('turns', 'the thread of its screw is not in the book', '0, or put its thread in at the stay first');
      const { told } = reading;
      if (told.kind === 'pull' && told.pulledAt_m > length_m / 2)
        refuse('told › pulledAt_m', `${told.pulledAt_m} m is past its middle`, `at most ${length_m / 2} m`);
      if (told.kind === 'stretch' && told.measured_m > length_m)
        refuse('told › measured_m', `${told.measured_m} m is longer than the stay`, `at most ${length_m} m`);
      logMeasured(edit, stayMeasured(edit, reading));
      return edit.fix('stayReadings', reading);
    },
  },
  removeStayReading: {
    title: 'Take out a reading of a stay',
    does: 'Takes a reading of a stay out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: reading }: OperationFields<'removeStayReading'>, edit) {
      logTakenOut(edit, stayMeasured(edit, edit.need('stayReadings', reading, 'id')));
      edit.unfix('stayReadings', reading);
      return null;
    },
  },
} satisfies Partial<Operations>;
