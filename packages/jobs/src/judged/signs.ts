/** What speaks for and against a topic’s being work to do, as the rules see it. */
import { isTolerated } from '../walk-tolerated.ts';
import type { Evidence } from '../work-in-hand.ts';

/** What is told of a page as a whole: of a keeper who gives a length with each job, one without is less sure. */
export interface PageHabit {
  /** of what has a remedy, the part that has a length. 0–1 */
  readonly lengths: number;
  /** of all that may be work, the part that has a remedy or a length. 0–1 */
  readonly remedies: number;
}

const must =
  /(?<![a-zß-ɏ])(?:must|should|ought|has to|have to|got to|needs?|wants? (?!to sell)|(?:i|we)(?:'ll| shall| will)|due|before (?:the|we|i|she|it|that|next)|asap|urgent|(?:on|for|next|this) (?:saturday|sunday|monday|weekend)|when (?:it|the|they) (?:comes?|arrives?))(?![a-zß-ɏ])/;
const maybe =
  /(?<![a-zß-ɏ])(?:would|could|might|may|if|one day|some ?day|dream|wish|perhaps|maybe|wonder|thinking|someone|i'd like|i'd love|ever)(?![a-zß-ɏ])/;
const past =
  /(?<![a-zß-ɏ])(?:was|were|had|did|last|ago|since|in (?:january|february|march|april|may|june|july|august|september|october|november|december|the autumn|the winter|the spring)|used to|already|(?:i|we|he|she|they) [a-zß-ɏ]+ed)(?![a-zß-ɏ])/;
const otherPeople =
  /(?<![a-zß-ɏ])(?:he|him|his|they|them|wife|husband|mum|dad|kids?|neighbour|friend|club|guy|bloke|man|woman|you|your|people|everyone|someone|dog|cat)(?![a-zß-ɏ])/;
const person = /(?<![a-zß-ɏ])(?:i|we|you|he|she|they|it|that|there)(?![a-zß-ɏ])/;
const grave =
  /(?<![a-zß-ɏ])(?:danger(?:ous)?|unsafe|illegal|law|police|sink|kill|hurt|worse|won't|broken|snapped|cracked|torn|leak[a-z]*|missing|dead|gone|rotten|seized|out of date|expired|perished)(?![a-zß-ɏ])/;

/** What speaks for and against, each from 0 to 1. */
export function signsOf(evidence: Evidence, page: PageHabit): Readonly<Record<string, number>> {
  const { topic, defect, remedy, minutes, known, dismissed, rigged } = evidence;
  const some = (test: (clause: Evidence['topic'][number]) => boolean) => (topic.some(test) ? 1 : 0);
  const said = (pattern: RegExp) => some(({ words }) => pattern.test(words));
  const count = (test: (clause: Evidence['topic'][number]) => boolean, most: number) =>
    Math.min(most, topic.filter(test).length) / most;
  const bare = !remedy && !minutes;
  const onlyRemedy = remedy && !minutes;
  const pure = bare && topic.every(({ role, words }) => (role === 'defect' || role === 'name') && !isTolerated(words));
  return {
    bare: bare ? 1 : 0,
    bareAmongTold: bare ? page.remedies : 0,
    minutes: minutes ? 1 : 0,
    minutesAlone: minutes && !remedy ? 1 : 0,
    remedyAlone: onlyRemedy ? 1 : 0,
    remedyAmongTimed: onlyRemedy ? page.lengths : 0,
    defectAndRemedy: defect && remedy ? 1 : 0,
    remedies: count(({ role }) => role === 'remedy', 3),
    defects: count(({ role, sense }) => role === 'defect' || (role === 'remedy' && sense.defect), 3),
    unknown: known ? 0 : 1,
    noThing: some(({ sense }) => sense.things.length > 0) ? 0 : 1,
    noThingNoMinutes: !minutes && !topic.some(({ sense }) => sense.things.length > 0) ? 1 : 0,
    dismissed: dismissed ? 1 : 0,
    dismissedBare: dismissed && bare ? 1 : 0,
    listed: topic[0]!.listed ? 1 : 0,
    listedBare: topic[0]!.listed && bare ? 1 : 0,
    purely: pure ? 1 : 0,
    purelyListed: pure && topic[0]!.listed ? 1 : 0,
    subjectBare: bare ? some(({ role, sense }) => role === 'defect' && sense.subject && sense.things.length > 0) : 0,
    imperative: some(({ role, words, sense }) => role === 'remedy' && !sense.done && !person.test(words)),
    imperativeAlone: onlyRemedy
      ? some(({ role, words, sense }) => role === 'remedy' && !sense.done && !person.test(words))
      : 0,
    detail: some(({ role, sense }) => role === 'detail' && !sense.minutes),
    must: said(must),
    maybe: said(maybe),
    maybeAlone: !minutes && said(maybe) ? 1 : 0,
    past: said(past),
    pastAlone: !minutes && said(past) ? 1 : 0,
    others: said(otherPeople),
    othersAlone: !minutes && said(otherPeople) ? 1 : 0,
    grave: said(grave),
    graveBare: bare && said(grave) ? 1 : 0,
    fine: some(({ role }) => role === 'fine'),
    fineBare: bare ? some(({ role }) => role === 'fine') : 0,
    done: some(({ role }) => role === 'done'),
    doneAlone: minutes ? 0 : some(({ role }) => role === 'done'),
    left: some(({ role }) => role === 'left'),
    advice: some(({ role }) => role === 'advice'),
    hearsay: some(({ sense }) => sense.hearsay),
    tolerated: some(({ words }) => isTolerated(words)),
    toleratedBare: bare ? some(({ words }) => isTolerated(words)) : 0,
    rigged: rigged ? 1 : 0,
    long: Math.min(1, topic.length / 10),
    oneClause: topic.length === 1 ? 1 : 0,
    plain: count(({ role }) => role === 'plain', 4),
  };
}

export function habitOf(told: readonly Evidence[]): PageHabit {
  const known = told.filter((each) => each.known && !each.dismissed && (each.defect || each.remedy || each.minutes));
  const remedied = known.filter(({ remedy }) => remedy);
  const part = (some: number, all: number) => (some + 1) / (all + 2);
  return {
    lengths: part(remedied.filter(({ minutes }) => minutes).length, remedied.length),
    remedies: part(known.filter(({ remedy, minutes }) => remedy || minutes).length, known.length),
  };
}
