/** A page of talk in its clauses: where sentences end, and where one goes on to the next thing without a stop. */
import { actionWords, defectWords, thingWords } from './trade-words.ts';
import { runOnCuts } from './walk-run-on.ts';

export interface Clause {
  /** [from, to) in the text */
  readonly from: number;
  readonly to: number;
  /** lower case, plain quotes */
  readonly words: string;
  /** counts up at each full stop, semicolon or new line */
  readonly sentence: number;
  /** counts up at each line of a list and at each paragraph of prose */
  readonly item: number;
  /** stands in a list, where an item is about one thing */
  readonly listed: boolean;
  /** its line opens with a dash, a bullet, a number or a box */
  readonly marked: boolean;
  /** its line comes after an empty one */
  readonly spaced: boolean;
  /** its item is ticked or struck out as done */
  readonly ticked: boolean;
  /** ends in a question mark */
  readonly asked: boolean;
}

/** What a line of a list opens with: a dash, a bullet, a number, a box. */
const marker =
  '(?:[-*•·~>+](?![0-9])|\\[?(?:[0-2]?[0-9][:.][0-5][0-9])(?:[ap]m)?\\]?(?=[ ,:-])|\\[[ x✓✔]?\\]|[☐☑✓✔✗]|\\(?[0-9]{1,2}[.):]|[a-h][.)])';
const itemOpens = new RegExp(`^[ \\t]*(?:${marker}[ \\t]*)+(?=\\S)`);
const hardEnd = new RegExp(
  `[.!?…]+(?=\\s|$)|\\n+|[;,:](?=\\s|$)|\\s[-–—]+\\s|\\s(?:->|=>|→|\\+)\\s|[()]|\\s/(?=\\s)|(?<!(?:^| )(?:the|a|an|of|in|on|at|with|my|to|for|and|or|some|that|this)) {2,}|(?<=^|\\n)[ \\t]*(?:${marker}[ \\t]*)+(?=\\S)`,
  'g',
);
/** What opens a clause of its own even without a stop before it; each says what must follow. */
const openers = new RegExp(
  `(?<=[a-zß-ɏ0-9%] )(?:${[
    'and then',
    '(?:fitting|doing|changing|replacing) (?=(?:it|that|them|one) (?:is|takes|will)(?![a-zß-ɏ]))',
    '(?:and|then) (?=(?:get|fit|make|put|buy|have|order) (?:a |an |the |some )?(?:new|proper|real|right)(?![a-zß-ɏ]))',
    'and also',
    'and honestly',
    "(?:and|but|so|because|or|since|until|while) (?=(?:i|we|it|it's|it'll|that|that's|there|there's|she|she's|they|they're|you|nobody|the|he|its|theres|thats|if)(?![a-zß-ɏ'-]))",
    'then',
    "(?:there's|there is|there are|theres) (?=a|an|some|no|two|still|also|only|water|rust|mould|play)",
    "(?:it's|its|it is|that's|thats|that is) (?=only|just|dangerous|unsafe|not|never|the law|against|illegal|unlawful|a danger|annoying|cosmetic|for looks|about|temporary)",
    "(?:it will|it'll|it only|it just) (?=get|only|just|rot|spread|go|do|hold|gets|rots)",
    '(?:okay|ok|moving on|what else|hang on|oh yes|oh and|oh|anyway|otherwise|although|though|in the meantime|meanwhile)',
    "so (?=(?:a new|new|no|take|put|get|fit|renew|replace|clean|adjust|strip|pull|change|sew)(?![a-zß-ɏ'-]))",
    'now (?=(?:the|that|then|for)(?![a-zß-ɏ]))',
    'right (?=(?:the|that|so|climbing|then|now|next)(?![a-zß-ɏ]))',
    '(?:climbing|going|coming) in(?:side)?',
    'down below',
    '(?:no more like|call (?:it|that)|i mean)',
    '(?:and |so |or )?(?:she|it|he) (?:has|needs|wants) to be',
    '(?<!(?:the|her|a|my) )(?:mast|cover|board) (?:up|down|on|off|lowered|housed)(?= *(?:$|call|about|\\d|an? |half|one|two|three|four|five|forty|ninety|twenty|thirty|obviously|it|and it))',
    'propped up',
    "(?:i'd say|i would say|say) (?=(?:a )?new [a-zß-ɏ-]+ )",
    'new (?=[a-zß-ɏ-]+ (?:when|once|as soon)(?![a-zß-ɏ]))',
  ]
    .map((opener) => (opener.includes(' (?=') ? opener : `${opener}(?![a-zß-ɏ'-])`))
    .join('|')})`,
  'gi',
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
  'of in on at by with to for from under round over behind near like into onto off than as between through is are was were be been has have had get got fit check clean take put and or the a an new when if where which who not until till before after without about against inside outside think doubt believe thought hope says say said reckon reckons noticed afraid sure suppose guess'.split(
    ' ',
  ),
);
const predicate =
  /^(?:'s|s'|,? ?which)?(?: (?:on|in|at|of|by|under|from|near|over|to|for|round|up|down|behind) (?:the |my |its |each |both |this |that )?(?:port |starboard |aft |forward )?[a-zß-ɏ-]+(?: (?:side|end|locker|hull|corner))?)?(?: (?:also|still|clearly|really|just|now|again|only|probably|both|all))*(?:'s| is| are| was| were| has| have| had| needs?| wants?| looks?| feels?| could do| should| ought| won't| doesn't| don't| isn't| can't| runs?| reads?| keeps?| got| seems?| sits?| says| works?| goes| opens| closes| shuts| turns| moves| makes| went| came| broke| stopped| started)(?![a-zß-ɏ])/;

/** A page in its clauses, in order. */
export function clausesOf(text: string): Clause[] {
  const plain = unwrapped(text.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[“”]/g, '"'));
  const clauses: Clause[] = [];
  let sentence = 0;
  let item = 0;
  /** words since the sentence began */
  let since = 0;
  for (const line of linesOf(plain)) {
    if (!line.goesOn) item++;
    sentence++;
    since = 0;
    let held: { readonly from: number; readonly to: number; readonly words: string; readonly sentence: number }[] = [];
    const flush = (asked: boolean) => {
      for (const [at, each] of held.entries())
        clauses.push({
          ...each,
          item,
          listed: line.listed,
          marked: line.marked,
          spaced: line.spaced,
          ticked: line.ticked,
          asked: asked && at === held.length - 1,
        });
      held = [];
    };
    const add = (from: number, to: number) => {
      for (const { start, end, afresh } of softParts(plain, from, to)) {
        if (afresh || (start === from && since > 25 && beginsAfresh(plain.slice(start, end)))) {
          sentence++;
          since = 0;
        }
        since += plain.slice(start, end).split(' ').length;
        const words = plain.slice(start, end);
        const lead = words.length - words.trimStart().length;
        const trimmed = words.trim();
        if (/[a-zß-ɏ0-9]/.test(trimmed))
          held.push({ from: start + lead, to: start + lead + trimmed.length, words: trimmed, sentence });
      }
    };
    let at = line.from;
    for (const end of plain.slice(line.from, line.to).matchAll(hardEnd)) {
      const index = line.from + end.index;
      if (end[0] === '.' && /\b(?:approx|ca|no|nr|vs|e\.g|i\.e)$/.test(plain.slice(at, index))) continue;
      add(at, index);
      if (/[.!?…\n;]/.test(end[0])) {
        flush(end[0].includes('?'));
        sentence++;
        since = 0;
      }
      at = index + end[0].length;
    }
    add(at, line.to);
    flush(false);
  }
  return clauses;
}

/** Lines broken by a width, not by a meaning, as one; the same length. */
function unwrapped(text: string): string {
  const broken = text.split('\n').filter((line, at, all) => line.trim() !== '' && (all[at + 1] ?? '').trim() !== '');
  const full = broken.filter((line) => line.length >= 50 && line.length <= 100 && !/[.!?:]$/.test(line.trim()));
  if (full.length < 3 || full.length < 0.6 * broken.length) return text;
  return text.replace(/(?<=[^\n]{45}[a-zß-ɏ0-9,;'.])\n(?=[ \t]*[a-zß-ɏ\d(])(?![ \t]*[a-h\d][.)])/g, ' ');
}

interface Line {
  readonly from: number;
  readonly to: number;
  readonly listed: boolean;
  readonly marked: boolean;
  readonly spaced: boolean;
  readonly ticked: boolean;
  /** a line of prose right under another */
  readonly goesOn: boolean;
}

/** The lines of a page; what stands in a list, what in prose. */
function linesOf(plain: string): Line[] {
  const lines = [...plain.matchAll(/[^\n]+/g)].filter(([line]) => /[a-zß-ɏ0-9]/.test(line));
  const short = lines.filter(([line]) => line.length < 90).length;
  const stopped = lines.filter(([line]) => /[.!?]\s*$/.test(line)).length;
  const asList =
    lines.length >= 5 &&
    short >= 0.8 * lines.length &&
    stopped < 0.5 * lines.length &&
    plain.split(/\s+/).length <= 11 * lines.length;
  return lines.map(({ index, 0: line }, at) => {
    const above = lines[at - 1];
    const under = above !== undefined && !/\n[ \t]*\n/.test(plain.slice(above.index, index));
    const opens = itemOpens.exec(line)?.[0];
    return {
      from: index,
      to: index + line.length,
      listed: opens !== undefined || asList,
      marked: opens !== undefined,
      spaced: above !== undefined && !under,
      goesOn:
        under && opens === undefined && !asList && /[.!?,]\s*$/.test(above[0]) && itemOpens.exec(above[0]) === null,
      ticked:
        (opens !== undefined && /\[[x✓✔]\]|[☑✓✔]/.test(opens)) ||
        /(?:✓|✔|\[x\])\s*$/.test(line) ||
        ((opens !== undefined || asList) && /[-–—:,(.=>] ?(?:all |now )?done\)?[.!]*\s*$/.test(line)),
    };
  });
}

/** A length of time, after which talk without stops goes on to something else. */
const lengthTold =
  /(?<![a-zß-ɏ])(?:minutes?|mins?|hours?(?: and a (?:half|quarter))?)(?: (?:or so|tops|max|maybe|i think|i'd say|i reckon|job|each|at most|ish))* (?!(?:and|to|or|of|for|with|if|in|on|at|a|an|each|plus|job|work|when|because|ago|later|before|by|tops|max|maybe|i|it|that|which|but|no|so|do|dry|mast|more|less|away|from|till|until|per)(?![a-zß-ɏ]))/g;

/** Where a stretch without stops goes on to the next thing. */
function softParts(plain: string, from: number, to: number): { start: number; end: number; afresh: boolean }[] {
  const words = plain.slice(from, to);
  const cuts = new Set<number>();
  /** where something else is begun with, in talk that runs on */
  const afresh = new Set<number>();
  const runsOn = words.split(' ').length > 22;
  for (const match of words.matchAll(openers)) cuts.add(match.index);
  if (runsOn) {
    for (const match of words.matchAll(lengthTold)) cuts.add(match.index + match[0].length);
    for (const cut of runOnCuts(words)) {
      cuts.add(cut.at);
      if (cut.afresh) afresh.add(cut.at);
    }
  }
  for (const thing of thingWords.all(words)) {
    if (!predicateAfter(words, thing.index + thing[0].length)) continue;
    const start = subjectStart(words, thing.index, runsOn);
    if (start !== null) {
      cuts.add(start);
      afresh.add(start);
    }
  }
  // 'the plate is weeping again take it off and rebed it'
  for (const action of actionWords.all(words)) {
    const pronoun = /^\S+ (?:it|them|her|that|a new|the)(?![a-zß-ɏ])/.test(words.slice(action.index));
    const before = /([a-zß-ɏ'-]+) $/.exec(words.slice(0, action.index))?.[1];
    if (pronoun && before !== undefined && !holdsOn.has(before) && !leadsOn.test(before)) cuts.add(action.index);
  }
  const places = [0, ...[...cuts].sort((a, b) => a - b), words.length];
  return places.slice(1).map((end, at) => {
    const start = places[at]!;
    const again = /^(?:and |but |so |which |because )/.test(words.slice(start));
    return { start: from + start, end: from + end, afresh: runsOn && !again && afresh.has(start) };
  });
}

/** A clause after a comma, in a sentence already long, that begins with a thing and says something of it. */
function beginsAfresh(words: string): boolean {
  if (/^ *(?:and|but|so|which|because)(?![a-zß-ɏ])/.test(words)) return false;
  const thing = thingWords.next(words);
  if (thing === null || !/^ *(?:[a-zß-ɏ'-]+ ){0,3}$/.test(words.slice(0, thing.index))) return false;
  return predicateAfter(words, thing.index + thing[0].length);
}

const leadsOn =
  /^(?:just|must|should|please|could|would|can|will|better|let's|lets|i'll|we'll|it'll|that'll|then|so|ll|i|we|you|they|he|she|it|i'd|i've|we've|always|never|don't|dont|really|also|only|might|may|and|wants|needs|need|want|did|do|can't|cannot|couldn't|won't|wouldn't|shan't|shall|not)$/;

function predicateAfter(words: string, at: number): boolean {
  const rest = words.slice(at);
  if (predicate.test(rest)) return true;
  const defect = defectWords.next(rest.slice(0, 40))?.index ?? -1;
  return defect >= 0 && /^ (?:(?:also|all|both|badly|a bit|very|completely|quite) )?$/.test(rest.slice(0, defect));
}

/** Where the words that go with a thing begin, if it can be what a new clause is about; null where it cannot. */
function subjectStart(words: string, thing: number, runsOn: boolean): number | null {
  let start = thing;
  let determined = false;
  let chain = 0;
  for (let n = 0; n < 5; n++) {
    const match = /([a-zß-ɏ'-]+) +$/.exec(words.slice(0, start));
    if (!match) break;
    const word = match[1]!;
    const named =
      !/^(?:hour|minute|bit|day|lot)s?$/.test(word) &&
      /(?:^| )(?:the|a|an|my|her|its) $/.test(words.slice(0, start - match[0].length));
    if (determined ? !beforeThem.has(word) : !modifiers.has(word) && !isThing(word) && !named) break;
    determined ||= determiners.has(word);
    chain += isThing(word) ? 1 : 0;
    start -= match[0].length;
  }
  const before = /([a-zß-ɏ0-9'%-]+) +$/.exec(words.slice(0, start))?.[1];
  if (before === undefined || !(determined || chain > 0 || (runsOn && !leadsOn.test(before)))) return null;
  if (before === 'and' || before === 'then' || before === 'but') return start - (before.length + 1);
  return holdsOn.has(before) ? null : start;
}

const isThing = (word: string) => thingWords.fills(word);
