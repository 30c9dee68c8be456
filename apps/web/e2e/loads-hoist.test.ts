/** The demo board's hoist: seen as it goes up, a heavier board's wire and tackle found, the job made, a pull entered. */
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
  await page.getByRole('link', { name: /^The board’s hoist/ }).click();
  await page.getByRole('heading', { level: 1, name: 'The board’s hoist' }).waitFor();
  await page.locator('.hoist-drawing').waitFor();
  return page;
}

const tooWide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Taps on the phone; on the laptop goes there with the keyboard. */
const press = (size: typeof phone | typeof laptop) => async (target: Locator) => {
  if (size === phone) return target.tap();
  await target.focus();
  await target.press('Enter');
};

/** The first force in a line of text. [N] */
const newtons = (text: string | null): number => Number(/([\d.]+) N/.exec(text ?? '')?.[1]);

describe.each([
  ['on a phone, by touch', phone],
  ['on a laptop, by keyboard', laptop],
] as const)('%s', (_, size) => {
  const act = press(size);

  it('the board is followed from all the way down to all the way up, and each figure opens its working', async () => {
    const page = await opened(size);
    const slider = page.getByRole('slider');
    await slider.focus();
    await slider.press('Home');
    await page.getByText('62° below level, 0 % of the wire hauled in').waitFor();
    const down = newtons(await page.getByText('In the wire at the board, hoisting').locator('..').textContent());
    await slider.press('End');
    await page.getByText(/, 100 % of the wire hauled in/).waitFor();
    const up = newtons(await page.getByText('In the wire at the board, hoisting').locator('..').textContent());
    // its weight stands farther aft of the pivot the nearer it is to level
    expect(up).toBeGreaterThan(down);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    await act(page.getByRole('button', { name: /^Most in the wire: .*how it is worked out/ }));
    const sheet = page.getByRole('dialog');
    await sheet.getByText(/Machinery Directive 2006\/42\/EC/).waitFor();
    await sheet.getByText(/recalled, not read again/).waitFor();
    await sheet.getByRole('button', { name: 'Close' }).click();

    const verdict = page.locator('.loads-verdict');
    const onTrailer = newtons(await verdict.textContent());
    await page.getByText('afloat', { exact: true }).click();
    // cast iron under sea water keeps 1 − 1025/7200 of its weight
    expect(newtons(await verdict.textContent()) / onTrailer).toBeCloseTo(1 - 1025 / 7200, 1);
  });

  it('what wire and tackle a heavier board needs is found, and made a job with what is to get', async () => {
    const page = await opened(size);
    const now = newtons(await page.locator('.loads-verdict').textContent());
    // half as heavy again as the 62 kg of the demo's plate
    await page.getByRole('textbox', { name: /^What if the board weighed/ }).fill('93');
    await act(page.getByRole('button', { name: 'Find its wire and tackle' }));
    const answer = page.locator('.hoist-answer');
    const tooMuch = answer.getByText(/^On the trailer: Too much for one:/);
    await tooMuch.waitFor();
    expect(newtons(await tooMuch.textContent()) / now).toBeCloseTo(1.5, 1);
    await answer.getByText(/^4 mm 7x19 wire\. It bears/).waitFor();
    await answer.getByText(/^A tackle of \d parts/).waitFor();
    const then = newtons(await answer.getByText(/^On the crank then/).textContent());
    expect(then).toBeLessThanOrEqual(120);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    await act(page.getByRole('button', { name: 'Make the job, with what is to get' }));
    await act(page.getByRole('link', { name: 'The job is in the book' }));
    await page.getByRole('heading', { level: 1, name: 'Fit wire and tackle for a board of 93 kg' }).waitFor();
    await page.getByText('Reeve wire and tackle, make off the ends', { exact: true }).waitFor();
    await page.goto(`${inject('address')}#/stores`);
    await page
      .getByText(/^Blocks for a tackle of/)
      .first()
      .waitFor();
  });

  it('a change is put in the book with one tap, and taken back', async () => {
    const page = await opened(size);
    const verdict = page.locator('.loads-verdict');
    const now = await verdict.textContent();
    await act(page.getByRole('button', { name: 'She has it now: A tackle of 2 parts' }));
    await page.getByText(/^A tackle of 2 parts \(1 moving, 1 standing\)/).waitFor();
    expect(newtons(await verdict.textContent())).toBeLessThan(newtons(now));
    await act(page.getByRole('button', { name: /^Undo:/ }));
    await expect.poll(() => verdict.textContent()).toBe(now);
  });

  it('a pull read off a scale is kept beside what was foretold; one that cannot be read is refused', async () => {
    const page = await opened(size);
    await page.getByText(/it grew from .* what was foretold: something turns harder than it did/).waitFor();
    await act(page.getByRole('button', { name: 'Enter a pull' }));
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('textbox', { name: /^It reads/ }).fill('heavy');
    await act(sheet.getByRole('button', { name: 'Keep it' }));
    await sheet.getByText(/'heavy' is not a figure/).waitFor();
    await sheet.getByRole('textbox', { name: /^It reads/ }).fill('12,5');
    await act(sheet.getByRole('button', { name: 'Keep it' }));
    // 12.5 kg hang with 12.5 · 9.80665 N
    await page.getByText('123 N, hoisting').waitFor();
    await act(page.getByRole('button', { name: 'Make a job of it: find what turns hard' }));
    await page.getByRole('link', { name: 'Job: find what turns hard' }).waitFor();
  });

  it('a tackle that no rope can follow is refused in the form, with what would be right', async () => {
    const page = await opened(size);
    await act(page.getByRole('button', { name: 'Change it' }));
    const sheet = page.getByRole('dialog');
    await act(sheet.getByRole('button', { name: 'Add a tackle' }));
    await sheet.getByRole('textbox', { name: /^Sheaves that move/ }).fill('3');
    await act(sheet.getByRole('button', { name: 'Keep', exact: true }));
    await sheet.getByText(/a rope cannot run over 3 moving and 1 standing sheaves in turn/).waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
  });
});
