/** Things to get, told one after another: 'we need a turn button, whipping twine and a little tin of filler'. */
import type { TellingClause } from './work-in-hand.ts';

const lead =
  "(?:(?:and|so|also|then|oh|plus|but|well|right|now|please|just|still|better|best|i|we|you|i'll|we'll|i'd|we'd|i've|we've|must|must not|mustn't|don't|dont|do not|need to|needs? to|have to|got to|had better|should|shall|can you|could you|could|will you|remember to|remind me to|forget to|want to|going to|to|i'm|i am|we're|we are|have|really|only|definitely|maybe|probably|might as well|on the way|while i'm there) )*";
const getting = '(?:buy|order|pick up|get hold of|grab|fetch|stock up on|send off for|nip out for|lay in)';
/** What is wanted by a person, not by the thing. */
const lacking =
  '(?:run out of|ran out of|(?:nearly |almost |clean )?out of|(?:run(?:ning)?|getting) (?:low|short) (?:on|of)|low on|short of|used (?:up )?the last of(?: the| my| our)?|could do with|do with|(?<!(?:they|it|she|he) )(?:need|want))';
const amount =
  '(?:a|an|some|more|another|one|two|three|four|five|six|eight|ten|twelve|twenty|a few|a couple of|half a|a bit of|loads of|plenty of|spare|\\d[\\d.,]*(?: ?(?:x|off|mm|cm|m|metres?|meters?|l|litres?|liters?|ft|feet|foot))?)';
const bought = new RegExp(
  `^(?:${lead}${getting}|by(?= [a-z ,0-9]*(?:rings?|pins?|screws?|bolts?|rivets?|tape|rope|line|cord|sealant|epoxy|clips?|hose|grease|oil|paint|varnish|shackles?)(?![a-z]))) (?=[a-zß-ɏ0-9])(?!(?:it|them|that|him|her|up|one|new|the new|an? [a-z]+ one)(?![a-zß-ɏ]))(?!in |round )`,
);
const needed = new RegExp(
  `^${lead}(?:${lacking}|get|got to get|bring) (?!my |our |the (?:boat|mast|cover)|his |her )(?=(?:the |those |that )?(?:${amount}|[a-zß-ɏ-]+(?: [a-zß-ɏ-]+){0,3}$))(?!(?:to|it|them|that|this|him|her|us|me|doing|both|all|you|i|a hand|a (?:good |proper |quick )?(?:clean|look|wash|coat|scrub|polish|service|wipe|rub|go|rest|day|brew|drink|cup|second|friend|helper|mate|calm|dry)|some(?:one|body)|somebody|your|(?:a|an|the) [a-z]+ one|(?:a |some )?(?:whole|new|proper|decent|better|bigger|stronger|longer)|another (?:day|pair|go|coat)|one (?:day|dry|calm)|two (?:people|of us|hands|coats)|in|out|on|off|up|down|round|away|back|ready|going|started|home|there|rid|stuck|worse|wet|more than|time|help|daylight)(?![a-zß-ɏ]))`,
);
const headAlone =
  /^(?:and |so |right |then |now |ok |okay |for the )*(?:shopping(?: list)?(?: then| now| for (?:this|that|saturday|the weekend))?|things? (?:to (?:buy|get|order)|(?:i|we) need)|(?:stuff|bits|parts|gear|stores|materials|supplies|consumables|items)(?: and [a-z]+)? (?:to (?:get|buy|order|be (?:bought|ordered|procured))|needed|required|wanted|(?:i|we) need)|(?:stock|stores?|spares?) (?:required|needed|wanted|to get)|(?:i |we |still )*want|(?:still )?(?:to|must|need to|have to) (?:buy|get|order|procure|purchase|be (?:procured|bought|ordered|purchased|got|obtained))|anything to (?:buy|get)|(?:the )?(?:hardware (?:store|shop)|chandlery|chandlers?'?s?|chandler|shop|store|diy (?:shop|place))(?: list| run| order| trip)?|(?:i|we) (?:also |still )?(?:need|must (?:buy|get)|need to (?:buy|get|order)|have to (?:buy|get))|buy(?:ing)?(?: list)?|get|need(?:ed)?|wanted|required|order|purchases?|on (?:the|my) (?:shopping )?list|from the (?:shop|chandler'?s?|chandlery)|what (?:do|did) (?:you|we|i) need from the [a-z]+)$/;

/** The words after the head, by their place in the clause; null where it tells of nothing to get. */
function headEnds(words: string): number | null {
  const found = bought.exec(words) ?? needed.exec(words);
  return found === null ? null : found[0].length;
}

/** It heads a list of things to get, and names none itself. */
export const headsShopping = (words: string): boolean => headAlone.test(words);

const clauseVerb =
  /(?<![a-zß-ɏ])(?:i|we|you|they|he|she|it|that|this|is|are|was|were|isn't|aren't|has|had|does|do|did|can|could|will|would|may|might|must|should|won't|don't|doesn't|needs?|wants?|[a-zß-ɏ]+(?:'ll|'ve|'re|n't)|it's|that's|(?<!(?:maker|chandler|painter|bosun|rigger))'s|[a-zß-ɏ]{3,}(?<!seiz|galvaniz|galvanis|tinn|plat|braid|doubl|curv|thread|point|colour|color|r|sh|arm|wax|heat)ed (?:across|to|on|in|up|over|by|before|round|down|back|together|out|off|properly)|there's|which|because|so|if|when|until|till|while|but|go|fix|check|minutes?|mins?|hours?|hrs?)(?![a-zß-ɏ])/;

/** 'three', 'the lot'; what is eaten and drunk. */
const numberAlone =
  /^(?:one|two|three|four|five|six|ten|\d+|some|more|a few|a couple|another|the lot|ones?|things|stuff|bits|(?:(?:a|an|some|more|the) )?(?:[a-z]+ of )?(?:milk|cocoa|tomatoes|crisps|sleep|bath|time|money|rain|sun|wind|fun|patience|tea|coffee|bread|beers?|biscuits|cakes?|bacon|wine|pasty|pasties|sandwich(?:es)?|lunch|supper|dinner|chips|eggs|butter|sugar|ice cream))$/;

/** It names a thing and says nothing of it. */
export function isThingAlone(words: string): boolean {
  return (
    /[a-zß-ɏ]{3}/.test(words) &&
    words.split(' ').length <= 12 &&
    !numberAlone.test(words) &&
    !clauseVerb.test(words.replace(/(?<![a-z])(?:for (?:the|that|it|when|a)|if|while|when) .*$/, ''))
  );
}

const another = new RegExp(
  `(?: and (?=(?:also |maybe |then )?(?:${amount}|the|those|that|new|[a-zß-ɏ-]+(?: [a-zß-ɏ-]+)?$)(?![a-zß-ɏ]))| plus |(?<!(?:^|[a-z] (?:of|in|at|by|x|with|about|for|to|and|the|or|say|maybe|also|need|than)| x|half|quite)) (?=(?:a|an|some|another|one|two|three|four|five|six) (?!(?:half|bit wider|quarter|piece|each|long|of)(?![a-z]))[a-zß-ɏ]))`,
  'g',
);

/** A clause in the things that it lists, each with its own place. */
export function listedThings<T extends TellingClause>(clause: T, from = 0): T[] {
  const words = clause.words.slice(from);
  const cuts = [0];
  for (const match of words.matchAll(another)) {
    if (match[0].length > 0) cuts.push(match.index);
  }
  return cuts.map((start, at) => {
    const raw = words.slice(start, cuts[at + 1] ?? words.length);
    const skipped = /^ *(?:(?:and|plus|also|then|maybe|or) )*/.exec(raw)![0].length;
    const lead = at === 0 && from > 0 ? 0 : from + start + skipped;
    const text = raw.slice(skipped).trimEnd();
    return { ...clause, from: clause.from + lead, to: clause.from + from + start + skipped + text.length, words: text };
  });
}

/** The things to get that a clause tells of by itself; none where it does not. */
export function thingsToGet<T extends TellingClause>(clause: T): T[] {
  const from = headEnds(clause.words);
  if (from === null || clause.sense.hearsay) return [];
  const things = listedThings(clause, from);
  return things.every(({ words }) => isThingAlone(words)) ? things : [];
}
