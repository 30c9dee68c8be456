/** The evening before: not fit, the reason, the job behind it done, and then fit with the conditions that are left. */
import { mkdirSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addDays, localAt } from '#units';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { pagesOf, seriousFaults } from './page-checks.ts';

const pictures = 'screenshots/go';
const today = localAt(Date.now(), 'Europe/London').day;

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe('the evening before', () => {
  it('she is not fit, what would make her fit is told, it is done, and she is fit with a condition', async () => {
    const context = await browser.newContext({ viewport: phone, locale: 'en-GB', timezoneId: 'Europe/London' });
    const book = {
      ...bookOf(today, 'Dunlin', {
        jobs: { gate: jobOf(today, 'Splice the gate line', { consequence: 'danger', why: 'It parted at the eye.' }) },
        steps: { eye: stepOf('gate', 0, 'Splice a new eye', 25) },
      }),
      loadPaths: {},
      rodes: {},
      stays: {},
      stayReadings: {},
      boardHoists: {},
      trailers: {},
      carried: {},
      ballWeighings: {},
      hoistForces: {},
      setUps: {},
      dues: {},
      outings: {
        out: { title: 'Out and back', date: addDays(today, 1), from: '09:00', nights: 0, place: '', wind_kn: 12 },
      },
      juryRigs: {
        tape: {
          title: 'Tape on the hatch',
          job: null,
          zone: null,
          reason: 'the seal is on order',
          made: today,
          trustedUntil: addDays(today, 30),
          wind_max_kn: 18,
          sails_max: null,
          // she goes by water: that says nothing against it
          notOnRoad: true,
          state: 'standing' as const,
        },
      },
    };
    const page = await openBook(context, book);
    await page.goto(`${inject('address')}#/go`);
    await page.locator('[data-verdict="not fit"][data-looking="false"]').waitFor();
    await page.getByText('Not fit to go: 1 thing stands against it.').waitFor();
    // what was not looked at stands beside it
    await page.getByText('what nobody has put in the book').waitFor();
    const makeFit = page.getByRole('region', { name: 'What would make her fit' });
    await makeFit.getByText('With this, about 25 minutes of work, she is fit with 1 condition.').waitFor();
    await makeFit.getByText(/No job day lies before it/).waitFor();
    const finding = page.locator('.go-finding', { hasText: 'Splice the gate line' });
    await finding.locator('summary').click();
    await finding.getByText('It parted at the eye.').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/not-fit-390.png`, fullPage: true });
    await makeFit.getByRole('link', { name: /Splice the gate line/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Splice the gate line' }).waitFor();
    await page.getByRole('button', { name: 'Job done' }).click();
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByText('it held', { exact: true }).click();
    await sheet.getByLabel('How it was shown').selectOption('load');
    await sheet.getByLabel('What was found, with its figure').fill('my whole weight on it for a minute');
    await sheet.getByRole('button', { name: 'The job is done' }).click();
    await sheet.waitFor({ state: 'detached' });
    await page.goto(`${inject('address')}#/go`);
    await page.locator('[data-verdict="fit with conditions"][data-looking="false"]').waitFor();
    await page.getByText('Fit with 1 condition, as far as it was looked at.').waitFor();
    await page.getByText(/Tape on the hatch: only until .*, to 18 knots, off the road/).waitFor();
    await makeFit.waitFor({ state: 'detached' });
    await page.screenshot({ path: `${pictures}/conditions-390.png`, fullPage: true });
    await page.setViewportSize(laptop);
    await page.screenshot({ path: `${pictures}/conditions-1280.png`, fullPage: true });
    await page.getByRole('link', { name: 'Sheet to print: Out and back' }).click();
    await page.locator('[data-looking="false"] .fit-print').waitFor();
    await page.locator('.fit-print').getByText('Tape on the hatch').waitFor();
    for (const format of ['A4', 'Letter'] as const)
      expect(pagesOf(await page.pdf({ format, preferCSSPageSize: false })), format).toBe(1);
    await page.emulateMedia({ media: 'print' });
    const least_pt = await page.locator('.fit-print').evaluate((sheet) => {
      const sizes = [...sheet.querySelectorAll('*')].map((element) => getComputedStyle(element).fontSize);
      return Math.min(...sizes.map((size) => Number.parseFloat(size) * 0.75));
    });
    expect(least_pt).toBeGreaterThanOrEqual(8.99);
    await context.close();
  });
});
