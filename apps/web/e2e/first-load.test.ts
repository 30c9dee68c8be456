/** What must come over the network before the first place is usable. Budget: 200 kB of script, gzipped. */
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

const budget_kB = 200;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

describe('the first load', () => {
  it(`is at most ${budget_kB} kB of gzipped script, Workers included, until the first job can be tapped`, async () => {
    const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
    const page = await context.newPage();
    const scripts = new Set<string>();
    context.on('request', (request) => {
      if (/\.m?js(\?|$)/.test(request.url())) scripts.add(request.url());
    });
    await page.goto(inject('address'));
    await page.locator('.work-group a.line-row').first().waitFor({ timeout: 30_000 });
    const loaded = [...scripts];
    await context.close();
    const sizes = await Promise.all(
      loaded.map(async (url) => gzipSync(Buffer.from(await (await fetch(url)).arrayBuffer())).byteLength),
    );
    const sum_kB = sizes.reduce((sum, size) => sum + size, 0) / 1000;
    console.log(`first load: ${sum_kB.toFixed(1)} kB gz in ${loaded.length} scripts`);
    // the app with its first place, and the Worker with the book: fewer would mean they were not counted
    expect(loaded.some((url) => /index-/.test(url))).toBe(true);
    expect(loaded.some((url) => /book-worker-/.test(url))).toBe(true);
    expect(sum_kB).toBeLessThanOrEqual(budget_kB);
  });
});
