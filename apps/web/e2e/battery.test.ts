/** The battery of the demo boat: how full and why, a reading put in, one taken out and brought back, a new battery. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';

let browser: Browser;
let context: BrowserContext | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterEach(async () => {
  await context?.close();
});
afterAll(async () => {
  await browser.close();
});

async function opened(size: typeof phone | typeof laptop): Promise<Page> {
  context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(`${inject('address')}#/boat`);
  await page.getByRole('link', { name: /House battery/ }).click();
  await page.getByRole('heading', { level: 1, name: 'House battery' }).waitFor();
  await page.locator('.battery-full').waitFor();
  return page;
}

describe.each([
  ['on a phone', phone],
  ['on a laptop', laptop],
] as const)('%s', (_, size) => {
  it('says how full the battery is and why, draws the nights, and names a reading that does not go with the rest', async () => {
    const page = await opened(size);
    await page.getByText(/Lasts the night in/).waitFor();
    await page.getByRole('img', { name: /Charge over the nights ahead/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

    const sheet = page.getByRole('dialog');
    await page.getByRole('button', { name: 'How all this is worked out' }).click();
    await sheet
      .getByText(/our assumption/)
      .first()
      .waitFor();
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'detached' });

    await page.getByRole('button', { name: 'Read the volts' }).click();
    // a slip of the finger is refused where it was made, with what would be right
    await sheet.getByRole('textbox', { name: /^Volts/ }).fill('1.21');
    await sheet.getByText('rested', { exact: true }).click();
    await sheet.getByRole('button', { name: 'Keep it' }).click();
    await sheet.getByText(/from 8 to 16.5 V/).waitFor();
    await sheet.getByRole('textbox', { name: /^Volts/ }).fill('12.11');
    await sheet.getByRole('button', { name: 'Keep it' }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.getByText('12.11 V', { exact: true }).waitFor();
    // with nothing said to draw since it read full, so low a reading does not go with the rest: it is named, with why
    await page.getByText(/The last reading, 12.11 V, does not go with the rest/).waitFor();
    await page.getByText(/Left out: 12.11 V/).waitFor();

    await page.getByRole('button', { name: /^Take out the reading of 12.11 V/ }).click();
    await page.getByText('12.11 V', { exact: true }).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Undo:/ }).click();
    await page.getByText('12.11 V', { exact: true }).waitFor();
  });

  it('a battery is added; what is missing is asked for', async () => {
    const page = await opened(size);
    await page.getByRole('link', { name: /Boat$/ }).first().click();
    await page.getByRole('button', { name: 'Add a battery' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('textbox', { name: 'Name' }).fill('Engine battery');
    await sheet.getByRole('button', { name: 'Put it in' }).click();
    await sheet.getByText('Choose its kind: the label says it.').waitFor();
    await sheet.getByRole('combobox', { name: /Kind/ }).selectOption('flooded');
    await sheet.getByRole('textbox', { name: /Size on the label/ }).fill('45');
    await sheet.getByRole('button', { name: 'Put it in' }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.getByRole('link', { name: /Engine battery/ }).click();
    await page.getByText(/Read the volts before/).waitFor();
  });
});
