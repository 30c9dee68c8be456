/** A line offers its recipe; taken with the sizes measured, the job has its steps, waits and what is to be got. */
import { mkdirSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';

let browser: Browser;
let context: BrowserContext | undefined;
const pictures = new URL('./screenshots/', import.meta.url).pathname;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
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
  await page.goto(`${inject('address')}#/work/put-in`);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
  return page;
}

describe.each([
  ['phone', phone],
  ['laptop', laptop],
] as const)('on a %s', (name, size) => {
  it('a line takes its recipe, and goes in with steps, amounts and what is to be got', async () => {
    const page = await opened(size);
    await page.getByRole('textbox', { name: /one line/ }).fill('starboard shroud plate weeps, rebed it');
    await page.getByRole('button', { name: /Rebed a shroud plate/ }).waitFor();
    await page.screenshot({ path: `${pictures}recipe-offered-${name}.png`, fullPage: true });
    await page.getByRole('button', { name: /Rebed a shroud plate/ }).click();
    // what the line did not say is the recipe's, to be changed
    await expect.poll(() => page.getByRole('radio', { name: 'danger' }).isChecked()).toBe(true);
    await page.getByText('not measured yet: length of the plate').waitFor();

    await page.getByRole('textbox', { name: /Bolts through the deck/ }).fill('4');
    await page.getByRole('textbox', { name: /Length of the plate/ }).fill('80');
    await page.getByRole('textbox', { name: /Width of the plate/ }).fill('6000');
    await page.getByRole('button', { name: 'Put it in' }).click();
    // refused at its field, and nothing typed is lost
    await page
      .getByText(/6000.*15 to 200|15 to 200.*6000|more than 200/)
      .first()
      .waitFor();
    expect(page.url()).toContain('put-in');
    await page.getByRole('textbox', { name: /Width of the plate/ }).fill('60');
    // 80 × 60 × 2 mm and half as much again
    await page.getByText(/Polyurethane sealant, 14 ml: 1 tube of 290 ml\./).waitFor();
    await page.getByText(/In stores: Polyurethane sealant, paint box/).waitFor();
    await page.screenshot({ path: `${pictures}recipe-taken-${name}.png`, fullPage: true });
    await page.getByRole('button', { name: 'Put it in' }).click();

    await page.locator('.job h1').waitFor();
    await expect.poll(() => page.locator('.job-step').count()).toBe(6);
    await page.getByText('Plugs harden').first().waitFor();
    await page
      .getByText(/Bolts and nuts for the shroud plate, A4, not in stores/)
      .first()
      .waitFor();
    await page.screenshot({ path: `${pictures}recipe-job-${name}.png`, fullPage: true });
    await page.goto(`${inject('address')}#/stores`);
    await page.getByText('Bolts and nuts for the shroud plate, A4').first().waitFor();
  });
});
