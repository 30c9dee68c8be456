/** A bow cleat asked about on the page of fastenings: two M6 bolts in 5 mm of laminate, a pull of 1500 N along the deck. */
import type { Page } from 'playwright-core';

export async function askCleat(page: Page) {
  await page.getByRole('combobox', { name: 'The fitting' }).fill('Bow cleat');
  await page.getByRole('combobox', { name: 'It is for' }).selectOption({ label: 'anchor, rode and mooring' });
  await page.getByRole('textbox', { name: /^The pull on it/ }).fill('1500');
  await page.getByRole('combobox', { name: 'It pulls' }).selectOption({ label: 'along the surface' });
  await page.getByRole('textbox', { name: /^The pull stands above/ }).fill('40');
  await page.getByRole('textbox', { name: /^Front row to back row/ }).fill('80');
  await page.getByRole('combobox', { name: 'It holds in' }).selectOption({ label: 'glass laminate, laid by hand' });
  await page.getByRole('combobox', { name: /^How many/ }).selectOption('2');
  await page.getByRole('textbox', { name: /^Thickness it goes through/ }).fill('5');
  await page.getByRole('button', { name: 'Work it out' }).click();
}
