/**
 * As a new keeper would, from nothing: her own boat drawn, three jobs, a job day, the plan, and whether she is fit to go. Every
 * touch is counted: a tap is one, and so is a field that is typed into.
 */
import { mkdirSync } from 'node:fs';
import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { addDays, localAt } from '#units';
import { launchBrowser, phone } from './browser.ts';
import { placeOfWord } from './marked-word.ts';

const zone = 'Europe/London';
const mostTouches = 60;
const pictures = 'screenshots/new-keeper';
let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

it(`draws her boat, puts in three jobs and a job day, and asks whether she is fit, in at most ${mostTouches} touches`, async () => {
  const context = await browser.newContext({
    viewport: phone,
    hasTouch: true,
    locale: 'en-GB',
    timezoneId: zone,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  let touches = 0;
  const tap = async (what: Locator) => {
    touches += 1;
    await what.tap();
  };
  const type = async (what: Locator, text: string) => {
    touches += 1;
    await what.fill(text);
  };
  const go = (place: string) => tap(page.getByRole('navigation').getByRole('link', { name: place, exact: true }));
  const shot = (name: string) => page.screenshot({ path: `${pictures}/${name}-390.png` });

  await page.goto(inject('address'));
  await tap(page.getByRole('button', { name: "Start your own boat's book" }));
  const sheet = page.getByRole('dialog', { name: "Your own boat's book" });
  await page.locator('dialog[aria-busy="false"]').waitFor();
  await type(sheet.getByLabel('Her name'), 'Plover');
  await type(sheet.getByLabel(/^Length/), '5.2');
  await type(sheet.getByLabel(/^Beam/), '2');
  await type(sheet.getByLabel(/^Mast, foot/), '6.1');
  await tap(sheet.getByText('a board that swings on a pin'));
  await sheet.getByRole('img', { name: /^Plover as she is drawn so far/ }).waitFor();
  await shot('drawn');
  await tap(sheet.getByRole('button', { name: 'Start her book' }));
  await page.getByRole('heading', { level: 1, name: 'Plover' }).waitFor();
  await page.getByLabel(/^Plover from the side, 5.2 m, drawn to scale/).waitFor();
  await shot('boat');

  // what a word of the trade means is a tap away
  const word = await placeOfWord(page, 'set-ups');
  touches += 1;
  await page.touchscreen.tap(word.x, word.y);
  const term = page.getByRole('dialog', { name: 'What is meant by set-up' });
  await term.getByText(/A state of the boat that steps need/).waitFor();
  await tap(term.getByRole('button', { name: 'Close' }));
  await term.waitFor({ state: 'hidden' });

  // nothing of hers is in the book yet: an empty page offers what it wants
  for (const [path, offers, asks] of [
    ['days/weather', 'Add the place', 'A place'],
    ['boat/circuits', 'Add a battery', 'A battery'],
  ] as const) {
    await page.goto(`${inject('address')}#/${path}`);
    await page.getByRole('button', { name: offers, exact: true }).tap();
    const offered = page.getByRole('dialog', { name: asks });
    await page.locator('dialog[aria-busy="false"]').waitFor();
    await offered.getByRole('button', { name: 'Close' }).tap();
    await offered.waitFor({ state: 'hidden' });
  }
  await page.goto(`${inject('address')}#/days/now`);
  await page.getByRole('link', { name: 'Put in a job', exact: true }).waitFor();

  await go('Work');
  await tap(page.getByRole('link', { name: 'Put in a job' }));
  const line = page.getByLabel('In one line, typed or dictated');
  for (const [said, next] of [
    ['tiller bolt is bent, change it, 20 min, stops sailing', true],
    ['cockpit locker hinge squeaks, oil it, 15 min, comfort', true],
    ['touch up the topsides where the paint is chipped, dry, 50 min, gets worse', false],
  ] as const) {
    await type(line, said);
    await page.getByRole('heading', { name: 'What was understood' }).waitFor();
    await tap(page.getByRole('button', { name: next ? 'and the next' : 'Put it in', exact: true }));
    if (next) await expect.poll(() => line.inputValue()).toBe('');
  }
  await page.locator('.job h1').waitFor();

  await go('Days');
  await tap(page.getByRole('link', { name: 'Add a job day' }));
  await page.getByRole('heading', { name: 'A new job day' }).waitFor();
  await type(page.getByLabel('Date'), addDays(localAt(Date.now(), zone).day, 1));
  await type(page.getByLabel('From', { exact: true }), '09:00');
  await type(page.getByLabel('To', { exact: true }), '16:00');
  await type(page.getByLabel(/^To set out/), '10');
  await type(page.getByLabel(/^To clear up/), '15');
  await tap(page.getByRole('button', { name: 'Add the place' }));
  const place = page.getByRole('dialog', { name: 'A place' });
  await page.locator('dialog[aria-busy="false"]').waitFor();
  await type(place.getByLabel('Name'), 'The drive');
  await type(place.getByLabel('Latitude'), '50.3');
  await type(place.getByLabel('Longitude'), '-4.1');
  await tap(place.getByRole('button', { name: 'Put it in' }));
  await place.waitFor({ state: 'hidden' });
  await tap(page.getByRole('button', { name: 'Add the job day' }));
  await page.getByRole('heading', { name: 'Weather' }).waitFor();

  await go('Days');
  await page.locator('.days-block').first().waitFor();
  await page
    .locator('[data-plan-state="settled"], [data-plan-state="stopped"]')
    .waitFor({ state: 'attached', timeout: 60_000 });
  await shot('plan');

  await go('Go');
  await tap(page.getByRole('button', { name: 'A day sail', exact: true }));
  await tap(
    page
      .getByRole('group', { name: /on which day/ })
      .getByRole('button')
      .first(),
  );
  await page.locator('.go-sum b').getByText(/fit/i).waitFor();
  // the bolt stops her sailing: said, and never a bare green light
  await page
    .getByText(/tiller bolt/i)
    .first()
    .waitFor();
  await page.getByRole('heading', { name: 'Not looked at' }).waitFor();
  await shot('fit');

  console.log(`a new keeper: ${touches} touches`);
  expect(touches).toBeLessThanOrEqual(mostTouches);
  await context.close();
});
