import { claim, type LineText, type Phrase, partAround, phrase } from './line-text.ts';
import type { LineMinutes, Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

const n = numberPattern;
const soft = '(?: (?:minutes?|mins?|hours?|hrs?))?';
const hourWord = '(?:h|hrs?|hours?)';
const minuteWord = "(?:min|mins|minute|minutes|')";
/** Before it: 'call it about', 'takes me'. */
const lead =
  /(?<![a-zß-ɏ0-9])(?:(?:that's |it's |it'll be |call (?:it|that) |i'd say |i would say |another |no more like |no,? )?(?:(?:it |that )?(?:should |will |would |'ll |might )?(?:takes?(?: me| us)?|needs?|allow|say|about|around|roughly|some|maybe|perhaps|probably|at most|for|best part of|good|more like|only|just|in)(?: about| around| roughly| maybe| a good| the best part of)? ))$|~ ?$/;
/** After it: 'ish', 'or so', 'tops', 'of work', 'a coat'. */
const tail =
  "(?:[ -]?ish|,? (?:or so|tops|at most|at the (?:outside|most)|max|maybe|perhaps|i (?:think|reckon|guess|suppose)|of work|work|hands[- ]on|(?:a|per|each) coat|each|apiece|job|i'd say))*";

/** From the longest form to the shortest, so that `1 h 30` is not read as an hour. */
const forms: readonly {
  readonly pattern: Phrase;
  readonly minutes: (match: RegExpMatchArray) => LineMinutes | null;
}[] = [
  {
    pattern: phrase(`(${n})${soft} ?(?:-|to|or|till) ?(${n}) ?(${minuteWord}|${hourWord})${tail}`),
    minutes: (m) => {
      const scale = m[3]!.startsWith('h') ? 60 : 1;
      const low = spokenNumber(m[1]!);
      const high = spokenNumber(m[2]!);
      if (low === null || high === null || low >= high) return null;
      return { low: low * scale, high: high * scale, likely: Math.round(((low + high) / 2) * scale) };
    },
  },
  { pattern: phrase(`an hour or two${tail}`), minutes: () => ({ low: 60, likely: 90, high: 120 }) },
  {
    pattern: phrase(`half an hour to an hour${tail}`),
    minutes: () => ({ low: 30, likely: 45, high: 60 }),
  },
  {
    pattern: phrase(`(${n}) ?${hourWord} ?(?:and )?(${n})(?: ?${minuteWord})?${tail}`),
    minutes: (m) => plain(sum(spokenNumber(m[1]!), spokenNumber(m[2]!))),
  },
  {
    pattern: phrase(`(an|one|${n}) ?${hourWord} and a (half|quarter)${tail}`),
    minutes: (m) => plain(sum(anOr(m[1]!), m[2] === 'half' ? 30 : 15)),
  },
  {
    pattern: phrase(`(one|${n}) and a (half|quarter) ?(?:hours?|hrs?|h)${tail}`),
    minutes: (m) => plain(sum(spokenNumber(m[1]!), m[2] === 'half' ? 30 : 15)),
  },
  {
    pattern: phrase(`(\\d{1,2}):([0-5]\\d) ?${hourWord}`),
    minutes: (m) => plain(Number(m[1]) * 60 + Number(m[2])),
  },
  { pattern: phrase(`(?:half (?:an|a|of an) hour|half hour)${tail}`), minutes: () => plain(30) },
  { pattern: phrase(`(?:a |one )?quarter (?:of an )?hour${tail}`), minutes: () => plain(15) },
  { pattern: phrase(`(?:a )?three[- ]quarters? (?:of an )?hour${tail}`), minutes: () => plain(45) },
  { pattern: phrase(`(?:a )?couple of hours${tail}`), minutes: () => plain(120) },
  { pattern: phrase(`(?:a )?couple of minutes${tail}`), minutes: () => plain(2) },
  {
    pattern: phrase(`hour and a (half|quarter)${tail}`),
    minutes: (m) => plain(m[1] === 'half' ? 90 : 75),
  },
  { pattern: phrase(`(an|${n}) ?${hourWord}${tail}`), minutes: (m) => plain(sum(anOr(m[1]!), 0)) },
  { pattern: phrase(`(${n}) ?${minuteWord}${tail}`), minutes: (m) => plain(spokenNumber(m[1]!)) },
];

/** Time that nobody works, so not the step's own. */
const waiting =
  /\b(?:cures?|curing|to dry|dry out|dry it|dries|drying|soaks?|soaking|waits?|sets?|setting|hardens?|rests?|charges?|charging|leave it (?:to|for|over)|leave for|stands?|within|every|overnight|ago|later|go off|went off)\b/;
/** What follows it is said beside the work: 'half an hour plus the cure'. */
const besides = /\b(?:plus|and then|then|hands[- ]on|and (?:a|an|overnight|the|leave|let|two|three))\b|[+&]/;

const putsRight = new RegExp(
  `^[ ,.-]*(?:no|sorry|or rather|rather|i mean|make that|actually|hang on)(?![a-zß-ɏ])[^.;]{0,24}?(?:${n}|half|quarter) ?(?:an? )?(?:of an )?(?:${hourWord}|${minuteWord})`,
  'i',
);

/** Without one of these no length is told: looked for first, because the forms are long. */
const anyLength = /\d ?['hm:]|hour|hr|minute|min(?![a-zß-ɏ])|mins/;

/** Hands-on time: `90 min`, `1 h 30`, `an hour and a half`, `60 to 90 minutes`. Time to cure, dry or soak is left alone. */
export function readLength(text: LineText): Understood<LineMinutes> | null {
  if (!anyLength.test(text.plain)) return null;
  for (const { pattern, minutes } of forms) {
    const found = claim(
      text,
      pattern,
      (match) => {
        const to = match.index! + match[0].length;
        const part = partAround(text.plain, match.index!, to);
        const beside = besides.exec(text.plain.slice(to, part.to));
        const words = text.plain.slice(part.from, beside ? to + beside.index : part.to);
        // 'soak it overnight then free it, 20 min': the waiting is over before the length is said
        if (waiting.test(afterLast(words.slice(0, match.index! - part.from)) + words.slice(match.index! - part.from)))
          return null;
        // put right at once: 'half an hour, no, more like twenty minutes'
        if (putsRight.test(text.plain.slice(to))) return null;
        const value = minutes(match);
        return value && value.likely >= 1 && value.likely <= 1440 ? value : null;
      },
      { led: lead },
    );
    if (found) return found;
  }
  return null;
}

/** What is said after the last 'then' or 'and': the waiting before it is another's. */
function afterLast(words: string): string {
  return words.slice(Math.max(0, ...[...words.matchAll(/\b(?:then|and)\b/g)].map(({ index }) => index)));
}

const plain = (likely: number | null): LineMinutes | null =>
  likely === null ? null : { likely: Math.round(likely), low: null, high: null };
const sum = (hours: number | null, minutes: number | null) =>
  hours === null || minutes === null ? null : hours * 60 + minutes;
const anOr = (word: string) => (word === 'an' ? 1 : spokenNumber(word));
