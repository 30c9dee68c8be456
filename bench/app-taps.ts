/**
 * Taps in the built app at a 4× slower CPU: from the finger until the next picture is painted, as the browser's own Event
 * Timing tells it (W3C Event Timing: `duration`, start of the event to the paint after it, rounded to 8 ms).
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { phone } from '../apps/web/e2e/browser.ts';
import { appTimeRow, inServedApp } from './app.ts';

const slower = 4;
const times = 5;
const budget_ms = 100;

interface Tap {
  readonly what: string;
  /** address of the place the tap is made on */
  readonly at: string;
  /** taps made before the one that is timed */
  readonly before?: (page: Page) => Promise<void>;
  readonly tap: (page: Page) => Locator;
  /** pressed on it instead of a tap */
  readonly key?: string;
}

const ofBattery = async (page: Page) => {
  await page.getByRole('link', { name: /House battery/ }).click();
  await page.locator('.battery-full').waitFor();
  // all it works out in its Worker is there
  await page.getByText(/Lasts the night in/).waitFor();
};
const ofCircuits = async (page: Page) => {
  await page
    .getByRole('link', { name: /Circuits/ })
    .first()
    .click();
  await page.locator('.circuits-drawing').first().waitFor();
};
const ofPlan = async (page: Page) => {
  await page.locator('.days-block').first().waitFor({ timeout: 30_000 });
};
const slider = (page: Page) => page.getByRole('slider').first();

const taps: readonly Tap[] = [
  { what: 'a job of the list', at: '#/work', tap: (page) => page.locator('.work-group a.line-row').first() },
  { what: 'Days, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/days"]').first() },
  { what: 'Boat, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/boat"]').first() },
  {
    what: 'a step in the plan',
    at: '#/days',
    before: ofPlan,
    tap: (page) => page.locator('.days-block').first(),
  },
  { what: 'the battery', at: '#/boat', tap: (page) => page.getByRole('link', { name: /House battery/ }) },
  {
    what: 'Read the volts',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.getByRole('button', { name: 'Read the volts' }),
  },
  {
    what: 'how the battery is worked out',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.getByRole('button', { name: 'How all this is worked out' }),
  },
  {
    what: 'a load test',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.getByRole('button', { name: 'Enter a load test' }),
  },
  { what: 'the circuits', at: '#/boat', tap: (page) => page.getByRole('link', { name: /Circuits/ }).first() },
  {
    what: 'a circuit',
    at: '#/boat',
    before: ofCircuits,
    tap: (page) => page.getByRole('button', { name: /^Change/ }).first(),
  },
  { what: 'the load paths', at: '#/boat', tap: (page) => page.getByRole('link', { name: /^Load paths/ }) },
  {
    what: 'a part of a load path',
    at: '#/boat/loads/path/rode',
    tap: (page) => page.getByRole('figure').first().getByRole('button').nth(2),
  },
  { what: 'the wind on a load path', at: '#/boat/loads/path/rode', tap: slider, key: 'ArrowRight' },
  {
    what: 'how the board’s wire is worked out',
    at: '#/boat/loads/hoist',
    tap: (page) => page.getByRole('button', { name: /^Most in the wire/ }),
  },
  { what: 'the board moved', at: '#/boat/loads/hoist', tap: slider, key: 'ArrowLeft' },
  { what: 'the wind on a rode', at: '#/boat/loads/rode', tap: slider, key: 'ArrowRight' },
  { what: 'the mast moved', at: '#/boat/loads/mast', tap: slider, key: 'ArrowRight' },
];

/** A row a tap: median and worst of five, each on a page loaded anew. */
export const tapTimes = (): Promise<string[]> => inServedApp(tapRows);

async function tapRows(browser: Browser, address: string): Promise<string[]> {
  const context = await browser.newContext({ viewport: phone, hasTouch: true });
  const first = await context.newPage();
  await first.goto(address);
  await first.locator('.work-group a.line-row').first().waitFor();
  await first.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await first.close();
  const rows: string[] = [];
  for (const tap of taps) {
    const took: number[] = [];
    for (let n = 0; n < times; n++) {
      const page = await context.newPage();
      page.setDefaultTimeout(20_000);
      took.push(await answered(page, address, tap));
      await page.close();
    }
    took.sort((a, b) => a - b);
    rows.push(appTimeRow(tap.what, took[Math.floor(times / 2)]!, took[times - 1]!, budget_ms, 'ms'));
  }
  await context.close();
  return rows;
}

/** From the tap until what it changed is painted: the longest of the events the finger made. [ms] */
async function answered(page: Page, address: string, { at, before, tap, key }: Tap): Promise<number> {
  await page.goto(address + at);
  await page.locator('main h1').waitFor();
  await before?.(page);
  // what loads ahead has come, as it has for a keeper who looks before tapping
  await page.waitForTimeout(1500);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.evaluate(`
    window.eventTimes = [];
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (entry.interactionId) window.eventTimes.push(entry.duration);
    }).observe({ type: 'event', durationThreshold: 16 });
  `);
  const target = tap(page);
  await inSight(target);
  await page.waitForTimeout(200);
  if (key === undefined) await target.tap();
  else await target.press(key);
  await page.waitForTimeout(1200);
  const durations = (await page.evaluate('window.eventTimes')) as number[];
  return Math.max(16, ...durations);
}

/** Scrolls to it. A plan that gets better while one looks draws its steps anew: then it is looked for again. */
async function inSight(target: Locator): Promise<void> {
  for (let tries = 4; ; tries--) {
    try {
      return await target.evaluate((element) => element.scrollIntoView({ block: 'center', behavior: 'instant' }));
    } catch (gone) {
      if (tries === 0) throw gone;
    }
  }
}
