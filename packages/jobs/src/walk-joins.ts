/** Whether a clause is more of the work in hand, or begins something else. */
import type { Clause } from './walk-clauses.ts';
import type { Sense } from './walk-sense.ts';
import type { Open, TellingClause } from './work-in-hand.ts';

/** What may be behind it. */
export const guesses =
  /(?<![a-zß-ɏ])(?:i think|i reckon|i guess|notion|suspect|probably|perhaps it|might be|could be|must be|looks like|seems to be|it's (?:only |just )?the|that'll be)(?![a-zß-ɏ])/;
/** A second length that puts the first right. */
const putsRight = /^(?:no|sorry|actually|rather|call it|make that|or rather|no more like|i mean|well)(?![a-zß-ɏ])/;

/** More of the work in hand: its length, weather, date, what if it is left. */
export function isDetail({ words, sense }: TellingClause, open: Open): boolean {
  if (sense.minutes) return !open.minutes || putsRight.test(words);
  if (sense.detail && words.split(' ').length <= 16 && !sense.subject) return true;
  return (
    /(?<![a-zß-ɏ])(?:danger\w*|unsafe|safe|hurt|law|legal\w*|sailing|illegal|unlawful|fine|sails?|worse|rot|spread|before|by|until|for the|dry|knots|degrees|mast (?:up|down)|cover|propped|trailer|hand|alone|help|not urgent|no hurry|looks|comfort\w*|risk|priority|urgent|today|tomorrow|week\w*|month|monday|tuesday|wednesday|thursday|friday|saturday|sunday|not on the road)(?![a-zß-ɏ])/.test(
      words,
    ) &&
    words.split(' ').length <= 14 &&
    (sense.things.length === 0 || sense.things.some((thing) => open.things.has(thing)))
  );
}

/** What a thing is made of or held by, when it is told to be new. */
const materials =
  /(?<![a-zß-ɏ])(?:new|longer|stronger|bigger|thicker|fresh|heavier) (?:[a-zß-ɏ]+ )?(?:rope|line|cord|wire|cable|hose|strap|webbing|chain|tape|cloth|shackle|sheave|filter|one|ones|set|pair|length|bit|piece)s?(?![a-zß-ɏ])/;

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

/** 'and the cowl has perished': something else, not more of the same. */
const startsWithThing = ({ things }: Sense, words: string) =>
  things.length > 0 &&
  !/(?<![a-zß-ɏ])(?:it|them)(?![a-zß-ɏ])/.test(words) &&
  /^(?:and|with|so) (?:the|my|her|one of the|both)(?![a-zß-ɏ])/.test(words);

export function goesOn(
  open: Open,
  { words, sense }: TellingClause,
  {
    sameSentence,
    sameItem,
    inList,
    shared,
    ahead,
  }: {
    readonly sameSentence: boolean;
    readonly sameItem: boolean;
    /** of the same item of a list */
    readonly inList: boolean;
    readonly shared: boolean;
    /** the rest of the sentence goes back to what was spoken of */
    readonly ahead: boolean;
  },
): boolean {
  if (inList && open.kind === 'job' && !sense.temporary)
    return !(
      sense.subject &&
      !sense.parts &&
      !shared &&
      (open.minutes || (!sameSentence && (open.remedy || (sense.defect && open.defect))))
    );
  // 'and it'll only rot the deck'; 'I think it's the bow fitting'
  if (!sense.remedy && sense.detail && sense.pronoun && !sense.subject) return true;
  if (sameItem && !sense.remedy && !open.remedy && guesses.test(words) && !sense.subject) return true;
  if (open.kind === 'jury rig')
    return (
      sameSentence &&
      !sense.remedy &&
      // 'the new cleat itself is a ten minute job'
      !(sense.minutes && /(?<![a-zß-ɏ])(?:new|proper|real)(?![a-zß-ɏ])/.test(words)) &&
      (sense.things.length === 0 || shared)
    );
  // 'leave it overnight, then screw it back, twenty minutes': the next step of the same work
  if (
    sameSentence &&
    open.remedy &&
    sense.remedy &&
    sense.pronoun &&
    /^(?:and )?then (?![^,]*(?:new|the other))/.test(words)
  )
    return true;
  const isNew =
    /(?<![a-zß-ɏ])(?:new|longer|stronger|bigger|thicker|stouter|fresh|heavier)(?![a-zß-ɏ])/.test(words) &&
    (sense.things.length === 0 || shared || sense.parts || sameSentence || materials.test(words));
  const secondLength = sense.minutes && open.minutes && !putsRight.test(words);
  if (secondLength && !(sense.pronoun && !sense.subject && sameSentence)) return false;
  if (secondLength) return sense.things.length === 0 || shared;
  const backToIt = sense.pronoun || sense.things.length === 0 || shared;
  if (!sameSentence && open.minutes && sense.subject && !shared) return false;
  if (sense.remedy && !open.remedy) {
    // 'it has seized. Take the cap off, free it and grease it.'
    if (!sameSentence && ahead && !sense.defect && !open.minutes && (sense.parts || !sense.about)) return true;
    if (sameSentence) return backToIt || isNew || !sense.subject || !sense.defect || sense.parts;
    return backToIt || isNew;
  }
  if (sense.remedy) {
    if (open.minutes && !sameSentence) return sense.things.length === 0 && sense.pronoun && !sense.minutes;
    if (sameSentence) return backToIt || !sense.subject || (sense.parts && !sense.minutes);
    return sense.things.length === 0 || (sense.pronoun && !sense.subject) || (shared && !open.minutes);
  }
  // something more that is wrong
  if (
    !open.remedy &&
    !open.minutes &&
    sense.parts &&
    !/(?<![a-zß-ɏ])(?:port|starboard|stbd|both|another)(?![a-zß-ɏ])/.test(words)
  )
    return true;
  if (open.remedy && (open.minutes || !sameSentence))
    return sameSentence ? sense.things.length === 0 && sense.pronoun : shared && sense.pronoun;
  return sameSentence
    ? backToIt || (/^(?:and|with|so)(?![a-zß-ɏ])/.test(words) && (!startsWithThing(sense, words) || sense.parts))
    : (backToIt && !sense.subject) ||
        /^(?:there's|there is|its|it|they|(?:two|one|some|half) of (?:them|its|those))(?![a-zß-ɏ])/.test(words);
}
