/** A job is left out for want of a hand; its reason is tapped, the hand is added, and the job comes in. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addDays, localAt } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, hoursOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/days';
const today = localAt(Date.now(), zone).day;
const date = addDays(today, 2);

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const hardens = {
  id: 'hardens',
  title: 'Varnish hardens',
  law: { kind: 'set time', minutes: 120, from: 'the tin' },
  needs: {},
  setUps: [],
  still: [],
  wet: true,
} as const;

/** One job day without a hand; the sheave needs someone there for 40 minutes, the varnish to be dry before dew. */
const handWanted = () =>
  bookOf(today, 'Dotterel', {
    jobs: { sheave: jobOf(today, 'Change the masthead sheave'), locker: jobOf(today, 'Varnish the locker lid') },
    steps: {
      sheave: stepOf('sheave', 0, 'Lift the masthead down', 40, { notAlone: true }),
      locker: stepOf('locker', 0, 'Varnish it', 15, { wet: true, needs: { dewMargin_min_C: 3 }, waits: [hardens] }),
    },
    jobDays: {
      day: {
        date,
        from: '09:00',
        to: '16:00',
        place: 'drive',
        setOut_min: 15,
        clearUp_min: 15,
        breaks: [],
        hands: [],
        endsIn: [],
      },
    },
    weather: { w: hoursOf('drive', date, 6, 20) },
  });

describe.each([
  ['390', phone, 'tap'],
  ['1280', laptop, 'keyboard'],
] as const)('reasons at %s px', (width, viewport, by) => {
  it('say who is missing from when; adding the hand brings the job in, and undo takes it out again', async () => {
    const context = await browser.newContext({ viewport, hasTouch: by === 'tap', locale: 'en-GB', timezoneId: zone });
    const page = await openBook(context, handWanted());
    await page.goto(`${inject('address')}#/days/plan`);
    const left = page.locator('.days-left');
    await left.getByRole('link', { name: 'Change the masthead sheave' }).waitFor();
    // 40 minutes before the clearing-up at 15:45: the last quarter hour that does is 15:00
    await left
      .getByText(/^A second hand from 15:00 on \w+day\./)
      .first()
      .waitFor();
    await left.getByText('What would gain most').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/reasons-hand-${width}.png`, fullPage: true });

    const add = left.getByRole('button', { name: /^Add a hand to \w+day from 15:00$/ }).first();
    expect((await add.boundingBox())!.height).toBeGreaterThanOrEqual(44);
    if (by === 'tap') await add.tap();
    else {
      await add.focus();
      await page.keyboard.press('Enter');
    }
    await left.getByText('Nothing: every open job is in the plan.').waitFor();
    await settled(page);
    const lift = page.getByRole('button', { name: /Lift the masthead down/ });
    await expect.poll(() => lift.getAttribute('aria-label')).toMatch(/15:/);
    await expect.poll(() => page.locator('.days-verdict').textContent()).toMatch(/2 of 2 jobs/);
    await page.screenshot({ path: `${pictures}/reasons-hand-added-${width}.png`, fullPage: true });

    // what holds it there, and how much later it could start
    await lift.click();
    const sheet = page.getByRole('dialog');
    await sheet.getByText('Room to spare').waitFor();
    await sheet.getByText(/not to be done alone, and a second hand is there from 15:00/).waitFor();
    await sheet.getByText(/^5 minutes: started by 15:05/).waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/reasons-held-${width}.png` });
    await page.keyboard.press('Escape');

    // by when its coat is to be on, and why
    await page
      .getByRole('button', { name: /Varnish it/ })
      .first()
      .click();
    await sheet
      .getByText(/^Be done by \d\d:\d\d, to be dry to the touch before dew: as planned it is at \d\d:\d\d/)
      .waitFor();
    await page.screenshot({ path: `${pictures}/reasons-dew-${width}.png` });
    await page.keyboard.press('Escape');

    await page.getByRole('button', { name: /^Undo: / }).click();
    await left.getByRole('link', { name: 'Change the masthead sheave' }).waitFor();
    await context.close();
  });
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('the demo at %s px', (width, viewport) => {
  it('says how far the looking is, and then of every job left out what would let it in or that nothing would', async () => {
    const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: zone });
    const page = await openBook(context, demoBook(today));
    await page.goto(`${inject('address')}#/days/plan`);
    await settled(page);
    await page.getByText(/^Looking for what would let them in/).waitFor();
    await page.screenshot({ path: `${pictures}/reasons-looking-${width}.png`, fullPage: true });
    await page.locator('.days-looking:empty').waitFor({ state: 'attached', timeout: 60_000 });
    const jobs = page.locator('.days-left > ul > li');
    await expect.poll(() => jobs.count()).toBeGreaterThan(0);
    for (const job of await jobs.all()) {
      const told = (await job.locator('.days-change').count()) + (await job.getByText(/^No single change/).count());
      expect(told, (await job.textContent()) ?? '').toBeGreaterThan(0);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/reasons-demo-${width}.png`, fullPage: true });
    await context.close();
  });
});

async function settled(page: Page): Promise<void> {
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor({ state: 'attached' });
}
