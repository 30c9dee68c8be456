/** The forecast from the network on a phone: told what it sends, on, in the plan, at fault, and off again. */
import { mkdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, it } from 'vitest';
import { forecastStandIn, type StandIn } from '../src/screens/days/forecast/testing/forecast-stand-in.ts';
import { launchBrowser, phone } from './browser.ts';
import { seriousFaults } from './page-checks.ts';

const pictures = 'screenshots/forecast';

let browser: Browser;
let standIn: StandIn;
beforeEach(async () => {
  standIn = await forecastStandIn();
});
afterEach(async () => {
  await standIn.close();
});
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const sheet = (page: Page) => page.locator('dialog[aria-busy="false"]');

it('is turned on knowing what is sent, used by the plan, kept with its age through a fault, and turned off', async () => {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB' });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(inject('address')) && !/^(data|blob):/.test(request.url()))
      elsewhere.push(request.url());
  });
  const shot = (name: string) => page.screenshot({ path: `${pictures}/${name}-390.png`, fullPage: true });

  await page.goto(`${inject('address')}#/days/weather`);
  await page.getByText('Off: nothing is asked, and nothing leaves this device.').waitFor();
  await shot('off');
  // while it is off the page itself can reach no other server
  const reached = (url: string) =>
    page.evaluate(
      (there) =>
        fetch(there).then(
          () => 'reached',
          () => 'kept from it',
        ),
      url,
    );
  expect(await reached(standIn.address)).toBe('kept from it');
  expect(standIn.asked).toHaveLength(0);

  await page.getByRole('button', { name: 'What turning it on sends' }).click();
  await sheet(page)
    .getByText(/^\d+\.\d° [NS], \d+\.\d° [EW]$/)
    .first()
    .waitFor();
  await sheet(page).getByText('rounded to a tenth of a degree', { exact: false }).first().waitFor();
  await sheet(page)
    .getByRole('button', { name: /^Send the rounded places? to api\.open-meteo\.com$/ })
    .waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  await page.screenshot({ path: `${pictures}/consent-390.png` });
  await sheet(page).getByText('Another server').click();
  const server = sheet(page).getByLabel('Address of the server');
  await server.fill('http://weather.example/v1/forecast');
  await sheet(page)
    .getByRole('button', { name: /^Send the rounded/ })
    .click();
  await sheet(page)
    .getByText(/asked over http can be read on the way/)
    .waitFor();
  await server.fill(standIn.address);
  await sheet(page)
    .getByRole('button', { name: /^Send the rounded places? to 127\.0\.0\.1/ })
    .click();

  // it asks at once, and what it told of the place is rounded to a tenth
  await page.getByText(/^Forecast for .* (just taken|1 minute old), to .* from your server 127\.0\.0\.1:\d+/).waitFor();
  const told = new URL(standIn.asked[0]!.url, standIn.address).searchParams;
  expect(told.get('latitude')).toMatch(/^-?\d+\.\d$/);
  expect([...told.keys()].sort()).toEqual(
    ['forecast_days', 'hourly', 'latitude', 'longitude', 'timeformat', 'wind_speed_unit'].sort(),
  );
  await page
    .getByText(/^Forecast: dry, 5 % chance of rain in an hour, wind 6 kn/)
    .first()
    .waitFor();
  await shot('on');

  // the plan counts on it
  await page.goto(`${inject('address')}#/days/plan`);
  await page
    .getByText(/^Forecast for .* from your server/)
    .first()
    .waitFor();
  await shot('plan');

  // the next asking goes wrong: the last good one stays
  standIn.fault = 'wrong units';
  await page.goto(`${inject('address')}#/days/weather`);
  await page.getByRole('button', { name: 'Ask now' }).click();
  await page
    .getByText(/^Not taken at \d\d:\d\d: the wind should come in kn and comes in km\/h\. The forecast above is kept\.$/)
    .waitFor();
  await page
    .getByText(/^Forecast for .* from your server/)
    .first()
    .waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  await shot('fault');

  // what is entered by hand goes before it, until it is taken out again
  await page.getByRole('group', { name: 'Day', exact: true }).getByRole('radio').nth(2).press('Space');
  await page.getByText('Hour by hour').click();
  await page.getByLabel('12:00 rain').selectOption('rain');
  for (const [field, figure] of [
    ['chance of rain', '90'],
    ['wind', '15'],
    ['air', '9'],
    ['humidity', '95'],
  ] as const)
    await page.getByLabel(`12:00 ${field}`).fill(figure);
  await page.getByRole('button', { name: 'Enter the weather' }).click();
  await page.getByText(/^Entered\./).waitFor();
  await page
    .getByText(/hours? of this day (is|are) entered by hand and in the forecast: what you entered counts/)
    .waitFor();
  await shot('by-hand');
  await page.getByRole('button', { name: 'Go by the forecast' }).click();
  await page.getByText('what you entered counts').waitFor({ state: 'detached' });
  // an empty field shows what counts now
  await page.locator('input[aria-label="12:00 wind"][placeholder="6"]').waitFor();
  expect(await page.getByLabel('12:00 wind').inputValue()).toBe('');

  const asked = standIn.asked.length;
  await page.getByRole('button', { name: 'Turn it off, or change it' }).click();
  await sheet(page).getByRole('button', { name: 'Turn it off' }).click();
  await page.getByText('Off: nothing is asked, and nothing leaves this device.').waitFor();
  expect(await reached(standIn.address)).toBe('kept from it');
  expect(standIn.asked).toHaveLength(asked);
  expect(elsewhere.filter((url) => !url.startsWith(new URL(standIn.address).origin))).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});
