/** Operations on photographs. A photograph never changes: another is kept in its place, or it is taken out. */
import { z } from 'zod/mini';
import { type Edit, refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { photoSchema } from './photo-schemas.ts';

/** The most that photographs have together: less than a boat file holds, so that no book outgrows its file. [bytes] */
const mostPhotos_bytes = 170_000_000;

function refuseTooMuch(edit: Edit, bytes: number): void {
  let kept = bytes;
  for (const [, photo] of edit.all('photos')) kept += photo.bytes;
  if (kept > mostPhotos_bytes)
    refuse(
      'bytes',
      `the photographs of the book would have ${Math.ceil(kept / 1e6)} MB, and its file holds ${mostPhotos_bytes / 1e6} MB of them`,
      'some older photographs taken out first',
    );
}

export const photoOperations = {
  keepPhoto: {
    title: 'Keep a photograph',
    does: 'Keeps a photograph of a job, a step, a fitting or an entry of the log.',
    undoes: true,
    fields: z.strictObject(without(photoSchema, ['order'])),
    run(fields: OperationFields<'keepPhoto'>, edit) {
      const { job, step, fitting, entry } = fields;
      if (job !== null) edit.need('jobs', job, 'job');
      if (step !== null && edit.need('steps', step, 'step').job !== job)
        refuse('job', 'the step is of another job', 'the job of the step');
      if (fitting !== null) edit.need('fittings', fitting, 'fitting');
      if (entry !== null) edit.need('log', entry, 'entry');
      if (job === null && fitting === null && entry === null)
        refuse('job', 'nothing is said of what it shows', 'a job, a step, a fitting or an entry of the log');
      for (const [, other] of edit.all('photos')) {
        if (
          other.blob === fields.blob &&
          other.job === job &&
          other.step === step &&
          other.fitting === fitting &&
          other.entry === entry
        )
          refuse('blob', 'the same photograph is there already', 'another photograph');
      }
      refuseTooMuch(edit, fields.bytes);
      return edit.fix('photos', fields);
    },
  },
  changePhoto: {
    title: 'Change a photograph',
    does: 'Says something else of a photograph: its words, what it shows, where it was taken.',
    undoes: true,
    fields: z.strictObject({
      id,
      words: z.exactOptional(photoSchema.shape.words),
      shows: z.exactOptional(photoSchema.shape.shows),
      position: z.exactOptional(photoSchema.shape.position),
    }),
    run({ id: photo, ...fields }: OperationFields<'changePhoto'>, edit) {
      const { order: _, ...was } = edit.need('photos', photo, 'id');
      edit.unfix('photos', photo);
      return edit.fix('photos', { ...was, ...fields });
    },
  },
  removePhoto: {
    title: 'Take out a photograph',
    does: 'Takes a photograph out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: photo }: OperationFields<'removePhoto'>, edit) {
      edit.unfix('photos', photo);
      return null;
    },
  },
} satisfies Partial<Operations>;
