/** The built app in headless Chromium: what comes over the network first, how soon a list and a plan are there. */
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { preview } from 'vite';
import { writeBoatFile } from '#boat-book';
import { launchBrowser, phone } from '../apps/web/e2e/browser.ts';
import { ensureBuilt } from '../scripts/built.mjs';
import { bigBook } from './big-book.ts';

export const appTimeHead = ['| what | median | worst | budget | kept |', '| --- | --- | --- | --- | --- |'];

const firstRow = '.work-group a.line-row';

/** A row for each: script before the first place is usable, the first row, the first plan; also at a 4× slower CPU. */
export const appTimes = (): Promise<string[]> =>
  inServedApp(async (browser, address) => [
    await scriptRow(browser, address),
    await timesRow(browser, 'first row can be tapped, warm', 300, (page) => rowShown(page, address), address, 1),
    await timesRow(browser, 'the same at 4× slower', 1200, (page) => rowShown(page, address), address, 4),
    await timesRow(browser, 'demo plan complete in its Worker', 300, (page) => firstPlan(page, address), address, 1),
    ...(await bigBookRows(browser, address)),
  ]);

/** The first row, and scrolling, in a book of 500 jobs, 5,000 entries in the log, 500 photographs and 200,000 readings. */
async function bigBookRows(browser: Browser, address: string): Promise<string[]> {
  const { book, blobs } = bigBook(1);
  const file = Buffer.from(writeBoatFile({ book, blobs })).toString('base64');
  const open = (page: Page) =>
    page.evaluate(async (text) => {
      const opened = await globalThis.fettleBook!.openFile(Uint8Array.from(atob(text), (c) => c.charCodeAt(0)));
      await globalThis.fettleBook!.flush();
      return opened.kind;
    }, file);
  const first = (page: Page) => rowShown(page, address);
  const dropped = (at: string) => (page: Page) => framesDropped_pct(page, address + at);
  return [
    await timesRow(browser, 'first row of a big book, warm', 300, first, address, 1, open),
    await timesRow(browser, 'the same at 4× slower', 1200, first, address, 4, open),
    await timesRow(browser, 'frames dropped, scrolling its jobs', 1, dropped('#/work'), address, 1, open, '%'),
    await timesRow(browser, 'frames dropped, scrolling its log', 1, dropped('#/boat/log'), address, 1, open, '%'),
  ];
}

/** Builds the app where its sources changed, serves it on loopback, and does something with it in a browser. */
export async function inServedApp<T>(work: (browser: Browser, address: string) => Promise<T>): Promise<T> {
  ensureBuilt();
  const server = await preview({
    root: 'apps/web',
    configFile: 'apps/web/vite.config.ts',
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 4640, strictPort: false },
  });
  const browser = await launchBrowser();
  try {
    const at = server.httpServer.address();
    if (at === null || typeof at === 'string') throw new Error('the served app has no port');
    return await work(browser, `http://127.0.0.1:${at.port}/`);
  } finally {
    await browser.close();
    await server.close();
  }
}

async function scriptRow(browser: Browser, address: string): Promise<string> {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  const scripts = new Set<string>();
  context.on('request', (request) => {
    if (/\.m?js(\?|$)/.test(request.url())) scripts.add(request.url());
  });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator(firstRow).first().waitFor();
  const loaded = [...scripts];
  await context.close();
  const sizes = await Promise.all(
    loaded.map(async (url) => gzipSync(Buffer.from(await (await fetch(url)).arrayBuffer())).byteLength),
  );
  const sum_kB = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  return appTimeRow('script before the first place is usable, gz', sum_kB, sum_kB, 200, 'kB');
}

/** Seven times in one context that has the app in its cache and the demo in its store. */
async function timesRow(
  browser: Browser,
  what: string,
  budget_ms: number,
  take_ms: (page: Page) => Promise<number>,
  address: string,
  slower: number,
  first: (page: Page) => Promise<unknown> = async () => {},
  unit = 'ms',
): Promise<string> {
  const context = await warmContext(browser, address, first);
  const took: number[] = [];
  for (let n = 0; n < 7; n++) {
    const page = await context.newPage();
    // a new window of the browser loads parts of its own, on the same two cores
    await page.waitForTimeout(1500);
    if (slower > 1) {
      const devtools = await context.newCDPSession(page);
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower });
    }
    took.push(await take_ms(page));
    await page.close();
  }
  await context.close();
  took.sort((a, b) => a - b);
  return appTimeRow(what, took[3]!, took[6]!, budget_ms, unit);
}

async function warmContext(
  browser: Browser,
  address: string,
  first: (page: Page) => Promise<unknown>,
): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator(firstRow).first().waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await first(page);
  await page.reload();
  await page.locator(firstRow).first().waitFor();
  await page.waitForTimeout(1000);
  await page.close();
  return context;
}

/**
 * From the start of the navigation until the first row of the list is in the page and painted. The page says so itself: to ask it
 * meanwhile is work on the very thread that is timed. [ms]
 */
async function rowShown(page: Page, address: string): Promise<number> {
  // as text: a compiled function would lean on what the compiler put beside it
  await page.addInitScript(`
    const look = () => {
      if (document.querySelector('${firstRow}')) requestAnimationFrame((now) => console.debug('first row ' + now));
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  `);
  const said = page.waitForEvent('console', { predicate: (message) => message.text().startsWith('first row ') });
  await page.goto(address, { waitUntil: 'commit' });
  return Number((await said).text().slice('first row '.length));
}

/** Of the frames of five seconds of scrolling, the share that was not painted in its time. [%] */
async function framesDropped_pct(page: Page, at: string): Promise<number> {
  await page.goto(at);
  await page.locator('.work-group a.line-row, .log-line').first().waitFor();
  await page.waitForTimeout(2_000);
  return page.evaluate(`new Promise((done) => {
    const frame_ms = 1000 / 60;
    const start = performance.now();
    let last = start, frames = 0, missed = 0;
    const next = (now) => {
      frames++;
      missed += Math.max(0, Math.round((now - last) / frame_ms) - 1);
      last = now;
      scrollBy(0, 30);
      if (now - start < 5000) requestAnimationFrame(next);
      else done((100 * missed) / (frames + missed));
    };
    requestAnimationFrame((now) => { last = now; requestAnimationFrame(next); });
  })`);
}

/** From asking until the first complete plan is back from the Worker, its start included. [ms] */
async function firstPlan(page: Page, address: string): Promise<number> {
  await page.goto(`${address}#/days`);
  return page
    .waitForFunction(() => performance.getEntriesByName('first plan')[0]?.duration)
    .then((handle) => handle.jsonValue() as Promise<number>);
}

/** A row of the table. */
export function appTimeRow(what: string, median: number, worst: number, budget: number, unit: string): string {
  return `| ${what} | ${median.toFixed(0)} ${unit} | ${worst.toFixed(0)} ${unit} | ${budget} ${unit} | ${median <= budget ? 'yes' : 'NO'} |`;
}
