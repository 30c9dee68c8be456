/** A job held to a day: what that costs is told before it is done and after, what moved is said, and it is let go. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addDays, instantAt, localAt, weekday } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, hoursOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/days';
const today = localAt(Date.now(), zone).day;
const [first, second] = [addDays(today, 1), addDays(today, 2)];
const place = Object.keys(demoBook(today).places)[0]!;
const names = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const firstName = names[weekday(first)]!;

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const jobDay = (date: string) => ({
  date,
  from: '09:00',
  to: '12:00',
  place,
  setOut_min: 0,
  clearUp_min: 0,
  breaks: [],
  hands: [],
  endsIn: [],
});

/** Two mornings of three hours; only the first is dry, and the pintle must be dry. Scraping takes as long as it. */
const book = bookOf(today, 'Turnstone', {
  jobs: {
    pintle: jobOf(today, 'Rebed the pintle', { consequence: 'stops-sailing' }),
    scrape: jobOf(today, 'Scrape the centre case', { consequence: 'danger' }),
  },
  steps: {
    bed: stepOf('pintle', 1, 'Bed the pintle', 150, { needs: { dry: true } }),
    scrape: stepOf('scrape', 1, 'Scrape it clean', 150),
  },
  jobDays: { one: jobDay(first), two: jobDay(second) },
  weather: Object.fromEntries(
    [hoursOf(place, first, 0, 24), hoursOf(place, second, 0, 24, { rain: true })].map((entry, n) => [
      `w${n}`,
      { ...entry, order: n + 1 },
    ]),
  ),
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('a hold, at %s px', (width, viewport) => {
  it('is told with its cost before it is made and after, and is let go', async () => {
    const context = await browser.newContext({
      viewport,
      hasTouch: width === '390',
      locale: 'en-GB',
      timezoneId: zone,
      reducedMotion: 'reduce',
    });
    const page = await openBook(context, book);
    await page.clock.setFixedTime(new Date(instantAt(today, '19:00', zone)));
    await page.goto(`${inject('address')}#/days/plan`);
    await settled(page);
    await expect.poll(() => page.getByText('Nothing: every open job is in the plan.').count()).toBe(1);

    await openBlock(page, /Scrape it clean/, 1);
    await page.getByRole('button', { name: `Hold to ${firstName}` }).click();
    const trial = page.locator('.days-panel[data-trial="over"]');
    await trial.waitFor();
    await expect.poll(() => trial.textContent()).toMatch(/costs.*‘Rebed the pintle’ \(weight 30\) left out/);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/hold-trial-${width}.png` });
    await trial.getByRole('button', { name: `Hold to ${firstName}` }).click();

    // held, with what it costs beside it
    await page.getByRole('heading', { name: `Held to ${firstName}` }).waitFor();
    await page.locator('.days-hold', { hasText: /Holding it to .* costs/ }).waitFor();
    await expect
      .poll(() => page.locator('.days-hold').textContent())
      .toMatch(/‘Rebed the pintle’ \(weight 30\) left out/);
    await page.screenshot({ path: `${pictures}/hold-held-${width}.png` });
    await page.getByRole('button', { name: 'Close' }).click();
    await settled(page);

    // what moved is said and marked
    const moved = page.getByRole('region', { name: 'What moved' });
    await moved.waitFor();
    await expect.poll(() => moved.textContent()).toMatch(/1 thing moved; left out now: ‘Rebed the pintle’\./);
    await expect.poll(() => moved.textContent()).toMatch(new RegExp(`Scrape it clean: .* → ${firstName} 09:`));
    if (width === '390') await page.getByRole('tab').first().click();
    const block = page.locator('.days-block', { hasText: 'Scrape it clean' });
    await expect.poll(() => block.getAttribute('aria-label')).toMatch(/held, moved from/);
    await expect.poll(() => block.getAttribute('data-moved')).toBe('true');
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/hold-moved-${width}.png`, fullPage: true });

    // seen stays seen, also after a new start
    await moved.getByRole('button', { name: 'Seen' }).click();
    await moved.waitFor({ state: 'detached' });
    await page.reload();
    await settled(page);
    await expect.poll(() => moved.count()).toBe(0);

    // from the job's own page: a time, with its cost, and let go
    await page.goto(`${inject('address')}#/work/job/scrape`);
    await expect.poll(() => page.locator('.job-facts').textContent()).toMatch(new RegExp(`held to.*${firstName}`));
    await page.getByRole('button', { name: 'The hold and its cost' }).click();
    await page.getByRole('button', { name: 'Hold to a time' }).click();
    await page.getByLabel('Its first step starts at').fill('12:30');
    await page.getByRole('button', { name: 'What it would cost' }).click();
    await page.getByText('The job day is from 09:00 to 12:00').waitFor();
    await page.getByLabel('Its first step starts at').fill('09:05');
    await page.getByRole('button', { name: 'What it would cost' }).click();
    await page.locator('.days-panel[data-trial="over"]').waitFor();
    // against letting it go: it is held to that day already, and that costs the pintle too
    await expect
      .poll(() => page.locator('.days-panel').textContent())
      .toMatch(/09:05 costs.*‘Rebed the pintle’ \(weight 30\) left out/);
    await page.screenshot({ path: `${pictures}/hold-time-${width}.png` });
    await page.getByRole('button', { name: `Hold to ${firstName} 09:05` }).click();
    await page.getByRole('heading', { name: `Held to ${firstName} 09:05` }).waitFor();
    await page.getByRole('button', { name: 'Let go' }).click();
    await page.getByRole('heading', { name: 'Hold it' }).waitFor();
    await page.goto(`${inject('address')}#/days/plan`);
    await settled(page);
    await page.getByText('Nothing: every open job is in the plan.').waitFor();
    await context.close();
  });
});

/** Opens a block of the drawing; on a phone the day it is on is turned to first. */
async function openBlock(page: Page, name: RegExp, day: number): Promise<void> {
  const tabs = page.getByRole('tab');
  if ((await tabs.count()) > 0) await tabs.nth(day).click();
  await page.locator('.days-block', { hasText: name }).click();
}

async function settled(page: Page): Promise<void> {
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor({ state: 'attached' });
}
