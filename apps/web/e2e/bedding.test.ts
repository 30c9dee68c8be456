/**
 * A job of the demo boat asks what to bed the shroud plate with: butyl, and why the others are wrong. It is put on the step, written
 * down with the fitting when it is done, and stands there on the fitting’s zone and on the job. A pane that moves asks for more room.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { askBedding } from './ask-bedding.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

describe.each([
  ['paper', phone],
  ['dark', laptop],
] as const)('%s', (theme, size) => {
  it(`finds the bedding, puts it on the step and writes it down at ${size.width} px`, async () => {
    const context = await browser.newContext({ viewport: size, reducedMotion: 'reduce' });
    await context.addInitScript((name) => localStorage.setItem('fettle-theme', name), theme);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat/zone/side-deck`);
    await page.getByRole('link', { name: 'Bedding of Starboard shroud plate' }).click();
    await page.getByText(/^Starboard shroud plate: bedded with brown polysulphide on /).waitFor();

    // nothing is filled in for the keeper: what is missing is named
    await page.getByRole('button', { name: 'Find what does' }).click();
    await page.getByText('Not worked out yet: see the marked fields.').waitFor();
    await page.getByText('Say what holds it.').waitFor();

    // from a job: the answer, the others with their reasons, the amount
    await page.goto(`${inject('address')}#/work`);
    await page
      .getByRole('link', { name: /shroud plate/i })
      .first()
      .click();
    const job = page.url();
    await page.getByRole('link', { name: 'What to bed it with' }).click();
    await askBedding(page);
    await page.getByRole('heading', { name: 'Butyl tape' }).waitFor();
    await page
      .getByText('Polyurethane sealant holds for good: taking it apart harms the part', { exact: false })
      .waitFor();
    // 80 × 60 × 2 mm is 9.6 ml, and half as much again squeezes out
    await page.getByText('About 14.4 ml fills it, what squeezes out counted.').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    // put on the step, and it is there on the job
    await page.getByRole('combobox', { name: 'Take', exact: true }).selectOption('polysulphide-sealant');
    await page.getByRole('button', { name: 'Put it on the step' }).click();
    await page.getByRole('status').filter({ hasText: 'The step takes' }).waitFor();
    await page.getByRole('link', { name: 'See the job' }).click();
    await page
      .getByText(/Polysulphide sealant/)
      .first()
      .waitFor();

    // an acrylic pane that moves wants room, and says how much
    await page.getByRole('link', { name: 'What to bed it with' }).click();
    await askBedding(page);
    await page.getByRole('combobox', { name: 'One part is', exact: true }).selectOption('acrylic');
    await page.getByRole('textbox', { name: /^One moves against/ }).fill('0.8');
    await page.getByRole('button', { name: 'Find what does' }).click();
    await page.getByRole('heading', { name: 'Nothing out of a tube, tin or roll does here.' }).waitFor();
    await page.getByText('With 3.2 mm between the parts something would.').waitFor();
    await page.getByText('Polysulphide sealant attacks acrylic.').waitFor();

    // what it was in the end is kept with the fitting
    await page.getByRole('button', { name: 'Write down what it was bedded with' }).click();
    await page.locator('dialog[aria-busy="false"]').waitFor();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('This is empty. Say what it was bedded with.').waitFor();
    await page.getByRole('combobox', { name: /^Bedded with/ }).fill('butyl tape, the grey roll');
    await page.getByRole('combobox', { name: 'Kind' }).selectOption('butyl-tape');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.locator('.bedding-now', { hasText: 'bedded with butyl tape, the grey roll on ' }).waitFor();
    await page.goto(job);
    await page.getByText(/bedded with butyl tape, the grey roll on /).waitFor();
    await page.goto(`${inject('address')}#/boat/zone/side-deck`);
    await page.getByText(/bedded with butyl tape, the grey roll on /).waitFor();
    await context.close();
  });
});
