/** Doing a job: cautions, the mix and its timer over a restart of the browser, photographs, what was used, proof, follow-up. */
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import type { Book } from '#boat-book';
import { laptop, phone } from './browser.ts';
import { bookIn, bookOnTheDay, keptBrowsers, today } from './on-the-day.ts';
import { jobOf, openBook, stepOf } from './one-job-book.ts';
import { seriousFaults } from './page-checks.ts';

const pictures = 'screenshots/doing';
mkdirSync(pictures, { recursive: true });
function epoxyBook(): Book {
  const jobs = {
    holes: jobOf(today, 'Fill the old holes', {
      fitting: 'plate-starboard',
      followUps: [
        {
          title: 'Look at the filled holes',
          because: 'a fill that was thin shows after a hard sail',
          minutes: { low: 5, likely: 10, high: 20 },
          consequence: 'worsens',
          after: { kind: 'days', least_days: 7, most_days: 21 },
        },
      ],
    }),
  };
  const steps = {
    'holes-1': stepOf('holes', 0, 'Fill the holes with epoxy', 35, {
      cautions: ['Epoxy sensitises skin: gloves, no solvent on hands.'],
      mix: 'thick',
      mix_g: 60,
      stores: ['resin'],
      takes: [{ store: 'resin', amount: 60, unit: 'g' }],
      waits: [
        {
          id: 'cure',
          title: 'the epoxy cures',
          law: { kind: 'set time', minutes: 180, from: 'the tin' },
          needs: {},
          setUps: [],
          still: [],
          wet: false,
        },
      ],
    }),
    'holes-2': stepOf('holes', 1, 'Hose it from outside', 10, { proof: 'hose' }),
  };
  const book = bookOnTheDay('Dabchick', {
    jobs,
    steps,
    stores: {
      resin: {
        name: 'Epoxy resin',
        keptAt: 'the blue box',
        onHand: true,
        expected: null,
        lead_days: null,
        note: '',
        amount: 500,
        unit: 'g',
      },
    },
  });
  return { ...book, mixes: { ...book.mixes, thick: { name: 'thick epoxy', mixing_min: 5, potLife_min: 1 } } };
}

const { newFolder, begin, end } = keptBrowsers();
afterEach(end);

/** An invented picture as a JPEG, made by the browser. */
const picture = async (page: Page) =>
  Buffer.from(
    await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(640, 480);
      canvas.getContext('2d')!.fillRect(40, 40, 200, 200);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
      return [...new Uint8Array(await blob.arrayBuffer())];
    }),
  );

declare global {
  /** what the browser has agreed to tell outside the page */
  var toldOutside: string[];
}

/** In the page. Notes what is told at once: the browser takes its own notice down again after 24 s (measured, headless). */
function noteToldOutside(): void {
  globalThis.toldOutside = [];
  const { prototype } = ServiceWorkerRegistration;
  const { showNotification } = prototype;
  prototype.showNotification = async function (title, options) {
    await showNotification.call(this, title, options);
    globalThis.toldOutside.push(options?.body ?? '');
  };
}

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('at %s px', (width, size) => {
  it('a job is done: its timer goes on over a restart, its proof is asked for, what follows goes in', async () => {
    const folder = await newFolder();
    const first = await begin(folder);
    const page = await openBook(first, epoxyBook());
    await page.setViewportSize(size);
    await page.goto(`${inject('address')}#/days`);
    await page.getByRole('heading', { level: 1, name: 'Fill the holes with epoxy' }).waitFor();
    await page.getByText('Epoxy sensitises skin: gloves, no solvent on hands.').waitFor();
    const mix = page.locator('.days-have', { hasText: 'Mix now' });
    await expect.poll(() => mix.textContent()).toMatch(/thick epoxy, in all\s*60 g/);
    await expect.poll(() => mix.textContent()).toMatch(/pot life\s*1 min, as written on the mix/);
    await page.getByText('the blue box').waitFor();

    // word is left by the keeper's own hand
    await page.getByRole('button', { name: /^Leave word/ }).click();
    const words = page.getByLabel('The words');
    await words.waitFor();
    await expect
      .poll(() => words.inputValue())
      .toMatch(/^I am working on Dabchick \(.*\): Fill the holes with epoxy\. If you don't hear from me by \d\d:\d\d/);
    const message = await page.getByRole('link', { name: 'As a message' }).getAttribute('href');
    expect(decodeURIComponent(message ?? '')).toContain(await words.inputValue());
    await page.screenshot({ path: `${pictures}/word-${width}.png`, fullPage: true });
    await page.getByRole('button', { name: /^Leave word/ }).click();

    await page.getByRole('button', { name: 'Start it now' }).click();
    await page.getByLabel('Photograph: Photograph before, after').setInputFiles({
      name: 'holes.jpg',
      mimeType: 'image/jpeg',
      buffer: await picture(page),
    });
    await page.getByRole('button', { name: /^Photograph, / }).waitFor();
    await page.getByRole('button', { name: 'Thick epoxy is mixed: time its pot life' }).click();
    await page.getByText(/pot life of thick epoxy until \d\d:\d\d/).waitFor();
    await page.getByText(/^It is said here at \d\d:\d\d while Fettle is open, or when you open it again/).waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/step-${width}.png`, fullPage: true });
    const started = (await bookIn(page)).timers;
    await page.evaluate(() => globalThis.fettleBook!.flush());
    await first.close();

    const second = await begin(folder);
    if (width === '1280')
      await second.grantPermissions(['notifications'], { origin: new URL(inject('address')).origin });
    await second.addInitScript(noteToldOutside);
    // it was closed for most of the pot life: its clock stands a few seconds short of the end
    const ends = Date.parse(Object.values(started)[0]!.ends);
    await second.clock.install({ time: ends - 4_000 });
    const again = await second.newPage();
    await again.setViewportSize(size);
    await again.goto(`${inject('address')}#/days`);
    await again.getByRole('heading', { level: 1, name: 'Fill the holes with epoxy' }).waitFor();
    expect((await bookIn(again)).timers).toEqual(started);
    await again.getByRole('button', { name: /^Photograph, / }).waitFor();
    // the instant comes, here or while it was closed
    const over = again
      .getByRole('alert')
      .filter({ hasText: 'Over: pot life of thick epoxy, Fill the holes with epoxy' });
    await over.waitFor();
    expect(await again.evaluate(() => Date.now())).toBeGreaterThanOrEqual(ends);
    // told outside the page too, where the keeper let it
    if (width === '1280')
      await expect
        .poll(() => again.evaluate(() => globalThis.toldOutside))
        .toEqual(['Over: pot life of thick epoxy, Fill the holes with epoxy']);
    await again.screenshot({ path: `${pictures}/over-${width}.png`, fullPage: true });
    await over.getByRole('button', { name: 'Heard' }).click();
    await over.waitFor({ state: 'hidden' });

    await again.getByRole('button', { name: 'Done', exact: true }).click();
    const used = again.getByRole('group', { name: 'What was used' }).getByLabel(/Epoxy resin/);
    await expect.poll(() => used.inputValue()).toBe('60');
    await used.fill('70');
    await again.screenshot({ path: `${pictures}/done-${width}.png`, fullPage: true });
    await again.getByRole('button', { name: 'Tick it, plan the rest' }).click();
    await again.getByRole('button', { name: 'Tell me when it is over' }).click({ timeout: 60_000 });
    await again.getByText(/epoxy cures until \d\d:\d\d/).waitFor();
    expect((await bookIn(again)).stores.resin?.amount).toBe(430);

    await again.goto(`${inject('address')}#/work/job/holes`);
    await again.getByRole('heading', { level: 1, name: 'Fill the old holes' }).waitFor();
    await again.getByRole('button', { name: 'Job done' }).click();
    const sheet = again.locator('dialog[aria-busy="false"]');
    const keep = sheet.getByRole('button', { name: 'The job is done' });
    await keep.click();
    await sheet.getByText('Say how it stands.').waitFor();
    await sheet.getByText('not proved', { exact: true }).click();
    await keep.click();
    await sheet.getByText('Say why not.').waitFor();
    await sheet.getByText('it held', { exact: true }).click();
    await sheet.getByLabel(/What was found/).fill('dry inside after 10 minutes');
    await sheet.getByLabel(/By whom/).fill('Ilka');
    await expect.poll(() => sheet.getByLabel(/Look at the filled holes/).isChecked()).toBe(true);
    expect(await seriousFaults(again)).toEqual([]);
    await again.screenshot({ path: `${pictures}/proof-${width}.png`, fullPage: true });
    await keep.click();
    await sheet.waitFor({ state: 'hidden' });
    const after = await bookIn(again);
    expect(after.jobs.holes?.state).toBe('done');
    // what was shown is done: the step that is the proof is ticked with it
    expect(after.steps['holes-2']?.progress.kind).toBe('done');
    expect(Object.values(after.log).find(({ kind }) => kind === 'proved')).toMatchObject({
      text: 'Proved by hose: dry inside after 10 minutes',
      who: 'Ilka',
      fitting: 'plate-starboard',
    });
    await again.goto(`${inject('address')}#/work`);
    await again.getByRole('link', { name: /Look at the filled holes/ }).waitFor();
    await second.close();
  });
});
