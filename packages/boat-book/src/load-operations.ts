/** Operations on load paths. */
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import type { LoadPathRecord } from './load-records.ts';
import type { Operations } from './operation.ts';

/** Parts and cases are told apart by their ids: by a screen that changes one, by a job that names one. */
function refuseSameIds({ parts, cases }: Pick<LoadPathRecord, 'parts' | 'cases'>): void {
  for (const [where, ids] of [
    ['parts', parts.map(({ id }) => id)],
    ['cases', cases.map(({ id }) => id)],
  ] as const)
    if (new Set(ids).size !== ids.length) refuse(where, 'two of them have the same id', 'an id of its own for each');
}

const [addLoadPath, changeLoadPath, removeLoadPath] = plainThree<'addLoadPath', 'changeLoadPath', 'removeLoadPath'>(
  'loadPaths',
  (record) => refuseSameIds(record as LoadPathRecord),
);

export const loadOperations = { addLoadPath, changeLoadPath, removeLoadPath } satisfies Partial<Operations>;
