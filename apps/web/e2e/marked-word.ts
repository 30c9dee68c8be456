/** The words of the glossary that are underlined on a page, and where a finger would tap one. */
import type { Page } from 'playwright-core';

/** The underlined words, as they stand in the text. */
export const markedWords = (page: Page): Promise<string[]> =>
  page.locator('.terms-lines [data-word]').evaluateAll((all) => all.map((line) => (line as HTMLElement).dataset.word!));

/**
 * Brings an underlined word into the middle of the window once it is there, and says where it is. All in one go: the lines
 * are drawn anew whenever the page has grown, and one that was asked for a moment ago is then on no page.
 */
export async function placeOfWord(page: Page, word: string): Promise<{ x: number; y: number }> {
  const place = await page.waitForFunction((word) => {
    const line = document.querySelector(`.terms-lines [data-word="${word}"]`);
    if (line === null) return null;
    line.scrollIntoView({ block: 'center', behavior: 'instant' });
    const { left, top, width } = line.getBoundingClientRect();
    return { x: left + width / 2, y: top - 6 };
  }, word);
  return (await place.jsonValue())!;
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
