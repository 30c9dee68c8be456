import { claim, type LineText, type Phrase, phrase } from './line-text.ts';
import type { LineConsequence, Understood } from './read-line-parts.ts';

const lead = "(?:(?:it's|it is|that's|that is|this is|is|a|an|real|big|pure(?:ly)?|just|only|for|thing|very) )*";
const people = '(?:someone|somebody|anyone|anybody|people|a person|us|me|you|one of us|the crew|a hand)';

/**
 * Phrases that say nothing else are taken out of the title; words that also describe the trouble ('unsafe ladder')
 * stay in it. The gravest is looked for first.
 */
const words: readonly (readonly [LineConsequence, Phrase, { readonly keep?: boolean; readonly alone?: boolean }])[] = [
  [
    'danger',
    phrase(
      `${lead}(?:danger|safety|hazard|peril)(?: (?:thing|issue|matter|item|job|risk))?(?: to (?:people|us|life|crew|limb))?`,
    ),
    { alone: true },
  ],
  [
    'danger',
    phrase(
      `(?:${people} )?(?:could|can|will|might|would|may)(?: have| easily| well)? (?:hurt|injure|kill|maim|drown|crush|brain)(?: (?:${people}|itself))?`,
    ),
    { keep: true },
  ],
  [
    'danger',
    phrase(
      `${people} (?:(?:could|can|will|might|would|may|is going to|'ll)(?: have| easily| well)? )?(?:be |been |get |gets )?(?:hurt|injured|killed|maimed|drowned|crushed|burnt|scalded|thrown|lose[sd]? (?:a|an|his|her|their) (?:finger|hand|thumb|eye|toe)s?|goe?s? (?:over(?:board| the side)|in the water|in)|falls?(?: in| over(?:board)?| off)?|drowns?)`,
    ),
    { keep: true },
  ],
  [
    'danger',
    phrase(
      '(?:come|comes|coming|fall|falls|falling) (?:down )?on (?:to )?(?:my|your|his|her|some(?:one|body)(?:.s)?|anyone(?:.s)?|anybody(?:.s)?|us|me|you)(?: head)?|man[- ]overboard|fire (?:risk|hazard|waiting)|(?:lose|take) (?:a|your|his|my) (?:finger|hand|eye|thumb)s? ?(?:off)?',
    ),
    { keep: true },
  ],
  [
    'danger',
    phrase(
      'do not sail|never sail|(?:could|will|would|might) (?:blow up|explode|catch fire|sink (?:her|us|the boat)|come down on \\w+)',
    ),
    { keep: true },
  ],
  [
    'danger',
    phrase(
      "dangerous(?:ly)?|unsafe|(?:not|isn't|ain't|never|hardly) (?:really |very |at all )?safe|a (?:real )?(?:danger|hazard|death ?trap)|life[- ]threatening",
    ),
    { keep: true },
  ],
  [
    'unlawful',
    phrase(
      `${lead}(?:unlawful|illegal|not (?:legal|lawful)|against the law|required by law|legal(?: requirement)?|(?:it's )?the law)`,
    ),
    { alone: true },
  ],
  [
    'unlawful',
    phrase(
      "unlawful|illegal|against the law|(?:required|needed|demanded) by (?:the )?law|by law|the law (?:wants|says|asks|requires)(?: \\w+)?|legal(?:ly)? (?:requirement|required|must)|(?:can't|cannot|not|isn't|can not|not be|never) (?:be )?(?:legal|lawful)(?:ly)?|(?:get|be|it's|is|or|would be|risk(?:ing)?) (?:a fine|fined)|(?:the )?(?:law|police|coppers?)(?:'ll| will) (?:have|do|get|stop|pull) (?:you|me|us)(?: over)?(?: for (?:that|it))?|(?:the )?(?:police|inspector|harbour master)(?: \\w+)? (?:will|would|stop|stops|could|might|'ll)",
    ),
    { keep: true },
  ],
  [
    'stops-sailing',
    phrase(
      "stops?[- ](?:us |me |her |the boat )?(?:from )?(?:sailing|going)|(?:we |i |she |you |the boat )?(?:can't|cannot|can not|couldn't|won't|can't really|mustn't|must not) (?:safely )?(?:sail|go|go out|go sailing|leave|put to sea|launch|use her|take her out)(?: (?:her|at all|anywhere))?(?: without(?: it| that| one)?| until(?: it is| it's| that is| that's)? (?:done|fixed|mended)| (?:like|with) (?:that|this))?|no (?:sailing|going out) (?:without(?: it)?|until(?: it is| it's| that's| that is)? (?:done|fixed|mended))|(?:don't|do not|not) (?:go|going) out (?:un)?till?(?: (?:it|that) ?(?:is|'s))? (?:done|fixed|mended)|show ?stopper|keeps us (?:ashore|in port)",
    ),
    {},
  ],
  [
    'worsens',
    phrase(
      `${lead}(?:worsens|worsening|deteriorat(?:es|ing)|(?:gets?|getting|going to get|goes?|becom(?:es|ing)|grow(?:s|ing)|will get|only gets?|will only get|'ll only get|'ll get|will go|only going to get)(?: a bit| a little| much)? worse|worse(?: (?:if left|every \\w+|each \\w+|by the \\w+|with (?:every|each) \\w+))?)(?: if (?:it is |it's |we )?le(?:ft|ave it))?`,
    ),
    {},
  ],
  [
    'worsens',
    phrase(
      "(?:(?:it|that|the \\w+|this)(?:'ll| will| is going to| would) )(?:only )?(?:rot|spread|rust|corrode|tear|rip|run|crack|grow|soak|delaminate|go right through)(?: \\w+)?|(?:is |it's )?spreading|(?:will|'ll|would|going to) (?:only )?(?:rot|spread|rust through|delaminate)(?: the \\w+)?|before (?:it|that|the \\w+) (?:rips|tears|spreads|rots|goes|gets|breaks|splits|parts|fails|pulls|runs)[^,;.]*|if (?:it is |it's )?left|creeping (?:further|along)|every (?:sail|week|month|time) (?:it|a bit|is)[^,;.]*",
    ),
    { keep: true },
  ],
  [
    'comfort',
    phrase(
      `${lead}(?:comfort(?:able)?|cosmetic|looks|nice to have|annoying|a nuisance|vanity|luxury|not (?:important|urgent|vital|essential)|unimportant)(?: (?:only|really|but not urgent|job|thing|at all))*`,
    ),
    { alone: true },
  ],
  [
    'comfort',
    phrase(
      "(?:(?:just |only |purely |mainly )(?:for )?|for )(?:the )?(?:looks|comfort|show|appearances?|vanity)|(?:just|only|purely|merely) (?:cosmetic|annoying|a nuisance|to be comfortable|looks)|nice to have|cosmetic|nobody (?:will|'ll|ever) (?:drowns?|dies?)(?: of it)?|no one (?:will|ever) (?:drowns?|dies?)(?: of it)?|would be nice|to be comfortable|not (?:important|vital|essential)",
    ),
    {},
  ],
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
  phrase(
    "(?:as |just |only |is |it's )*(?:a )?(?:jury[- ]rig(?:ged)?|stop[- ]?gap|make[- ]?shift|bodged?|botch(?:ed)?|lash[- ]?up)(?: fix| repair| job)?(?: for now)?",
  ),
  phrase(
    "(?:it'll |it will |that'll |that will |which will |this will |should |will )?(?:(?:have to )?do )?(?:just )?(?:for now|for the (?:time being|moment|minute|present|meantime)|in the meantime|meanwhile|(?:un)?till? (?:i|we) (?:can|could|get round to)(?: \\w+)? (?:do|doing|fix|mend|have|get|sort)? ?(?:it|this)?(?: \\w+)?(?: (?:properly|right|time))?)",
  ),
  phrase('(?:as a |just a |only a |a |just )?temporar(?:y|ily)(?: (?:fix|repair|measure|thing|job|lashing))?'),
  // 'till I get a new bracket', 'until the rivets come', 'until I've done the wire'
  phrase(
    "(?:un)?till? (?:(?:i|we|she|he|they)(?:'ve| have|'ll)? (?:get|got|find|found|buy|bought|make|made|fit|done|can get|can find|order|have)|(?:the |a |some )?(?:new |proper |right |real )?[a-zß-ɏ-]+(?: [a-zß-ɏ-]+)? (?:comes?|arrives?|turns? up|is here|gets? here))",
  ),
  phrase(
    "(?:it|that|which|this)(?:'ll| will| should| ought to| can| must| has to| might)? (?:just |only )?(?:hold|(?:do|serve|last)(?! me for (?:this|today|now|the day)))(?: (?:us|me|her))?(?= (?:for|till|until|to get|a week|the))|just to get (?:us|me|her) (?:home|back|in)|to get (?:us|me|her) (?:home|back in)|(?:just )?to get by|to (?:get|see) (?:us |me |her )?through (?:the \\w+|this \\w+|\\w+day)|to tide (?:us|me|her) over|as long as it lasts",
  ),
];
/** Plain things that hold something they were not made to hold. */
const heldBy = phrase(
  '(?:tied|lashed|held|holds?|strapped|propped|wedged|jammed|plugged|stuffed|bound|wired|clamped|taped|patched|hangs|hanging|kept|tucked)(?: \\w+){0,4}? (?:with|by|on|in) (?:a |an |some |a bit of |a piece of |a length of |two |three |a few |the )*(?:\\w+ )?(?:cord|string|rope|twine|tape|cable ties?|zip ties?|bungee|elastic|boot ?lace|shoe ?lace|washing line|rubber band|plaster|sock|towel|belt|bucket|hose ?clips?|matchstick|match|cork|rag|wedge|clothes peg|bit of wire|wire coat ?hanger|chewing gum|lashing)|(?:cable|zip) ties? holding|(?:rope|cord|string|tape|wire|rag|cork) (?:in place of|instead of|standing in for)',
);

/** What one makes do with. */
const makeshift =
  '(?:ropes?|cord|string|twine|(?:bit|piece|length|loop) of (?:line|wire|seizing wire|hose|wood|ply|plastic|webbing)|(?:duct |gaffer |insulating |electrical |masking )?tape|rags?|sticks?|wedges?|nails?|cable ties?|zip ties?|bungees?|shock ?cord|elastic|pegs?|carrier bag|bin bag|polythene|corks?|chewing gum|blu ?tack|jubilee clip|g[- ]?clamp|sock|towel|sponge|coat ?hanger|straps?|g[- ]?cramps?|cramps?|fenders?|matchsticks?|tent peg|pencil|spoon|broom handle|rubber bands?|hair bands?|cling ?film|plastic (?:bag|bottle|sheet)|foil|cardboard|plaster|blu-?tac|chopsticks?|ruler|old (?:sock|rag|t-?shirt|tee ?shirt|towel|glove)|inner tube|tights|washing line|clothes ?(?:line|pegs?)|boot ?laces?|shoe ?laces?|belt|bucket|brick|plank|lump of wood|block of wood|tin of [a-z]+|dab of (?:sealant|mastic|silicone|glue)|smear of (?:sealant|mastic|silicone|grease)|blob of (?:sealant|mastic|silicone|filler)|mastic|silicone|putty|chewed gum|stretchy tape|self[- ]amalgamating tape|hose ?clips?|knots?)';
const placedOn = '(?:round|around|over|in|on|under|through|across|into|behind)';
const madeDo = [
  phrase(
    `(?:i|we)(?:'ve| have|'d| had)? (?:just |only )?(?:put|tied|taped|lashed|stuck|wrapped|wedged|shoved|stuffed|jammed|bound|wound|bodged|propped|rigged|strapped|screwed|clamped|hung|held|plugged|got|have) (?:[\\w']+ ){0,6}?${makeshift}`,
  ),
  phrase(
    `(?:stuffed|tied|lashed|wedged|taped|propped|bodged|bunged|plugged|strapped|wrapped|using|used) (?:[\\w']+ ){0,4}?${makeshift}`,
  ),
  // 'big rubber band round it', 'has cling film over it', 'the sock's still in there'
  phrase(
    `(?:(?:a|an|the|some|my|her|bit of|piece of|two|three|has|with|got|put|is|big|old) )*(?:rubber bands?|hair bands?|cling ?film|plastic bag|carrier bag|bin bag|cardboard|old sock|sock|rag|cork|(?:duct |gaffer |insulating |electrical |masking |sail |stretchy )?tape|cable ties?|zip ties?|bungees?|string|cord|twine|washing line|boot ?lace|clothes ?pegs?|wedge|matchsticks?|hose ?clips?|jubilee clips?|g[- ]?clamp|smear of [\\w]+|dab of [\\w]+|blob of [\\w]+)(?:'s| is| are)?(?: still| just)? (?:${placedOn}|holds?|holding) (?:it|them|that|there|the (?:outside|hole|crack|split|leak|break|gap|end|edge|joint|handle|stump|bad (?:bit|place)))`,
  ),
  // 'put a cramp on to keep it honest', 'we've had a fender jammed under it'
  phrase(
    "(?:put|tied|stuck|wedged|shoved|screwed|clipped|taped|strapped|lashed|hung|jammed|propped|wrapped|looped|stuffed) (?:a|an|some|my|the|two|one|it|that|bit) (?:[\\w'-]+ ){0,5}?to (?:keep|hold|stop) (?:it|them|that|the|things|her)",
  ),
  phrase(
    "(?:i|we|they|he|she|it|there)(?:'ve|'s| have| has| is)? (?:had |got |been |still )*(?:a|an|some|my|two|one|the|that|it) (?:[\\w'-]+ ){0,3}?(?:tucked|jammed|wedged|stuffed|lashed|taped|propped|bunged|rammed) (?:under|in|into|behind|against|through|round|over|across|along|between|up)",
  ),
  phrase(
    "(?:i|we|he|she)(?:'ve| have|'d| had)? (?:just |only )?(?:put|stuck|tied|wrapped|slapped|taped|wound|bound) (?!it|them|paint|varnish|primer|epoxy|coats?)(?:(?!coats?|paint|varnish|primer)[\\w'-]+ ){1,4}?(?:over|round|around) (?:it|them|that|the (?:hole|crack|split|leak|break|tear|gap|end|joint|bad))",
  ),
  phrase(
    '(?:still|stays|staying|left) (?:knotted|tied|taped|lashed|wedged|strapped|propped|bodged|clamped|bunged|stuffed|held)(?: up| on| together| shut| in)?',
  ),
  // 'shoved a dab of sealant under it in August', 'made a knot around the bad place'
  phrase(
    `(?:i|we|he|she|they|friend|dad|mum|brother|sister|wife|husband|mate|somebody|someone)(?:'ve| have| has|'d| had)? (?:just |only |once )?(?:put|tied|taped|lashed|stuck|wrapped|wedged|shoved|stuffed|jammed|bound|wound|rigged|strapped|clamped|hung|plugged|made|knotted|smeared|dabbed|slapped|squirted|pushed|looped|threaded|got) (?:(?!to |for )[\\w']+ ){0,6}?${makeshift} (?:(?:right |all )?${placedOn}) `,
  ),
  // tied, wedged or taped up is never for good, whatever it is done with
  phrase(
    "(?:i|we)(?:'ve| have|'d| had)? (?:just |only )?(?:tied|lashed|wedged|propped|taped|bound|strapped|pinned|jammed|stuffed|wired|whipped) (?:it|them|that|this|the \\w+(?: \\w+)?)(?: \\w+){0,2}? with (?:a |an |some |the |my |two |three |half )?\\w+",
  ),
  phrase(
    "(?:i|we)(?:'ve| have|'d| had)? (?:put|tied|taped|lashed|stuck|wrapped|wedged|shoved|stuffed|rigged)[^,.;]{2,60}? for (?:the (?:drive|tow|road|trip|passage|journey|night|weekend|way)(?: home)?|tonight|today)",
  ),
];

/** What is put round or on a thing, and is there only so far. */
const soFar = phrase(
  '(?:(?:duct |gaffer |insulating |rubber |masking )?tape|cord|string|rope|twine|bungee|shock ?cord|rag|wedge|cable ties?|zip ties?|lashing|clamp|peg|bung|cork|bin bag|polythene|jubilee clip)(?: \\w+){0,4}? (?:at present|at the (?:moment|minute)|just now|to be going on with|to get by|for the present)',
);

function madeDoWith(text: LineText): Understood<true> | null {
  for (const pattern of madeDo) {
    const found = claim(text, pattern, () => true as const, { keep: true });
    if (found) return found;
  }
  return null;
}

/** `temporary`, `for now`, `jury rig`: a fix that stands in for the real one. All such words leave the title. */
export function readTemporary(text: LineText): Understood<true> | null {
  let first: Understood<true> | null = null;
  for (const pattern of temporaryWords) {
    const found = claim(text, pattern, () => true as const);
    first ??= found;
  }
  return (
    first ??
    claim(text, soFar, () => true as const, { keep: true }) ??
    madeDoWith(text) ??
    claim(text, heldBy, () => true as const, { keep: true })
  );
}
