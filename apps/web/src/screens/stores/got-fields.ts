/** What is told to the book when something of the list was got. */
import type { OperationFields, StoreUnit } from '#boat-book';
import type { ToGet } from '#reckoning';

/**
 * The amount and the jobs that bear the price: each for what it takes of it, or in equal parts where that is not known.
 *
 * @param amount  what was got, in `unit`; null: not counted
 */
export function gotFields(
  { store, jobs }: Pick<ToGet, 'store' | 'jobs'>,
  unit: StoreUnit | null,
  amount: number | null,
): Pick<OperationFields<'gotStore'>, 'id' | 'amount' | 'unit' | 'jobs'> {
  return {
    id: store,
    amount: unit === null ? null : amount,
    unit: amount === null ? null : unit,
    jobs: jobs.map(({ job, share }) => ({ job, share: share ?? 1 / jobs.length })),
  };
}
