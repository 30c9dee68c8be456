/**
 * One journey on a phone: seen on a walk-round, put in, its bedding chosen and got, done on the day with a timer that goes on
 * over a restart of the browser, proved, followed up, and found again by its fitting: what was this bedded with?
 */
import { afterEach, expect, inject, it } from 'vitest';
import { askBedding } from './ask-bedding.ts';
import { phone } from './browser.ts';
import { bookIn, bookOnTheDay, keptBrowsers, today } from './on-the-day.ts';
import { jobOf, openBook, stepOf } from './one-job-book.ts';

const { newFolder, begin, end } = keptBrowsers();
afterEach(end);

const talk =
  'Side deck. The starboard shroud plate weeps. Take it off and rebed it, forty minutes, it will only get worse.';

it('from a muttered line to what it was bedded with', async () => {
  const folder = await newFolder();
  const first = await begin(folder);
  const page = await openBook(
    first,
    bookOnTheDay('Dunnock', {
      jobs: { lamp: jobOf(today, 'Wipe the lamp', { consequence: 'comfort', heldTo: 'now', heldAt: '19:00' }) },
      steps: { wipe: stepOf('lamp', 0, 'Wipe the lamp glass', 10) },
    }),
  );
  await page.setViewportSize(phone);
  const go = (at: string) => page.goto(`${inject('address')}${at}`);

  // walk-round, accepted
  await go('#/work/walk-round');
  const field = page.getByRole('textbox', { name: /What you saw/ });
  // dictated talk keeps its words
  for (const [name, value] of [
    ['lang', 'en'],
    ['autocapitalize', 'sentences'],
    ['autocorrect', 'off'],
    ['spellcheck', 'true'],
  ] as const)
    expect(await field.getAttribute(name)).toBe(value);
  await field.fill(talk);
  const proposed = page.locator('.walk-one', { hasText: 'shroud plate' });
  await proposed.getByText(/40 min/).waitFor();
  await proposed.getByRole('button', { name: /^Put in:/ }).tap();
  await proposed.getByRole('link', { name: 'open it' }).tap();
  const title = (await page.locator('.job h1').textContent()) ?? '';

  // what to bed it with; it goes on the step with its wait, and on the list to get
  await page.getByRole('link', { name: 'What to bed it with' }).tap();
  await askBedding(page);
  await page.getByRole('combobox', { name: 'Take', exact: true }).selectOption('polysulphide-sealant');
  await page.getByRole('button', { name: 'Put it on the step' }).tap();
  await page.getByText(/^The step takes Polysulphide sealant, to get and waits until it has set/).waitFor();
  await go('#/stores');
  const got = page.getByRole('button', { name: /^Got it: Polysulphide sealant/ });
  await got.tap();
  await got.waitFor({ state: 'hidden' });

  // on the day: planned, begun, done
  await go('#/days');
  await page.getByRole('heading', { level: 1, name: title }).waitFor({ timeout: 60_000 });
  await page.getByText('the bedding sets').first().waitFor();
  await page.getByRole('button', { name: 'Start it now' }).tap();
  await page.getByRole('button', { name: 'Done', exact: true }).tap();
  await page.getByRole('button', { name: 'Tick it, plan the rest' }).tap();
  await page.getByRole('button', { name: 'Tell me when it is over' }).tap({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Put the timer away' }).waitFor();
  const started = (await bookIn(page)).timers;
  await page.evaluate(() => globalThis.fettleBook!.flush());
  await first.close();

  // the browser begun again: the timer goes on
  const again = await (await begin(folder)).newPage();
  await again.setViewportSize(phone);
  await again.goto(`${inject('address')}#/days`);
  await again.getByRole('button', { name: 'Put the timer away' }).waitFor({ timeout: 60_000 });
  expect((await bookIn(again)).timers).toEqual(started);

  // proved and followed up
  const { jobs } = await bookIn(again);
  const job = Object.keys(jobs).find((id) => id !== 'lamp');
  await again.goto(`${inject('address')}#/work/job/${job}`);
  await again.getByRole('button', { name: 'Job done' }).tap();
  const sheet = again.locator('dialog[aria-busy="false"]');
  await sheet.getByText('it held', { exact: true }).tap();
  await sheet.getByLabel('How it was shown').selectOption('hose');
  await sheet.getByLabel(/What was found/).fill('dry inside after 10 minutes');
  await sheet.getByLabel(/Something else that follows/).fill('Look at the plate after the first hard sail');
  await sheet.getByRole('button', { name: 'The job is done' }).tap();
  await sheet.waitFor({ state: 'hidden' });
  await again.goto(`${inject('address')}#/work`);
  await again.getByRole('link', { name: /Look at the plate after the first hard sail/ }).waitFor();

  // found again by its fitting
  await again.goto(`${inject('address')}#/boat/log/fitting/plate-starboard`);
  await again.getByText(/Proved by hose: dry inside after 10 minutes/).waitFor();
  await again.getByRole('textbox', { name: /^Ask of it/ }).fill('What was this bedded with?');
  await expect.poll(() => again.locator('.log-found').textContent()).toMatch(/Polysulphide sealant/);
  expect(await again.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});
