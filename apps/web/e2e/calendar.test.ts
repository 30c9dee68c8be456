/** The calendar file, taken out twice: what a calendar has of it after the second time, by an independent reader. */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe('the calendar file', () => {
  it.each([
    ['390', phone],
    ['1280', laptop],
  ] as const)('gives no doubles when it is taken in twice, at %s px', async (width, viewport) => {
    const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: 'Europe/London' });
    const page = await context.newPage();
    await page.goto(`${inject('address')}#/days/plan`);
    // kept, and so in the file, once the plan stands still
    await page.locator('[data-plan-state="settled"]').waitFor({ state: 'attached' });
    const save = page.getByRole('button', { name: 'Save the calendar file' });
    const entries = async () => {
      const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
      expect(download.suggestedFilename()).toMatch(/\.ics$/);
      const text = readFileSync(await download.path(), 'utf8');
      for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => {
        const { uid, sequence } = new ICAL.Event(each);
        return { uid, version: sequence, status: each.getFirstPropertyValue('status') };
      });
    };
    const first = await entries();
    const second = await entries();
    // job days, steps and outings of the demo
    expect(first.length).toBeGreaterThan(10);
    expect(new Set([...first, ...second].map(({ uid }) => uid)).size).toBe(second.length);
    await page.getByText(/entries written/).waitFor();
    await page.getByRole('heading', { name: 'For your calendar' }).scrollIntoViewIfNeeded();
    await page.screenshot({ path: `screenshots/days/calendar-${width}.png` });

    // a due taken out since is called off in the next file, in a higher version
    await page.goto(`${inject('address')}#/go/dues/due-first-aid`);
    await page.getByRole('button', { name: 'Change', exact: true }).click();
    await page.locator('dialog[aria-busy="false"]').getByRole('button', { name: 'Take it out' }).click();
    await page.getByRole('button', { name: /^Undo: Take out a due/ }).waitFor();
    await page.goto(`${inject('address')}#/days/plan`);
    await page.locator('[data-plan-state="settled"]').waitFor({ state: 'attached' });
    const gone = second.find(({ uid }) => uid.startsWith('due.due-first-aid.'))!;
    const third = await entries();
    const calledOff = third.find(({ uid }) => uid === gone.uid)!;
    expect([gone.status, calledOff.status]).toEqual([null, 'CANCELLED']);
    expect(calledOff.version).toBeGreaterThan(gone.version);
    await page.getByText(/1 called off/).waitFor();
    await page.screenshot({ path: `screenshots/days/calendar-${width}.png` });
    await context.close();
  });
});
