/** A page of talk in its clauses: where sentences end, and where one goes on to the next thing without a stop. */
import { actionPattern, defectPattern, thingPattern } from './trade-words.ts';

export interface Clause {
  /** [from, to) in the text */
  readonly from: number;
  readonly to: number;
  /** lower case, plain quotes */
  readonly words: string;
  /** counts up at each full stop, semicolon or new line */
  readonly sentence: number;
}

const hardEnd =
  /[.!?…]+(?=\s|$)|\n+|[;,:](?=\s|$)|\s[-–—]+\s|[()]|(?<!(?:^| )(?:the|a|an|of|in|on|at|with|my|to|for|and|or|some|that|this)) {2,}|(?<=^|\n)\s*(?:[-*•·]|\d{1,2}[.)])\s+/gu;
/** What opens a clause of its own even without a stop before it; each says what must follow. */
const openers = new RegExp(
  `(?<=[\\p{L}\\p{N}%] )(?:${[
    'and then',
    'and also',
    'and honestly',
    "(?:and|but|so|because|or|since|until|while) (?=(?:i|we|it|it's|it'll|that|that's|there|there's|she|she's|they|they're|you|nobody|the|he|its|theres|thats|if)(?![\\p{L}'-]))",
    'then',
    "(?:there's|there is|there are|theres) (?=a|an|some|no|two|still|also|only|water|rust|mould|play)",
    "(?:it's|its|it is|that's|thats|that is) (?=only|just|dangerous|unsafe|not|never|the law|against|illegal|unlawful|a danger|annoying|cosmetic|for looks|about|temporary)",
    "(?:it will|it'll|it only|it just) (?=get|only|just|rot|spread|go|do|hold|gets|rots)",
    '(?:okay|ok|moving on|what else|hang on|oh yes|oh and|oh|anyway|otherwise|although|though|in the meantime|meanwhile)',
    "so (?=(?:a new|new|no|take|put|get|fit|renew|replace|clean|adjust|strip|pull|change|sew)(?![\\p{L}'-]))",
    'now (?=(?:the|that|then|for)(?![\\p{L}]))',
    'right (?=(?:the|that|so|climbing|then|now|next)(?![\\p{L}]))',
    '(?:climbing|going|coming) in(?:side)?',
    'down below',
    '(?:no more like|call (?:it|that)|i mean)',
    '(?:and |so |or )?(?:she|it|he) (?:has|needs|wants) to be',
    '(?:mast|cover|board) (?:up|down|on|off|lowered|housed)(?= *(?:$|call|about|\\d|an? |half|one|two|three|four|five|forty|ninety|twenty|thirty|obviously|it|and it))',
    'propped up',
  ]
    .map((opener) => (opener.includes(' (?=') ? opener : `${opener}(?![\\p{L}'-])`))
    .join('|')})`,
  'giu',
);
const modifiers = new Set(
  "the a an my our her his its their one some both each that this these those of two three four port starboard stbd left right nearside offside aft after forward fore upper lower top bottom main new old other second last first big little small whole there's there is theres another".split(
    ' ',
  ),
);
const determiners = new Set(
  "the a an my our her his its their one some both that this there's theres port starboard stbd".split(' '),
);
const beforeThem = new Set(['one', 'both', 'all', 'of', 'some', 'two', 'each']);
/** After which a thing is still spoken of, not begun with. */
const holdsOn = new Set(
  'of in on at by with to for from under round over behind near like into onto off than as between through is are was were be been has have had get got fit check clean take put and or the a an new when if where which who not until till before after without about against inside outside'.split(
    ' ',
  ),
);
const predicate =
  /^(?:'s|s'|,? ?which)?(?: (?:on|in|at|of|by|under|from|near|over|to|for|round|up|down|behind) (?:the |my |its |each |both |this |that )?(?:port |starboard |aft |forward )?[\p{L}-]+(?: (?:side|end|locker|hull|corner))?)?(?: (?:also|still|clearly|really|just|now|again|only|probably|both|all))*(?:'s| is| are| was| were| has| have| had| needs?| wants?| looks?| feels?| could do| should| ought| won't| doesn't| don't| isn't| can't| runs?| reads?| keeps?| got| seems?| sits?| says)(?![\p{L}])/u;

export function clausesOf(text: string): Clause[] {
  const plain = text.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[“”]/g, '"');
  const clauses: Clause[] = [];
  let sentence = 0;
  let at = 0;
  const add = (from: number, to: number) => {
    for (const [start, end] of softParts(plain, from, to)) {
      const words = plain.slice(start, end);
      const lead = words.length - words.trimStart().length;
      const trimmed = words.trim();
      if (/[\p{L}\p{N}]/u.test(trimmed))
        clauses.push({ from: start + lead, to: start + lead + trimmed.length, words: trimmed, sentence });
    }
  };
  for (const end of plain.matchAll(hardEnd)) {
    if (end[0] === '.' && /\b(?:approx|ca|no|nr|vs|e\.g|i\.e)$/.test(plain.slice(at, end.index))) continue;
    add(at, end.index);
    if (/[.!?…\n;]/.test(end[0]) || /^\s*[-*•·\d]/.test(end[0])) sentence++;
    at = end.index + end[0].length;
  }
  add(at, plain.length);
  return clauses;
}

/** Where a stretch without stops goes on to the next thing. */
function softParts(plain: string, from: number, to: number): (readonly [number, number])[] {
  const words = plain.slice(from, to);
  const cuts = new Set<number>();
  for (const match of words.matchAll(openers)) cuts.add(match.index);
  for (const thing of words.matchAll(thingPattern)) {
    if (!predicateAfter(words, thing.index + thing[0].length)) continue;
    const start = subjectStart(words, thing.index);
    if (start !== null) cuts.add(start);
  }
  // 'the plate is weeping again take it off and rebed it'
  for (const action of words.matchAll(actionPattern)) {
    const pronoun = /^\S+ (?:it|them|her|that|a new|the)(?![\p{L}])/u.test(words.slice(action.index));
    const before = /([\p{L}'-]+) $/u.exec(words.slice(0, action.index))?.[1];
    if (pronoun && before !== undefined && !holdsOn.has(before) && !leadsOn.test(before)) cuts.add(action.index);
  }
  const places = [0, ...[...cuts].sort((a, b) => a - b), words.length];
  return places.slice(1).map((end, at) => [from + places[at]!, from + end] as const);
}

const leadsOn =
  /^(?:just|must|should|please|could|would|can|will|better|let's|lets|i'll|we'll|it'll|that'll|then|so|ll|i|we|you|they|he|she|it|i'd|i've|we've|always|never|don't|dont|really|also|only|might|may|and|wants|needs|need|want|did|do)$/;

function predicateAfter(words: string, at: number): boolean {
  const rest = words.slice(at);
  if (predicate.test(rest)) return true;
  const defect = rest.slice(0, 40).search(defectPattern);
  return defect >= 0 && /^ (?:(?:also|all|both|badly|a bit|very|completely|quite) )?$/.test(rest.slice(0, defect));
}

/** Where the words that go with a thing begin, if it can be what a new clause is about; null where it cannot. */
function subjectStart(words: string, thing: number): number | null {
  let start = thing;
  let determined = false;
  let chain = 0;
  for (let n = 0; n < 5; n++) {
    const match = /([\p{L}'-]+) +$/u.exec(words.slice(0, start));
    if (!match) break;
    const word = match[1]!;
    if (determined ? !beforeThem.has(word) : !modifiers.has(word) && !isThing(word)) break;
    determined ||= determiners.has(word);
    chain += isThing(word) ? 1 : 0;
    start -= match[0].length;
  }
  const before = /([\p{L}\p{N}'%-]+) +$/u.exec(words.slice(0, start))?.[1];
  if (before === undefined || !(determined || chain > 0)) return null;
  if (before === 'and' || before === 'then' || before === 'but') return start - (before.length + 1);
  return holdsOn.has(before) ? null : start;
}

function isThing(word: string): boolean {
  thingPattern.lastIndex = 0;
  const match = thingPattern.exec(word);
  thingPattern.lastIndex = 0;
  return match !== null && match[0].length === word.length;
}
