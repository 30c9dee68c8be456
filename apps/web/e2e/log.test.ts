/** The log on a phone: a job done is found again by its fitting; an entry put right; a paper kept and opened again. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, it } from 'vitest';
import { launchBrowser, phone } from './browser.ts';

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

async function opened(at: string): Promise<Page> {
  context = await browser.newContext({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(inject('address') + at);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
  return page;
}
const sheet = (page: Page) => page.locator('dialog[aria-busy="false"]');

it('a job done is found again in the log by its fitting, and with what it was bedded', async () => {
  const page = await opened('#/boat');
  await page.getByRole('link', { name: 'All of Transom drain ring' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Transom drain ring' }).waitFor();
  // a job about it, done; the log is written by that
  const done = await page.evaluate(async () => {
    const run = globalThis.fettleBook!.run;
    const job = await run('addJob', {
      title: 'Rebed the drain ring in butyl',
      consequence: 'worsens',
      fitting: 'ring-drain',
      steps: [{ title: 'Take the ring off', minutes: { low: 10, likely: 20, high: 30 }, hands: 1 }],
    });
    if (job.kind !== 'done' || job.id === null) return job;
    return run('writeLog', {
      kind: 'bedded',
      text: 'Back on with a thread of tape all round',
      job: job.id,
      with: [{ name: 'butyl tape' }],
    });
  });
  expect(done.kind).toBe('done');
  await page.getByText('Back on with a thread of tape all round').waitFor();
  await page.getByRole('textbox', { name: /^Ask of it/ }).fill('What was this bedded with?');
  await page.getByText(/things? found/).waitFor();
  await expect.poll(() => page.locator('.log-found').textContent()).toMatch(/with butyl tape/);
  await page.reload();
  await page.getByText('Back on with a thread of tape all round').waitFor();
  // and from the log itself, by words and by the fitting alone
  await page.getByRole('link', { name: '‹ Log' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Log' }).waitFor();
  await page.getByRole('textbox', { name: /^Find/ }).fill('drain sealant');
  await page.getByText('Back on with a thread of tape all round').waitFor();
  await page.getByRole('textbox', { name: /^Find/ }).fill('');
  await page.getByText('Only a fitting, a zone, a year or a kind').tap();
  await page.getByRole('combobox', { name: 'Fitting' }).selectOption({ label: 'Transom drain ring' });
  await page.getByText(/^\d+ entries of \d+$/).waitFor();
  await expect.poll(() => page.locator('.log-line').first().textContent()).toMatch(/Back on with a thread/);
});

it('an entry is put right by another, and the costs go by that', async () => {
  const page = await opened('#/boat/log');
  await page.getByRole('button', { name: 'Write in the log' }).tap();
  await sheet(page).waitFor();
  await page.getByRole('button', { name: 'Write it' }).tap();
  await page.getByText('This is empty. Say what was done, seen or measured.').waitFor();
  await page.getByRole('dialog').getByText('got', { exact: true }).tap();
  await page.getByRole('textbox', { name: 'What was done or seen' }).fill('Two cleats');
  await page.getByRole('textbox', { name: /^What it cost/ }).fill('1250');
  await page.getByRole('textbox', { name: 'Currency' }).fill('NOK');
  await page.getByRole('button', { name: 'Write it' }).tap();
  await page.locator('dialog').waitFor({ state: 'detached' });
  await page.getByText('Two cleats').first().tap();
  await sheet(page).waitFor();
  await page.getByRole('button', { name: 'Put it right' }).tap();
  await page.getByText('The entry of before stays as it was').waitFor();
  await page.getByRole('textbox', { name: /^What it cost/ }).fill('125,50');
  await page.getByRole('button', { name: 'Put it right' }).tap();
  await page.locator('dialog').waitFor({ state: 'detached' });
  await expect.poll(() => page.getByText('Two cleats').count()).toBe(1);
  await page.getByText('Two cleats').tap();
  await page.getByText(/It takes the place of an entry that said: ‘Two cleats’, 1250.00 NOK/).waitFor();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByRole('link', { name: 'What she has cost' }).tap();
  await page.getByText(/^125.50 NOK in 1 year, from 1 entry that says a cost/).waitFor();
});

it('a paper is kept, says when it runs out, and is there after a restart; what is none is refused by name', async () => {
  const page = await opened('#/boat/papers');
  const choose = (name: string, text: string) =>
    page.getByLabel('File of a paper').setInputFiles({ name, mimeType: 'application/pdf', buffer: Buffer.from(text) });
  await choose('empty.pdf', '');
  await page.getByText('‘empty.pdf’ was not taken: it is empty.').waitFor();
  await choose('page.pdf', '<script>1</script>');
  await page.getByText(/‘page.pdf’ was not taken: it is not a PDF/).waitFor();
  await choose('policy.pdf', '%PDF-1.4\n%%EOF\n');
  await sheet(page).waitFor();
  await expect.poll(() => page.getByRole('textbox', { name: 'Name' }).inputValue()).toBe('policy');
  await page.getByRole('combobox', { name: 'What it is' }).selectOption({ label: 'insurance' });
  await page.getByLabel('Good until').fill('2020-03-31');
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.getByText(/insurance · ran out 31 March 2020/).waitFor();
  await page.getByText('saved on this device').waitFor();
  await page.reload();
  await page.getByRole('link', { name: /policy/ }).tap();
  await page.getByRole('link', { name: 'Open it by itself' }).waitFor();
  const kept = await page.evaluate(async () => {
    const link = document.querySelector<HTMLAnchorElement>('.log-paper a')!;
    const blob = await (await fetch(link.href)).blob();
    return [blob.type, await blob.text()];
  });
  expect(kept).toEqual(['application/pdf', '%PDF-1.4\n%%EOF\n']);
  // the same file again is refused, and says where it is
  await page.getByRole('button', { name: 'Close' }).tap();
  await choose('again.pdf', '%PDF-1.4\n%%EOF\n');
  await page.getByRole('combobox', { name: 'What it is' }).selectOption({ label: 'insurance' });
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.getByText(/the same paper is in the book already, as ‘policy’/).waitFor();
});
