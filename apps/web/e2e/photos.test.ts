/** Photographs: made small, turned, silent about where; bad ones refused by name; shown, changed, taken out, carried along. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExifReader from 'exifreader';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { withExif } from '../src/photos/testing/exif-block.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

let browser: Browser;
const contexts: BrowserContext[] = [];
beforeAll(async () => {
  browser = await launchBrowser();
});
afterEach(async () => {
  for (const context of contexts.splice(0)) await context.close();
});
afterAll(async () => {
  await browser.close();
});

async function opened(size: typeof phone | typeof laptop): Promise<Page> {
  const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
  contexts.push(context);
  context.setDefaultTimeout(20_000);
  const today = new Date().toISOString().slice(0, 10);
  const book = bookOf(today, 'Dabchick', {
    jobs: { plate: jobOf(today, 'Rebed the plate', { fitting: 'plate-starboard' }) },
    steps: { 'plate-1': stepOf('plate', 0, 'Take it off', 20) },
  });
  const page = await openBook(context, book);
  await page.goto(`${page.url().split('#')[0]}#/work/job/plate`);
  await page.getByRole('heading', { level: 1, name: 'Rebed the plate' }).waitFor();
  return page;
}

/** An invented picture, red on its left half as it is stored and blue on its right, as a JPEG. */
async function picture(page: Page, width: number, height: number): Promise<Uint8Array> {
  const base64 = await page.evaluate(
    async ([wide, high]) => {
      const canvas = new OffscreenCanvas(wide!, high!);
      const pen = canvas.getContext('2d')!;
      pen.fillStyle = '#c03020';
      pen.fillRect(0, 0, wide! / 2, high!);
      pen.fillStyle = '#2040a0';
      pen.fillRect(wide! / 2, 0, wide! / 2, high!);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
    },
    [width, height],
  );
  return new Uint8Array(Buffer.from(base64, 'base64'));
}

const jpeg = (name: string, bytes: Uint8Array) => ({ name, mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
const choose = (page: Page, ...files: readonly ReturnType<typeof jpeg>[]) =>
  page.getByLabel('Photographs on this device').setInputFiles([...files]);
const strip = (page: Page) => page.getByRole('button', { name: /^Photograph, / });

/** What the book says of its photographs, and the bytes of the first, with the colours at its top and its foot. */
const kept = async (page: Page) => {
  const found = await page.evaluate(async () => {
    const client = globalThis.fettleBook!;
    const photos = Object.values(client.snapshot().book!.photos);
    const bytes = await client.blob(photos[0]!.blob);
    const bitmap = await createImageBitmap(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const pen = canvas.getContext('2d')!;
    pen.drawImage(bitmap, 0, 0);
    const at = (y: number) => [...pen.getImageData(Math.floor(bitmap.width / 2), y, 1, 1).data.slice(0, 3)];
    return {
      photos,
      base64: btoa(Array.from(bytes!, (byte) => String.fromCharCode(byte)).join('')),
      top: at(10),
      foot: at(bitmap.height - 10),
    };
  });
  return { ...found, bytes: new Uint8Array(Buffer.from(found.base64, 'base64')) };
};

describe.each([
  ['on a phone', phone],
  ['on a laptop', laptop],
] as const)('%s', (_, size) => {
  it('a photograph is made small, turned the right way up, and says no more where it was taken', async () => {
    const page = await opened(size);
    const taken = withExif(await picture(page, 4000, 3000), {
      orientation: 6,
      taken: '2026:05:02 09:41:07',
      gps: { latitude: [50, 6, 1234, 'N'], longitude: [5, 12, 4056, 'W'] },
    });
    // the outside reader finds the position in what the camera stored
    expect(ExifReader.load(taken.slice().buffer, { expanded: true }).gps?.Latitude).toBeCloseTo(50.1034, 3);
    await choose(page, jpeg('plate.jpg', taken));
    await strip(page).waitFor();
    await page.getByText('plate.jpg said where it was taken; that was left out.').waitFor();
    const { photos, bytes, top, foot } = await kept(page);
    // a picture to be turned a quarter: its stored left is its top
    expect(photos[0]).toMatchObject({
      width_px: 1200,
      height_px: 1600,
      bytes: bytes.length,
      position: null,
      job: 'plate',
    });
    expect(top[0]).toBeGreaterThan(150);
    expect(foot[2]).toBeGreaterThan(120);
    expect(new Date(photos[0]!.taken).getTime()).toBe(new Date('2026-05-02T09:41:07').getTime());
    const left = ExifReader.load(bytes.slice().buffer, { expanded: true });
    expect([left.gps, left.exif, left.xmp, left.iptc]).toEqual([undefined, undefined, undefined, undefined]);
    expect(Buffer.from(bytes).includes('Exif')).toBe(false);
    // wanted after all, for this one: it stands in the book, and not in the picture
    await page.getByRole('button', { name: 'Keep where it was taken' }).click();
    await expect.poll(async () => (await kept(page)).photos[0]?.position?.latitude_deg).toBeCloseTo(50.1034, 3);
    expect((await kept(page)).bytes).toEqual(bytes);
    expect(await seriousFaults(page)).toEqual([]);
  });

  it('bad photographs are refused by name with what to do, the good one among them is kept, and nothing is lost', async () => {
    const page = await opened(size);
    const good = await picture(page, 800, 600);
    await choose(page, jpeg('first.jpg', good));
    await strip(page).first().waitFor();
    const folder = await mkdtemp(join(tmpdir(), 'photos-'));
    const bad: readonly (readonly [string, Uint8Array, RegExp])[] = [
      ['huge.jpg', Buffer.concat([good, Buffer.alloc(61_000_000)]), /has 61 MB, and a photograph at most 60 MB/],
      ['wide.png', widePng(), /30000 × 40000 pixels, and at most 60 million/],
      ['notes.txt', Buffer.from('take the plate off'), /not a picture/],
      ['cut.jpg', good.subarray(0, good.length / 2), /breaks off before its end/],
      ['damaged.jpg', damaged(good), /damaged/],
      ['empty.jpg', new Uint8Array(), /0 bytes/],
      [
        'camera.heic',
        Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic'),
        /HEIC picture, which this browser cannot read. Set the camera/,
      ],
    ];
    try {
      for (const [name, bytes] of bad) await writeFile(join(folder, name), bytes);
      await writeFile(join(folder, 'second.jpg'), await picture(page, 640, 480));
      await page
        .getByLabel('Photographs on this device')
        .setInputFiles(
          [...bad.slice(0, 3).map(([name]) => name), 'second.jpg', ...bad.slice(3).map(([name]) => name)].map((name) =>
            join(folder, name),
          ),
        );
      for (const [name, , why] of bad) {
        const line = page.getByRole('alert').locator('p', { hasText: name });
        await line.waitFor();
        expect(await line.textContent(), name).toMatch(why);
      }
      await expect.poll(() => strip(page).count()).toBe(2);
      expect(await seriousFaults(page)).toEqual([]);
      await page.reload();
      await expect.poll(() => strip(page).count()).toBe(2);
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  });

  it('one is opened large, given words, taken out and brought back, and goes to another device in the boat file', async () => {
    const page = await opened(size);
    await choose(page, jpeg('before.jpg', await picture(page, 1000, 700)));
    await strip(page).first().click();
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByRole('img').waitFor();
    await sheet.getByText('before', { exact: true }).click();
    await sheet.getByLabel('Words to it').fill('Rust under the edge');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    const named = page.getByRole('button', { name: /^Photograph, before, .*Rust under the edge/ });
    await named.click();
    await sheet.getByRole('button', { name: 'Take it out' }).click();
    await expect.poll(() => strip(page).count()).toBe(0);
    await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
    await named.waitFor();
    // the fitting shows what was photographed on the jobs done to it, and takes photographs of its own
    await page.goto(`${page.url().split('#')[0]}#/boat/zone/side-deck`);
    await page.getByRole('button', { name: 'Change the fitting: Starboard shroud plate' }).click();
    const fitting = page.getByRole('dialog', { name: /^Change the fitting/ });
    await fitting.getByRole('button', { name: /Rust under the edge/ }).click();
    const large = page.getByRole('dialog', { name: 'Photograph' });
    await large.getByRole('img').waitFor();
    await large.getByLabel('Words to it').fill('Rust under the edge, aft');
    await large.getByRole('button', { name: 'Keep' }).click();
    await large.waitFor({ state: 'hidden' });
    await fitting.getByRole('button', { name: /Rust under the edge, aft/ }).waitFor();
    await fitting
      .getByLabel('Photographs on this device')
      .setInputFiles(jpeg('plate.jpg', await picture(page, 500, 400)));
    await expect.poll(() => fitting.getByRole('button', { name: /^Photograph, / }).count()).toBe(2);
    await fitting.getByRole('button', { name: 'Close' }).click();
    const file = await page.evaluate(async () => [...(await globalThis.fettleBook!.boatFile())]);
    const { bytes } = await kept(page);
    const context = await browser.newContext({ viewport: size });
    contexts.push(context);
    const other = await context.newPage();
    other.setDefaultTimeout(20_000);
    await other.goto(`${page.url().split('#')[0]}#/boat`);
    await other
      .locator('input[type="file"]')
      .setInputFiles({ name: 'b.fettle', mimeType: 'application/zip', buffer: Buffer.from(file) });
    await other.getByRole('heading', { level: 1, name: 'Dabchick' }).waitFor();
    await other.goto(`${page.url().split('#')[0]}#/work/job/plate`);
    await other.getByRole('button', { name: /Rust under the edge/ }).waitFor();
    expect((await kept(other)).bytes).toEqual(bytes);
  });
});

/** A PNG that states 30,000 × 40,000 pixels in some forty bytes. */
function widePng(): Uint8Array {
  const png = new Uint8Array(45);
  png.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  new DataView(png.buffer).setUint32(16, 30_000);
  new DataView(png.buffer).setUint32(20, 40_000);
  png.set(Buffer.from('IEND'), 37);
  return png;
}

/** A JPEG with its tables overwritten: its head and its end stand. */
function damaged(good: Uint8Array): Uint8Array {
  const bytes = good.slice();
  const scan = bytes.findIndex((byte, i) => byte === 0xff && bytes[i + 1] === 0xda);
  const tables = bytes.findIndex((byte, i) => byte === 0xff && bytes[i + 1] === 0xc4);
  bytes.fill(0xff, tables + 4, Math.min(scan, tables + 40));
  return bytes;
}
