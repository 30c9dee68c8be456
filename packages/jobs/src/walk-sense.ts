/** What a clause of a walk-round says: that something is wrong, what is to be done, that all is well, that it is done. */
import { lineText } from './line-text.ts';
import { readConditions } from './read-conditions.ts';
import { readConsequence, readTemporary } from './read-consequence.ts';
import { readHands, readNotAlone } from './read-hands.ts';
import { readLength } from './read-length.ts';
import { defectWords, fineWords, partWords, thingWords } from './trade-words.ts';
import { notSo, stillNeeds, tellsOfDoing } from './walk-doing.ts';
import {
  beforeIf,
  isAdvised,
  isAnothersBoat,
  isDone,
  isDoneBy,
  isHearsay,
  isOfElsewhere,
  isPutRight,
  isQuestion,
  isWavedAside,
} from './walk-told.ts';

export interface Sense {
  /** the things named, in singular */
  readonly things: readonly string[];
  /** names a thing, or something that the reader does not know and says something about */
  readonly about: boolean;
  /** all that it names are small parts, of what was spoken of */
  readonly parts: boolean;
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
  /** what was wrong with it is put right */
  readonly putRight: boolean;
  /** a question, what would be, what others think or do */
  readonly hearsay: boolean;
  /** another says that something is to be done */
  readonly advised: boolean;
  readonly temporary: boolean;
  /** says of what was spoken of before: it, they, that, new one */
  readonly pronoun: boolean;
  /** begins with a thing that it says something about */
  readonly subject: boolean;
  readonly minutes: boolean;
  /** hands, weather, what if it is left, how she must stand: more of the work in hand */
  readonly detail: boolean;
}

/** 'the widget is', 'one of the widgets has': something of no name that the reader knows. */
const unknownSubject =
  /^(?:and |but |so |then |also |now )*(?:the|my|her|its|your|our|both|one of the|two of the|all the|another|that|this) (?!(?:rest|lot|whole|other|same|way|day|time|thing|one|ones|weather|man|men|kids?|last|first|next|problem|trouble|mother|father|mum|dad|wife|husband|son|daughter|brother|sister|friend|neighbour|mate|family|crew|good|bad|best|worst|job|work)(?![a-zß-ɏ]))(?:[a-zß-ɏ-]+ ){0,2}?[a-zß-ɏ-]+(?:'s| is| are| has| have| was| were| looks?| feels?| needs?| wants?| could| keeps?| won't| doesn't| don't| can't| got| seems?)(?![a-zß-ɏ])/;
/** 'mast down', 'with the cover off': how she must stand, not what it is about. */
export const setUpAlone =
  /^(?:and |but |so |with |needs? |has to have )*(?:the |her )?(?:mast|cover|board|boat)(?: has to be| must be| needs to be| to be| wants to be)? (?:up|down|on|off|lowered|housed|propped(?: up)?|afloat|ashore|on the trailer)(?: obviously| of course| for (?:that|it|this)| and .*)?$/;
/** A length of time that was no work to come. */
const tookTime =
  /(?<![a-zß-ɏ])(?:ran|took|spent|lasted|waited|sat|sailed|stood|had a (?:good )?(?:half|hour|ten)|for (?:a|the) (?:good )?(?:half|hour)|i've (?:just )?had|been at it|ago|after (?:an?|half|\d+|[a-zß-ɏ]+) (?:an )?(?:hours?|minutes?)|hours? (?:away|late|early|drive)|(?:bucket|cup|cupful|mug|pint|litre|gallon)s? (?:[a-zß-ɏ]+ )?(?:in|an|a|every|per) |(?:goes|runs|comes on|lasts) for)(?![a-zß-ɏ])/;
const thereIs =
  /^(?:and |but |so |then |also |now )*(?:there's|there is|there are|theres|we've got|i've got|i found|found) /;
/** Somebody's body, or somebody else's boat. */
/** My own body and not the boat's. */
const ofBody = /(?<![a-zß-ɏ])my (?:own )?(?:knees?|back|hip|teeth|tooth|eyes?|shoulder|head)(?![a-zß-ɏ])/;
const notHers = /^(?:and |but |so )?(?:my |me |the (?:boat|one|people) next|next door|the neighbour)/;
/** Without one of these no hands, weather or consequence is told. */
const anyDetail =
  /hand|people|person|of us|men(?![a-zß-ɏ])|pair|alone|own(?![a-zß-ɏ])|myself|yourself|help|mate|friend|some(?:one|body)|dry|dries|rain|knot|kn(?![a-zß-ɏ])|kts?(?![a-zß-ɏ])|°|degree|deg(?![a-zß-ɏ])|\d ?c(?![a-zß-ɏ])|above|over|below|under|humid|%|per ?cent|wind|breeze|light|danger|safe|hazard|peril|risk|hurt|injur|kill|maim|drown|crush|brain|lose|fall|overboard|fire|explode|blow up|sink|come|coming|law|legal|fine|police|sail|go |going|launch|out |worse|worsen|deteriorat|rot|spread|rust|corrode|tear|rip|crack|grow|soak|left|creep|every|comfort|cosmetic|looks|nice|annoy|nuisance|vanity|luxury|important|urgent|vital|essential|nobody|no one/;
const ofMe = /^(?:and |so |but )*(?:i'm|i am|i was|we're|we were|i feel|i felt|i got|i've been) /;
/** 'the mould hasn't come back', 'the leak has stopped' */
const goneAgain =
  /^ (?:(?:has|have|is|was|does|did)(?:n't| not| never)(?! been| gone)|(?:has |have |'s |is )?(?:stopped|cured|sorted|gone away|cleared)|never came)/;
/** 'isn't holding charge', 'has no seal', 'keeps undoing itself': wrong whatever the verb, unless it is no fault at all. */
const wont =
  /(?<![a-zß-ɏ])(?:won't|will not|doesn't|does not|don't|do not|isn't|aren't|is not|are not|can't|cannot|couldn't|refuses? to|fails? to|stopped|has (?:started|begun|taken) to|have (?:started|begun) to|keeps?|no longer) (?:(?:quite|really|always|even|properly) )?([a-zß-ɏ]+)/g;
const noFault =
  /^(?:need|want|matter|look|seem|mind|care|think|know|believe|worry|bother|have|going|coming|sure|want|expect|suppose|remember|see|find|feel|hear|say|tell|like|worth|bad|raining|blowing|here|a|an|the|that|so|as|too|quite|really|any|ever|get|afford|be|do|use|help|stop|forget|move|telling|saying|on|an|her|me|us|going|my|been|yet|sail|sell)$/;
const lacks =
  /(?<![a-zß-ɏ])(?:has|have|had|'s got|'ve got|got|with) (?:lost (?:its|a|the|all|one)|no (?!trouble|problem|issue|leak|play|rust|wear|crack|sign|damage|bother|complaint|fault|need|idea|room|intention|hurry|water|corrosion|chafe|rot|movement|end|time|wind|chance|plan|doubt|effect|luck|reason|use|way|longer|found|seen|heard))[a-zß-ɏ]+/;

function wontDo(words: string): boolean {
  if (lacks.test(words)) return true;
  // told to oneself or another, not of a thing
  if (/^(?:and |but |so |please |just |now )*(?:don't|do not) /.test(words)) return false;
  return [...words.matchAll(wont)].some(({ index, 0: said, 1: verb }) => {
    if (verb === undefined || noFault.test(verb)) return false;
    const rest = words.slice(index + said.length - verb.length);
    const wrong = defectWords.next(rest)?.index === 0;
    return /^(?:keep|has|have)/.test(said) ? true : !wrong;
  });
}

/** 'I can't get the lid off' */
const cantGet =
  /(?<![a-zß-ɏ])(?:can't|cannot|couldn't|could not|can not) (?:get|make|pull|push|prise) (?:it|them|the|her|either|any|my|that)(?: [a-zß-ɏ'-]+){0,4}? (?:off|out|open|shut|to|up|down|in|undone|apart|free|loose|go|work|move)(?![a-zß-ɏ])/;

/** Defects that are none of a thing by themselves. */
const figure =
  /^(?:bad(?:ly)?|poor(?:ly)?|slow|hot|warm|dull|tired|finished|done|lost|gone|dead|flat|dry|soft|shot|shining|showing|missing|trouble)$/;

export function senseOf(
  words: string,
  { asked = false, opens = true }: { readonly asked?: boolean; readonly opens?: boolean } = {},
): Sense {
  const things = setUpAlone.test(words)
    ? []
    : thingWords.all(words).filter(({ index, 0: thing }) => !isSpeed(words, index, thing));
  const subject = things.length > 0 && /^(?:[a-zß-ɏ'-]+ ){0,3}$/.test(words.slice(0, things[0]!.index));
  const question = isQuestion(words, asked, opens);
  const elsewhere = isAnothersBoat(words) || (isOfElsewhere(words) && (things.length === 0 || notHers.test(words)));
  const about =
    things.length > 0 ||
    (!elsewhere && thereIs.test(words) && defectWords.next(words) !== null) ||
    (!elsewhere && unknownSubject.test(words));
  const defects = defectWords.all(words).filter(
    ({ index, 0: found }) =>
      !things.some((thing) => thing.index <= index && index + found.length < thing.index + thing[0].length) &&
      !notSo.test(words.slice(0, index)) &&
      !/^(?:new|the) /.test(found) &&
      !(
        /^(?:slip|stick|smoke|flap|drag|stall|snag|scale|blew)$/.test(found) &&
        /(?:^|[^a-zß-ɏ])(?:the|a|this|that|our|wind) $/.test(words.slice(0, index))
      ) &&
      // 'stripped it, cleaned it'
      !(/ed$/.test(found) && /^ (?:it|them)(?![a-zß-ɏ])/.test(words.slice(index + found.length))) &&
      !goneAgain.test(words.slice(index + found.length)) &&
      // 'finished the cushions', 'lost the afternoon'
      !(
        /^(?:finished|lost|done|dried)$/.test(found) &&
        /^ (?:the|it|them|my|her|our|that|all)(?![a-zß-ɏ])/.test(words.slice(index + found.length))
      ) &&
      !(
        /^(?:bad|poor|lost|good)$/.test(found) &&
        /^ (?:news|idea|weather|time|job|thing|luck|mood)/.test(words.slice(index + found.length))
      ) &&
      !(ofMe.test(words) && things.length === 0) &&
      !(
        figure.test(found) &&
        (words.split(' ').length > 4 || /^(?:bad|poor)/.test(found)) &&
        !about &&
        !/(?<![a-zß-ɏ])(?:it|it's|they|they're|one|that|that's|two|three|both)(?![a-zß-ɏ])/.test(words)
      ),
  );
  const defect =
    (defects.length > 0 || (about && !question && wontDo(words)) || (!question && cantGet.test(words))) &&
    !/^(?:it|that|this) (?:was|is|'s) only (?:the|a) /.test(words) &&
    !/^if /.test(words) &&
    !question &&
    !elsewhere;
  const done = isDone(words);
  const hearsay = question || isHearsay(words);
  const text = lineText(words);
  // 'dry it out', 'a dry spell': what is to be, not what is well
  const tells = () => !lawOfAll.test(words) && tellsOfDoing(beforeIf(words), things);
  const fine = fineWords.next(words.replace(dryToBe, ' ')) !== null;
  return {
    things: things.map(([thing]) => thing.replace(/(?:(?<=ch|sh|x|ss)es|(?<=..)(?<!s)s)$/, '')),
    about,
    parts:
      things.some(({ index, 0: thing }) => !isWhere(words, index) && isPart(thing)) &&
      things.every(({ index, 0: thing }) => isWhere(words, index) || isPart(thing)),
    defect,
    remedy:
      !hearsay &&
      !setUpAlone.test(words) &&
      !lawOfAll.test(words) &&
      !(things.length === 0 && ofBody.test(words)) &&
      (isDoneBy(words) ? stillNeeds(words) : tellsOfDoing(beforeIf(words), things)),
    advised: !question && isAdvised(words) && tells(),
    fine,
    leftBe: isWavedAside(words),
    done,
    putRight: isPutRight(words),
    hearsay,
    temporary: readTemporary(text) !== null,
    pronoun: goesBack(words, things),
    subject,
    minutes: !tookTime.test(words) && readLength(text) !== null,
    detail:
      setUpAlone.test(words) ||
      (anyDetail.test(words) &&
        (readConsequence(lineText(words)) !== null ||
          readHands(lineText(words)) !== null ||
          readNotAlone(lineText(words)) !== null ||
          readConditions(lineText(words)).length > 0)),
  };
}

/** 'you have to have lights by law': what holds for every boat. */
const lawOfAll =
  /^(?:and |but |because |cos )*you (?:have to|need to|must|can't|cannot) .*(?<![a-zß-ɏ])(?:law|legal|legally|rules?)(?![a-zß-ɏ])/;

const dryToBe =
  /(?<![a-zß-ɏ])(?:dry (?:it|them|that|this|her|out|off|the)|(?:a|some|any|needs?|wants?|when|once|is|it's|be|on|next) (?:[a-zß-ɏ]+ )?dry(?= (?:day|spell|weekend|afternoon|morning|week|evening|and)|$))(?![a-zß-ɏ])/g;

const backWords =
  /(?<![a-zß-ɏ])(?:it|its|it's|it'll|they|them|they're|they've|that|that's|thats|those|these|this|which|(?:one|ones)(?! day| of)|both|another|same)(?![a-zß-ɏ])/;

/** It speaks of something before it names anything. */
function goesBack(words: string, things: readonly RegExpMatchArray[]): boolean {
  const at = words.search(backWords);
  return (
    at >= 0 &&
    (things.length === 0 ||
      at <= things[0]!.index! ||
      /(?<![a-zß-ɏ])(?:it|them) (?:off|out|up|down|back|apart|all)(?![a-zß-ɏ])/.test(words))
  );
}

/** 'over twelve knots' */
const isSpeed = (words: string, at: number, thing: string) =>
  /^knots?$/.test(thing) &&
  /(?:\d|ten|teen|twelve|eight|nine|six|seven|twenty|thirty|few|[a-zß-ɏ]+ty) ?$/.test(words.slice(0, at));

/** 'four bolts under the deck' */
const isWhere = (words: string, at: number) =>
  /(?<![a-zß-ɏ])(?:under|behind|over|round|through|inside|below|above|beside|into|onto) (?:the |my |her |its )?$/.test(
    words.slice(0, at),
  );
const isPart = (thing: string) => partWords.fills(thing);
