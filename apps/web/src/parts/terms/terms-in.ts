/** Where the terms of the glossary stand in a text. Pure: the page is looked through by `terms-on-page.ts`. */
import { type TermMark, termMarks } from './term-marks.ts';

export interface TermInText {
  /** the term, as the glossary has it */
  readonly of: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Finds the terms in texts of one screen.
 *
 * @param path the address of the screen after '#/': a word may be a term on some screens and a plain word on others
 * @param marks the terms that are looked for
 */
export function termFinder(path: string, marks: readonly TermMark[] = termMarks): (text: string) => TermInText[] {
  const here = marks.filter(({ on }) => on === undefined || on.test(path));
  const terms = new Map(here.flatMap(({ of, also = [] }) => [of, ...also].map((word) => [plain(word), of])));
  // the longest first: 'ball load' before 'load'
  const words = [...terms.keys()].sort((a, b) => b.length - a.length).map((word) => word.replaceAll(' ', '[-\\s]'));
  const pattern = new RegExp(`(?<![\\w-])(${words.join('|')})((?:s|es)?)(?![\\w-])`, 'gi');
  return (text) =>
    [...text.matchAll(pattern)].map((match) => ({
      of: terms.get(plain(match[1]!))!,
      from: match.index,
      to: match.index + match[0].length,
    }));
}

/** Small letters, and no hyphen: 'set-up' is found as 'Set up' too. */
const plain = (word: string) => word.toLowerCase().replaceAll(/[-\s]+/g, ' ');
