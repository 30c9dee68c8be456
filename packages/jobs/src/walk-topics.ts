/** Which clauses of a page speak of one thing: the page in its topics. */
import { lineText } from './line-text.ts';
import type { Lexicon } from './read-line-parts.ts';
import { zoneOfThing } from './thing-places.ts';
import { otherSide, sharesThing } from './walk-same-thing.ts';
import { type Heading, isNameAlone, type TellingClause } from './work-in-hand.ts';

/** What a clause does for the work it belongs to. */
type Role =
  | 'stopgap'
  | 'defect'
  | 'remedy'
  /** another says what is to be done; it counts where something is wrong */
  | 'advice'
  | 'detail'
  | 'name'
  | 'done'
  | 'fine'
  | 'left'
  | 'plain';

export interface TalkClause extends TellingClause {
  readonly role: Role;
  readonly heading: Heading | null;
  /** after a heading, a list or another line of its own: no more of what went before */
  readonly afresh: boolean;
  /** the usual place of the first thing it names; null: none */
  readonly place: string | null;
}

export interface Topic {
  readonly clauses: TalkClause[];
  readonly things: Set<string>;
  readonly heading: Heading | null;
  place: string | null;
  defect: boolean;
  remedy: boolean;
  minutes: boolean;
  stopgap: boolean;
}

const already = /(?<![a-zß-ɏ])(?:already|replaced|renewed|fixed|mended|sorted)(?![a-zß-ɏ])/;

export function roleOf({ words, sense, listed }: TellingClause, fineBefore: boolean): Role {
  if (sense.temporary && !(sense.leftBe && !sense.done)) return 'stopgap';
  if (sense.done && !sense.remedy && (!sense.defect || already.test(words))) return sense.advised ? 'advice' : 'done';
  if (sense.leftBe && (!sense.remedy || (listed && fineBefore))) return 'left';
  if (
    sense.fine &&
    !sense.defect &&
    !sense.remedy &&
    !sense.minutes &&
    !/(?<![a-zß-ɏ])(?:but|not|apart|except)(?![a-zß-ɏ])/.test(words)
  )
    return 'fine';
  if (sense.advised) return 'advice';
  if (sense.remedy) return 'remedy';
  if (sense.defect) return 'defect';
  if (sense.minutes || sense.detail) return 'detail';
  return isNameAlone({ words, sense } as TellingClause) ? 'name' : 'plain';
}

export const placeOf = (words: string, zones: Lexicon['zones']): string | null =>
  zoneOfThing(lineText(words), zones)?.value ?? null;

/** Words that turn to something else. */
const turns =
  /^(?:and |oh |right |okay |so |now )*(?:also|then (?:there|the)|next(?! week| month| year| season| time)|another thing|what else|second(?:ly)?|third(?:ly)?|moving|going (?:up|down|back|along|round|aft|forward|in|out)|climbing|(?:down )?below|up (?:top|forward|front)|on deck|outside|inside|at the (?:front|back|stern|bow)|as for|apart from that|otherwise|while (?:you|i|we)|at the same time|after that|(?:on )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)(?: (?:morning|afternoon|evening))?(?= *$| is| i| we)|the (?:other|next|last|main|first|second|third) thing)(?![a-zß-ɏ])/;
const besides =
  /(?<![a-zß-ɏ])(?:while (?:i'm|we're|you're|i am) (?:at it|there|about it|down there|up there)|another (?:thing|job|one)|as for|what else|also|as well)(?![a-zß-ɏ])/;
const joins = /^(?:and|with|so|but|because|which|or|though|although|until|since)(?![a-zß-ɏ])/;
const putsRight = /^(?:no|sorry|actually|rather|call it|make that|or rather|no more like|i mean|well)(?![a-zß-ɏ])/;
const newOne = /(?<![a-zß-ɏ])(?:new|longer|stronger|bigger|thicker|stouter|fresh|heavier|proper)(?![a-zß-ɏ])/;
/** What may be behind it. */
const guesses =
  /(?<![a-zß-ɏ])(?:i think|i reckon|i guess|notion|suspect|probably|perhaps it|might be|could be|must be|looks like|seems to be|it's (?:only |just )?the|that'll be)(?![a-zß-ɏ])/;
const refersBack = /(?<![a-zß-ɏ])(?:it|them)(?![a-zß-ɏ])/;

/** Weights of what speaks for and against a clause being more of the same topic. */
const weights: Record<string, number> = {
  start: 1,
  sameSentence: 1.7,
  gap: -0.1,
  newParagraph: -2.25,
  newLine: -4,
  inList: 1.8,
  pronoun: 1.5,
  noThing: 1,
  shared: 1.5,
  otherSide: -3,
  parts: 0.8,
  subject: -1.25,
  object: -0.2,
  unknown: -0.25,
  otherPlace: -1.55,
  turns: -3.5,
  joins: 0.3,
  newOne: -0.4,
  ahead: 0.6,
  guess: 1,
  remedyOfDefect: 1.2,
  remedyMore: 0,
  remedyOfNothing: 0.2,
  defectMore: -0.6,
  defectAfterRemedy: -1.5,
  defectOfNothing: 0.2,
  minutesFirst: 1,
  minutesMore: -2.25,
  detail: 0.8,
  afterMinutes: -1.2,
  plain: 0.5,
  fine: 0.5,
  stopgap: 0.5,
  name: -1.25,
  besides: -0.5,
  lengthJustTold: -2,
  another: -1,
  nextThing: -1,
};

function linkOf(topic: Topic, clause: TalkClause, next: readonly TalkClause[]): number {
  const { sense, words, role } = clause;
  const last = topic.clauses.at(-1)!;
  const sameItem = last.item === clause.item;
  const sameSentence = sameItem && last.sentence === clause.sentence;
  let sum = weights.start!;
  const add = (name: string, times: number | boolean) => {
    if (times) sum += weights[name]! * Number(times);
  };
  add('sameSentence', sameSentence);
  add('gap', sameItem ? Math.min(4, clause.sentence - last.sentence) : 1);
  const line = clause.listed && (clause.marked || !sense.pronoun);
  add('newParagraph', !sameItem && !line);
  add('newLine', !sameItem && line);
  add('inList', sameItem && clause.listed);
  const side = otherSide(words, topic.clauses);
  const shared = !side && sharesThing(sense.things, topic.things);
  add('pronoun', sense.pronoun);
  add('noThing', sense.things.length === 0 && !sense.about);
  add('unknown', sense.things.length === 0 && sense.about);
  add('shared', shared);
  add('otherSide', side);
  const other = sense.things.length > 0 && !shared;
  add('parts', other && sense.parts);
  add('subject', other && !sense.parts && sense.subject);
  add('object', other && !sense.parts && !sense.subject);
  add(
    'otherPlace',
    other && !sense.parts && clause.place !== null && topic.place !== null && clause.place !== topic.place,
  );
  add('turns', turns.test(words));
  add(
    'lengthJustTold',
    sameSentence &&
      last.sense.minutes &&
      !sense.minutes &&
      (role === 'plain' || role === 'defect' || role === 'name') &&
      !sense.pronoun,
  );
  add('besides', besides.test(words));
  add('another', sameSentence && other && sense.subject && !sense.parts && role === 'defect' && topic.defect);
  add('nextThing', sameSentence && topic.minutes && other && !sense.parts && (role === 'plain' || role === 'name'));
  add('joins', sameSentence && joins.test(words));
  add('newOne', newOne.test(words));
  add('guess', guesses.test(words));
  add(
    'ahead',
    (role === 'remedy' || role === 'plain') &&
      next.slice(0, 4).some((each) => each.sentence === clause.sentence && refersBack.test(each.words)),
  );
  const remedy = role === 'remedy';
  const defect = role === 'defect';
  add('remedyOfDefect', (remedy || role === 'advice') && topic.defect && !topic.remedy);
  add('remedyMore', remedy && topic.remedy);
  add('remedyOfNothing', remedy && !topic.defect && !topic.remedy);
  add('defectMore', defect && topic.defect && !topic.remedy);
  add('defectAfterRemedy', sense.defect && topic.remedy);
  add('defectOfNothing', defect && !topic.defect && !topic.remedy);
  add('minutesFirst', sense.minutes && !topic.minutes);
  add('minutesMore', sense.minutes && topic.minutes && !putsRight.test(words));
  add('detail', role === 'detail' && !sense.minutes);
  add('afterMinutes', topic.minutes && !sameSentence && role !== 'detail');
  add('plain', role === 'plain');
  add('fine', role === 'fine' || role === 'done' || role === 'left');
  add('stopgap', role === 'stopgap');
  add('name', role === 'name' && !shared);
  return sum;
}

function take(topic: Topic, clause: TalkClause) {
  topic.clauses.push(clause);
  for (const thing of clause.sense.things) topic.things.add(thing);
  topic.place ??= clause.place;
  topic.defect ||= clause.role === 'defect' || (clause.role === 'remedy' && clause.sense.defect);
  topic.remedy ||= clause.role === 'remedy' || (clause.role === 'advice' && topic.defect);
  topic.minutes ||= clause.sense.minutes;
  topic.stopgap ||= clause.role === 'stopgap';
}

const begun = (clause: TalkClause): Topic => {
  const topic: Topic = {
    clauses: [],
    things: new Set(),
    heading: clause.heading,
    place: null,
    defect: false,
    remedy: false,
    minutes: false,
    stopgap: false,
  };
  take(topic, clause);
  return topic;
};

/** The talk in its topics, in order. */
export function topicsOf(talk: readonly TalkClause[]): Topic[] {
  const topics: Topic[] = [];
  let topic: Topic | null = null;
  for (const [at, clause] of talk.entries()) {
    if (topic !== null && !clause.afresh && linkOf(topic, clause, talk.slice(at + 1, at + 5)) > 0) {
      take(topic, clause);
      continue;
    }
    // a word aside; the talk may come back
    if (topic !== null && clause.role === 'plain' && !clause.sense.about && !clause.afresh) continue;
    topic = begun(clause);
    topics.push(topic);
  }
  return topics;
}
