import { constants, deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readBoatFile, writeBoatFile } from './boat-file.ts';
import { bookVersion } from './book-schema.ts';
import { beginBook, openBook } from './open-book.ts';
import type { Book } from './records.ts';
import { sha256 } from './sha256.ts';
import { anyBook } from './testing/any-book.ts';
import { begun, done, step, surroundings } from './testing/devices.ts';

function book() {
  const open = begun();
  done(open.run('addJob', { title: 'Rebed the plate', consequence: 'worsens', steps: [step] }));
  return open;
}

const file = (): Uint8Array => {
  const open = book();
  return writeBoatFile({ book: open.view(), states: open.states() });
};

const refused = (bytes: Uint8Array): string => {
  const read = readBoatFile(bytes);
  expect(read.kind).toBe('refused');
  return read.kind === 'refused' ? read.because.join('\n') : '';
};

/** A zip with these entries and a manifest that fits them. */
function zipOf(entries: Record<string, Uint8Array>, hashes: Record<string, string> = {}): Uint8Array {
  const files = Object.fromEntries(Object.entries(entries).map(([name, bytes]) => [name, sha256(bytes)]));
  const manifest = { format: 'fettle-boat-file', version: 1, files: { ...files, ...hashes } };
  return zipSync({ 'manifest.json': strToU8(JSON.stringify(manifest)), ...entries });
}

/** A zip with one entry of `megabytes` of zeros, which states that it holds `stated` bytes. */
function bomb(stated: number, megabytes = 2048): Uint8Array {
  // one stretch of zeros, packed so that it can stand any number of times, and an empty last block
  const stretch = deflateRawSync(Buffer.alloc(1_048_576), { finishFlush: constants.Z_SYNC_FLUSH });
  const packed = Buffer.concat([...Array(megabytes).fill(stretch), deflateRawSync(Buffer.alloc(0))]);
  const name = Buffer.from('book.json');
  const sizes = Buffer.alloc(12);
  sizes.writeUInt32LE(packed.length, 4);
  sizes.writeUInt32LE(stated, 8);
  const method = Buffer.from([20, 0, 0, 0, 8, 0, 0, 0, 0, 0]);
  const lengths = Buffer.from([name.length, 0, 0, 0]);
  const local = Buffer.concat([Buffer.from('PK\x03\x04'), method, sizes, lengths, name]);
  const central = Buffer.concat([Buffer.from('PK\x01\x02\x14\x00'), method, sizes, lengths, Buffer.alloc(14), name]);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06');
  end.writeUInt16LE(1, 8);
  end.writeUInt16LE(1, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(local.length + packed.length, 16);
  return Uint8Array.from(Buffer.concat([local, packed, central, end]));
}

const json = (value: unknown): Uint8Array => strToU8(JSON.stringify(value));

test('any book comes back from its file as it was, with its past', () => {
  fc.assert(
    fc.property(anyBook, (any) => {
      const open = beginBook(any, 'birth', surroundings('a'));
      // the order of keys is not part of a book; that of fixed records is
      expect(open.view()).toEqual(any);
      const read = readBoatFile(writeBoatFile({ book: open.view(), states: open.states() }));
      expect(read).toMatchObject({ kind: 'book', notes: [], born: 'birth' });
      if (read.kind !== 'book' || read.states === null) throw new Error('no book with its past');
      expect(read.book).toEqual(any);
      expect(Object.keys(read.book.log)).toEqual(Object.keys(any.log));
      expect(openBook([read.states], surroundings('b')).view()).toEqual(any);
    }),
    { numRuns: 60 },
  );
});

test('any book comes back from its book.json alone, in a zip or by itself', () => {
  fc.assert(
    fc.property(anyBook, (any) => {
      const bytes = json(any);
      const plain = readBoatFile(bytes);
      const zipped = readBoatFile(zipSync({ 'book.json': bytes }));
      for (const read of [plain, zipped]) {
        if (read.kind !== 'book') throw new Error('no book');
        expect(read.book).toEqual(any);
        expect(read.states).toBeNull();
      }
      expect(zipped.kind === 'book' && zipped.notes.join()).toMatch(/no manifest/);
    }),
    { numRuns: 30 },
  );
});

test('the same book gives the same bytes', () => {
  const open = book();
  const contents = { book: open.view(), states: open.states() };
  expect(writeBoatFile(contents)).toEqual(writeBoatFile(contents));
});

test('blobs come back by their hash', () => {
  const photo = new Uint8Array([1, 2, 3]);
  const open = book();
  const read = readBoatFile(writeBoatFile({ book: open.view(), blobs: new Map([[sha256(photo), photo]]) }));
  expect(read.kind === 'book' && read.blobs.get(sha256(photo))).toEqual(photo);
});

describe('a damaged file is explained', () => {
  test('empty', () => expect(refused(new Uint8Array())).toMatch(/0 bytes/));
  test('not a zip', () =>
    expect(refused(strToU8('GIF89a and then some more than twenty-two bytes'))).toMatch(/not a zip/));
  test('cut off anywhere', () => {
    const whole = file();
    for (let at = 1; at < whole.length; at += 97) {
      expect(refused(whole.slice(0, at))).toMatch(/cut off|not a zip|damaged/);
    }
  });
  test('a byte changed anywhere in what is stored', () => {
    const whole = file();
    let told = 0;
    for (let at = 0; at < whole.length; at += 61) {
      const bytes = whole.slice();
      bytes[at] = bytes[at]! ^ 0x41;
      const read = readBoatFile(bytes);
      // a few bytes of a zip (dates, attributes) say nothing about the book; all others are noticed
      if (read.kind === 'book') expect(read.book).toEqual(book().view());
      else told++;
    }
    expect(told).toBeGreaterThan(whole.length / 61 / 2);
  });
  test('wrong hash', () => {
    const bytes = zipOf({ 'book.json': json(book().view()) }, { 'book.json': '0'.repeat(64) });
    expect(refused(bytes)).toBe(
      'The entry book.json is damaged or was changed: its hash is not the one in the manifest.',
    );
  });
  test('an entry that the manifest lists is missing, or one that it does not list is there', () => {
    expect(refused(zipOf({ 'book.json': json(book().view()) }, { 'yjs/boat.bin': '0'.repeat(64) }))).toMatch(
      /yjs\/boat.bin is missing/,
    );
    const manifest = json({ format: 'fettle-boat-file', version: 1, files: {} });
    expect(refused(zipSync({ 'manifest.json': manifest, 'book.json': json(book().view()) }))).toMatch(
      /not in the manifest/,
    );
  });
  test('no book in it', () => expect(refused(zipOf({ 'other.json': json({}) }))).toMatch(/no book.json/));
  test('a blob under another name than its hash', () => {
    const bytes = zipOf({ 'book.json': json(book().view()), [`blobs/${'0'.repeat(64)}`]: new Uint8Array([1]) });
    expect(refused(bytes)).toMatch(/not what its name says/);
  });
  test('a shared history that is not this book: the book is taken without it, and that is said', () => {
    const other = begun();
    const bytes = writeBoatFile({ book: book().view(), states: other.states() });
    const read = readBoatFile(bytes);
    expect(read).toMatchObject({ kind: 'book', states: null, born: null });
    expect(read.kind === 'book' && read.notes.join()).toMatch(/does not say what its book.json says/);
    const junk = { boat: new Uint8Array([255, 255, 255, 255, 9]), work: new Uint8Array([1, 7, 3]) };
    expect(readBoatFile(writeBoatFile({ book: book().view(), states: junk }))).toMatchObject({
      kind: 'book',
      states: null,
    });
  });
});

describe('a hostile file is refused', () => {
  const sound = () => json(book().view());

  test.each([
    '../book.json',
    'a/../../x',
    '/etc/passwd',
    'C:/x',
    'C:\\x',
    'blobs\\x',
    'a//b',
    './x',
    'a\u0000b',
    'x'.repeat(300),
  ])('an entry named %j', (name) => {
    expect(refused(zipOf({ 'book.json': sound(), [name]: new Uint8Array([1]) }))).toMatch(/which is refused/);
  });

  test('two entries of one name, also where only capitals differ', () => {
    expect(refused(zipOf({ 'book.json': sound(), 'BOOK.json': sound() }))).toMatch(/two entries/);
    // the same name twice, which no zip writer makes: the second entry renamed in the bytes
    const bytes = zipOf({ 'book.json': sound(), 'bonk.json': sound() });
    const text = Buffer.from(bytes).toString('latin1').replaceAll('bonk.json', 'book.json');
    expect(refused(Uint8Array.from(Buffer.from(text, 'latin1')))).toMatch(/two entries/);
  });

  test.each([
    ['as large as it is', 2_147_483_648],
    ['small', 10],
  ])('a zip of 2 MB that unpacks to 2 GB, and says it is %s', (_, stated) => {
    const bytes = bomb(stated);
    expect(bytes.length).toBeLessThan(3_000_000);
    const before = process.memoryUsage().rss;
    expect(refused(bytes)).toMatch(
      /unpacks to more than (600 MB|200 times its size), which no boat file does; unpacking was stopped/,
    );
    // far from two gigabytes
    expect(process.memoryUsage().rss - before).toBeLessThan(900_000_000);
  });

  test('what comes out is counted against the limit, not what is claimed', () => {
    const bytes = bomb(10, 12);
    expect(readBoatFile(bytes, { packed: 1e9, unpacked: 5e6, entries: 10 })).toMatchObject({
      kind: 'refused',
      because: ['The file unpacks to more than 5 MB, which no boat file does; unpacking was stopped.'],
    });
  });

  test('more entries than a boat file has', () => {
    const entries = Object.fromEntries(Array.from({ length: 5_001 }, (_, i) => [`blobs/${i}`, new Uint8Array()]));
    expect(refused(zipSync(entries))).toMatch(/more than 5000 entries/);
  });

  test('a file larger than boat files are', () => {
    const read = readBoatFile(file(), { packed: 100, unpacked: 1e6, entries: 10 });
    expect(read).toMatchObject({ kind: 'refused', because: [expect.stringMatching(/at most/)] });
  });

  test('a script in a name stays text: it is neither refused nor changed', () => {
    const open = begun();
    const title = '<script>alert(1)</script><img src=x onerror=alert(1)>';
    const id = done(open.run('addJob', { title, consequence: 'comfort' }));
    const read = readBoatFile(writeBoatFile({ book: open.view() }));
    expect(read.kind === 'book' && read.book.jobs[id]?.title).toBe(title);
  });

  test.each<[string, (text: string) => string, RegExp]>([
    ['JSON cut off', (t) => t.slice(0, 200), /not JSON/],
    ['not an object', () => '[]', /not a book|not JSON|not a zip/],
    ['another format', (t) => t.replace('fettle-boat-book', 'other-book'), /its format is not/],
    ['a version that is none', (t) => t.replace('"version":5', '"version":"1"'), /says no version/],
    [
      'a number where a text belongs',
      (t) => t.replace('"title":"Rebed the plate"', '"title":7'),
      /jobs › \w+ › title: 7 does not do; right would be a text/,
    ],
    [
      'a text where a number belongs',
      (t) => t.replace('"length_m":5.6', '"length_m":"5.6"'),
      /boat › length_m: ‘5\.6’ does not do; right would be a number/,
    ],
    ['an absurd number', (t) => t.replace('"length_m":5.6', '"length_m":1e308'), /boat › length_m/],
    ['a missing part', (t) => t.replace('"jobs":', '"jabs":'), /jobs: it is missing/],
    ['a field that there is not', (t) => t.replace('"beam_m":', '"virus":1,"beam_m":'), /unknown: ‘virus’/],
    ['a __proto__ key', (t) => t.replace('"places":{}', '"places":{"__proto__":{"name":"x"}}'), /__proto__/],
    [
      'a __proto__ key, written another way',
      (t) => t.replace('"places":{}', '"places":{"\\u005f_proto__":{}}'),
      /__proto__/,
    ],
    ['a key of every object', (t) => t.replace('"places":{}', '"places":{"constructor":{}}'), /places › constructor/],
    ['a path for an id', (t) => t.replace('"id":"book1"', '"id":"../../book"'), /id: .*an id of at most/],
    [
      'nested without end',
      (t) => t.replace('"places":{}', `"places":${'['.repeat(60)}${']'.repeat(60)}`),
      /nested deeper/,
    ],
  ])('%s', (_, change, words) => {
    const text = JSON.stringify(book().view());
    const changed = change(text);
    expect(changed).not.toBe(text);
    expect(refused(zipOf({ 'book.json': strToU8(changed) }))).toMatch(words);
    expect(({} as { name?: string }).name).toBeUndefined();
  });
});

describe('a file from a newer version', () => {
  const newer = (change: (book: Record<string, unknown>) => void): Uint8Array => {
    const value = structuredClone(book().view()) as unknown as Record<string, unknown>;
    value.version = bookVersion + 1;
    change(value);
    return zipOf({ 'book.json': json(value) });
  };

  test('is shown by what this version knows, and says so', () => {
    const read = readBoatFile(
      newer((value) => {
        value.sails = { s1: { name: 'Jib' } };
        (value.boat as Record<string, unknown>).ballast_kg = 200;
        (value.jobs as Record<string, unknown>).later = { title: 'A job of another form' };
      }),
    );
    if (read.kind !== 'newer') throw new Error(`it was ${read.kind}`);
    expect(read.book.boat).toEqual(book().view().boat);
    expect(Object.values(read.book.jobs).map((job) => job.title)).toEqual(['Rebed the plate']);
    expect(read.why).toMatch(/newer version \(6\).*read here but not changed/);
    expect(read.notes).toEqual(['1 records in it cannot be shown by this version.']);
  });

  test('is refused where even the boat cannot be shown', () => {
    expect(refused(newer((value) => delete value.boat))).toMatch(/newer version \(6\).*cannot be shown/);
  });
});

test('a book that names what is not in it opens, and says so', () => {
  const value = structuredClone(book().view()) as unknown as { jobs: Record<string, { zone: string | null }> };
  for (const job of Object.values(value.jobs)) job.zone = 'nowhere';
  const read = readBoatFile(json(value as unknown as Book));
  expect(read.kind === 'book' && read.notes.join()).toMatch(/names the zone ‘nowhere’/);
});
