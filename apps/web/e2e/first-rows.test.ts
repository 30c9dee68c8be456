/** The list of work is there before the book is, and what is done on it meanwhile is kept. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

const rows = '.work-group a.line-row';

/** A page whose Worker with the book does not come before it is let. */
async function withoutBook(context: BrowserContext): Promise<{ page: Page; letBook: () => void }> {
  let letBook = () => {};
  const held = new Promise<void>((go) => {
    letBook = go;
  });
  await context.route(/book-worker-.*\.js/, async (route) => {
    await held;
    await route.continue();
  });
  return { page: await context.newPage(), letBook };
}

async function keptContext(): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(inject('address'));
  await page.locator(rows).first().waitFor({ timeout: 30_000 });
  await page.getByText('saved on this device').waitFor();
  await page.evaluate(() =>
    globalThis.fettleBook!.run('addJob', { title: 'Oil the washboards', consequence: 'danger' }),
  );
  await page.evaluate(() => globalThis.fettleBook!.flush());
  await expect.poll(() => page.evaluate(keptText)).toContain('Oil the washboards');
  await page.close();
  return context;
}

/** What is kept of the list. */
const keptText = () =>
  new Promise<string>((found) => {
    const opening = indexedDB.open('fettle');
    opening.onsuccess = () => {
      const reading = opening.result.transaction('open').objectStore('open').get('work');
      reading.onsuccess = () => {
        opening.result.close();
        found(String(reading.result));
      };
    };
  });

describe('before the book is there', () => {
  it('the list stands, a job put in at once is kept, and a sheet asked for opens when it can', async () => {
    const context = await keptContext();
    const { page, letBook } = await withoutBook(context);
    await page.goto(inject('address'));
    await page.locator(rows).filter({ hasText: 'Oil the washboards' }).waitFor();
    expect(await page.evaluate(() => globalThis.fettleBook!.snapshot().book)).toBeNull();
    const before = await page.locator(rows).allTextContents();
    void page.evaluate(() => void globalThis.fettleBook!.run('addJob', { title: 'At once', consequence: 'danger' }));
    await page.getByRole('button', { name: 'Jury rig', exact: true }).click();
    letBook();
    await page.locator('dialog[aria-busy="false"]').waitFor();
    await page.keyboard.press('Escape');
    await page.locator(rows).filter({ hasText: 'At once' }).waitFor();
    // the book shows what the list showed, and the new job
    const after = await page.locator(rows).allTextContents();
    expect(after.filter((text) => !text.includes('At once'))).toEqual(before);
    await page.getByText('saved on this device').waitFor();
    await context.close();
  });

  it('a job of the list opens from the book as it last stood', async () => {
    const context = await keptContext();
    const { page, letBook } = await withoutBook(context);
    await page.goto(inject('address'));
    await page.locator(rows).filter({ hasText: 'Oil the washboards' }).click();
    await page.getByRole('heading', { level: 1, name: 'Oil the washboards' }).waitFor();
    await page.locator('[data-state="opening"]').waitFor();
    letBook();
    await page.getByText('saved on this device').waitFor();
    await page.getByRole('heading', { level: 1, name: 'Oil the washboards' }).waitFor();
    await context.close();
  });
});

it('a page that cannot be fetched leaves the rest of its place, and the list, to be used', async () => {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  await context.route(/job-page-.*\.js/, (route) => route.abort());
  const page = await context.newPage();
  await page.goto(inject('address'));
  await page.locator(rows).first().click();
  await page.getByRole('heading', { name: 'This place could not be shown' }).waitFor();
  await page.getByRole('link', { name: 'Work', exact: true }).click();
  await page.locator(rows).first().waitFor();
  await context.close();
});
