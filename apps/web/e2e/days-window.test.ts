/** With no job day booked: the next hours that would suit a job, what to prepare before, and those hours booked. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addDays, instantAt, localAt } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { bookOf, hoursOf, jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/days';
const today = localAt(Date.now(), zone).day;
const tomorrow = addDays(today, 1);
const place = Object.keys(demoBook(today).places)[0]!;
const evening = new Date(instantAt(today, '17:20', zone));

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

/** Rain until tomorrow 13:00, then dry at 15 °C for a day and a half. */
const book = bookOf(today, 'Sanderling', {
  jobs: {
    sole: jobOf(today, 'Paint the cockpit sole', { consequence: 'stops-sailing' }),
    lift: jobOf(today, 'Turn the rudder over'),
    hinge: jobOf(today, 'Oil the locker hinge', { consequence: 'comfort' }),
    windy: jobOf(today, 'Dry the sails', { consequence: 'comfort' }),
  },
  steps: {
    rub: stepOf('sole', 1, 'Rub down', 40),
    coat: stepOf('sole', 2, 'Coat it', 300, { needs: { dry: true, air_min_C: 12 } }),
    lift: stepOf('lift', 1, 'Lift and turn it', 20, { hands: 2, needs: { dry: true } }),
    oil: stepOf('hinge', 1, 'Oil it', 15),
    dry: stepOf('windy', 1, 'Hoist and dry them', 60, { needs: { dry: true, air_min_C: 30 } }),
  },
  weather: Object.fromEntries(
    [
      hoursOf(place, today, 0, 24, { rain: true }),
      hoursOf(place, tomorrow, 0, 13, { rain: true }),
      hoursOf(place, tomorrow, 13, 24),
      hoursOf(place, addDays(today, 2), 0, 24),
    ].map((entry, n) => [`w${n}`, { ...entry, order: n + 1 }]),
  ),
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('with no job day booked, at %s px', (width, viewport) => {
  it('shows the next hours that suit and what to prepare, and books them', async () => {
    const context = await browser.newContext({
      viewport,
      hasTouch: width === '390',
      locale: 'en-GB',
      timezoneId: zone,
    });
    const page = await openBook(context, book);
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await page.clock.setFixedTime(evening);
    await page.goto(`${inject('address')}#/days`);
    await allTold(page);

    const sole = page.locator('.days-window', { hasText: 'Paint the cockpit sole' });
    await expect.poll(() => sole.textContent()).toContain('5 h dry, from 12 °C: tomorrow 13:00 to 18:00.');
    await expect.poll(() => sole.textContent()).toContain("Prepare 40 minutes tonight, from 17:25: 'Rub down'.");
    // ranked by weight
    const titles = await page.locator('.days-window h3 a').allTextContents();
    expect(titles[0]).toBe('Paint the cockpit sole');
    expect(titles[1]).toBe('Turn the rudder over');
    expect(titles).toHaveLength(4);
    const sails = page.locator('.days-window', { hasText: 'Dry the sails' });
    await expect
      .poll(() => sails.textContent())
      .toMatch(/The weather is known to .*; no 1 h in one go \(dry, from 30 °C\) in it/);
    await expect.poll(() => sails.getByRole('button').count()).toBe(0);
    await tappable(page);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/windows-${width}.png`, fullPage: true });

    // willing to work later only: the window moves
    const willing = page.getByRole('group', { name: /Hours you are willing to work/ });
    await willing.getByLabel('From').fill('14:30');
    await page.getByText('tomorrow 14:30 to 19:30').waitFor();
    await willing.getByLabel('To').fill('14:00');
    await page.getByText('14:00 is not after 14:30.').waitFor();
    await willing.getByLabel('To').fill('20:00');
    await willing.getByLabel('From').fill('08:00');
    await page.getByText('tomorrow 13:00 to 18:00').waitFor();

    // two pairs of hands: who it is must be said
    await page.getByRole('button', { name: 'Book these hours: Turn the rudder over' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('button', { name: 'Book them' }).click();
    await sheet.getByText('Say who it is.').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/windows-with-whom-${width}.png` });
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'hidden' });

    await page.getByRole('button', { name: 'Book these 2 days: Paint the cockpit sole' }).click();
    await page.locator('.days-block').first().waitFor();
    await settled(page);
    // a phone shows a day at a time: the second is where it is coated
    if (width === '390') await page.getByRole('tab').nth(1).click();
    await page
      .getByRole('button', { name: /Coat it/ })
      .first()
      .waitFor();
    await page.screenshot({ path: `${pictures}/windows-booked-${width}.png`, fullPage: true });
    const blocks = await page.locator('.days-block').evaluateAll((all) => all.map((block) => block.ariaLabel ?? ''));
    expect(blocks.some((label) => /13:00 to 18:00.*Coat it|Coat it.*13:00 to 18:00/.test(label))).toBe(true);
    await expect.poll(() => page.locator('.days-list .days-line').count()).toBe(2);

    // one undo takes both days back
    await page.getByRole('button', { name: /^Undo: / }).click();
    await allTold(page);
    await expect.poll(() => page.locator('.days-list .days-line').count()).toBe(0);

    // the job's own page says it too
    await page.getByRole('link', { name: 'Paint the cockpit sole' }).click();
    const next = page.locator('section', { has: page.getByRole('heading', { name: 'Next window' }) });
    await next.getByText('tomorrow 13:00 to 18:00').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/windows-job-${width}.png`, fullPage: true });
    expect(errors).toEqual([]);
    await context.close();
  });

  it('takes the weather ahead with no job day, and then shows the hours in it', async () => {
    const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: zone });
    const page = await openBook(context, { ...book, id: 'no-weather', weather: {} });
    await page.clock.setFixedTime(evening);
    await page.goto(`${inject('address')}#/days`);
    await allTold(page);
    const sole = page.locator('.days-window', { hasText: 'Paint the cockpit sole' });
    await expect.poll(() => sole.textContent()).toContain('No weather is known for the days ahead');
    await expect
      .poll(() => page.locator('.days-window', { hasText: 'Oil the locker hinge' }).textContent())
      .toContain('It asks nothing of the weather: any 15 minutes will do.');
    await page.getByRole('link', { name: 'Enter the weather ahead' }).click();
    await page.getByRole('heading', { level: 1, name: 'Weather ahead' }).waitFor();
    await page.getByRole('group', { name: 'Day' }).getByRole('radio').nth(1).press('Space');
    for (const part of ['Morning', 'Midday', 'Afternoon']) {
      const group = page.getByRole('group', { name: new RegExp(`^${part}`) }).first();
      await group.getByRole('radio', { name: part === 'Morning' ? 'Rain' : 'Dry' }).press('Space');
      await group.getByRole('button', { name: '10', exact: true }).click();
      await group.getByLabel(/^Air/).fill('15');
      await group.getByRole('button', { name: 'fair' }).click();
    }
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/weather-ahead-${width}.png`, fullPage: true });
    await page.getByRole('button', { name: 'Enter the weather' }).click();
    await page.getByRole('link', { name: 'See the plan' }).waitFor();
    await page.goto(`${inject('address')}#/days/plan`);
    // the morning is wet until 11:00
    await page.getByText('5 h dry, from 12 °C: tomorrow 11:00 to 16:00.').waitFor();
    await context.close();
  });
});

/** Every button and field of the list is large enough for a thumb. */
async function tappable(page: Page): Promise<void> {
  for (const button of await page.locator('.days-windows button, .days-windows input').all())
    expect((await button.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
}

async function allTold(page: Page): Promise<void> {
  await page.locator('[data-windows-state="all told"]').waitFor();
}

async function settled(page: Page): Promise<void> {
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor({ state: 'attached' });
}
