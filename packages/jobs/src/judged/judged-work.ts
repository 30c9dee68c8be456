import { type TopicWork, workOf } from '../topic-work.ts';
import type { TalkClause, Topic } from '../walk-topics.ts';
import type { Gathered } from '../work-in-hand.ts';
import { clauseFeatures, type Features, topicFeatures } from './features.ts';
import { type Judges, sumOf } from './judge.ts';
import { habitOf, signsOf } from './signs.ts';

/** From these sums on it is proposed: set on talk that was not learned from. */
export const enough = { job: 0.1, rig: -0.9 };

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

/** What is work to do, and what stands in for it. */
export function judgedWork(topics: readonly Topic[], judges: Judges): Gathered[] {
  const rigs = fixesForNow(topics, judges);
  return weighedTopics(topics, (clause) => rigs.has(clause)).flatMap(({ features, job, rig }) => [
    ...(rig ? [rig] : []),
    ...(job && sumOf(features, judges.job) > enough.job ? [job] : []),
  ]);
}
