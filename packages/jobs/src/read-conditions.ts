import { claim, type LineText, phrase } from './line-text.ts';
import type { LineConditions, Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

const n = numberPattern;
const lead = '(?:(?:needs?|wants|when|if|only|with|in|and|must be|must have) )?';
const degrees = '(?:° ?c?|degrees?(?: c| celsius)?|deg|c)';
const knots = '(?:knots?|kn|kts?)';

type Reading = readonly [RegExp, (value: number) => LineConditions | null];

/** Figures: the words say which end of the range is meant, the unit says of what. */
const figures: readonly Reading[] = [
  [
    phrase(
      `${lead}(?:wind )?(?:under|below|less than|up to|at most|no more than|not over|max(?:imum)?) (${n}) ?${knots}(?: of)?(?: wind)?`,
    ),
    wind,
  ],
  [phrase(`${lead}(?:wind|breeze) (?:under|below|less than|up to|at most|no more than) (${n})`), wind],
  [phrase(`${lead}(${n}) ?${knots}(?: of wind)? (?:or less|at most|max(?:imum)?)`), wind],
  [phrase(`${lead}(?:humidity )(?:under|below|less than|up to|at most) (${n}) ?(?:%|per ?cent|percent)?`), humidity],
  [
    phrase(`${lead}(?:under|below|less than|up to|at most) (${n}) ?(?:%|per ?cent) ?(?:of )?(?:humidity|rh|damp)?`),
    humidity,
  ],
  [
    phrase(
      `${lead}(?:from|above|over|at least|warmer than|not (?:below|under)|no colder than|min(?:imum)?) (-?${n}) ?${degrees}`,
    ),
    warmest,
  ],
  [phrase(`${lead}(-?${n}) ?${degrees} (?:or (?:more|warmer|over|above)|and (?:up|over|above)|at least)`), warmest],
  [
    phrase(`${lead}(?:under|below|up to|at most|cooler than|not (?:above|over)|max(?:imum)?) (-?${n}) ?${degrees}`),
    coolest,
  ],
];

function wind(value: number): LineConditions | null {
  return value <= 120 ? { wind_max_kn: value } : null;
}
function humidity(value: number): LineConditions | null {
  return value >= 1 && value <= 100 ? { humidity_max_pct: value } : null;
}
function warmest(value: number): LineConditions | null {
  return value >= -60 && value <= 60 ? { air_min_C: value } : null;
}
function coolest(value: number): LineConditions | null {
  return value >= -60 && value <= 60 ? { air_max_C: value } : null;
}

const dry = [
  {
    pattern: phrase(
      '(?:needs?|wants?|only|must be done|do it|done|while|when|if) (?:it )?(?:is |in )?(?:the )?dry(?: weather| day| spell)?(?= *(?:[,;.]|$|and|from|under))',
    ),
  },
  { pattern: phrase('(?:needs? |on |wants )a dry (?:day|spell|morning|afternoon)') },
  { pattern: phrase('in (?:the dry|dry weather)(?= *(?:[,;.]|$|and|from|under))') },
  { pattern: phrase('(?:with )?no rain|not in (?:the )?rain') },
  { pattern: phrase('(?:in the |keep )?dry(?: weather| day| hours| only)?'), alone: true },
];
const light = [
  { pattern: phrase('(?:needs?|only|in|by) (?:the )?day ?light') },
  { pattern: phrase('day ?light(?: only)?'), alone: true },
];

/** What the line asks of the weather: `dry`, `from 12 °C`, `under 10 knots`, `below 80 % humidity`, `in daylight`. */
export function readConditions(text: LineText): Understood<LineConditions>[] {
  const found: Understood<LineConditions>[] = [];
  for (const [pattern, read] of figures) {
    const part = claim(text, pattern, (match) => {
      const words = match[1]!;
      const value = words.startsWith('-') ? -Number(words.slice(1).replace(',', '.')) : spokenNumber(words);
      return value === null || Number.isNaN(value) ? null : read(value);
    });
    if (part && !found.some((other) => Object.keys(other.value)[0] === Object.keys(part.value)[0])) found.push(part);
  }
  for (const [forms, value] of [
    [dry, { dry: true }],
    [light, { daylight: true }],
  ] as const)
    for (const form of forms) {
      const part = claim(text, form.pattern, (): LineConditions => value, { alone: 'alone' in form && form.alone });
      if (part) {
        found.push(part);
        break;
      }
    }
  return found.sort((a, b) => a.from - b.from);
}
