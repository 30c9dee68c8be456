/** Readings from files: a table whose columns are mended, sentences, files that are refused; kept, drawn, carried. */
import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
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
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(`${inject('address')}#/boat`);
  await page.getByRole('link', { name: /House battery/ }).click();
  await page.getByRole('link', { name: 'Readings from a file' }).click();
  await page.getByRole('heading', { level: 1, name: 'Readings from files' }).waitFor();
  return page;
}

const choose = (page: Page, name: string, content: string | Uint8Array) =>
  page.getByLabel('File of readings').setInputFiles({
    name,
    mimeType: 'text/plain',
    buffer: Buffer.from(content as string),
  });

/** Two nights, one reading a minute, with a day between them in which nothing was read, and three bad rows. */
function twoNights(): string {
  const rows = ['When,Cabin,House,Load'];
  for (const night of [10, 11])
    for (let minute = 0; minute < 480; minute++) {
      const at = new Date(Date.UTC(2026, 4, night, 20, minute)).toISOString().slice(0, 16).replace('T', ' ');
      const volts = minute === 100 && night === 10 ? 'lost' : (12.6 - minute / 4000).toFixed(3);
      rows.push(`${at},${(22 - minute / 200).toFixed(1)},${volts},0.21`);
    }
  return [...rows, 'end of log', '2026-05-12 23:00,9.1,0.00,0.21'].join('\r\n');
}

const pick = (page: Page, group: string, name: string) =>
  page.getByRole('group', { name: group, exact: true }).getByText(name, { exact: true }).click();

/** The checksum of NMEA 0183: each letter with each by exclusive or. */
const sentence = (body: string) => {
  const sum = [...body].reduce((all, letter) => all ^ letter.charCodeAt(0), 0);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}`;
};

describe.each([
  ['on a phone', phone],
  ['on a laptop', laptop],
] as const)('%s', (_, size) => {
  it('a table with a wrong column is mended, read, kept, drawn; survives a reload and goes with the boat file', async () => {
    const page = await opened(size);
    await choose(page, 'nights.csv', twoNights());
    await page.getByRole('heading', { name: 'What stands in it' }).waitFor();
    const volts = page.getByRole('combobox', { name: /^Volts/ });
    // the wrong column is told by what stands in it, and the one that looks right is named
    await volts.selectOption({ label: 'Cabin: 22.0, 22.0 …' });
    await page
      .getByText(/‘Cabin’ runs from 20.5 to 22 V; volts here lie from 8 to 16.5 V.*‘House’ looks right/)
      .waitFor();
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByText('Not read yet: see the marked fields.').waitFor();
    // mended
    await volts.selectOption({ label: 'House: 12.600, 12.600 …' });
    await page.getByRole('combobox', { name: /^Current/ }).selectOption({ label: 'Load: 0.21, 0.21 …' });
    await page
      .getByRole('combobox', { name: /^Temperature at the battery/ })
      .selectOption({ label: 'Cabin: 22.0, 22.0 …' });
    await page.getByRole('combobox', { name: /^Zone/ }).selectOption('UTC');
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByText('Choose which way it flows.').waitFor();
    await pick(page, 'A current over nought flows', 'out of the battery');
    expect(await seriousFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByText('959 readings').waitFor();
    await page.getByText('3 rows were refused.').waitFor();
    await page.getByText(/Row 102: the volts ‘lost’ are no figure; right would be a figure such as 12.45/).waitFor();
    await page.getByText(/Row 962: it has one field, ‘end of log’/).waitFor();
    await page.getByText(/Row 963: the volts are 0; right would be from 8 to 16.5 V/).waitFor();
    await page.getByRole('button', { name: 'Keep these readings' }).click();
    await page.getByText('959 readings from nights.csv are in the book.').waitFor();

    // drawn, with the gap said; moved by keys and by buttons
    const drawing = page.getByRole('group', { name: /^volts in V over time/ });
    await drawing.locator('canvas').waitFor();
    await page.getByText(/One gap: 16 h from/).waitFor();
    const seen = () => page.locator('.readings-seen').textContent();
    const whole = await seen();
    await drawing.focus();
    await page.keyboard.press('+');
    await expect.poll(seen).not.toBe(whole);
    const near = await seen();
    await page.keyboard.press('ArrowRight');
    await expect.poll(seen).not.toBe(near);
    await page.getByRole('button', { name: 'All', exact: true }).click();
    await expect.poll(seen).toBe(whole);
    await page.getByText(/^Charge from .* at the end \d+ %/).waitFor();
    await page.getByRole('button', { name: 'How the charge is worked out' }).click();
    await page
      .getByRole('dialog')
      .getByText(/the current as it was measured/)
      .waitFor();
    await page.keyboard.press('Escape');
    await page.getByText('The same in figures').click();
    await page.getByRole('row', { name: /^11 May 2026 / }).waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

    await page.getByText('saved on this device').waitFor();
    await page.reload();
    await drawing.locator('canvas').waitFor();
    expect(await seen()).toBe(whole);

    // the same file again is refused, and nothing is lost by it
    await choose(page, 'nights.csv', twoNights());
    await page.getByRole('combobox', { name: /^Volts/ }).selectOption({ label: 'House: 12.600, 12.600 …' });
    await page.getByRole('combobox', { name: /^Current/ }).selectOption({ label: 'Load: 0.21, 0.21 …' });
    await page
      .getByRole('combobox', { name: /^Temperature at the battery/ })
      .selectOption({ label: 'Cabin: 22.0, 22.0 …' });
    await page.getByRole('combobox', { name: /^Zone/ }).selectOption('UTC');
    await pick(page, 'A current over nought flows', 'out of the battery');
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByRole('button', { name: 'Keep these readings' }).click();
    await page.getByText(/the same readings are in the book already, from ‘nights.csv’/).waitFor();
    await page.getByRole('button', { name: 'Leave it' }).click();

    // to another device with the boat file
    await page.goto(`${inject('address')}#/boat`);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the boat file' }).click();
    const file = await readFile(await (await saving).path());
    const other = await opened(size);
    await other.goto(`${inject('address')}#/boat`);
    await other
      .getByLabel('Boat file to open')
      .setInputFiles({ name: 'boat.fettle', mimeType: 'application/zip', buffer: file });
    await other.getByText('The file is open.').waitFor();
    await other.getByRole('link', { name: /House battery/ }).click();
    await other.getByRole('link', { name: 'Readings from a file' }).click();
    await other
      .getByRole('group', { name: /^volts in V over time/ })
      .locator('canvas')
      .waitFor();

    // taken out, and back
    await other.getByRole('button', { name: 'Take out the readings from nights.csv' }).click();
    await other.getByText('None yet.').waitFor();
    await other.getByRole('button', { name: /^Undo:/ }).click();
    await other
      .getByRole('group', { name: /^volts in V over time/ })
      .locator('canvas')
      .waitFor();
  });

  it('sentences of NMEA 0183 are read, a damaged one told', async () => {
    const page = await opened(size);
    const lines: string[] = [];
    for (let minute = 0; minute < 60; minute++) {
      const clock = `21${String(minute).padStart(2, '0')}00.00`;
      lines.push(sentence(`GPZDA,${clock},10,05,2026,00,00`));
      lines.push(sentence(`IIXDR,U,${(12.6 - minute / 1000).toFixed(3)},V,HOUSE,C,12.0,C,CABIN`));
      lines.push(sentence(`IIXDR,U,13.10,V,ENGINE`));
    }
    lines[7] = lines[7]!.replace('12.598', '12.698');
    await choose(page, 'night.log', lines.join('\r\n'));
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByText('Choose which one measures this battery.').waitFor();
    await page.getByRole('combobox', { name: /^Volts/ }).selectOption({ index: 1 });
    expect(await seriousFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Read the file' }).click();
    await page.getByText('59 readings').waitFor();
    await page.getByText(/Row 8: the checksum says .* the sentence adds up to/).waitFor();
    await page.getByRole('button', { name: 'Keep these readings' }).click();
    await page.getByText('59 readings from night.log are in the book.').waitFor();
    await page
      .getByRole('group', { name: /^volts in V over time/ })
      .locator('canvas')
      .waitFor();
  });

  it('files that hold no readings are refused by name, and nothing is lost', async () => {
    const page = await opened(size);
    const before = await page.evaluate(() => JSON.stringify(globalThis.fettleBook!.snapshot().book));
    for (const [name, content, why] of [
      ['empty.csv', '', /The file is empty: it has 0 bytes/],
      ['sheet.xlsx', Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0]), /a packed file \(zip\).*/],
      ['photo.jpg', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]), /a picture \(JPEG\)/],
      ['letter.txt', 'Dear keeper,\nit is raining.\n', /No columns can be told apart|no row of figures/],
      ['fixes.log', `${sentence('GPZDA,210000.00,10,05,2026,00,00')}\r\n`, /none measures volts/],
    ] as const) {
      await choose(page, name, content);
      await page.getByText(`${name} was not read; nothing in your book has changed.`).waitFor();
      await page.getByText(why).first().waitFor();
    }
    expect(await page.evaluate(() => JSON.stringify(globalThis.fettleBook!.snapshot().book))).toBe(before);
    expect(await seriousFaults(page)).toEqual([]);
  });
});
