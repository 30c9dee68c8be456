/** The evening before: not fit, the reason, the job behind it done, and then fit with the conditions that are left. */
import { mkdirSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addDays, localAt } from '#units';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, jobOf, openBook } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const pictures = 'screenshots/go';
const today = localAt(Date.now(), 'Europe/London').day;

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe('the evening before', () => {
  it.each([
    ['390', phone],
    ['1280', laptop],
  ] as const)(
    'she is not fit, the reason is followed to its job, and she is fit with a condition, at %s px',
    async (width, viewport) => {
      const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: 'Europe/London' });
      const book = {
        ...bookOf(today, 'Dunlin', {
          jobs: { gate: jobOf(today, 'Splice the gate line', { consequence: 'danger', why: 'It parted at the eye.' }) },
          steps: {},
        }),
        loadPaths: {},
        rodes: {},
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
            notOnRoad: false,
            state: 'standing' as const,
          },
        },
      };
      const page = await openBook(context, book);
      await page.goto(`${inject('address')}#/go`);
      const sum = page.locator('.go-sum');
      await page.locator('[data-verdict="not fit"]').waitFor();
      await expect.poll(() => sum.textContent()).toMatch(/Not fit to go: 1 thing stands against it/);
      // what was not looked at stands beside it
      await page.getByText('ball load, tyres and straps').waitFor();
      const finding = page.locator('.go-finding', { hasText: 'Splice the gate line' });
      await finding.locator('summary').click();
      await finding.getByText('It parted at the eye.').waitFor();
      expect(await seriousFaults(page)).toEqual([]);
      await page.screenshot({ path: `${pictures}/not-fit-${width}.png`, fullPage: true });
      await finding.getByRole('link', { name: 'Open the job' }).click();
      await page.getByRole('heading', { level: 1, name: 'Splice the gate line' }).waitFor();
      await page.getByRole('button', { name: 'Job done' }).click();
      const sheet = page.locator('dialog[aria-busy="false"]');
      await sheet.getByText('it held', { exact: true }).click();
      await sheet.getByLabel('How it was shown').selectOption('load');
      await sheet.getByLabel('What was found, with its figure').fill('my whole weight on it for a minute');
      await sheet.getByRole('button', { name: 'The job is done' }).click();
      await sheet.waitFor({ state: 'detached' });
      await page.goto(`${inject('address')}#/go`);
      await page.locator('[data-verdict="fit with conditions"]').waitFor();
      await expect.poll(() => sum.textContent()).toMatch(/Fit with 1 condition, as far as it was looked at/);
      await page.getByText(/Tape on the hatch: only until .*, to 18 knots/).waitFor();
      await page.screenshot({ path: `${pictures}/conditions-${width}.png`, fullPage: true });
      await context.close();
    },
  );
});
