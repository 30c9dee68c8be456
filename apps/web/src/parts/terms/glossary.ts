/** The glossary of the house, read as it stands. */
import text from '../../../../../GLOSSARY.md?raw';

/** A row of the glossary: one word, or some that are explained together, and what is meant. */
export interface GlossaryRow {
  readonly words: readonly string[];
  readonly meaning: string;
}

export const glossary: readonly GlossaryRow[] = text.split('\n').flatMap((line) => {
  const [, words, meaning] = /^\| ([^|]+) \| ([^|]+) \|$/.exec(line.trim()) ?? [];
  if (words === undefined || meaning === undefined || words === 'word' || /^-+$/.test(words)) return [];
  return [{ words: words.split(', ').map((word) => word.trim()), meaning: meaning.trim() }];
});

/** The rows that explain a word; of one that means two things, two. Empty: it is not in the glossary. */
export const rowsOf = (word: string): readonly GlossaryRow[] => glossary.filter(({ words }) => words.includes(word));
