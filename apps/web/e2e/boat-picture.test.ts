/** The boat's picture: seen from three sides, standing otherwise, a fitting placed by touch and by key, looked at near. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';

const pictures = 'screenshots/picture';
let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

async function opened(size: typeof phone): Promise<Page> {
  const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(`${inject('address')}#/boat`);
  await page.locator('[data-picture] svg').waitFor();
  return page;
}
const drawn = (page: Page, words: string) => page.getByLabel(new RegExp(`drawn to scale: .*${words}`)).waitFor();
/** What a page hears of fingers and mice, since it was asked last. */
async function heardBy(page: Page): Promise<() => Promise<string[]>> {
  const types = ['over', 'down', 'up', 'out', 'move'].flatMap((does) => [`pointer${does}`, `mouse${does}`]);
  await page.evaluate(
    (of) => {
      const told: string[] = [];
      for (const type of of) document.addEventListener(type, () => told.push(type), true);
      Object.assign(globalThis, { told });
    },
    [...types, 'gotpointercapture', 'click'],
  );
  return () => page.evaluate(() => (globalThis as unknown as { told: string[] }).told.splice(0));
}
const shot = (page: Page, name: string) => page.locator('.boat-figure').screenshot({ path: `${pictures}/${name}.png` });

describe('the picture on a phone', () => {
  it('is turned, and drawn with mast, board and cover otherwise than she stands, and back', async () => {
    const page = await opened(phone);
    await drawn(page, 'mast down');
    const heard = await heardBy(page);
    await page.getByRole('button', { name: 'Drawn with mast down: change it' }).tap();
    await drawn(page, 'mast up');
    // Pointer Events, 'compatibility mouse events': what a mouse would have done is told again after a tap
    expect(await heard()).toEqual(['pointerdown', 'pointerup', 'click']);
    await page.mouse.move(40, 400);
    expect(await heard()).toEqual(expect.arrayContaining(['pointerover', 'mouseover', 'mousemove']));
    for (const board of ['down', 'removed']) {
      await page.getByRole('button', { name: /^Drawn with board/ }).tap();
      await drawn(page, `board ${board}`);
    }
    await shot(page, 'side-390');
    await page.locator('.picture-views').getByText('Above').tap();
    await page.getByLabel(/Teasel from above/).waitFor();
    await shot(page, 'above-390');
    await page.locator('.picture-views').getByText('Trailer').tap();
    await page.getByLabel(/Teasel on her trailer/).waitFor();
    await page.getByRole('button', { name: 'As she stands' }).tap();
    await drawn(page, 'mast down, board up, cover on');
    await shot(page, 'trailer-390');
    expect(await seriousFaults(page)).toEqual([]);
    await page.context().close();
  });

  it('is touched to put a fitting where it is, and looked at nearer with two fingers’ worth of buttons', async () => {
    const page = await opened(phone);
    const hull = page.locator('[data-picture] path[data-part="hull"]');
    await hull.scrollIntoViewIfNeeded();
    const box = (await hull.boundingBox())!;
    // over the foredeck, where nothing stands yet
    await page.touchscreen.tap(box.x + 0.88 * box.width, box.y - 24);
    await page.getByText(/m from the stem/).waitFor();
    await page.getByRole('button', { name: 'Put a fitting here' }).tap();
    const sheet = page.getByRole('dialog', { name: 'What is here?' });
    await page.locator('dialog[aria-busy="false"]').waitFor();
    await sheet.getByRole('button', { name: 'A fitting that is not in the book yet' }).tap();
    await page.getByRole('textbox', { name: 'Name' }).fill('Bow eye');
    await page.getByRole('button', { name: 'Put it in' }).tap();
    await page.getByRole('link', { name: /^Bow eye: Bow eye/ }).waitFor();
    await page.getByRole('button', { name: 'Look nearer' }).tap();
    await page.locator('[data-near]').waitFor();
    await page.getByRole('button', { name: 'Look from further off' }).tap();
    await page.locator('[data-near]').waitFor({ state: 'detached' });
    await page.context().close();
  });
});

describe('the picture by keyboard', () => {
  it('moves a fitting by the arrow keys, and Undo puts it back', async () => {
    const page = await opened(laptop);
    await page.getByText('The same as a list, and placing things').click();
    await page.getByRole('button', { name: 'Move the fitting: Starboard shroud plate' }).press('Enter');
    const where = page.getByText(/^Starboard shroud plate: .*m from the stem/);
    await where.getByText('2.16 m from the stem').or(where).waitFor();
    // 2.16 m from the stem; aft is to the left, 5 cm a step
    await page.keyboard.press('ArrowLeft');
    await page.getByText(/^Starboard shroud plate: 2\.21 m from the stem/).waitFor();
    await page.keyboard.press('Shift+ArrowUp');
    await page.getByText(/^Starboard shroud plate: 2\.21 m from the stem, 1\.01 m over the waterline/).waitFor();
    await page.getByRole('button', { name: 'It stands there' }).press('Enter');
    await page.locator('[data-picture]').press('+');
    await page.locator('[data-near]').waitFor();
    await page.locator('[data-picture]').press('0');
    await page.locator('[data-near]').waitFor({ state: 'detached' });
    await page.context().close();
  });

  it('shows load paths, circuits and dues where they are, each with its name, and leads to them', async () => {
    const page = await opened(laptop);
    await page.getByRole('button', { name: 'Drawn with mast down: change it' }).click();
    await page.getByText('What is shown on her').click();
    for (const layer of ['load paths', 'circuits', 'dues'])
      await page.getByRole('checkbox', { name: layer, exact: true }).check();
    await page
      .getByRole('link', { name: /: circuit/ })
      .first()
      .waitFor();
    await shot(page, 'layers-1280');
    expect(await seriousFaults(page)).toEqual([]);
    await page
      .getByRole('link', { name: /: does not hold$|: holds$|: unknown$/ })
      .first()
      .press('Enter');
    await page.waitForURL(/boat\/loads\/path/);
    await page.context().close();
  });
});
