/** Operations on what fittings are bedded with: what a step will take for it, and what it was in the end. */
import { z } from 'zod/mini';
import { refuse } from './edit.ts';
import { id, list, text } from './field-schemas.ts';
import { logged } from './log-entry.ts';
import type { Operations } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import { fittingBeddingSchema, waitSchema } from './schemas.ts';
import { storeAmount, storeSchema, storeUnit } from './store-schemas.ts';

export const beddingOperations = {
  bedFitting: {
    title: 'Write down what a fitting is bedded with',
    does: 'Keeps with a fitting what it was bedded, sealed or glued with and when, and writes it to its log.',
    undoes: true,
    fields: z.strictObject({
      ...fittingBeddingSchema.shape,
      fitting: id,
      store: z.exactOptional(z.nullable(id)),
      who: z.exactOptional(text),
    }),
    run({ fitting, store = null, who = '', ...bedding }: OperationFields<'bedFitting'>, edit) {
      const { name } = edit.need('fittings', fitting, 'fitting');
      if (bedding.on > edit.today) refuse('on', `${bedding.on} is still to come`, `${edit.today} or before`);
      if (store !== null) edit.need('stores', store, 'store');
      edit.set('fittings', fitting, { beddedWith: bedding.product, bedding });
      logged(edit, {
        kind: 'bedded',
        at: edit.momentOn(bedding.on),
        fitting,
        job: bedding.job,
        who,
        text: `${name} bedded with ${bedding.product}`,
        with: [{ name: bedding.product, ...(store === null ? {} : { store }) }],
      });
      return null;
    },
  },
  stepTakes: {
    title: 'Take it for a step',
    does: 'Says what a step takes of the stores; what is not there is put on the list to get.',
    undoes: true,
    fields: z.strictObject({
      step: id,
      store: id,
      put: z.nullable(storeSchema),
      amount: z.nullable(storeAmount),
      unit: storeUnit,
      waits: z.exactOptional(list(waitSchema)),
    }),
    run({ step, store, put, amount, unit, waits }: OperationFields<'stepTakes'>, edit) {
      const { stores, takes } = edit.need('steps', step, 'step');
      if (put !== null) edit.put('stores', put, store);
      else edit.need('stores', store, 'store');
      const own = edit.find('stores', store)?.unit ?? unit;
      if (amount !== null && own !== unit)
        refuse('unit', `${asGiven(unit)} of what is counted in ${asGiven(own)}`, asGiven(own));
      const others = (takes ?? []).filter((take) => take.store !== store);
      edit.set('steps', step, {
        stores: [...new Set([...stores, store])],
        takes: amount === null ? others : [...others, { store, amount, unit }],
        ...(waits === undefined ? {} : { waits }),
      });
      return null;
    },
  },
} satisfies Partial<Operations>;
