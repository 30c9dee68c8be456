import { claim, type LineText, phrase } from './line-text.ts';
import type { LineConsequence, Understood } from './read-line-parts.ts';

const lead = "(?:(?:it's|it is|that's|this is|is|a|a real) )*";

/**
 * Phrases that say nothing else are taken out of the title; words that also describe the trouble ('unsafe ladder')
 * stay in it. The gravest is looked for first.
 */
const words: readonly (readonly [LineConsequence, RegExp, { readonly keep?: boolean; readonly alone?: boolean }])[] = [
  ['danger', phrase(`${lead}(?:danger|safety|hazard)(?: to (?:people|us|life|crew))?`), { alone: true }],
  ['danger', phrase('(?:could|can|will|might) (?:hurt|injure|kill) (?:someone|somebody|us|me|people)'), {}],
  ['danger', phrase('dangerous|unsafe|not safe'), { keep: true }],
  [
    'unlawful',
    phrase(`${lead}(?:unlawful|illegal|not (?:legal|lawful)|against the law|required by law|legal)`),
    { alone: true },
  ],
  ['unlawful', phrase('unlawful|illegal|not (?:legal|lawful)|against the law|required by law'), { keep: true }],
  [
    'stops-sailing',
    phrase(
      "stops?[- ](?:us |me |her )?(?:from )?sailing|(?:we |i |she )?(?:can't|cannot|can not|couldn't|won't) (?:sail|go|go out|go sailing)(?: without(?: it)?| until(?: it is| it's)? (?:done|fixed|mended))?|no sailing (?:without(?: it)?|until(?: it is| it's)? (?:done|fixed|mended))",
    ),
    {},
  ],
  [
    'worsens',
    phrase(
      `${lead}(?:worsens|worsening|gets? worse|getting worse|(?:will|only) gets? worse|worse if left|(?:will )?get worse)(?: if (?:it is |it's )?left)?`,
    ),
    {},
  ],
  [
    'comfort',
    phrase(`${lead}(?:(?:just |only )?(?:comfort|cosmetic|for looks|nice to have|looks only))`),
    { alone: true },
  ],
  ['comfort', phrase('nice to have'), {}],
];

/** What happens if it is left: the five words, and plain ways of saying them. */
export function readConsequence(text: LineText): Understood<LineConsequence> | null {
  for (const [consequence, pattern, rule] of words) {
    const found = claim(text, pattern, () => consequence, rule);
    if (found) return found;
  }
  // said last, without a comma: '… ninety minutes danger'
  return claim(text, phrase('(?:danger|unlawful|comfort)(?= *[.!]?$)'), (match) => match[0] as LineConsequence);
}

const temporaryWords = [
  phrase('(?:as a |a )?(?:jury[- ]rig(?:ged)?|stop ?gap|make ?shift)(?: fix| repair)?(?: for now)?'),
  phrase('(?:just )?(?:for now|for the time being|for the moment|until (?:i|we) can do it properly)'),
  phrase('(?:as a )?temporar(?:y|ily)(?: (?:fix|repair|measure))?'),
];

/** `temporary`, `for now`, `jury rig`: a fix that stands in for the real one. All such words leave the title. */
export function readTemporary(text: LineText): Understood<true> | null {
  let first: Understood<true> | null = null;
  for (const pattern of temporaryWords) {
    const found = claim(text, pattern, () => true as const);
    first ??= found;
  }
  return first;
}
