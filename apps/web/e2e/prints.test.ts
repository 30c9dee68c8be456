/**
 * Everything that is printed, as paper: A4 and Letter, short and long. One page up to 25 lines, numbered pages beyond,
 * no letter under 9 pt (a page too wide would be made smaller as a whole), nothing beyond the edge, black on white.
 */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { localAt } from '#units';
import { laptop, launchBrowser } from './browser.ts';
import { fullBook } from './full-book.ts';
import { openBook } from './one-job-book.ts';
import { type PrintedPage, printedPages } from './pdf-pages.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/prints';
const formats = ['A4', 'Letter'] as const;

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const opened = { viewport: laptop, locale: 'en-GB', timezoneId: zone } as const;

/** Prints the page as it stands. */
async function printed(page: Page, name: string): Promise<Readonly<Record<(typeof formats)[number], PrintedPage[]>>> {
  // a plan that is still being bettered is another paper a moment later
  await page.waitForFunction(() => !document.querySelector('[data-plan-state="planning"]'), null, { timeout: 120_000 });
  const on = async (format: (typeof formats)[number]) =>
    printedPages(await page.pdf({ format, path: `${pictures}/${name}-${format}.pdf` }));
  return { A4: await on('A4'), Letter: await on('Letter') };
}

/** What is wrong with printed pages, a line each. */
function faultsOf(pages: readonly PrintedPage[]): string[] {
  return pages.flatMap(({ width_pt, height_pt, texts }, at) => {
    const smallest = Math.min(...texts.map(({ size_pt }) => size_pt));
    const beyond = texts.filter(({ x, y }) => x < 14 || x > width_pt - 14 || y < 14 || y > height_pt - 14).length;
    const lightest = Math.max(...texts.map(({ light }) => light));
    return [
      ...(texts.length < 10 ? ['empty'] : []),
      ...(smallest < 8.99 ? [`letters of ${smallest.toFixed(2)} pt`] : []),
      ...(beyond > 0 ? [`${beyond} letters less than 5 mm from the edge or beyond it`] : []),
      // a third of the way to white is still over 12 to 1
      ...(lightest > 0.34 ? [`grey letters, ${lightest.toFixed(2)} of the way to white`] : []),
    ].map((fault) => `page ${at + 1}: ${fault}`);
  });
}

describe.each([
  [25, 1],
  [60, 2],
] as const)('with %i lines', (lines, pages) => {
  it(`the day sheet, the list to get and what falls due are ${pages === 1 ? 'one page each' : 'numbered pages'}`, async () => {
    const context = await browser.newContext(opened);
    const page = await openBook(context, fullBook(localAt(Date.now(), zone).day, lines));
    for (const [name, at, sheet, row] of [
      ['day-sheet', '#/days/sheet/day', '.days-print', '.days-print tbody tr'],
      ['to-get', '#/stores/list', '.to-get-print', '.to-get-print tbody tr'],
      ['dues', '#/go/dues', '.dues', '.dues section .line'],
    ] as const) {
      await page.goto(`${inject('address')}${at}`);
      await page.locator(sheet).waitFor({ timeout: 60_000 });
      await expect.poll(() => page.locator(row).count(), { timeout: 60_000 }).toBeGreaterThanOrEqual(lines);
      const papers = await printed(page, `${name}-${lines}`);
      for (const format of formats) {
        expect(faultsOf(papers[format]), `${name} of ${lines} lines on ${format}`).toEqual([]);
        if (pages === 1) expect(papers[format], `${name} on ${format}`).toHaveLength(1);
        else expect(papers[format].length, `${name} on ${format}`).toBeGreaterThanOrEqual(pages);
      }
    }
    await context.close();
  });
});

it('of the demo boat: the battery card, her circuits, lay-up, what falls due, what to carry down, a morning list, each on one page', async () => {
  const context = await browser.newContext(opened);
  const page = await context.newPage();
  for (const [name, at, sheet] of [
    ['battery-card', '#/boat/battery/house/card', '.card tbody tr'],
    ['circuits', '#/boat/circuits', '.circuits-row'],
    ['lay-up', '#/go/season/lay-up', '.season li'],
    ['what-falls-due', '#/go/dues', '.dues section .line'],
    ['carry-down', '#/days/carry/day-1', '.carry-thing'],
    ['morning-list', '#/go/morning/outer-bar/launch/print', '.morning-print li'],
  ] as const) {
    await page.goto(`${inject('address')}${at}`);
    await page.locator(sheet).first().waitFor({ timeout: 60_000 });
    const papers = await printed(page, name);
    for (const format of formats) {
      expect(faultsOf(papers[format]), `${name} on ${format}`).toEqual([]);
      expect(papers[format], `${name} on ${format}`).toHaveLength(1);
    }
  }
  await context.close();
});
