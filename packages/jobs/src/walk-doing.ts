/** Whether a clause of a walk-round says that something is to be done. */
import { actionWords, defectWords, thingWords } from './trade-words.ts';

/** After which a defect is not said, or its contrary is. */
export const notSo =
  /(?:\b(?:no|not|never|nothing|nowt|without|any|free of|if|in case|before (?:it|that|they|the \w+|she)|against|or (?:it|that|they)(?:'ll| will)?|otherwise|until (?:it|they)|stops? it|so it|hasn't|haven't|isn't|aren't|wasn't|can't see|don't want (?:it|that|her)?|no longer|stopped|would be|would have|would get)|n't)(?: \w+){0,2} $/;

/** Where a bare verb is a thing, not the doing of something. */
const nounBefore =
  /(?:^|[^a-zß-ɏ])(?:the|a|an|my|our|your|her|his|its|their|this|that|some|any|no|old|of|in|on|by|from|for|under|over|with|at|i|we|you|they|he|she|it|has|have|had|been|was|were|is|are|more|good|another|second|first|last|each|every|bit of|per|he's|she's|it's|port|starboard|main|jib|spare|bow|cabin|stern|which|who|as|than|like|off|side|wet|through|\d+|(?:one|two|three|four|five|six) ) ?$/;
/** After which the doing of something is told or asked of oneself. */
const doingBefore =
  /(?:^|[^a-zß-ɏ])(?:(?:(?<=^|^and |^then |^so |^just )|needs? |wants? |have |has |had |got |ought |going |is |are |am |i'm |we're |remember |forget |still |yet |plan |planning |mean |intend |hope |like |due |time |job |left |there's |thing |it's |now |supposed )to|must|should|please|then|and|so|or|just|better|let's|lets|i'll|we'll|it'll|i'd|could|can|will|ought to|also|now|only|really|needs?|wants?|not|don't forget to|remember to|do|go and|come and|best|properly|next|say|is to|either|maybe|perhaps|probably|might as well|going to|gonna|got to|have to|had better|'d better|you want to|need to) $/;
const nounAfter =
  /^(?: (?:badly |all |nearly |half |well |just |a bit |slightly |partly )?(?!need|shed|bed|speed|red)[a-zß-ɏ]{3,}ed(?![a-zß-ɏ])| (?:left|kept|gone|open|shut)(?![a-zß-ɏ])|'s| is| are| was| were| has| have| had| looks?| seems?| feels?| wants?| needs?| could| on the| in the| for the (?!\w+ (?:sail|trip))| of| satisfactory| serviceable| good| fine| ok| sound| intact| correct| gone| perished| missing| broken| worn| that [a-zß-ɏ]+s| which)(?![a-zß-ɏ])/;

const needs =
  "(?:needs?|wants?|requires?|could (?:really )?(?:do|be doing) with|calls? for|cr(?:y|ies|ying) out for|deserves?|must have|(?:has|have) to have|ought to have|should have|(?:is|are|was|were) (?:over)?due(?: for)?|due (?:for|a|too)|(?:it's |is )?time for|would like|would benefit from|takes?|merits?)(?: really| also| still| badly| all| both| now| maybe| definitely| just| its| their)*";
const needsSomething = new RegExp(
  `(?<![a-zß-ɏ])${needs} (?!(?:to be |it |her )?(?:dry|calm|still|daylight|warm|no rain|no wind|two (?:of|hands|people|pairs)|three (?:of|hands|people)|help|a (?:hand|helper|second pair|second hand|spare hand|mate|dry|calm|warm|friend)|some(?:one|body)|another (?:pair|hand)|about|around|maybe|an hour|half|ninety|\\d|the (?:mast|cover|board)|mast|cover|to look|it (?:done )?(?:by|before)|us|me|ages|both of us|one of us|doing by|worrying|worry|no|it shiny|to sell)(?![a-zß-ɏ]))[a-zß-ɏ\\d]`,
  '',
);
const ownNeed = /(?<![a-zß-ɏ])(?:i|we|you) (?:[a-zß-ɏ]+ )?(?:need|want|could do)(?![a-zß-ɏ])/;
const peoplesNeed =
  /(?<![a-zß-ɏ])(?:everybody|everyone|people|folks?|nobody|who|he|mum|dad|wife|kids?|children|lads|club|yard) (?:[a-zß-ɏ]+ )?(?:needs?|wants?|takes?)(?![a-zß-ɏ])/;
const isDue =
  /(?<![a-zß-ɏ])(?:is|are|now|looks) (?:over)?due(?: too| as well| again| now)?$|(?<![a-zß-ɏ])(?:over)?due (?:for )?(?:a|its|their)(?![a-zß-ɏ])/;
const newThing =
  /(?:^|(?:so|that's|that is|thats|it's|then|and|means|call it|probably|maybe|better|or|just|plus|get|fit|with|buy|a|i'd say|say) )(?:a |an |two |some |so |that's |proper |real |whole |complete |set of |both |pair of )*(?:new|longer|stronger|bigger|thicker|stouter|fresh|heavier)(?! (?:moon|year|to|at|again|one was|ones were|date|owner))(?: [a-zß-ɏ\d]|$)/;
/** 'a proper grip is ten minutes' */
const properThing = /^(?:a |an |the |and |then |so )*(?:proper|permanent|decent|real) [a-zß-ɏ-]+/;
/** 'that's a rebed', 'one for the grinder' */
const nounOfWork =
  /(?<![a-zß-ɏ])(?:that's|it's|that is|so|means|just|needs|wants|is) (?:a |another |going to be a )(?:proper |quick |full |complete |whole )?(?:rebed|rebuild|repair|refit|replacement|service|clean|strip ?down|strip|respray|repaint|re-?wire|touch ?up|patch|splice|whipping|weld|swap|job)(?![a-zß-ɏ])/;
const stillToDo =
  /(?<![a-zß-ɏ])(?:still (?:to (?:do|be done|go on|come off|fit|finish)|needs?|wants?|not done)|to be (?:done|[a-zß-ɏ]{3,}ed|made|sewn|cut|rebuilt|bent|ground)|left to do|not (?:done|finished|started) yet|yet to|only half (?:done|finished)|half (?:done|finished)|wants? (?:doing|finishing)|needs? (?:doing|finishing)|(?:must|has to|have to|got to|ought to|should|needs to|gotta) (?:be (?:[a-zß-ɏ]{3,}(?:ed|en|wn)|done|cut|sewn|made|rebuilt|reset)|come (?:off|out|down|up|apart)|go (?:back|in|on)))(?![a-zß-ɏ])/;
/** 'it gets changed before she goes anywhere' */
const getsDone =
  /(?<![a-zß-ɏ])(?:it|that|they|this|these|those|which|(?:the|that|this|my|her) [a-zß-ɏ-]+(?: [a-zß-ɏ-]+)?) (?:gets?|is getting|are getting|will get) (?!(?:wet|used|stuck|jammed|trapped|soaked|snagged|scared|excited|tired|caught|dropped on|splashed|bored|rained|covered|blocked|clogged|tangled|twisted|wedged|chafed|knocked|bashed|bumped|kicked|frayed)(?![a-z]))(?:re-?)?[a-zß-ɏ]{2,}(?:ed|done|cut|sewn|made|rebuilt|taken)(?= |$)/;
/** 'that jacket goes to the agent', 'Saturday I bring it to the lady', 'the pump comes out on Sunday' */
const goesTo =
  /(?<![a-zß-ɏ])(?:(?:goes|going|is off|is going|'s going) (?:back |straight |in |off |down )?to (?:the |a |my |our |his |her )?(?:[a-z]+ )?(?:sail ?maker|rigger|yard|shop|agent|welder|garage|service|machine|engineer|electrician|upholsterer|tyre|tire|workshop|menders?|mending|laundry)|(?:^|and |then |so |day )(?:i|we) (?:bring|take|drop|carry|send|deliver|post) (?:it|them|that|this|the [a-zß-ɏ-]+) (?:off |in |over |round |back |down )?(?:to|at) (?:the|a|my|our|his|her)|(?:comes?|has to come) (?:off|out|down|apart) (?:before|on|this|next|when|for|and|first|tomorrow|saturday|sunday))/;
const doing = /(?<![a-zß-ɏ])(?:worth|try|stands?|merits?) [a-zß-ɏ]+ing(?![a-zß-ɏ])/;
/** 'taking that window out is a morning' */
const gerund =
  /^(?:and |then |so )?(?:re)?(?:tak|bedd|clean|replac|renew|fit|sew|splic|paint|varnish|sand|fill|glu|screw|bolt|seal|wir|solder|greas|servic|strip|drill|chang|swapp|mend|repair|patch|whipp|adjust|tension|align|scrap|scrubb|polish|put)ing (?:it|that|the|them|those|a|an|new|both|off|out|down|up)(?![a-zß-ɏ])/;
const toDo =
  /(?<![a-zß-ɏ])(?:(?<=[a-zß-ɏ] )to do(?= *$| (?:on|at|with) )|needs? attention|wants? attention|see what's what|have it (?:apart|off|out|down)|have (?:him|her|them|that|the [a-zß-ɏ]+) (?:apart|off|out|down))(?![a-zß-ɏ])/;

/** What one means to do, whatever the verb; not what is no work on a boat. */
const intends =
  /(?<![a-zß-ɏ])(?:i|we|one|you(?! c)|somebody|someone)(?:'ll| shall| will| must| should| ought to| need to| have to|'ve got to| have got to| am going to|'m going to| are going to|'re going to| intend to| mean to| plan to| propose to| want to|'d better| had better| might as well|'d(?= also)| can| could)(?: (?:have a (?:good |proper )?look|also|then|just|probably|have to|need to|try to|try and|go and|get round to|really|better|at least|now|still|soon))* (?!(?:be|been|think|see|look|go|sail|say|tell|ask|wait|leave|live|admit|give you|stop|never|not|forget|remember|keep|stay|miss|hear|feel|know|believe|expect|need|have|come|get|bet|swear|sleep|sit|stand|eat|drink|laugh|enjoy|start|begin|manage|trust|worry|bother|mention|smell|taste|let|write|talk|spend|wish|hope|love|like|use|find|buy|order|drive|walk|ring|phone|read|show|pick up|count|agree|understand|imagine|guess|afford|reach|touch|turn up|wear|wave|hang|borrow|return|visit|meet|pay|win|lose|fall|break|hit|catch|decide|consider|assume|suppose|report|learn|play|cook|swim|cross|possibly|always|only|push|put my|get my|reckon|do (?!(?:it|that|this|the|them|both|those|these|all)(?![a-zß-ɏ]))|(?:hardly|barely|scarcely))(?![a-zß-ɏ]))[a-zß-ɏ-]+ (?:it|them|that|this|these|those|the|a|an|my|her|both|all|one|some|new|in|on|off|out|up|down|over|round|through|with|from|to)(?![a-zß-ɏ])/;
/** 'with the mast down we do the sheave' */
const plans = /(?<![a-zß-ɏ])(?:we|i) do (?:the|both|that|those|these|it|them)(?! (?:time|other day))(?![a-zß-ɏ])/;
/** 'it can be turned over' */
const canBeDone =
  /(?<![a-zß-ɏ])(?:it|they|that|this|these|which) (?:can|could|might|may) (?:easily |just |simply )?be (?!(?:used|seen|heard|felt|needed|trusted|expected|excused|left|ignored|removed from) )[a-zß-ɏ]+(?:ed|wn|ut|ade|one)(?![a-zß-ɏ])/;

/** 'Pull the handrail, overdrill …': told to oneself, at the head of a clause only. */
const bareDoing =
  /^(?:and |then |so |now |just |first )*(?:pull|overdrill|counterbore|open up|cut out|dig out|rake out|chisel out|poke|prod|press) (?:it|them|the|that|this|those|her|all)(?![a-zß-ɏ])|^(?:and |then |so )*overdrill(?= *$)/;

/** 'I want a batten glued across it', 'I'd like that looked at' */
const wantsDone =
  /(?<![a-zß-ɏ])(?:i|we)(?:'d| would| do| really| still)* (?:want|need|like|must have|should have) (?:it|them|that|this|the|a|an|some|those|these|both|all|her|new)(?: [a-zß-ɏ-]+){0,4}? (?:re)?(?:[a-zß-ɏ]{3,}ed|done|sewn|cut|made|rebuilt|seen to|put (?:on|in|back))(?![a-zß-ɏ])/;
/** Any bare verb told to oneself at the head of a clause, with what it is done to: 'pump the right one up'. */
const bidding =
  /^(?:(?:and|then|so|just|first|please|now|or|next|maybe|better|also) )*(?!(?:and|or|so|then|just|first|please|better|also|next|is|are|was|were|has|had|did|does|do|be|been|see|saw|know|think|thought|said|say|tell|told|bless|thank|mind|mean|want|need|like|love|ask|leave|let|read|had|heard|hear|hope|wish|guess|reckon|suppose|remember|find|found|get|got|take|took|put|gave|made|came|went|left|kept|felt|held|ran|sat|stood|brought|bought|caught|lost|met|paid|sold|spent|spoke|taught|won|wrote|drove|broke|chose|ate|fell|grew|rose|threw|wore|not|no|nor|only|even|still|again|once|twice|here|there|where|when|while|why|how|who|what|which|that|this|these|those|if|as|than|because|since|until|till|unless|though|although|but|yet|both|all|half|such|quite|rather|of|in|on|at|by|to|from|for|with|without|within|into|onto|off|over|under|above|below|behind|beside|between|beyond|near|inside|outside|across|along|around|round|through|past|up|down|out|back|about|after|before|during|against|towards?|like|same|besides|except|despite|plus|minus|per|via|may|might|must|can|could|will|would|shall|should|never|always|maybe|perhaps|forget|ignore|excuse|damn|blame|watch|enjoy|imagine|picture|never|stop|keep|start|wait|look|listen|smell|sail|hold|use|help|spend|lose|miss|save|skip|avoid|trust|believe|bet|count|give|send|bring|drop|collect|call|ring|phone|text|email|buy|order|note|mark|play|eat|drink|drive|tow|launch|anchor|tack|gybe|reef|moor|boat|apart|ditto|one|two|three|four|five|six|good|bad|fine|well|right|okay|ok|yes|oh|er|um|enough|most|more|less|much|many|few|little|some|any|every|each|either|neither|nothing|something|everything|anything|today|tomorrow|yesterday|tonight|later|soon|now|then|it's|that's|there's|ask|even|nice|lovely|had|cue|enter|given|especially|probably|certainly|anyway|meanwhile|otherwise|instead|hence|thus|hence|apparently|god|hell|christ|dear|poor|hi|hello|hey|bye|cheers|thanks|sorry)(?![a-zß-ɏ]))[a-zß-ɏ]{3,}(?<!ed|ing|ly|s|'|ne|er|or|ness|ment|tion|ous|ful|y) (?:it|them|the|that|both|all)(?! (?:time|way|same|day|while|morning|best|better|more|less|lot|best)(?![a-z]))(?![a-zß-ɏ])/;

/** That something is to be done, said of oneself or the boat; not what others do or what would be nice. */
export function tellsOfDoing(words: string, things: readonly RegExpMatchArray[]): boolean {
  if (peoplesNeed.test(words)) return hasAction(words, things);
  return (
    hasAction(words, things) ||
    (needsSomething.test(words) && (things.length > 0 || !ownNeed.test(words))) ||
    isDue.test(words) ||
    stillToDo.test(words) ||
    getsDone.test(words) ||
    goesTo.test(words) ||
    doing.test(words) ||
    gerund.test(words) ||
    nounOfWork.test(words) ||
    properThing.test(words) ||
    toDo.test(words) ||
    bareDoing.test(words) ||
    wantsDone.test(words) ||
    bidding.test(words) ||
    intends.test(words) ||
    plans.test(words) ||
    canBeDone.test(words) ||
    (newThing.test(words) &&
      !/\b(?:(?:since|with|got|bought) (?:the|a)|(?:and|but) the|brand|are|was|were|'s) new\b/.test(words) &&
      !/^(?:the|my|our) new\b/.test(words))
  );
}

/** In a clause that tells of what was done: that more is to be done, in plain words of need. */
export const stillNeeds = (words: string): boolean =>
  stillToDo.test(words) ||
  (needsSomething.test(words) && !peoplesNeed.test(words)) ||
  /(?<![a-zß-ɏ])(?:should|must|ought to|need to|needs to|have to|has to|got to|going to|i'll|we'll|let's) (?:[a-zß-ɏ]+ )?(?:be )?[a-zß-ɏ]+/.test(
    words,
  );

/** A bare verb that stands where one tells oneself to do something. */
function hasAction(words: string, things: readonly RegExpMatchArray[]): boolean {
  for (const match of actionWords.all(words)) {
    const before = words.slice(0, match.index);
    const rest = words.slice(match.index + match[0].length);
    if (notSo.test(before) && !/(?:do not|don't forget)/.test(before)) continue;
    // 'pin' of 'roller pin' is the thing
    const inThing = things.some(
      ({ index = 0, 0: thing }) => index < match.index && match.index + match[0].length <= index + thing.length,
    );
    if (inThing) continue;
    // 'I must order one' is something to get
    if (match[0] === 'order' && things.length === 0) continue;
    // 'hang on'
    if (/^hang/.test(words.slice(match.index)) && /^hang on(?! (?:the wall|a hook))/.test(words.slice(match.index)))
      continue;
    // 'its bracket bolt again'
    if (endsInThing(before) && things.some(({ index }) => index === match.index)) continue;
    if (doingBefore.test(before)) return true;
    if (nounBefore.test(before)) continue;
    if (nounAfter.test(rest)) continue;
    if (before.trim() === '' || /[:,] $/.test(before)) return !isNounAlone(match[0], rest);
    if (
      /^ (?:it|them|her|that|the|a|an|new|both|all|off|up|out|through|down|back|again|this|my|our|each|every)(?![a-zß-ɏ])/.test(
        rest,
      )
    )
      return true;
  }
  return false;
}

function endsInThing(before: string): boolean {
  const word = /([a-zß-ɏ-]+) $/.exec(before)?.[1];
  return word !== undefined && thingWords.fills(word);
}

/** 'paint' or 'seal' with no more to it, or with what is wrong with it. */
function isNounAlone(word: string, rest: string): boolean {
  if (
    /^ (?:it|them|her|the|a|an|new|both|all|off|up|out|down|and|&|w|with|in|to|for|every|each|two|\d)(?![a-zß-ɏ])/.test(
      rest,
    )
  )
    return false;
  return thingWords.fills(word) && (defectWords.next(rest) !== null || rest.trim() === '');
}
