import type { Book, Id } from '#boat-book';
import type { PlanHour, Precedence, Problem, ProblemStep, StepProgress } from '#workplan';
import { type DoneStep, linkFromBefore } from './done-steps.ts';
import { heldSpans } from './held-spans.ts';
import type { DatedJob } from './job-dates.ts';
import { type PlanNote, planNote } from './plan-note.ts';
import { longestPlan_days } from './plan-span.ts';
import { type Link, type LinkedStep, problemStep } from './plan-steps.ts';
import { tunerOf } from './tuned-minutes.ts';

/** A step that runs past the time it was to be finished by is taken to need this much longer. */
const assumedOverrun_min = 10;

interface StepMatter {
  readonly book: Book;
  readonly jobs: readonly DatedJob[];
  readonly done: readonly DoneStep[];
  readonly days: Problem['days'];
  readonly hours: readonly PlanHour[];
  readonly nowMinute: number;
  readonly minute: (ms: number) => number;
  readonly notes: PlanNote[];
}

/** The steps of the problem with their progress, what comes after what, and the closed jobs that still have a wait. */
export function plannedSteps({ book, jobs, done, days, hours, nowMinute, minute, notes }: StepMatter) {
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
  const tuned = tunerOf(book);
  const counted = (step: LinkedStep): LinkedStep => {
    if (step.record.progress.kind !== 'open') return step;
    const { after } = tuned(step.record);
    // however quick the hand has become, the mixing is in it
    const mixing_min = (step.record.mix === null ? undefined : book.mixes[step.record.mix]?.mixing_min) ?? 0;
    const likely = Math.max(after.likely, mixing_min);
    return { ...step, record: { ...step.record, minutes: { ...after, likely, high: Math.max(after.high, likely) } } };
  };
  for (const { id, job, steps: written } of jobs) {
    const linked = written.map(counted);
    const held = heldSpans({ book, id, job, steps: linked, days, hours, nowMinute, minute, notes });
    for (const step of linked) {
      const { progress, note } = stepProgress(step, nowMinute, minute);
      if (note) notes.push(planNote('under way past its time', note, { job: id }));
      if (progress.kind === 'done') continue;
      steps.push(problemStep(step.id, step.record, job.zone, { held: held.get(step.id) ?? null, progress }));
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
          precedence.push({ ...withinPlan(link), after: step.id });
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
        precedence.push({ ...withinPlan(left), after: step.id });
      }
    }
  return { steps, precedence, finishedJobs: [...finishedJobs].filter((id) => book.jobs[id] !== undefined) };
}

/** A lag past the longest plan is as good as the whole of it: nothing starts within it. */
const withinPlan = (link: Link): Link => ({ ...link, least_min: Math.min(link.least_min, longestPlan_days * 1440) });

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
