/** A small invented book for journeys: the demo boat and her place, with only the work, weather and stores given. */
import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { type Book, type Job, type Step, type WeatherEntry, writeBoatFile } from '#boat-book';
import { demoBook } from '../../../examples/demo-book.ts';

export function bookOf(
  today: string,
  name: string,
  parts: Pick<Book, 'jobs' | 'steps'> & Partial<Pick<Book, 'jobDays' | 'weather' | 'stores' | 'tools'>>,
): Book {
  const demo = demoBook(today);
  return {
    ...demo,
    id: name.toLowerCase(),
    boat: { ...demo.boat, name, demo: false },
    juryRigs: {},
    outings: {},
    plans: {},
    log: {},
    jobDays: {},
    weather: {},
    stores: {},
    ...parts,
  };
}

export function jobOf(today: string, title: string, parts: Partial<Job> = {}): Job {
  return {
    title,
    why: '',
    zone: null,
    fitting: null,
    consequence: 'worsens',
    opened: today,
    due: null,
    outing: null,
    state: 'open',
    closed: null,
    note: '',
    said: '',
    heldTo: null,
    heldAt: null,
    afterJobs: [],
    ...parts,
  };
}

export function stepOf(job: string, order: number, title: string, likely: number, parts: Partial<Step> = {}): Step {
  return {
    job,
    order,
    title,
    minutes: { low: likely, likely, high: likely },
    hands: 1,
    keeper: true,
    notAlone: false,
    zone: null,
    needs: {},
    features: [],
    tools: [],
    setUps: [],
    stores: [],
    dusty: false,
    wet: false,
    mix: null,
    waits: [],
    follows: null,
    cautions: [],
    progress: { kind: 'open' },
    ...parts,
  };
}

/** Some hours of a day at a place: dry at 15 °C unless said otherwise. */
export function hoursOf(
  place: string,
  date: string,
  fromHour: number,
  toHour: number,
  parts: Partial<WeatherEntry> = {},
): WeatherEntry {
  return {
    place,
    date,
    fromHour,
    toHour,
    rain: false,
    wind_kn: 6,
    air_C: 15,
    surface_C: null,
    humidity_pct: 60,
    rainOdds_pct: null,
    basis: 'typed',
    entered: `${date}T00:00:00Z`,
    ...parts,
  };
}

/** Opens the app with a boat file of this book. */
export async function openBook(context: BrowserContext, book: Book): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject('address')}#/boat`);
  await page.locator('input[type="file"]').setInputFiles({
    name: 'book.fettle',
    mimeType: 'application/zip',
    buffer: Buffer.from(writeBoatFile({ book })),
  });
  await page.getByRole('heading', { level: 1, name: book.boat.name }).waitFor();
  return page;
}
