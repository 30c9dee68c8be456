/** What the book's Worker tells the page, and how the page keeps up: a book is changed only record by record. */
import type { Book, CollectionName, OpenQuestion, RecordPatch } from '#boat-book';

/** What there is to show besides the book itself. */
export interface BookState {
  readonly state: 'opening' | 'saved' | 'saving' | 'not saved';
  /** why it is not saved, in plain words */
  readonly because: string | null;
  readonly undo: string | null;
  readonly redo: string | null;
  readonly troubles: readonly string[];
  /** why nothing can be changed; null: it can */
  readonly readOnly: string | null;
  readonly questions: readonly OpenQuestion[];
}

export interface BookNews extends BookState {
  /** a book opened anew; `patches` are then empty */
  readonly book?: Book | null;
  readonly patches: readonly RecordPatch[];
}

const orderOf = (record: unknown): number => (record as { readonly order?: number }).order ?? 0;
const fixed: readonly CollectionName[] = [
  'weather',
  'forecasts',
  'readings',
  'readingBlocks',
  'nightsAhead',
  'hoistForces',
  'uses',
  'dueMeasures',
  'seasonTicks',
  'rigTrusts',
  'stayReadings',
  'photos',
  'plans',
  'log',
];

/** The book after some records changed. Collections without a change stay the same objects. */
export function patchedBook(book: Book, patches: readonly RecordPatch[]): Book {
  const next: Record<string, unknown> = { ...book };
  const fresh = new Set<CollectionName>();
  const late = new Set<CollectionName>();
  const last = new Map<CollectionName, number>();
  for (const { collection, id, record } of patches) {
    if (collection === 'boat' || collection === 'weights') {
      if (record !== null) next[collection] = record;
      continue;
    }
    if (!fresh.has(collection)) {
      next[collection] = { ...book[collection] };
      fresh.add(collection);
    }
    const records = next[collection] as Record<string, unknown>;
    if (record === null) delete records[id];
    else {
      if (fixed.includes(collection) && !Object.hasOwn(records, id)) {
        const known = last.get(collection) ?? Math.max(0, ...Object.values(book[collection]).map(orderOf).slice(-1));
        if (orderOf(record) <= known) late.add(collection);
        last.set(collection, Math.max(known, orderOf(record)));
      }
      records[id] = record;
    }
  }
  // fixed records stand in the order they were known in; one that was known late is put where it belongs
  for (const collection of late) {
    const entries = Object.entries(next[collection] as Record<string, unknown>);
    entries.sort(([idA, a], [idB, b]) => orderOf(a) - orderOf(b) || (idA < idB ? -1 : 1));
    next[collection] = Object.fromEntries(entries);
  }
  return next as unknown as Book;
}
