/**
 * What a book shows, kept up to date record by record as its documents change. In what is shown, everything that a
 * record names is there.
 */
import { sameContent } from './canonical.ts';
import { collectionNames, collections, type RecordOf } from './collections.ts';
import type { BookDocuments } from './documents.ts';
import { partsWithin, type Records } from './edit.ts';
import type { CollectionName, Json, OpenQuestion } from './operation-fields.ts';
import { whereOf } from './plain-words.ts';
import type { Book, Id } from './records.ts';
import { type Reference, referencesOf } from './references.ts';
import { type ShownRecord, shownRecord } from './shown-record.ts';
import { soundRecord } from './sound-record.ts';

/** One record after a change; null: it is not in the book any more. */
export interface RecordPatch {
  readonly collection: CollectionName;
  readonly id: Id;
  readonly record: RecordOf<CollectionName> | null;
}

interface LeftAside {
  readonly record: Json | null;
  readonly faults: readonly string[];
}

export interface ShownBook {
  readonly records: Records;
  /** a record as it is shown; null: it is not */
  current(collection: CollectionName, id: Id): Json | null;
  view(): Book;
  questions(): readonly OpenQuestion[];
  faults(): readonly string[];
  /** what changed in the view since this was last asked */
  takePatches(): readonly RecordPatch[];
  /** Does `work`, in which changes made elsewhere come in. */
  fromElsewhere<T>(work: () => T): T;
}

/** @throws RangeError when the documents hold no book */
export function shownBook(documents: BookDocuments): ShownBook {
  const shown = new Map<CollectionName, Map<Id, ShownRecord>>(collectionNames.map((name) => [name, new Map()]));
  /** records that were taken out but are named by others that did not know */
  const broughtBack = new Map<CollectionName, Set<Id>>();
  /** records shown without what they name that is nowhere; null: not shown at all */
  const leftAside = new Map<CollectionName, Map<Id, LeftAside>>();
  const takenOut = new Map<CollectionName, Set<Id>>(collectionNames.map((name) => [name, new Set()]));
  /** records that have a question or a fault, so that neither is searched for */
  const noted = new Map<CollectionName, Set<Id>>(collectionNames.map((name) => [name, new Set()]));
  const built = new Map<CollectionName, Readonly<Record<Id, unknown>>>();
  let view: Book | null = null;
  const lastOrders = new Map<CollectionName, number>();
  let patches: RecordPatch[] = [];

  function current(collection: CollectionName, id: Id): Json | null {
    const one = shown.get(collection)!.get(id);
    if (one === undefined) return null;
    const aside = leftAside.get(collection)?.get(id);
    if (aside !== undefined) return aside.record;
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
    lastOrder: (collection) => lastOrders.get(collection) ?? 0,
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
    if (collections[collection].kept === 'fixed' && next.record !== null) {
      lastOrders.set(collection, Math.max(lastOrders.get(collection) ?? 0, orderOf(next.record)));
    }
    if (next.questions.length > 0 || next.faults.length > 0) noted.get(collection)!.add(id);
    else noted.get(collection)!.delete(id);
    if (next.takenOut === null) takenOut.get(collection)!.delete(id);
    else takenOut.get(collection)!.add(id);
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

  const there = ({ collection, id, within }: Reference): boolean => {
    const target = current(collection, id);
    return target !== null && (within === undefined || partsWithin(target).includes(within));
  };

  /**
   * Sees to it that everything named in the book is in it: what was taken out while another device, not knowing, came
   * to name it is brought back; what is not to be had at all is left out of the records that name it.
   */
  function settle(): void {
    const before = new Map(
      [...lookedThrough()].map(([collection, id]) => [`${collection} ${id}`, current(collection, id)]),
    );
    broughtBack.clear();
    leftAside.clear();
    const toLook = [...everyRecord()];
    for (let one = toLook.pop(); one !== undefined; one = toLook.pop()) {
      for (const ref of referencesOf(one[0], current(one[0], one[1]) as never)) {
        const target = shown.get(ref.collection)!.get(ref.id);
        if (target?.takenOut == null || broughtBack.get(ref.collection)?.has(ref.id)) continue;
        broughtBack.set(ref.collection, (broughtBack.get(ref.collection) ?? new Set()).add(ref.id));
        toLook.push([ref.collection, ref.id]);
      }
    }
    // a record left out may be named by another, which then has less in it, and so on
    for (let round = 0, found = true; found && round < 10; round++) {
      found = false;
      for (const [collection, id] of [...everyRecord()]) {
        const record = current(collection, id)!;
        const missing = referencesOf(collection, record as never).filter((ref) => !there(ref));
        if (missing.length === 0) continue;
        found = true;
        const aside = leftAside.get(collection) ?? new Map<Id, LeftAside>();
        const faults = missing.map((ref) => `${whereOf([collection, id, ...ref.path])}, which is not in the book`);
        const known = aside.get(id)?.faults ?? [];
        leftAside.set(
          collection,
          aside.set(id, { record: soundRecord(collection, record, missing), faults: [...known, ...faults] }),
        );
      }
    }
    for (const [collection, id] of lookedThrough()) {
      const was = before.get(`${collection} ${id}`);
      before.delete(`${collection} ${id}`);
      if (was === undefined || !sameContent(was, current(collection, id))) changed(collection, id);
    }
    for (const key of before.keys()) {
      const [collection, id] = key.split(' ') as [CollectionName, Id];
      changed(collection, id);
    }
  }

  function* everyRecord(): Iterable<[CollectionName, Id]> {
    for (const collection of collectionNames) {
      if (collections[collection].kept !== 'keyed') continue;
      for (const id of shown.get(collection)!.keys()) if (current(collection, id) !== null) yield [collection, id];
    }
  }

  /** records whose showing hangs on others */
  function* lookedThrough(): Iterable<[CollectionName, Id]> {
    for (const [collection, ids] of broughtBack) for (const id of ids) yield [collection, id];
    for (const [collection, aside] of leftAside) for (const id of aside.keys()) yield [collection, id];
  }

  /** What is taken out may be named from elsewhere; what comes from elsewhere may name what is not here. */
  function settleIfNeeded(fromElsewhere: boolean): void {
    const out = (): boolean => collectionNames.some((name) => takenOut.get(name)!.size > 0);
    if (fromElsewhere || broughtBack.size > 0 || leftAside.size > 0 || out()) settle();
  }

  let elsewhere = false;
  documents.onTouched((touched) => {
    for (const [collection, ids] of touched) for (const id of ids) touch(collection, id);
    settleIfNeeded(elsewhere);
  });
  for (const collection of collectionNames) for (const id of documents.kept(collection).keys()) touch(collection, id);
  settleIfNeeded(true);
  patches = [];

  const bookId = documents.meta().get('id');
  if (typeof bookId !== 'string') throw new RangeError('these documents hold no boat book: its id is missing');
  if (current('boat', 'boat') === null || current('weights', 'weights') === null) {
    throw new RangeError('these documents hold no boat book: the boat or the weights are missing');
  }

  function collectionView(collection: CollectionName): Readonly<Record<Id, unknown>> {
    const known = built.get(collection);
    if (known !== undefined) return known;
    const entries = [...records.all(collection)];
    if (collections[collection].kept === 'fixed') entries.sort(inCausalOrder);
    const made = Object.fromEntries(entries);
    built.set(collection, made);
    return made;
  }

  return {
    records,
    current,
    view() {
      if (view !== null) return view;
      const parts = Object.fromEntries(
        collectionNames.map((name) => [
          name,
          collections[name].kept === 'one' ? current(name, name) : collectionView(name),
        ]),
      );
      view = { format: 'fettle-boat-book', version: 5, id: bookId, ...parts } as unknown as Book;
      return view;
    },
    questions: () =>
      collectionNames.flatMap((name) =>
        [...new Set([...noted.get(name)!, ...(broughtBack.get(name) ?? [])])].flatMap((id) => questionsOf(name, id)),
      ),
    faults: () => [
      ...collectionNames.flatMap((name) =>
        [...noted.get(name)!].flatMap((id) => shown.get(name)!.get(id)?.faults ?? []),
      ),
      ...[...leftAside.values()].flatMap((aside) => [...aside.values()].flatMap((one) => one.faults)),
    ],
    takePatches() {
      const taken = patches;
      patches = [];
      return taken;
    },
    fromElsewhere(work) {
      elsewhere = true;
      try {
        return work();
      } finally {
        elsewhere = false;
      }
    },
  };
}

const orderOf = (record: unknown): number => (record as { readonly order?: number }).order ?? 0;

/** Fixed records, oldest known first. */
function inCausalOrder([idA, a]: [Id, unknown], [idB, b]: [Id, unknown]): number {
  return orderOf(a) - orderOf(b) || (idA < idB ? -1 : idA > idB ? 1 : 0);
}
