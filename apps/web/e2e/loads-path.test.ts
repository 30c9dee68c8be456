/** An anchor rode put together part by part: the shackle that does not fit is seen, made a job with what is to get, and put right. */
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
  await page.getByRole('link', { name: /^Load paths/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Load paths' }).waitFor();
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

  it('a rode is built, its shackle is seen not to fit, and becomes a job with what is to get', async () => {
    const page = await opened(size);
    const sheet = page.getByRole('dialog');
    const put = async () => {
      await act(sheet.getByRole('button', { name: 'Put it in' }));
      await sheet.waitFor({ state: 'detached' });
    };
    const addPart = async (kind: string) => {
      await act(page.getByRole('button', { name: 'Add a part' }));
      await sheet.getByRole('combobox', { name: 'What it is' }).selectOption({ label: kind });
    };
    const fill = (name: RegExp, text: string) => sheet.getByRole('textbox', { name }).fill(text);
    const choose = (name: RegExp, label: string) => sheet.getByRole('combobox', { name }).selectOption({ label });
    const pick = (words: string) => sheet.getByText(words, { exact: true }).click();

    await act(page.getByRole('button', { name: 'Add a load path' }));
    await fill(/^Name/, 'Kedge rode');
    await choose(/^What it is for/, 'anchor, rode, mooring');
    await choose(/^Where/, 'Bow and anchor well');
    await put();
    await page.getByRole('heading', { level: 1, name: 'Kedge rode' }).waitFor();
    await page.getByText('No part is in it yet.').waitFor();

    await addPart('rope');
    await choose(/^Laid of/, 'nylon, three-strand');
    // what is no figure is refused where it stands, and nothing is lost
    await fill(/^Diameter/, 'thick');
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.getByText(/'thick' is not a figure/).waitFor();
    await fill(/^Diameter/, '10');
    await pick('yes');
    await put();

    await addPart('knot, splice or terminal');
    await choose(/^Which/, 'eye splice in rope');
    await put();
    await addPart('thimble');
    await fill(/^For rope or wire of/, '10');
    await fill(/^Clear where a pin goes through/, '15');
    await choose(/^Metal/, 'stainless steel');
    await put();
    await addPart('shackle');
    await fill(/^What you call it/, 'Middle shackle');
    await sheet.getByText('stainless', { exact: true }).click();
    await fill(/^Body/, '8');
    await fill(/^Pin/, '8');
    await fill(/^Clear between its cheeks/, '16');
    await put();
    await addPart('chain');
    await fill(/^Thickness of a link/, '6');
    await choose(/^Grade/, 'grade 30');
    await sheet.getByText('galvanised', { exact: true }).click();
    await fill(/^Clear inside its end link/, '7,8');
    await put();

    // DIN 766 chain of 6 mm is open 7.8 mm inside: neither pin nor body of an 8 mm shackle goes through
    const drawn = page.getByRole('figure', { name: 'Kedge rode, drawn part by part' });
    await drawn.getByText(/The pin of the shackle is 8 mm, and the end link of the chain is open 7\.8 mm/).waitFor();
    await page.getByRole('img', { name: /Kedge rode on her: .*Middle shackle, does not hold/ }).waitFor();

    await act(page.getByRole('button', { name: 'Add a load' }));
    await fill(/^When it pulls so/, 'An hour for lunch');
    await fill(/^The pull/, '40');
    await pick('kg');
    await fill(/^In a wind of/, '15');
    await fill(/^Whose figure it is/, 'my guess');
    await put();
    await page.getByText(/^An hour for lunch: 392 N \(40 kg\) at 15 knots \(my guess\)\.$/).waitFor();
    await page
      .getByText(/^It does not hold: .*Middle shackle does not fit/)
      .first()
      .waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    // the job, and what is to get for it
    await act(page.getByRole('button', { name: 'Make a job of it: change the middle shackle' }));
    await act(page.getByRole('link', { name: 'Job: change the middle shackle' }));
    await page.getByRole('heading', { level: 1, name: 'Change the middle shackle: Kedge rode' }).waitFor();
    await page
      .getByText(/it does not go through/)
      .first()
      .waitFor();
    await page.getByText(/She lies to something else meanwhile/).waitFor();
    // one of the tables that goes there, its size in its name and nothing else
    await page
      .getByText(/shackle, 4 mm, not in stores$/)
      .first()
      .waitFor();

    // and from the job back to the path, where a thinner shackle fits
    await act(page.getByRole('link', { name: 'Kedge rode' }));
    await act(drawn.getByRole('button', { name: /^Middle shackle/ }));
    await sheet.getByText(/^How it is worked out$/).waitFor();
    await act(sheet.getByRole('button', { name: 'Change the part' }));
    await fill(/^Body/, '6');
    await fill(/^Pin/, '6');
    await act(sheet.getByRole('button', { name: 'Keep', exact: true }));
    await sheet.waitFor({ state: 'detached' });
    await drawn.getByText(/does not go through/).waitFor({ state: 'detached' });
  });

  it('the wind moves along a line, and what works at how much moves with it', async () => {
    const page = await opened(size);
    await act(page.getByRole('link', { name: /^danger.*Starboard shroud|Starboard shroud/ }));
    const drawn = page.getByRole('figure', { name: 'Starboard shroud, drawn part by part' });
    const lashing = drawn.getByRole('button', { name: /^Lashing to the chain plate/ });
    const at = async () => Number(/works at (\d+) %/.exec((await lashing.textContent()) ?? '')?.[1]);
    const before = await at();
    const wind = page.getByRole('slider', { name: /^In a wind of/ });
    await wind.focus();
    for (let knots = 15; knots > 10; knots--) await wind.press('ArrowLeft');
    await page.getByText('10 knots', { exact: true }).waitFor();
    // with the square of the wind: (10/15)² of it; the figures follow the slider a picture later
    await expect.poll(at).toBeCloseTo(before * (10 / 15) ** 2, -0.5);
    await page
      .getByText(/^It holds\./)
      .first()
      .waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
  });

  it('a part is put in between two others, taken out, and brought back', async () => {
    const page = await opened(size);
    const sheet = page.getByRole('dialog');
    await act(page.getByRole('link', { name: /Starboard shroud/ }));
    const drawn = page.getByRole('figure', { name: 'Starboard shroud, drawn part by part' });
    const order = async () => (await drawn.getByRole('listitem').locator('b').allTextContents()).slice(0, 9);
    await act(drawn.getByRole('button', { name: /^Swaged terminal/i }));
    await act(sheet.getByRole('button', { name: 'Put a part in after it' }));
    await sheet.getByRole('combobox', { name: 'What it is' }).selectOption({ label: 'rigging screw' });
    await sheet.getByRole('textbox', { name: /^What you call it/ }).fill('Bottle screw');
    await sheet.getByRole('textbox', { name: /^Thread/ }).fill('6');
    await sheet.getByRole('combobox', { name: 'Metal' }).selectOption({ label: 'bronze' });
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.waitFor({ state: 'detached' });
    await expect.poll(async () => (await order()).indexOf('Bottle screw')).toBe(2);
    // bronze has no strength here: the path is unknown there, never sound
    await drawn.getByText(/no strength of bronze bar is known here/).waitFor();

    await act(drawn.getByRole('button', { name: /^Bottle screw/ }));
    await act(sheet.getByRole('button', { name: 'Change the part' }));
    await act(sheet.getByRole('button', { name: 'Take it out' }));
    await sheet.waitFor({ state: 'detached' });
    await expect.poll(order).not.toContain('Bottle screw');
    await act(page.getByRole('button', { name: /^Undo:/ }));
    await expect.poll(order).toContain('Bottle screw');
  });
});
