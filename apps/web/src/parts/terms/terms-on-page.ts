/** The terms that stand on a page, and the first place of each where a tap of it means nothing else. */
import { termFinder } from './terms-in.ts';

export interface TermOnPage {
  readonly of: string;
  /** null: it stands only where a tap means something, or in a title: it is explained in the list of the words */
  readonly first: Range | null;
}

/** what is not read through: drawings, what is not shown, and what speaks of the terms itself */
const passedOver = 'svg, script, style, textarea, select, .unseen, .terms-here, [hidden]';
/** where a tap means something else already */
const tapped = 'a, button, label, summary, [role="button"], [role="radio"], [role="tab"], [role="option"]';
/** titles are read as titles: a term is marked in the text below rather */
const titles = 'h1, h2, h3, th';

/** The terms on a page in the order they are met, each with its first standing place. */
export function termsOnPage(root: Element, path: string): TermOnPage[] {
  const inText = termFinder(path);
  const found = new Map<string, { first: Range | null; inTitle: boolean }>();
  for (const node of textsOf(root))
    for (const { of, from, to } of inText(node.data)) {
      const known = found.get(of);
      if (known?.first && !known.inTitle) continue;
      const place = placeOf(node, from, to);
      if (place === null) continue;
      const better = place.first !== null && (known?.first == null || !place.inTitle);
      if (!known || better) found.set(of, place);
    }
  return [...found].map(([of, { first }]) => ({ of, first }));
}

/** What stands there; null: it is not shown. */
function placeOf(node: Text, from: number, to: number): { first: Range | null; inTitle: boolean } | null {
  const parent = node.parentElement;
  // what is folded away has its place on the page too, though nobody sees it
  if (!parent?.checkVisibility()) return null;
  const range = new Range();
  range.setStart(node, from);
  range.setEnd(node, to);
  if (range.getClientRects().length === 0) return null;
  return { first: parent.closest(tapped) ? null : range, inTitle: parent.closest(titles) !== null };
}

function* textsOf(root: Element): Generator<Text> {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT, (node) => {
    if (node instanceof Element) return node.matches(passedOver) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_SKIP;
    return NodeFilter.FILTER_ACCEPT;
  });
  for (let node = walker.nextNode(); node; node = walker.nextNode()) yield node as Text;
}
