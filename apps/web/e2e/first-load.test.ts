/** What must come over the network before the first place is usable. Budget: 200 kB of script, gzipped. */
import { gzipSync } from 'node:zlib';
import type { Browser, Request } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

const budget_kB = 200;

declare global {
  /** when the first row of work stood on the page; ms since 1970 */
  var firstRow: number | undefined;
}

/** In the page, from before its own scripts: notes when the first row is there. */
function noteFirstRow(): void {
  const watch = new MutationObserver(() => {
    if (document.querySelector('.work-group a.line-row') === null) return;
    globalThis.firstRow = performance.timeOrigin + performance.now();
    watch.disconnect();
  });
  watch.observe(document, { subtree: true, childList: true });
}

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
    const scripts: Request[] = [];
    context.on('request', (request) => {
      if (/\.m?js(\?|$)/.test(request.url())) scripts.push(request);
    });
    await page.addInitScript(noteFirstRow);
    await page.goto(inject('address'));
    // told by the page itself: to hear of it takes a busy machine so long that what loads ahead has begun
    const first = await page.waitForFunction(() => globalThis.firstRow, null, { timeout: 30_000 });
    const there = (await first.jsonValue())!;
    const asked = [...scripts];
    // when it was asked for is told with the response
    await Promise.all(asked.map((request) => request.response()));
    const before = asked.filter((request) => request.timing().startTime <= there);
    const loaded = [...new Set(before.map((request) => request.url()))];
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
