/**
 * Search over the log, jobs, fittings and papers of a book, kept up as the book changes. It is built in pieces, so that
 * whatever holds it can answer other things in between.
 */
import MiniSearch, { type Query } from 'minisearch';
import { type Book, type Id, type RecordPatch, standingLog } from '#boat-book';
import { isMark, type SearchedWord, termsOf, wordsAsked } from './search-words.ts';
import { isSearched, type Searched, type SearchedCollection, searchedThing } from './searched-text.ts';

/** What is looked for. Words may be none: then everything that the rest lets through is found, newest first. */
export interface LogQuery {
  readonly words: string;
  readonly fitting?: Id;
  readonly zone?: Id;
  /** whole days or instants as text, both ends included */
  readonly from?: string;
  readonly to?: string;
  readonly most?: number;
}

export interface LogFound {
  readonly collection: SearchedCollection;
  readonly id: Id;
  readonly score: number;
}

export interface LogSearch {
  /** Takes in so many more things. @returns true when all are in */
  build(most: number): boolean;
  /** Keeps up with a change: `book` as it stands after it. */
  changed(book: Book, patches: readonly RecordPatch[]): void;
  /** The best first; of equals the newest. All that is taken in so far is searched. */
  find(query: LogQuery): readonly LogFound[];
  /** how many things can be found */
  size(): number;
}

interface Document {
  readonly id: string;
  readonly text: string;
  readonly with: string;
  readonly about: string;
}

/** What was done with and what an entry says are what is asked for; where and on what job leads there. Our judgement. */
const assumedBoost = { text: 2, with: 2, about: 1 } as const;
/** Of an answer the entry that was written when it was done weighs more than a job that speaks of it. Our judgement. */
const assumedWeight: Readonly<Record<SearchedCollection, number>> = { log: 1, fittings: 1.3, papers: 1.1, jobs: 0.8 };

/** What another word for it is worth beside the word itself. Our judgement. */
const assumedKin = 0.4;

const mostFound = 200;

/** A question as the index takes it: each word by itself, or by what means the same; the last one may be begun only. */
function asked(words: readonly SearchedWord[], combineWith: 'AND' | 'OR'): Query {
  const kin = { text: assumedBoost.text * assumedKin, with: assumedBoost.with * assumedKin, about: assumedKin };
  return {
    combineWith,
    queries: words.map(({ stem, meanings }, i) => ({
      combineWith: 'OR',
      queries: [
        { queries: [stem], combineWith: 'OR', boost: assumedBoost, prefix: i === words.length - 1 },
        ...(meanings.length === 0 ? [] : [{ queries: [...meanings], combineWith: 'OR' as const, boost: kin }]),
      ],
    })),
  };
}

/** A search over a book; nothing is in it until `build` is called. */
export function logSearch(first: Book): LogSearch {
  const index = new MiniSearch<Document>({
    fields: ['text', 'with', 'about'],
    tokenize: termsOf,
    processTerm: (term) => term,
    // what is asked is read into terms before (`asked`)
    searchOptions: { tokenize: (term) => [term] },
    autoVacuum: { batchSize: 200, batchWait: 20, minDirtCount: 200, minDirtFactor: 0.1 },
  });
  const things = new Map<string, Searched>();
  let book = first;
  let standing = standingLog(book.log);
  const waiting = [
    ...[...standing.keys()].map((id) => ['log', id] as const),
    ...Object.keys(book.jobs).map((id) => ['jobs', id] as const),
    ...Object.keys(book.fittings).map((id) => ['fittings', id] as const),
    ...Object.keys(book.papers).map((id) => ['papers', id] as const),
  ].reverse();

  function take(collection: SearchedCollection, id: Id): void {
    const key = `${collection} ${id}`;
    const before = things.get(key);
    const next = collection === 'log' && !standing.has(id) ? null : searchedThing(book, collection, id);
    if (before !== undefined && next !== null && sameWords(before, next)) {
      things.set(key, next);
      return;
    }
    if (before !== undefined) {
      index.discard(key);
      things.delete(key);
    }
    if (next === null) return;
    things.set(key, next);
    index.add({ id: key, text: next.text, with: next.with, about: next.about });
  }

  function build(most: number): boolean {
    for (let n = 0; n < most; n++) {
      const one = waiting.pop();
      if (one === undefined) return true;
      take(one[0], one[1]);
    }
    return waiting.length === 0;
  }

  const passes = (thing: Searched, { fitting, zone, from, to }: LogQuery): boolean =>
    (fitting === undefined || thing.fitting === fitting) &&
    (zone === undefined || thing.zone === zone) &&
    (from === undefined || (thing.when !== null && thing.when >= from)) &&
    (to === undefined || (thing.when !== null && thing.when.slice(0, to.length) <= to));

  function find(query: LogQuery): readonly LogFound[] {
    const { most = mostFound } = query;
    const words = wordsAsked(query.words);
    if (words.length === 0)
      return [...things.values()]
        .filter((thing) => passes(thing, query))
        .sort(newestFirst)
        .slice(0, most)
        .map(({ collection, id }) => ({ collection, id, score: 0 }));
    const options = {
      filter: ({ id }: { id: string }) => passes(things.get(id)!, query),
      boostDocument: (id: string) => assumedWeight[things.get(id)!.collection],
    };
    // first what has every word; then, where nothing has, what has most of them or words but a letter apart
    let results = index.search(asked(words, 'AND'), options);
    if (results.length === 0)
      results = index.search(asked(words, 'OR'), {
        ...options,
        fuzzy: (term) => (term.length > 4 && !isMark(term) ? 0.2 : false),
      });
    return results
      .map(({ id, score }) => ({ thing: things.get(id)!, score }))
      .sort((a, b) => b.score - a.score || newestFirst(a.thing, b.thing))
      .slice(0, most)
      .map(({ thing: { collection, id }, score }) => ({ collection, id, score }));
  }

  return {
    build,
    find,
    size: () => things.size,
    changed(next, patches) {
      const logBefore = book.log;
      book = next;
      if (book.log !== logBefore) standing = standingLog(book.log);
      const again = new Map<string, readonly [SearchedCollection, Id]>();
      const look = (collection: SearchedCollection, id: Id) => again.set(`${collection} ${id}`, [collection, id]);
      for (const { collection, id, record } of patches) {
        if (isSearched(collection)) look(collection, id);
        if (collection === 'log') {
          const corrects = (record as { readonly corrects?: Id } | null)?.corrects;
          // what it takes back may itself have taken something back
          for (let one = corrects; one !== undefined; one = book.log[one]?.corrects) look('log', one);
        }
        if (collection === 'jobs' || collection === 'fittings' || collection === 'zones') {
          const field = collection === 'jobs' ? 'job' : collection === 'fittings' ? 'fitting' : 'zone';
          for (const thing of things.values()) if (thing[field] === id) look(thing.collection, thing.id);
        }
      }
      for (const [collection, id] of again.values()) take(collection, id);
    },
  };
}

const sameWords = (a: Searched, b: Searched): boolean => a.text === b.text && a.with === b.with && a.about === b.about;

const newestFirst = (a: Searched, b: Searched): number =>
  (a.when ?? '') < (b.when ?? '') ? 1 : (a.when ?? '') > (b.when ?? '') ? -1 : 0;
