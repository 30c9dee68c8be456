/**
 * Fields that records came to have after version 1, by the version that brought them. Each of them is null where
 * nothing was said. A record written before, in a file or in a shared document, is completed with null when it is
 * read; what is stored stays as it was written.
 */
import type { CollectionName, Json } from './operation-fields.ts';

type Added = Readonly<Partial<Record<CollectionName, readonly string[]>>>;

/** Since version 2: what a forecast gives as the chance of rain, a clock time a job is held to, days to get a part. */
const sinceVersion2: Added = { weather: ['rainOdds_pct'], jobs: ['heldAt'], stores: ['lead_days'] };

const every: readonly Added[] = [sinceVersion2];

type Fields = Readonly<Record<string, Json>>;

function completed(record: Fields, fields: readonly string[]): Fields {
  const missing = fields.filter((field) => !Object.hasOwn(record, field));
  return missing.length === 0
    ? record
    : { ...record, ...Object.fromEntries(missing.map((field) => [field, null] as const)) };
}

/** A record with null for each field that came after it was written; the record itself where it has them all. */
export function withAddedFields(collection: CollectionName, record: Fields): Fields {
  return completed(
    record,
    every.flatMap((added) => added[collection] ?? []),
  );
}

/** A book of version 1 with the fields of version 2 in every record that lacks them. */
export function withFieldsOfVersion2(book: Fields): Fields {
  const parts = Object.entries(sinceVersion2).map(([name, fields]) => {
    const records = book[name];
    if (typeof records !== 'object' || records === null || Array.isArray(records)) return [name, records] as const;
    const all = Object.entries(records as Fields).map(([id, record]) => [
      id,
      typeof record === 'object' && record !== null && !Array.isArray(record)
        ? completed(record as Fields, fields)
        : record,
    ]);
    return [name, Object.fromEntries(all) as Json] as const;
  });
  return { ...book, ...Object.fromEntries(parts.filter((part): part is [string, Json] => part[1] !== undefined)) };
}
