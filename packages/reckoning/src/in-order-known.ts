/**
 * Records that never change, oldest known first: by their `order`, and where that is missing or equal as they stand in
 * the book. Never by an instant in them, since a device's clock may be wrong by years.
 */
export function inOrderKnown<T extends { readonly order?: number }>(records: readonly T[]): T[] {
  return records
    .map((record, at) => ({ record, at }))
    .sort((a, b) => (a.record.order ?? 0) - (b.record.order ?? 0) || a.at - b.at)
    .map(({ record }) => record);
}
