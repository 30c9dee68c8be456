/** A forestay is read before and after towing, and the turns that bring it back are told; the mast is moved over its way. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

const tooWide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

describe.each([
  ['on a phone', phone],
  ['on a laptop', laptop],
] as const)('%s', (_, size) => {
  it('a forestay is recorded before and after towing', async () => {
    const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /^Stays/ }).click();
    // what slackens by itself stands first
    await page.getByText('Cap shroud, starboard: slackening.').waitFor();
    await page.getByRole('link', { name: /^Forestay/ }).click();
    await page.getByRole('img', { name: /^Tension at 2 readings/ }).waitFor();

    const sheet = page.getByRole('dialog');
    const keep = sheet.getByRole('button', { name: 'Keep the reading' });
    const read = async (moment: string, aside: string) => {
      await page.getByRole('button', { name: 'Enter a reading', exact: true }).click();
      await sheet.getByText(moment, { exact: true }).click();
      await sheet.getByRole('textbox', { name: /^It came aside/ }).fill(aside);
      await keep.click();
    };
    // read as the last time: by a pull of 50 N, 1.5 m from its end
    await page.getByRole('button', { name: 'Enter a reading', exact: true }).click();
    await expect.poll(() => sheet.getByRole('textbox', { name: /^Pulled with/ }).inputValue()).toBe('50');
    await sheet.getByRole('textbox', { name: /^It came aside/ }).fill('370');
    await keep.click();
    await sheet.getByText('Choose what it is a reading of.').waitFor();
    await sheet.getByText('370 is out of range. Give a figure from 1 to 300 mm.').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await sheet.getByRole('button', { name: 'Leave it out' }).click();
    await sheet.waitFor({ state: 'detached' });

    await read('before towing', '37');
    await page.getByRole('img', { name: /^Tension at 3 readings/ }).waitFor();
    await read('after towing', '55');
    await page.getByRole('img', { name: /^Tension at 4 readings/ }).waitFor();
    const told = page.getByText(/^After towing it is \d\.\d mm slacker than before\./);
    await told.waitFor();
    // 1.5 m of 6.4 m, 50 N, 37 and 55 mm: by hand 1430 and 770 N at rest, 3.1 mm of 4 mm wire; two threads of 24 to the inch: 1.5 turns
    await expect
      .poll(() => told.textContent())
      .toMatch(/it is 3\.1 mm slacker than before\. At least 1\.5 turns tighter brings it back/);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    await page.getByRole('button', { name: /^How it is worked out: .*after towing$/ }).click();
    await sheet.getByText(/While it is pulled: T pulled = /).waitFor();
    await sheet
      .getByText(/Read: 50 N, 1.5 m from its end, drew it 55 mm aside/)
      .first()
      .waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'detached' });

    await page.getByRole('button', { name: 'Undo: Enter a reading of a stay' }).click();
    await page.getByRole('img', { name: /^Tension at 3 readings/ }).waitFor();
    await told.waitFor({ state: 'detached' });
    await context.close();
  });

  it('a stay that slackens becomes a job in one tap', async () => {
    const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat/loads/stays/cap-starboard`);
    await page.getByText(/it has grown by \d\.\d mm/).waitFor();
    await page.getByRole('button', { name: 'Make a job of it' }).click();
    await page.getByRole('link', { name: /^Job: find what gives/ }).click();
    await page.getByRole('heading', { name: 'Find what gives: Cap shroud, starboard' }).waitFor();
    // and the job leads back to the stay
    await page.getByRole('link', { name: 'Cap shroud, starboard', exact: true }).click();
    await page.getByText(/it has grown by \d\.\d mm/).waitFor();
    await context.close();
  });

  it('the mast is moved over its way, and what cannot raise it is refused with what would', async () => {
    const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /^Mast up and down/ }).click();
    await page.getByText('The pull is hardest with the mast at 4°').first().waitFor();
    await page.getByText(/shrouds hang slack by up to \d+ mm/).waitFor();
    const slider = page.getByRole('slider', { name: /^Mast at/ });
    const pull = () =>
      page
        .locator('.rig-forces dd')
        .first()
        .textContent()
        .then((text) => Number.parseFloat(text ?? ''));
    const hardest = await pull();
    await slider.focus();
    for (let n = 0; n < 20; n++) await slider.press('ArrowRight');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/^31° above level, \d+ N in the tackle$/);
    expect(await pull()).toBeLessThan(hardest);
    await slider.press('End');
    await page.getByText('Along the pole, pulled').waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    const sheet = page.getByRole('dialog');
    await page.getByRole('button', { name: 'Change the mast' }).click();
    await sheet.getByText('nothing: straight to the bow').click();
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await page.getByRole('heading', { name: 'It cannot be raised so' }).waitFor();
    await page.getByText(/lead it over a pole/).waitFor();
    await page.getByRole('button', { name: 'Undo: Change a mast' }).click();
    await page.getByText('The pull is hardest with the mast at 4°').first().waitFor();
    await context.close();
  });
});
