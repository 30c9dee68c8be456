/** To another page of the app that is open already: to begin the app anew takes longer than most of what is asked of a page. */
import type { Page } from 'playwright-core';

/**
 * Goes to a page of the app that is open, and waits till it is at rest, which is when its terms are underlined.
 *
 * @param hash  as `#/boat/log`; where one is there already, it is only waited for
 */
export async function goInApp(page: Page, hash: string): Promise<void> {
  await page.evaluate((hash) => {
    if (location.hash === hash) return;
    // the lines of the page that is left may stand a moment longer
    for (const lines of document.querySelectorAll('main > .terms-lines')) lines.classList.add('of-page-left');
    location.hash = hash;
  }, hash);
  await page.locator('main > .terms-lines:not(.of-page-left)').waitFor({ state: 'attached' });
}
