/** What the device keeps: two tabs at once, thousands of quick edits, and a close at any moment. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, launchKeptBrowser, phone } from './browser.ts';

async function openedAt(page: Page, address: string): Promise<Page> {
  await page.goto(address);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
  await page.getByText('saved on this device').waitFor({ timeout: 30_000 });
  return page;
}

/** Writes `count` notes in the log as fast as they can be asked for; `awaited`: until all are answered. */
const writeNotes = (page: Page, name: string, count: number, awaited: boolean) =>
  page.evaluate(
    async ([name, count, awaited]) => {
      const asked = Array.from({ length: count }, (_, i) =>
        globalThis.fettleBook!.run('writeLog', { kind: 'note', text: `${name} ${i}` }),
      );
      if (awaited) await Promise.all(asked);
    },
    [name, count, awaited] as const,
  );

/** How many notes of that name the open book shows. */
const notes = (page: Page, name: string) =>
  page.evaluate((name) => {
    const { book } = globalThis.fettleBook!.snapshot();
    return Object.values(book?.log ?? {}).filter((entry) => entry.text.startsWith(`${name} `)).length;
  }, name);

describe('two tabs open at once', () => {
  it('lose nothing and come to show the same book', async () => {
    const address = inject('address');
    const browser = await launchBrowser();
    try {
      const context = await browser.newContext({ viewport: phone });
      const one = await openedAt(await context.newPage(), address);
      const two = await openedAt(await context.newPage(), address);
      await Promise.all([writeNotes(one, 'one', 200, true), writeNotes(two, 'two', 200, true)]);
      for (const page of [one, two]) {
        await expect.poll(() => notes(page, 'one'), { timeout: 20_000 }).toBe(200);
        await expect.poll(() => notes(page, 'two'), { timeout: 20_000 }).toBe(200);
        await page.getByText('saved on this device').waitFor();
      }
      const book = (page: Page) => page.evaluate(() => JSON.stringify(globalThis.fettleBook!.snapshot().book));
      expect(await book(two)).toBe(await book(one));
      // what one tab does, the other shows without being asked
      await one.evaluate(() =>
        globalThis.fettleBook!.run('addJob', { title: 'Seen from the other tab', consequence: 'comfort' }),
      );
      await two.getByText('Seen from the other tab').first().waitFor({ timeout: 10_000 });
      const third = await openedAt(await context.newPage(), address);
      expect((await notes(third, 'one')) + (await notes(third, 'two'))).toBe(400);
    } finally {
      await browser.close();
    }
  });
});

describe('5,000 rapid edits and an immediate close', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'fettle-store-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('lose nothing that showed as saved', async () => {
    const address = inject('address');
    const first = await launchKeptBrowser(folder);
    const page = await openedAt(first.pages()[0] ?? (await first.newPage()), address);
    await writeNotes(page, 'all', 5_000, false);
    // nothing shows as saved while thousands wait
    expect(await page.evaluate(() => globalThis.fettleBook!.snapshot().state)).not.toBe('saved');
    await page.waitForFunction(() => document.querySelector('[data-state="saved"]') !== null, null, {
      timeout: 120_000,
    });
    // closed in the moment it shows
    await first.close();
    const second = await launchKeptBrowser(folder);
    const again = await openedAt(second.pages()[0] ?? (await second.newPage()), address);
    expect(await notes(again, 'all')).toBe(5_000);
    await second.close();
  });

  it('and closed in the midst of them, keep all that had shown as saved, with nothing damaged', async () => {
    const address = inject('address');
    let sawAny = 0;
    for (const [round, wait_ms] of [40, 350, 900].entries()) {
      const name = `round${round}`;
      const browser = await launchKeptBrowser(folder);
      const page = await openedAt(browser.pages()[0] ?? (await browser.newPage()), address);
      let saved = 0;
      await page.exposeFunction('sawSaved', (count: number) => {
        saved = Math.max(saved, count);
      });
      await page.evaluate(
        async ([name, wait_ms]) => {
          const client = globalThis.fettleBook!;
          let made = 0;
          const tell = (globalThis as unknown as { sawSaved: (count: number) => void }).sawSaved;
          client.subscribe(() => {
            const { state, book } = client.snapshot();
            if (state !== 'saved') return;
            tell(Object.values(book?.log ?? {}).filter((entry) => entry.text.startsWith(`${name} `)).length);
          });
          const burst = () => {
            for (let i = 0; i < 100; i++) void client.run('writeLog', { kind: 'note', text: `${name} ${made++}` });
          };
          const end = performance.now() + wait_ms;
          do {
            burst();
            await new Promise((done) => setTimeout(done, 15));
            burst();
            // now and then it comes to rest
            while (client.snapshot().state !== 'saved') await new Promise((done) => setTimeout(done, 5));
            await new Promise((done) => setTimeout(done, 20));
          } while (performance.now() < end);
          // and the page is closed with these just asked for
          burst();
        },
        [name, wait_ms] as const,
      );
      await browser.close();
      const after = await launchKeptBrowser(folder);
      const again = await openedAt(after.pages()[0] ?? (await after.newPage()), address);
      expect(await notes(again, name)).toBeGreaterThanOrEqual(saved);
      sawAny += saved;
      expect(await again.evaluate(() => globalThis.fettleBook!.snapshot().troubles)).toEqual([]);
      await after.close();
    }
    // the rounds are long enough that some of it did show as saved: otherwise nothing was tried
    expect(sawAny).toBeGreaterThan(0);
  });
});

describe('a row damaged on the device', () => {
  it('is set aside and told, and the book opens with all the rest', async () => {
    const address = inject('address');
    const browser = await launchBrowser();
    try {
      const context = await browser.newContext({ viewport: phone });
      const page = await openedAt(await context.newPage(), address);
      for (const title of ['First job', 'Second job', 'Third job']) {
        await page.evaluate(async (title) => {
          await globalThis.fettleBook!.run('addJob', { title, consequence: 'comfort' });
          await globalThis.fettleBook!.flush();
        }, title);
      }
      await page.evaluate(
        () =>
          new Promise<void>((done, failed) => {
            const opening = indexedDB.open('fettle');
            opening.onerror = () => failed(opening.error);
            opening.onsuccess = () => {
              const tx = opening.result.transaction('rows', 'readwrite');
              const rows = tx.objectStore('rows');
              const keys = rows.getAllKeys();
              keys.onsuccess = () => {
                // the row of the second job: the last but one
                const key = keys.result.at(-2)!;
                const row = rows.get(key);
                row.onsuccess = () => {
                  const work = row.result.work.slice();
                  work[9] ^= 0xff;
                  rows.put({ ...row.result, work }, key);
                };
              };
              tx.oncomplete = () => {
                opening.result.close();
                done();
              };
            };
          }),
      );
      await page.reload();
      await page.getByText('One stored change was damaged and is set aside').waitFor({ timeout: 30_000 });
      const titles = await page.evaluate(() =>
        Object.values(globalThis.fettleBook!.snapshot().book!.jobs).map((job) => job.title),
      );
      expect(titles).toEqual(expect.arrayContaining(['First job', 'Third job']));
      expect(titles).not.toContain('Second job');
    } finally {
      await browser.close();
    }
  });
});
