/** An open boat book: what it shows, the operations on it, undo, and taking in what was changed elsewhere. */
import { collectionNames, collections } from './collections.ts';
import {
  type BookDocuments,
  type BookStates,
  bookDocuments,
  type DocumentChange,
  type KeyChange,
} from './documents.ts';
import { Edit, type EditClock, nameOf, RefusedEdit } from './edit.ts';
import { applied, inverseOf, type TurnedChange } from './history.ts';
import { takenBack } from './log-entry.ts';
import type { LogEntry } from './log-records.ts';
import type { Json, OpenQuestion, OperationFields, OperationName, OperationOutcome } from './operation-fields.ts';
import { operations } from './operations.ts';
import { faultsOf } from './plain-words.ts';
import type { Book, Id } from './records.ts';
import { referencesOf } from './references.ts';
import { type RecordPatch, shownBook } from './shown-book.ts';
import { zoneOfBook } from './zone-of-book.ts';

/** What a book asks of the world: it has no clock and no dice of its own. */
export interface BookSurroundings {
  /** a fresh random whole number from 1 to 4,294,967,295 for every opening */
  readonly session: number;
  /** a new id, different from every other on every device */
  newId(): Id;
  /** the instant now, in milliseconds after 1970 */
  now(): number;
  /** IANA zone of the device, for what day it is while the book has no place of its own */
  readonly timeZone: string;
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
  readonly logged: readonly (readonly [Id, LogEntry])[];
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
  const book = shownBook(documents);
  const { records, current } = book;
  let listener: (change: StoredChange | null, patches: readonly RecordPatch[]) => void = () => {};
  const undone: Done[] = [];
  const done: Done[] = [];

  const meta = documents.meta();
  const born = meta.get('born');
  if (typeof born !== 'string') throw new RangeError('these documents hold no boat book: its birth is missing');

  function tell(change: DocumentChange | null): void {
    const told = book.takePatches();
    if (change === null ? told.length > 0 : change.boat !== null || change.work !== null) listener(change, told);
  }

  const clock = (): EditClock => {
    const now = surroundings.now();
    return {
      newId: surroundings.newId,
      now: new Date(now).toISOString(),
      zone: zoneOfBook(book.view(), () => surroundings.timeZone),
    };
  };

  function run<N extends OperationName>(name: N, fields: OperationFields<N>): OperationOutcome {
    if (!Object.hasOwn(operations, name)) {
      return { kind: 'refused', where: 'operation', wrong: `there is no operation ${name}`, right: 'one of the list' };
    }
    const operation = operations[name];
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
      change.kind === 'put' && change.collection === 'log'
        ? [[change.id, change.record as unknown as LogEntry] as const]
        : [],
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

  /**
   * Every record that another names, as `remove collection id`, besides those named only by what is in `goes`. What is in
   * `answered` is read with those fields.
   */
  function namedBesides(goes: ReadonlySet<string>, answered: ReadonlyMap<string, object>): Set<string> {
    const named = new Set<string>();
    for (const collection of collectionNames) {
      if (collections[collection].kept === 'fixed') continue;
      for (const [id, record] of records.all(collection)) {
        if (goes.has(`${collection} ${id}`)) continue;
        const asLeft = { ...record, ...answered.get(`${collection} ${id}`) };
        for (const ref of referencesOf(collection, asLeft as never)) {
          if (ref.collection !== collection || ref.id !== id) named.add(`remove ${ref.collection} ${ref.id}`);
        }
      }
    }
    return named;
  }

  function turn(from: Done[], to: Done[], word: 'Taken back' | null): TurnedBack {
    const last = from.pop();
    if (last === undefined) return { title: null, left: [] };
    const back: TurnedChange[] = [];
    const left: string[] = [];
    const again: [Id, LogEntry][] = [];
    const edit = new Edit(records, clock());
    const goes = new Set(
      last.changes.flatMap(({ change: { kind, collection, id } }) =>
        kind === 'remove' ? [`${collection} ${id}`] : [],
      ),
    );
    const answered = new Map<string, object>();
    for (const { change, holds } of last.changes) {
      if (change.kind !== 'answer' || !holds(documents, current)) continue;
      const key = `${change.collection} ${change.id}`;
      answered.set(key, { ...answered.get(key), [change.field]: change.answers[0] });
    }
    const inUse = goes.size > 0 ? namedBesides(goes, answered) : new Set<string>();
    const change = documents.write((keys) => {
      for (const { change, holds } of last.changes) {
        if (inUse.has(`${change.kind} ${change.collection} ${change.id}`) || !holds(documents, current)) {
          left.push(`${collections[change.collection].word} ${nameOf(current(change.collection, change.id))}`);
          continue;
        }
        const inverse = inverseOf(change, documents, current);
        if (inverse !== null) back.unshift(inverse);
        applied(change, keys);
      }
      for (const [id, { order: _, ...entry }] of last.logged) {
        if (word === null) again.push([edit.fix('log', entry), entry]);
        else {
          edit.fix('log', takenBack(id, entry, edit.now));
          again.push([id, entry]);
        }
      }
      for (const one of edit.changes) applied(one, keys);
    });
    if (back.length > 0) to.push({ ...last, changes: back, logged: again });
    tell(change);
    return { title: last.title, left };
  }

  return {
    id: meta.get('id') as string,
    born,
    view: book.view,
    questions: book.questions,
    faults: book.faults,
    run,
    undo: () => turn(done, undone, 'Taken back'),
    redo: () => turn(undone, done, null),
    undoTitle: () => done.at(-1)?.title ?? null,
    redoTitle: () => undone.at(-1)?.title ?? null,
    takeIn(change) {
      try {
        return book.fromElsewhere(() => documents.takeIn(change));
      } finally {
        tell(null);
      }
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
        book.fromElsewhere(() =>
          documents.write((keys) => {
            for (const one of keysLost) keys.raw(one);
          }),
        ),
      );
      return keysLost.length;
    },
    states: () => documents.states(),
    onChange(next) {
      listener = next;
    },
  };
}

/** `: ‘Rebed the shroud plate’`, where an operation was about one record that has a name. */
function nameOfChange(edit: Edit): string {
  // what is taken out, rather than what had to let go of it first
  const first = edit.changes.filter(({ kind }) => kind === 'remove').at(-1) ?? edit.changes[0];
  if (first === undefined) return '';
  const record = first.kind === 'remove' || first.kind === 'put' ? first.record : edit.find(first.collection, first.id);
  const { title, name, date } = (record ?? {}) as { title?: string; name?: string; date?: string };
  const called = title ?? name ?? date;
  return called === undefined ? '' : `: ${called}`;
}
