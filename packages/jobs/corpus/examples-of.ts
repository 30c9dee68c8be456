/** Marked pages as examples to learn from: topics with a job in them or none, clauses that tell of a fix for now or not. */
import { clauseFeatures } from '../src/judged/features.ts';
import { weighedTopics } from '../src/judged/judged-work.ts';
import { topicsOfPage } from '../src/read-walk-round.ts';
import type { TalkClause } from '../src/walk-topics.ts';
import { boat } from './boat.ts';
import type { Example } from './learn.ts';
import type { MarkedPage } from './marked.ts';

export function examplesOf(pages: readonly MarkedPage[]): { readonly job: Example[]; readonly rig: Example[] } {
  const job: Example[] = [];
  const rig: Example[] = [];
  for (const { name, page, marks } of pages) {
    const { topics, spanOf } = topicsOfPage(page, boat);
    const marked = (kind: 'job' | 'jury rig') => {
      const spans = marks.filter((mark) => mark.kind === kind).map(({ at }) => [page.indexOf(at), at.length] as const);
      return (clause: TalkClause) => {
        const { from, to } = spanOf(clause);
        return spans.some(([at, length]) => from < at + length && at < to);
      };
    };
    const hasJob = marked('job');
    const isRig = marked('jury rig');
    for (const [at, { features }] of weighedTopics(topics, isRig).entries())
      job.push({ features, is: topics[at]!.clauses.some(hasJob), page: name });
    const talk = topics.flatMap(({ clauses }, topic) => clauses.map((clause) => ({ topic, clause })));
    for (const [at, { clause }] of talk.entries())
      rig.push({ features: clauseFeatures(talk, at), is: isRig(clause), page: name });
  }
  return { job, rig };
}
