/** Places in a book that name what is not in it: after damage, or where a hand wrote the file. */
import { collectionNames, collections } from './collections.ts';
import { partsWithin } from './edit.ts';
import type { CollectionName } from './operation-fields.ts';
import { asGiven, whereOf } from './plain-words.ts';
import type { Book, Id } from './records.ts';
import { referencesOf } from './references.ts';

export interface DanglingPlace {
  readonly where: string;
  /** what it names, such as `the zone ‘foredeck’` */
  readonly names: string;
}

/** Each place in the book that names a record, a state or a wait that is not there. */
export function danglingPlaces(book: Book): readonly DanglingPlace[] {
  const found: DanglingPlace[] = [];
  const record = (collection: CollectionName, id: Id): unknown => {
    const records = book[collection] as Readonly<Record<Id, unknown>>;
    return Object.hasOwn(records, id) ? records[id] : undefined;
  };
  for (const collection of collectionNames) {
    if (collections[collection].kept !== 'keyed') continue;
    for (const [id, one] of Object.entries(book[collection])) {
      for (const ref of referencesOf(collection, one as never)) {
        const target = record(ref.collection, ref.id);
        const where = whereOf([collection, id, ...ref.path]);
        const word = collections[ref.collection].word;
        if (target === undefined) found.push({ where, names: `the ${word} ${asGiven(ref.id)}` });
        else if (ref.within !== undefined && !partsWithin(target).includes(ref.within)) {
          const part = ref.collection === 'setUps' ? 'state' : 'wait';
          found.push({ where, names: `the ${part} ${asGiven(ref.within)} of the ${word} ${asGiven(ref.id)}` });
        }
      }
    }
  }
  return found;
}
