/** What a clause of a walk-round says: that something is wrong, what is to be done, that all is well, that it is done. */
import { lineText } from './line-text.ts';
import { readTemporary } from './read-consequence.ts';
import { readLength } from './read-length.ts';
import { actionPattern, defectPattern, finePattern, thingPattern } from './trade-words.ts';

export interface Sense {
  /** the things named, in singular */
  readonly things: readonly string[];
  /** something is wrong with it */
  readonly defect: boolean;
  /** something is to be done */
  readonly remedy: boolean;
  /** nothing need be done */
  readonly fine: boolean;
  /** it is to be left as it is, whatever is wrong with it */
  readonly leftBe: boolean;
  /** it was done */
  readonly done: boolean;
  readonly temporary: boolean;
  /** says of what was spoken of before: it, they, that, new one */
  readonly pronoun: boolean;
  /** begins with a thing that it says something about */
  readonly subject: boolean;
  readonly minutes: boolean;
}

const notSo =
  /(?:\b(?:no|not|never|nothing|without|any|free of|if|in case|before (?:it|that|they|the \w+|she)|against|or (?:it|that|they)(?:'ll| will)?|otherwise|until (?:it|they)|stops? it|so it|hasn't|haven't|isn't|aren't|wasn't|can't see|don't want (?:it|that|her)?)|n't)(?: \w+){0,2} $/;

/** Where a bare verb is a thing, not the doing of something. */
const nounBefore =
  /(?:^|[^\p{L}])(?:the|a|an|my|our|her|his|its|their|this|that|some|any|no|old|of|in|on|by|from|for|under|over|with|at|i|we|they|he|she|it|has|have|had|been|was|were|is|are|more|good|another|second|first|last|each|every|bit of|per|he's|she's|it's|port|starboard|main|jib|spare|bow|cabin|stern|which|who|as|than|like|off|side|wet|\d+|(?:one|two|three|four|five|six) ) ?$/u;
/** After which the doing of something is told or asked of oneself. */
const doingBefore =
  /(?:^|[^\p{L}])(?:to|must|should|please|then|and|so|or|just|better|let's|lets|i'll|we'll|it'll|i'd|could|can|will|ought to|also|now|only|really|needs?|wants?|not|don't forget to|remember to|do|go and|come and|best|properly|next|say|is to|either|maybe|perhaps|probably|might as well) $/u;
const nounAfter =
  /^(?:'s| is| are| was| were| has| have| had| looks?| seems?| feels?| wants?| needs?| could| on the| in the| for the (?!\w+ (?:sail|trip))| of)(?![\p{L}])/u;

const needs =
  "(?:needs?|wants?|requires?|could (?:really )?do with|calls? for|cr(?:y|ies|ying) out for|deserves?|must have|(?:has|have) to have|ought to have|should have|(?:is|are|was|were) (?:over)?due(?: for)?|due (?:for|a|too)|(?:it's |is )?time for|would like|would benefit from|takes?)(?: really| also| still| badly| all| both| now| maybe| definitely| just)*";
const needsSomething = new RegExp(
  `(?<![\\p{L}])${needs} (?!(?:to be |it |her )?(?:dry|calm|still|daylight|warm|no rain|no wind|two (?:of|hands|people|pairs)|three (?:of|hands|people)|help|a (?:hand|helper|second pair|second hand|spare hand|mate|dry|calm|warm|friend)|some(?:one|body)|another (?:pair|hand)|about|around|maybe|an hour|half|ninety|\\d|the (?:mast|cover|board)|mast|cover|to look|it (?:done )?(?:by|before)|us|me|ages|both of us|doing by)(?![\\p{L}]))[\\p{L}\\d]`,
  'u',
);
const ownNeed = /(?<![\p{L}])(?:i|we) (?:\p{L}+ )?(?:need|want)(?![\p{L}])/u;
const isDue =
  /(?<![\p{L}])(?:is|are|now|looks) (?:over)?due(?: too| as well| again| now)?$|(?<![\p{L}])(?:over)?due (?:for )?(?:a|its|their)(?![\p{L}])/u;
const newThing =
  /(?:^|(?:so|that's|that is|thats|it's|then|and|means|call it|probably|maybe|better|or|just|plus|get|fit|with|buy) )(?:a |an |two |some |so |that's |proper |real |whole |complete |set of )*(?:new|longer|stronger|bigger|thicker|stouter|fresh|heavier)(?! (?:moon|year|to|at|again))(?: [\p{L}\d]|$)/u;
const stillToDo =
  /(?<![\p{L}])(?:still (?:to (?:do|be done|go on|come off|fit|finish)|needs?|wants?|not done)|to be done|left to do|not (?:done|finished|started) yet|yet to|only half (?:done|finished)|half (?:done|finished)|wants? (?:doing|finishing)|needs? (?:doing|finishing))(?![\p{L}])/u;
const doing = /(?<![\p{L}])(?:worth|try|stands?|merits?) \p{L}+ing(?![\p{L}])/u;

const told =
  /(?<![\p{L}])(?:(?:i|we|he|she|they|you)(?:'ve| have|'d| had)? (?:already |just |also |only |then |both |all |even )?(?:\p{L}{2,}ed|did|done|put|got|took|bought|sent|went|made|found|had|gave|swapped|cut|left|told|said|saw|came|fitted)|(?:was|were|been|got) (?:already |all |just |only )?\p{L}{2,}(?:ed|t|ne|wn)(?: up| out| down)?|already (?:done|sorted|fixed|fitted|in)|(?:done|fixed|sorted|finished|replaced|renewed|greased|serviced|cleaned|painted|changed)(?: (?:it|them|that))?(?: (?:last|in|on|this|already|yesterday|earlier|now|a (?:week|month|year)|both|all)(?![\p{L}])|$)|did (?:it|them|that|those|the)|(?:last|this) (?:week|month|year|season|winter|spring|summer|autumn)|since (?:i|we|the) )/u;
const perhaps =
  /(?:^|[^\p{L}])(?:if (?!left)|might (?!as well)|some ?day i|wish|dream|would be|i'd never|i don't (?:agree|think|believe|know)|not sure|i (?:said|thought|hoped)|(?:i|we|it|that) would|don't mention|instead of|rather than|as if|used to|would have|could have|don't need|doesn't need|no need|not (?:going to|worth)|needn't|needs? no|do not need|does not need|won't need|don't have to|wouldn't|reckons?)(?![\p{L}])/u;

const leave =
  /(?<![\p{L}])(?:leave (?:it|that|them|this|well)(?: alone| be| for now| as)?$|live with|can (?:wait|stay)|will wait|has(?:n't| not) (?:moved|changed|got (?:any )?worse)|sound enough|no complaints?|not worth|will do another|good for another|no work|no need|not needed|don't bother|happy with)(?![\p{L}])/u;

export function senseOf(words: string): Sense {
  const things = [...words.matchAll(thingPattern)];
  const subject = things.length > 0 && /^(?:[\p{L}'-]+ ){0,3}$/u.test(words.slice(0, things[0]!.index));
  const defect = [...words.matchAll(defectPattern)].some(
    ({ index, 0: found }) => !notSo.test(words.slice(0, index)) && !/^(?:new|the) /.test(found),
  );
  const maybe = perhaps.test(words);
  const remedy =
    !maybe &&
    (hasAction(words, things) ||
      (needsSomething.test(words) && (things.length > 0 || !ownNeed.test(words))) ||
      isDue.test(words) ||
      stillToDo.test(words) ||
      doing.test(words) ||
      (newThing.test(words) && !/\b(?:since|with) (?:the|a) new\b/.test(words)));
  const text = lineText(words);
  return {
    things: things.map(([thing]) => thing.replace(/s$/, '')),
    defect: defect && !/^if /.test(words),
    remedy,
    fine: words.search(finePattern) >= 0,
    leftBe: leave.test(words),
    done: told.test(words),
    temporary: readTemporary(text) !== null,
    pronoun:
      /(?<![\p{L}])(?:it|its|it's|it'll|they|them|they're|that|that's|thats|those|these|this|which|(?:one|ones)(?! day)|both|another|same)(?![\p{L}])/u.test(
        words,
      ),
    subject,
    minutes: readLength(text) !== null,
  };
}

/** A bare verb that stands where one tells oneself to do something. */
function hasAction(words: string, things: readonly RegExpMatchArray[]): boolean {
  for (const match of words.matchAll(actionPattern)) {
    const before = words.slice(0, match.index);
    const rest = words.slice(match.index + match[0].length);
    if (notSo.test(before) && !/(?:do not|don't forget)/.test(before)) continue;
    // 'pin' of 'roller pin' is the thing
    const inThing = things.some(
      ({ index = 0, 0: thing }) => index < match.index && match.index + match[0].length <= index + thing.length,
    );
    if (inThing) continue;
    if (doingBefore.test(before)) return true;
    if (nounBefore.test(before)) continue;
    if (nounAfter.test(rest)) continue;
    if (before.trim() === '' || /[:,] $/.test(before)) return !isNounAlone(match[0], rest);
    if (
      /^ (?:it|them|her|that|the|a|an|new|both|all|off|up|out|through|down|back|again|this|my|our|each|every)(?![\p{L}])/u.test(
        rest,
      )
    )
      return true;
  }
  return false;
}

/** 'paint' or 'seal' with no more to it, or with what is wrong with it. */
function isNounAlone(word: string, rest: string): boolean {
  if (
    /^ (?:it|them|her|the|a|an|new|both|all|off|up|out|down|and|&|w|with|in|to|for|every|each|two|\d)(?![\p{L}])/u.test(
      rest,
    )
  )
    return false;
  const isThing = thingPattern.exec(word)?.[0] === word;
  thingPattern.lastIndex = 0;
  return isThing && (rest.search(defectPattern) >= 0 || rest.trim() === '');
}
