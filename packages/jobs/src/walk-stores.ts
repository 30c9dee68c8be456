import type { ProposedStore } from './walk-round.ts';

/** What is used up or kept in numbers: what one buys for work on a boat. */
const goods =
  '(?:bearing grease|grease|oil|sealant|butyl|bedding|epoxy|resin|hardener|filler|glue|varnish|paint|undercoat|primer|antifouling|thinners?|white spirit|acetone|polish|wax|tape|masking tape|rope|line|cord|twine|thread|shock ?cord|webbing|canvas|cloth|glass cloth|chain|wire|cable|pins?|split pins?|monel|rings?|shackles?|screws?|bolts?|nuts?|nylocs?|washers?|rivets?|clips?|hose clips?|nails|cable ties|ties|terminals?|crimps?|connectors?|fuses?|fuse holders?|holder|bulbs?|lamps?|solder|heat ?shrink|sleeving|sandpaper|abrasive|paper|discs?|blades?|drill bits?|bits|brush(?:es)?|rollers?|rags?|gloves|masks?|filters?|impellers?|(?:impeller|seal|service|repair) kits?|kit|plugs?|spark plugs?|fuel|petrol|gas|water|anodes?|bearings?|seals?|o-?rings?|gaskets?|hose|tubing|pipe|plywood|ply|timber|wood|batten|blocks?|thimbles?|sheaves?|flares?|batter(?:y|ies)|pads?|foam|fabric|zip|eyelets?|spring|springs|lashing|straps?)';
export const isGoods = new RegExp(`(?<![a-zß-ɏ])${goods}(?![a-zß-ɏ])`, 'i');

const toGet = [
  /(?<![a-zß-ɏ])(?:to (?:buy|get|order)|shopping(?: list)?|buy|must buy|order|pick up|stock up on|(?:i|we)(?:'ll| will)? ?(?:need|want) (?:to (?:buy|order|get) )?(?!to )(?:some|more|a|an|another|two|three|four|five|six|ten|\d+|new)|need more|more [a-zß-ɏ]+ needed|(?:on|to) the (?:shopping |to get |buying )?list|(?<!(?:cut|made|make|built|bent|turned|carved|another|one|it|them|torn|came|come|pulled|gone) )(?:nearly |almost |run(?:ning)? |clean )?out of(?! (?:date|the|its|her|hand|sight|order|true|line|reach|case))|(?:running|run|getting|we're|i'm|am|are) (?:low|short)(?: on| of)?|low on|short of|(?:none|only a (?:smear|drop|bit|little)|hardly any|not much)(?: [a-zß-ɏ]+)? left|used (?:up )?the last|get (?:some|more|another|\d+)|get (?=\d))(?![a-zß-ɏ])/i,
];
const have =
  /(?<![a-zß-ɏ])(?:(?:i|we)(?:'ve| have) (?:got )?|there(?:'s| is| are)|spare:?|got|have|still|found|left|already got)(?![a-zß-ɏ])/i;
const keptAt =
  /(?<![a-zß-ɏ])(?:(?:left |kept |are |is |still |spare )?(?:in|on|under) (?:(?:the|a|my|our) )?(?:[a-zß-ɏ-]+ ){0,2}(?:crate|box|tool ?box|locker|shed|garage|loft|drawer|cupboard|tin|bag|shelf|bench|boot|car|bucket|bin|van|cellar|attic|workshop|house)(?: (?:under|in|by|behind) the [a-zß-ɏ-]+)?)(?![a-zß-ɏ])/i;

const needful =
  '(?:(?:consumables|materials|parts|stores|supplies|bits|things|stuff|items|tools|chandlery|chandler)(?: and [a-zß-ɏ]+)?)';
const getHead = new RegExp(
  `^(?:${needful} )?(?:(?:(?:i |we |you )?(?:still )?(?:need|want|have|must|got)(?: to)? )?(?:still |also |just )?(?:buy|get|order|pick up)|(?:i|we)(?: still| also| just)? (?:need|want|must (?:buy|get|have))(?: still| also| yet| now)?|to (?:buy|get|order|pick up|find)|purchases?|required|needed|wanted|shopping(?: list)?|buy|get|order|need to (?:buy|get)|(?:on |for )?(?:the )?(?:shopping|buying) list)$|^(?:shopping|chandlery|chandler(?:'s)?|${needful} (?:to get|to buy|needed|required|wanted))$`,
  '',
);
const haveHead =
  /^(?:on hand|in stock|in hand|spares?(?: (?:on hand|on board|i have))?|(?:already )?(?:got|have)(?: already)?|in the (?:shed|garage|loft)|stock)$/;

/** Words that head a list of things to get or on hand; null where they head none. */
export function storeListOf(words: string): 'to get' | 'on hand' | null {
  return getHead.test(words) ? 'to get' : haveHead.test(words) ? 'on hand' : null;
}

/**
 * A thing to get, or one that is on hand, told in a clause; null where it tells of none. `listed`: it goes on with a
 * list of such things.
 */
export function storeTold(
  words: string,
  {
    listed,
    anything = false,
  }: { readonly listed?: 'to get' | 'on hand' | undefined; readonly anything?: boolean } = {},
): Pick<ProposedStore, 'name' | 'onHand' | 'keptAt'> | null {
  if (!isGoods.test(words) && !(anything && words.split(' ').length <= 8)) return null;
  const place = keptAt.exec(words);
  const wanted = toGet.some((pattern) => pattern.test(words));
  const stocked =
    !wanted && have.test(words) && (place !== null || /\b(?:left|spare|in stock|on hand|already|over)\b/.test(words));
  if (!wanted && !stocked && !listed) return null;
  const name = nameOf(words, place?.[0] ?? '');
  return name === ''
    ? null
    : { name, onHand: listed ? listed === 'on hand' : stocked, keptAt: place ? placeName(place[0]) : '' };
}

function nameOf(words: string, place: string): string {
  const name = words
    .replace(place, ' ')
    .replace(
      /(?<![a-zß-ɏ])(?:(?:i|we)(?:'ve| have|'ll| will| must| should)?|there(?:'s| is| are)|to (?:buy|get|order)|shopping(?: list)?|must|buy|order|pick up|stock up on|needs?|want|have|got|get|already|still|spare:|left(?: over)?|the last|more|nearly|almost|running|run|out of|low on|short of|only|so|put|on (?:the|to the) (?:[a-zß-ɏ]+ )?list(?: to buy)?|to the list|that's|for that|for it|for the job|over|from the moorings|them|:)(?![a-zß-ɏ])/gi,
      ' ',
    )
    .replace(/[:]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^(?:and|a|an|some|the|of|also|then|or|of the) /gi, '')
    .replace(/(?: (?:and|or|the|in|on|of|a|to|up|there|as well|too))+$/i, '')
    .trim();
  return name.charAt(0).toUpperCase() + name.slice(1);
}

const placeName = (words: string) =>
  words
    .replace(/^(?:left |kept |are |is |still |spare )?(?:in|on|under) (?:(?:the|a|my|our) )?/i, '')
    .replace(/^./, (letter) => letter.toUpperCase());
