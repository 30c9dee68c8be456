/** Operations on papers. What a paper holds never changes; what is said of it does. */
import { z } from 'zod/mini';
import { refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { type Operations, someOf, without, withoutId } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { paperSchema } from './paper-schemas.ts';
import { asGiven } from './plain-words.ts';

/** The most that papers have together, so that no book outgrows its file. [bytes] */
const mostPapers_bytes = 60_000_000;

export const paperOperations = {
  keepPaper: {
    title: 'Keep a paper',
    does: 'Keeps a paper with the boat: registration, insurance, a manual, a receipt.',
    undoes: true,
    fields: z.strictObject(without(paperSchema, ['added'])),
    run(fields: OperationFields<'keepPaper'>, edit) {
      let kept = fields.bytes;
      for (const [, { blob, bytes, title }] of edit.all('papers')) {
        if (blob === fields.blob)
          refuse('file', `the same paper is in the book already, as ${asGiven(title)}`, 'another paper');
        kept += bytes;
      }
      if (kept > mostPapers_bytes)
        refuse(
          'bytes',
          `the papers of the book would have ${Math.ceil(kept / 1e6)} MB, and its file holds ${mostPapers_bytes / 1e6} MB of them`,
          'a smaller copy, or an old paper taken out first',
        );
      return edit.put('papers', { ...fields, added: edit.now });
    },
  },
  changePaper: {
    title: 'Change a paper',
    does: 'Changes what is said of a paper, but not the paper itself.',
    undoes: true,
    fields: z.strictObject({ ...someOf(paperSchema, ['blob', 'bytes', 'type', 'file', 'added']), id }),
    run(fields: OperationFields<'changePaper'>, edit) {
      edit.set('papers', fields.id, withoutId(fields));
      return null;
    },
  },
  removePaper: {
    title: 'Take out a paper',
    does: 'Takes a paper out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: paper }: OperationFields<'removePaper'>, edit) {
      edit.remove('papers', paper);
      return null;
    },
  },
} satisfies Partial<Operations>;
