import type { Book, Id, Job } from '#boat-book';
import type { MinuteSpan, Precedence, Problem, ProblemStep, StepProgress } from '#workplan';
import { type DoneStep, linkFromBefore } from './done-steps.ts';
import type { DatedJob } from './job-dates.ts';
import { type PlanNote, planNote } from './plan-note.ts';
import { type LinkedStep, problemStep } from './plan-steps.ts';
import { dayInWords } from './when-in-words.ts';

/** A step that runs past the time it was to be finished by is taken to need this much longer. */
const assumedOverrun_min = 10;

interface StepMatter {
  readonly book: Book;
  readonly jobs: readonly DatedJob[];
  readonly done: readonly DoneStep[];
  readonly days: Problem['days'];
  readonly nowMinute: number;
  readonly minute: (ms: number) => number;
  readonly notes: PlanNote[];
}

/** The steps of the problem with their progress, what comes after what, and the closed jobs that still have a wait. */
export function plannedSteps({ book, jobs, done, days, nowMinute, minute, notes }: StepMatter) {
  const steps: ProblemStep[] = [];
  const precedence: Precedence[] = [];
  const doneById = new Map(done.map((step) => [step.id, step]));
  const openJobs = new Set(jobs.map((job) => job.id));
  const present = new Set<Id>();
  const standsBefore = new Set<Id>();
  const finishedJobs = new Set<Id>();

  const doneProgress = (step: DoneStep): StepProgress => {
    const finish = Math.max(1, Math.min(minute(step.finished), nowMinute));
    return { kind: 'done', start: Math.max(0, Math.min(minute(step.started), finish - 1)), finish };
  };
  for (const { id, job, steps: linked } of jobs) {
    const held = heldSpan(book, id, job, days, notes);
    for (const step of linked) {
      const { progress, note } = stepProgress(step, nowMinute, minute);
      if (note) notes.push(planNote('under way past its time', note, { job: id }));
      if (progress.kind === 'done') continue;
      steps.push(
        problemStep(step.id, step.record, job.zone, { held: progress.kind === 'open' ? held : null, progress }),
      );
      present.add(step.id);
    }
  }
  for (const step of done) {
    const inTime = minute(step.started) >= 0;
    const openJob = openJobs.has(step.record.job);
    if (!(step.waiting || (openJob && inTime))) continue;
    const zone = book.jobs[step.record.job]?.zone ?? null;
    steps.push(problemStep(step.id, step.record, zone, { held: null, progress: doneProgress(step) }));
    present.add(step.id);
    if (!openJob) finishedJobs.add(step.record.job);
  }
  for (const { steps: linked } of jobs)
    for (const step of linked) {
      if (step.record.progress.kind !== 'open') continue;
      for (const link of step.links) {
        if (present.has(link.before)) {
          precedence.push({ ...link, after: step.id });
          continue;
        }
        // finished before the plan: only lags that still count are kept, from a step that stands in its first minute
        const before = book.steps[link.before];
        if (before?.progress.kind !== 'done') continue;
        const known = doneById.get(link.before);
        const left = linkFromBefore(
          link,
          known ? Math.min(0, minute(known.finished)) : Math.min(0, minute(Date.parse(before.progress.finished))),
        );
        if (!left) continue;
        if (!standsBefore.has(link.before)) {
          standsBefore.add(link.before);
          const zone = book.jobs[before.job]?.zone ?? null;
          const bare = { ...before, waits: [], wet: false, dusty: false };
          steps.push(
            problemStep(link.before, bare, zone, { held: null, progress: { kind: 'done', start: 0, finish: 1 } }),
          );
          if (!openJobs.has(before.job)) finishedJobs.add(before.job);
        }
        precedence.push({ ...left, after: step.id });
      }
    }
  return { steps, precedence, finishedJobs: [...finishedJobs].filter((id) => book.jobs[id] !== undefined) };
}

function stepProgress(
  { record }: LinkedStep,
  nowMinute: number,
  minute: (ms: number) => number,
): { readonly progress: StepProgress; readonly note?: string } {
  if (record.progress.kind === 'open') return { progress: { kind: 'open' } };
  if (record.progress.kind === 'done') return { progress: { kind: 'done', start: 0, finish: 1 } };
  const start = Math.max(0, Math.min(minute(Date.parse(record.progress.started)), nowMinute));
  const expected = minute(Date.parse(record.progress.expected));
  const late = expected <= nowMinute;
  const progress: StepProgress = {
    kind: 'under way',
    start,
    expectedFinish: late ? nowMinute + assumedOverrun_min : expected,
    hands: record.progress.hands,
  };
  return late
    ? {
        progress,
        note: `'${record.title}' was to be finished by now: it is taken to need ${assumedOverrun_min} minutes more.`,
      }
    : { progress };
}

function heldSpan(book: Book, id: Id, job: Job, days: Problem['days'], notes: PlanNote[]): MinuteSpan | null {
  if (job.heldTo === null) return null;
  const day = days.find((each) => each.id === job.heldTo);
  if (day) return { from: day.from, to: day.to };
  const date = book.jobDays[job.heldTo]?.date;
  notes.push(
    planNote(
      'taken from the book as',
      date
        ? `'${job.title}' was held to ${dayInWords(date)}, which is over or not planned: it is free again.`
        : `'${job.title}' was held to a job day that is no longer there: it is free again.`,
      { job: id },
    ),
  );
  return null;
}
