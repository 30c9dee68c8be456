/**
 * The boat file: a zip with the book in its open form, the shared documents, and a manifest of hashes. See
 * docs/boat-file.md. One gate reads every file, old or foreign, and what it refuses it says in plain words.
 */
import { strFromU8, strToU8, type Zippable, zipSync } from 'fflate';
import { z } from 'zod/mini';
import { blobsNamed } from './blobs-named.ts';
import { bookFormat, bookSchema, bookVersion } from './book-schema.ts';
import { sameContent } from './canonical.ts';
import { collectionNames, collections } from './collections.ts';
import { danglingPlaces } from './dangling.ts';
import type { BookStates } from './documents.ts';
import { emptyOfVersion5, migrated } from './migrations.ts';
import { openBook } from './open-book.ts';
import type { Json } from './operation-fields.ts';
import { faultsOf } from './plain-words.ts';
import type { Book } from './records.ts';
import { recordSchemas } from './schemas.ts';
import { sha256 } from './sha256.ts';
import { type UnpackLimits, unpack } from './unpack.ts';

export interface BoatFileContents {
  readonly book: Book;
  /** the shared documents; without them the file opens as a book with no past */
  readonly states?: BookStates;
  /** by the SHA-256 of their content */
  readonly blobs?: ReadonlyMap<string, Uint8Array>;
}

export type ReadBoatFile =
  | {
      readonly kind: 'book';
      readonly book: Book;
      /** the shared documents, where the file has them and they say what the book says */
      readonly states: BookStates | null;
      readonly born: string | null;
      readonly blobs: ReadonlyMap<string, Uint8Array>;
      readonly notes: readonly string[];
    }
  /** from a newer version: `book` is what of it can be shown; the file itself is what to keep */
  | { readonly kind: 'newer'; readonly book: Book; readonly why: string; readonly notes: readonly string[] }
  | { readonly kind: 'refused'; readonly because: readonly string[] };

/** Twice what the photographs and papers of a book have together: two devices that filled it apart still meet. */
export const boatFileLimits: UnpackLimits = { packed: 500_000_000, unpacked: 600_000_000, entries: 5_000 };
const mostBookJson = 64_000_000;
const deepest = 40;

const manifestSchema = z.object({
  format: z.literal('fettle-boat-file'),
  version: z.int().check(z.gte(1)),
  files: z.record(z.string(), z.string().check(z.regex(/^[0-9a-f]{64}$/))),
});

/** A boat file's bytes. The same contents give the same bytes. */
export function writeBoatFile({ book, states, blobs = new Map() }: BoatFileContents): Uint8Array {
  const files: Record<string, Uint8Array> = { 'book.json': strToU8(`${JSON.stringify(book, null, 1)}\n`) };
  if (states !== undefined) {
    files['yjs/boat.bin'] = states.boat;
    files['yjs/work.bin'] = states.work;
  }
  for (const [hash, bytes] of blobs) files[`blobs/${hash}`] = bytes;
  const hashes: Record<string, string> = {};
  for (const [name, bytes] of Object.entries(files)) {
    const hash = sha256(bytes);
    // a blob that was damaged where it was kept is left out: in the file it would close the whole book
    if (name.startsWith('blobs/') && name !== `blobs/${hash}`) delete files[name];
    else hashes[name] = hash;
  }
  const manifest = { format: 'fettle-boat-file', version: 1, files: hashes };
  const packed = new Set(blobsNamed(book).flatMap((named) => (named.packed ? [`blobs/${named.blob}`] : [])));
  const entries = Object.entries(files).map(([name, bytes]): [string, Zippable[string]] => [
    name,
    packed.has(name) ? [bytes, { level: 0 }] : bytes,
  ]);
  return zipSync(
    { 'manifest.json': strToU8(`${JSON.stringify(manifest, null, 1)}\n`), ...Object.fromEntries(entries) },
    // the earliest date a zip can hold: a file says nothing of when it was made
    { level: 6, mtime: new Date(1980, 0, 1) },
  );
}

/**
 * Reads a boat file, or a `book.json` by itself. Every entry is held to the limits, its name to the archive, its
 * content to the manifest, the book to the schema; earlier versions are brought up to this one.
 */
export function readBoatFile(bytes: Uint8Array, limits: UnpackLimits = boatFileLimits): ReadBoatFile {
  // `{` begins a book in its open form, by itself
  if (bytes[0] === 0x7b) return readBook(bytes, null, new Map(), []);
  const unpacked = unpack(bytes, limits);
  if (unpacked.kind === 'refused') return { kind: 'refused', because: [unpacked.because] };
  const { files } = unpacked;
  const hashes = new Map<string, string>();
  const hashOf = (name: string, content: Uint8Array): string => {
    const hash = hashes.get(name) ?? sha256(content);
    hashes.set(name, hash);
    return hash;
  };
  const notes: string[] = [];
  const manifest = files.get('manifest.json');
  if (manifest === undefined) {
    notes.push(
      'The file has no manifest, so its contents could not be checked for damage; only its book.json was used.',
    );
  } else {
    const faults = manifestFaults(manifest, files, hashOf);
    if (faults.length > 0) return { kind: 'refused', because: faults };
  }
  const book = files.get('book.json');
  if (book === undefined)
    return { kind: 'refused', because: ['The file holds no book.json, which is the book itself.'] };
  const blobs = new Map<string, Uint8Array>();
  for (const [name, content] of files) {
    if (!name.startsWith('blobs/')) continue;
    const hash = name.slice('blobs/'.length);
    if (hashOf(name, content) !== hash)
      return { kind: 'refused', because: [`The entry ${name} is not what its name says it is.`] };
    blobs.set(hash, content);
  }
  const boat = files.get('yjs/boat.bin');
  const work = files.get('yjs/work.bin');
  const states = manifest !== undefined && boat !== undefined && work !== undefined ? { boat, work } : null;
  return readBook(book, states, blobs, notes);
}

function manifestFaults(
  bytes: Uint8Array,
  files: ReadonlyMap<string, Uint8Array>,
  hashOf: (name: string, content: Uint8Array) => string,
): string[] {
  const json = readJson(bytes, 'manifest.json');
  if (json.kind === 'refused') return [json.because];
  const read = manifestSchema.safeParse(json.value);
  if (!read.success) {
    return faultsOf(read.error.issues, json.value, 'manifest.json').map(inOneLine).slice(0, 5);
  }
  const faults: string[] = [];
  for (const [name, hash] of Object.entries(read.data.files)) {
    const content = files.get(name);
    if (content === undefined) faults.push(`The entry ${name} is missing, which the manifest lists.`);
    else if (hashOf(name, content) !== hash) {
      faults.push(`The entry ${name} is damaged or was changed: its hash is not the one in the manifest.`);
    }
  }
  for (const name of files.keys()) {
    if (name !== 'manifest.json' && !Object.hasOwn(read.data.files, name) && !name.endsWith('/')) {
      faults.push(`The entry ${name} is not in the manifest.`);
    }
  }
  return faults.slice(0, 20);
}

function readBook(
  bytes: Uint8Array,
  states: BookStates | null,
  blobs: ReadonlyMap<string, Uint8Array>,
  notes: readonly string[],
): ReadBoatFile {
  const refused = (...because: string[]): ReadBoatFile => ({ kind: 'refused', because });
  if (bytes.length > mostBookJson) return refused(`book.json is larger than ${mostBookJson / 1e6} MB.`);
  const json = readJson(bytes, 'book.json');
  if (json.kind === 'refused') return refused(json.because);
  const value = json.value;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return refused('book.json is not a book.');
  const fields = value as { readonly [key: string]: Json };
  if (fields.format !== bookFormat) return refused(`book.json is not a boat book: its format is not ‘${bookFormat}’.`);
  const version = fields.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refused('book.json says no version, which is a whole number from 1.');
  }
  if (version > bookVersion) return newer(fields, version, notes);

  const brought = migrated(fields, version);
  const read = bookSchema.safeParse({ ...emptyOfVersion5, ...brought.book });
  if (!read.success) {
    const faults = faultsOf(read.error.issues, brought.book).map(inOneLine);
    const more = read.error.issues.length - 20;
    return refused(...faults.slice(0, 20), ...(more > 0 ? [`and ${more} more`] : []));
  }
  const book: Book = read.data;
  const all = [...notes, ...brought.notes];
  const lost = danglingPlaces(book);
  if (lost.length > 0) {
    all.push(
      `${lost.length} places in the book name what is not in it (the first: ${lost[0]?.where} names ${lost[0]?.names}); they are shown as empty.`,
    );
  }
  const past = states === null ? null : pastOf(book, states);
  if (states !== null && past === null) {
    all.push(
      'The shared history in the file does not say what its book.json says; the book was taken without its past.',
    );
  }
  return { kind: 'book', book, states: past === null ? null : states, born: past, blobs, notes: all };
}

/** The birth of the shared documents, where they hold this very book; otherwise null. */
function pastOf(book: Book, states: BookStates): string | null {
  try {
    const opened = openBook([states], { session: 0xffff_ffff, newId: () => 'none', now: () => 0, timeZone: 'UTC' });
    return sameContent(opened.view(), book) ? opened.born : null;
  } catch {
    return null;
  }
}

/** What of a book from a newer version can be shown: each record by the fields that this version knows. */
function newer(fields: { readonly [key: string]: Json }, version: number, notes: readonly string[]): ReadBoatFile {
  let left = 0;
  const known = (collection: keyof typeof recordSchemas, record: Json | undefined): unknown => {
    const schema: z.ZodMiniObject = recordSchemas[collection];
    if (typeof record !== 'object' || record === null || Array.isArray(record)) return null;
    const picked = Object.fromEntries(Object.entries(record).filter(([field]) => Object.hasOwn(schema.shape, field)));
    const read = schema.safeParse(picked);
    return read.success ? read.data : null;
  };
  const parts = Object.fromEntries(
    collectionNames.map((name) => {
      if (collections[name].kept === 'one') return [name, known(name, fields[name])];
      const records: Record<string, unknown> = {};
      const given = fields[name];
      for (const [id, record] of Object.entries(typeof given === 'object' && given !== null ? given : {})) {
        const shown = bookSchema.shape.id.safeParse(id).success ? known(name, record as Json) : null;
        if (shown === null) left++;
        else records[id] = shown;
      }
      return [name, records];
    }),
  );
  const book = { ...parts, format: bookFormat, version: bookVersion, id: fields.id };
  const read = bookSchema.safeParse(book);
  const why = `The file is from a newer version (${version}) of the program; this one knows version ${bookVersion}.`;
  if (!read.success) return { kind: 'refused', because: [`${why} It cannot be shown here.`] };
  return {
    kind: 'newer',
    book: read.data,
    why: `${why} It can be read here but not changed; what this version does not know is kept in it.`,
    notes: left === 0 ? notes : [...notes, `${left} records in it cannot be shown by this version.`],
  };
}

type ReadJson =
  | { readonly kind: 'json'; readonly value: unknown }
  | { readonly kind: 'refused'; readonly because: string };

/** JSON that is no deeper than it may be, with no key that means something to JavaScript itself. */
function readJson(bytes: Uint8Array, name: string): ReadJson {
  let value: unknown;
  try {
    value = JSON.parse(strFromU8(bytes));
  } catch (error) {
    const detail = error instanceof Error ? error.message.slice(0, 120) : '';
    return { kind: 'refused', because: `${name} is not JSON (${detail}).` };
  }
  const open: { readonly value: unknown; readonly depth: number }[] = [{ value, depth: 0 }];
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (typeof one.value !== 'object' || one.value === null) continue;
    if (one.depth > deepest) return { kind: 'refused', because: `${name} is nested deeper than ${deepest} levels.` };
    for (const key of Object.keys(one.value)) {
      if (key === '__proto__')
        return { kind: 'refused', because: `${name} has a field called __proto__, which is refused.` };
      open.push({ value: (one.value as Record<string, unknown>)[key], depth: one.depth + 1 });
    }
  }
  return { kind: 'json', value };
}

const inOneLine = ({ where, wrong, right }: { where: string; wrong: string; right: string }): string =>
  `${where || 'the book'}: ${wrong}; right would be ${right}.`;
