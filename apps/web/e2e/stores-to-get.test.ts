/** What to get: by when to order it, what its day does to the plan, and what is then carried down on the day. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { JobDay } from '#boat-book';
import { addDays, instantAt, localAt } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, hoursOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/stores';
const today = localAt(Date.now(), zone).day;
const place = Object.keys(demoBook(today).places)[0]!;
const noon = new Date(instantAt(today, '12:00', zone));

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const dayOn = (n: number): JobDay => ({
  date: addDays(today, n),
  from: '09:00',
  to: '16:00',
  place,
  setOut_min: 10,
  clearUp_min: 10,
  breaks: [],
  hands: [],
  endsIn: [],
});

const weekday = (n: number) =>
  new Date(`${addDays(today, n)}T00:00:00Z`).toLocaleDateString('en-GB', { weekday: 'long', timeZone: 'UTC' });

const book = bookOf(today, 'Turnstone', {
  jobs: {
    cleat: jobOf(today, 'Rebed the jam cleat'),
    hatch: jobOf(today, 'Seal the hatch', { consequence: 'stops-sailing' }),
  },
  steps: {
    off: stepOf('cleat', 1, 'Take it off', 15, { tools: [{ tool: 'sockets', count: 1 }] }),
    bed: stepOf('cleat', 2, 'Bed it', 30, { stores: ['sealant'] }),
    seal: stepOf('hatch', 1, 'Seal it', 30, { stores: ['tape', 'knife-blade'] }),
  },
  jobDays: { first: dayOn(4), second: dayOn(6) },
  weather: { w1: hoursOf(place, addDays(today, 4), 0, 24), w2: hoursOf(place, addDays(today, 6), 0, 24) },
  stores: {
    sealant: { name: 'Sealant, 1 tube', keptAt: '', onHand: false, expected: null, lead_days: 2, note: '' },
    tape: { name: 'Butyl tape, 3 m', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' },
    'knife-blade': {
      name: 'Knife blades',
      keptAt: 'bench drawer 1',
      onHand: true,
      expected: null,
      lead_days: null,
      note: '',
    },
  },
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('what to get, at %s px', (width, viewport) => {
  it('says by when to order, plans behind the day it comes, and lists what to carry down', async () => {
    const context = await browser.newContext({
      viewport,
      hasTouch: width === '390',
      locale: 'en-GB',
      timezoneId: zone,
    });
    const page = await openBook(context, book);
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await page.clock.setFixedTime(noon);
    await page.goto(`${inject('address')}#/stores`);
    await settled(page);
    const sealant = page.locator('li.line', { hasText: 'Sealant, 1 tube' });
    const tape = page.locator('li.line', { hasText: 'Butyl tape, 3 m' });
    // needed on the fourth day from now, two days from ordering
    await sealant.getByText(`Not ordered, 2 days from ordering: order by ${weekday(2)}.`).waitFor();
    await expect.poll(() => sealant.textContent()).toContain(`Needed ${weekday(4)} 09:`);
    await expect.poll(() => tape.textContent()).toContain('say when it can be here, and its jobs can be planned');
    for (const button of await page.locator('li.line button').all())
      expect((await button.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/to-get-${width}.png`, fullPage: true });

    // the lead time of the other: refused where it cannot be, kept where it can
    await tape.getByRole('button', { name: 'Change: Butyl tape, 3 m' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByText('Getting it', { exact: false }).click();
    await sheet.getByLabel('Lead time').fill('400');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.getByText('400 is out of range. Give a figure from 0 to 365 days.').waitFor();
    await sheet.getByLabel('Lead time').fill('1,5');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.getByText('1,5 is not a whole number.').waitFor();
    await page.screenshot({ path: `${pictures}/lead-time-${width}.png` });
    await sheet.getByLabel('Lead time').fill('3');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.waitFor({ state: 'hidden' });
    await tape.getByText(`Not ordered, 3 days from ordering: order by tomorrow.`).waitFor();

    // ordered, and it comes on the second job day: its job goes there
    expect(await dayOf(page, 'Bed it')).toBe(addDays(today, 4));
    await page.goto(`${inject('address')}#/stores`);
    await sealant.getByRole('button', { name: /^Ordered: Sealant/ }).click();
    // from its lead time
    await expect.poll(() => sheet.getByLabel('Here on').inputValue()).toBe(addDays(today, 2));
    await sheet.getByLabel('Here on').fill(addDays(today, -1));
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.getByText('That day has gone by.').waitFor();
    await sheet.getByLabel('Here on').fill(addDays(today, 6));
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.waitFor({ state: 'hidden' });
    await sealant.getByText(`Ordered, here on ${weekday(6)}.`).waitFor();
    expect(await dayOf(page, 'Bed it')).toBe(addDays(today, 6));

    // got, taken back with undo, and got again
    await page.goto(`${inject('address')}#/stores`);
    await sealant.getByRole('button', { name: 'Got it: Sealant, 1 tube' }).click();
    await sealant.getByText('There, not counted').waitFor();
    await page.getByRole('button', { name: /^Undo: / }).click();
    await sealant.getByText(`Ordered, here on ${weekday(6)}.`).waitFor();
    await sealant.getByRole('button', { name: 'Got it: Sealant, 1 tube' }).click();
    await sealant.getByText('There, not counted').waitFor();
    // here sooner than thought, it leaves the plan as it stands: a new plan moves as little as it can
    expect(await dayOf(page, 'Bed it')).toBe(addDays(today, 6));

    // what there is to get stands over the plan
    await page.goto(`${inject('address')}#/days/plan`);
    await settled(page);
    await page.getByText('One thing to get, to order by').waitFor();

    // the carry-down list of that day
    await page.goto(`${inject('address')}#/days/day/first`);
    await page.getByRole('link', { name: 'Carry-down list' }).click();
    await page.getByRole('heading', { level: 1, name: 'Carry down' }).waitFor();
    await settled(page);
    const names = await page.locator('.carry-thing b').allTextContents();
    expect([...names].sort()).toEqual(['Butyl tape, 3 m', 'Knife blades', 'socket set']);
    const times = (await page.locator('.carry-thing .soft').allTextContents()).map((about) => about.slice(0, 5));
    expect(times).toEqual([...times].sort());
    await page.getByLabel(/^socket set/).check();
    await page.getByText('1 of 3 carried.').waitFor();
    for (const label of await page.locator('.carry-thing label').all())
      expect((await label.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/carry-down-${width}.png`, fullPage: true });
    await page.reload();
    await page.getByText('1 of 3 carried.').waitFor();
    // where no place is known it can be said here
    await page.goto(`${inject('address')}#/days/carry/second`);
    await page.getByRole('button', { name: 'Say where it is kept: Sealant, 1 tube' }).click();
    await sheet.getByLabel('Or in words').fill('paint box');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.waitFor({ state: 'hidden' });
    await page.getByRole('heading', { name: 'Paint box' }).waitFor();

    await page.goto(`${inject('address')}#/days/sheet/second`);
    await page.locator('.days-carry').waitFor();
    await expect.poll(() => page.locator('.days-carry').textContent()).toContain('paint box: Sealant, 1 tube');
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** The date of the job day a step is planned on. */
async function dayOf(page: Page, title: string): Promise<string> {
  await page.waitForTimeout(200);
  for (const [id, date] of [
    ['first', addDays(today, 4)],
    ['second', addDays(today, 6)],
  ] as const) {
    await page.goto(`${inject('address')}#/days/sheet/${id}`);
    await page.locator('.days-print').waitFor();
    await settled(page);
    if ((await page.locator('.days-print tbody').textContent())?.includes(title)) return date;
  }
  return 'no day';
}

async function settled(page: Page): Promise<void> {
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor({ state: 'attached' });
}
