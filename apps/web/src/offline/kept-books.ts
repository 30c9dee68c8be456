/**
 * The books of this device: opening, changing and keeping them. It runs in the Worker; what it needs of the world
 * comes in as arguments, so that it runs the same in a test.
 */
import {
  type Boat,
  type Book,
  beginBook,
  blobsNamed,
  checkBook,
  emptyBook,
  type OpenBook,
  type OperationOutcome,
  openBook,
  type ReadBoatFile,
  type RecordPatch,
  readBoatFile,
  type StoredChange,
  sha256,
  writeBoatFile,
} from '#boat-book';
import { keptWork } from '../reading/work-shown.ts';
import type { OpenedFile } from './book-client.ts';
import type { KnownBook } from './book-database.ts';
import { bookFromRows, bytesOf } from './book-from-rows.ts';
import type { BookLog } from './book-log.ts';
import type { BlobOperation, KeptBooks, World } from './book-world.ts';
import { keptBlobs } from './kept-blobs.ts';
import { logFinder } from './log-finder.ts';
import { inPlainWords, type Saving, saving } from './saving.ts';

interface Here {
  readonly id: string;
  readonly book: OpenBook | null;
  /** a book from a newer version: shown, never changed */
  readonly foreign: { readonly book: Book; readonly bytes: Uint8Array; readonly why: string } | null;
  readonly saving: Saving;
  readonly seen: Set<number>;
  readonly troubles: string[];
  lastRead: number;
  sinceWhole: number;
  bytesSinceWhole: number;
}

/** A whole row is written after so many bytes of changes, however few they are. */
const compactAfter_bytes = 4_000_000;
/** How long the picture for the first paint may lag behind while changes follow one another. [ms] */
const firstPaintLag_ms = 400;

const nothingOpen: OperationOutcome = {
  kind: 'refused',
  where: 'boat book',
  wrong: 'no book is open',
  right: 'open or begin one',
};

/** what an operation with a blob keeps, in a sentence */
const whatIsKept: Readonly<Record<BlobOperation, string>> = {
  keepReadingBlock: 'readings',
  keepPhoto: 'photograph',
  keepPaper: 'paper',
};

export function keptBooks(world: World): KeptBooks {
  let log: BookLog | null = null;
  let noStore: string | null = null;
  let here: Here | null = null;
  let picturing = false;
  /** when the last picture was kept */
  let pictured_ms = Number.NEGATIVE_INFINITY;
  const blobs = keptBlobs(
    () => log,
    () => world.surroundings().now(),
  );
  const finder = logFinder(() => here?.book?.view() ?? here?.foreign?.book ?? null, world.later);
  /** opening and switching books happen one after the other */
  let turn: Promise<unknown> = Promise.resolve();

  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = turn.then(work);
    turn = next.catch(() => {});
    return next;
  }

  function news(patches: readonly RecordPatch[], whole: boolean): void {
    const book = here?.book ?? null;
    const shown = book?.view() ?? here?.foreign?.book ?? null;
    const saved = here?.saving.state() ?? { state: 'saved' as const, because: null };
    const unread = book?.faults() ?? [];
    world.tell({
      ...(noStore === null ? saved : { state: 'not saved', because: noStore }),
      undo: book?.undoTitle() ?? null,
      redo: book?.redoTitle() ?? null,
      troubles: [
        ...(here?.troubles ?? []),
        ...unread.map((fault) => `Left aside, because it cannot be read: ${fault}.`),
      ],
      readOnly: here?.foreign?.why ?? null,
      questions: book?.questions() ?? [],
      ...(whole ? { book: shown, patches: [] } : { patches }),
    });
    // the screens first
    if (whole) finder.forget();
    else finder.changed(patches);
  }

  /** Keeps a picture of the book for the first paint: at once after a quiet while, and soon while changes go on. */
  function picture(): void {
    if (picturing || log === null) return;
    picturing = true;
    const now_ms = world.surroundings().now();
    const quiet = Math.abs(now_ms - pictured_ms) >= firstPaintLag_ms;
    world.later(
      () => {
        picturing = false;
        pictured_ms = world.surroundings().now();
        const view = here?.book?.view();
        // a picture that cannot be kept costs a moment at the next start, and nothing else
        if (view !== undefined && here !== null)
          log?.keepFirst(here.id, view, keptWork(view, pictured_ms)).catch(() => {});
      },
      quiet ? 0 : firstPaintLag_ms,
    );
  }

  function shownFrom(id: string, book: OpenBook, troubles: string[]): Here {
    const made: Here = {
      id,
      book,
      foreign: null,
      seen: new Set(),
      troubles,
      lastRead: 0,
      sinceWhole: 0,
      bytesSinceWhole: 0,
      saving: saving(
        async (changes) => {
          if (log === null) throw new Error(noStore ?? 'there is no store');
          const keys = await log.append(id, changes);
          for (const key of keys) made.seen.add(key);
          made.sinceWhole += changes.length;
          made.bytesSinceWhole += changes.reduce((sum, one) => sum + bytesOf(one), 0);
          world.nudge(id);
          if (longLog(made) && made.saving.waiting().length <= changes.length) void compact(made);
        },
        () => {
          if (here === made) news([], false);
        },
        world.later,
      ),
    };
    book.onChange((change, patches) => {
      if (change !== null) made.saving.add(change);
      if (here !== made) return;
      news(patches, false);
      picture();
    });
    return made;
  }

  const longLog = (one: Here): boolean =>
    one.sinceWhole >= world.compactAfter || one.bytesSinceWhole >= compactAfter_bytes;

  async function compact(one: Here): Promise<void> {
    if (log === null || one.book === null) return;
    one.sinceWhole = 0;
    one.bytesSinceWhole = 0;
    try {
      await catchUpWith(one);
      const key = await log.compact(one.id, { ...one.book.states(), keys: [] }, one.seen);
      if (key !== null) one.seen.add(key);
    } catch {
      // the log stays as it was, only longer; the next time will do
    }
  }

  async function load(known: KnownBook): Promise<void> {
    if (log === null) return;
    if (known.foreign) return loadForeign(known);
    const read = await log.read(known.id);
    const { book, bad, used, sinceWhole, bytesSinceWhole } = bookFromRows(read, world.surroundings());
    if (book === null) return loadPicture(known, bad);
    const troubles: string[] = [];
    const opened = shownFrom(known.id, book, troubles);
    for (const { key } of read.rows) opened.seen.add(key);
    opened.lastRead = Math.max(0, ...read.rows.map((row) => row.key));
    opened.sinceWhole = sinceWhole;
    opened.bytesSinceWhole = bytesSinceWhole;
    if (bad.length > 0) {
      // first what can be done again is done again and stored; only then are the damaged rows moved
      book.mend(used.map((row) => row.change));
      await opened.saving.flush();
      troubles.push(damageInWords(bad.length));
      await log.setAside(known.id, bad, 'checksum or content').catch(() => {});
    }
    here = opened;
    news([], true);
    picture();
    void blobsMissing();
    if (longLog(opened)) void compact(opened);
  }

  async function loadForeign(known: KnownBook): Promise<void> {
    const bytes = await log?.foreign(known.id);
    const read = bytes ? readBoatFile(bytes) : null;
    if (!bytes || read?.kind !== 'newer') return loadPicture(known, []);
    here = foreignHere(known.id, read.book, bytes, read.why);
    news([], true);
  }

  function foreignHere(id: string, book: Book, bytes: Uint8Array, why: string): Here {
    return {
      id,
      book: null,
      foreign: { book, bytes, why },
      saving: saving(
        async () => {},
        () => {},
        world.later,
      ),
      seen: new Set(),
      troubles: [],
      lastRead: 0,
      sinceWhole: 0,
      bytesSinceWhole: 0,
    };
  }

  /** The log cannot be read: the book is begun anew from its last picture, under an id of its own. */
  async function loadPicture(known: KnownBook, bad: readonly number[]): Promise<void> {
    const picture = await log?.first(known.id);
    // it may be of an earlier version
    const read = picture ? readBoatFile(new TextEncoder().encode(JSON.stringify(picture))) : null;
    if (read?.kind !== 'book') {
      here = null;
      noStore = `The stored book ‘${known.name}’ cannot be read: every copy of it on this device is damaged. Nothing was taken away. Open a boat file of it, or begin a new book.`;
      news([], true);
      return;
    }
    await beginAs({ ...read.book, id: world.surroundings().newId() }, [
      `The stored book ‘${known.name}’ was damaged (${bad.length} rows). It was begun anew from the last picture of it; the damaged rows are kept.`,
    ]);
  }

  async function beginAs(book: Book, troubles: string[], onlyFirst = false): Promise<void> {
    const surroundings = world.surroundings();
    const opened = beginBook(book, surroundings.newId(), surroundings);
    await beginWith(opened, troubles, onlyFirst);
  }

  async function beginWith(opened: OpenBook, troubles: string[], onlyFirst = false): Promise<void> {
    const { boat } = opened.view();
    const made = shownFrom(opened.id, opened, troubles);
    const whole: StoredChange = { ...opened.states(), keys: [] };
    const known: KnownBook = { id: opened.id, name: boat.name, demo: boat.demo, foreign: false };
    if (log === null) made.saving.add(whole);
    else {
      try {
        const first = await log.begin(known, whole, onlyFirst);
        if (!first) return openCurrent();
      } catch (error) {
        noStore = inPlainWords(error);
      }
    }
    here = made;
    news([], true);
    picture();
  }

  async function openCurrent(): Promise<void> {
    const current = await log?.current();
    const known = (await log?.books())?.find((one) => one.id === current);
    if (known === undefined) {
      here = null;
      news([], true);
    } else await load(known);
  }

  /** Notes what the open book names. @returns what of it is not on this device, in words */
  async function blobsMissing(): Promise<readonly string[]> {
    return here?.book ? blobs.missing(here.id, here.book.view()) : [];
  }

  async function catchUpWith(one: Here): Promise<void> {
    if (log === null || one.book === null) return;
    const { rows } = await log.read(one.id, one.lastRead);
    for (const { key, change } of rows) {
      if (!one.seen.has(key)) one.book.takeIn(change);
      one.seen.add(key);
      one.lastRead = Math.max(one.lastRead, key);
    }
  }

  async function openFile(bytes: Uint8Array, asCopy: boolean): Promise<OpenedFile> {
    const read = readBoatFile(bytes);
    if (read.kind === 'refused') return read;
    if (read.kind === 'newer') {
      const id = world.surroundings().newId();
      const known = { id, name: read.book.boat.name, demo: false, foreign: true };
      await log?.keepForeign(known, bytes);
      here = foreignHere(id, read.book, bytes, read.why);
      news([], true);
      return { kind: 'opened', readOnly: true, notes: [read.why, ...read.notes] };
    }
    let noRoom: string[] = [];
    try {
      // before the book is shown, so that what it names is there
      const named = new Set(blobsNamed(read.book).map(({ blob }) => blob));
      await blobs.keep(new Map([...read.blobs].filter(([hash]) => named.has(hash))));
    } catch (error) {
      noRoom = [`The readings and photographs in the file were not kept: ${inPlainWords(error)}`];
    }
    const opened = await openBookOf(read, asCopy);
    return { ...opened, notes: [...opened.notes, ...noRoom, ...(await blobsMissing())] };
  }

  async function openBookOf(
    read: ReadBoatFile & { readonly kind: 'book' },
    asCopy: boolean,
  ): Promise<OpenedFile & { readonly kind: 'opened' }> {
    const known = (await log?.books())?.find((one) => one.id === read.book.id);
    const again = known !== undefined || here?.id === read.book.id;
    const notes = [...read.notes];
    if (asCopy) {
      await beginAs({ ...read.book, id: world.surroundings().newId() }, []);
      return { kind: 'opened', readOnly: false, notes };
    }
    if (!again) {
      if (read.states === null) await beginAs(read.book, []);
      else await beginWith(openBook([read.states], world.surroundings()), []);
      return { kind: 'opened', readOnly: false, notes };
    }
    if (known !== undefined && here?.id !== known.id) {
      await log?.open(known.id);
      await load(known);
    }
    if (read.states !== null && here?.book?.born === read.born) {
      const fresh = here.book.takeIn(read.states);
      if (fresh.keys.length > 0) here.saving.add(fresh);
      news([], true);
      const what =
        fresh.keys.length > 0
          ? 'What it knew that this device did not was put in'
          : 'It holds nothing that this device did not know';
      notes.push(
        `This book was on this device already. ${what}; nothing was taken away. Open it as a copy to see it as it was.`,
      );
    } else {
      await beginAs({ ...read.book, id: world.surroundings().newId() }, []);
      notes.push(
        'A book with the same name tag but another past is on this device. The file was opened as a book of its own beside it.',
      );
    }
    return { kind: 'opened', readOnly: false, notes };
  }

  const refusedNow = (): OperationOutcome | null => {
    if (here?.foreign) {
      return { kind: 'refused', where: 'boat book', wrong: here.foreign.why, right: 'a newer version of this program' };
    }
    return here?.book
      ? null
      : { kind: 'refused', where: 'boat book', wrong: 'no book is open', right: 'open or begin one' };
  };

  return {
    start: () =>
      inTurn(async () => {
        try {
          log = await world.openLog();
        } catch (error) {
          noStore = `This device gives the program no store (${error instanceof Error ? error.message : String(error)}). The book lasts only while this page is open: take a copy of it before you close the page.`;
        }
        await openCurrent();
      }),
    async run(name, fields) {
      await turn;
      const refused = refusedNow();
      if (refused !== null || !here?.book) return refused ?? nothingOpen;
      const outcome = here.book.run(name, fields);
      if (outcome.kind === 'done' && name === 'setBoat' && here.book) {
        const { boat } = here.book.view();
        await log?.named({ id: here.id, name: boat.name, demo: boat.demo, foreign: false }).catch(() => {});
      }
      return outcome;
    },
    async undo() {
      await turn;
      turned(here?.book?.undo(), 'taken back');
    },
    async redo() {
      await turn;
      turned(here?.book?.redo(), 'put back');
    },
    async flush() {
      await turn;
      await here?.saving.flush();
    },
    async boatFile() {
      await turn;
      if (here?.foreign) return here.foreign.bytes;
      if (!here?.book) throw new Error('no book is open');
      const book = here.book.view();
      return writeBoatFile({ book, states: here.book.states(), blobs: await blobs.namedBy(book) });
    },
    async keepBlob(name, fields, bytes) {
      await turn;
      const refused = refusedNow();
      if (refused !== null || !here?.book) return refused ?? nothingOpen;
      const hash = sha256(bytes);
      try {
        await blobs.keep(new Map([[hash, bytes]]));
      } catch (error) {
        return {
          kind: 'refused',
          where: 'this device',
          wrong: `the ${whatIsKept[name]} could not be stored: ${inPlainWords(error)}`,
          right: `room for ${(bytes.length / 1e6).toFixed(1)} MB`,
        };
      }
      const outcome = here.book.run(name, { ...fields, blob: hash } as never);
      void blobsMissing();
      return outcome;
    },
    async blob(hash) {
      // a page drawn from the last picture asks before the store is open
      await turn;
      return blobs.blob(hash);
    },
    async find(query) {
      await turn;
      return finder.find(query);
    },
    openFile: (bytes, asCopy) => inTurn(() => openFile(bytes, asCopy)),
    startBook: (kind, boat, standing) =>
      inTurn(async () => {
        const id = world.surroundings().newId();
        if (kind === 'empty') {
          const book = { ...emptyBook(id, boat as Boat), ...standing };
          const [fault] = checkBook(book);
          if (fault) throw new RangeError(`${fault.where}: ${fault.wrong}; right would be ${fault.right}`);
          return beginAs(book, []);
        }
        const demo = (await log?.books())?.find((known) => known.demo);
        if (demo !== undefined) {
          await log?.open(demo.id);
          return load(demo);
        }
        const first = (await log?.current()) ?? null;
        await beginAs({ ...(await world.demoBook()), id }, [], first === null);
      }),
    async books() {
      await turn;
      const known = (await log?.books()) ?? [];
      return known.map(({ id, name }) => ({ id, name, current: id === here?.id }));
    },
    openBook: (id) =>
      inTurn(async () => {
        const known = (await log?.books())?.find((one) => one.id === id);
        if (known === undefined) throw new RangeError(`there is no book ${id} on this device`);
        await here?.saving.flush();
        await log?.open(id);
        await load(known);
      }),
    tellAgain: () => news([], false),
    catchUp: (book) => inTurn(async () => (here?.id === book ? catchUpWith(here) : undefined)),
  };

  function turned(result: { title: string | null; left: readonly string[] } | undefined, word: string): void {
    if (!result || result.left.length === 0 || here === null) return;
    here.troubles.push(
      `‘${result.title}’ was not ${word} in full: ${result.left.join(', ')} was changed elsewhere since, and is left as it is.`,
    );
    news([], false);
  }
}

function damageInWords(rows: number): string {
  return rows === 1
    ? 'One stored change was damaged and is set aside. All other changes are here.'
    : `${rows} stored changes were damaged and are set aside. All other changes are here.`;
}
