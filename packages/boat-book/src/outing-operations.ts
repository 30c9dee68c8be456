/** Operations on outings. */
import { z } from 'zod/mini';
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import type { Operations } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import type { Outing } from './records.ts';

/** Refuses wind that does not rise from the least over the most to the gusts. */
function checkOuting({ windLeast_kn = null, wind_kn, gust_kn = null }: Outing): void {
  if (windLeast_kn !== null && wind_kn === null)
    refuse('wind_kn', `at least ${windLeast_kn} knots, and nothing for the most`, `${windLeast_kn} knots or more`);
  if (windLeast_kn !== null && wind_kn !== null && windLeast_kn > wind_kn)
    refuse('windLeast_kn', `${windLeast_kn} knots at least is more than ${wind_kn} at most`, `${wind_kn} or less`);
  if (gust_kn !== null && wind_kn !== null && gust_kn < wind_kn)
    refuse('gust_kn', `gusts of ${gust_kn} knots are less than the ${wind_kn} it blows`, `${wind_kn} knots or more`);
}

const [addOuting, changeOuting] = plainThree<'addOuting', 'changeOuting', 'removeOuting'>('outings', (record) =>
  checkOuting(record as Outing),
);

export const outingOperations = {
  addOuting,
  changeOuting,
  removeOuting: {
    title: 'Take out an outing',
    does: 'Takes an outing out of the book; the jobs that it needed stay, without it.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: outing }: OperationFields<'removeOuting'>, edit) {
      for (const [jobId, job] of [...edit.all('jobs')])
        if (job.outing === outing) edit.set('jobs', jobId, { outing: null });
      // what was changed of its lists goes with it; what was ticked stays in the log
      for (const [line, { outing: of }] of [...edit.all('morningLines')])
        if (of === outing) edit.remove('morningLines', line);
      edit.remove('outings', outing);
      return null;
    },
  },
} satisfies Partial<Operations>;
