/**
 * Pictures of every screen for a person to look at: `npx tsx apps/web/e2e/screens.ts [name…]`, into `screenshots/`.
 * The demo boat, at 390 px and 1280 px, on paper, in the dark and in dim red. Builds nothing: serves what is built.
 */
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { preview } from 'vite';
import { askBedding } from './ask-bedding.ts';
import { askCleat } from './ask-cleat.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { placeOfWord } from './marked-word.ts';

interface Shot {
  readonly name: string;
  readonly at: string;
  readonly after?: (page: Page) => Promise<void>;
}

const firstJob = async (page: Page) => {
  await page.locator('.work-group a.line-row').first().click();
  await page.locator('.job h1').waitFor();
};

const batterySheet = (button: string | RegExp) => async (page: Page) => {
  await page.getByRole('link', { name: /House battery/ }).click();
  await page.locator('.battery-full').waitFor();
  await page.getByRole('button', { name: button }).first().click();
  await page.locator('dialog[aria-busy="false"]').waitFor();
};

const shots: readonly Shot[] = [
  { name: 'stores-list', at: '#/stores/list' },
  { name: 'stores-places', at: '#/stores/places' },
  {
    name: 'stores-got',
    at: '#/stores',
    after: async (page) => {
      await page
        .getByRole('button', { name: /^Got it at a price/ })
        .first()
        .click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'stores-thing',
    at: '#/stores',
    after: async (page) => {
      await page.getByRole('button', { name: /^Change: Polyurethane sealant/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'weather-ahead', at: '#/days/weather' },
  {
    name: 'forecast-sheet',
    at: '#/days/weather',
    after: async (page) => {
      await page.getByRole('button', { name: 'What turning it on sends' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'work', at: '#/work' },
  {
    name: 'work-by-zone',
    at: '#/work',
    after: async (page) => page.getByRole('radio', { name: 'by zone' }).click({ force: true }),
  },
  { name: 'job', at: '#/work', after: firstJob },
  {
    name: 'job-change',
    at: '#/work',
    after: async (page) => {
      await firstJob(page);
      await page.getByRole('button', { name: 'Change', exact: true }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'step-change',
    at: '#/work',
    after: async (page) => {
      await firstJob(page);
      await page.getByRole('button', { name: /^Change step 1/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'step-all-open',
    at: '#/work',
    after: async (page) => {
      await page
        .locator('.work-group a.line-row', { hasText: /varnish|coaming|plate/i })
        .first()
        .click();
      await page.getByRole('button', { name: /^Change step 2/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
      await page.evaluate(() => {
        for (const group of document.querySelectorAll('dialog details')) (group as HTMLDetailsElement).open = true;
      });
    },
  },
  {
    name: 'tick',
    at: '#/work',
    after: async (page) => {
      await firstJob(page);
      await page.getByRole('button', { name: /^Tick/ }).first().click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'jury-rig',
    at: '#/work',
    after: async (page) => {
      await page.getByRole('button', { name: 'Jury rig', exact: true }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
      await page.getByRole('button', { name: 'Put it in' }).click();
    },
  },
  {
    name: 'jury-rig-of-job',
    at: '#/work',
    after: async (page) => {
      await firstJob(page);
      await page.getByRole('button', { name: 'Jury rig for it' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'jury-rig-anew',
    at: '#/work',
    after: async (page) => {
      await page.getByRole('button', { name: 'Trust it anew: Lashing beside the starboard shroud' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'jury-rig-out',
    at: '#/work',
    after: async (page) => {
      await page.getByRole('button', { name: 'It is out: Lashing beside the starboard shroud' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
      await page.getByRole('button', { name: 'It is out', exact: true }).last().click();
    },
  },
  { name: 'put-in', at: '#/work/put-in' },
  {
    name: 'put-in-read',
    at: '#/work/put-in',
    after: async (page) => {
      await page
        .getByRole('textbox', { name: /one line/ })
        .fill('starboard shroud plate weeps, take off and rebed, mast down, 90 min, dry, worsens');
      await page.waitForTimeout(100);
    },
  },
  { name: 'recipes', at: '#/work/recipes' },
  { name: 'recipe', at: '#/work/recipe/rebed-shroud-plate' },
  {
    name: 'recipe-change',
    at: '#/work/recipe/rebed-shroud-plate',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change', exact: true }).first().click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'recipe-step',
    at: '#/work/recipe/rebed-shroud-plate',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change step 5' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'walk-round', at: '#/work/walk-round' },
  {
    name: 'walk-round-read',
    at: '#/work/walk-round',
    after: async (page) => {
      await page
        .getByRole('textbox', { name: /What you saw/ })
        .fill(
          'Bow. The roller pin is bent again, so a new pin, forty minutes, it will only get worse.\nThe forehatch weeps. I taped it over for now, good till the end of the month. It wants a new seal, an hour, on a dry day.\nBattery reads twelve point six, nothing on, panel dark. The stern light is dead and that is against the law. I need more butyl tape.',
        );
      await page.locator('.walk-one').first().waitFor();
      await page.getByRole('button', { name: /^Put all/ }).click();
      await page.getByText(/not in yet/).waitFor();
    },
  },
  { name: 'boat', at: '#/boat' },
  { name: 'log', at: '#/boat/log' },
  {
    name: 'log-found',
    at: '#/boat/log',
    after: async (page) => {
      await page.getByRole('textbox', { name: /^Find/ }).fill('what was the drain bedded with');
      await page.getByText(/things? found/).waitFor();
    },
  },
  {
    name: 'log-entry',
    at: '#/boat/log',
    after: async (page) => {
      await page.locator('button.log-line').first().click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'log-write',
    at: '#/boat/log',
    after: async (page) => {
      await page.getByRole('button', { name: 'Write in the log' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'log-costs', at: '#/boat/log/costs' },
  { name: 'log-story', at: '#/boat/log/fitting/ring-drain' },
  { name: 'papers', at: '#/boat/papers' },
  {
    name: 'paper',
    at: '#/boat/papers',
    after: async (page) => {
      const page1 = Buffer.from('Hull number and sail number, as they stand on the certificate.');
      await page
        .getByLabel('File of a paper')
        .setInputFiles({ name: 'certificate.txt', mimeType: 'text/plain', buffer: page1 });
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'boat-mast-other',
    at: '#/boat',
    after: async (page) => {
      await page.getByRole('button', { name: /^Drawn with mast/ }).click();
      await page.getByRole('button', { name: /^Drawn with board/ }).click();
      await page.getByText('What is shown on her').click();
      for (const layer of ['load paths', 'circuits', 'dues'])
        await page.getByRole('checkbox', { name: layer, exact: true }).check();
    },
  },
  {
    name: 'boat-above',
    at: '#/boat',
    after: async (page) => {
      await page.locator('.picture-views').getByText('Above').click();
      await page.getByLabel(/from above/).waitFor();
    },
  },
  {
    name: 'boat-near',
    at: '#/boat',
    after: async (page) => {
      for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Look nearer' }).click();
    },
  },
  { name: 'boat-picture', at: '#/boat/picture' },
  {
    name: 'term',
    at: '#/boat',
    after: async (page) => {
      const word = await placeOfWord(page, 'set-ups');
      await page.mouse.click(word.x, word.y);
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'terms',
    at: '#/boat/loads/mast',
    after: async (page) => {
      await page.getByRole('button', { name: /^Words on this page/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'zone',
    at: '#/boat',
    after: async (page) => {
      await page.locator('section[aria-labelledby="boat-zones"] a.line-row').first().click();
      await page.locator('.boat-zone h1').waitFor();
    },
  },
  {
    name: 'set-up',
    at: '#/boat',
    after: async (page) => {
      await page
        .getByRole('button', { name: /^Change the set-up/ })
        .first()
        .click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'own-book',
    at: '#/boat',
    after: async (page) => {
      await page.getByRole('button', { name: /own boat/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'sizes',
    at: '#/boat',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change her sizes' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'battery',
    at: '#/boat',
    after: async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.locator('.battery-full').waitFor();
    },
  },
  { name: 'battery-figure', at: '#/boat', after: batterySheet(/how it is worked out$/) },
  { name: 'battery-load-test', at: '#/boat', after: batterySheet('Enter a load test') },
  { name: 'battery-test-result', at: '#/boat', after: batterySheet(/^What the load test of/) },
  { name: 'battery-panel', at: '#/boat', after: batterySheet(/^Change the panel/) },
  { name: 'battery-charger', at: '#/boat', after: batterySheet(/^Change the charger/) },
  {
    name: 'battery-card',
    at: '#/boat',
    after: async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.getByRole('link', { name: 'The card to print' }).click();
      await page.locator('.card table').first().waitFor();
    },
  },
  { name: 'trailer', at: '#/boat/trailer' },
  {
    name: 'trailer-tried',
    at: '#/boat/trailer',
    after: async (page) => {
      await page.getByRole('button', { name: /^3 The board, up/ }).click();
      await page.getByRole('slider', { name: /^Its mass/ }).fill('92');
      await page.getByText(/Tried out, not kept/).waitFor();
    },
  },
  {
    name: 'trailer-working',
    at: '#/boat/trailer',
    after: async (page) => {
      await page.getByRole('button', { name: /^On the ball: .* How it is worked out/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'trailer-change',
    at: '#/boat/trailer',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change the trailer and its papers' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'trailer-thing',
    at: '#/boat/trailer',
    after: async (page) => {
      await page.getByRole('button', { name: /The battery/ }).click();
      await page.getByRole('button', { name: 'Change: The battery' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'trailer-weigh',
    at: '#/boat/trailer',
    after: async (page) => {
      await page.getByRole('button', { name: 'Weigh the ball' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'circuits', at: '#/boat/circuits' },
  {
    name: 'circuit-figures',
    at: '#/boat/circuits',
    after: async (page) => {
      await page.getByRole('button', { name: 'How it is worked out: Echo sounder' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'circuit-change',
    at: '#/boat/circuits',
    after: async (page) => {
      await page.getByRole('button', { name: /^Cabin light/ }).click();
      await page.getByRole('button', { name: 'Change the circuit' }).click();
      await page.getByRole('textbox', { name: /^Rating/ }).waitFor();
    },
  },
  {
    name: 'battery-terminal',
    at: '#/boat/circuits',
    after: async (page) => {
      await page.getByRole('button', { name: 'What stands at its terminal' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'hoist', at: '#/boat/loads/hoist' },
  {
    name: 'hoist-heavier',
    at: '#/boat/loads/hoist',
    after: async (page) => {
      await page.getByRole('textbox', { name: /^What if the board weighed/ }).fill('93');
      await page.getByRole('button', { name: 'Find its wire and tackle' }).click();
      await page.locator('.hoist-answer').waitFor();
    },
  },
  {
    name: 'hoist-figure',
    at: '#/boat/loads/hoist',
    after: async (page) => {
      await page.getByRole('button', { name: /^Most in the wire/ }).click();
      await page.locator('dialog h2').nth(0).waitFor();
    },
  },
  {
    name: 'hoist-change',
    at: '#/boat/loads/hoist',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change it' }).click();
      await page.getByRole('textbox', { name: /^Weight/ }).waitFor();
    },
  },
  {
    name: 'hoist-pull',
    at: '#/boat/loads/hoist',
    after: async (page) => {
      await page.getByRole('button', { name: 'Enter a pull' }).click();
      await page.getByRole('textbox', { name: /^It reads/ }).waitFor();
    },
  },
  { name: 'outlet', at: '#/boat/circuits/outlet' },
  {
    name: 'outlet-found',
    at: '#/boat/circuits/outlet',
    after: async (page) => {
      await page.getByRole('textbox', { name: 'What will hang on it' }).fill('Fan in the forepeak');
      await page.getByRole('textbox', { name: /^Draws/ }).fill('24');
      await page.getByRole('textbox', { name: /^The way/ }).fill('4.5');
      await page.getByRole('textbox', { name: /^The fuse can stand/ }).fill('150');
      await page.getByText('no: 10 % may be lost').click();
      await page.getByRole('button', { name: 'Find the wire and fuse' }).click();
      await page.locator('.circuits-answer').waitFor();
    },
  },
  { name: 'load-paths', at: '#/boat/loads/path' },
  { name: 'load-path', at: '#/boat/loads/path/rode' },
  { name: 'load-path-shroud', at: '#/boat/loads/path/shroud' },
  {
    name: 'load-path-part',
    at: '#/boat/loads/path/rode',
    after: async (page) => {
      await page.getByRole('button', { name: /^Chain, 10 m/ }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'load-path-part-change',
    at: '#/boat/loads/path/rode',
    after: async (page) => {
      await page.getByRole('button', { name: /^Anchor shackle/ }).click();
      await page.getByRole('button', { name: 'Change the part' }).click();
      await page.getByRole('textbox', { name: /^Body/ }).waitFor();
    },
  },
  {
    name: 'fastenings',
    at: '#/boat/loads/fastenings',
    after: async (page) => {
      await askCleat(page);
      await page.locator('.fastened-answer').waitFor();
    },
  },
  {
    name: 'bedding',
    at: '#/boat/bedding/plate-starboard',
    after: askBedding,
  },
  {
    name: 'bedding-of-job',
    at: '#/work',
    after: async (page) => {
      await page
        .getByRole('link', { name: /shroud plate/i })
        .first()
        .click();
      await page.getByRole('link', { name: 'What to bed it with' }).click();
      await askBedding(page);
    },
  },
  {
    name: 'bedded',
    at: '#/boat/bedding/plate-starboard',
    after: async (page) => {
      await page.getByRole('button', { name: 'Write down what it was bedded with' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'gauge-card', at: '#/boat/loads/gauge-card' },
  { name: 'stays', at: '#/boat/loads/stays' },
  { name: 'stay', at: '#/boat/loads/stays/cap-starboard' },
  {
    name: 'stay-reading',
    at: '#/boat/loads/stays/forestay',
    after: async (page) => {
      await page.getByRole('button', { name: 'Enter a reading', exact: true }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'stay-reading-told',
    at: '#/boat/loads/stays/cap-starboard',
    after: async (page) => {
      await page
        .getByRole('button', { name: /^How it is worked out/ })
        .first()
        .click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'stay-change',
    at: '#/boat/loads/stays/forestay',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change the stay' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'mast', at: '#/boat/loads/mast' },
  {
    name: 'mast-higher',
    at: '#/boat/loads/mast',
    after: async (page) => {
      const slider = page.getByRole('slider');
      await slider.focus();
      await slider.press('End');
      await page.locator('.loads details').first().locator('summary').click();
    },
  },
  {
    name: 'mast-change',
    at: '#/boat/loads/mast',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change the mast' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'stores', at: '#/stores' },
  { name: 'tins', at: '#/stores/tins' },
  {
    name: 'store',
    at: '#/stores',
    after: async (page) => {
      await page.getByRole('button', { name: 'Add a thing' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'go', at: '#/go' },
  {
    name: 'go-sheet',
    at: '#/go/sheet/outer-bar',
    after: async (page) => page.locator('[data-looking="false"]').waitFor({ timeout: 60_000 }),
  },
  {
    name: 'go-answer',
    at: '#/go',
    after: async (page) => {
      await page.locator('.go-sum[data-looking="false"]').waitFor({ timeout: 60_000 });
      await page.getByText(/The plan: its/).waitFor({ timeout: 60_000 });
    },
  },
  { name: 'dues', at: '#/go/dues' },
  { name: 'due', at: '#/go/dues/due-bearings' },
  {
    name: 'due-sheet',
    at: '#/go/dues/due-tyres',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change', exact: true }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  { name: 'lay-up', at: '#/go/season/lay-up' },
  {
    name: 'outing',
    at: '#/go',
    after: async (page) => {
      await page
        .getByRole('button', { name: /^Change:/ })
        .first()
        .click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  },
  {
    name: 'outing-new',
    at: '#/go',
    after: async (page) => page.getByRole('button', { name: 'A night aboard' }).click(),
  },
  { name: 'morning', at: '#/go/morning/outer-bar/rig' },
  {
    name: 'morning-failing',
    at: '#/go/morning/outer-bar/launch',
    after: async (page) => page.getByRole('button', { name: 'Not right' }).click(),
  },
  {
    name: 'morning-change',
    at: '#/go/morning/outer-bar/launch',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change the list' }).click();
      await page.getByRole('button', { name: /^Down: Jury rig looked at.*forehatch/ }).click();
    },
  },
  { name: 'morning-print', at: '#/go/morning/outer-bar/rig/print' },
  { name: 'rode', at: '#/boat/loads/rode' },
  {
    name: 'rode-too-little',
    at: '#/boat/loads/rode',
    after: async (page) => {
      await page.getByRole('slider', { name: 'Wind' }).fill('36');
      await page.locator('.ground-sliders summary').click();
    },
  },
  {
    name: 'rode-working',
    at: '#/boat/loads/rode',
    after: async (page) => {
      await page.getByRole('button', { name: /^Level pull at the bow/ }).click();
      await page.locator('dialog').waitFor();
    },
  },
  {
    name: 'rode-circle',
    at: '#/boat/loads/rode',
    after: async (page) => {
      await page.getByRole('button', { name: /^Swings to/ }).click();
      await page.locator('dialog').waitFor();
    },
  },
  {
    name: 'rode-change',
    at: '#/boat/loads/rode',
    after: async (page) => {
      await page.getByRole('button', { name: 'Change the rode' }).click();
      await page.locator('dialog').waitFor();
    },
  },
];

const wanted = process.argv.slice(2);
const folder = 'screenshots';
mkdirSync(folder, { recursive: true });
const server = await preview({
  root: 'apps/web',
  configFile: 'apps/web/vite.config.ts',
  logLevel: 'error',
  preview: { host: '127.0.0.1', port: 4650, strictPort: false },
});
const address = server.resolvedUrls?.local[0];
if (!address) throw new Error('the served app has no address');
const browser = await launchBrowser();
let failed = 0;
try {
  for (const [theme, size] of [
    ['paper', phone],
    ['paper', laptop],
    ['dark', phone],
    ['red', phone],
    ['dark', laptop],
  ] as const) {
    const context = await browser.newContext({ viewport: size, hasTouch: size === phone, reducedMotion: 'reduce' });
    await context.addInitScript((name) => localStorage.setItem('fettle-theme', name), theme);
    const page = await context.newPage();
    page.on('pageerror', (error) => {
      failed += 1;
      console.log(`fault on a screen: ${error.message}`);
    });
    await page.goto(address);
    await page.locator('.shell-main h1').first().waitFor({ timeout: 30_000 });
    for (const shot of shots) {
      if (wanted.length > 0 && !wanted.includes(shot.name)) continue;
      const file = `${folder}/${shot.name}-${size.width}-${theme}.png`;
      try {
        await page.goto(address + shot.at);
        await page.reload();
        await page.locator('.shell-main h1').first().waitFor({ timeout: 10_000 });
        await shot.after?.(page);
        await page.waitForTimeout(150);
        const sheet = await page.evaluate(() => document.querySelector('dialog')?.scrollHeight ?? 0);
        if (sheet > size.height) await page.setViewportSize({ width: size.width, height: sheet + 40 });
        await page.screenshot({ path: file, fullPage: sheet === 0 });
        await page.setViewportSize(size);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        if (wide > 0) console.log(`${shot.name} at ${size.width} px is ${wide} px too wide`);
      } catch (error) {
        failed += 1;
        console.log(`${file}: ${error instanceof Error ? error.message.split('\n')[0] : error}`);
      }
    }
    await context.close();
  }
} finally {
  await browser.close();
  await server.close();
}
console.log(`pictures in ${folder}/, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
