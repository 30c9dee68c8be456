/** Talk that asks for no work: what was done, what others think or will do, questions, what is waved aside. */

const people =
  '(?:mum|dad|mother|father|(?:my |our |the )?(?:wife|husband|partner|son|daughter|brother|sister|uncle|aunt|neighbour|mate|friend|nephew|niece|lad|lads|kids?|children|boys?|girls?|bloke|man|men|chap|woman|rigger|engineer|sailmaker|surveyor|yard|club|crew|harbour ?master|commodore|secretary|bosun|engine man|old boy)|he|they|everybody|everyone|every one|people|some people|most people|folks?|nobody|no one|someone|somebody|some|others)';

/** Verbs of doing whose past is their own. */
const ownPast =
  '(?:led|took|made|gave|found|bent|bought|wound|drove|swept|hung|sent|threw|fed|ran|drew|held|did|got|had|left|went|came|saw|said|told|thought|sold|stuck|tied|undid|rebuilt|sewed|ground|wrote|swapped|tipped)';

/** A regular past with what it was done to: 'cleaned the lot', 'tipped it out'. Not what goes wrong by itself. */
const didTo =
  /(?<![a-zß-ɏ'-])(?!(?:need|want|crack|chaf|fray|jam|snap|rust|rott|corrod|leak|weep|fail|seiz|perish|wear|crumbl|work|start|cover|us|reckon|call)[a-zß-ɏ]*(?![a-zß-ɏ]))(?:re)?(?:[a-zß-ɏ]{2,}(?:ed|pt)|stripp?ed) (?:it|them|the|that|those|my|her|his|our|your|its|both|all|everything|up|out|down|off|on)(?![a-zß-ɏ])/;
const activePast = new RegExp(
  `(?:^|(?<=[ ,]))(?:i|we|you|${people}|who|has|have|had|'ve|'s|'d|finally|already)(?: also| only| finally| already| just| even)? (?:put|cut|set|let|shut) |(?:^|^(?:and|but|so|then|also|only) |(?<![a-zß-ɏ])(?:i|we|you|${people}|who|which|has|have|had|'ve|'s|'d|finally|already|just|even|and|then) )(?:also |only |finally |already |just |even |all |both )?${ownPast}(?: back)? (?:it|them|the|that|those|my|her|his|our|your|its|both|all|some|everything|a|an|up|out|down|off|in|on)(?![a-zß-ɏ])`,
  '',
);
const told =
  /(?<![a-zß-ɏ])(?:(?:i|we|he|she|they|you|who)(?:'ve| have|'d| had| has)? (?:already |just |also |only |then |both |all |even |finally )?(?:[a-zß-ɏ]{2,}ed|did|done|put|got(?! (?:to|a|an|no) )|took|bought|sent|went|made|found|had(?! to| better)|gave|swapped|cut|left|told|said|saw|came|fitted)(?![a-zß-ɏ])|(?:was|were|been) (?:already |all |just |only )?[a-zß-ɏ]{2,}(?:ed|t|ne|wn)(?: up| out| down)?(?![a-zß-ɏ])|already (?:done|sorted|fixed|fitted|in)(?![a-zß-ɏ])|(?:done|fixed|sorted|finished|replaced|renewed|greased|serviced|cleaned|painted|changed|tested|checked|examined|lubricated|cured|mended|repacked|overhauled)(?: (?:it|them|that))?(?: (?:last|in|on|this|already|yesterday|earlier|now|today|a (?:week|month|year)|both|all|\d)(?![a-zß-ɏ])|$| (?:january|february|march|april|may|june|july|august|september|october|november|december|easter|christmas))|did (?:it|them|that|those|the)(?![a-zß-ɏ])|(?:i'll|let me) (?:just )?do (?:that|it|this) now|all back together|cross (?:it|that|them|those) off|(?:is|are|was|were|been|'s) (?:now )?(?:sorted|mended|fixed|done|dealt with|finished)(?![a-zß-ɏ]))/;
const longAgo =
  /(?<![a-zß-ɏ])(?:last (?:week|month|year|yr|time out|autumn term|sept(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?|jan(?:uary)?|feb(?:ruary)?|march|april|may|june|july|aug(?:ust)?|season|winter|spring|summer|autumn|back end)(?![a-zß-ɏ])|since (?:i|we|the) |(?:years|long|ages|a year|seasons) ago|once upon|(?:back )?in (?:19|20)\d\d|when i (?:got|bought|was|had)|the year (?:of|we|i)|in the old days)/;

/** Something was done by somebody; what is to be done must be said in so many words beside it. */
export const isDoneBy = (words: string): boolean => told.test(words) || didTo.test(words) || activePast.test(words);

/** It was done, or happened and is over. */
export const isDone = (words: string): boolean => isDoneBy(words) || longAgo.test(words);

/** It was put right, so nothing is left of it. */
export const isPutRight = (words: string): boolean => putRight.test(words);

const putRight =
  /(?<![a-zß-ɏ])(?:(?:i|we|he|she|they)(?:'ve| have)? (?:already |just |then |since |soon )?(?:mended|fixed|replaced|swapped|changed|renewed|sorted|cured|cleared|freed|straightened|tightened|cleaned|greased|oiled|refitted|reset|tipped|topped|refilled|glued|repaired|dealt|had (?:it|them) (?:done|fixed|mended))|(?:it|they|that|which)(?:'s| is| was| were| are| has| have)? (?:all |now |since |been )*(?:sorted|mended|fixed|done|dealt with|finished|cured|replaced|gone)|so i (?:tipped|threw|took) |came right|right as rain|good as (?:new|gold) now|turned it off and on)(?![a-zß-ɏ])/;

const perhaps =
  /(?:^|[^a-zß-ɏ])(?:might(?! as well)|some day$|i was afraid|i feared|some ?day i|wish|dream|would be|i'd (?:never|love|have liked|like to have)|i don't (?:agree|think|believe|know)|not sure (?:i|we|it's worth)|i (?:said|thought|hoped)|(?:i|we|it|that|you|he|they) would|(?:you|he|they|we)'d(?! better| best| want| need)|i'd (?:just |only )?have to|don't mention|instead of|rather than|as if|used to|(?:would|could|might|must|'d) (?:never |not |n't )?have(?= [a-zß-ɏ]+(?:ed|en|[nt]|d)(?![a-zß-ɏ]))|don't need|doesn't need|no need|not (?:going to|worth)|needn't|needs? no|do not need|does not need|won't need|don't have to|wouldn't|reckons|how to|told to|asked (?:me )?to|advised|learn(?:t|ed)? to|in my day|were (?:it|she) mine|thinking (?:of|about|we|that)|was going to|were going to|meant to|supposed to|none of (?:that|it|them))(?![a-zß-ɏ])/;
/** 'the man on the next mooring says', 'I am asked each year' */
const somebodySays =
  /(?:^|[ ,])(?:(?:the |a |that |some |this |my |our )?(?:guy|bloke|man|chap|fella|fellow|woman|lady|lad|old boy|gentleman|people|folk|kid|neighbours?|club|yard|surveyor|salesman|shop|internet|forum|book|manual|video|manufacturer|makers?) (?:[a-zß-ɏ]+ ){0,5}?(?:says?|said|wants?|reckons?|thinks?|told|asks?|asked|keeps?|swears|suggests?|suggested|recommends?|insists?|claims?)|i(?:'m| am| was| get| got|'ve been| keep (?:being|getting)) (?:always |often |forever )?(?:asked|told|advised|warned)|(?:everyone|everybody|people|they|he|she|you) (?:always |often |all )?(?:asks?|asked|wonders?|wants to know)(?: me)?)(?![a-zß-ɏ])/;
const others = new RegExp(
  `(?:^|(?<=[ ,]))(?!(?:somebody|someone|one of us) (?:who [a-zß-ɏ]+ )?(?:should|must|ought|needs to|has to))(?:(?:some|any)(?:one|body) (?:[a-zß-ɏ]+ ){1,4}(?:can|could|will|would)|(?!they |he |some)${people} (?:wants?|needs?)|${people} (?:[a-zß-ɏ]+ )?(?:will|'ll|is going to|are going to|thinks?|says?|said|reckons?|promised|offered|suggest(?:s|ed)|keeps?|believes?|recommends?|prefers?|would|can|could|should|fitted|makes?|likes?|swears?|told))(?![a-zß-ɏ])`,
  '',
);
/** A name, of nothing that a boat has: 'Jo will make new ones'. */
const someone =
  /^(?:and |but |so )?(?!i |we |it |that |this |they |she |which |who |what |there |those |these |you |one |both |all |the |my |her |its |a |an |in |on |next |then |new |nothing )[a-zß-ɏ]+ (?:will (?:make|do|get|bring|come|help|sew|fix|lend|have)|is going to|wants to|thinks|says|said|reckons|promised|offered|suggested|keeps (?:saying|on))(?![a-zß-ɏ])/;

/** What comes after 'if' is no word of what is to be done; what stands before it may be. */
export const beforeIf = (words: string): string =>
  words.replace(/(?:^|(?<=[ ,]))(?:if (?!left|need|poss|time)|whether ).*$/, '');

/** It would be, or another thinks or will do it: no word of what is to be done. */
export const isHearsay = (words: string): boolean => perhaps.test(words) || isAdvice(words);

/** What others say, think or will do. */
const isAdvice = (words: string): boolean => others.test(words) || someone.test(words) || somebodySays.test(words);

/** 'he says it needs a bush': advice, and not what another will do himself. */
export const isAdvised = (words: string): boolean =>
  isAdvice(words) &&
  /(?<![a-zß-ɏ])(?:says?|said|reckons?|thinks?|told|suggest(?:s|ed)|recommends?|advised|believes?|swears?)(?![a-zß-ɏ])/.test(
    words,
  );

const asks =
  /^(?:and |but |so |well |now |oh |er )*(?:(?:did|does|is|are|was|were|has|have|had|can|could|would|will|should|shall|isn't|aren't|won't|wasn't|shan't|do) (?:i|we|you|she|he|it|they|that|this|there|anyone|anybody|those|these|one)(?![a-zß-ɏ])|(?:why|who|whose|what|when|where|how)(?:'s|'d|'ll)? (?!else|(?:i|it|she|that) (?:need|want|did)s?|needs|wants|is wrong|a |about)|(?:you |do you )?remember (?:the|that|when|we|how)(?![a-zß-ɏ]))/;

/** A question, whether it has its mark or not. Within a sentence 'where the varnish has lifted' asks nothing. */
export const isQuestion = (words: string, asked: boolean, opens = true): boolean =>
  (asks.test(words) && (opens || !/^(?:and |but |so )?(?:where|when|who|whose|what|how|why|as)/.test(words))) ||
  (asked && words.length > 0);

const wave =
  /(?<![a-zß-ɏ])(?:(?:renew|replace|review|do) (?:it |them )?(?:next|another) (?:season|year|winter|time)|(?:he|she|they)(?:'ll| will| is going to| are going to|'s going to|'re going to)(?: [a-zß-ɏ]+)? (?:do|fix|sort|mend|make|sew|see to|look at|bring|finish) (?:it|that|them|those)|^(?:watch|monitor|observe|note only|noted)(?= *$)|leave (?:it|that|them|this|well|those|him|her)(?: alone| be| for now| as| at that| well alone| to)?(?= *$| till| until| as| alone| be)|leave (?:well )?alone|leave the [a-zß-ɏ]+ (?:till|until|as it|for another)|left (?:well )?alone|liv(?:e|ing) with|(?:can|could) (?:wait|stay|bide)|(?:will|[a-zß-ɏ]+'ll) (?:wait|keep(?= *$| till| until)|last(?= (?:another|the|for|till|until|a|us|me|years))|do another|see (?:me|us|her) out)|has(?:n't| not) (?:moved|changed|got (?:any )?worse)|sound enough|no complaints?|not worth|good for another|no (?:further )?(?:work|action)|no need|not needed|not required|don't bother|can't be bothered|happy with|not (?:this|until next) (?:year|season|time|winter)|(?:don't|do not|doesn't|couldn't|could not) (?:really )?(?:care|mind|matter|bother me|give a)|not (?:bothered|fussed|worried|fretting|a worry|a problem)|never mind (?:that|it|them|about)?|(?<!n't |not |i )forget (?:it|that|about)(?= *$| one| for)|who cares|nothing (?:to worry|needs)|that's (?:your|his|her|their|another) (?:money|business|lookout|affair|problem|job|story)|not my (?:problem|business)|^(?:or )?whatever(?= *$)|nobody(?:'s| is) bothered|thought no more|monitor(?: only| it)?|keep (?:an eye|watching|watch)|one to watch|watch (?:it|this|that)(?= *$)|review (?:it )?(?:next|in|at)|look again (?:next|in)|nowt (?:to|wrong|needs)|take no notice|pay no (?:mind|heed)|let (?:it|that) (?:be|lie)|since (?:i|we) (?:got|bought|had) her|always (?:has|did|does|do|been|done|is|was|like that)|what it always|not (?:going|bothering|troubling) (?:to|with)|squeaked since|(?:i'm|we're|i am|we are|just) leaving (?:it|that|them|this)|stays? as (?:it|they) (?:is|are)|i don't fret|till she takes up|she won't get (?:it|one)|not this time|^(?:maybe |perhaps )?(?:next|another) (?:year|season|winter|spring)(?= *$)|(?:for )?(?:some|one) (?:other )?(?:day|year)(?= *$))(?![a-zß-ɏ])/;

/** It is to be left as it is, whatever is wrong with it. */
export const isWavedAside = (words: string): boolean => wave.test(words);

const elsewhere =
  /^(?:and |but |so |well |now |then |because )*(?:i'm|i am|i was|i felt|i got|we were|we got|we're|me and|(?:next door|the (?:boat|one|people) next|the neighbour's|next door's|somebody else's)|my (?:back|knees?|hands?|fingers?|feet|coffee|tea|brew|car|van|phone|torch|glasses|shoulder|brew|lunch|boots?|trousers|coat|gloves)|me (?:brew|back|knees?|tea|hands?)|that's me|the (?:kids?|dog|wife|neighbours?|weather|wind|rain|forecast|sun|sky|tide|tea|coffee|brew|car|van|garden|grass|lawn|pub|shop|club|house|traffic|phone|dinner|lunch|kettle|church|school|birds?|gulls?|cat|clouds?)|(?:kids?|tea|dinner|lunch|supper)|it's (?:been )?(?:cold|freezing|raining|getting dark|getting late|brass|blowing|started to|too dark|a (?:lovely|nice|grand|foul|filthy|grey) (?:day|evening|morning|night)|(?:sunday|monday|tuesday|wednesday|thursday|friday|saturday)))(?![a-zß-ɏ])/;

/** Of people, weather and the house. */
export const isOfElsewhere = (words: string): boolean => elsewhere.test(words);

/** Of another's boat. */
export const isAnothersBoat = (words: string): boolean => anothersBoat.test(words);

/** 'one that fell out of a boat he had', 'the fellow alongside bent his plate' */
const anothersBoat =
  /(?<![a-zß-ɏ])(?:(?:bent|broke|lost|split|ripped|tore|snapped|holed|bust|hit|ruined|sank) (?:his|their)|(?:a|the) boat (?:he|she|they|i|we) (?:had|used to have|once had)|(?:told|telling) (?:me|us) about|(?:his|their|somebody's|someone's|everyone else's|the neighbour's|next door's|another) boat|(?:than|like|unlike) (?:mine|ours)|on (?:his|theirs|their boat|his boat))(?![a-zß-ɏ])/;
