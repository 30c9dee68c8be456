/** The demo boat's trailer: a heavier board is over the ball's limit, the battery moved on the drawing mends it, undo brings both back. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
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
  await page.goto(`${inject('address')}#/boat/trailer`);
  await page.locator('.trailer-drawing').waitFor();
  return page;
}

const tooWide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

describe('on a phone, by touch', () => {
  it('a board got heavier, the battery drawn aft brings the ball load back, and undo takes both back', async () => {
    const page = await opened(phone);
    await page.getByText(/^The ball carries 48 kg/).waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    await page.getByRole('button', { name: /^3 The board, up/ }).tap();
    await page.getByRole('slider', { name: /^Its mass/ }).fill('92');
    // 30 kg more at 0.36 m of 4.05 m: 2.7 kg more, over the bar's 50 kg
    await page.getByText(/The ball gains 2\.7 kg: from 48 to 50\.7 kg.*0\.7 kg over the limit/).waitFor();
    await page.getByRole('button', { name: 'Keep it so' }).tap();
    await page.getByText(/Not to be towed so: one thing stands against it/).waitFor();
    await page.getByText(/Move the battery 1\.35 m aft/).waitFor();

    // along the drawing, with a thumb
    const battery = page.getByRole('slider', { name: /^The battery/ });
    await battery.scrollIntoViewIfNeeded();
    const from = await battery.locator('circle').boundingBox();
    const drawing = await page.locator('.trailer-drawing').boundingBox();
    if (!from || !drawing) throw new Error('the battery is not drawn');
    const y = from.y + from.height / 2;
    await page.mouse.move(from.x + from.width / 2, y);
    await page.mouse.down();
    await page.mouse.move(drawing.x + 4, y, { steps: 4 });
    await page.mouse.up();
    await page.getByText(/Tried out, not kept:.*The battery.*The ball loses 2 kg: from 50\.7 to 48\.7 kg/).waitFor();
    await page.getByRole('button', { name: 'Keep it so' }).tap();
    await page.getByText(/^The ball carries 48\.7 kg/).waitFor();
    await page.getByText(/Within what was entered/).waitFor();

    await page.getByRole('button', { name: /^Undo: Change the load/ }).tap();
    await page.getByText(/^The ball carries 50\.7 kg/).waitFor();
    await page.getByRole('button', { name: /^Undo: Change the load/ }).tap();
    await page.getByText(/^The ball carries 48 kg/).waitFor();
  });
});

describe('on a laptop, by keyboard', () => {
  it('a mark is moved with the arrow keys, let be as it was, and the ball is weighed anew', async () => {
    const page = await opened(laptop);
    const water = page.getByRole('slider', { name: /^The water cans/ });
    await water.focus();
    await water.press('PageDown');
    await water.press('ArrowLeft');
    // 20 kg by 0.55 m of 4.05 m
    await page.getByText(/The ball loses 2\.7 kg/).waitFor();
    await expect.poll(() => water.getAttribute('aria-valuetext')).toMatch(/^0\.55 m ahead of the axle; 45\.3 kg/);
    await page.getByRole('button', { name: 'As it was' }).press('Enter');
    await page.getByText(/Tried out/).waitFor({ state: 'detached' });

    await page.getByRole('button', { name: 'Weigh the ball' }).press('Enter');
    const sheet = page.locator('dialog[aria-busy="false"]');
    await sheet.getByRole('textbox', { name: /The scale says/ }).fill('26');
    await sheet.getByRole('textbox', { name: /block to the coupling/ }).fill('900');
    await sheet.getByRole('textbox', { name: /block to the scale/ }).fill('600');
    await sheet.getByRole('button', { name: 'Enter it' }).press('Enter');
    await sheet.getByText(/presses past the scale at 600 mm/).waitFor();
    await sheet.getByRole('textbox', { name: /block to the scale/ }).fill('1800');
    await sheet.getByRole('button', { name: 'Enter it' }).press('Enter');
    // 26 kg at twice the arm
    await page.getByText(/^The ball carries 52 kg/).waitFor();
    await page.getByRole('button', { name: 'Put the table right' }).press('Enter');
    // nothing was moved by it: the ball load stays, and the table now says the same
    await page.getByText('The table said the same.').waitFor();
    await page.getByText(/^The ball carries 52 kg/).waitFor();
  });
});
