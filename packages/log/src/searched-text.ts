/** What of a boat book can be searched, and the words each piece of it is found by. */
import type { Book, CollectionName, Id, LogEntry, LogKind } from '#boat-book';

export type SearchedCollection = 'log' | 'jobs' | 'fittings' | 'papers';

/** One thing that can be found. */
export interface Searched {
  readonly collection: SearchedCollection;
  readonly id: Id;
  /** what it says itself */
  readonly text: string;
  /** what it was done with, or bedded with */
  readonly with: string;
  /** the names of what it is about: job, fitting, zone */
  readonly about: string;
  readonly kind: LogKind | null;
  readonly zone: Id | null;
  readonly fitting: Id | null;
  readonly job: Id | null;
  /** when: an instant, a day, or null */
  readonly when: string | null;
}

const searchedCollections: readonly SearchedCollection[] = ['log', 'jobs', 'fittings', 'papers'];
export const isSearched = (collection: CollectionName): collection is SearchedCollection =>
  (searchedCollections as readonly string[]).includes(collection);

/** Kinds of entry by the words they are asked for with, where those words need not stand in the entry. */
const kindWords: Readonly<Partial<Record<LogKind, string>>> = {
  bedded: 'bedded',
  measured: 'measured',
  got: 'got',
  proved: 'proof proved',
  'jury rig made': 'jury rig',
  'jury rig trusted': 'jury rig',
  'jury rig removed': 'jury rig',
  fitted: 'fitted',
  outing: 'sail outing',
};

/** A thing as it is searched; null where there is none, or where it is not to be found. */
export function searchedThing(book: Book, collection: SearchedCollection, id: Id): Searched | null {
  switch (collection) {
    case 'log':
      return searchedEntry(book, id, book.log[id]);
    case 'jobs': {
      const job = book.jobs[id];
      if (job === undefined) return null;
      const { title, why, note, said, zone, fitting, opened, closed } = job;
      const text = [title, why, note, said].join(' ');
      const about = names(book, null, fitting, zone);
      return { collection, id, text, with: '', about, kind: null, zone, fitting, job: id, when: closed ?? opened };
    }
    case 'fittings': {
      const fitting = book.fittings[id];
      if (fitting === undefined) return null;
      const { name, size, note, zone, beddedWith } = fitting;
      const bedded = beddedWith === '' ? '' : `bedded with ${beddedWith}`;
      const about = names(book, null, null, zone);
      const text = [name, size, note].join(' ');
      return { collection, id, text, with: bedded, about, kind: null, zone, fitting: id, job: null, when: null };
    }
    case 'papers': {
      const paper = book.papers[id];
      if (paper === undefined) return null;
      const { title, kind, file, note, fitting, job, added } = paper;
      const zone = fitting === null ? null : (book.fittings[fitting]?.zone ?? null);
      const text = [title, kind, note, file].join(' ');
      const about = names(book, job, fitting, zone);
      return { collection, id, text, with: '', about, kind: null, zone, fitting, job, when: added };
    }
  }
}

function searchedEntry(book: Book, id: Id, entry: LogEntry | undefined): Searched | null {
  if (entry === undefined || entry.kind === 'taken back') return null;
  const { kind, text, with: used = [], zone, job, fitting = null, who, at } = entry;
  return {
    collection: 'log',
    id,
    text: [text, kindWords[kind] ?? ''].join(' '),
    with: used.map(({ name }) => name).join(' '),
    about: `${names(book, job, fitting, zone)} ${who}`,
    kind,
    zone,
    fitting,
    job,
    when: at,
  };
}

function names(book: Book, job: Id | null, fitting: Id | null, zone: Id | null): string {
  return [
    job === null ? undefined : book.jobs[job]?.title,
    fitting === null ? undefined : book.fittings[fitting]?.name,
    zone === null ? undefined : book.zones[zone]?.name,
  ]
    .filter((name) => name !== undefined)
    .join(' ');
}
