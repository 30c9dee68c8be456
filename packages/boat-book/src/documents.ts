/**
 * The two shared documents of a book, `boat` and `work`, as keys and plain values. This is the only file that knows
 * Yjs, and it knows nothing of the trade.
 *
 * Keys of a collection:
 *   `id`                the record as it was put in, one plain value (for a fixed record: all there is)
 *   `id/field@writer`   the answers one session gave for one field since: a list, nearly always of one
 *   `id/@writer`        that session took the record out; the value is the record as it then stood
 *
 * Writing takes away the keys it replaces, and Yjs takes away only what the writer had seen. So what stands under a
 * field afterwards is exactly the answers that no later one had seen: one, or one from each device that was apart.
 * The order is by what was seen; no clock is read.
 */
import * as Y from 'yjs';
import { collectionNames, collections, type Part } from './collections.ts';
import type { CollectionName, Json } from './operation-fields.ts';
import type { Id } from './records.ts';

/** What stands in the documents about one record. */
export interface Kept {
  base: Json | undefined;
  readonly answers: Map<string, Map<string, readonly Json[]>>;
  readonly removals: Map<string, Json>;
}

/** One key after a change; without `value` it is gone. */
export interface KeyChange {
  readonly collection: CollectionName | 'book';
  readonly key: string;
  readonly value?: Json;
}

/** One change of the documents, ready to be stored and sent. `keys` says in plain values what the updates do. */
export interface DocumentChange {
  readonly boat: Uint8Array | null;
  readonly work: Uint8Array | null;
  readonly keys: readonly KeyChange[];
}

export interface BookStates {
  readonly boat: Uint8Array;
  readonly work: Uint8Array;
}

export interface BookDocuments {
  /** this session's name in the keys */
  readonly writer: string;
  kept(collection: CollectionName): ReadonlyMap<Id, Kept>;
  meta(): ReadonlyMap<string, Json>;
  /** All writes of one operation; the change is told once, at its end. */
  write(edit: (keys: KeyWriter) => void): DocumentChange;
  /** Takes in a change made elsewhere, in any order, any number of times. @throws when it cannot be read at all */
  takeIn(change: { readonly boat: Uint8Array | null; readonly work: Uint8Array | null }): DocumentChange;
  /** True when all that a change brings stands in the documents; false when something before it is missing. */
  holds(change: { readonly boat: Uint8Array | null; readonly work: Uint8Array | null }): boolean;
  states(): BookStates;
  /** Records that a change touched, told once at the end of each write and each change taken in. */
  onTouched(listener: (touched: ReadonlyMap<CollectionName, ReadonlySet<Id>>) => void): void;
}

export interface KeyWriter {
  put(collection: CollectionName, id: Id, record: Json): void;
  answer(collection: CollectionName, id: Id, field: string, answers: readonly Json[]): void;
  /** Takes a record out, with every answer this device has seen; `record` is kept with the removal. */
  remove(collection: CollectionName, id: Id, record: Json): void;
  /** Forgets the removals seen so far. */
  forgetRemovals(collection: CollectionName, id: Id): void;
  /** Takes a fixed record out. */
  unfix(collection: CollectionName, id: Id): void;
  meta(key: string, value: Json): void;
  /** Sets or takes away a key as it is; used to bring back changes whose history was damaged. */
  raw(change: KeyChange): void;
}

const parts: readonly Part[] = ['boat', 'work'];
const here = Symbol('this session');

interface KeyParts {
  readonly id: Id;
  readonly field: string | null;
  readonly writer: string | null;
}

function partsOf(key: string): KeyParts {
  const slash = key.indexOf('/');
  if (slash < 0) return { id: key, field: null, writer: null };
  const atSign = key.lastIndexOf('@');
  return { id: key.slice(0, slash), field: key.slice(slash + 1, atSign), writer: key.slice(atSign + 1) };
}

/**
 * The documents of a book, from their stored states (none: empty).
 *
 * @param session  a random whole number, 1 to 4,294,967,295, fresh for every opening: two sessions that write at
 *                 once must never share it
 * @throws RangeError for a session out of range; what Yjs throws for a state that cannot be read
 */
export function bookDocuments(
  session: number,
  states: Iterable<Pick<DocumentChange, 'boat' | 'work'>> = [],
): BookDocuments {
  if (!Number.isInteger(session) || session < 1 || session > 0xffffffff) {
    throw new RangeError(`a session is a whole number from 1 to 4294967295, got ${session}`);
  }
  const docs: Readonly<Record<Part, Y.Doc>> = { boat: new Y.Doc(), work: new Y.Doc() };
  for (const part of parts) docs[part].clientID = session;
  // before anything listens: a whole state is read much quicker than it is told change by change
  for (const state of states) {
    for (const part of parts) if (state[part] !== null) Y.applyUpdate(docs[part], state[part]);
  }
  const writer = session.toString(36);
  const maps = new Map<CollectionName | 'book', Y.Map<Json>>();
  const kept = new Map<CollectionName, Map<Id, Kept>>();
  const meta = new Map<string, Json>();
  let listener: (touched: ReadonlyMap<CollectionName, ReadonlySet<Id>>) => void = () => {};

  let touched = new Map<CollectionName, Set<Id>>();
  let keys: KeyChange[] = [];
  let updates: Record<Part, Uint8Array | null> = { boat: null, work: null };

  function read(collection: CollectionName, key: string, value: Json | undefined): void {
    const records = kept.get(collection)!;
    const { id, field, writer: by } = partsOf(key);
    let record = records.get(id);
    if (record === undefined) {
      if (value === undefined) return;
      record = { base: undefined, answers: new Map(), removals: new Map() };
      records.set(id, record);
    }
    if (field === null || by === null) record.base = value;
    else if (field === '') {
      if (value === undefined) record.removals.delete(by);
      else record.removals.set(by, value);
    } else {
      let answers = record.answers.get(field);
      if (answers === undefined) {
        answers = new Map();
        record.answers.set(field, answers);
      }
      if (value === undefined) answers.delete(by);
      else answers.set(by, Array.isArray(value) ? (value as readonly Json[]) : [value]);
      if (answers.size === 0) record.answers.delete(field);
    }
    if (record.base === undefined && record.answers.size === 0 && record.removals.size === 0) records.delete(id);
  }

  for (const collection of [...collectionNames, 'book' as const]) {
    const part = collection === 'book' ? 'boat' : collections[collection].part;
    const map = docs[part].getMap<Json>(collection);
    maps.set(collection, map);
    if (collection === 'book') map.forEach((value, key) => void meta.set(key, value));
    else {
      kept.set(collection, new Map());
      map.forEach((value, key) => {
        read(collection, key, value);
      });
    }
    map.observe((event) => {
      for (const key of event.keysChanged) {
        const value = map.get(key);
        keys.push(value === undefined ? { collection, key } : { collection, key, value });
        if (collection === 'book') {
          if (value === undefined) meta.delete(key);
          else meta.set(key, value);
          continue;
        }
        read(collection, key, value);
        const ids = touched.get(collection) ?? new Set();
        touched.set(collection, ids.add(partsOf(key).id));
      }
    });
  }
  for (const part of parts) {
    docs[part].on('update', (update: Uint8Array) => {
      updates[part] = updates[part] === null ? update : Y.mergeUpdates([updates[part], update]);
    });
  }

  function told(): DocumentChange {
    const change = { ...updates, keys };
    const records = touched;
    updates = { boat: null, work: null };
    keys = [];
    touched = new Map();
    if (records.size > 0) listener(records);
    return change;
  }

  function takeIn(change: { readonly boat: Uint8Array | null; readonly work: Uint8Array | null }): DocumentChange {
    for (const part of parts) if (change[part] !== null) Y.applyUpdate(docs[part], change[part]);
    return told();
  }

  const keyWriter: KeyWriter = {
    put: (collection, id, record) => void maps.get(collection)!.set(id, record),
    answer(collection, id, field, answers) {
      const map = maps.get(collection)!;
      const own = `${id}/${field}@${writer}`;
      for (const by of [...(kept.get(collection)!.get(id)?.answers.get(field)?.keys() ?? [])]) {
        if (by !== writer) map.delete(`${id}/${field}@${by}`);
      }
      map.set(own, [...answers]);
    },
    remove(collection, id, record) {
      const map = maps.get(collection)!;
      const seen = kept.get(collection)!.get(id);
      map.delete(id);
      for (const [field, answers] of seen?.answers ?? []) {
        for (const by of answers.keys()) map.delete(`${id}/${field}@${by}`);
      }
      for (const by of seen?.removals.keys() ?? []) if (by !== writer) map.delete(`${id}/@${by}`);
      map.set(`${id}/@${writer}`, record);
    },
    forgetRemovals(collection, id) {
      const map = maps.get(collection)!;
      for (const by of kept.get(collection)!.get(id)?.removals.keys() ?? []) map.delete(`${id}/@${by}`);
    },
    unfix: (collection, id) => maps.get(collection)!.delete(id),
    meta: (key, value) => void maps.get('book')!.set(key, value),
    raw({ collection, key, value }) {
      const map = maps.get(collection);
      if (map === undefined) return;
      if (value === undefined) map.delete(key);
      else map.set(key, value);
    },
  };

  return {
    writer,
    kept: (collection) => kept.get(collection)!,
    meta: () => meta,
    write(edit) {
      // a row of the log holds both documents' updates, so an operation over both is stored whole or not at all
      docs.boat.transact(() => docs.work.transact(() => edit(keyWriter), here), here);
      return told();
    },
    takeIn,
    holds(change) {
      return parts.every((part) => {
        const update = change[part];
        if (update === null) return true;
        const { store } = docs[part];
        return [...Y.parseUpdateMeta(update).to].every(([client, clock]) => Y.getState(store, client) >= clock);
      });
    },
    states: () => ({ boat: Y.encodeStateAsUpdate(docs.boat), work: Y.encodeStateAsUpdate(docs.work) }),
    onTouched(next) {
      listener = next;
    },
  };
}
