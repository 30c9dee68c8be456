/** The keeper's own way through Work, Boat, Stores and Go on the demo boat, by touch and by keyboard alone. */
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

async function opened(size: typeof phone | typeof laptop, at = '#/work'): Promise<Page> {
  context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(inject('address') + at);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
  return page;
}

const saved = (page: Page) => page.getByText('saved on this device').waitFor();

describe('on a phone, by touch', () => {
  it('a jury rig past its trust is the first thing seen, with its mark and its words', async () => {
    const page = await opened(phone);
    const first = page.locator('main ul li').first();
    await expect.poll(() => first.textContent()).toMatch(/past its trust/);
    await expect.poll(() => first.locator('svg.mark-danger').count()).toBe(1);
    const box = await first.boundingBox();
    expect(box && box.y + box.height).toBeLessThan(phone.height - 120);
  });

  it('a job goes in from one line, shows what was understood, and its step can be changed', async () => {
    const page = await opened(phone);
    await page.getByRole('link', { name: 'Put in a job' }).tap();
    // the line can be typed at once
    await page.locator('textarea:focus').waitFor();
    // the list that was left goes once the page is there
    await page.locator('.work-group').first().waitFor({ state: 'detached' });
    const line = page.getByRole('textbox', { name: /one line/ });
    await line.fill('tiller bolt is bent, change it, 25 min, mast down');
    await page.getByText('from ‘25 min’').waitFor();
    await expect.poll(() => page.getByRole('textbox', { name: /Hands-on, likely/ }).inputValue()).toBe('25');

    // what happens if it is left was not said: it is asked for, not made up
    await page.getByRole('button', { name: 'Put it in' }).tap();
    await page.getByText('Choose what happens if it is left.').waitFor();
    expect(page.url()).toContain('put-in');
    await page.getByText('stops sailing', { exact: true }).tap();
    await page.getByRole('button', { name: 'Put it in' }).tap();

    await page.getByRole('heading', { level: 1, name: /tiller bolt/i }).waitFor();
    await page.getByText('Stops sailing if it is left').waitFor();
    await page.getByText('about 25 min').waitFor();
    await page.locator('.job-step').getByText('Mast down').waitFor();

    await page.getByRole('button', { name: /^Change step 1/ }).tap();
    const sheet = page.getByRole('dialog', { name: 'Change the step' });
    await sheet.getByRole('textbox', { name: /Likely/ }).fill('40');
    await sheet.getByRole('button', { name: 'Keep' }).tap();
    // the high figure is now below the likely one: refused at its field, and what was typed is still there
    await sheet.getByText(/less than the likely 40 min/).waitFor();
    await expect.poll(() => sheet.getByRole('textbox', { name: /Likely/ }).inputValue()).toBe('40');
    await sheet.getByRole('textbox', { name: /High/ }).fill('55');
    await sheet.getByRole('button', { name: 'Keep' }).tap();
    await sheet.waitFor({ state: 'detached' });
    await page.getByText('about 40 min').waitFor();

    await saved(page);
    await page.reload();
    await page.getByText('about 40 min').waitFor();
    await page.getByText('between 25 and 55 min').waitFor();
  });

  it('a step is ticked with the minutes really spent, and a removal is undone', async () => {
    const page = await opened(phone);
    await page.locator('.work-group a.line-row').first().tap();
    const title = (await page.locator('.job-step h3').first().textContent()) ?? '';
    await page.getByRole('button', { name: `Tick: ${title}` }).tap();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('textbox', { name: /Minutes really spent/ }).fill('37');
    await sheet.getByRole('button', { name: 'Tick it' }).tap();
    await page.getByText(/Done .*, 37 min spent/).waitFor();

    const before = await page.locator('.job-step').count();
    await page.getByRole('button', { name: /^Change step 2/ }).tap();
    await page.getByRole('dialog').getByRole('button', { name: 'Take it out' }).tap();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('.job-step').count()).toBe(before - 1);
    await page.getByRole('button', { name: /^Undo:/ }).tap();
    await page
      .locator('.job-step')
      .nth(before - 1)
      .waitFor();
  });

  it('minutes really spent tune the next step of the kind, shown before and after', async () => {
    const page = await opened(phone);
    await page.locator('.work-group a.line-row').first().tap();
    const title = (await page.locator('.job-step h3').first().textContent()) ?? '';
    await page.getByRole('button', { name: `Tick: ${title}` }).tap();
    const sheet = page.getByRole('dialog');
    // longer than four times any estimate of the demo's: counts as four times, 4^(1/5) = 1.32
    await sheet.getByRole('textbox', { name: /Minutes really spent/ }).fill('1200');
    await sheet.getByRole('button', { name: 'Tick it' }).tap();
    await page.getByText(/Done .*, 1200 min spent|Done .*, 20 h spent/).waitFor();
    await page.getByRole('button', { name: 'Add a step' }).tap();
    await sheet.getByRole('textbox', { name: 'What is done' }).fill(`${title.split(' ')[0]} the other`);
    for (const [end, minutes] of [
      ['Low', '20'],
      ['Likely', '30'],
      ['High', '50'],
    ] as const)
      await sheet.getByRole('textbox', { name: new RegExp(end) }).fill(minutes);
    await sheet.getByText(/^Counted as 26, 40 and 66 min: what one step like it/).tap();
    await sheet.getByText('20, 30, 50 min become 26, 40, 66 min.').waitFor();
  });

  it('what was typed is not lost by closing a sheet with a slip of the thumb', async () => {
    const page = await opened(phone, '#/stores');
    await page.getByRole('button', { name: 'Add a thing' }).tap();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('textbox', { name: /What it is/ }).fill('Split pin 3 mm');
    await sheet.getByRole('button', { name: 'Close' }).tap();
    await sheet.getByText('What you typed is not in the book yet.').waitFor();
    await sheet.getByRole('button', { name: 'Go on with it' }).tap();
    await expect.poll(() => sheet.getByRole('textbox', { name: /What it is/ }).inputValue()).toBe('Split pin 3 mm');
    await sheet.getByText('on hand', { exact: true }).tap();
    await sheet.getByRole('button', { name: 'Put it in' }).tap();
    await sheet.waitFor({ state: 'detached' });
    await page.getByText('Split pin 3 mm', { exact: true }).waitFor();
  });

  it('no screen is wider than the phone', async () => {
    const page = await opened(phone);
    for (const at of ['#/work', '#/work/put-in', '#/boat', '#/stores', '#/go']) {
      await page.goto(inject('address') + at);
      await page.locator('main h1').first().waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), at).toBeLessThanOrEqual(0);
    }
  });
});

describe('on a laptop, by keyboard alone', () => {
  /** Tabs on until something with this name has the focus. */
  const tabTo = async (page: Page, name: RegExp) => {
    for (let presses = 0; presses < 120; presses++) {
      await page.keyboard.press('Tab');
      const focused = await page.evaluate(() => {
        const element = document.activeElement;
        const label = element instanceof HTMLInputElement ? (element.labels?.[0]?.textContent ?? '') : '';
        return `${element?.getAttribute('aria-label') ?? ''} ${label} ${element?.textContent ?? ''}`.trim();
      });
      if (name.test(focused)) return;
    }
    throw new Error(`nothing called ${name} was reached with Tab`);
  };

  it('goes from the list to a job, changes it, and comes back', async () => {
    const page = await opened(laptop);
    await tabTo(page, /Renew the masthead sheave|sheave/i);
    await page.keyboard.press('Enter');
    await page.locator('.job h1').waitFor();
    await tabTo(page, /^Change$/);
    await page.keyboard.press('Enter');
    const sheet = page.getByRole('dialog', { name: 'Change the job' });
    await sheet.waitFor();
    await tabTo(page, /What is to be done/);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('Masthead sheave: new one');
    await page.keyboard.press('Enter');
    await sheet.waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('.job h1').textContent()).toBe('Masthead sheave: new one');
    // the focus is back where the sheet was opened from
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Change');
    await page.keyboard.press('Escape');
    await tabTo(page, /Work/);
  });

  it('finds every zone in the picture by name, and opens what is to be done there', async () => {
    const page = await opened(laptop, '#/boat');
    const zones = await page.locator('section[aria-labelledby="boat-zones"] .line-title').allTextContents();
    expect(zones.length).toBeGreaterThan(8);
    for (const zone of zones)
      expect(
        await page
          .locator('.picture a')
          .evaluateAll(
            (links, name) => links.filter((link) => link.getAttribute('aria-label')?.startsWith(`${name}:`)).length,
            zone,
          ),
        zone,
      ).toBe(1);
    await tabTo(page, /^Cockpit:/);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Varnish the coamings' }).waitFor();
  });

  it('the picture follows how she stands', async () => {
    const page = await opened(laptop, '#/boat');
    await page.getByLabel(/drawn to scale: mast down/).waitFor();
    await page.getByRole('group', { name: 'Mast', exact: true }).getByText('up', { exact: true }).click();
    await page.getByLabel(/drawn to scale: mast up/).waitFor();
    // the names of the work lie over none of the others
    const boxes = await page
      .locator('.picture-text')
      .evaluateAll((texts) => texts.map((text) => text.getBoundingClientRect().toJSON() as DOMRect));
    expect(boxes.length).toBeGreaterThan(10);
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1))
        expect(a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 4 && b.top < a.bottom - 4).toBe(
          false,
        );
  });
});

describe("one's own book", () => {
  it('starts from the demo in one sheet, with zones and set-ups to begin with, and the demo is still there', async () => {
    const page = await opened(phone);
    await page.getByRole('button', { name: /own boat/ }).tap();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('button', { name: 'Start her book' }).tap();
    await sheet.getByText(/There is no figure here/).waitFor();
    for (const [label, text] of [
      [/Her name/, 'Sandpiper Too'],
      [/Length of the hull/, '5,2'],
    ] as const)
      await sheet.getByRole('textbox', { name: label }).fill(text);
    await sheet.getByText('a board that swings on a pin').tap();
    // she is drawn before anything is kept
    await sheet.getByRole('img', { name: /^Sandpiper Too as she is drawn so far, 5.2 m/ }).waitFor();
    await sheet.getByText(/^Guessed from her length.*mast 6.34 m/).waitFor();
    await sheet.getByRole('button', { name: 'Start her book' }).tap();
    await page.getByRole('heading', { level: 1, name: 'Sandpiper Too' }).waitFor();
    await page.getByRole('group', { name: 'mast', exact: true }).waitFor();
    await expect.poll(() => page.locator('section[aria-labelledby="boat-zones"] li').count()).toBe(11);
    await expect.poll(() => page.getByText('invented').count()).toBe(0);
    await saved(page);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Sandpiper Too' }).waitFor();
    await page
      .getByRole('button', { name: /^Open / })
      .first()
      .waitFor();
  });
});

describe('the boat file', () => {
  it('is given out and taken in again; one that is no boat file is refused in words and changes nothing', async () => {
    const page = await opened(laptop, '#/boat');
    const name = await page.locator('main h1').first().textContent();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the boat file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.fettle$/);
    const file = await download.path();
    const chooser = page.locator('input[type="file"]');
    await chooser.setInputFiles({
      name: 'x.fettle',
      mimeType: 'application/zip',
      buffer: Buffer.from('not a zip at all'),
    });
    await page.getByText('The file was not opened; nothing in your book has changed.').waitFor();
    await expect.poll(() => page.locator('main h1').first().textContent()).toBe(name);
    await chooser.setInputFiles(file);
    await page.getByText(/The file is open/).waitFor();
    await expect.poll(() => page.locator('main h1').first().textContent()).toBe(name);
  });
});
