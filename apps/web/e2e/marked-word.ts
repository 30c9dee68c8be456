/** The words of the glossary that are underlined on a page, and where a finger would tap one. */
import type { Page } from 'playwright-core';

/** The underlined words, as they stand in the text. */
export const markedWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...(CSS.highlights.get('term') ?? [])].map(String));

/** Brings an underlined word into the middle of the window, and says where it is. */
export async function placeOfWord(page: Page, word: string): Promise<{ x: number; y: number }> {
  await page.waitForFunction((said) => [...(CSS.highlights.get('term') ?? [])].map(String).includes(said), word);
  return page.evaluate((said) => {
    const range = [...CSS.highlights.get('term')!].find((each) => String(each) === said) as Range;
    range.startContainer.parentElement!.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = range.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  }, word);
}
