/** What of a topic of the talk would be told of work to do, and what of a fix that stands in for it. */
import { isGoods } from './walk-stores.ts';
import { isTolerated } from './walk-tolerated.ts';
import type { TalkClause, Topic } from './walk-topics.ts';
import { type Evidence, followUpIn, type Gathered } from './work-in-hand.ts';

type Made = { -readonly [key in keyof Gathered]: Gathered[key] } & { clauses: TalkClause[] };

const allDone = /^(?:and )?(?:this|that|it|all)(?: is|'s|s)? (?:now |all )?(?:done|finished|sorted)(?![a-zß-ɏ])/;
const goodsAlone =
  /^(?:and |just |only |or |then |so )*(?:a|an|some|two|three|four|five|six|bit of|dab of|drop of|blob of|longer|new|bigger|proper|stronger|\d+)(?: [a-zß-ɏ0-9-]+){1,4}(?: and [a-zß-ɏ0-9 -]+)?$/;
const somebody = /(?<![a-zß-ɏ])(?:i|we|he|she|they|you|who)(?![a-zß-ɏ])/;

export interface TopicWork {
  readonly evidence: Evidence;
  /** the work to do, if it is any */
  readonly job: Gathered | null;
  readonly rig: Gathered | null;
}

/** @param isRig  whether a clause tells of a fix that holds for now */
export function workOf(topic: Topic, isRig: (clause: TalkClause) => boolean): TopicWork {
  const job: Made = { kind: 'job', clauses: [], heading: topic.heading, followUp: null, rig: null };
  const rig: Made = { kind: 'jury rig', clauses: [], heading: topic.heading, followUp: null, rig: null };
  /** what is told before anything is wrong or to be done */
  let lead: TalkClause[] = [];
  let defect = false;
  let remedy = false;
  let minutes = false;
  let dismissed = false;
  let known = false;
  const reasons: TalkClause[] = [];
  /** what was done, told just before it is said to be for now: 'I tied a knot in it, and it will do until …' */
  let doneJustNow: TalkClause[] = [];
  let lastRig: TalkClause | null = null;
  for (const clause of topic.clauses) {
    const { sense } = clause;
    const role = roleIn(clause, defect, isRig(clause));
    known ||=
      sense.about ||
      (role === 'remedy' && sense.minutes) ||
      clause.listed ||
      (role === 'remedy' && /(?<![a-zß-ɏ])her(?![a-zß-ɏ])/.test(clause.words));
    if (role === 'stopgap') {
      rig.clauses.push(...doneJustNow.filter(({ sentence }) => sentence === clause.sentence), clause);
      doneJustNow = [];
      lastRig = clause;
      continue;
    }
    // '… for now, good till the end of the month'
    if (
      lastRig &&
      !remedy &&
      lastRig.sentence === clause.sentence &&
      role !== 'remedy' &&
      role !== 'defect' &&
      !sense.minutes
    ) {
      rig.clauses.push(clause);
      continue;
    }
    if (role === 'left') {
      if (!minutes && !sense.minutes) dismissed = true;
      continue;
    }
    if (role === 'fine' || role === 'done') {
      // 'this is done, the smell is away'
      if (allDone.test(clause.words)) dismissed = true;
      // 'three screws have pulled'
      if (role === 'done' && sense.subject && !somebody.test(clause.words) && !defect && !remedy) lead.push(clause);
      if (!remedy && !minutes && defect && (sense.fine || sense.putRight) && !sense.hearsay) dismissed = true;
      else if (!defect && !remedy && role === 'fine') lead = [];
      if (role === 'done') doneJustNow.push(clause);
      continue;
    }
    if (role === 'name' || role === 'plain') {
      if (defect && !remedy && !minutes && isTolerated(clause.words)) dismissed = true;
      // '… propped with a stick. Two screws and some glue.'
      if (lastRig && isGoods.test(clause.words) && goodsAlone.test(clause.words)) remedy = true;
      if (defect || remedy || minutes) job.clauses.push(clause);
      else lead.push(clause);
      continue;
    }
    if (role === 'defect') reasons.push(clause);
    job.clauses.push(...lead.slice(-3), clause);
    lead = [];
    defect ||= sense.defect;
    remedy ||= role === 'remedy';
    minutes ||= sense.minutes;
    if (role === 'remedy' || sense.minutes || (role === 'defect' && sense.about)) dismissed = false;
    if (role === 'defect' && !remedy && !minutes && isTolerated(clause.words)) dismissed = true;
  }
  if (rig.clauses.length > 0) {
    rig.clauses.unshift(
      ...(remedy || minutes
        ? reasons.filter(({ from }) => from < rig.clauses[0]!.from)
        : [...lead.filter((each) => each.role === 'name'), ...job.clauses]),
    );
    rig.clauses.sort((a, b) => a.from - b.from);
  }
  job.clauses = topic.clauses.filter((clause) => !isRig(clause));
  job.followUp = job.clauses.map(followUpIn).find((each) => each !== null) ?? null;
  job.rig = rig.clauses.length > 0 ? rig : null;
  return {
    evidence: { topic: topic.clauses, defect, remedy, minutes, known, dismissed, rigged: rig.clauses.length > 0 },
    job: job.clauses.length > 0 ? job : null,
    rig: job.rig,
  };
}

function roleIn({ role }: TalkClause, defect: boolean, isRig: boolean): TalkClause['role'] {
  if (isRig) return 'stopgap';
  if (role === 'stopgap') return 'plain';
  return role === 'advice' ? (defect ? 'remedy' : 'plain') : role;
}
