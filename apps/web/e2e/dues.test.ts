/**
 * What falls due: the keeper writes down two sails and a tow in two taps each, the bearings' due moves earlier, becomes a job
 * of its recipe, is done, and moves on.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { PaperRecord } from '#boat-book';
import { addDays, localAt } from '#units';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, openBook } from './one-job-book.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const line = (page: Page, title: string) => page.locator('.dues li.line', { hasText: title });

async function used(page: Page, what: string): Promise<void> {
  await page.getByRole('button', { name: what, exact: true }).click();
  await page.getByRole('button', { name: 'Today', exact: true }).click();
  await page.getByRole('button', { name: 'Today', exact: true }).waitFor({ state: 'detached' });
}

describe.each([
  ['a phone', phone],
  ['a laptop', laptop],
] as const)('on %s', (_, viewport) => {
  it('uses bring a due forward, it becomes a job once, and done it moves on', async () => {
    const context = await browser.newContext({ viewport, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(`${inject('address')}#/go`);
    await page.getByRole('link', { name: /What falls due/ }).click();
    const bearings = line(page, 'Grease the wheel bearings');
    await bearings.waitFor();
    const before = await bearings.textContent();
    expect(before).toMatch(/Falls due in \d+ days/);

    await used(page, 'Sailed');
    await used(page, 'Sailed');
    await page.getByText('16 sails, 9 tows').waitFor();
    await used(page, 'Towed');
    await page.getByText('16 sails, 10 tows').waitFor();
    await bearings.getByText('Falls due today').waitFor();
    await bearings.getByText(/After 8 tows: 8 tows since/).waitFor();

    // one step back, and again
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await page.getByText('16 sails, 9 tows').waitFor();
    await bearings.getByText(/Falls due in \d+ days/).waitFor();
    await used(page, 'Towed');
    await bearings.getByText('Falls due today').waitFor();

    const tyres = line(page, 'Trailer tyres');
    await tyres.getByRole('link').click();
    await page.getByRole('button', { name: 'Make it a job' }).click();
    await page.getByRole('link', { name: 'Its job' }).click();
    await page.getByRole('heading', { level: 1, name: 'Trailer tyres' }).waitFor();
    await expect.poll(() => page.locator('.job-step').count()).toBeGreaterThan(1);

    // the list offers it no second time, nor one whose job stood in the book already
    await page.goto(`${inject('address')}#/go/dues`);
    await tyres.getByText('Its job stands under Work.').waitFor();
    await bearings.getByText('Its job stands under Work.').waitFor();
    await bearings.getByRole('link').click();
    await expect.poll(() => page.getByRole('button', { name: 'Make it a job' }).count()).toBe(0);
    await page.getByRole('link', { name: 'Its job' }).click();
    await page.getByRole('button', { name: 'Job done', exact: true }).click();
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByText('it held', { exact: true }).click();
    await sheet.getByLabel('How it was shown').selectOption('run');
    await sheet.getByLabel(/^What was found/).fill('hubs warm after 5 km');
    await sheet.getByRole('button', { name: 'The job is done' }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.goto(`${inject('address')}#/go/dues/due-bearings`);
    await page.getByText('by the job of it that was done', { exact: false }).waitFor();
    await page.getByText(/After 8 tows: 0 tows since/).waitFor();
    await page.reload();
    await page.getByText('by the job of it that was done', { exact: false }).waitFor();
    await context.close();
  });

  it('a paper that runs out stands among them with its renewal, which is put in once', async () => {
    const today = localAt(Date.now(), 'Pacific/Auckland').day;
    const insurance: PaperRecord = {
      title: 'Insurance',
      kind: 'insurance',
      blob: 'a'.repeat(64),
      bytes: 1200,
      type: 'application/pdf',
      file: 'insurance.pdf',
      added: `${today}T00:00:00Z`,
      expires: addDays(today, 12),
      fitting: null,
      job: null,
      note: '',
    };
    const context = await browser.newContext({ viewport, reducedMotion: 'reduce' });
    const page = await openBook(context, {
      ...bookOf(today, 'Bramble', { jobs: {}, steps: {} }),
      papers: { cover: insurance },
      dues: {},
    });
    page.setDefaultTimeout(20_000);
    await page.goto(`${inject('address')}#/go/dues`);
    const paper = line(page, 'Insurance');
    await paper.getByText(/Good until .*, in 12 days\./).waitFor();
    await paper.getByText('Renew it, and put the new paper in with its date').waitFor();
    // no job in a driveway renews it
    await expect.poll(() => page.getByRole('button', { name: /Make the job/ }).count()).toBe(0);
    await page.screenshot({ path: `screenshots/dues/paper-${viewport.width}.png`, fullPage: true });
    await paper.getByRole('link').click();
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByLabel(/^Good until/).fill(addDays(today, 400));
    await sheet.getByRole('button', { name: 'Keep', exact: true }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.goto(`${inject('address')}#/go/dues`);
    await paper.getByText(/Good until .*, in 13 months\./).waitFor();
    await page.getByRole('heading', { name: 'Later' }).waitFor();
    await context.close();
  });

  it('a season’s line is ticked, taken back, and made a job', async () => {
    const context = await browser.newContext({ viewport, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(`${inject('address')}#/go/season/lay-up`);
    const sails = page.getByRole('checkbox', { name: /^Sails washed/ });
    await sails.click();
    await page.getByText('1 of', { exact: false }).first().waitFor();
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await page.getByText('0 of', { exact: false }).first().waitFor();
    // with undo and redo in it, the head of the page still fits, and says whose boat it is
    await page.getByRole('button', { name: /^Redo/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect((await page.locator('.shell-boat').boundingBox())!.width).toBeGreaterThan(30);
    await page.getByRole('button', { name: /^Make it a job: Sails washed/ }).click();
    await page.getByRole('link', { name: 'Its job' }).click();
    await page.getByRole('heading', { level: 1, name: 'Wash and dry the sails' }).waitFor();
    await context.close();
  });
});
