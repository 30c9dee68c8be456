/** Whether two stretches of talk name the same thing. */
import type { Clause } from './walk-clauses.ts';

/** The talk has gone from port to starboard, or from the upper to the lower. */
export function otherSide(words: string, clauses: readonly Clause[]): boolean {
  const told = clauses.map((each) => each.words).join(' ');
  return opposites.some(
    ([one, other]) =>
      (one.test(words) && !other.test(words) && other.test(told) && !one.test(told)) ||
      (other.test(words) && !one.test(words) && one.test(told) && !other.test(told)),
  );
}
const opposites = [
  [/\b(?:port|nearside|left)\b/, /\b(?:starboard|stbd|offside|right[- ]hand)\b/],
  [/\bupper|\btop\b/, /\blower|\bbottom\b/],
  [/\b(?:front|bow|fore|forward)\b/, /\b(?:back|stern|aft)\b/],
] as const;

/** The same thing, or one told by its last word only: 'the shackle' of the mainsheet shackle, not of the anchor's. */
export function sharesThing(things: readonly string[], told: ReadonlySet<string>): boolean {
  return things.some((thing) =>
    [...told].some(
      (other) =>
        thing === other || (lastWord(thing) === lastWord(other) && !(thing.includes(' ') && other.includes(' '))),
    ),
  );
}
const lastWord = (thing: string) => thing.split(/[ -]/).at(-1);
