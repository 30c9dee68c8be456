import type { Book, Consequence, Id, Job, Outing } from '#boat-book';
import type { Bearing, Finding } from '#fit-to-go';
import { localAt } from '#units';
import { planInForce } from '../plan-in-force.ts';
import { doJob, type OutingMatter } from './job-remedy.ts';

const stopping: Partial<Record<Consequence, string>> = {
  danger: 'Left as it is, it is a danger to people.',
  unlawful: 'Left as it is, she may not be used by law.',
  'stops-sailing': 'Left as it is, she does not sail.',
};

/** The open jobs that stand between her and an outing: those that stop her, and those that the keeper tied to it. */
export function jobsOfOuting(book: Book, id: Id, outing: Outing): readonly (readonly [Id, Job])[] {
  return Object.entries(book.jobs).filter(
    ([, job]) => job.state === 'open' && (bearingOf(job, outing) === 'stops' || job.outing === id),
  );
}

/** On the road alone she need not sail. */
const bearingOf = ({ consequence }: Job, { way }: Outing): Bearing =>
  stopping[consequence] === undefined || (consequence === 'stops-sailing' && way === 'road') ? 'condition' : 'stops';

/**
 * Open jobs: a danger, what is unlawful and what stops sailing stop her, whatever outing it is; others that the keeper tied to
 * this outing are conditions. A jury rig that stands in for a job does not take it away: our judgement.
 */
export function jobFindings(matter: OutingMatter): readonly Finding[] {
  const { book, id, outing, time } = matter;
  const plan = planInForce(book);
  const jobs = Object.entries(book.jobs).filter(
    ([, job]) => job.state === 'open' && (stopping[job.consequence] !== undefined || job.outing === id),
  );
  return jobs.map(([jobId, job]): Finding => {
    const bearing = bearingOf(job, outing);
    const why = stopping[job.consequence];
    const remedy = doJob(matter, jobId);
    return {
      id: `job.${jobId}`,
      subject: 'jobs',
      bearing,
      words: job.title,
      because: [
        ...(why === undefined ? [] : [{ words: why, from: job.opened }]),
        ...(why !== undefined && bearing === 'condition'
          ? [{ words: 'This outing is on the road only, so that she need not sail.', from: null }]
          : []),
        ...(job.outing === id ? [{ words: `You tied it to ${outing.title}.`, from: null }] : []),
        ...(job.why ? [{ words: job.why, from: job.opened }] : []),
        ...(remedy.inTime === null
          ? []
          : [
              {
                words: remedy.inTime.words,
                from: plan === null ? null : localAt(Date.parse(plan.made), time.zone).day,
              },
            ]),
      ],
      remedies: [remedy],
      cautions: [],
      of: { collection: 'jobs', id: jobId },
    };
  });
}
