/**
 * A cleat on two bolts does not hold; four with large washers and a pad do. The job is made, what fastens it stands on the to-get
 * list, and the holes and the filling for a cored deck are there to read.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { askCleat } from './ask-cleat.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

describe.each([
  ['paper', phone],
  ['dark', laptop],
] as const)('%s', (theme, size) => {
  it(`fastens a cleat that holds at ${size.width} px`, async () => {
    const context = await browser.newContext({ viewport: size, reducedMotion: 'reduce' });
    await context.addInitScript((name) => localStorage.setItem('fettle-theme', name), theme);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /^Fastenings/ }).click();

    // nothing is filled in for the keeper: what is missing is named
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByText('Not worked out yet: see the marked fields.').waitFor();
    await page.getByText('Choose what it holds in.').waitFor();

    await askCleat(page);
    await page.getByText(/^2 M6 bolts do not hold it/).waitFor();
    await page.getByText('What gives first: the washer comes through the laminate.').waitFor();
    await expect.poll(() => page.getByRole('row', { name: /^large washers 184 % does not hold$/ }).count()).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    // rows too near each other are refused where they stand
    await page.getByRole('textbox', { name: /^Front row to back row/ }).fill('20');
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByText(/rows 20 mm apart stand too close .* right would be: 24 mm or more/).waitFor();

    await page.getByRole('textbox', { name: /^Front row to back row/ }).fill('80');
    await page.getByRole('combobox', { name: /^How many/ }).selectOption('4');
    await page.getByText('large, three times the bolt').click();
    await page.getByRole('textbox', { name: /^Stiff pad/ }).fill('12');
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByText(/^4 M6 bolts hold it/).waitFor();
    await page.locator('.fastened-answer summary').click();
    await page.getByText(/ISO 12215-5.*recalled/).waitFor();
    await page.getByRole('button', { name: 'Make the job, with what is to get' }).click();
    await page.getByRole('link', { name: 'See the job' }).click();
    await page.getByRole('heading', { name: 'Fasten Bow cleat' }).waitFor();
    await page.goto(`${inject('address')}#/stores`);
    await page
      .getByText(/^M6 bolts with nuts and large washers, A4-70/)
      .first()
      .waitFor();

    await page.goto(`${inject('address')}#/boat/loads/fastenings`);
    // ISO 273 medium and ISO 2306: M8 goes through 9 mm, its thread is cut in 6.8 mm
    const m8 = page.getByRole('row', { name: /^M8/ });
    await expect
      .poll(() => m8.getByRole('cell').allTextContents())
      .toEqual(['9', '6.8', '6.9', '24* recalled', '15.2* recalled']);
    await m8.getByRole('button').click();
    await page
      .getByText(/Rp = ISO 3506-1, recalled = 450/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Close' }).click();

    await page.getByRole('textbox', { name: /^Upper skin/ }).fill('3');
    await page.getByRole('textbox', { name: /^Core/ }).fill('12');
    await page.getByRole('textbox', { name: /^Holes/ }).fill('4');
    await page.getByRole('button', { name: 'Say how it is drilled' }).click();
    await page.getByText(/Drill all 4 16 mm through the upper skin/).waitFor();
    await context.close();
  });
});
