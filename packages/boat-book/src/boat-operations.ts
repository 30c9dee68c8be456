/** Operations on what the keeper alone writes: the boat, places, zones, fittings, set-ups, tools, mixes, weights. */
import { z } from 'zod/mini';
import { collections, type RecordOf } from './collections.ts';
import { type Edit, refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { type Operation, type Operations, someOf, withoutId } from './operation.ts';
import type { OperationFields, OperationName } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { Id, SetUp } from './records.ts';
import { boatSchema, recordSchemas, weightsSchema } from './schemas.ts';

type Kind =
  | 'batteries'
  | 'panels'
  | 'chargers'
  | 'circuits'
  | 'loadPaths'
  | 'stays'
  | 'masts'
  | 'rodes'
  | 'loadTests'
  | 'boardHoists'
  | 'trailers'
  | 'carried'
  | 'dues'
  | 'recipes'
  | 'places'
  | 'zones'
  | 'fittings'
  | 'setUps'
  | 'tools'
  | 'mixes'
  | 'tins'
  | 'outings'
  | 'stowages'
  | 'stores'
  | 'jobDays';

const oneSchema = z.strictObject({ id });

/** The plain three that most kinds of record have: put in, change, take out. */
export function plainThree<A extends OperationName, C extends OperationName, R extends OperationName>(
  kind: Kind,
  check: (record: RecordOf<Kind>, edit: Edit, id: Id) => void = () => {},
): readonly [Operation<A>, Operation<C>, Operation<R>] {
  const { word } = collections[kind];
  const schema: z.ZodMiniObject = recordSchemas[kind];
  const article = word === 'outing' ? 'an' : 'a';
  const add: Operation<A> = {
    title: `Put in ${article} ${word}`,
    does: `Puts ${article} ${word} in the book.`,
    undoes: true,
    fields: z.strictObject({ ...schema.shape, id: z.exactOptional(id) }),
    run(fields, edit) {
      const given = fields as unknown as RecordOf<Kind> & { readonly id?: Id };
      const made = edit.put(kind, withoutId(given) as RecordOf<Kind>, given.id);
      check(edit.need(kind, made, 'id'), edit, made);
      return made;
    },
  };
  const change: Operation<C> = {
    title: `Change ${article} ${word}`,
    does: `Changes what is said of ${article} ${word}.`,
    undoes: true,
    fields: z.strictObject({ ...someOf(schema), id }),
    run(fields, edit) {
      const given = fields as unknown as Partial<RecordOf<Kind>> & { readonly id: Id };
      edit.set(kind, given.id, withoutId(given) as Partial<RecordOf<Kind>>);
      check(edit.need(kind, given.id, 'id'), edit, given.id);
      return null;
    },
  };
  const remove: Operation<R> = {
    title: `Take out ${article} ${word}`,
    does: `Takes ${article} ${word} out of the book, unless something in it names the ${word}.`,
    undoes: true,
    fields: oneSchema,
    run(fields, edit) {
      edit.remove(kind, (fields as unknown as { readonly id: Id }).id);
      return null;
    },
  };
  return [add, change, remove];
}

function checkSetUp(setUp: SetUp, edit: Edit, setUpId: Id): void {
  const states = setUp.states.map((state) => state.id);
  if (new Set(states).size !== states.length)
    refuse('states', 'two states have the same id', 'an id of its own for each');
  if (!states.includes(setUp.now)) refuse('now', `${asGiven(setUp.now)} is not one of its states`, 'one of its states');
  setUp.changes.forEach((change, i) => {
    const where = `changes › ${i + 1}.`;
    for (const state of [change.from, change.to]) {
      if (!states.includes(state)) refuse(where, `${asGiven(state)} is not one of its states`, 'two of its states');
    }
    if (change.from === change.to) refuse(where, 'it changes nothing', 'two different states');
    if (change.setUps.some((need) => need.setUp === setUpId)) {
      refuse(where, 'the change asks for its own set-up to hold still', 'other set-ups only');
    }
  });
  if (edit.usersOf('setUps', setUpId).length > 0) {
    for (const [, step] of edit.all('steps')) {
      const needs = [...step.setUps, ...step.waits.flatMap((wait) => wait.setUps)];
      const gone = needs.filter((need) => need.setUp === setUpId).flatMap((need) => need.states);
      const missing = gone.find((state) => !states.includes(state));
      if (missing !== undefined) {
        refuse(
          'states',
          `the step ${asGiven(step.title)} needs the state ${asGiven(missing)}`,
          'keep it, or change the step first',
        );
      }
    }
  }
}

const [addPlace, changePlace, removePlace] = plainThree<'addPlace', 'changePlace', 'removePlace'>('places');
const [addZone, changeZone, removeZone] = plainThree<'addZone', 'changeZone', 'removeZone'>('zones');
const [addFitting, changeFitting, removeFitting] = plainThree<'addFitting', 'changeFitting', 'removeFitting'>(
  'fittings',
);
const [addSetUp, changeSetUp, removeSetUp] = plainThree<'addSetUp', 'changeSetUp', 'removeSetUp'>(
  'setUps',
  (setUp, edit, setUpId) => checkSetUp(setUp as SetUp, edit, setUpId),
);
const [addTool, changeTool, removeTool] = plainThree<'addTool', 'changeTool', 'removeTool'>('tools');
const [addMix, changeMix, removeMix] = plainThree<'addMix', 'changeMix', 'removeMix'>('mixes');

export const boatOperations = {
  setBoat: {
    title: 'Change the boat',
    does: 'Changes what is said of the boat: her name, sizes and board.',
    undoes: true,
    fields: z.strictObject(someOf(boatSchema)),
    run(fields, edit) {
      edit.set('boat', 'boat', fields);
      const boat = edit.need('boat', 'boat', 'boat');
      if (boat.draftBoardDown_m < boat.draft_m) {
        refuse(
          'draftBoardDown_m',
          `${boat.draftBoardDown_m} m is less than with the board up`,
          `at least ${boat.draft_m} m`,
        );
      }
      if (boat.mastFromBow_m > boat.length_m) {
        refuse('mastFromBow_m', `${boat.mastFromBow_m} m lies past the transom`, `at most ${boat.length_m} m`);
      }
      return null;
    },
  },
  setWeights: {
    title: 'Change the weights',
    does: 'Changes what a job of each consequence is worth to the planner.',
    undoes: true,
    fields: z.strictObject(someOf(weightsSchema)),
    run(fields, edit) {
      edit.set('weights', 'weights', fields);
      return null;
    },
  },
  addPlace,
  changePlace,
  removePlace,
  addZone,
  changeZone,
  removeZone,
  addFitting,
  changeFitting,
  removeFitting,
  addSetUp,
  changeSetUp,
  removeSetUp,
  setUpStands: {
    title: 'Set how she stands',
    does: 'Says which state a set-up is in now, such as mast down.',
    undoes: true,
    fields: z.strictObject({ setUp: id, state: id }),
    run({ setUp, state }: OperationFields<'setUpStands'>, edit) {
      const { states } = edit.need('setUps', setUp, 'setUp');
      if (!states.some((one) => one.id === state)) {
        refuse('state', `${asGiven(state)} is not one of its states`, states.map((one) => one.id).join(', '));
      }
      edit.set('setUps', setUp, { now: state });
      return null;
    },
  },
  addTool,
  changeTool,
  removeTool,
  addMix,
  changeMix,
  removeMix,
} satisfies Partial<Operations>;
