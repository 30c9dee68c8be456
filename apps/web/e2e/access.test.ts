/** axe over every screen: nothing serious or critical, in each theme, at both widths, sheets included. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { askBedding } from './ask-bedding.ts';
import { askCleat } from './ask-cleat.ts';
import { laptop, launchBrowser, phone } from './browser.ts';
import { goInApp } from './go-in-app.ts';
import { seriousFaults } from './page-checks.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
});

const open = (name: string | RegExp) => async (page: Page) => {
  await page.getByRole('button', { name }).first().click();
  await page.locator('dialog[aria-busy="false"]').waitFor();
};
const battery = (name: string | RegExp) => async (page: Page) => {
  await page.getByRole('link', { name: /House battery/ }).click();
  await page.locator('.battery-full').waitFor();
  await open(name)(page);
};
const firstJob = async (page: Page) => {
  await page.locator('.work-group a.line-row').first().click();
  await page.locator('.job h1').waitFor();
};

const plan = async (page: Page) => {
  await page.locator('.days-block').first().waitFor({ timeout: 30_000 });
  await standsStill(page);
};
/** Until nothing in the place has changed for a second: a plan that is bettered takes blocks away from under what looks at them. */
const standsStill = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const place = document.querySelector('main')!;
        const tooLong = setTimeout(() => reject(new Error('the plan goes on changing')), 60_000);
        const settled = () => {
          watch.disconnect();
          clearTimeout(tooLong);
          resolve();
        };
        let quiet = setTimeout(settled, 1000);
        const watch = new MutationObserver(() => {
          clearTimeout(quiet);
          quiet = setTimeout(settled, 1000);
        });
        watch.observe(place, { subtree: true, childList: true, attributes: true, characterData: true });
      }),
  );
const jobDay = async (page: Page) => {
  // in the list of the days: a reason why a job is left out may lead to one that is to be put in
  await page.locator('.days-list a[href*="#/days/day/"]').first().click();
  await page.getByText('Hour by hour').waitFor();
};

const screens: readonly (readonly [name: string, at: string, after?: (page: Page) => Promise<void>])[] = [
  ['work', '#/work'],
  ['a job', '#/work', firstJob],
  [
    'a step being changed',
    '#/work',
    async (page) => {
      await firstJob(page);
      await open(/^Change step 3/)(page);
      await page.evaluate(() => {
        for (const group of document.querySelectorAll('dialog details')) (group as HTMLDetailsElement).open = true;
      });
    },
  ],
  [
    'the end of a job',
    '#/work',
    async (page) => {
      await firstJob(page);
      await open('Job done')(page);
      await page.locator('dialog').getByText('it held', { exact: true }).click();
      await page.locator('dialog').getByRole('button', { name: 'The job is done' }).click();
    },
  ],
  [
    'a photograph',
    '#/work',
    async (page) => {
      await firstJob(page);
      const bytes = await page.evaluate(async () => {
        const canvas = new OffscreenCanvas(400, 300);
        canvas.getContext('2d')!.fillRect(20, 20, 100, 100);
        return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
      });
      await page
        .getByLabel('Photographs on this device')
        .setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
      await open(/^Photograph, /)(page);
    },
  ],
  ['recipes', '#/work/recipes'],
  ['a recipe', '#/work/recipe/rebed-shroud-plate'],
  ['a recipe: change it', '#/work/recipe/rebed-shroud-plate', open(/^Change$/)],
  ['a recipe: change a step', '#/work/recipe/rebed-shroud-plate', open('Change step 5')],
  ['a walk-round', '#/work/walk-round'],
  [
    'a walk-round with what it proposes, some refused',
    '#/work/walk-round',
    async (page) => {
      await page
        .getByRole('textbox', { name: /What you saw/ })
        .fill(
          'The ladder foot is missing. The hatch weeps, taped for now. Battery 12.4 volts. I need more butyl tape.',
        );
      await page.locator('.walk-one').first().waitFor();
      await page.getByRole('button', { name: /^Put all/ }).click();
      await page.getByText(/not in yet/).waitFor();
    },
  ],
  [
    'a jury rig refused',
    '#/work',
    async (page) => {
      await open('Jury rig')(page);
      await page.getByRole('button', { name: 'Put it in' }).click();
    },
  ],
  [
    'a jury rig of a job',
    '#/work',
    async (page) => {
      await page.locator('.work-group a.line-row').first().click();
      await open('Jury rig for it')(page);
    },
  ],
  ['a jury rig trusted anew', '#/work', open(/^Trust it anew: Lashing/)],
  ['a jury rig that is out', '#/work', open(/^It is out: Lashing/)],
  [
    'putting in a job',
    '#/work/put-in',
    async (page) => {
      await page.getByRole('textbox', { name: /one line/ }).fill('shroud plate weeps, rebed, mast down, 90 min, dry');
      await page.getByRole('button', { name: 'Put it in' }).click();
    },
  ],
  [
    'a recipe for a job',
    '#/work/put-in',
    async (page) => {
      await page.getByRole('textbox', { name: /one line/ }).fill('shroud plate weeps, rebed');
      await page.getByRole('button', { name: /Rebed a shroud plate/ }).click();
      await page.getByRole('heading', { name: 'It takes' }).waitFor();
    },
  ],
  ['the boat', '#/boat'],
  [
    'the picture on a page of its own',
    '#/boat/picture',
    async (page) => {
      await page.locator('.picture-list').waitFor();
    },
  ],
  [
    'where the picture was touched',
    '#/boat',
    async (page) => {
      const hull = page.locator('[data-picture] path[data-part="hull"]');
      await hull.scrollIntoViewIfNeeded();
      const box = (await hull.boundingBox())!;
      await page.mouse.click(box.x + 0.88 * box.width, box.y - 24);
      await open('Put a fitting here')(page);
    },
  ],
  [
    'what a term means',
    '#/boat',
    async (page) => {
      await open(/^Words on this page explained/)(page);
    },
  ],
  ['one’s own boat', '#/boat', open(/own boat/)],
  ['a set-up', '#/boat', open(/^Change the set-up/)],
  [
    'a battery',
    '#/boat',
    async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.locator('.battery-full').waitFor();
    },
  ],
  [
    'a reading of volts',
    '#/boat',
    async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.getByRole('button', { name: 'Read the volts' }).click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  ],
  ['the circuits', '#/boat/circuits'],
  ['how a circuit is worked out', '#/boat/circuits', open('How it is worked out: Echo sounder')],
  [
    'a circuit being changed',
    '#/boat/circuits',
    async (page) => {
      await open('How it is worked out: Echo sounder')(page);
      await page.getByRole('button', { name: 'Change the circuit' }).click();
      await page.getByRole('textbox', { name: /^Rating/ }).waitFor();
    },
  ],
  [
    'a new outlet, not worked out yet',
    '#/boat/circuits/outlet',
    async (page) => {
      await page.getByRole('button', { name: 'Find the wire and fuse' }).click();
      await page.getByText('Say whether its volts matter.').waitFor();
    },
  ],
  ['the board’s hoist', '#/boat/loads/hoist', async (page) => page.locator('.hoist-drawing').waitFor()],
  [
    'the board’s hoist being changed',
    '#/boat/loads/hoist',
    async (page) => {
      await page.getByRole('button', { name: 'Change it' }).click();
      await page.getByRole('textbox', { name: /^Weight/ }).waitFor();
    },
  ],
  ['how a figure of a battery is worked out', '#/boat', battery(/how it is worked out$/)],
  ['a load test', '#/boat', battery('Enter a load test')],
  ['what a load test says', '#/boat', battery(/^What the load test of/)],
  ['a panel', '#/boat', battery(/^Change the panel/)],
  ['a charger', '#/boat', battery(/^Change the charger/)],
  [
    'the card of a battery',
    '#/boat',
    async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.getByRole('link', { name: 'The card to print' }).click();
      await page.locator('.card table').first().waitFor();
    },
  ],
  [
    'readings from a file',
    '#/boat',
    async (page) => {
      await page.getByRole('link', { name: /House battery/ }).click();
      await page.getByRole('link', { name: 'Readings from a file' }).click();
      const rows = Array.from({ length: 30 }, (_, i) => `2026-05-02 20:${10 + i},12.${59 - i}`);
      await page
        .getByLabel('File of readings')
        .setInputFiles({ name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(['t,V', ...rows].join('\n')) });
      await page.getByRole('button', { name: 'Read the file' }).click();
      await page.getByRole('button', { name: 'Keep these readings' }).click();
      await page.locator('.readings-plot canvas').waitFor();
    },
  ],
  ['her sizes', '#/boat', open('Change her sizes')],
  [
    'a zone',
    '#/boat',
    async (page) => {
      await page.locator('section[aria-labelledby="boat-zones"] a.line-row').first().click();
      await page.locator('.boat-zone h1').waitFor();
    },
  ],
  [
    'what to bed a plate with',
    '#/boat/bedding/plate-starboard',
    async (page) => {
      await askBedding(page);
    },
  ],
  [
    'bedding, some of it refused',
    '#/boat/bedding/plate-starboard',
    async (page) => {
      await page.getByRole('button', { name: 'Find what does' }).click();
      await page.getByText('Not worked out yet: see the marked fields.').waitFor();
    },
  ],
  ['what it was bedded with', '#/boat/bedding/plate-starboard', open('Write down what it was bedded with')],
  [
    'fastenings that do not hold',
    '#/boat/loads/fastenings',
    async (page) => {
      await askCleat(page);
      await page.locator('.fastened-answer').waitFor();
    },
  ],
  ['the trailer', '#/boat/trailer', async (page) => page.locator('.trailer-drawing').waitFor()],
  ['the trailer being changed', '#/boat/trailer', open('Change the trailer and its papers')],
  ['a thing on the trailer', '#/boat/trailer', open('Add a thing')],
  ['the ball being weighed', '#/boat/trailer', open('Weigh the ball')],
  ['how the ball load is worked out', '#/boat/trailer', open(/^On the ball:/)],
  ['the load paths', '#/boat/loads/path'],
  ['a load path', '#/boat/loads/path/rode'],
  ['how a part of a load path is worked out', '#/boat/loads/path/rode', open(/^Chain, 10 m/)],
  ['a part of a load path', '#/boat/loads/path/rode', open('Add a part')],
  [
    'a part of a load path being changed',
    '#/boat/loads/path/rode',
    async (page) => {
      await open(/^Anchor shackle/)(page);
      await page.getByRole('button', { name: 'Change the part' }).click();
      await page.getByRole('textbox', { name: /^Body/ }).waitFor();
    },
  ],
  ['a load on a path', '#/boat/loads/path/rode', open('Add a load')],
  ['a load path being changed', '#/boat/loads/path/rode', open('Change its name or use')],
  ['the gauge card', '#/boat/loads/gauge-card'],
  ['the stays', '#/boat/loads/stays'],
  ['a stay', '#/boat/loads/stays/cap-starboard'],
  ['a reading of a stay', '#/boat/loads/stays/forestay', open('Enter a reading')],
  ['how a reading of a stay is worked out', '#/boat/loads/stays/cap-starboard', open(/^How it is worked out/)],
  ['the mast on its way up', '#/boat/loads/mast'],
  ['the mast being changed', '#/boat/loads/mast', open('Change the mast')],
  ['ground tackle', '#/boat/loads/rode'],
  ['how a figure of a rode is worked out', '#/boat/loads/rode', open(/^In the rode at the bow/)],
  ['a rode being changed', '#/boat/loads/rode', open('Change the rode')],
  ['the log', '#/boat/log'],
  [
    'what is found in the log',
    '#/boat/log',
    async (page) => {
      await page.getByRole('textbox', { name: /^Find/ }).fill('what was the drain bedded with');
      await page.getByText(/things? found/).waitFor();
    },
  ],
  ['an entry of the log', '#/boat/log', open(/^\d+ /)],
  [
    'an entry written by hand, refused',
    '#/boat/log',
    async (page) => {
      await open('Write in the log')(page);
      await page.getByRole('button', { name: 'Write it' }).click();
    },
  ],
  ['what she has cost', '#/boat/log/costs'],
  ['a fitting’s story', '#/boat/log/fitting/ring-drain'],
  ['the papers', '#/boat/papers'],
  [
    'a paper',
    '#/boat/papers',
    async (page) => {
      const page1 = Buffer.from('Hull number and sail number, as they stand on the certificate.');
      await page
        .getByLabel('File of a paper')
        .setInputFiles({ name: 'certificate.txt', mimeType: 'text/plain', buffer: page1 });
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  ],
  ['stores', '#/stores'],
  ['a store', '#/stores', open('Add a thing')],
  ['the list to get', '#/stores/list'],
  ['the places of the stores', '#/stores/places'],
  ['a place of the stores', '#/stores/places', open('Add a place')],
  ['what the tins say', '#/stores/tins'],
  ['what a tin says', '#/stores/tins', open('Put in what a tin says')],
  ['the plan', '#/days', plan],
  [
    'why a step stands where it does',
    '#/days',
    async (page) => {
      await plan(page);
      await page.locator('.days-block').first().click();
      await page.locator('dialog[aria-busy="false"]').waitFor();
    },
  ],
  ['a job day', '#/days', jobDay],
  [
    'weather hour by hour',
    '#/days',
    async (page) => {
      await jobDay(page);
      await page.getByText('Hour by hour').click();
      await page.locator('table').first().waitFor();
    },
  ],
  [
    'a day sheet',
    '#/days',
    async (page) => {
      await plan(page);
      await page.getByRole('link', { name: 'Day sheet' }).first().click();
      await page.locator('table').first().waitFor();
    },
  ],
  ['the step in hand', '#/days/now'],
  ['the weather ahead', '#/days/weather'],
  ['what a forecast sends', '#/days/weather', open('What turning it on sends')],
  ['go', '#/go'],
  ['an outing', '#/go', open(/^Change:/)],
  ['fit to go in print', '#/go/sheet/outer-bar', async (page) => page.locator('.fit-print-part').first().waitFor()],
  ['a morning list', '#/go/morning/outer-bar/rig'],
  [
    'a line that is not right',
    '#/go/morning/outer-bar/launch',
    async (page) => {
      await page.getByRole('button', { name: 'Not right' }).click();
      await page.getByRole('button', { name: 'Make the job and a jury rig' }).waitFor();
    },
  ],
  [
    'a morning list changed',
    '#/go/morning/outer-bar/launch',
    async (page) => {
      await page.getByRole('button', { name: 'Change the list' }).click();
      await page.getByRole('button', { name: /^Down: Wait, still on the winch/ }).waitFor();
    },
  ],
  ['a morning list in print', '#/go/morning/outer-bar/tow/print'],
  ['what falls due', '#/go/dues'],
  ['a due', '#/go/dues/due-tyres'],
  ['a due changed', '#/go/dues/due-tyres', open(/^Change$/)],
  ['a measure of a due', '#/go/dues/due-tyres', open(/^Measured$/)],
  ['lay-up', '#/go/season/lay-up'],
];

/** Goes to a screen in the app that is open; it is begun anew only where that would not show the screen as it is come to. */
async function goTo(page: Page, at: string): Promise<void> {
  const address = inject('address') + at;
  const sheet = await closeSheet(page);
  const open = page.url().startsWith(inject('address')) && sheet !== 'stays';
  if (open && (sheet === 'closed' || page.url() !== address)) return goInApp(page, at);
  await page.goto('about:blank');
  await page.goto(address);
  await page.locator('main h1').first().waitFor({ timeout: 30_000 });
}

/** Closes what lies over the page; one that holds what was typed may stay. */
async function closeSheet(page: Page): Promise<'none' | 'closed' | 'stays'> {
  const sheet = page.locator('dialog[open]');
  if ((await sheet.count()) === 0) return 'none';
  await page.keyboard.press('Escape');
  return sheet
    .waitFor({ state: 'detached', timeout: 1_000 })
    .then(() => 'closed' as const)
    .catch(() => 'stays' as const);
}

/** Looks that are not only other colours: the phone's in paper and red, the laptop's in dark. */
const looks = [
  ['paper', phone],
  ['red', phone],
  ['dark', laptop],
] as const;

describe('axe finds nothing serious in paper and red on a phone, and in dark on a laptop:', () => {
  let context: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    context = await browser.newContext({ viewport: phone, reducedMotion: 'reduce' });
    page = await context.newPage();
    page.setDefaultTimeout(15_000);
  });
  afterAll(() => context.close());

  // each screen is opened once, and its look changed where it stands
  it.each(screens.map(([name, at, after]) => ({ name, at, after })))('$name', async ({ at, after }) => {
    await page.setViewportSize(phone);
    await goTo(page, at);
    await after?.(page).catch(async (fault: Error) => {
      const stands = (await page.locator('main').textContent()) ?? '';
      // what comes next begins the app anew
      await page.goto('about:blank');
      throw new Error(`${fault.message}\nThe page read: ${stands.slice(0, 400)}`, { cause: fault });
    });
    const found: string[] = [];
    // what a tap opens is made of the same parts in every look: there its contrast in dark is asked besides, no more
    for (const [theme, size] of after ? looks.filter(([name]) => name !== 'red') : looks) {
      await page.setViewportSize(size);
      await page.evaluate(async (name) => {
        document.documentElement.dataset.theme = name;
        await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
      }, theme);
      // red is paper in other colours
      const colours = theme === 'red' || (theme === 'dark' && after !== undefined);
      const faults = await seriousFaults(page, colours ? ['color-contrast'] : undefined);
      found.push(...faults.map((fault) => `${theme}: ${fault}`));
    }
    expect(found).toEqual([]);
  });
});
