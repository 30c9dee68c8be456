/** The glossary of the house, read as it stands: the words of a row, and what they mean. */
import text from '../../../../../GLOSSARY.md?raw';

/** What a word means, a line a meaning; of a word that has two, both. Empty: it is not in the glossary. */
export function meaningsOf(word: string): readonly string[] {
  return rows.filter(({ words }) => words.includes(word.toLowerCase())).map(({ meaning }) => meaning);
}

const rows = text.split('\n').flatMap((line) => {
  const [, words, meaning] = /^\| ([^|]+) \| ([^|]+) \|$/.exec(line.trim()) ?? [];
  if (words === undefined || meaning === undefined || /^-+$/.test(words)) return [];
  return [{ words: words.split(', ').map((word) => word.trim().toLowerCase()), meaning: meaning.trim() }];
});
