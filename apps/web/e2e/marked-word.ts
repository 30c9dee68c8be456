/** The words of the glossary that are underlined on a page, and where a finger would tap one. */
import type { Page } from 'playwright-core';

/** The underlined words, as they stand in the text. */
export const markedWords = (page: Page): Promise<string[]> =>
  page.locator('.terms-lines [data-word]').evaluateAll((all) => all.map((line) => (line as HTMLElement).dataset.word!));

/** Brings an underlined word into the middle of the window, and says where it is. */
export async function placeOfWord(page: Page, word: string): Promise<{ x: number; y: number }> {
  const line = page.locator(`.terms-lines [data-word="${word}"]`);
  await line.evaluate((under) => under.scrollIntoView({ block: 'center' }));
  const box = (await line.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y - 6 };
}

/** The text that is drawn right over the line of an underlined word. */
export async function textOver(page: Page, word: string): Promise<string> {
  const { x, y } = await placeOfWord(page, word);
  return page.evaluate(
    ([left, top, length]) => {
      const over = document.caretPositionFromPoint(left, top);
      const text = over?.offsetNode.textContent ?? '';
      return text.slice(Math.max(0, (over?.offset ?? 0) - length), (over?.offset ?? 0) + length);
    },
    [x, y, word.length] as const,
  );
}
