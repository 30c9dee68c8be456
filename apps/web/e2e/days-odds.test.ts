/** The odds of the demo's plan: seen, their working opened, and lower once rain is likely. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { localAt } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { openBook } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/days';

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('the odds at %s px', (width, viewport) => {
  it('are told with their band, open to their working, and fall with a chance of rain', async () => {
    const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: zone });
    const page = await openBook(context, demoBook(localAt(Date.now(), zone).day));
    await page.goto(`${inject('address')}#/days`);
    const before = await first(page);
    await page.screenshot({ path: `${pictures}/odds-${width}.png`, fullPage: true });

    await page.getByRole('button', { name: /Odds of each day/ }).press('Enter');
    const sheet = page.getByRole('dialog');
    await sheet.getByText(/seed 1 gives the same runs again/).waitFor();
    await sheet.getByText(/Wet and dry hours come in spells: 0.9 from hour to hour, our assumption/).waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/odds-working-${width}.png` });
    await page.keyboard.press('Escape');

    for (const day of ['day-1', 'day-2', 'day-3']) {
      await page.goto(`${inject('address')}#/days/day/${day}/weather`);
      await page.getByText('By parts of the day', { exact: true }).click();
      for (const part of ['Morning', 'Midday', 'Afternoon']) {
        const fields = page.getByRole('group', { name: new RegExp(`^${part}`) }).first();
        await fields.getByText('Dry', { exact: true }).click();
        await fields.getByLabel(/^Chance of rain/).fill('90');
        await fields.getByLabel(/^Wind/).fill('8');
        await fields.getByLabel(/^Air/).fill('15');
        await fields.getByLabel(/^Humidity/).fill('65');
      }
      await page.getByRole('button', { name: 'Enter the weather' }).click();
      await page.getByRole('link', { name: 'See the plan' }).waitFor();
    }
    await page.screenshot({ path: `${pictures}/odds-weather-${width}.png`, fullPage: true });
    await page.goto(`${inject('address')}#/days/plan`);
    await page.locator('[data-plan-state="settled"]').waitFor({ timeout: 60_000 });
    expect(await first(page)).toBeLessThan(before);
    await context.close();
  }, 180_000);
});

/** The chance of 100 of one job that has a date and asks for a dry day. */
async function first(page: Page): Promise<number> {
  const line = page.getByText(/^‘Grease the trailer bearings’ done by .* tries/);
  await line.waitFor({ timeout: 90_000 });
  const words = (await line.textContent()) ?? '';
  const found = /in (?:over |under )?(\d+) of 100 tries/.exec(words);
  if (!found) throw new Error(`no chance in '${words}'`);
  return Number(found[1]);
}
