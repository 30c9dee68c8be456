/** What a tin says: put in by the keeper, it wins over our figure in the plan, and says so where it is used. */
import { mkdirSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { cureLawOf } from '#materials';
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

const wait = {
  id: 'hard',
  title: 'Filler hardens',
  law: cureLawOf('epoxy-fast').law,
  needs: {},
  setUps: [],
  still: [],
  wet: false,
};
const book = bookOf(today, 'Turnstone', {
  jobs: { blade: jobOf(today, 'Fill the rudder blade') },
  steps: { fill: stepOf('blade', 1, 'Fill the hollows', 30, { waits: [wait] }) },
  jobDays: {
    first: {
      date: addDays(today, 1),
      from: '09:00',
      to: '16:00',
      place,
      setOut_min: 10,
      clearUp_min: 10,
      breaks: [],
      hands: [],
      endsIn: [],
    },
  },
  weather: { w1: hoursOf(place, addDays(today, 1), 0, 24), w2: hoursOf(place, addDays(today, 2), 0, 24) },
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('what a tin says, at %s px', (width, viewport) => {
  it('is put in, refused where it cannot be, wins in the plan, and is taken back with undo', async () => {
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

    const working = async (part: string) => {
      await page.goto(`${inject('address')}#/days/plan`);
      await page.locator('.days-block', { hasText: 'Fill the hollows' }).click();
      const text = page.locator('.days-working');
      // one opened just as the new plan comes tells the step as it lies then
      await expect.poll(() => text.textContent(), { timeout: 30_000 }).toContain(part);
      const words = (await text.textContent()) ?? '';
      await page.keyboard.press('Escape');
      return words;
    };
    expect(await working('Our figure; the tin wins: 10 h at 20 °C.')).toContain('Then it waits');

    await page.goto(`${inject('address')}#/stores`);
    await page.getByRole('link', { name: 'What the tins say' }).click();
    await page.getByRole('button', { name: 'Put in what a tin says' }).click();
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByLabel('Name on the tin').fill('Epoxy, the grey tin');
    await sheet.getByLabel('What it is').selectOption('epoxy-fast');
    await sheet.getByLabel('To be sanded, or clamps off, from').fill('6');
    await sheet.getByRole('button', { name: 'Put it in' }).click();
    // a time without its temperature says nothing
    await sheet.getByText('There is no figure here. Give one from -20 to 60 °C.').waitFor();
    await sheet.getByLabel('These at').fill('25');
    await sheet.getByLabel('Not below').fill('45');
    await sheet.getByRole('button', { name: 'Put it in' }).click();
    await sheet.getByText('45 is out of range. Give a figure from -20 to 40 °C.').waitFor();
    await sheet.getByLabel('Not below').fill('8');
    await sheet.getByLabel('Resin').fill('5');
    await sheet.getByLabel('Hardener').fill('1');
    await sheet.getByText('weight', { exact: true }).click();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/tin-sheet-${width}.png`, fullPage: true });
    await sheet.getByRole('button', { name: 'Put it in' }).click();
    await sheet.waitFor({ state: 'hidden' });

    const line = page.locator('li.line', { hasText: 'Epoxy, the grey tin' });
    await line.getByText('To be sanded, or clamps off, from 6 h at 25 °C. Not below 8 °C.').waitFor();
    await expect.poll(() => line.textContent()).toContain('Mixed 5 to 1 by weight.');
    await expect.poll(() => line.textContent()).toContain('From the tin in: ‘Fill the hollows’.');
    expect((await line.getByRole('button').boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/tins-${width}.png`, fullPage: true });

    expect(await working('From the tin: 6 h at 25 °C.')).toContain('Then it waits');

    // so does the job's page; and the wait keeps the tin it is given when it is changed again
    await page.goto(`${inject('address')}#/work/job/blade`);
    const waits = page.locator('.job-wait');
    await expect.poll(() => waits.textContent()).toContain('from the tin of Epoxy, the grey tin');
    const changeWait = async () => {
      await page.getByRole('button', { name: 'Change step 1: Fill the hollows' }).click();
      await sheet.getByText('What it waits for afterwards').click();
    };
    await changeWait();
    await sheet.getByLabel('Which tin').selectOption({ label: 'Epoxy, the grey tin' });
    await page.screenshot({ path: `${pictures}/tin-of-wait-${width}.png`, fullPage: true });
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.waitFor({ state: 'hidden' });
    await changeWait();
    await sheet.getByLabel('It must stay dry').check();
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.waitFor({ state: 'hidden' });
    await expect.poll(() => waits.textContent()).toContain('stays dry');
    expect(await waits.textContent()).toContain('from the tin of Epoxy, the grey tin');
    await page.screenshot({ path: `${pictures}/tin-on-job-${width}.png`, fullPage: true });
    await changeWait();
    expect(await sheet.getByLabel('Which tin').inputValue()).not.toBe('');
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'hidden' });

    await page.goto(`${inject('address')}#/stores/tins`);
    await line.waitFor();
    const undo = page.getByRole('button', { name: /^Undo: / });
    // the two changes of the wait, then the tin
    for (const _ of [1, 2, 3]) await undo.click();
    await line.waitFor({ state: 'detached' });
    await page.getByText('None yet. Begin with the one you open next').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
