import ExifReader from 'exifreader';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostPhoto_bytes } from '#boat-book';
import { mostKept_bytes } from './photo-size.ts';
import { pictureLook } from './picture-look.ts';
import { type CameraMarks, exifPart, withExif } from './testing/exif-block.ts';

/** Start of a JPEG, a frame that states its size, the start of a scan, two bytes of scan, the end. */
const bare = (width: number, height: number) =>
  Uint8Array.from([
    ...[0xff, 0xd8],
    ...[0xff, 0xc0, 0, 11, 8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0],
    ...[0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x12, 0x34, 0xff, 0xd9],
  ]);
const marks: CameraMarks = {
  orientation: 6,
  taken: '2026:05:02 09:41:07',
  gps: { latitude: [50, 6, 1234, 'N'], longitude: [5, 12, 4056, 'W'] },
};

test('when and where a photograph was taken is read as another reader reads it, in either order of bytes', () => {
  for (const little of [true, false]) {
    const file = withExif(bare(4000, 3000), marks, little);
    const look = pictureLook(file);
    // exifreader 4.46.0 is the judge: https://github.com/mattiasw/ExifReader
    const judged = ExifReader.load(file.slice().buffer, { expanded: true });
    expect(judged.gps?.Latitude).toBeCloseTo(50 + 6 / 60 + 12.34 / 3600, 9);
    expect(look.position?.latitude_deg).toBeCloseTo(judged.gps?.Latitude ?? Number.NaN, 6);
    expect(look.position?.longitude_deg).toBeCloseTo(judged.gps?.Longitude ?? Number.NaN, 6);
    expect(judged.exif?.DateTimeOriginal?.description).toBe('2026:05:02 09:41:07');
    expect(judged.exif?.Orientation?.value).toBe(6);
    expect(look).toMatchObject({
      kind: 'jpeg',
      stated: { width_px: 4000, height_px: 3000 },
      whole: true,
      takenClock: '2026-05-02T09:41:07',
      offset: null,
    });
  }
});

test('a photograph with no marks, and one whose clock was never set, say nothing of when or where', () => {
  const none = { takenClock: null, position: null };
  expect(pictureLook(bare(10, 10))).toMatchObject(none);
  expect(pictureLook(withExif(bare(10, 10), { orientation: 1, taken: '0000:00:00 00:00:00' }))).toMatchObject(none);
});

test('a JPEG that breaks off is seen to, wherever it does, even where its preview is whole', () => {
  const file = withExif(bare(640, 480), marks);
  for (let length = 3; length < file.length - 1; length++) {
    expect(pictureLook(file.subarray(0, length)).whole, `${length} of ${file.length} bytes`).toBe(false);
  }
  // a preview with an end mark of its own, before the picture's scan
  const preview = exifPart({ orientation: 1 }, false);
  const broken = Uint8Array.from([
    ...bare(1, 1).subarray(0, 2),
    ...preview,
    0xff,
    0xe2,
    0,
    6,
    0xff,
    0xd9,
    0,
    0,
    0xff,
    0xda,
    0,
    2,
    1,
    2,
    3,
  ]);
  expect(pictureLook(broken).whole).toBe(false);
});

test('other forms are known by their first bytes, and the size they state is read before they are opened', () => {
  const png = new Uint8Array(45);
  png.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  new DataView(png.buffer).setUint32(16, 30_000);
  new DataView(png.buffer).setUint32(20, 40_000);
  png.set([0x49, 0x45, 0x4e, 0x44], 37);
  expect(pictureLook(png)).toMatchObject({ kind: 'png', stated: { width_px: 30_000, height_px: 40_000 }, whole: true });
  const text = (words: string) => new TextEncoder().encode(words);
  expect(pictureLook(text('\0\0\0\x18ftypheic\0\0\0\0mif1heic')).kind).toBe('heic');
  expect(pictureLook(text('\0\0\0\x1cftypavif\0\0\0\0avifmif1')).kind).toBe('avif');
  expect(pictureLook(text('GIF89a\x0a\0\x05\0\0\0\0'))).toMatchObject({
    kind: 'gif',
    stated: { width_px: 10, height_px: 5 },
  });
  for (const other of ['', 'a', '%PDF-1.7', '<svg xmlns="http://www.w3.org/2000/svg"/>', '{"format":"x"}'])
    expect(pictureLook(text(other)).kind, other).toBe('none');
});

test('no bytes, however they stand, make the reader go past their end or stop with a fault', () => {
  const file = withExif(bare(640, 480), marks);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(file.length - 1), fc.nat(255)), { maxLength: 12 }),
      fc.nat(file.length),
      (changes, length) => {
        const damaged = file.slice();
        for (const [at, byte] of changes) damaged[at] = byte;
        const { position } = pictureLook(damaged.subarray(0, length));
        if (position !== null) {
          expect(Math.abs(position.latitude_deg)).toBeLessThanOrEqual(90);
          expect(Math.abs(position.longitude_deg)).toBeLessThanOrEqual(180);
        }
      },
    ),
    { numRuns: 2000 },
  );
});

test('a photograph made small is one that the book takes', () => {
  expect(mostKept_bytes).toBe(mostPhoto_bytes);
});
