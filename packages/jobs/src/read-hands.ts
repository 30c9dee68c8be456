import { claim, type LineText, phrase } from './line-text.ts';
import type { Understood } from './read-line-parts.ts';
import { spokenNumber } from './spoken-numbers.ts';

/** How many hands: `two hands`, `with a hand`, `needs help`, `three people`, `single-handed`. 1–20 */
export function readHands(text: LineText): Understood<number> | null {
  const counted = claim(
    text,
    phrase(
      '(?:(?:needs?|takes?|with|for|by) )?(one|two|three|four|\\d{1,2}) (?:hands|people|persons|pairs of hands|of us|up|men|pair)',
    ),
    (match) => {
      const hands = spokenNumber(match[1]!);
      return hands !== null && hands >= 1 && hands <= 20 ? hands : null;
    },
  );
  if (counted) return counted;
  return (
    claim(
      text,
      phrase(
        '(?:(?:needs?|with|get|takes?) )?(?:a (?:second|spare|helping) hand|another hand|a (?:second|spare) pair of hands|another pair of hands|another person|two[- ]handed|(?:the )?(?:two|pair) of us|(?:give|lend)(?:s|ing)? (?:me|us) a hand(?: with (?:it|that|this))?|both of us)',
      ),
      () => 2,
    ) ??
    claim(
      text,
      phrase(
        '(?:(?:needs?|with|wants?|get|ask for|takes?|find) (?:a hand|help|a helper|a mate|a friend|some(?:one|body)(?: else)?(?: to (?:help|hold|steady|pass|tail|keep|watch|take))?)|a hand (?:to (?:help|hold|steady|pass)|on the|in(?:side)? the|below|up))(?: it| lift| to lift)?',
      ),
      () => 2,
    ) ??
    claim(text, phrase('single[- ]?handed|by myself|on my own|one hand|alone(?<!not alone|never alone)'), () => 1, {
      alone: true,
    })
  );
}

/** `not alone`: somebody else must be there. */
export function readNotAlone(text: LineText): Understood<true> | null {
  return claim(
    text,
    phrase(
      "(?:(?:do|is|it's|this is) )?(?:not(?: to be done)?|never|(?:don't|do not|i'm not|i don't want to|i won't|nobody should)(?: (?:do|be|go|work|try|doing|want to be))?|do not)(?: (?:do|done))?(?: (?:it|this|that|this one|that one|under there|up there))* (?:on (?:my|your|his|her|their) own|by (?:myself|yourself)|alone)",
    ),
    () => true as const,
  );
}
