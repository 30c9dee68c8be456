import type { Book, Consequence, Id, Job, Outing } from '#boat-book';
import type { Bearing, Finding, Remedy } from '#fit-to-go';
import { localAt } from '#units';
import { planInForce } from '../plan-in-force.ts';
import { dayInWords, lengthInWords } from '../when-in-words.ts';
import { type JobInTime, jobInTime } from './jobs-in-time.ts';
import type { OutingTime } from './outing-time.ts';

const stopping: Partial<Record<Consequence, string>> = {
  danger: 'Left as it is, it is a danger to people.',
  unlawful: 'Left as it is, she may not be used by law.',
  'stops-sailing': 'Left as it is, she does not sail.',
};

export interface JobFindings {
  readonly findings: readonly Finding[];
  /** ids of the findings that are gone if the plan is kept */
  readonly goneByPlan: ReadonlySet<string>;
}

/**
 * Open jobs: a danger, what is unlawful and what stops sailing stop her, whatever outing it is; others that the keeper tied to
 * this outing are conditions. A jury rig that stands in for a job does not take it away: our judgement.
 */
export function jobFindings(book: Book, id: Id, outing: Outing, time: OutingTime): JobFindings {
  const plan = planInForce(book);
  const goneByPlan = new Set<string>();
  const findings = Object.entries(book.jobs).flatMap(([jobId, job]): Finding[] => {
    const asked = job.outing === id;
    const stops = stopping[job.consequence];
    if (job.state !== 'open' || (stops === undefined && !asked)) return [];
    const inTime = jobInTime(book, jobId, plan, time.starts, time.zone);
    const finding = `job.${jobId}`;
    if (inTime.kind === 'in time') goneByPlan.add(finding);
    const bearing: Bearing = stops === undefined ? 'condition' : 'stops';
    return [
      {
        id: finding,
        subject: 'jobs',
        bearing,
        words: job.title,
        because: [
          ...(stops === undefined ? [] : [{ words: stops, from: job.opened }]),
          ...(asked ? [{ words: `You tied it to ${outing.title}.`, from: null }] : []),
          ...(job.why ? [{ words: job.why, from: job.opened }] : []),
          { words: inTimeInWords(inTime), from: plan === null ? null : localAt(Date.parse(plan.made), time.zone).day },
        ],
        remedies: [doIt(book, jobId, job, inTime)],
        cautions: [],
        of: { collection: 'jobs', id: jobId },
      },
    ];
  });
  return { findings, goneByPlan };
}

/** The work that is left of a job, in the same words wherever it would mend something. */
export function doIt(book: Book, id: Id, job: Job, inTime: JobInTime): Remedy {
  const open = Object.values(book.steps).filter((step) => step.job === id && step.progress.kind !== 'done');
  const minutes = open.reduce((sum, { minutes: { likely } }) => sum + likely, 0);
  const waits = open.some((step) => step.waits.length > 0);
  const when = inTime.kind === 'in time' ? `, planned to be over ${dayInWords(inTime.day)} ${inTime.clock}` : '';
  return {
    words:
      open.length === 0
        ? `Say it is done, or give it steps: ${job.title}${when}.`
        : `${job.title}: ${lengthInWords(minutes)} of work${waits ? ', and what must cure or dry' : ''}${when}.`,
    minutes: open.length === 0 ? null : minutes,
    inHand: true,
  };
}

function inTimeInWords(inTime: JobInTime): string {
  switch (inTime.kind) {
    case 'in time':
      return `The plan has it over ${dayInWords(inTime.day)} ${inTime.clock}, in time if it is kept.`;
    case 'too late':
      return `The plan has it over only ${dayInWords(inTime.day)} ${inTime.clock}.`;
    case 'left out':
      return 'The plan leaves it out: Days says why.';
    case 'not in that plan':
      return 'It is not in the latest plan.';
    case 'no plan':
      return 'There is no plan yet.';
  }
}
