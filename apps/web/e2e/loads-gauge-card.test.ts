/**
 * The gauge card is printed, and what is on the paper is measured: on A4 and on Letter, at both sizes of screen, it is
 * true to size. What a print that came out too small measures is typed in, and the card says what to set the printer to.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { laptop, launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';
import { onePage, type PdfPage, type PdfShape } from './pdf-shapes.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

describe.each([
  ['paper', phone],
  ['dark', laptop],
] as const)('%s', (theme, size) => {
  it(`prints the gauge card at ${size.width} px, true to size`, async () => {
    const context = await browser.newContext({ viewport: size, reducedMotion: 'reduce' });
    await context.addInitScript((name) => localStorage.setItem('fettle-theme', name), theme);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(`${inject('address')}#/boat`);
    await page.getByRole('link', { name: /^Gauge card/ }).click();
    await page.getByRole('button', { name: 'Print the card' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await seriousFaults(page)).toEqual([]);

    // ISO 216 and ANSI sizes of the paper, mm
    for (const [format, width, height] of [
      ['A4', 210, 297],
      ['Letter', 215.9, 279.4],
    ] as const) {
      const paper = onePage(await page.pdf({ format, printBackground: false }));
      expect(paper.width).toBeCloseTo(width, 0);
      expect(paper.height).toBeCloseTo(height, 0);
      measure(paper);
    }
    await inkIsBlack(page);

    await tellPrint(page, '', '194');
    await page.getByText(/There is no figure here. Give one from 50 to 450 mm/).waitFor();
    await tellPrint(page, '145.5', '194');
    await page.getByText(/It came out at 97.0 %.*10 mm is 9.70 mm.*set to 103.1 %/).waitFor();
    await tellPrint(page, '150', '194');
    await page.getByText(/No setting mends that/).waitFor();
    await tellPrint(page, '150.2', '199.8');
    await page.getByText(/It is true/).waitFor();
    await context.close();
  });
});

async function tellPrint(page: Page, across: string, down: string) {
  await page.getByRole('textbox', { name: /line across measures/ }).fill(across);
  await page.getByRole('textbox', { name: /line down measures/ }).fill(down);
  await page.getByRole('button', { name: 'Check the print' }).click();
}

const width = ({ left, right }: PdfShape) => right - left;
const height = ({ low, high }: PdfShape) => high - low;
/** What a printer's own dot is: 1/1200 inch. [mm] */
const dot_mm = 0.02;

/** The paper measured as a steel rule would, in millimetres. */
function measure({ width: paperWidth, height: paperHeight, shapes }: PdfPage) {
  // all of it stands clear of the edge that printers leave white
  expect(Math.min(...shapes.map(({ left }) => left))).toBeGreaterThan(5);
  expect(Math.max(...shapes.map(({ right }) => right))).toBeLessThan(paperWidth - 5);
  expect(Math.min(...shapes.map(({ low }) => low))).toBeGreaterThan(5);
  expect(Math.max(...shapes.map(({ high }) => high))).toBeLessThan(paperHeight - 5);

  // the check lines: the longest there are, with a tick at every millimetre
  const across = shapes.filter((shape) => height(shape) < dot_mm).sort((a, b) => width(b) - width(a))[0]!;
  const down = shapes.filter((shape) => width(shape) < dot_mm).sort((a, b) => height(b) - height(a))[0]!;
  expect(width(across)).toBeCloseTo(150, 1);
  expect(height(down)).toBeCloseTo(200, 1);
  const ticksAcross = shapes.filter((shape) => width(shape) < dot_mm && Math.abs(shape.high - across.low) < dot_mm);
  const ticksDown = shapes.filter((shape) => height(shape) < dot_mm && Math.abs(shape.right - down.left) < dot_mm);
  expect(ticksAcross).toHaveLength(151);
  expect(ticksDown).toHaveLength(201);
  for (const [n, tick] of ticksAcross.sort((a, b) => a.left - b.left).entries())
    expect(Math.abs(tick.left - across.left - n)).toBeLessThan(dot_mm);
  for (const [n, tick] of ticksDown.sort((a, b) => b.low - a.low).entries())
    expect(Math.abs(down.high - tick.low - n)).toBeLessThan(dot_mm);

  // a bank card: ISO/IEC 7810 ID-1 (from memory)
  expect(shapes.filter((shape) => near(width(shape), 85.6) && near(height(shape), 53.98))).toHaveLength(1);
  // bars as wide as they are called, and rounds as wide as high
  const bars = shapes.filter((shape) => shape.filled && near(height(shape), 18)).map(width);
  expect(bars).toHaveLength(15);
  for (const [n, called] of [2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16].entries())
    expect(Math.abs(bars[n]! - called)).toBeLessThan(dot_mm);
  for (const called of [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16])
    expect(shapes.filter((shape) => near(width(shape), called) && near(height(shape), called))).toHaveLength(1);
  // the wedge: 20 mm over 160 mm
  expect(shapes.filter((shape) => near(width(shape), 160) && near(height(shape), 20))).toHaveLength(1);
  // links: DIN 766, 6 mm chain 18.5 mm long and 7.2 mm wide inside, twice the wire more outside
  expect(shapes.filter((shape) => near(width(shape), 18.5) && near(height(shape), 7.2))).toHaveLength(1);
  expect(shapes.filter((shape) => near(width(shape), 30.5) && near(height(shape), 19.2))).toHaveLength(1);
}
const near = (got: number, wanted: number) => Math.abs(got - wanted) < dot_mm;

/** On paper all of it is black, whatever the look on the screen, and no letter is under 9 pt. */
async function inkIsBlack(page: Page) {
  await page.emulateMedia({ media: 'print' });
  const { inks, least_pt } = await page.locator('.gauge').evaluate((drawing) => {
    const texts = [...drawing.querySelectorAll('text')].map((text) => getComputedStyle(text));
    return {
      inks: [...new Set(texts.map(({ fill }) => fill))],
      least_pt: Math.min(...texts.map(({ fontSize }) => (Number.parseFloat(fontSize) * 72) / 25.4)),
    };
  });
  expect(inks).toEqual(['rgb(0, 0, 0)']);
  expect(least_pt).toBeGreaterThanOrEqual(9);
  await page.emulateMedia({ media: 'screen' });
}
