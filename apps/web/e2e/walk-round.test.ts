/** A walk-round on a phone: a page of talk, what it proposes beside the words, accepted one by one and all at once. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

let browser: Browser;
let context: BrowserContext | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterEach(async () => {
  await context?.close();
});
afterAll(async () => {
  await browser.close();
});

async function opened(at: string): Promise<Page> {
  context = await browser.newContext({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(inject('address') + at);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
  return page;
}

const talk = `Okay, once round her before the rain.

Bow. The roller pin is bent again, so a new pin, forty minutes, it will only get worse. The anchor is fine.

Foredeck. The forehatch weeps at the hinge. I've put tape over it for now, good till the end of the month. It wants a proper new seal, an hour, on a dry day, comfort.

Cabin. Battery reads twelve point six with everything off and the panel covered.

Transom. The ladder foot is missing, ten minutes.

I need more butyl tape.`;

const one = (page: Page, words: RegExp) => page.locator('.walk-one', { hasText: words });

describe('a walk-round', () => {
  it('proposes what was said, puts in what is accepted, and nothing else', async () => {
    const page = await opened('#/work');
    await page.getByRole('link', { name: 'Walk-round' }).tap();
    await page.getByRole('textbox', { name: /What you saw/ }).fill(talk);
    await page.getByRole('heading', { name: /3 jobs, 1 jury rig, 1 reading and 1 thing for the stores/ }).waitFor();
    await expect.poll(() => page.locator('.walk-one').count()).toBe(6);
    await expect.poll(() => page.locator('.walk-said', { hasText: /anchor/i }).count()).toBe(0);
    const pin = one(page, /roller pin/);
    await pin.getByText(/gets worse, 40 min, Bow/).waitFor();
    await pin.getByText(/under ‘bow’/i).waitFor();

    // one by one: put in, and left out
    await pin.getByRole('button', { name: /^Put in:/ }).tap();
    await pin.getByText('In the book').waitFor();
    const butyl = one(page, /butyl/);
    await butyl.getByRole('button', { name: /^Leave out:/ }).tap();
    await butyl.getByText('Left out.').waitFor();

    // all: what cannot go in is marked and holds back no other
    await page.getByRole('button', { name: 'Put all 4 in' }).tap();
    await page.getByText('1 not in yet: see the marked parts.').waitFor();
    const ladder = one(page, /ladder foot/);
    await ladder.getByText('Choose what happens if it is left.').waitFor();
    await ladder.getByRole('combobox', { name: /If it is left/ }).selectOption('comfort');
    await ladder.getByRole('button', { name: /^Put in:/ }).tap();
    await ladder.getByText('In the book').waitFor();
    await page.getByText('all gone through').waitFor();

    // closed and opened again: the page and what became of it are still there
    await page.getByText('saved on this device').waitFor();
    await page.reload();
    await page.getByText('all gone through').waitFor();
    await page.getByRole('link', { name: '‹ Work' }).tap();
    await page
      .getByText(/New pin|roller pin/i)
      .first()
      .waitFor();
    await page
      .locator('.work-rigs')
      .getByText(/tape over/i)
      .first()
      .waitFor();
    await page.goto(`${inject('address')}#/stores`);
    await page.locator('main h1').first().waitFor();
    await expect.poll(() => page.getByText(/butyl tape/i).count()).toBe(0);
  });

  it('the jury rig stands in for its job, and the job was said in the keeper’s own words', async () => {
    const page = await opened('#/work/walk-round');
    await page.getByRole('textbox', { name: /What you saw/ }).fill(talk);
    await one(page, /proper new seal/)
      .getByText(/a jury rig above stands in for it/)
      .waitFor();
    await page.getByRole('combobox', { name: /if left/ }).selectOption('worsens');
    await page.getByRole('button', { name: 'Put all 6 in' }).tap();
    await page.getByText('all gone through').waitFor();
    await one(page, /new seal/)
      .getByRole('link', { name: 'open it' })
      .tap();
    await page.locator('.job h1').waitFor();
    await page
      .getByText(/tape over/i)
      .first()
      .waitFor();
    await page.getByText('about 1 h').first().waitFor();
  });

  it('talk with no work in it proposes nothing and says how to say it; the page is cleared with one tap', async () => {
    const page = await opened('#/work/walk-round');
    await page.getByRole('textbox', { name: /What you saw/ }).fill('A lovely morning. Tea, and the dog is asleep.');
    await page.getByRole('heading', { name: 'Nothing to put in was found' }).waitFor();
    await page.getByRole('button', { name: 'Clear the page' }).tap();
    await expect.poll(() => page.getByRole('textbox', { name: /What you saw/ }).inputValue()).toBe('');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  });
});
