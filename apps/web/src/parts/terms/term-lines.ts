/**
 * The dotted lines under the terms of a page, laid over it: the text itself is left as it is. A browser can underline what
 * it is told of by itself (CSS Custom Highlight API), but then it paints the whole page anew whenever anything on it
 * changes its style, and that before it answers a tap: 20 to 30 ms on a slow phone.
 */
import type { TermOnPage } from './terms-on-page.ts';

/** Lines over a page that follow their words as it changes. */
export interface TermLines {
  /** Puts them where the words stand now. */
  follow(): void;
  remove(): void;
}

interface Underlined {
  readonly range: Range;
  /** parts of the page that it scrolls in, and is seen through */
  readonly frames: readonly Element[];
}

const kind = 'terms-lines';

/**
 * Underlines the first places of terms.
 *
 * @param page  what they stand in, and scroll with
 */
export function drawTermLines(page: Element, terms: readonly TermOnPage[]): TermLines {
  const over = document.createElement('div');
  over.className = `${kind} no-print`;
  over.ariaHidden = 'true';
  page.append(over);
  const underlined = terms.flatMap(({ first }) => (first === null ? [] : underlinedIn(page, first)));
  let drawn = '';
  const follow = () => {
    const { left, top } = over.getBoundingClientRect();
    const lines = underlined.flatMap((term) => linesUnder(term, left, top));
    const all = JSON.stringify(lines);
    if (all === drawn) return;
    drawn = all;
    over.replaceChildren(...lines.map(lineElement));
  };
  follow();
  const resized = new ResizeObserver(follow);
  resized.observe(page);
  // what scrolls as a whole takes its lines along
  const scrolled = ({ target }: Event) => target !== page && follow();
  page.addEventListener('scroll', scrolled, { capture: true, passive: true });
  return {
    follow,
    remove() {
      resized.disconnect();
      page.removeEventListener('scroll', scrolled, { capture: true });
      over.remove();
    },
  };
}

/** True where nothing has changed on the page but its lines. */
export function onlyLines(changes: readonly MutationRecord[]): boolean {
  const isLines = (node: Node) => node instanceof Element && node.classList.contains(kind);
  return changes.every(
    ({ target, addedNodes, removedNodes }) =>
      isLines(target) ||
      (addedNodes.length + removedNodes.length > 0 && [...addedNodes, ...removedNodes].every(isLines)),
  );
}

/**
 * None where it stands still while the page scrolls, for its line would run away from it; nor where it is laid out freely,
 * as the parts of a drawing are, of which one may lie over the other.
 */
function underlinedIn(page: Element, range: Range): Underlined[] {
  const frames: Element[] = [];
  for (
    let around = range.startContainer.parentElement;
    around !== null && around !== page;
    around = around.parentElement
  ) {
    const { position, overflowX, overflowY } = getComputedStyle(around);
    if (position !== 'static' && position !== 'relative') return [];
    if (overflowX !== 'visible' || overflowY !== 'visible') frames.push(around);
  }
  return [{ range, frames }];
}

interface Line {
  /** what is underlined; of a term broken over two lines, once */
  readonly word: string | null;
  readonly style: string;
}

/** A line a line of text. [CSS px from the corner given] */
function linesUnder({ range, frames }: Underlined, left: number, top: number): Line[] {
  if (!range.startContainer.parentElement?.checkVisibility()) return []; // it was folded away
  const seen = frames.map((frame) => frame.getBoundingClientRect());
  return [...range.getClientRects()].flatMap((box, i) => {
    const from = Math.max(box.left, ...seen.map((frame) => frame.left));
    const to = Math.min(box.right, ...seen.map((frame) => frame.right));
    if (to <= from || seen.some((frame) => box.bottom > frame.bottom + 1 || box.top < frame.top - 1)) return [];
    const px = (value: number) => `${Math.round(value * 10) / 10}px`;
    const style = `left:${px(from - left)};top:${px(box.bottom - top)};width:${px(to - from)}`;
    return [{ word: i === 0 ? range.toString() : null, style }];
  });
}

function lineElement({ word, style }: Line): HTMLElement {
  const line = document.createElement('i');
  line.style.cssText = style;
  if (word !== null) line.dataset.word = word;
  return line;
}
