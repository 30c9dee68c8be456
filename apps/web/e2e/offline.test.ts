/** After the first load the network is not needed: the app opens again and keeps what is changed. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchKeptBrowser } from './browser.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-offline-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('without a network', () => {
  it('it reloads, every place opens, an edit is kept, also across a restart of the browser', async () => {
    const address = inject('address');
    const first = await launchKeptBrowser(folder);
    const page = first.pages()[0] ?? (await first.newPage());
    await page.goto(address);
    await page.locator('main h1').first().waitFor({ timeout: 30_000 });
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await first.setOffline(true);
    await page.reload();
    await page.locator('main h1').first().waitFor({ timeout: 30_000 });
    for (const [place, heading] of [
      ['days', /./],
      ['boat', /./],
      ['stores', /Stores/],
      ['go', /Go/],
      ['work', /Work/],
    ] as const) {
      await page
        .getByRole('navigation', { name: 'Places' })
        .getByRole('link', { name: new RegExp(place, 'i') })
        .click();
      await page.locator('main h1').filter({ hasText: heading }).first().waitFor({ timeout: 15_000 });
    }
    await page.goto(`${address}#/work/put-in`);
    await page.getByRole('textbox', { name: /one line/ }).fill('washboard rattles, wedge it, 10 min, comfort');
    await page.getByRole('button', { name: 'Put it in' }).click();
    await page.getByRole('heading', { level: 1, name: /washboard/i }).waitFor();
    await page.getByText('saved on this device').waitFor();
    await first.close();

    const second = await launchKeptBrowser(folder);
    await second.setOffline(true);
    const again = second.pages()[0] ?? (await second.newPage());
    await again.goto(`${address}#/work`);
    await again
      .getByText(/washboard rattles/i)
      .first()
      .waitFor({ timeout: 30_000 });
    await expect.poll(() => again.getByText('saved on this device').count()).toBe(1);
    await second.close();
  });

  it('the app can be installed: a manifest with icons that are there', async () => {
    const address = inject('address');
    const manifest = (await (await fetch(`${address}manifest.webmanifest`)).json()) as {
      name: string;
      icons: { src: string; purpose?: string }[];
    };
    expect(manifest.name).toBe('Fettle');
    expect(manifest.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);
    for (const { src } of manifest.icons) {
      const answer = await fetch(new URL(src, address));
      expect(answer.status, src).toBe(200);
      expect(answer.headers.get('content-type'), src).toMatch(/^image\//);
    }
  });
});
