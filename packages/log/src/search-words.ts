/** The words of a text as the search goes by them: folded, without endings, and what they mean by the trade's thesaurus. */
import { spokenOf } from '#jobs';

/** Words that carry nothing in a question put to the log: `what was this bedded with?` */
const empty = new Set(
  'a an and are as at be been by did do does for from had has have how in into is it its last me my now of off on or our she that the then there these this to up was we were what when where which who why will with you your'.split(
    ' ',
  ),
);

/** A word of a question: its stem, and the marks of what it means. */
export interface SearchedWord {
  readonly stem: string;
  /** of meanings that it says alone, or as one of the words of a phrase */
  readonly meanings: readonly string[];
}

const folded = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '');

/** What a meaning is indexed as: no word is written so. */
const markOf = (meaning: number) => `#${meaning}`;

/** Whether a term of the index is a meaning, not a word. */
export const isMark = (term: string): boolean => term.startsWith('#');

/** The words of a question that say something, in order, each with what it means. */
export function wordsAsked(text: string): readonly SearchedWord[] {
  const { words, stems, meanings } = spokenOf(folded(text));
  return words.flatMap((word, place): SearchedWord[] => {
    // `will not start`: an empty word of a phrase is carried by its other words
    if (empty.has(word)) return [];
    const marks = [...meanings].flatMap(([of, places]) => (places.has(place) ? [markOf(of)] : []));
    return [{ stem: stems[place]!, meanings: marks }];
  });
}

/** What a text is indexed by: the stem of every word that says something, and each meaning in it once. */
export function termsOf(text: string): string[] {
  const { words, stems, meanings } = spokenOf(folded(text));
  return [...stems.filter((_, place) => !empty.has(words[place]!)), ...[...meanings.keys()].map(markOf)];
}
