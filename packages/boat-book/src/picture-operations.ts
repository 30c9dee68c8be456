/** Operations on where things are on the boat, as they are put there on her picture. */
import { z } from 'zod/mini';
import { id } from './field-schemas.ts';
import type { Operations } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { spotSchema } from './schemas.ts';

export const pictureOperations = {
  placeFitting: {
    title: 'Place a fitting',
    does: 'Says where on the boat a fitting is, so that it stands there on her picture.',
    undoes: true,
    fields: z.strictObject({ ...spotSchema.shape, fitting: id }),
    run({ fitting, ...spot }: OperationFields<'placeFitting'>, edit) {
      edit.need('fittings', fitting, 'fitting');
      edit.set('fittings', fitting, { spot });
      return null;
    },
  },
  placeZone: {
    title: 'Place a zone',
    does: 'Says where on the boat a zone is, so that its work is pinned there on her picture.',
    undoes: true,
    fields: z.strictObject({ ...spotSchema.shape, zone: id }),
    run({ zone, ...spot }: OperationFields<'placeZone'>, edit) {
      edit.need('zones', zone, 'zone');
      edit.set('zones', zone, spot);
      return null;
    },
  },
} satisfies Partial<Operations>;
