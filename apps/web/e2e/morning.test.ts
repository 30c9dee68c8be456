/**
 * The morning of an outing: put in with two taps, its launch list ticked with no network, a line that is not right made a job
 * with a jury rig, the browser shut and opened again, and the list done in the log. Then a list changed, and all in print.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, launchKeptBrowser } from './browser.ts';
import { pagesOf } from './page-checks.ts';

let browser: Browser;
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-morning-'));
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

const inHand = (page: Page, text: RegExp) => page.getByRole('heading', { level: 1, name: text });
const row = (page: Page, text: string) => page.locator('.morning-line', { hasText: text });

describe('on a phone, with no network', () => {
  it('a list is ticked, one line fails into a job and a jury rig, all of it outlives a restart and goes into the log', async () => {
    const first = await launchKeptBrowser(folder);
    const page = first.pages()[0] ?? (await first.newPage());
    page.setDefaultTimeout(30_000);
    await page.goto(`${inject('address')}#/go`);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await first.setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'A day sail' }).click();
    await page.locator('.go-choices .main').first().click();
    await page.getByRole('link', { name: /^Morning lists: A day sail/ }).click();
    await page.getByRole('link', { name: /^Launch/ }).click();

    await inHand(page, /^Lifejacket on/).waitFor();
    await page.getByRole('button', { name: 'Done', exact: true }).click();
    await inHand(page, /^Drain plugs in/).waitFor();
    await page.getByRole('button', { name: 'Not right' }).click();
    await page.getByLabel('Or it is mended for now, with').fill('A cork in the drain');
    await page.getByRole('button', { name: 'Make the job and a jury rig' }).click();
    await row(page, 'Drain plugs in')
      .getByText(/^Not right \d\d:\d\d$/)
      .waitFor();
    await inHand(page, /^Cocks, hatches and ports/).waitFor();
    await page.getByText('saved on this device').waitFor();
    await first.close();

    const second = await launchKeptBrowser(folder);
    await second.setOffline(true);
    const again = second.pages()[0] ?? (await second.newPage());
    again.setDefaultTimeout(30_000);
    await again.goto(`${inject('address')}#/go`);
    await again.getByRole('link', { name: /^Morning lists: A day sail/ }).click();
    await again.getByRole('link', { name: /^Launch/ }).click();
    await row(again, 'Lifejacket on')
      .getByText(/^Ticked \d\d:\d\d$/)
      .waitFor();
    // the jury rig made of it is on the list now, to be looked at before she floats
    await row(again, 'it holds: A cork in the drain').waitFor();
    await row(again, 'Drain plugs in')
      .getByRole('link', { name: /^Its job/ })
      .click();
    await again.getByRole('heading', { level: 1, name: 'Make the drain plugs good' }).waitFor();
    await again.goBack();
    await again.getByRole('button', { name: 'The list is done' }).click();
    await again.getByText('Gone through once for this outing').waitFor();
    await again.getByRole('link', { name: 'the log' }).click();
    await again
      .getByText(/Launch: A day sail.*Ticked: \d\d:\d\d Lifejacket on.*Not right: \d\d:\d\d Drain plugs in/)
      .first()
      .waitFor();
    await second.close();
  });
});

describe('on a laptop', () => {
  it('a list is changed but for what would hurt, and each is one printed page of black type, none under 9 pt', async () => {
    const context = await browser.newContext({ viewport: laptop, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    const at = `${inject('address')}#/go/morning/outer-bar`;
    await page.goto(`${at}/launch`);
    await page.getByRole('button', { name: 'Change the list' }).click();
    await page.getByRole('button', { name: /^Up: Wait, still on the winch/ }).click();
    await page.getByText('It shows only when she is in the water. That always holds.').waitFor();
    await page.getByRole('button', { name: /^Down: Jury rig looked at.*forehatch/ }).click();
    await page.getByLabel('Why it may be so here').fill('It is dry until she heels');
    await page.getByRole('button', { name: 'Move it all the same' }).click();
    await page.getByText(/Your reason: It is dry until she heels/).waitFor();
    await page.getByRole('button', { name: /^Take out: Car and trailer/ }).click();
    await page.getByRole('button', { name: /^Put back: Car and trailer/ }).waitFor();
    await page.getByLabel('A line of your own').fill('Wave to the harbour');
    await page.getByRole('button', { name: 'Put it in' }).click();
    await page.getByRole('button', { name: 'Up: Wave to the harbour' }).waitFor();
    await page.getByRole('button', { name: 'Other words: Wave to the harbour' }).click();
    await page.getByLabel('What the line says').fill('Wave to the quay');
    await page.getByRole('button', { name: 'Keep these words' }).click();
    await page.getByRole('button', { name: 'Other words: Rudder down and held down, helm tried' }).click();
    await page.getByLabel('What the line says').fill('Rudder down, pin in');
    await page.getByRole('button', { name: 'Keep these words' }).click();
    await page.getByRole('button', { name: 'Other words: Rudder down, pin in' }).click();
    await page.getByRole('button', { name: 'As it was' }).click();
    await page.getByRole('button', { name: 'Up: Rudder down and held down, helm tried' }).waitFor();
    await page.reload();
    await row(page, 'Wave to the quay').waitFor();
    await expect.poll(() => row(page, 'Car and trailer').count()).toBe(0);

    for (const list of ['pack', 'tow', 'rig', 'launch', 'recover']) {
      await page.goto(`${at}/${list}/print`);
      await page.locator('.morning-print li').nth(12).waitFor();
      for (const format of ['A4', 'Letter'] as const)
        expect(pagesOf(await page.pdf({ format, preferCSSPageSize: false })), `${list} on ${format}`).toBe(1);
    }
    await page.emulateMedia({ media: 'print' });
    const printed = await page.locator('.morning-print').evaluate((sheet) => {
      const text = [...sheet.querySelectorAll('*')].filter((element) =>
        [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()),
      );
      const styles = text.map((element) => getComputedStyle(element));
      return {
        least_pt: Math.min(...styles.map(({ fontSize }) => Number.parseFloat(fontSize) * 0.75)),
        inks: [...new Set(styles.map(({ color }) => color))],
      };
    });
    expect(printed.least_pt).toBeGreaterThanOrEqual(9);
    expect(printed.inks).toEqual(['rgb(0, 0, 0)']);
    await context.close();
  });
});
