/** Last night's load test is entered, a slip refused where it was made, and its result read at once. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
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
  ['on a phone', phone],
  ['on a laptop', laptop],
] as const)('%s', (_, size) => {
  it('a load test is entered and says what the battery is worth', async () => {
    const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /House battery/ }).click();
    await page.locator('.battery-full').waitFor();
    // two tests stand in the book of the demo boat
    await page.getByRole('img', { name: /^What it held at 2 load tests/ }).waitFor();

    const sheet = page.getByRole('dialog');
    await page.getByRole('button', { name: 'Enter a load test' }).click();
    await sheet.getByText(/Stop when it shows 1\d\.\d\d V: its floor of 50 %/).waitFor();
    await sheet.getByText(/hydrogen/).waitFor();
    const keep = sheet.getByRole('button', { name: /^Keep it/ });
    await keep.click();
    await sheet.getByText('Choose what drew.').waitFor();

    await sheet.getByRole('combobox', { name: /What drew/ }).selectOption('watts');
    await sheet.getByRole('textbox', { name: /Its watts/ }).fill('20');
    await sheet
      .getByLabel('Switched on, on the')
      .fill(new Date(Date.now() - 2 * 86_400_000).toISOString().slice(0, 10));
    await sheet.getByLabel('Switched on at').fill('19:30');
    await sheet.getByRole('textbox', { name: /Volts just before/ }).fill('12.8');
    await sheet.getByRole('checkbox', { name: /rested then/ }).check();
    // the times are there already, an hour apart
    await expect.poll(() => sheet.getByLabel('3. read at').inputValue()).toBe('22:30');
    await sheet.getByRole('button', { name: 'Add a line' }).click();
    await expect.poll(() => sheet.getByLabel('4. read at').inputValue()).toBe('23:30');
    for (const [n, volts] of ['1.26', '12.45', '12.3', '12.15'].entries())
      await sheet.getByRole('textbox', { name: new RegExp(`^${n + 1}\\. volts`) }).fill(volts);
    await keep.click();
    await sheet.getByText(/1.26 is out of range. Give a figure from 8 to 16.5 V/).waitFor();
    // nothing of what was typed is lost
    await expect.poll(() => sheet.getByRole('textbox', { name: /^4\. volts/ }).inputValue()).toBe('12.15');
    await sheet.getByRole('textbox', { name: /^1\. volts/ }).fill('12.58');
    expect(await seriousFaults(page)).toEqual([]);
    await keep.click();

    await sheet.getByText(/^From full it holds about \d+ Ah \(\d+ to \d+\): \d+ % of the 17 on its label/).waitFor();
    await sheet.getByText(/^It gave 6\.\d Ah in 4\.0 h, at about 1\.6\d A\.$/).waitFor();
    await sheet.getByText(/% was left \(\d+ to \d+\)/).waitFor();
    await sheet.getByText(/resistance under load is about \d+ mΩ \(\d+ to \d+\)/).waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'detached' });

    await page.getByRole('img', { name: /^What it held at 3 load tests/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    // one undo takes the test and its readings back
    await page.getByText('12.15 V', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Undo: Enter a load test' }).click();
    await page.getByText('12.15 V', { exact: true }).waitFor({ state: 'detached' });
    await page.getByRole('img', { name: /^What it held at 2 load tests/ }).waitFor();
    await context.close();
  });
});
