/** Operations on where things are kept, and on what comes into the stores and is used up of them. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { firstRing } from './cycles.ts';
import { type Edit, refuse } from './edit.ts';
import { id, list, number, text } from './field-schemas.ts';
import { logged } from './log-entry.ts';
import type { Cost, LoggedWith } from './log-records.ts';
import { costSchema } from './log-schemas.ts';
import { type Operations, withoutId } from './operation.ts';
import type { OperationFields, UsedStore } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { Id } from './records.ts';
import type { StoreUnit } from './store-records.ts';
import { storeAmount, storeSchema, storeUnit } from './store-schemas.ts';

const [addStowage, changeStowage, removeStowage] = plainThree<'addStowage', 'changeStowage', 'removeStowage'>(
  'stowages',
  (_, edit) => checkWithin(edit),
);
const [addStore, changeStore, removeStore] = plainThree<'addStore', 'changeStore', 'removeStore'>('stores');

/** Refuses places that would be inside each other. */
function checkWithin(edit: Edit): void {
  const ring = firstRing(
    new Map([...edit.all('stowages')].map(([stowage, { within }]) => [stowage, within === null ? [] : [within]])),
  );
  if (ring === null) return;
  const names = ring.map((stowage) => asGiven(edit.find('stowages', stowage)?.name ?? stowage));
  refuse('within', `these would be inside each other: ${names.join(', ')}`, 'a place that is not in this one');
}

export const usedStoreSchema = z.strictObject({ store: id, amount: z.nullable(storeAmount) });

export const storeOperations = {
  addStowage,
  changeStowage,
  removeStowage,
  addStore,
  changeStore,
  removeStore,
  gotStore: {
    title: 'Got it',
    does: 'Adds what was got to what is there of a thing, where it is put, and writes it and what it cost to the log.',
    undoes: true,
    fields: z.strictObject({
      id,
      amount: z.nullable(storeAmount),
      unit: z.nullable(storeUnit),
      stowage: storeSchema.shape.stowage,
      keptAt: z.exactOptional(text),
      expires: storeSchema.shape.expires,
      cost: z.exactOptional(z.nullable(costSchema)),
      jobs: z.exactOptional(list(z.strictObject({ job: id, share: number(0, 1) }))),
      who: z.exactOptional(text),
    }),
    run({ amount: got, unit, cost = null, jobs = [], who = '', ...fields }: OperationFields<'gotStore'>, edit) {
      const store = edit.need('stores', fields.id, 'id');
      const own = store.unit ?? null;
      if (got !== null && unit === null)
        refuse('unit', `${got} of what is not said`, own === null ? 'pieces or a unit' : unitWord(own));
      if (got !== null && own !== null && unit !== own)
        refuse('unit', `${asGiven(store.name)} is counted in ${unitWord(own)}, not ${unitWord(unit)}`, unitWord(own));
      const shared = jobs.reduce((all, { share }) => all + share, 0);
      if (shared > 1 + 1e-9)
        refuse('jobs', `their shares make ${Math.round(shared * 100)} of 100`, 'at most 100 of 100');
      const there = store.onHand ? (store.amount ?? null) : 0;
      edit.set('stores', fields.id, {
        ...withoutId(fields),
        onHand: true,
        expected: null,
        got: edit.today,
        // what is there and not counted stays not counted
        ...(got === null || there === null ? { amount: null } : { amount: sum(there, got), unit }),
      });
      const thing: LoggedWith = {
        name: store.name,
        store: fields.id,
        ...(got === null || unit === null ? {} : { amount: got, unit }),
      };
      for (const { job, cost: part } of borneBy(jobs, cost)) {
        if (job !== null) edit.need('jobs', job, 'jobs');
        logged(edit, {
          kind: 'got',
          job,
          who,
          of: { collection: 'stores', id: fields.id },
          with: [thing],
          text: `Got: ${store.name}`,
          ...(part === null ? {} : { cost: part }),
        });
      }
      return null;
    },
  },
  useStores: {
    title: 'Used for a step',
    does: 'Takes what a step used out of what is there of each thing, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({
      step: id,
      used: list(usedStoreSchema).check(z.minLength(1)),
      who: z.exactOptional(text),
    }),
    run({ step, used, who = '' }: OperationFields<'useStores'>, edit) {
      takeOut(edit, step, used, who);
      return null;
    },
  },
} satisfies Partial<Operations>;

/** What was paid, by the job that bears it, to the hundredth; what no job bears, and what was paid for none, is null's. */
function borneBy(
  jobs: NonNullable<OperationFields<'gotStore'>['jobs']>,
  cost: Cost | null,
): readonly { readonly job: Id | null; readonly cost: Cost | null }[] {
  if (cost === null || jobs.length === 0) return [{ job: jobs.length === 1 ? jobs[0]!.job : null, cost }];
  let left = cost.amount;
  const parts = jobs.map(({ job, share }) => {
    const amount = Math.min(left, Math.round(cost.amount * share * 100) / 100);
    left = sum(left, -amount);
    return { job, cost: { ...cost, amount } };
  });
  const shared = jobs.reduce((all, { share }) => all + share, 0);
  if (left === 0) return parts;
  // what rounding left over of a price that jobs bear whole goes with the last of them
  const last = parts.at(-1)!;
  if (shared >= 1 - 1e-9)
    return [...parts.slice(0, -1), { ...last, cost: { ...cost, amount: sum(last.cost.amount, left) } }];
  return [...parts, { job: null, cost: { ...cost, amount: left } }];
}

/**
 * Takes what a step used out of the stores and logs it. What is all used is no longer on hand; where more was used
 * than was thought to be there, none is left. Nothing is counted of a thing whose amount is not known.
 */
export function takeOut(edit: Edit, stepId: Id, used: readonly UsedStore[], who: string): void {
  if (used.length === 0) return;
  const step = edit.need('steps', stepId, 'step');
  const things = used.map(({ store: storeId, amount: took }, i): LoggedWith => {
    const store = edit.need('stores', storeId, `used › ${i + 1}. › store`);
    const there = store.amount ?? null;
    const left = took === null ? 0 : there === null ? null : Math.max(0, sum(there, -took));
    if (left === 0) edit.set('stores', storeId, { onHand: false, opened: null, amount: 0 });
    else if (left !== null) edit.set('stores', storeId, { amount: left });
    const amount = took ?? there;
    const unit = store.unit ?? null;
    return { name: store.name, store: storeId, ...(amount === null || unit === null ? {} : { amount, unit }) };
  });
  logged(edit, {
    kind: 'used',
    job: step.job,
    step: stepId,
    zone: step.zone,
    who,
    with: things,
    text: `Used: ${things.map(({ name }) => name).join(', ')}`,
  });
}

/** Adds without the dust of binary fractions. */
const sum = (a: number, b: number): number => Math.round((a + b) * 1e6) / 1e6;

const unitWord = (unit: StoreUnit | null): string => (unit === null ? 'nothing' : unit === '' ? 'pieces' : unit);
