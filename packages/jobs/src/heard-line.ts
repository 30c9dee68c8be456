/** A line as it was meant: without fillers, short forms written out, slips of finger and ear put right. */
import { commonWords } from './common-words.ts';
import { wordMeant } from './heard-words.ts';
import { weekdayNames } from './read-date.ts';
import type { Lexicon } from './read-line-parts.ts';
import { tensNames, unitNames } from './spoken-numbers.ts';

/** Text with, for each of its letters, the place in the line that it came from. */
export interface HeardLine {
  readonly text: string;
  /** one more than there are letters: the last is the end of the line */
  readonly places: readonly number[];
}

type Change = readonly [pattern: RegExp, put: string | ((match: RegExpMatchArray) => string | null)];

const before = '(?<![a-zß-ɏ0-9])';
const after = '(?![a-zß-ɏ0-9])';
const word = (pattern: string, flags = 'gi') => new RegExp(`${before}(?:${pattern})${after}`, flags);

/** Sounds people make while they think, wherever they stand, with a comma that hangs on them. */
const sounds: Change = [new RegExp(`${before}(?:u+m+|u+h+|e+r+m*|h+m+|ah+|eh)${after}(?:\\.\\.+|…)?[, ]*`, 'gi'), ''];

/** What people open a line with before they say anything; again and again until something is said. */
const openings =
  /^(?:[\s,.-]*(?:(?:right|ok|okay|so|well|now|then|next(?: (?:up|one|thing))?|oh|and|also|yes|yeah|anyway|let me (?:see|think)|first (?:thing|off|of all)|what else|you know(?: that| the)?|(?:i )?(?:reckon|think|guess|suppose)(?: that)?|(?:i )?(?:don't|do not|must not|mustn't) forget(?: to| that)?|remember to|would you believe(?: it)?|i mean)(?![a-zß-ɏ0-9'-])(?! (?:side|hand|week|month|year|saturday|sunday|monday|tuesday|wednesday|thursday|friday|weekend)))[\s,.:-]*)+(?=[a-zß-ɏ]|[0-9])/i;

const asides: Change = [
  word('(?:,? ?(?:you know|i mean|sort of|kind of|like i said|obviously|honestly|basically)),?(?= )'),
  '',
];

const shortForms: readonly Change[] = [
  [word('o/b(?:oard)?|out board'), 'outboard'],
  [word("fwd|for'?d"), 'forward'],
  [word('forward hatch'), 'forehatch'],
  [word('dn'), 'down'],
  [word('w/(?: )?'), 'with '],
  [word('c/?board|ctr ?board|centre board'), 'centreboard'],
  [word('p/s'), 'port side'],
  [word('s/s'), 'starboard side'],
  [word('mast head'), 'masthead'],
  [word('fore hatch'), 'forehatch'],
  [word('goose neck'), 'gooseneck'],
  [word('(?:stare|star|star-) ?board|starbord|starborad'), 'starboard'],
  [word('half an? (?:our|hr)'), 'half an hour'],
  [word('an our'), 'an hour'],
  [word('(\\d+) ?ours?'), (match) => `${match[1]} hours`],
  [word('hour and half'), 'hour and a half'],
  [word('minuets?|minutess|mintues?|minuts?'), 'minutes'],
  [
    word('(\\d+(?:[.,]\\d+)?) ?m(?= *(?:[.,;+)\\n]|$))'),
    (match) =>
      Number(match[1]) >= 5 &&
      !/(?:cord|rope|line|chain|hose|cable|wire|tape|webbing|\d ?mm|warp|strip|elastic)[^.;\n]{0,12}$/i.test(
        match.input!.slice(0, match.index),
      )
        ? `${match[1]} min`
        : null,
  ],
  [word('(?:main|mane) sale'), 'mainsail'],
  [word('four ?stay'), 'forestay'],
  [word('hall yard'), 'halyard'],
  [word('out bored'), 'outboard'],
  [word('(?:bulge|build) pump'), 'bilge pump'],
  [word('in peller'), 'impeller'],
  [word('see ?cock'), 'seacock'],
  [word('hand ?break'), 'handbrake'],
  [word('break (?=(?:shoe|cable|drum|pad|light|fluid)s?)'), 'brake '],
  [word('mass (?=(?:head|step|foot|track|light|is (?:up|down)))'), 'mast '],
  [word('(?<=(?:is|are|come|came|coming|working|work|very|bit|all|hanging) )lose'), 'loose'],
  [word('a ?poxy'), 'epoxy'],
  [/[a-z0-9]{2,11}/gi, (match) => wordMeant.get(match[0].toLowerCase()) ?? null],
  [word('tempory|temporay|temporarry|tempary|temp'), 'temporary'],
  [word('dangerus|dangrous|dangerious|dangeros'), 'dangerous'],
  [/(?:>=?|≥) ?(?=-?\d+(?:[.,]\d+)? ?(?:°|c\b|deg))/gi, 'from '],
  [/(?:<=?|≤) ?(?=\d)/gi, 'under '],
];

/** Words worth putting right by one letter: those that mean something to the reader whatever the boat. */
const known: readonly string[] = [
  ...weekdayNames,
  ...unitNames.filter((name) => name.length > 4),
  ...tensNames.filter((name) => name.length > 4),
  'minutes',
  'danger',
  'worsens',
  'unlawful',
  'comfort',
  'tomorrow',
  'starboard',
];

/** Words of the trade that are a letter away from others: no slip. */
const own = new Set([
  'pennant',
  'pendant',
  'board',
  'broad',
  'cover',
  'cleat',
  'clear',
  'clean',
  'shroud',
  'strand',
  'deck',
  'sheet',
  'sheer',
  'steer',
  'stern',
  'block',
  'brake',
  'break',
  'broke',
  'case',
  'blade',
  'plate',
  'place',
  'plane',
  'bearing',
  'wheel',
  'sweep',
  'hatch',
  'patch',
  'catch',
  'latch',
  'locker',
  'rocker',
  'cabin',
  'below',
  'berth',
  'birth',
  'match',
  'stem',
  'winch',
  'which',
  'wrench',
  'roller',
  'sides',
  'older',
  'order',
  'under',
  'fifty',
  'fitty',
  'eight',
  'weight',
  'light',
  'right',
  'night',
  'tight',
  'sight',
  'fight',
  'three',
  'threw',
  'throw',
  'there',
  'these',
  'those',
  'where',
  'seven',
  'sever',
  'forty',
  'party',
  'teens',
  'matter',
  'ninety',
  'nicety',
  'stand',
  'strap',
  'scrap',
  'stray',
  'stays',
  'spray',
  'rigging',
  'ringing',
  'fitting',
  'sitting',
  'hitting',
  'lifting',
  'listing',
  'mooring',
  'morning',
  'keel',
  'peel',
  'heel',
  'wheel',
  'meets',
  'minute',
  'eighth',
]);

/** What opens a line before anything is said, left out. */
export const withoutOpening = (line: string): string => line.replace(openings, '');

/** The line as it was meant. Longer words of this boat's zones and fittings are put right by one letter too. */
export function heardLine(line: string, lexicon: Lexicon): HeardLine {
  let heard: HeardLine = { text: line, places: Array.from({ length: line.length + 1 }, (_, at) => at) };
  heard = changed(heard, sounds);
  heard = changed(heard, [new RegExp(openings.source, 'i'), '']);
  heard = changed(heard, asides);
  for (const change of shortForms) heard = changed(heard, change);
  const words = namedWords(lexicon);
  return changed(heard, [/[a-zß-ɏ]{5,}/gi, (match) => meant(match[0].toLowerCase(), words)]);
}

const wordsOfBoat = new WeakMap<Lexicon, ReadonlySet<string>>();

/** Longer words of the boat's names, with those of every boat. */
function namedWords(lexicon: Lexicon): ReadonlySet<string> {
  const made = wordsOfBoat.get(lexicon);
  if (made) return made;
  const names = [
    ...Object.values(lexicon.zones).flatMap(({ name, words }) => [name, ...words]),
    ...Object.values(lexicon.fittings).map(({ name }) => name),
  ];
  const words = new Set([
    ...known,
    ...(names
      .join(' ')
      .toLowerCase()
      .match(/[a-zß-ɏ]{4,}/g) ?? []),
  ]);
  wordsOfBoat.set(lexicon, words);
  return words;
}

/** The one known word that is a slip of one letter away; null where it is known, or none or several are. */
function meant(said: string, words: ReadonlySet<string>): string | null {
  if (own.has(said) || commonWords.has(said) || words.has(said) || words.has(said.replace(/(?:s|es|ed|ing|d)$/, '')))
    return null;
  let found: string | null = null;
  for (const one of words) {
    if (one.length < 4 || (one.length < 6 && !isSwap(said, one)) || one[0] !== said[0]) continue;
    if (Math.abs(one.length - said.length) > 1 || !oneSlip(said, one)) continue;
    if (`${one}s` === said || `${said}s` === one || `${one}d` === said) continue;
    if (found !== null) return null;
    found = one;
  }
  return found;
}

const isSwap = (a: string, b: string) => a.length === b.length && [...a].sort().join('') === [...b].sort().join('');

/** One letter left out, put in or changed, or two neighbours swapped. */
function oneSlip(a: string, b: string): boolean {
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  const rest = (text: string, skip: number) => text.slice(from + skip);
  if (a.length === b.length)
    return (
      rest(a, 1) === rest(b, 1) || (a[from] === b[from + 1] && a[from + 1] === b[from] && rest(a, 2) === rest(b, 2))
    );
  return a.length > b.length ? rest(a, 1) === rest(b, 0) : rest(a, 0) === rest(b, 1);
}

/** Every place of the pattern changed; letters put in come from where the words they stand for began. */
function changed({ text, places }: HeardLine, [pattern, put]: Change): HeardLine {
  let out = '';
  const outPlaces: number[] = [];
  let at = 0;
  const matches = pattern.global ? text.matchAll(pattern) : [text.match(pattern)].filter((match) => match !== null);
  for (const match of matches) {
    const words = typeof put === 'string' ? put : put(match);
    if (words === null || match[0] === '') continue;
    const from = match.index!;
    out += text.slice(at, from) + words;
    for (let place = at; place < from; place++) outPlaces.push(places[place]!);
    const last = match[0].length - 1;
    for (let letter = 0; letter < words.length; letter++)
      outPlaces.push(places[from + (letter === words.length - 1 ? last : Math.min(letter, last))]!);
    at = from + match[0].length;
  }
  if (at === 0) return { text, places };
  out += text.slice(at);
  for (let place = at; place <= text.length; place++) outPlaces.push(places[place]!);
  return { text: out, places: outPlaces };
}
