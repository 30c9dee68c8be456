/** On the day: at 11:40 the filler takes an hour more and it rains; the rest is planned again, and a search can be stopped. */
import { mkdirSync, readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { type Book, readBoatFile, type Step, writeBoatFile } from '#boat-book';
import { problemFrom } from '#reckoning';
import { addDays, instantAt, localAt } from '#units';
import { type Problem, violations } from '#workplan';
import { demoBook } from '../../../examples/demo-book.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { pagesOf, seriousFaults } from './page-checks.ts';

const zone = 'Pacific/Auckland';
const pictures = 'screenshots/days';
const today = localAt(Date.now(), zone).day;
/** the first job day of the demo */
const jobDay = addDays(today, 2);
const at = (clock: string) => new Date(instantAt(jobDay, clock, zone));

let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe.each([
  ['390', phone],
  ['1280', laptop],
] as const)('at 11:40 in the rain, at %s px', (width, viewport) => {
  it('plans the rest again: what was done stays, what cures stays, nothing that must be dry is out in the rain', async () => {
    const before = morningBook();
    const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: zone, acceptDownloads: true });
    const page = await openBook(context, before);
    await page.clock.setFixedTime(at('11:40'));
    // on the day itself Days opens on the step in hand
    await page.goto(`${inject('address')}#/days`);
    await page.getByRole('heading', { level: 1, name: 'Fill the holes with thick epoxy' }).waitFor();
    await settled(page);
    await expect.poll(() => page.locator('.days-cure').textContent()).toMatch(/Sealant cures before she floats/);
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/now-${width}.png`, fullPage: true });

    await page.getByRole('button', { name: 'Took longer' }).click();
    await page.screenshot({ path: `${pictures}/now-longer-${width}.png`, fullPage: true });
    await page.getByRole('button', { name: '1 h', exact: true }).click();
    await page.getByText('expected done 12:40').waitFor();
    await page.getByRole('button', { name: 'Rain', exact: true }).click();
    expect(await seriousFaults(page)).toEqual([]);
    await page.screenshot({ path: `${pictures}/now-rain-${width}.png`, fullPage: true });
    await page.getByRole('button', { name: '15:00', exact: true }).click();
    await page.getByText('rain until 15:00').waitFor();
    await settled(page);
    await page.screenshot({ path: `${pictures}/now-replanned-${width}.png`, fullPage: true });
    await page.goto(`${inject('address')}#/days/plan`);
    await page.locator('.days-block').first().waitFor();
    await settled(page);
    await page.screenshot({ path: `${pictures}/plan-replanned-${width}.png`, fullPage: true });

    // what moved is said, and each of it is marked with where it stood
    const moved = page.getByRole('region', { name: 'What moved' });
    await moved.waitFor();
    const lead = await moved.locator('b').textContent();
    expect(lead).toMatch(/\d+ things? moved|[Ll]eft out now|[Ii]n now/);
    const told = Number(/(\d+) things? moved/.exec(lead ?? '')?.[1] ?? 0);
    await moved.locator('details').evaluateAll((all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true;
    });
    await expect.poll(() => moved.locator('li').count()).toBe(told);
    if (width === '1280') await expect.poll(() => page.locator('.days-block[data-moved="true"]').count()).toBe(told);
    for (const label of await page
      .locator('.days-block[data-moved="true"]')
      .evaluateAll((blocks) => blocks.map((block) => block.ariaLabel ?? '')))
      expect(label).toMatch(/moved from (\w+ )?\d\d:\d\d/);

    // read aloud or stepped through with the keyboard, the work comes in order of time
    for (const column of await page.locator('.days-column').all()) {
      const labels = await column.locator('.days-block').evaluateAll((blocks) => blocks.map((b) => b.ariaLabel ?? ''));
      const times = labels.map((label) => label.slice(0, 5));
      expect(times).toEqual([...times].sort());
    }
    expect(await seriousFaults(page)).toEqual([]);

    await page.goto(`${inject('address')}#/days/sheet/day-1`);
    await page.locator('.days-print').waitFor();
    await settled(page);
    const rows = await page.locator('.days-print tbody tr').count();
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await page.pdf({ format, path: `${pictures}/sheet-day-1-${format}.pdf` });
      if (rows <= 25) expect(pagesOf(pdf), `${rows} rows on ${format}`).toBe(1);
    }

    const after = await bookOf(page);
    const { problem, plan } = lastPlan(after);
    expect(violations(plan, problem)).toEqual([]);
    for (const id of ['drain-ring-1', 'drain-ring-2', 'drain-ring-3', 'shroud-plate-1', 'shroud-plate-2'])
      expect(after.steps[id]!.progress, id).toEqual(before.steps[id]!.progress);
    const minute = (clock: string) => (at(clock).getTime() - Date.parse(problem.startsAt)) / 60_000;
    expect(plan.waits.find((wait) => wait.step === 'drain-ring-3')).toMatchObject({ start: minute('09:15') });
    expect(plan.steps.find((step) => step.step === 'shroud-plate-3')).toMatchObject({
      start: minute('10:50'),
      finish: minute('12:40'),
    });
    expect(plan.waits.find((wait) => wait.step === 'shroud-plate-3')).toMatchObject({ start: minute('12:40') });
    for (const hour of [11, 12, 13, 14]) expect(problem.hours[minute(`${hour}:00`) / 60]!.rain).toBe(true);
    expect(dryWorkInTheRain(problem, plan)).toEqual([]);
    for (const step of plan.steps) if (step.day !== null) expect(step.start).toBeGreaterThanOrEqual(minute('11:40'));
    await context.close();
  });
});

describe('the drawing on a phone', () => {
  it('shows one day at a time, turned by tab, key and finger, with every word whole', async () => {
    const context = await browser.newContext({ viewport: phone, hasTouch: true, locale: 'en-GB', timezoneId: zone });
    // the second search does not come here: the first goes on alone, and nothing else is different
    await context.route(/beside-worker/, (route) => route.abort());
    const page = await context.newPage();
    await page.goto(`${inject('address')}#/days/plan`);
    await page.locator('.days-block').first().waitFor();
    await settled(page);
    const tabs = page.getByRole('tab');
    const shown = () => page.locator('.days-column h3').allTextContents();
    await expect.poll(() => tabs.count()).toBe(3);
    const first = await shown();
    expect(first).toHaveLength(1);
    await tabs.nth(1).click();
    const second = await shown();
    expect(second).not.toEqual(first);
    await page.keyboard.press('ArrowRight');
    const third = await shown();
    expect(third).not.toEqual(second);
    // the finger goes to where the day is on the glass: what stands over it may be long
    await page.locator('#days-columns').evaluate((columns) => columns.scrollIntoView({ block: 'start' }));
    await page.locator('#days-columns').evaluate(
      (columns) =>
        new Promise<void>((still) => {
          let top = Number.NaN;
          const look = (): void => {
            const now = columns.getBoundingClientRect().top;
            if (now === top) still();
            else requestAnimationFrame(look);
            top = now;
          };
          look();
        }),
    );
    const touch = await context.newCDPSession(page);
    const at = (x: number) => [{ x, y: phone.height / 2 }];
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(80) });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(200) });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(300) });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await page.locator('.days-column h3', { hasText: second[0]! }).waitFor();

    for (let i = 0; i < 3; i++) {
      await tabs.nth(i).click();
      const cut = await page
        .locator('.days-block')
        .evaluateAll((blocks) =>
          blocks
            .filter((b) => b.scrollHeight > b.clientHeight + 1 || b.scrollWidth > b.clientWidth + 1)
            .map((b) => b.textContent),
        );
      expect(cut).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
    }
    await context.close();
  });
});

describe('a long search', () => {
  it('says how far it is after a second, and stops with what it has when it is told to', async () => {
    const context = await browser.newContext({ viewport: laptop, locale: 'en-GB', timezoneId: zone });
    const page = await openBook(context, fourTimes(demoBook(today)));
    await page.goto(`${inject('address')}#/days/plan`);
    await page.locator('.days-block').first().waitFor();
    const stop = page.getByRole('button', { name: 'Stop and keep this' });
    await stop.waitFor();
    await page.screenshot({ path: `${pictures}/searching-1280.png` });
    // where there are two cores two searches go on
    if (await page.evaluate(() => navigator.hardwareConcurrency >= 2))
      await expect.poll(() => page.workers().filter((worker) => /beside-worker/.test(worker.url())).length).toBe(1);
    await stop.click();
    await page.locator('[data-plan-state="stopped"]').waitFor({ state: 'attached' });
    await expect.poll(() => page.locator('.days-verdict').textContent()).toMatch(/stopped early/i);
    await expect.poll(() => page.locator('.days-block').count()).toBeGreaterThan(10);
    await expect.poll(() => stop.count()).toBe(0);
    expect(Object.keys((await bookOf(page)).plans)).toHaveLength(1);
    await context.close();
  });
});

/** The demo on the morning of its first job day: a ring bedded and curing, the holes being filled since 10:50. */
function morningBook(): Book {
  const book = demoBook(today);
  const done = (from: string, to: string): Step['progress'] => ({
    kind: 'done',
    started: at(from).toISOString(),
    finished: at(to).toISOString(),
  });
  const progress: Record<string, Step['progress']> = {
    'drain-ring-1': done('08:15', '08:30'),
    'drain-ring-2': done('08:30', '08:50'),
    'drain-ring-3': done('08:50', '09:15'),
    'shroud-plate-1': done('09:40', '10:10'),
    'shroud-plate-2': done('10:10', '10:45'),
    'shroud-plate-3': {
      kind: 'under way',
      started: at('10:50').toISOString(),
      expected: at('11:50').toISOString(),
      hands: ['keeper'],
    },
  };
  return {
    ...book,
    id: 'a-morning',
    boat: { ...book.boat, name: 'Whimbrel' },
    setUps: { ...book.setUps, cover: { ...book.setUps.cover!, now: 'off' } },
    steps: Object.fromEntries(
      Object.entries(book.steps).map(([id, step]) => [id, { ...step, progress: progress[id] ?? step.progress }]),
    ),
  };
}

/** Four of every job, so that no search is over in a second. */
function fourTimes(book: Book): Book {
  const copies = [0, 1, 2, 3].map((n) => (id: string) => (n === 0 ? id : `${id}-again-${n}`));
  return {
    ...book,
    id: 'four-times',
    boat: { ...book.boat, name: 'Dunlin' },
    juryRigs: {},
    jobs: Object.fromEntries(
      copies.flatMap((as) =>
        Object.entries(book.jobs).map(([id, job]) => [as(id), { ...job, afterJobs: job.afterJobs.map(as) }]),
      ),
    ),
    steps: Object.fromEntries(
      copies.flatMap((as) =>
        Object.entries(book.steps).map(([id, step]) => [
          as(id),
          {
            ...step,
            job: as(step.job),
            follows: step.follows?.map((follow) => ({ ...follow, step: as(follow.step) })) ?? null,
          },
        ]),
      ),
    ),
  };
}

async function openBook(context: BrowserContext, book: Book): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject('address')}#/boat`);
  await page.locator('input[type="file"]').setInputFiles({
    name: 'morning.fettle',
    mimeType: 'application/zip',
    buffer: Buffer.from(writeBoatFile({ book })),
  });
  await page.getByRole('heading', { level: 1, name: book.boat.name }).waitFor();
  return page;
}

async function bookOf(page: Page): Promise<Book> {
  await page.goto(`${inject('address')}#/boat`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the boat file' }).click(),
  ]);
  const read = readBoatFile(readFileSync(await download.path()));
  if (read.kind !== 'book') throw new Error(`the boat file was not read: ${JSON.stringify(read)}`);
  return read.book;
}

/** The plan kept last with the problem it answers, made again from the book at the same minute. */
function lastPlan(book: Book) {
  const kept = Object.values(book.plans).at(-1);
  if (!kept) throw new Error('no plan was kept');
  const matter = problemFrom(book, { now: at('11:40').toISOString() });
  if (matter.kind !== 'problem') throw new Error(matter.words);
  expect(Date.parse(kept.startsAt)).toBe(Date.parse(matter.problem.startsAt));
  return { problem: matter.problem, plan: kept.plan };
}

function dryWorkInTheRain(problem: Problem, plan: ReturnType<typeof lastPlan>['plan']): string[] {
  return plan.steps.flatMap((planned) => {
    const step = problem.steps.find((one) => one.id === planned.step);
    const inside = problem.zones.find((one) => one.id === step?.zone)?.inside ?? false;
    if (!step?.needs.dry || inside || planned.day === null) return [];
    const wet = problem.hours.some(
      (hour, i) => hour.rain && !hour.sheltered && i * 60 < planned.finish && i * 60 + 60 > planned.start,
    );
    return wet ? [step.title] : [];
  });
}

async function settled(page: Page): Promise<void> {
  await page.locator('[data-plan-state="settled"], [data-plan-state="stopped"]').waitFor({ state: 'attached' });
}
