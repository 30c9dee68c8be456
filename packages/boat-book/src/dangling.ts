/** Places in a book that name what is not in it: after damage, or where a hand wrote the file. */
import { collectionNames, collections } from './collections.ts';
import { partsWithin } from './edit.ts';
import type { CollectionName } from './operation-fields.ts';
import { whereOf } from './plain-words.ts';
import type { Book, Id } from './records.ts';
import { referencesOf } from './references.ts';

/** Each such place, as a path and what it names. */
export function dangling(book: Book): readonly string[] {
  const found: string[] = [];
  const record = (collection: CollectionName, id: Id): unknown => {
    const records = book[collection] as Readonly<Record<Id, unknown>>;
    return Object.hasOwn(records, id) ? records[id] : undefined;
  };
  for (const collection of collectionNames) {
    if (collections[collection].kept !== 'keyed') continue;
    for (const [id, one] of Object.entries(book[collection])) {
      for (const ref of referencesOf(collection, one as never)) {
        const target = record(ref.collection, ref.id);
        const there = target !== undefined && (ref.within === undefined || partsWithin(target).includes(ref.within));
        if (!there)
          found.push(`${whereOf([collection, id, ...ref.path])} names ${collections[ref.collection].word} ${ref.id}`);
      }
    }
  }
  return found;
}
