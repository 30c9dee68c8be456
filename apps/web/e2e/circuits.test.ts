/** The demo boat's circuits: a fault seen and mended, one put in and taken out, wire and fuse for a new outlet. */
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
import { pagesOf } from './page-checks.ts';

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
  await page.getByRole('link', { name: /^Circuits/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Circuits' }).waitFor();
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

  it('a fault in the table is seen with what would be right, mended, and gone', async () => {
    const page = await opened(size);
    await page.getByText(/1 fault that can burn/).waitFor();
    // 200 mm: ISO 10133:2000 8.1
    await page
      .getByText(/Right would be: within 200 mm of the battery along the lead/)
      .first()
      .waitFor();
    const drawn = page.getByRole('figure', { name: /circuits of House battery, drawn/ });
    await drawn.getByText('The fuse is 650 mm from the battery: the wire before it has nothing to stop it.').waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    const sheet = page.getByRole('dialog');
    await act(drawn.getByRole('button', { name: /^Echo sounder/ }));
    await sheet.getByText(/Volts lost: E = I·R·L\/1000/).waitFor();
    await sheet.getByText(/^Hours on, 4 h a day/).waitFor();
    await act(sheet.getByRole('button', { name: 'Change the circuit' }));
    const place = sheet.getByRole('textbox', { name: /^From the battery along the lead/ });
    // what is no figure is refused where it stands, and nothing is lost
    await place.fill('near');
    await act(sheet.getByRole('button', { name: 'Keep' }));
    await sheet.getByText(/'near' is not a figure/).waitFor();
    expect(await place.evaluate((element) => element === document.activeElement)).toBe(true);
    await place.fill('180');
    await act(sheet.getByRole('button', { name: 'Keep' }));
    await sheet.waitFor({ state: 'detached' });
    await page.getByText(/7 circuits looked at: nothing wrong found/).waitFor();
    await drawn.getByText('fuse 2 A, 180 mm from the battery').waitFor();
  });

  it('a fault becomes a job, and its printed drawing is one page', async () => {
    const page = await opened(size);
    await act(page.getByRole('button', { name: 'Make a job of it: Move the fuse to the battery: Echo sounder' }));
    for (const format of ['A4', 'Letter'] as const)
      expect(pagesOf(await page.pdf({ format, path: `screenshots/circuits-${size.width}-${format}.pdf` }))).toBe(1);
    await act(page.getByRole('link', { name: 'Job: move the fuse to the battery' }));
    await page.getByRole('heading', { level: 1, name: 'Move the fuse to the battery: Echo sounder' }).waitFor();
    await page.getByText(/Right would be: within 200 mm/).waitFor();
  });

  it('a circuit is put in, taken out, and brought back', async () => {
    const page = await opened(size);
    const sheet = page.getByRole('dialog');
    await act(page.getByRole('button', { name: 'Add a circuit' }));
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.getByText('Say whether a fuse is fitted.').waitFor();
    await sheet.getByRole('textbox', { name: 'What hangs on it' }).fill('Stern light');
    await sheet.getByText('amperes', { exact: true }).click();
    await sheet.getByRole('textbox', { name: /^Draws/ }).fill('0,5');
    await sheet.getByText('by the sun', { exact: true }).click();
    await sheet.getByText('yes: 3 % may be lost').click();
    await sheet.getByText('none', { exact: true }).click();
    await sheet.getByText('not known', { exact: true }).click();
    await act(sheet.getByRole('button', { name: 'Put it in' }));
    await sheet.waitFor({ state: 'detached' });
    await page.getByText(/8 circuits looked at: 2 faults that can burn/).waitFor();
    await page
      .getByText(/The lead has no fuse at the battery end/)
      .first()
      .waitFor();

    await act(page.getByRole('button', { name: 'Change: Stern light' }));
    await act(sheet.getByRole('button', { name: 'Take it out' }));
    await sheet.waitFor({ state: 'detached' });
    await page.getByText(/7 circuits looked at/).waitFor();
    await act(page.getByRole('button', { name: /^Undo:/ }));
    await page.getByText(/8 circuits looked at/).waitFor();
  });

  it('what stands at the terminal and on the charger’s lead is said, and then looked at', async () => {
    const page = await opened(size);
    const sheet = page.getByRole('dialog');
    await page.getByText(/2 things not entered/).waitFor();
    await act(page.getByRole('button', { name: 'What stands at its terminal' }));
    await sheet.getByRole('combobox', { name: /main fuse/ }).selectOption({ label: 'bolted strip' });
    await act(sheet.getByRole('button', { name: 'Keep' }));
    await sheet.waitFor({ state: 'detached' });
    await act(page.getByRole('button', { name: 'Change: Charger on the bench' }));
    await sheet.getByText('none', { exact: true }).click();
    await act(sheet.getByRole('button', { name: 'Keep' }));
    await sheet.waitFor({ state: 'detached' });
    await page.getByText('7 circuits looked at: 2 faults that can burn.').waitFor();
  });

  it('the wire and fuse for a new outlet are found, put in the book, and made a job with what is to get', async () => {
    const page = await opened(size);
    await act(page.getByRole('link', { name: 'Wire and fuse for a new outlet' }));
    await page.getByRole('heading', { level: 1, name: 'Wire and fuse for a new outlet' }).waitFor();
    await act(page.getByRole('button', { name: 'Find the wire and fuse' }));
    await page.getByText('Say whether its volts matter.').waitFor();
    await page.getByRole('textbox', { name: 'What will hang on it' }).fill('Radio');
    await page.getByText('amperes', { exact: true }).click();
    await page.getByRole('textbox', { name: /^Draws/ }).fill('2');
    await page.getByRole('textbox', { name: /^The way, one way/ }).fill('4,5');
    await page.getByText('Counted there and back: 9 m.').waitFor();
    await page.getByText('yes: 3 % may be lost').click();
    await page.getByRole('textbox', { name: /^The fuse can stand/ }).fill('150');
    await act(page.getByRole('button', { name: 'Find the wire and fuse' }));
    // IEC 60228 class 5 tinned at 30 °C: 1 mm² loses 0.37 V, 1.5 mm² 0.26 V, and 3 % of 12 V is 0.36 V
    const answer = page.getByRole('heading', { level: 2, name: '1.5 mm² (16 AWG) and a 3 A fuse' });
    await answer.waitFor();
    await expect.poll(() => answer.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.getByText(/^By volts lost 1\.5 mm², by current 0\.75 mm²/).waitFor();
    await page.getByText(/It must break the 1900 A/).waitFor();
    await page.getByText(/licensed electrician/).waitFor();
    await page.getByText('How it is worked out').click();
    await page.getByText(/What it may carry: Iz/).waitFor();
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    await act(page.getByRole('button', { name: 'Put it in as a circuit' }));
    await page.getByText('Choose when it is on.').waitFor();
    await page.getByText('hours a day', { exact: true }).click();
    await page.getByRole('textbox', { name: /^Hours a day/ }).fill('3');
    await act(page.getByRole('button', { name: 'Put it in as a circuit' }));
    await page.getByText('Radio is in the book as a circuit.').waitFor();
    await act(page.getByRole('button', { name: /^Make the job/ }));
    await act(page.getByRole('link', { name: 'See the job' }));
    await page.getByRole('heading', { level: 1, name: 'Wire Radio' }).waitFor();
    await page.getByText('Run the wire', { exact: true }).waitFor();

    await page.goto(`${inject('address')}#/stores`);
    // how much of it stands beside its name, not in it
    await page
      .getByText(/^Twin cable, 1\.5 mm² \(16 AWG\)/)
      .first()
      .waitFor();
    await page.getByText('4.5 m').first().waitFor();
    await page.goto(`${inject('address')}#/boat/circuits`);
    const drawn = page.getByRole('figure', { name: /circuits of House battery, drawn/ });
    await drawn.getByRole('button', { name: /^Radio/ }).waitFor();
    // sound as it was put in: the demo's own fault is the only one still
    await page.getByText(/8 circuits looked at: 1 fault that can burn/).waitFor();
  });
});
