/** Operations on batteries, panels, chargers and circuits, and on what was read of them. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { blockMeasured, loadTestMeasured, logMeasured, logTakenOut, readingsMeasured } from './measured-entry.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import type { LoadTest } from './power-records.ts';
import { loadTestSchema, nightAheadSchema, readingBlockSchema, readingSchema } from './power-schemas.ts';

const [addBattery, changeBattery, removeBattery] = plainThree<'addBattery', 'changeBattery', 'removeBattery'>(
  'batteries',
);
const [addPanel, changePanel, removePanel] = plainThree<'addPanel', 'changePanel', 'removePanel'>('panels');
const [addCharger, changeCharger, removeCharger] = plainThree<'addCharger', 'changeCharger', 'removeCharger'>(
  'chargers',
);
const [addCircuit, changeCircuit, removeCircuit] = plainThree<'addCircuit', 'changeCircuit', 'removeCircuit'>(
  'circuits',
);
const [addLoadTest, changeLoadTest, removeLoadTest] = plainThree<'addLoadTest', 'changeLoadTest', 'removeLoadTest'>(
  'loadTests',
  (record) => refuseUnknownLoad(record as Pick<LoadTest, 'circuit' | 'watts'>),
);

function refuseUnknownLoad({ circuit, watts }: Pick<LoadTest, 'circuit' | 'watts'>): void {
  if (circuit === null && watts === null) refuse('watts', 'nothing is said of what drew', 'a circuit, or watts');
}

const newReadingSchema = z.strictObject(without(readingSchema, ['order']));

/** Nights foretold that are kept a battery: more than two years of nights aboard. */
const nightsKept = 400;

export const powerOperations = {
  addBattery,
  changeBattery,
  removeBattery,
  addPanel,
  changePanel,
  removePanel,
  addCharger,
  changeCharger,
  removeCharger,
  addCircuit,
  changeCircuit,
  removeCircuit,
  addLoadTest,
  changeLoadTest,
  removeLoadTest,
  enterLoadTest: {
    title: 'Enter a load test',
    does: 'Enters a load test with what was read in it; undo takes all of it back together.',
    undoes: true,
    fields: z.strictObject({
      ...loadTestSchema.shape,
      readings: z.array(newReadingSchema).check(z.minLength(2), z.maxLength(500)),
    }),
    run({ readings, ...test }: OperationFields<'enterLoadTest'>, edit) {
      edit.need('batteries', test.battery, 'battery');
      refuseUnknownLoad(test);
      readings.forEach((reading, i) => {
        const where = `readings › ${i + 1}. › at`;
        if (reading.battery !== test.battery)
          refuse(`readings › ${i + 1}. › battery`, 'it is another battery’s', 'the battery of the test');
        const before = readings[i - 1];
        if (before && Date.parse(reading.at) <= Date.parse(before.at))
          refuse(where, `${reading.at} is not after the reading before it`, `later than ${before.at}`);
      });
      logMeasured(edit, loadTestMeasured(edit, test, readings));
      return edit.put('loadTests', { ...test, readings: readings.map((reading) => edit.fix('readings', reading)) });
    },
  },
  enterReadings: {
    title: 'Enter readings',
    does: 'Enters what a voltmeter showed, with its circumstances; undo takes them back together.',
    undoes: true,
    fields: z.strictObject({
      readings: z.array(newReadingSchema).check(z.minLength(1), z.maxLength(500)),
    }),
    run({ readings }: OperationFields<'enterReadings'>, edit) {
      const ids = readings.map((reading, i) => {
        edit.need('batteries', reading.battery, `readings › ${i + 1}. › battery`);
        for (const circuit of reading.on) edit.need('circuits', circuit, `readings › ${i + 1}. › on`);
        return edit.fix('readings', reading);
      });
      for (const battery of new Set(readings.map((reading) => reading.battery)))
        logMeasured(
          edit,
          readingsMeasured(
            edit,
            battery,
            readings.filter((reading) => reading.battery === battery),
          ),
        );
      return ids[0] ?? null;
    },
  },
  removeReading: {
    title: 'Take out a reading',
    does: 'Takes a reading out of the book, unless a load test names it.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: reading }: OperationFields<'removeReading'>, edit) {
      const users = edit.usersOf('readings', reading);
      if (users.length > 0) refuse('id', `this reading is still named by ${users[0]}`, 'take the load test out first');
      const { order: _, ...record } = edit.need('readings', reading, 'id');
      logTakenOut(edit, readingsMeasured(edit, record.battery, [record]));
      edit.unfix('readings', reading);
      return null;
    },
  },
  keepReadingBlock: {
    title: 'Keep readings from a file',
    does: 'Keeps a block of readings that came from a file.',
    undoes: true,
    fields: z.strictObject(without(readingBlockSchema, ['order'])),
    run(fields: OperationFields<'keepReadingBlock'>, edit) {
      edit.need('batteries', fields.battery, 'battery');
      for (const [, same] of edit.all('readingBlocks')) {
        if (same.blob === fields.blob && same.battery === fields.battery)
          refuse('file', `the same readings are in the book already, from ‘${same.file}’`, 'a file with others');
      }
      if (fields.to < fields.from) refuse('to', `${fields.to} is before ${fields.from}`, `${fields.from} or later`);
      logMeasured(edit, blockMeasured(edit, fields));
      return edit.fix('readingBlocks', fields);
    },
  },
  removeReadingBlock: {
    title: 'Take out readings from a file',
    does: 'Takes a block of readings out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: block }: OperationFields<'removeReadingBlock'>, edit) {
      logTakenOut(edit, blockMeasured(edit, edit.need('readingBlocks', block, 'id')));
      edit.unfix('readingBlocks', block);
      return null;
    },
  },
  keepNightAhead: {
    title: 'Keep what a night is to bring',
    does: 'Keeps what was foretold of a night, to be held beside the morning’s reading; the latest of each evening counts.',
    // it follows from the book by itself: undo is for what the keeper did
    undoes: false,
    fields: z.strictObject(without(nightAheadSchema, ['made', 'order'])),
    run(fields: OperationFields<'keepNightAhead'>, edit) {
      edit.need('batteries', fields.battery, 'battery');
      const made = edit.fix('nightsAhead', { ...fields, made: edit.now });
      const others = [...edit.all('nightsAhead')].filter(
        ([nightId, night]) => nightId !== made && night.battery === fields.battery,
      );
      others.sort(([, a], [, b]) => (a.order ?? 0) - (b.order ?? 0));
      const same = others.filter(([, night]) => night.morning === fields.morning);
      const old = others.filter(([, night]) => night.morning !== fields.morning).slice(0, -(nightsKept - 1));
      for (const [nightId] of [...same, ...old]) edit.unfix('nightsAhead', nightId);
      return made;
    },
  },
} satisfies Partial<Operations>;
