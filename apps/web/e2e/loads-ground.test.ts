/** The demo boat's rode: what to veer, seen as it is moved; rope that is too weak put to get; its pull put on its load path. */
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';

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

async function opened(size: typeof phone | typeof laptop): Promise<Page> {
  context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(`${inject('address')}#/boat`);
  await page.getByRole('link', { name: /^Ground tackle/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Bower anchor’s rode' }).waitFor();
  return page;
}

const tooWide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Taps on the phone; on the laptop goes there with the keyboard. */
const press = (size: typeof phone | typeof laptop) => async (target: Locator) => {
  if (size === phone) return target.tap();
  await target.focus();
  await target.press('Enter');
};

describe.each([
  ['on a phone, by touch', phone],
  ['on a laptop, by keyboard', laptop],
] as const)('%s', (_, size) => {
  const act = press(size);

  it('what to veer follows wind, water and tide, and each figure says how it is worked out', async () => {
    const page = await opened(size);
    await page.getByText('Veer 28 m: that holds within 8° in 20 kn.').waitFor();
    await page.getByRole('img', { name: /^Bower anchor’s rode, to scale/ }).waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    await page.screenshot({ path: `screenshots/loads-ground-${size.width}.png`, fullPage: true });

    const wind = page.getByRole('slider', { name: 'Wind' });
    if (size === laptop) {
      await wind.focus();
      for (let n = 0; n < 5; n++) await wind.press('ArrowLeft');
    } else await wind.fill('15');
    await page.getByText('Veer 24 m: that holds within 8° in 15 kn.').waitFor();

    // less than it takes is told, and how much it would
    await page.getByRole('slider', { name: /^Rode out/ }).fill('14');
    await page.getByText(/14 m out is too little in 15 kn: .* Veer 24 m\./).waitFor();
    await act(page.getByRole('button', { name: 'As much as it takes' }));
    await page.getByText('Veer 24 m: that holds within 8° in 15 kn.').waitFor();

    await act(page.getByRole('button', { name: /^Level pull at the bow: 0\.56 kN/ }));
    const sheet = page.getByRole('dialog');
    // ABYC H-40 table 1: 125 lbf at 15 kn for boats up to 25 ft
    await sheet.getByText(/lunch = printed = 125 lbf/).waitFor();
    await sheet
      .getByText(/recalled/)
      .first()
      .waitFor();
    await act(sheet.getByRole('button', { name: 'Close' }));

    await act(page.getByRole('button', { name: 'Keep this anchorage' }));
    await page.getByRole('button', { name: 'Keep this anchorage' }).waitFor({ state: 'detached' });
    await page.locator('[data-state="saved"]').waitFor();
    await page.reload();
    await page.getByText('Veer 24 m: that holds within 8° in 15 kn.').waitFor();
  });

  it('rope too weak for the wind is put to get, and the pull is put on the load path', async () => {
    const page = await opened(size);
    await page.getByRole('slider', { name: 'Wind' }).fill('36');
    await page.getByText(/10 mm nylon, new and wet, may work at 2\.38 kN/).waitFor();
    await act(page.getByRole('button', { name: /^To get: rope, nylon, 12 mm/ }));
    await page.getByRole('link', { name: /^To get: rope, nylon, 12 mm/ }).waitFor();
    await act(page.getByRole('button', { name: 'Put this load on its load path' }));
    await page.getByRole('link', { name: /^Its every part in this load: Anchor rode/ }).waitFor();
    await page.goto(`${inject('address')}#/stores`);
    await page
      .getByText(/^Rope, nylon, 12 mm/)
      .first()
      .waitFor();
  });

  it('a rode is put in, refused where it cannot be, changed, taken out, and brought back', async () => {
    const page = await opened(size);
    const sheet = page.getByRole('dialog');
    await act(page.getByRole('button', { name: 'Add a rode' }));
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.getByText(/There is neither chain nor rope/).waitFor();
    await sheet.getByRole('textbox', { name: 'Name' }).fill('Kedge');
    await sheet.getByRole('combobox', { name: 'Chain at the anchor' }).selectOption('5');
    await sheet.getByRole('textbox', { name: /^Of chain/ }).fill('two');
    await sheet.getByRole('textbox', { name: /^Bow roller/ }).fill('0,7');
    await sheet.getByRole('textbox', { name: /^Seen by the wind/ }).fill('3');
    await sheet.getByRole('textbox', { name: /^Board, rudder/ }).fill('0');
    await sheet.getByRole('textbox', { name: /^The steepest pull/ }).fill('8');
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.getByText(/'two' is not a figure/).waitFor();
    await sheet.getByRole('textbox', { name: /^Of chain/ }).fill('2');
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.waitFor({ state: 'detached' });

    // two of them now: a list leads to each
    await page.getByRole('heading', { level: 1, name: 'Ground tackle' }).waitFor();
    await act(page.getByRole('link', { name: /^Kedge/ }));
    // shorter than the water is deep: named, with what would be right
    await page.getByText(/2 m of rode does not reach from the bow to the seabed/).waitFor();
    await act(page.getByRole('button', { name: 'Change the rode' }));
    await act(sheet.getByRole('button', { name: 'Take it out' }));
    await page.getByText('That rode is no longer in the book.').waitFor();
    await act(page.getByRole('button', { name: /^Undo: / }));
    await page.getByRole('heading', { level: 1, name: 'Kedge' }).waitFor();
  });
});
