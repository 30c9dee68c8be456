import { type TopicWork, workOf } from '../topic-work.ts';
import type { TalkClause, Topic } from '../walk-topics.ts';
import type { Gathered } from '../work-in-hand.ts';
import { clauseFeatures, type Features, topicFeatures } from './features.ts';
import { type Judges, sumOf } from './judge.ts';
import { habitOf, signsOf } from './signs.ts';

/** From these sums on it is proposed: set on talk that was not learned from. Notes of a few words by plain sense. */
export const enough = { job: 0.1, jotted: -2, rig: -0.9 };

export interface WeighedTopic extends TopicWork {
  /** what is weighed for whether there is a job in it */
  readonly features: Features;
}

/** All that a page tells of, work or not, with what it is weighed by. */
export function weighedTopics(topics: readonly Topic[], isRig: (clause: TalkClause) => boolean): WeighedTopic[] {
  const told = topics.map((topic) => workOf(topic, isRig));
  const habit = habitOf(told.map(({ evidence }) => evidence));
  return told.map((each, at) => {
    const features = new Map(topicFeatures(topics, at));
    for (const [sign, much] of Object.entries(signsOf(each.evidence, habit)))
      if (much !== 0) features.set(`sign ${sign}`, much);
    return { ...each, features };
  });
}

/** The clauses that tell of a fix that holds for now. */
export function fixesForNow(topics: readonly Topic[], { rig }: Judges): ReadonlySet<TalkClause> {
  const talk = topics.flatMap(({ clauses }, topic) => clauses.map((clause) => ({ topic, clause })));
  return new Set(talk.flatMap(({ clause }, at) => (sumOf(clauseFeatures(talk, at), rig) > enough.rig ? [clause] : [])));
}

/** Up to so many words a page is a note to oneself: what is wrong is jotted down because it is to be done. */
const longestNote = 60;
const isNote = (topics: readonly Topic[]) =>
  topics.flatMap(({ clauses }) => clauses.flatMap(({ words }) => words.split(' '))).length <= longestNote;

/** What is work to do, and what stands in for it. */
export function judgedWork(topics: readonly Topic[], judges: Judges): Gathered[] {
  const rigs = fixesForNow(topics, judges);
  const note = isNote(topics);
  return weighedTopics(topics, (clause) => rigs.has(clause)).flatMap(({ features, evidence, job, rig }) => {
    const jotted = note && evidence.defect && evidence.known && !evidence.dismissed && rig === null;
    const least = jotted ? enough.jotted : enough.job;
    return [...(rig ? [rig] : []), ...(job && sumOf(features, judges.job) > least ? [job] : [])];
  });
}
