/** Talk without stops, as it is dictated: where one thing said ends and the next begins. */
import { actionWords, thingWords } from './trade-words.ts';

interface RunOnCut {
  readonly at: number;
  /** another thing is begun with, as after a full stop */
  readonly afresh: boolean;
}

const word = "[a-zß-ɏ0-9'-]+";
const end = "(?![a-zß-ɏ'])";
const be = "(?:is|are|was|were|isn't|aren't|wasn't|weren't|has|have|had|hasn't|haven't|hadn't)";
const modal =
  "(?:will|would|can|could|should|must|might|may|shall|won't|wouldn't|can't|cannot|couldn't|shouldn't|mustn't|needn't|ought|does|do|did|doesn't|don't|didn't|dare|used)";
/** Plain verbs that say something of a thing or a person; the present with its s, and the past. */
const says =
  '(?:needs?|wants?|looks?|feels?|seems?|keeps?|goes|comes?|works?|runs?|reads?|says?|sits?|stands?|hangs?|holds?|moves?|makes?|opens|closes|shuts|turns|gets?|got|went|came|broke|stopped|started|looked|felt|seemed|kept|made|said|found|took|put|gave|tied|left|saw|noticed|think|thought|reckon|suppose|guess|hope|know|knew|remember|leaks?|weeps?|drips?|sticks?|squeaks?|rattles?|slips?|jams?|rubs?|drags?|leaked|wept|dripped|stuck|slipped|jammed|fell|blew|snapped|parted|cracked|tore|ripped|split|bent|lifted|pulled|pushed|tried|tested|checked|cleaned|greased|replaced|changed|swapped|fitted|wrapped|taped|lashed|glued|painted|varnished|sanded|scraped|washed|hosed|poked|pressed|poured|jumped|opened|undid|bought|ordered|sent|asked|rang|called|only|still|just|also|always|never|probably|really|definitely|finally|already)';
const contracted = "(?:'s|'ll|'ve|'d|'re|'m)";

/** 'it wants', 'there was', 'nothing came', 'I poured': somebody or something named by a small word, and a verb. */
const small = new RegExp(
  `(?<=[a-z0-9%] )(?:i|we|you|he|she|it|they|that|this|there|these|those|nothing|nobody|somebody|someone|everything|both|what)(?:${contracted} | (?:${be}|${modal}|${says}) )`,
  'g',
);
/** 'the flag halyard's', 'the shroud plate here has': a thing with what goes before it, and a verb. */
const named = new RegExp(
  `(?<=[a-z0-9%] )(?!an? (?:hour|minute|bit|couple|few|lot|quarter|half|day|morning))(?:the|my|her|our|his|its|a|an|one|two|three|four|five|six|both|another|all the|some|that|this|your) (?:(?!(?:i|we|you|it|they|he|she|and|but|so|or|if|when|that|which|who|where|because|the|a|an|my|is|are|was|were|it's|that's|there)${end})${word} ){0,3}?(?:(?!it's|that's|there's|what's|he's|she's|let's)[a-z]+'s (?!(?:${word}) (?:is|has|was))|[a-z]+ (?:(?:on|in|at|of|under|over|by|for|round|behind|from) (?:the |my |its |her )?[a-z]+(?: [a-z]+)? )?(?:also |still |both |all |just |only |here |there |now )?(?:${be}|${modal}|${says}) )`,
  'g',
);
/** After these nothing is begun with: what goes before a thing, or leads to what follows. */
const leads = new Set(
  'of in on at by with to for from under round around over behind near like into onto off than as between through down up along across inside outside above below beside against about after before until till while since if when where which who whose what how why because that and but or so nor not the a an my our her his its their your this these those one another each every some any no both all two three four five six more most very too quite really just only even still also always never be been being think thought know knew hope believe suppose reckon guess say says said see saw hear heard sure afraid mean means let get got make makes made have has had is are was were if whether whatever whenever wherever whoever ever such same time moment way thing things day bit'.split(
    ' ',
  ),
);
const placeLeads = new Set('the my her a in on at to of from and under round by into'.split(' '));
/** 'okay', 'right', 'what else': the talk turns. */
const turns =
  /(?<=[a-z0-9%] )(?:okay|ok|right(?= (?:so|then|now|next|the|that|that's|let's|what|on|in|um|i))|anyway|what else|moving on|next thing|(?:the )?(?:next|last|first|second|third|other|another|main|only) (?:one|thing|job)(?= (?:is|was|i|the|there|it)(?![a-z]))|oh (?:and|yes|yeah)|oh|hang on|let me (?:see|think)|let's see|now then|that's (?:it|that|all|about it)|apart from that|as for|speaking of|while i'm (?:at it|there)|otherwise|meanwhile|also)(?![a-z'-])/g;
const place =
  '(?:cockpit|cabin|foredeck|transom|trailer|outside|inside|inside then|below|down below|up front|up forward|up the front|up top|on deck|electrics|engine|outboard|rig|rigging|mast|bow|stern|galley|topsides|bottom|sails|shopping|anchor locker|deck)';
/** 'cockpit now', 'trailer the left hand light', 'shopping then' */
const placeHead = new RegExp(
  `(?<=[a-z0-9%] )(?:(?:and |then |now |so |right |okay |on to |over to |back to )*(?:in |on |to |at )?(?:the )?${place} (?:now|then|next|again|stuff|itself)${end}|${place} (?=(?:the|there|there's|there are|i|i've|my|both|all|one|two|that)${end}))`,
  'g',
);
const stopgapEnds =
  /(?<![a-z])(?:for (?:now|the (?:time being|moment|minute|present|meantime))|at (?:present|the (?:moment|minute))|in the meantime|temporarily)(?= [a-z])/g;
const newOne = /(?<=[a-z0-9%] )(?:new|longer|stronger|thicker|bigger|proper|fresh) [a-z]/g;
const joints = /(?<=[a-z0-9%] )(?:but|because|cos|although|though|except)(?![a-z'-])/g;

/** Where a long stretch of talk without stops may be parted, in order. */
export function runOnCuts(words: string): RunOnCut[] {
  const cuts = new Map<number, boolean>();
  const add = (at: number, afresh: boolean) => cuts.set(at, (cuts.get(at) ?? false) || afresh);
  for (const { index } of words.matchAll(small)) if (!leads.has(wordBefore(words, index))) add(index, false);
  for (const { index, 0: said } of words.matchAll(named))
    if (!leads.has(wordBefore(words, index)) && !actionWords.fills(wordBefore(words, index)))
      add(index, thingWords.next(said) !== null);
  for (const { index } of words.matchAll(turns))
    if (!/^(?:the|a|my|is|it's|that's)$/.test(wordBefore(words, index))) add(index, true);
  for (const { index, 0: said } of words.matchAll(placeHead))
    if (
      !(/(?:now|then)$/.test(said) ? placeLeads : leads).has(wordBefore(words, index)) &&
      !thingWords.fills(`${wordBefore(words, index)} ${said.split(' ')[0]}`)
    )
      add(index, true);
  for (const { index, 0: said } of words.matchAll(stopgapEnds)) add(index + said.length + 1, false);
  for (const { index } of words.matchAll(joints)) add(index, false);
  for (const { index } of words.matchAll(newOne)) {
    const before = wordBefore(words, index);
    if (
      !leads.has(before) &&
      !/^(?:needs?|wants?|fit|buy|order|put|wanted|needed|then|i'd|brand|as|nice|whole|its|it|them)$/.test(before)
    )
      add(index, false);
  }
  // 'it's probably the earth, it always is: find that and fix it'
  for (const action of actionWords.all(words)) {
    const rest = words.slice(action.index);
    if (!/^\S+ (?:it|them|her|that|those|both|a new|the|and)(?![a-z])/.test(rest)) continue;
    if (
      /^(?:is|are|was|were|has|does|there|here|then|too|again|now|off|out|down|up|loose)$/.test(
        wordBefore(words, action.index),
      )
    )
      add(action.index, false);
  }
  return [...cuts].map(([at, afresh]) => ({ at, afresh })).sort((a, b) => a.at - b.at);
}

const wordBefore = (words: string, at: number) =>
  /([a-zß-ɏ0-9'%-]+) +$/.exec(words.slice(Math.max(0, at - 40), at))?.[1] ?? '';
