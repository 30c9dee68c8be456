/**
 * No word of the trade unexplained: on every screen of the demo boat, each word of the glossary that stands there is in the
 * list at its end, and is underlined wherever a tap of it means nothing else. What is in the glossary is read off its file,
 * and what is on the screen off the screen: a new word and a new screen are looked at without a line more here.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { glossary } from '../src/parts/terms/glossary.ts';
import { neverMarked, onlyOn } from '../src/parts/terms/term-marks.ts';
import { launchBrowser, phone } from './browser.ts';
import { goInApp } from './go-in-app.ts';
import { linesAstray, markedWords, placeOfWord } from './marked-word.ts';

/** Screens reached by an address of their own; the links on each of them lead to more. */
const places = ['work', 'days', 'boat', 'stores', 'go'];
/** so many screens of each place, so that the journey ends */
const mostOfPlace = 6;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  const context = await browser.newContext({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' });
  page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(`${inject('address')}#/work`);
  await page.locator('.terms-here').waitFor();
});
afterAll(async () => {
  await browser.close();
});

it.each(places)('every word of the glossary on the screens of %s is explained there', async (place) => {
  await goTo(place);
  // what stands below the heading leads there, and comes after it
  let others: readonly string[] = [];
  const leadsTo = async () => {
    others = await otherPages(place);
    return others.length;
  };
  await expect.poll(leadsTo, { timeout: 30_000 }).toBeGreaterThanOrEqual(mostOfPlace - 1);
  let explained = 0;
  for (const path of [place, ...others.slice(0, mostOfPlace - 1)]) {
    await goTo(path);
    // the page is looked through when it has come to rest, and what it reckons comes in later
    const unexplained = async () => {
      const told = await listed();
      return wordsIn(await textNow(), path).filter((word) => !told.includes(word.toLowerCase()));
    };
    // with the list open the page is not looked through: between two looks at it there is time for that
    await expect.poll(unexplained, { message: path, timeout: 30_000, interval: 2_500 }).toEqual([]);
    const markedTwice = async () => {
      const marked = (await markedWords(page)).map(bare);
      return marked.filter((word, i) => word === '' || marked.indexOf(word) < i);
    };
    await expect.poll(markedTwice, { message: path, timeout: 30_000 }).toEqual([]);
    await expect.poll(() => linesAstray(page), { message: path }).toEqual([]);
    explained += (await markedWords(page)).length;
  }
  expect(explained).toBeGreaterThan(0);
});

it('a drawing that comes in, or changes, is a change of the page like any other', async () => {
  const errors: string[] = [];
  const heard = (error: Error) => errors.push(error.message);
  page.on('pageerror', heard);
  await goTo('boat/loads/mast');
  await placeOfWord(page, 'gooseneck');
  await page.evaluate(() => {
    const drawing = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    drawing.setAttribute('height', '300');
    document.querySelector('main h1')!.before(drawing);
    setTimeout(() => drawing.append(document.createElementNS('http://www.w3.org/2000/svg', 'g')), 500);
  });
  await page.locator('main svg[height="300"] > g').waitFor({ state: 'attached' });
  await expect.poll(() => linesAstray(page)).toEqual([]);
  expect(errors).toEqual([]);
  page.off('pageerror', heard);
  await page.evaluate(() => document.querySelector('main svg[height="300"]')!.remove());
});

it('a tap of an underlined word says what it means, and the list at the end says it to keys', async () => {
  await goTo('boat/loads/mast');
  const { x, y } = await placeOfWord(page, 'gooseneck');
  await page.touchscreen.tap(x, y);
  const one = page.getByRole('dialog', { name: 'What is meant by gooseneck' });
  await one.getByText('The joint of boom and mast.').waitFor();
  await page.keyboard.press('Escape');
  await one.waitFor({ state: 'hidden' });

  // what opens above it moves the word, and its line with it
  await page.getByText('How it is worked out').first().click();
  await expect.poll(() => linesAstray(page)).toEqual([]);

  const list = page.getByRole('button', { name: /^Words on this page explained: \d+$/ });
  await list.focus();
  await page.keyboard.press('Enter');
  const all = page.getByRole('dialog', { name: 'Words on this page' });
  await all.getByText('The joint of boom and mast.').first().waitFor();
  await all.getByText(/^The whole glossary/).click();
  await all.getByText('a kind of job written down once', { exact: false }).first().waitFor();
  await page.keyboard.press('Escape');
  await all.waitFor({ state: 'hidden' });
});

const goTo = (path: string) => goInApp(page, `#/${path}`);

/** Where the links on a page lead, one page of a kind. */
async function otherPages(place: string): Promise<string[]> {
  const links = await page
    .locator('main a[href^="#/"]')
    .evaluateAll((all) => all.map((link) => link.getAttribute('href')!.slice(2)));
  const oneOfAKind = new Map(links.map((link) => [link.split('/').slice(0, 3).join('/'), link]));
  return [...oneOfAKind.values()].filter((link) => link !== place);
}

/** What is shown, without drawings and without the line that lists the words. */
const textNow = () =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
    const texts: string[] = [];
    while (walker.nextNode()) {
      const within = walker.currentNode.parentElement!;
      const leftOut = within.closest('svg, .unseen, textarea, select, .terms-here');
      if (!leftOut && within.checkVisibility()) texts.push(walker.currentNode.textContent ?? '');
    }
    return texts.join('\n');
  });

/** The words of the page's list, read out of the list itself. */
async function listed(): Promise<string[]> {
  const button = page.getByRole('button', { name: /^Words on this page/ });
  if ((await button.count()) === 0) return [];
  await button.click();
  const dialog = page.getByRole('dialog', { name: 'Words on this page' });
  await page.locator('dialog[aria-busy="false"]').waitFor();
  const words = await dialog.locator('.terms-told > dl dt').allTextContents();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  return words.flatMap((row) => row.toLowerCase().split(', '));
}

/** Words of the glossary in a text, found one by one and not as the app finds them; a word inside a longer one is that one's. */
function wordsIn(text: string, path: string): string[] {
  const words = [...new Set(glossary.flatMap((row) => row.words))]
    .filter((word) => !neverMarked.has(word) && (onlyOn[word]?.test(path) ?? true))
    .sort((a, b) => b.length - a.length);
  let left = text;
  return words.filter((word) => {
    const whole = new RegExp(`(^|[^\\w-])${word.replaceAll(/[- ]/g, '[- ]')}(?![\\w-])`, 'gi');
    const there = whole.test(left);
    left = left.replaceAll(whole, '$1');
    return there;
  });
}

const bare = (word: string) => word.toLowerCase().replaceAll('-', ' ');
