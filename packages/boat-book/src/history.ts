/**
 * Changes turned round, for undo. Undo is an ordinary edit that takes back only what this session did: where another
 * device has changed the same field or record since, that is left as it is.
 */
import { sameContent } from './canonical.ts';
import { collections } from './collections.ts';
import type { BookDocuments, KeyWriter } from './documents.ts';
import type { RecordChange } from './edit.ts';
import type { CollectionName, Json } from './operation-fields.ts';
import type { Id } from './records.ts';

type Current = (collection: CollectionName, id: Id) => Json | null;

export interface TurnedChange {
  readonly change: RecordChange;
  /** whether what it would take back still stands as this session left it */
  readonly holds: (documents: BookDocuments, current: Current) => boolean;
}

/** The change that takes `change` back, worked out before it is made; null where nothing can. */
export function inverseOf(change: RecordChange, documents: BookDocuments, current: Current): TurnedChange | null {
  const { collection, id } = change;
  switch (change.kind) {
    case 'put':
      return {
        change: { kind: 'remove', collection, id, record: change.record },
        holds: (_, now) => sameContent(now(collection, id), change.record),
      };
    case 'remove':
      return {
        change: { kind: 'put', collection, id, record: change.record },
        holds: (_, now) => now(collection, id) === null,
      };
    case 'answer': {
      const kept = documents.kept(collection).get(id);
      const record = current(collection, id) as Readonly<Record<string, Json>> | null;
      const given = [...(kept?.answers.get(change.field)?.values() ?? [])].flat();
      const before = given.length > 0 ? given : record === null ? [] : [record[change.field] ?? null];
      if (before.length === 0) return null;
      return {
        change: { ...change, answers: before },
        holds(now, shown) {
          const answers = now.kept(collection).get(id)?.answers.get(change.field);
          if (answers === undefined) return isBackWithIt(shown(collection, id), change);
          return answers?.size === 1 && sameContent(answers.get(now.writer) ?? null, change.answers);
        },
      };
    }
    case 'settle removal':
      return null;
  }
}

/** A record that was taken out and put back stands as one value: what was answered before that is in it. */
function isBackWithIt(record: Json | null, { field, answers }: RecordChange & { readonly kind: 'answer' }): boolean {
  const [only] = answers;
  if (record === null || only === undefined || answers.length > 1) return false;
  const value = (record as Readonly<Record<string, Json>>)[field];
  return value !== undefined && sameContent(value, only);
}

/** Makes a change in the documents. */
export function applied(change: RecordChange, keys: KeyWriter): void {
  const { collection, id } = change;
  switch (change.kind) {
    case 'put':
      keys.put(collection, id, change.record);
      keys.forgetRemovals(collection, id);
      return;
    case 'remove':
      if (collections[collection].kept === 'fixed') keys.unfix(collection, id);
      else keys.remove(collection, id, change.record);
      return;
    case 'answer':
      keys.answer(collection, id, change.field, change.answers);
      return;
    case 'settle removal':
      keys.put(collection, id, change.record);
      keys.forgetRemovals(collection, id);
  }
}
