/** The starboard shroud plate asked about on the page of bedding: stainless on laminate, bolted, to come off some day. */
import type { Page } from 'playwright-core';

export async function askBedding(page: Page) {
  await page.getByRole('combobox', { name: 'One part is', exact: true }).selectOption('stainless');
  await page.getByRole('combobox', { name: 'The other part is' }).selectOption('grp');
  await page.getByText('screws or bolts: it only seals').click();
  await page.getByText('some day', { exact: true }).click();
  await page.getByText('in spray, rain and sun').click();
  await page.getByRole('textbox', { name: /^Room between the parts/ }).fill('2');
  await page.getByRole('textbox', { name: 'Long' }).fill('80');
  await page.getByRole('textbox', { name: 'Wide' }).fill('60');
  await page.getByRole('button', { name: 'Find what does' }).click();
  await page.locator('.bedding-answer').waitFor();
}
