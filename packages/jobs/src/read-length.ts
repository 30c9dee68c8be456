import { claim, type LineText, partAround, phrase } from './line-text.ts';
import type { LineMinutes, Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

const n = numberPattern;
const hourWord = '(?:h|hr|hrs|hour|hours)';
const minuteWord = "(?:min|mins|minute|minutes|')";
const lead =
  '(?:(?:it )?(?:should )?(?:takes?|needs?|allow|say|about|around|roughly|some|maybe|perhaps|at most|for)(?: about| around| roughly| maybe)? |~ ?)?';

/** From the longest form to the shortest, so that `1 h 30` is not read as an hour. */
const forms: readonly {
  readonly pattern: RegExp;
  readonly minutes: (match: RegExpMatchArray) => LineMinutes | null;
}[] = [
  {
    pattern: phrase(`${lead}(${n}) ?(?:-|to|or|till) ?(${n}) ?(${minuteWord}|${hourWord})`),
    minutes: (m) => {
      const scale = m[3]!.startsWith('h') ? 60 : 1;
      const low = spokenNumber(m[1]!);
      const high = spokenNumber(m[2]!);
      if (low === null || high === null || low >= high) return null;
      return { low: low * scale, high: high * scale, likely: Math.round(((low + high) / 2) * scale) };
    },
  },
  {
    pattern: phrase(`${lead}(${n}) ?${hourWord} ?(?:and )?(${n})(?: ?${minuteWord})?`),
    minutes: (m) => plain(sum(spokenNumber(m[1]!), spokenNumber(m[2]!))),
  },
  {
    pattern: phrase(`${lead}(an|one|${n}) ?${hourWord} and a (half|quarter)`),
    minutes: (m) => plain(sum(anOr(m[1]!), m[2] === 'half' ? 30 : 15)),
  },
  {
    pattern: phrase(`${lead}(one|${n}) and a (half|quarter) hours?`),
    minutes: (m) => plain(sum(spokenNumber(m[1]!), m[2] === 'half' ? 30 : 15)),
  },
  {
    pattern: phrase(`${lead}(\\d{1,2}):([0-5]\\d) ?${hourWord}`),
    minutes: (m) => plain(Number(m[1]) * 60 + Number(m[2])),
  },
  { pattern: phrase(`${lead}half an hour`), minutes: () => plain(30) },
  { pattern: phrase(`${lead}(?:a |one )?quarter of an hour`), minutes: () => plain(15) },
  { pattern: phrase(`${lead}(?:a )?three[- ]quarters of an hour`), minutes: () => plain(45) },
  { pattern: phrase(`${lead}(?:a )?couple of hours`), minutes: () => plain(120) },
  { pattern: phrase(`${lead}(an|${n}) ?${hourWord}`), minutes: (m) => plain(sum(anOr(m[1]!), 0)) },
  { pattern: phrase(`${lead}(${n}) ?${minuteWord}`), minutes: (m) => plain(spokenNumber(m[1]!)) },
];

/** Time that nobody works, so not the step's own. */
const waiting =
  /\b(?:cures?|curing|drys?|dries|drying|soaks?|soaking|waits?|sets?|setting|hardens?|rests?|charges?|charging|leave|stands?|within|every|overnight)\b/;

/** Hands-on time: `90 min`, `1 h 30`, `an hour and a half`, `60 to 90 minutes`. Time to cure, dry or soak is left alone. */
export function readLength(text: LineText): Understood<LineMinutes> | null {
  for (const { pattern, minutes } of forms) {
    const found = claim(text, pattern, (match) => {
      const part = partAround(text.plain, match.index!, match.index! + match[0].length);
      if (waiting.test(text.plain.slice(part.from, part.to))) return null;
      const value = minutes(match);
      return value && value.likely >= 1 && value.likely <= 1440 ? value : null;
    });
    if (found) return found;
  }
  return null;
}

const plain = (likely: number | null): LineMinutes | null =>
  likely === null ? null : { likely: Math.round(likely), low: null, high: null };
const sum = (hours: number | null, minutes: number | null) =>
  hours === null || minutes === null ? null : hours * 60 + minutes;
const anOr = (word: string) => (word === 'an' ? 1 : spokenNumber(word));
