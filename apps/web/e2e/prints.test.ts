/**
 * Everything that is printed, as paper: A4 and Letter, short and long. One page up to 25 lines, numbered pages beyond,
 * no letter under 9 pt (a page too wide would be made smaller as a whole), nothing beyond the edge, no letters over
 * letters, black on white, and nothing of what is done on a screen.
 */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { localAt } from '#units';
import { laptop, launchBrowser } from './browser.ts';
import { fullBook } from './full-book.ts';
import { openBook } from './one-job-book.ts';
import { type PrintedPage, type PrintedText, printedPages } from './pdf-pages.ts';

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
  return pages.flatMap(({ width_pt, height_pt, texts: all }, at) => {
    // on a drawing a name has a white edge of the same letters behind it
    const edges = all.filter(({ light }) => light > 0.99);
    const texts = all.filter(({ light }) => light <= 0.99);
    const smallest = Math.min(...texts.map(({ size_pt }) => size_pt));
    const beyond = texts.filter(({ x, y }) => x < 14 || x > width_pt - 14 || y < 14 || y > height_pt - 14).length;
    const lightest = Math.max(...texts.map(({ light }) => light));
    const unseen = edges.filter((edge) => !texts.some((text) => atOnePlace(edge, text))).length;
    const over = texts.filter((text, n) => texts.slice(0, n).some((other) => atOnePlace(text, other))).length;
    // '2 of 3' at the foot, at the right
    const numbered = texts.some(({ x, y }) => x > 0.8 * width_pt && y < 40);
    return [
      ...(texts.length < 10 ? ['empty'] : []),
      ...(unseen > 0 ? [`${unseen} white on white`] : []),
      ...(over > 0 ? [`${over} letters over letters`] : []),
      ...(numbered ? [] : ['not numbered']),
      ...(smallest < 8.99 ? [`letters of ${smallest.toFixed(2)} pt`] : []),
      ...(beyond > 0 ? [`${beyond} letters less than 5 mm from the edge or beyond it`] : []),
      // a third of the way to white is still over 12 to 1
      ...(lightest > 0.34 ? [`grey letters, ${lightest.toFixed(2)} of the way to white`] : []),
    ].map((fault) => `page ${at + 1}: ${fault}`);
  });
}

/** Whether two runs of letters begin at the same place. */
const atOnePlace = (one: PrintedText, other: PrintedText) =>
  Math.abs(one.x - other.x) < 1.2 && Math.abs(one.y - other.y) < 1.2;

/** What can be pressed, slid or gone to, and would stand on paper. */
async function pressable(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const found = await page
    .locator('button:not(.prints), .button, nav, input[type="range"], .shell-head')
    .evaluateAll((all) => all.filter((each) => each.getClientRects().length > 0).map((each) => each.textContent ?? ''));
  await page.emulateMedia({ media: null });
  return found;
}

describe.each([
  [25, 1, 1],
  [26, 1, 2],
  [200, 4, 9],
] as const)('with %i lines', (lines, least, most) => {
  it(`the day sheet, the lists to carry down and to get, what falls due and the work are ${most === 1 ? 'one page each' : 'numbered pages'}`, async () => {
    const context = await browser.newContext(opened);
    const page = await openBook(context, fullBook(localAt(Date.now(), zone).day, lines));
    for (const [name, at, sheet, row] of [
      ['day-sheet', '#/days/sheet/day', '.days-print', '.days-print tbody tr'],
      ['to-get', '#/stores/list', '.to-get-print', '.to-get-print tbody tr'],
      ['carry', '#/days/carry/day', '.carry', '.carry-thing'],
      ['dues', '#/go/dues', '.dues', '.dues section .line'],
      ['work', '#/work', '.work-groups', '.work-groups .line'],
    ] as const) {
      await page.goto(`${inject('address')}${at}`);
      await page.locator(sheet).waitFor({ timeout: 60_000 });
      await expect.poll(() => page.locator(row).count(), { timeout: 60_000 }).toBeGreaterThanOrEqual(lines);
      const papers = await printed(page, `${name}-${lines}`);
      for (const format of formats) {
        expect(faultsOf(papers[format]), `${name} of ${lines} lines on ${format}`).toEqual([]);
        expect(papers[format].length, `${name} on ${format}`).toBeGreaterThanOrEqual(least);
        expect(papers[format].length, `${name} on ${format}`).toBeLessThanOrEqual(most);
      }
    }
    await context.close();
  });
});

describe.each([
  [
    'each sheet has its pages',
    [
      ['battery-card', '#/boat/battery/house/card', '.card tbody tr', 1],
      ['gauge-card', '#/boat/loads/gauge-card', '.gauge', 1],
      ['circuits', '#/boat/circuits', '.circuits-row', 1],
      ['lay-up', '#/go/season/lay-up', '.season li', 1],
      ['what-falls-due', '#/go/dues', '.dues section .line', 1],
      ['carry-down', '#/days/carry/day-1', '.carry-thing', 1],
      ['morning-list', '#/go/morning/outer-bar/launch/print', '.morning-print li', 1],
      ['fit-to-go', '#/go/sheet/outer-bar', '[data-looking="false"] .fit-print .picture-text', 2],
    ],
  ],
  [
    'any page by the browser’s own command is fit to be read',
    [
      ['picture', '#/boat/picture', '.picture-list .line', 1],
      ['trailer', '#/boat/trailer', '.trailer-things li', 1],
      ['work', '#/work', '.work-groups .line', 1],
      ['days', '#/days', '.days-column', 5],
      ['boat', '#/boat', '.picture-text', 2],
      ['stores', '#/stores', '.stores-get .line', 2],
      ['go', '#/go', '.go-finding', 2],
    ],
  ],
] as const)('of the demo boat', (said, prints) => {
  it(said, async () => {
    const context = await browser.newContext(opened);
    const page = await context.newPage();
    for (const [name, at, there, most] of prints) {
      await page.goto(`${inject('address')}${at}`);
      await page.locator(there).first().waitFor({ timeout: 60_000 });
      const papers = await printed(page, name);
      for (const format of formats) {
        expect(faultsOf(papers[format]), `${name} on ${format}`).toEqual([]);
        expect(papers[format].length, `${name} on ${format}`).toBeLessThanOrEqual(most);
      }
      expect(await pressable(page), name).toEqual([]);
    }
    await context.close();
  });
});

/** Each sheet: the page and the link that lead to it, what stands at its end, and what it says on paper where that is not there yet. */
const sheets = [
  ['#/boat/battery/house', '/house/card', 'Where the figures come from', 'Working out the card …'],
  ['#/stores', '#/stores/list', 'prices of', ''],
  ['#/go', '#/go/sheet/', 'Not looked at', ''],
  ['#/go/morning/outer-bar/launch', '/launch/print', 'the law, come first', ''],
  ['#/days', '#/days/sheet/', 'Carry down, in order of use', 'The plan is being made.'],
] as const;

describe.each(['its button', 'the browser’s own command'] as const)('by %s', (way) => {
  it('a sheet is printed whole straight after the tap that led to it, or says what is not on it yet', async () => {
    const context = await browser.newContext(opened);
    await context.addInitScript(() => {
      // as the HTML standard has a page printed: it is told, and taken as it then is
      window.print = () => {
        dispatchEvent(new Event('beforeprint'));
        document.documentElement.dataset.paper = document.querySelector('main')!.textContent;
        dispatchEvent(new Event('afterprint'));
      };
    });
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    const paper = page.locator('html[data-paper]');
    for (const [from, to, end, before] of sheets) {
      await page.goto('about:blank');
      await page.goto(inject('address') + from);
      const link = page.locator(`main a[href*="${to}"]`).first();
      await link.waitFor();
      const first = await link.evaluate(async (tapped: HTMLElement, byButton) => {
        tapped.click();
        // the first picture: it is not painted yet, and nothing that comes after it is there
        while (document.querySelector('.paper h1') === null)
          await new Promise<void>((changed) => {
            const changes = new MutationObserver(() => {
              changes.disconnect();
              changed();
            });
            changes.observe(document, { subtree: true, childList: true });
          });
        const drawn = document.querySelector('.paper')!.textContent;
        if (byButton) document.querySelector<HTMLButtonElement>('.paper-acts button')!.click();
        else print();
        return drawn;
      }, way === 'its button');
      expect(first, `${to} in its first picture`).not.toContain(end);
      await paper.waitFor({ state: 'attached', timeout: 60_000 });
      const printed = (await paper.getAttribute('data-paper')) ?? '';
      if (way === 'its button' || before === '' || !printed.includes(before)) expect(printed, to).toContain(end);
    }
    await context.close();
  });
});
