import { claim, type LineText, type Phrase, phrase } from './line-text.ts';
import type { LineConditions, Understood } from './read-line-parts.ts';
import { numberPattern, spokenNumber } from './spoken-numbers.ts';

const n = numberPattern;
const lead =
  "(?:(?:(?:it )?needs?(?: to be)?|wants?(?: to be)?|when(?: it's| it is)?|if(?: it's| it is)?|only|with|in|and|must be|must have|has to be|good|good to|fine up to|not over|once it's) )*";
const degrees = '(?:° ?c?|degrees?(?: c| celsius)?|deg|c)';
const knots = '(?:knots?|kn|kts?)';
const least =
  '(?:from|above|over|at least|warmer than|more than|not (?:below|under)|no colder than|no less than|min(?:imum)?)';
const most =
  '(?:under|below|less than|up to|at most|no more than|not more than|not (?:over|above)|only to|max(?:imum)?)';

type Reading = readonly [Phrase, (value: number) => LineConditions | null];

/** Figures: the words say which end of the range is meant, the unit says of what. */
const figures: readonly Reading[] = [
  [phrase(`${lead}(?:wind )?(?:speed )?${most} (${n}) ?${knots}(?: of)?(?: wind)?(?: or so)?`), wind],
  [phrase(`${lead}(?:wind|breeze) (?:is )?${most} (${n})(?! ?(?:min|h|°|deg|%))`), wind],
  [
    phrase(
      `${lead}(${n}) ?${knots}(?: of wind)? (?:or (?:less|so|under)|at (?:the )?(?:very )?most|max(?:imum)?|and no more)`,
    ),
    wind,
  ],
  [phrase(`(?:only )?good (?:for|to) (${n}) ?${knots}`), wind],
  [phrase(`${lead}(?:humidity )(?:is )?${most} (${n}) ?(?:%|per ?cent|percent)?`), humidity],
  [phrase(`${lead}${most} (${n}) ?(?:%|per ?cent) ?(?:of )?(?:relative )?(?:humidity|rh|damp)?`), humidity],
  [phrase(`${lead}${least} (-?${n}) ?${degrees}`), warmest],
  [
    phrase(
      `${lead}(-?${n}) ?${degrees} (?:or (?:more|warmer|over|above|better)|and (?:up|over|above|warmer)|at (?:the )?least|min(?:imum)?)`,
    ),
    warmest,
  ],
  // a bare figure is a temperature where nothing is counted in it
  [
    phrase(
      `(?:when|if|once|as soon as)(?: (?:it's|it is|the weather is|the air is))? (?:above|over|warmer than) (${n})(?! ?(?:min|h|kn|kt|%|mm|cm|m|am|pm))`,
    ),
    warmest,
  ],
  [phrase(`${lead}${most} (-?${n}) ?${degrees}`), coolest],
  [phrase(`${lead}(?:cooler than|no warmer than|not warmer than) (-?${n}) ?${degrees}`), coolest],
];

const between = phrase(`${lead}(?:between |from )?(-?${n}) ?(?:${degrees} )?(?:and|to|-) ?(-?${n}) ?${degrees}`);

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

/** A figure that may stand below nought, in figures or words. */
function signed(words: string): number | null {
  if (!words.startsWith('-')) return spokenNumber(words);
  const value = -Number(words.slice(1).replace(',', '.'));
  return Number.isNaN(value) ? null : value;
}

const dry = [
  {
    pattern: phrase(
      '(?:needs?|wants?|only|must be done|do it|done|while|when|if) (?:it )?(?:is |in )?(?:the )?dry(?: weather| day| spell)?(?= *(?:[,;.+]|$|and|from|under))',
    ),
  },
  {
    pattern: phrase(
      "(?:(?:needs?|on|wants?|when|if|get|have|wait for|pick|some|choose)(?: (?:we|i|there's|there is|it's))?(?: (?:get|have|is))? )*(?:a |some |the next |two )?(?:(?:nice|good|warm|fine|sunny),? )?dry(?:,? (?:warm|calm|still))? (?:days?|spell|morning|afternoon|evening|weather|weekend)",
    ),
  },
  {
    pattern: phrase(
      '(?:it )?(?:has|needs?|must|wants?) (?:to be|be|it) (?:bone |nice and |properly )?dry(?= *(?:[,;.]|$|and|or|from|under|over|above))',
    ),
  },
  { pattern: phrase('in (?:the dry|dry weather)') },
  { pattern: phrase('(?:with |while there is )?no rain|not in (?:the )?rain|as long as it is dry') },
  { pattern: phrase('(?:in the |keep )?dry(?: weather| day| hours| only)?'), alone: true },
];
const light = [
  { pattern: phrase('(?:needs?|only|in|by) (?:the )?day ?light') },
  { pattern: phrase('day ?light(?: only)?'), alone: true },
];

/** What the line asks of the weather: `dry`, `from 12 °C`, `under 10 knots`, `below 80 % humidity`, `in daylight`. */
export function readConditions(text: LineText): Understood<LineConditions>[] {
  const found: Understood<LineConditions>[] = [];
  const both = claim(text, between, (match) => {
    const [low, high] = [signed(match[1]!), signed(match[2]!)];
    return low !== null && high !== null && low < high && warmest(low) && coolest(high)
      ? { air_min_C: low, air_max_C: high }
      : null;
  });
  if (both) found.push(both);
  for (const [pattern, read] of figures) {
    const part = claim(text, pattern, (match) => {
      const value = signed(match[1]!);
      return value === null ? null : read(value);
    });
    if (part && !found.some((other) => Object.keys(part.value)[0]! in other.value)) found.push(part);
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
