import type { Book, Id, Job } from '#boat-book';
import { type PlanNote, planNote } from './plan-note.ts';
import { type LinkedStep, linkedSteps, type StepsByJob, stepsByJob } from './plan-steps.ts';

export interface JobToPlan {
  readonly id: Id;
  readonly job: Job;
  /** all its steps, done ones too, in order */
  readonly steps: readonly LinkedStep[];
}

/**
 * The open jobs with a step left to do. A job with no steps yet cannot be planned, nor can one that must wait for
 * it; both are named in a note. What waits for a step that is gone, or for a job given up, no longer waits for it.
 */
export function jobsToPlan(book: Book): { readonly jobs: readonly JobToPlan[]; readonly notes: PlanNote[] } {
  const notes: PlanNote[] = [];
  const jobs: JobToPlan[] = [];
  const byJob = stepsByJob(book);
  for (const [id, job] of Object.entries(book.jobs)) {
    if (job.state !== 'open') continue;
    const steps = linkedSteps(book, byJob, id);
    if (steps.length === 0)
      notes.push(planNote('job left aside', `'${job.title}' has no steps yet, so it cannot be planned.`, { job: id }));
    else if (steps.some((step) => step.record.progress.kind !== 'done')) jobs.push({ id, job, steps });
  }
  const planned = withoutJobsThatWaitForUnplanned(book, byJob, jobs, notes);
  return {
    jobs: planned.map((job) => ({ ...job, steps: job.steps.map((step) => withoutGoneLinks(book, step, notes)) })),
    notes,
  };
}

/** A job that comes after one that is open but cannot be planned cannot be planned either. */
function withoutJobsThatWaitForUnplanned(
  book: Book,
  byJob: StepsByJob,
  jobs: readonly JobToPlan[],
  notes: PlanNote[],
): JobToPlan[] {
  let kept = [...jobs];
  for (;;) {
    const planned = new Set(kept.map((job) => job.id));
    const blocker = (each: JobToPlan) =>
      each.job.afterJobs.find((other) => {
        const job = book.jobs[other];
        if (job?.state !== 'open' || planned.has(other)) return false;
        const steps = byJob.get(other) ?? [];
        return steps.length === 0 || steps.some(([, step]) => step.progress.kind !== 'done');
      });
    const next = kept.filter((each) => blocker(each) === undefined);
    if (next.length === kept.length) return next;
    for (const each of kept) {
      const other = blocker(each);
      if (other !== undefined)
        notes.push(
          planNote(
            'job left aside',
            `'${each.job.title}' comes after '${book.jobs[other]!.title}', which cannot be planned yet.`,
            { job: each.id },
          ),
        );
    }
    kept = next;
  }
}

function withoutGoneLinks(book: Book, step: LinkedStep, notes: PlanNote[]): LinkedStep {
  const links = step.links.filter((link) => {
    const before = book.steps[link.before];
    if (!before) {
      notes.push(
        planNote('taken from the book as', `'${step.record.title}' waited for a step that is gone: it is free of it.`, {
          job: step.record.job,
        }),
      );
      return false;
    }
    if (before.progress.kind === 'done') return true;
    // a step left open in a job closed as done, or given up, is not waited for
    return book.jobs[before.job]?.state === 'open';
  });
  return links.length === step.links.length ? step : { ...step, links };
}
