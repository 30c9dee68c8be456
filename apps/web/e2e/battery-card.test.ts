/** The card of the demo battery is opened and printed: one page on A4 and on Letter, black on white, nothing under 9 pt. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
import { pagesOf, seriousFaults } from './page-checks.ts';

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
  ['red', phone],
] as const)('%s', (theme, size) => {
  it(`prints the card at ${size.width} px`, async () => {
    const context = await browser.newContext({ viewport: size, reducedMotion: 'reduce' });
    await context.addInitScript((name) => localStorage.setItem('fettle-theme', name), theme);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /House battery/ }).click();
    await page.getByRole('link', { name: 'The card to print' }).click();
    await page.getByRole('button', { name: 'Print the card' }).waitFor();
    await page.getByText(/^Read before sunrise, panel dark\. Not while charging/).waitFor();

    // volts by temperature, all off and with what is on at anchor
    await expect
      .poll(() => page.locator('.card table caption').allTextContents())
      .toEqual(['All off', expect.stringMatching(/^With Anchor light .* on, 0\.2\d A$/)]);
    await expect
      .poll(() => page.locator('.card table').first().locator('thead th').allTextContents())
      .toEqual(['volts', '0 °C', '10 °C', '20 °C', '30 °C']);
    await expect.poll(() => page.getByRole('row', { name: /^12\.50 / }).count()).toBe(2);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    for (const format of ['A4', 'Letter'] as const) expect(pagesOf(await page.pdf({ format }))).toBe(1);
    await page.emulateMedia({ media: 'print' });
    const { least_pt, inks, ground } = await printed(page);
    expect(least_pt).toBeGreaterThanOrEqual(9);
    expect(inks).toEqual(['rgb(0, 0, 0)']);
    expect(ground).toBe('rgba(0, 0, 0, 0)');
    await context.close();
  });
});

/** The smallest type of the card, the colours of its text, and its ground, as they stand. */
async function printed(page: Page) {
  return page.locator('.card').evaluate((card) => {
    const sizes: number[] = [];
    const inks = new Set<string>();
    for (const element of card.querySelectorAll('*')) {
      if (![...element.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim())) continue;
      const { fontSize, color } = getComputedStyle(element);
      sizes.push(Number.parseFloat(fontSize) * 0.75);
      inks.add(color);
    }
    return { least_pt: Math.min(...sizes), inks: [...inks], ground: getComputedStyle(card).backgroundColor };
  });
}
