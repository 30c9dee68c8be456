/**
 * Taps in the built app at a 4× slower CPU: from the finger until the picture that answers it is painted. It is the longer
 * of what the browser's own Event Timing tells (W3C Event Timing: `duration`, start of the event to the paint after it,
 * rounded to 8 ms) and of the time until a picture shows what the tap asked for: another heading of the page, the heading
 * of a sheet, another figure beside the slider, or what is named with the tap. A picture without it is no answer.
 *
 * On a bare page, a button of which changes the heading with nothing else to do, this comes to some 26 ms. What the measure
 * leaves out, and why, is in `decisions/0018-what-a-tap-costs.md`.
 */
import type { Browser, CDPSession, Locator, Page } from 'playwright-core';
import type { Book } from '#boat-book';
import { instantAt } from '#units';
import { phone } from '../apps/web/e2e/browser.ts';
import { appTimeRow, inServedApp } from './app.ts';

const slower = 4;
const times = 5;
const budget_ms = 100;
/** how long the finger is on the glass: a tap of no time at all would have what is done as it comes down waited for. [ms] */
const onGlass_ms = 60;

interface Tap {
  readonly what: string;
  /** address of the place the tap is made on */
  readonly at: string;
  /** taps made before the one that is timed */
  readonly before?: (page: Page) => Promise<void>;
  readonly tap: (page: Page) => Locator;
  /** pressed on it instead of a tap */
  readonly key?: string;
  /** what the tap changes, where that is no heading: a selector */
  readonly shows?: string;
}

const ofJob = async (page: Page) => {
  await page.locator('.work-group a.line-row').first().click();
  await page.locator('.job-step').first().waitFor();
};
const ofTick = async (page: Page) => {
  await ofJob(page);
  await page
    .getByRole('button', { name: /^Tick: / })
    .first()
    .click();
  await page.getByRole('button', { name: 'Tick it' }).waitFor();
};
const ofCarryDown = async (page: Page) => {
  await page
    .getByRole('link', { name: /^Carry down/ })
    .first()
    .click();
  await page
    .locator('[data-plan-state="settled"] .carry-thing, [data-plan-state="stopped"] .carry-thing')
    .first()
    .waitFor();
};
/** After so many steps done and things ticked nothing may be left to carry: then one is put back. */
const ofSomethingToCarry = async (page: Page) => {
  await ofCarryDown(page);
  const things = page.locator('.carry-thing input');
  const open = page.locator('.carry-thing input:not(:checked)');
  if ((await open.count()) > 0) return;
  await things.first().click();
  await open.first().waitFor();
};
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
const ofGo = async (page: Page) => {
  // what the outings' answers look at and wait for is there: until then what stands below it moves
  await page.locator('.go-sum').first().waitFor();
  await page.locator('.go-sum[data-looking="true"]').first().waitFor({ state: 'detached' });
  await page.locator('.go-sum + p.small').first().waitFor({ state: 'detached' });
};
const ofDues = async (page: Page) => {
  await page.getByRole('link', { name: /^What falls due/ }).click();
  await page.locator('.dues-sides .line-row').first().waitFor();
};
const ofMorning = async (page: Page) => {
  await page.locator('.morning-line').first().waitFor();
};
const ofStepInHand = async (page: Page) => {
  await onTheDay(page);
  await page.getByRole('link', { name: 'Now: the step in hand' }).click();
  await page.locator('.days-answers').first().waitFor();
};
const ofStepDone = async (page: Page) => {
  await ofStepInHand(page);
  await page.getByRole('button', { name: 'Done', exact: true }).first().click();
  await page
    .getByRole('button', { name: /plan the rest$/ })
    .first()
    .waitFor();
};
const ofReading = async (page: Page) => {
  await ofBattery(page);
  await page.getByRole('button', { name: 'Read the volts' }).click();
  await page.getByRole('textbox', { name: /^Volts/ }).fill('12.6');
  // how it was read; without it the sheet refuses, and nothing is kept
  await page.getByRole('dialog').getByText('rested', { exact: true }).click();
};
/** The clock of the page at ten on the first job day of the demo, with a plan of it there. */
const onTheDay = async (page: Page) => {
  const book = (await page.evaluate(() => globalThis.fettleBook!.snapshot().book)) as Book;
  const [day] = Object.values(book.jobDays).sort((a, b) => a.date.localeCompare(b.date));
  // the date alone: a clock set by the test would answer for the timers and pictures that are timed, too
  await page.addInitScript(`{
    const ahead_ms = ${instantAt(day!.date, '10:00', book.places[day!.place]!.timeZone)} - Date.now();
    const Now = Date;
    globalThis.Date = class extends Now {
      constructor(...parts) {
        if (parts.length > 0) super(...parts);
        else super(Now.now() + ahead_ms);
      }
      static now() {
        return Now.now() + ahead_ms;
      }
    };
  }`);
  await page.goto(page.url().replace(/#.*/, '#/days/plan'));
  await page.reload();
  await ofPlan(page);
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor();
};
const ofMorningOpened = async (page: Page) => {
  await ofGo(page);
  await page
    .getByRole('link', { name: /^Morning lists/ })
    .first()
    .click();
  await ofMorning(page);
};
const afterMorningLine = async (page: Page) => {
  await ofMorningOpened(page);
  const line = page.locator('main h1');
  const first = (await line.textContent()) ?? '';
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await line.filter({ hasNotText: first }).waitFor();
};
/** a sheet or panel that was kept is out of sight; what it changed follows */
const kept = '[data-asked]';
const slider = (page: Page) => page.getByRole('slider').first();

const taps: readonly Tap[] = [
  { what: 'a job of the list', at: '#/work', tap: (page) => page.locator('.work-group a.line-row').first() },
  { what: 'Days, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/days"]').first() },
  { what: 'Stores, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/stores"]').first() },
  { what: 'Go, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/go"]').first() },
  {
    what: 'Work, from Boat',
    at: '#/boat',
    tap: (page) => page.locator('nav a[href*="#/work"]').first(),
  },
  {
    what: 'the jobs by zone',
    at: '#/work',
    tap: (page) => page.getByText('by zone', { exact: true }),
    // the choice marked; the list in its order follows
    shows: '.field-picks input:checked + span',
  },
  { what: 'putting in a job', at: '#/work', tap: (page) => page.getByRole('link', { name: 'Put in a job' }) },
  {
    what: 'a step to tick',
    at: '#/work',
    before: ofJob,
    tap: (page) => page.getByRole('button', { name: /^Tick: / }).first(),
  },
  {
    what: 'a step ticked',
    at: '#/work',
    before: ofTick,
    tap: (page) => page.getByRole('button', { name: 'Tick it' }),
    shows: kept,
  },
  { what: 'the recipes', at: '#/work', tap: (page) => page.locator('main a[href="#/work/recipes"]') },
  {
    what: 'a recipe',
    at: '#/work/recipes',
    tap: (page) => page.locator('main a[href^="#/work/recipe/"]').first(),
  },
  { what: 'Boat, from Work', at: '#/work', tap: (page) => page.locator('nav a[href*="#/boat"]').first() },
  {
    what: 'a step in the plan',
    at: '#/days',
    before: ofPlan,
    tap: (page) => page.locator('.days-block').first(),
  },
  {
    what: 'a job day',
    at: '#/days',
    before: ofPlan,
    tap: (page) => page.locator('.days-list a[href^="#/days/day/"]').first(),
  },
  {
    what: 'a day sheet to print',
    at: '#/days',
    before: ofPlan,
    tap: (page) => page.getByRole('link', { name: 'Day sheet' }).first(),
  },
  {
    what: 'the step in hand',
    at: '#/days',
    before: onTheDay,
    tap: (page) => page.getByRole('link', { name: 'Now: the step in hand' }),
  },
  {
    what: 'an answer on the day',
    at: '#/days',
    before: ofStepInHand,
    tap: (page) => page.getByRole('button', { name: 'Done', exact: true }).first(),
    shows: '.days-panel',
  },
  {
    what: 'the step in hand done',
    at: '#/days',
    before: ofStepDone,
    tap: (page) => page.getByRole('button', { name: /plan the rest$/ }).first(),
    shows: kept,
  },
  {
    what: 'the weather ahead',
    at: '#/work',
    before: ofJob,
    tap: (page) => page.locator('main a[href="#/days/weather"]').first(),
  },
  {
    what: 'what to carry down',
    at: '#/stores',
    tap: (page) => page.getByRole('link', { name: /^Carry down/ }).first(),
  },
  {
    what: 'a thing carried down',
    at: '#/stores',
    before: ofSomethingToCarry,
    tap: (page) => page.locator('.carry-thing input:not(:checked)').first(),
  },
  { what: 'what the tins say', at: '#/stores', tap: (page) => page.getByRole('link', { name: 'What the tins say' }) },
  {
    what: 'what to get, to print',
    at: '#/stores',
    tap: (page) => page.getByRole('link', { name: 'The list, to print or send' }),
  },
  { what: 'what falls due', at: '#/go', tap: (page) => page.getByRole('link', { name: /^What falls due/ }) },
  {
    what: 'a due',
    at: '#/go',
    before: ofDues,
    tap: (page) => page.locator('main a[href^="#/go/dues/"]').first(),
  },
  {
    what: 'a line of the lay-up ticked',
    at: '#/go/season/lay-up',
    before: async (page) => page.locator('.season input').first().waitFor(),
    tap: (page) => page.locator('.season input:not(:checked)').first(),
  },
  {
    what: 'the morning lists',
    at: '#/go',
    before: ofGo,
    tap: (page) => page.getByRole('link', { name: /^Morning lists/ }).first(),
  },
  {
    what: 'a morning list to print',
    at: '#/go/morning/outer-bar/launch',
    before: ofMorning,
    tap: (page) => page.locator('main a[href$="/launch/print"]'),
  },
  {
    what: 'an outing’s sheet to print',
    at: '#/go',
    before: ofGo,
    tap: (page) => page.getByRole('link', { name: /^Sheet to print/ }).first(),
  },
  {
    what: 'a morning line done',
    at: '#/go',
    before: ofMorningOpened,
    tap: (page) => page.getByRole('button', { name: 'Done', exact: true }),
  },
  {
    what: 'a morning line taken back',
    at: '#/go',
    before: afterMorningLine,
    tap: (page) => page.locator('.shell-state').getByRole('button', { name: /^Undo/ }).first(),
  },
  {
    what: 'a morning line ticked in its list',
    at: '#/go',
    before: ofMorningOpened,
    tap: (page) => page.locator('.morning-line input:not(:checked)').last(),
  },
  {
    what: 'Go, from what falls due',
    at: '#/go',
    before: ofDues,
    tap: (page) => page.locator('main a[href="#/go"]').first(),
  },
  {
    what: 'Boat, from the battery',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.locator('main a[href="#/boat"]').first(),
  },
  { what: 'the battery', at: '#/boat', tap: (page) => page.getByRole('link', { name: /House battery/ }) },
  {
    what: 'Read the volts',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.getByRole('button', { name: 'Read the volts' }),
  },
  {
    what: 'the volts kept',
    at: '#/boat',
    before: ofReading,
    tap: (page) => page.getByRole('button', { name: 'Keep it' }),
    shows: kept,
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
  {
    what: 'the battery’s card to print',
    at: '#/boat',
    before: ofBattery,
    tap: (page) => page.getByRole('link', { name: 'The card to print' }),
  },
  { what: 'the circuits', at: '#/boat', tap: (page) => page.getByRole('link', { name: /Circuits/ }).first() },
  {
    what: 'a circuit',
    at: '#/boat',
    before: ofCircuits,
    tap: (page) => page.getByRole('button', { name: /^Change/ }).first(),
  },
  { what: 'the log', at: '#/boat', tap: (page) => page.locator('main a[href="#/boat/log"]').first() },
  {
    what: 'a zone',
    at: '#/boat',
    tap: (page) => page.getByRole('region', { name: 'Zones' }).getByRole('link').first(),
  },
  { what: 'the trailer', at: '#/boat', tap: (page) => page.locator('main a[href="#/boat/trailer"]') },
  { what: 'the load paths', at: '#/boat', tap: (page) => page.getByRole('link', { name: /^Load paths/ }) },
  { what: 'the stays', at: '#/boat', tap: (page) => page.getByRole('link', { name: /^Stays/ }) },
  { what: 'the mast', at: '#/boat', tap: (page) => page.getByRole('link', { name: /^Mast up and down/ }) },
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

/**
 * A row a tap: median and worst of five, each on a page loaded anew.
 *
 * @param named  only the taps whose name has this in it
 * @throws {RangeError} no tap has
 */
export function tapTimes(named = ''): Promise<string[]> {
  const asked = taps.filter(({ what }) => what.includes(named));
  if (asked.length === 0)
    throw new RangeError(`no tap is called '${named}'; there are: ${taps.map(({ what }) => what).join('; ')}`);
  return inServedApp((browser, address) => tapRows(browser, address, asked));
}

async function tapRows(browser: Browser, address: string, asked: readonly Tap[]): Promise<string[]> {
  const context = await browser.newContext({ viewport: phone, hasTouch: true });
  const first = await context.newPage();
  await first.goto(address);
  await first.locator('.work-group a.line-row').first().waitFor();
  await first.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await first.close();
  const rows: string[] = [];
  for (const tap of asked) {
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

/**
 * What the keeper sees of the answer: the page's heading, the heading of the sheet on top, the figure of the slider, how
 * many lines are ticked, and what is named with the tap.
 */
const seen = (shows: string | undefined) => `[
  ${shows === undefined ? null : `document.querySelector(${JSON.stringify(shows)})?.textContent`},
  document.querySelector('main h1')?.textContent,
  [...document.querySelectorAll('dialog[open] h2')].at(-1)?.textContent,
  document.activeElement?.getAttribute('aria-valuetext'),
  document.querySelectorAll('main input[type="checkbox"]:checked').length,
]`;

/**
 * Notes the events the finger made, and when a picture is painted that shows another answer than stood there before. The
 * clock is read in the task right after that picture: a timer would stand behind what the app does once it is painted.
 */
const watch = (shows: string | undefined) => `
  window.eventTimes = [];
  window.answered_ms = null;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (entry.interactionId) window.eventTimes.push(entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 });
  let from = null;
  for (const type of ['pointerup', 'keydown']) addEventListener(type, (event) => { from ??= event.timeStamp; }, true);
  const before = ${seen(shows)};
  // a place left empty is no answer
  const answer = () => ${seen(shows)}.some((shown, at) => shown && shown !== before[at]);
  const painted = () => scheduler.postTask(() => { window.answered_ms ??= performance.now() - from; }, { priority: 'user-blocking' });
  const changes = new MutationObserver(() => {
    if (from === null || !answer()) return;
    // what is taken back before the picture was no answer
    requestAnimationFrame(() => {
      if (!answer()) return;
      changes.disconnect();
      painted();
    });
  });
  changes.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
  // a box is ticked without a change of the document; the app may yet take it back before the picture
  addEventListener('change', () => requestAnimationFrame(() => { if (from !== null && answer()) painted(); }), true);
`;

/** From the tap until what it asked for is painted. [ms] */
async function answered(page: Page, address: string, { what, at, before, tap, key, shows }: Tap): Promise<number> {
  await page.goto(address + at);
  await page.locator('main h1').waitFor();
  await before?.(page);
  // what loads ahead has come, as it has for a keeper who looks before tapping
  await loadedAhead(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  const target = tap(page);
  await inSight(target);
  if (key !== undefined) await target.focus();
  await page.evaluate(watch(shows));
  await page.waitForTimeout(200);
  // the bare touch and the bare key: what a test looks at as it taps is no work of the app's
  if (key === undefined) await touch(devtools, await middleOf(target));
  else await page.keyboard.press(key);
  let answered_ms: number | null = null;
  for (let tries = 12; answered_ms === null; tries--) {
    if (tries === 0) throw new Error(`${what}: the tap was not answered`);
    await page.waitForTimeout(1200);
    answered_ms = (await page.evaluate('window.answered_ms')) as number | null;
  }
  const durations = (await page.evaluate('window.eventTimes')) as number[];
  return Math.max(16, answered_ms, ...durations);
}

/** Waits till no more of the program has come for a second; at most ten. */
async function loadedAhead(page: Page): Promise<void> {
  const come = () => page.evaluate(() => performance.getEntriesByType('resource').length);
  for (let before = -1, seconds = 0; seconds < 10; seconds++) {
    const now = await come();
    if (now === before) return;
    before = now;
    await page.waitForTimeout(1000);
  }
}

async function touch(devtools: CDPSession, [x, y]: readonly [x: number, y: number]): Promise<void> {
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await new Promise((lifted) => setTimeout(lifted, onGlass_ms));
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

async function middleOf(target: Locator): Promise<[x: number, y: number]> {
  const box = await target.boundingBox();
  if (box === null) throw new Error('what is to be tapped is not drawn');
  return [box.x + box.width / 2, box.y + box.height / 2];
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
