/** A new version is offered and waits; it never takes over while something is being typed. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

let browser: Browser;
let server: PreviewServer;
let folder: string;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'fettle-version-'));
  cpSync('apps/web/dist', join(folder, 'dist'), { recursive: true });
  server = await preview({
    root: folder,
    configFile: false,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 4670, strictPort: false },
  });
});
afterAll(async () => {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a new version', () => {
  it('is offered, leaves what is being typed alone, and is there once it is taken', async () => {
    const address = server.resolvedUrls?.local[0];
    if (!address) throw new Error('the served copy has no address');
    const context = await browser.newContext({ viewport: phone });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(address);
    await page.locator('main h1').first().waitFor({ timeout: 30_000 });
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.goto(`${address}#/work/put-in`);
    const line = page.getByRole('textbox', { name: /one line/ });
    await line.fill('rudder stock knocks');

    // the next version differs in its page and so in what its worker keeps
    const shown = join(folder, 'dist/index.html');
    writeFileSync(shown, readFileSync(shown, 'utf8').replace('<title>Fettle</title>', '<title>Fettle, newer</title>'));
    const worker = join(folder, 'dist/sw.js');
    const before = readFileSync(worker, 'utf8');
    const after = before.replace(/("?url"?:\s*"index\.html",\s*"?revision"?:\s*")[^"]*/, '$1newer');
    expect(after).not.toBe(before);
    writeFileSync(worker, after);
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });

    await page.getByText('A new version of Fettle is ready').waitFor();
    await expect.poll(() => line.inputValue()).toBe('rudder stock knocks');
    expect(await page.title()).toBe('Fettle');
    // a reload does not force it either
    await page.reload();
    await page.getByText('A new version of Fettle is ready').waitFor();
    expect(await page.title()).toBe('Fettle');

    await page.getByRole('button', { name: 'Take it now' }).click();
    await page.waitForFunction(() => document.title === 'Fettle, newer');
    await page.locator('main h1').first().waitFor();
    await expect.poll(() => page.getByText('A new version of Fettle is ready').count()).toBe(0);
    await context.close();
  });
});
