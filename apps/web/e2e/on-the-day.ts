/** A job day that is on now, whatever the hour of the run, and a browser that keeps what it stores and is begun again. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import type { Book } from '#boat-book';
import { localAt } from '#units';
import { launchKeptBrowser } from './browser.ts';
import { bookOf, hoursOf } from './one-job-book.ts';

/** A zone in which it is ten o'clock or so now. None is thirteen hours behind UTC: at 23:00 it is ten of the next day. */
const hour = new Date().getUTCHours();
const ahead = hour <= 22 ? 10 - hour : 34 - hour;
export const zone = `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`;
export const today = localAt(Date.now(), zone).day;

/** The small book of journeys with one dry job day, from 8 to 20 o'clock today. */
export function bookOnTheDay(name: string, parts: Parameters<typeof bookOf>[2]): Book {
  const book = bookOf(today, name, {
    jobDays: {
      now: {
        date: today,
        from: '08:00',
        to: '20:00',
        place: 'home',
        setOut_min: 0,
        clearUp_min: 0,
        breaks: [],
        hands: [],
        endsIn: [],
      },
    },
    weather: { dry: hoursOf('home', today, 0, 24) },
    ...parts,
  });
  const [place] = Object.values(book.places);
  return { ...book, places: { home: { ...place!, timeZone: zone } } };
}

export const bookIn = (page: Page) => page.evaluate(() => globalThis.fettleBook!.snapshot().book as Book);

/** Browsers that keep what they store in a folder; `end` closes and clears them all. */
export function keptBrowsers() {
  const folders: string[] = [];
  const contexts: BrowserContext[] = [];
  return {
    async newFolder(): Promise<string> {
      const folder = await mkdtemp(join(tmpdir(), 'fettle-journey-'));
      folders.push(folder);
      return folder;
    },
    async begin(folder: string): Promise<BrowserContext> {
      const context = await launchKeptBrowser(folder);
      contexts.push(context);
      context.setDefaultTimeout(25_000);
      return context;
    },
    async end(): Promise<void> {
      for (const context of contexts.splice(0)) await context.close();
      for (const folder of folders.splice(0))
        await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 300 });
    },
  };
}
