/** 200,000 readings from a file in the built app: how long until they are in the book, and until they are drawn. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { laptop } from '../apps/web/e2e/browser.ts';
import { appTimeRow, inServedApp } from './app.ts';

const count = 200_000;
/** minutes between two readings: most of a year */
const every_min = 2;
const imports = 3;

/** A logger's table with volts, current and temperature, and a gap. */
function loggersTable(): string {
  const start = Date.UTC(2026, 0, 3);
  const rows = ['time,volts,current,air'];
  for (let i = 0; i < count; i++) {
    const at = start + (i + (i > 120_000 ? 5_000 : 0)) * every_min * 60_000;
    const hour = (at / 3_600_000) % 24;
    const sun = hour > 9 && hour < 16 ? 1 : 0;
    const volts = 12.5 + 0.4 * sun + 0.1 * Math.sin(i / 7) - (i % 5000) / 20_000;
    rows.push(`${new Date(at).toISOString().slice(0, 19)}Z,${volts.toFixed(3)},${(0.4 - 1.2 * sun).toFixed(2)},18.5`);
  }
  return rows.join('\r\n');
}

/**
 * A row each: from choosing the file until it is in the book, but for what the keeper says of its columns; and what it takes
 * to thin the readings and put them on the canvas.
 */
export const readingsTimes = (): Promise<string[]> => inServedApp(readingsRows);

async function readingsRows(browser: Browser, address: string): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-readings-'));
  const file = join(folder, 'year.csv');
  writeFileSync(file, loggersTable());
  const imported: number[] = [];
  const drawn: number[] = [];
  for (let n = 0; n < imports; n++) {
    const context = await browser.newContext({ viewport: laptop, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(120_000);
    await page.goto(`${address}#/boat`);
    await page.getByRole('link', { name: /House battery/ }).click();
    await page.getByRole('link', { name: 'Readings from a file' }).click();
    await page.getByRole('heading', { level: 1, name: 'Readings from files' }).waitFor();
    imported.push(await importTime_ms(page, file));
    for (let again = 0; again < 3; again++) {
      await page.reload();
      drawn.push(await drawTime_ms(page));
    }
    await context.close();
  }
  rmSync(folder, { recursive: true });
  const rowOf = (what: string, took: number[], budget_ms: number) => {
    took.sort((a, b) => a - b);
    return appTimeRow(what, took[took.length >> 1]!, took.at(-1)!, budget_ms, 'ms');
  };
  return [
    rowOf('200,000 readings from a file of 8 MB into the book', imported, 5000),
    rowOf('the same thinned and drawn', drawn, 250),
  ];
}

async function importTime_ms(page: Page, file: string): Promise<number> {
  const looking = performance.now();
  await page.getByLabel('File of readings').setInputFiles(file);
  await page.getByRole('heading', { name: 'What stands in it' }).waitFor();
  const looked = performance.now() - looking;
  await page.getByText('out of the battery', { exact: true }).click();
  const reading = performance.now();
  await page.getByRole('button', { name: 'Read the file' }).click();
  await page.getByText(/^200,000 readings$/).waitFor();
  await page.getByRole('button', { name: 'Keep these readings' }).click();
  await page.getByText('200,000 readings from year.csv are in the book.').waitFor();
  return looked + performance.now() - reading;
}

const drawTime_ms = (page: Page): Promise<number> =>
  page
    .waitForFunction(() => performance.getEntriesByName('readings drawn')[0]?.duration)
    .then((handle) => handle.jsonValue() as Promise<number>);
