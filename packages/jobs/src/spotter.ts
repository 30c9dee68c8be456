/** Finding the words of a long list in talk: only what begins with a letter that stands there is tried and made. */
import { alternativesOf, atomEnd } from './pattern-parts.ts';

interface Spotter {
  /** every place of a listed word or phrase, one after another, in lower-case talk */
  readonly all: (talk: string) => RegExpExecArray[];
  /** the first place from `from` on; null: none */
  readonly next: (talk: string, from?: number) => RegExpExecArray | null;
  /** the whole of it is one listed word or phrase */
  readonly fills: (talk: string) => boolean;
}

/**
 * @param patterns  of words and phrases in small letters; of two that begin at one place the longer pattern counts
 * @param ending  what may follow each, as a pattern
 */
export function spotterOf(patterns: readonly string[], ending = ''): Spotter {
  /** by first letter; '' for those that begin with any */
  const byLetter = new Map<string, string[]>();
  const listed = patterns.flatMap(alternativesOf).sort((a, b) => b.length - a.length);
  for (const pattern of listed)
    for (const letter of firstLetters(pattern) ?? [''])
      byLetter.set(letter, [...(byLetter.get(letter) ?? []), pattern]);
  const made = new Map<string, RegExp | null>();
  const madeFor = (letter: string): RegExp | null => {
    const before = made.get(letter);
    if (before !== undefined) return before;
    const here = [...(byLetter.get(letter) ?? []), ...(byLetter.get('') ?? [])];
    const words = here.join('|').replace(/ (?![?*+])/g, ' +');
    const regexp = here.length === 0 ? null : new RegExp(`(?:${words})${ending}(?![a-zß-ɏ0-9]|'(?!s))`, 'y');
    made.set(letter, regexp);
    return regexp;
  };
  const next = (talk: string, from = 0): RegExpExecArray | null => {
    for (let at = from; at < talk.length; at++) {
      if (at > 0 && isWord(talk.charCodeAt(at - 1))) continue;
      const regexp = madeFor(talk[at]!);
      if (regexp === null) continue;
      regexp.lastIndex = at;
      const found = regexp.exec(talk);
      if (found !== null && found[0] !== '') return found;
    }
    return null;
  };
  const all = (talk: string): RegExpExecArray[] => {
    const places: RegExpExecArray[] = [];
    for (let found = next(talk); found !== null; found = next(talk, found.index + found[0].length)) places.push(found);
    return places;
  };
  return { all, next, fills: (talk) => next(talk)?.[0] === talk };
}

/** A letter, a figure, an apostrophe or a hyphen: after it no word begins. */
function isWord(code: number): boolean {
  return (
    (code >= 97 && code <= 122) ||
    (code >= 48 && code <= 57) ||
    code === 39 ||
    code === 45 ||
    (code >= 0xdf && code <= 0x24f)
  );
}

/** The letters that a pattern can begin with; null: any. */
function firstLetters(pattern: string): ReadonlySet<string> | null {
  const letters = new Set<string>();
  let at = 0;
  while (at < pattern.length) {
    const end = atomEnd(pattern, at);
    const atom = pattern.slice(at, end);
    const quantifier = pattern[end] === '?' || pattern[end] === '*';
    if (/^\(\?(?:[=!]|<[=!])/.test(atom)) {
      at = end;
      continue;
    }
    if (atom.startsWith('\\')) return null;
    if (atom.startsWith('[')) for (const letter of atom.slice(1, -1)) letters.add(letter);
    else if (atom.startsWith('(')) {
      for (const each of alternativesOf(atom.replace(/^\((?:\?:)?/, '').slice(0, -1))) {
        const first = firstLetters(each);
        if (first === null) return null;
        for (const letter of first) letters.add(letter);
      }
    } else letters.add(atom);
    if (!quantifier) return letters;
    at = end + 1;
  }
  return letters;
}
