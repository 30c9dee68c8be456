/** An open boat book: what it shows, the operations on it, undo, and taking in what was changed elsewhere. */
import { localAt } from '#units';
import { sameContent } from './canonical.ts';
import { collectionNames, collections, type RecordOf } from './collections.ts';
import {
  type BookDocuments,
  type BookStates,
  bookDocuments,
  type DocumentChange,
  type KeyChange,
} from './documents.ts';
import { Edit, type EditClock, nameOf, type Records, RefusedEdit } from './edit.ts';
import { applied, inverseOf, type TurnedChange } from './history.ts';
import type {
  CollectionName,
  Json,
  OpenQuestion,
  OperationFields,
  OperationName,
  OperationOutcome,
} from './operation-fields.ts';
import { operations } from './operations.ts';
import { faultsOf } from './plain-words.ts';
import type { Book, Id, LogEntry } from './records.ts';
import { referencesOf } from './references.ts';
import { type ShownRecord, shownRecord } from './shown-record.ts';

/** What a book asks of the world: it has no clock and no dice of its own. */
export interface BookSurroundings {
  /** a fresh random whole number from 1 to 4,294,967,295 for every opening */
  readonly session: number;
  /** a new id, different from every other on every device */
  newId(): Id;
  /** the instant now, in milliseconds after 1970 */
  now(): number;
  /** IANA zone of the device, for what day it is */
  readonly timeZone: string;
}

/** One record after a change; null: it is not in the book any more. */
export interface RecordPatch {
  readonly collection: CollectionName;
  readonly id: Id;
  readonly record: RecordOf<CollectionName> | null;
}

export interface StoredChange {
  readonly boat: Uint8Array | null;
  readonly work: Uint8Array | null;
  /** the same in plain values; empty where it is not known */
  readonly keys: readonly KeyChange[];
}

export interface TurnedBack {
  /** the operation that was taken back or put back; null: there was none */
  readonly title: string | null;
  /** what was left as it is, because it was changed elsewhere since */
  readonly left: readonly string[];
}

export interface OpenBook {
  readonly id: Id;
  /** made when the book was begun: two books with one id and different births have no history in common */
  readonly born: string;
  /** The book as it stands. What did not change since the last view is the same object. */
  view(): Book;
  questions(): readonly OpenQuestion[];
  /** what in the documents could not be read, in plain words */
  faults(): readonly string[];
  run<N extends OperationName>(name: N, fields: OperationFields<N>): OperationOutcome;
  undo(): TurnedBack;
  redo(): TurnedBack;
  undoTitle(): string | null;
  redoTitle(): string | null;
  /**
   * Takes in a change or a state from another device or from storage: in any order, any number of times. Returns what
   * was new in it.
   * @throws when it cannot be read at all
   */
  takeIn(change: Pick<StoredChange, 'boat' | 'work'>): StoredChange;
  /** Does again, as changes of this session, what a damaged history keeps from being read. Returns how many keys. */
  mend(changes: readonly StoredChange[]): number;
  states(): BookStates;
  /** Every change made here, ready to be stored; and what it changed in the view (also of changes taken in). */
  onChange(listener: (change: StoredChange | null, patches: readonly RecordPatch[]) => void): void;
}

interface Done {
  readonly title: string;
  readonly changes: readonly TurnedChange[];
  readonly logged: readonly Omit<LogEntry, 'order'>[];
}

const undoDepth = 200;

/**
 * Opens a book from its stored states.
 * @throws RangeError when they hold no book
 */
export function openBook(
  states: Iterable<Pick<StoredChange, 'boat' | 'work'>>,
  surroundings: BookSurroundings,
): OpenBook {
  const documents = bookDocuments(surroundings.session, states);
  return bookOver(documents, surroundings);
}

/** Begins a new book from plain records. `born` is any text that no other book was begun with. */
export function beginBook(book: Book, born: string, surroundings: BookSurroundings): OpenBook {
  const documents = bookDocuments(surroundings.session);
  documents.write((keys) => {
    keys.meta('id', book.id);
    keys.meta('born', born);
    keys.meta('format', book.format);
    keys.meta('version', book.version);
    for (const collection of collectionNames) {
      const records = collections[collection].kept === 'one' ? { [collection]: book[collection] } : book[collection];
      for (const [id, record] of Object.entries(records)) keys.put(collection, id, record as unknown as Json);
    }
  });
  return bookOver(documents, surroundings);
}

function bookOver(documents: BookDocuments, surroundings: BookSurroundings): OpenBook {
  const shown = new Map<CollectionName, Map<Id, ShownRecord>>(collectionNames.map((name) => [name, new Map()]));
  /** records that were taken out but are named by others that did not know */
  let broughtBack = new Map<CollectionName, Set<Id>>();
  /** records that have a question or a fault, so that neither is searched for */
  const noted = new Map<CollectionName, Set<Id>>(collectionNames.map((name) => [name, new Set()]));
  const built = new Map<CollectionName, Readonly<Record<Id, unknown>>>();
  let view: Book | null = null;
  let listener: (change: StoredChange | null, patches: readonly RecordPatch[]) => void = () => {};
  let patches: RecordPatch[] = [];
  const undone: Done[] = [];
  const done: Done[] = [];

  function current(collection: CollectionName, id: Id): Json | null {
    const one = shown.get(collection)!.get(id);
    if (one === undefined) return null;
    return one.record ?? (broughtBack.get(collection)?.has(id) ? one.takenOut : null);
  }

  const records: Records = {
    record: <C extends CollectionName>(collection: C, id: Id) => current(collection, id) as RecordOf<C> | null,
    *all<C extends CollectionName>(collection: C): Iterable<[Id, RecordOf<C>]> {
      for (const id of shown.get(collection)!.keys()) {
        const record = current(collection, id);
        if (record !== null) yield [id, record as unknown as RecordOf<C>];
      }
    },
    answersTo(collection, id, field) {
      return questionsOf(collection, id).find((question) => question.field === field)?.answers ?? [];
    },
  };

  function questionsOf(collection: CollectionName, id: Id): readonly OpenQuestion[] {
    const one = shown.get(collection)!.get(id);
    if (one === undefined) return [];
    return one.record === null && broughtBack.get(collection)?.has(id)
      ? [{ collection, id, field: 'removed', answers: ['keep', 'remove'] }]
      : one.questions;
  }

  function touch(collection: CollectionName, id: Id): void {
    const next = shownRecord(collection, id, documents.kept(collection).get(id));
    const before = shown.get(collection)!.get(id);
    if (next.questions.length > 0 || next.faults.length > 0) noted.get(collection)!.add(id);
    else noted.get(collection)!.delete(id);
    if (next.record === null && next.takenOut === null && next.faults.length === 0) shown.get(collection)!.delete(id);
    else {
      const same = before !== undefined && sameContent(before.record, next.record);
      shown.get(collection)!.set(id, same ? { ...next, record: before.record } : next);
      if (same) return;
    }
    changed(collection, id);
  }

  function changed(collection: CollectionName, id: Id): void {
    built.delete(collection);
    view = null;
    patches.push({ collection, id, record: current(collection, id) as RecordOf<CollectionName> | null });
  }

  /** Brings back what was taken out while another device, not knowing, came to name it. */
  function bringBack(): void {
    const out = collectionNames.filter((name) => [...shown.get(name)!.values()].some((one) => one.takenOut !== null));
    if (out.length === 0 && broughtBack.size === 0) return;
    const before = broughtBack;
    broughtBack = new Map();
    const look = (collection: CollectionName, record: unknown): void => {
      for (const ref of referencesOf(collection, record as never)) {
        const target = shown.get(ref.collection)!.get(ref.id);
        if (target === undefined || target.record !== null || target.takenOut === null) continue;
        const ids = broughtBack.get(ref.collection) ?? new Set<Id>();
        if (ids.has(ref.id)) continue;
        broughtBack.set(ref.collection, ids.add(ref.id));
        look(ref.collection, target.takenOut);
      }
    };
    for (const collection of collectionNames) {
      for (const one of shown.get(collection)!.values()) if (one.record !== null) look(collection, one.record);
    }
    for (const collection of collectionNames) {
      const was = before.get(collection) ?? new Set();
      const is = broughtBack.get(collection) ?? new Set();
      for (const id of new Set([...was, ...is])) if (was.has(id) !== is.has(id)) changed(collection, id);
    }
  }

  documents.onTouched((touched) => {
    for (const [collection, ids] of touched) for (const id of ids) touch(collection, id);
    bringBack();
  });
  for (const collection of collectionNames) for (const id of documents.kept(collection).keys()) touch(collection, id);
  bringBack();
  patches = [];

  const meta = documents.meta();
  if (typeof meta.get('id') !== 'string' || typeof meta.get('born') !== 'string') {
    throw new RangeError('these documents hold no boat book: its id and birth are missing');
  }
  if (current('boat', 'boat') === null || current('weights', 'weights') === null) {
    throw new RangeError('these documents hold no boat book: the boat or the weights are missing');
  }

  function tell(change: DocumentChange | null): void {
    const told = patches;
    patches = [];
    if (change === null ? told.length > 0 : change.boat !== null || change.work !== null) listener(change, told);
  }

  const clock = (): EditClock => {
    const now = surroundings.now();
    return {
      newId: surroundings.newId,
      now: new Date(now).toISOString(),
      today: localAt(now, surroundings.timeZone).day,
    };
  };

  function collectionView(collection: CollectionName): Readonly<Record<Id, unknown>> {
    const known = built.get(collection);
    if (known !== undefined) return known;
    const entries = [...records.all(collection)];
    if (collections[collection].kept === 'fixed') entries.sort(inCausalOrder);
    const made = Object.fromEntries(entries);
    built.set(collection, made);
    return made;
  }

  function run<N extends OperationName>(name: N, fields: OperationFields<N>): OperationOutcome {
    const operation = operations[name];
    if (operation === undefined) {
      return { kind: 'refused', where: 'operation', wrong: `there is no operation ${name}`, right: 'one of the list' };
    }
    const read = operation.fields['~standard'].validate(fields);
    if (read instanceof Promise) throw new TypeError('fields are checked at once');
    if (read.issues !== undefined) {
      const [fault] = faultsOf(read.issues as never, fields);
      return { kind: 'refused', ...(fault ?? { where: name, wrong: 'it does not do', right: 'sound fields' }) };
    }
    const edit = new Edit(records, clock());
    try {
      const id = operation.run(read.value as OperationFields<N>, edit);
      edit.check();
      const name = nameOfChange(edit);
      perform({ title: operation.title + name, undoes: operation.undoes }, edit);
      return { kind: 'done', id };
    } catch (refused) {
      if (refused instanceof RefusedEdit) return { kind: 'refused', ...refused.refusal };
      throw refused;
    }
  }

  function perform({ title, undoes }: { title: string; undoes: boolean }, edit: Edit): void {
    if (edit.changes.length === 0) return;
    const turned = edit.changes
      .filter((change) => change.collection !== 'log')
      .map((change) => inverseOf(change, documents, current))
      .filter((change) => change !== null)
      .reverse();
    const logged = edit.changes.flatMap((change) =>
      change.kind === 'put' && change.collection === 'log' ? [change.record as unknown as LogEntry] : [],
    );
    const change = documents.write((keys) => {
      for (const one of edit.changes) applied(one, keys);
    });
    if (undoes && turned.length > 0) {
      done.push({ title, changes: turned, logged });
      if (done.length > undoDepth) done.shift();
      undone.length = 0;
    }
    tell(change);
  }

  function turn(from: Done[], to: Done[], word: 'Taken back' | null): TurnedBack {
    const last = from.pop();
    if (last === undefined) return { title: null, left: [] };
    const back: TurnedChange[] = [];
    const left: string[] = [];
    const edit = new Edit(records, clock());
    const goes = new Set(last.changes.map(({ change: { kind, collection, id } }) => `${kind} ${collection} ${id}`));
    const goesToo = (collection: CollectionName, id: Id): boolean => goes.has(`remove ${collection} ${id}`);
    const change = documents.write((keys) => {
      for (const { change, holds } of last.changes) {
        const inUse = change.kind === 'remove' && edit.usersOf(change.collection, change.id, goesToo).length > 0;
        if (inUse || !holds(documents, current)) {
          left.push(`${collections[change.collection].word} ${nameOf(current(change.collection, change.id))}`);
          continue;
        }
        const inverse = inverseOf(change, documents, current);
        if (inverse !== null) back.unshift(inverse);
        applied(change, keys);
      }
      for (const entry of last.logged) {
        const { order: _, ...again } = entry as LogEntry;
        edit.fix(
          'log',
          word === null
            ? again
            : { ...again, at: edit.now, kind: 'note', spent_min: null, text: `${word}: ${entry.text}` },
        );
      }
      for (const one of edit.changes) applied(one, keys);
    });
    if (back.length > 0) to.push({ ...last, changes: back });
    tell(change);
    return { title: last.title, left };
  }

  return {
    id: meta.get('id') as string,
    born: meta.get('born') as string,
    view() {
      if (view !== null) return view;
      const parts = Object.fromEntries(
        collectionNames.map((name) => [
          name,
          collections[name].kept === 'one' ? current(name, name) : collectionView(name),
        ]),
      );
      view = { format: 'fettle-boat-book', version: 1, id: meta.get('id'), ...parts } as unknown as Book;
      return view;
    },
    questions: () =>
      collectionNames.flatMap((name) =>
        [...new Set([...noted.get(name)!, ...(broughtBack.get(name) ?? [])])].flatMap((id) => questionsOf(name, id)),
      ),
    faults: () =>
      collectionNames.flatMap((name) => [...noted.get(name)!].flatMap((id) => shown.get(name)!.get(id)?.faults ?? [])),
    run,
    undo: () => turn(done, undone, 'Taken back'),
    redo: () => turn(undone, done, null),
    undoTitle: () => done.at(-1)?.title ?? null,
    redoTitle: () => undone.at(-1)?.title ?? null,
    takeIn(change) {
      const fresh = documents.takeIn(change);
      tell(null);
      return fresh;
    },
    mend(changes) {
      const lastBy = new Map<string, StoredChange>();
      for (const change of changes)
        for (const { collection, key } of change.keys) lastBy.set(`${collection} ${key}`, change);
      const lost = changes.filter((change) => change.keys.length > 0 && !documents.holds(change));
      const keysLost = lost.flatMap((change) =>
        change.keys.filter(({ collection, key }) => lastBy.get(`${collection} ${key}`) === change),
      );
      if (keysLost.length === 0) return 0;
      tell(
        documents.write((keys) => {
          for (const one of keysLost) keys.raw(one);
        }),
      );
      return keysLost.length;
    },
    states: () => documents.states(),
    onChange(next) {
      listener = next;
    },
  };
}

/** Fixed records, oldest known first. */
function inCausalOrder([idA, a]: [Id, unknown], [idB, b]: [Id, unknown]): number {
  const orderA = (a as { order?: number }).order ?? 0;
  const orderB = (b as { order?: number }).order ?? 0;
  return orderA - orderB || (idA < idB ? -1 : idA > idB ? 1 : 0);
}

/** `: ‘Rebed the shroud plate’`, where an operation was about one record that has a name. */
function nameOfChange(edit: Edit): string {
  const first = edit.changes[0];
  if (first === undefined) return '';
  const record = first.kind === 'remove' || first.kind === 'put' ? first.record : edit.find(first.collection, first.id);
  const { title, name, date } = (record ?? {}) as { title?: string; name?: string; date?: string };
  const called = title ?? name ?? date;
  return called === undefined ? '' : `: ${called}`;
}
