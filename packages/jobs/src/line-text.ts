import { lettersNeeded } from './pattern-parts.ts';
import type { Understood } from './read-line-parts.ts';

/** A line being read: its plain text, letter for letter, and which of its words are already understood. */
export interface LineText {
  readonly line: string;
  /** lower case, plain quotes and dashes, same length as the line */
  readonly plain: string;
  readonly claimed: { readonly from: number; readonly to: number; readonly inTitle: boolean }[];
}

export function lineText(line: string): LineText {
  const lower = line.toLowerCase();
  // a letter whose small form is longer would shift all that follow
  const plain = (lower.length === line.length ? lower : Array.from(line, sameLength).join(''))
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/[–—‑−]/g, '-')
    .replace(/[\s\u00a0\u202f]/g, ' ');
  return { line, plain, claimed: [] };
}

function sameLength(letter: string): string {
  const lower = letter.toLowerCase();
  return lower.length === letter.length ? lower : letter;
}

/** Words or a pattern of them, between word ends. */
export interface Phrase {
  readonly pattern: string;
  /** every place of it in lower-case text, one after another */
  readonly all: (plain: string) => Iterable<RegExpExecArray>;
}

const made = new Map<string, Phrase>();

/**
 * A pattern between word ends; write it in lower case. A space in it stands for one or more. It is made when it is first
 * needed, and tried only where letters stand without which it cannot be met.
 *
 * Letters are written `a-zß-ɏ` in the patterns of this package, all Latin small ones: `\p{L}` knows every script and makes
 * each pattern many times dearer, and the talk is English.
 */
export function phrase(pattern: string): Phrase {
  const before = made.get(pattern);
  if (before) return before;
  // names of one boat after another, in a program that runs for long
  if (made.size > 2000) made.clear();
  let needed: readonly string[] | null | undefined;
  let regexp: RegExp | undefined;
  const phrase: Phrase = {
    pattern,
    *all(plain) {
      if (needed === undefined) needed = lettersNeeded(pattern);
      if (needed !== null && !holdsAny(plain, needed)) return;
      regexp ??= new RegExp(`(?<![a-zß-ɏ0-9])(?:${pattern.replace(/ (?![?*+])/g, ' +')})(?![a-zß-ɏ0-9])`, 'g');
      let from = 0;
      for (;;) {
        regexp.lastIndex = from;
        const found = regexp.exec(plain);
        if (found === null) return;
        from = found.index + Math.max(1, found[0].length);
        yield found;
      }
    },
  };
  made.set(pattern, phrase);
  return phrase;
}

/** When each pair of letters was last seen, so that the text at hand need not be searched for every word of a list. */
const seen = new Uint32Array(4096);
let looks = 0;
let lookedAt = '';
const pair = (text: string, at: number) => ((text.charCodeAt(at) & 63) << 6) | (text.charCodeAt(at + 1) & 63);

function holdsAny(plain: string, letters: readonly string[]): boolean {
  if (plain !== lookedAt) {
    lookedAt = plain;
    looks++;
    for (let at = 0; at + 1 < plain.length; at++) seen[pair(plain, at)] = looks;
  }
  return letters.some((each) => seen[pair(each, 0)] === looks && plain.includes(each));
}

export interface ClaimRule {
  /** keep the words in the title unless they are a part of the line by themselves */
  readonly keep?: boolean;
  /** only where the words are a part of the line by themselves */
  readonly alone?: boolean;
  /** not where they stand within one of these */
  readonly except?: readonly { readonly from: number; readonly to: number }[];
  /** words that belong to it where they stand right before it; ends in `$` */
  readonly led?: RegExp;
}

/** The first place where a pattern is found among words not yet understood and read to a value; its words are claimed. */
export function claim<T>(
  text: LineText,
  pattern: Phrase,
  read: (match: RegExpMatchArray) => T | null,
  { keep = false, alone = false, except = [], led }: ClaimRule = {},
): Understood<T> | null {
  for (const match of pattern.all(text.plain)) {
    const to = match.index + match[0].length;
    const from =
      led === undefined ? match.index : match.index - (led.exec(text.plain.slice(0, match.index))?.[0].length ?? 0);
    if (text.claimed.some((span) => from < span.to && span.from < to)) continue;
    if (except.some((span) => span.from <= from && to <= span.to)) continue;
    const whole = fillsItsPart(text, from, to);
    if (alone && !whole) continue;
    const value = read(match);
    if (value === null) continue;
    const inTitle = keep && !whole;
    text.claimed.push({ from, to, inTitle });
    return { value, from, to, words: text.line.slice(from, to), inTitle };
  }
  return null;
}

/** Ends of the part of the line (between commas, semicolons, full stops) that a place in it belongs to. */
export function partAround(plain: string, from: number, to: number): { readonly from: number; readonly to: number } {
  let start = 0;
  for (const match of plain.matchAll(partEnd)) {
    if (match.index >= to) return { from: start, to: match.index };
    if (match.index + match[0].length <= from) start = match.index + match[0].length;
  }
  return { from: start, to: plain.length };
}

/** What comes next, after spaces and 'and', is the end of the part or was understood already. */
export function followedByUnderstood(text: LineText, to: number): boolean {
  const next = to + (/^ *(?:and )?/.exec(text.plain.slice(to))?.[0].length ?? 0);
  if (next >= text.plain.length || partAround(text.plain, to, to).to <= next) return true;
  return text.claimed.some((span) => !span.inTitle && span.from <= next && next < span.to);
}

/** Commas, semicolons, a full stop or colon at a word's end, a dash between spaces. Not the point in 1.5. */
const partEnd = /[,;]|[.:!?](?= |$)| - /g;

function fillsItsPart(text: LineText, from: number, to: number): boolean {
  const part = partAround(text.plain, from, to);
  const others = text.claimed.filter((span) => !span.inTitle);
  let rest = '';
  for (let at = part.from; at < part.to; at++) {
    if (at >= from && at < to) continue;
    if (!others.some((span) => at >= span.from && at < span.to)) rest += text.plain[at];
  }
  return rest.replace(connectors, ' ').trim() === '';
}

/** What may be left hanging where words were taken out. */
const connectors =
  /(?<![a-zß-ɏ])(?:and|with|the|a|it|it's|its|is|in|on|for|by|needs?|then|so|this|that|about|takes?|but)(?![a-zß-ɏ])/gi;

/** The title: the words not understood, without the joints that hung on what was. */
export function titleLeft(text: LineText): string {
  const taken = text.claimed.filter((span) => !span.inTitle);
  const gap = '\u0000';
  const letters = Array.from({ length: text.line.length }, (_, at) =>
    taken.some((span) => at >= span.from && at < span.to) ? gap : text.line[at]!,
  ).join('');
  const parts: string[] = [];
  let start = 0;
  const plainEnds = [...text.plain.matchAll(partEnd)].filter(
    ({ index }) => !taken.some((span) => index >= span.from && index < span.to),
  );
  for (const end of plainEnds) {
    parts.push(letters.slice(start, end.index));
    start = end.index + end[0].length;
  }
  parts.push(letters.slice(start));
  const tidied = parts
    .map((part) =>
      part
        .replace(
          new RegExp(`(?:\\s+(?:and|with|for|by|in|on|needs?|the|then|it's|is|but|about|takes?))*\\s*${gap}+`, 'gi'),
          gap,
        )
        .replace(new RegExp(`^${gap}\\s*(?:and|but|so|then)\\s+`, 'i'), '')
        .replaceAll(gap, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((part) => part.replace(connectors, ' ').trim() !== '');
  const title = tidied.join(', ');
  return title.charAt(0).toUpperCase() + title.slice(1);
}
