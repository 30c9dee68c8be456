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

/** Words whose line does not lie under them. */
export const linesAstray = (page: Page): Promise<string[]> =>
  page.locator('.terms-lines [data-word]').evaluateAll((all) =>
    all.flatMap((line) => {
      line.scrollIntoView({ block: 'center', behavior: 'instant' });
      const { left, top, width } = line.getBoundingClientRect();
      const text = document.caretPositionFromPoint(left + width / 2, top - 6)?.offsetNode.textContent;
      const word = (line as HTMLElement).dataset.word!;
      return text?.includes(word)
        ? []
        : [`${word}: over its line, at ${Math.round(left)}, ${Math.round(top)}, stands '${text}'`];
    }),
  );
