/** What a pattern is made of, so that it need not be tried, nor even made, where it cannot be met. */

/** A pattern parted at its outermost bars. */
export function alternativesOf(pattern: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let start = 0;
  for (let at = 0; at < pattern.length; at++) {
    if (pattern[at] === '\\') at++;
    else if (pattern[at] === '(' || pattern[at] === '[') depth++;
    else if (pattern[at] === ')' || pattern[at] === ']') depth--;
    else if (pattern[at] === '|' && depth === 0) {
      parts.push(pattern.slice(start, at));
      start = at + 1;
    }
  }
  return [...parts, pattern.slice(start)];
}

/** Where a letter, a class or a group of a pattern that begins at `at` ends. */
export function atomEnd(pattern: string, at: number): number {
  if (pattern[at] === '\\') return at + 2;
  if (pattern[at] !== '(' && pattern[at] !== '[') return at + 1;
  let depth = 0;
  for (let end = at; end < pattern.length; end++) {
    if (pattern[end] === '\\') end++;
    else if (pattern[end] === '(' || pattern[end] === '[') depth++;
    else if (pattern[end] === ')' || pattern[end] === ']') {
      depth--;
      if (depth === 0) return end + 1;
    }
  }
  return pattern.length;
}

/**
 * Letters one of which stands wherever the pattern is met, in small letters; null where none can be told. Of several such
 * sets the one whose shortest is longest.
 */
export function lettersNeeded(pattern: string): readonly string[] | null {
  const needed: string[] = [];
  for (const each of alternativesOf(pattern)) {
    const here = neededInRow(each);
    if (here === null) return null;
    needed.push(...here);
  }
  return [...new Set(needed)];
}

function neededInRow(pattern: string): readonly string[] | null {
  let best: readonly string[] | null = null;
  let run = '';
  const consider = (set: readonly string[] | null) => {
    if (set !== null && (best === null || shortest(set) > shortest(best))) best = set;
  };
  const endRun = () => {
    if (run.length > 1) consider([run]);
    run = '';
  };
  let at = 0;
  while (at < pattern.length) {
    const end = atomEnd(pattern, at);
    const atom = pattern.slice(at, end);
    const quantifier = quantifierAt(pattern, end);
    const mayLack = /^(?:[?*]|\{0)/.test(quantifier);
    const plain = /^[^\\()[\].^$ |]$/.test(atom);
    if (plain && !mayLack) run += atom;
    if (!plain || quantifier !== '') endRun();
    if (atom.startsWith('(') && !/^\(\?(?:[=!]|<[=!])/.test(atom) && !mayLack)
      consider(lettersNeeded(atom.replace(/^\((?:\?:)?/, '').slice(0, -1)));
    at = end + quantifier.length;
  }
  endRun();
  return best;
}

function quantifierAt(pattern: string, at: number): string {
  quantifiers.lastIndex = at;
  return quantifiers.exec(pattern)?.[0] ?? '';
}
const quantifiers = /(?:[?*+]|\{[^}]*\})\??/y;

const shortest = (set: readonly string[]) => Math.min(...set.map(({ length }) => length));
