/** What is open, how long it takes and what it waits for, as the lists of jobs show it. */
import type { Book, Consequence, Id, Job, Step } from '#boat-book';

export const consequences: readonly Consequence[] = ['danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort'];

/** A cover comes off in passing; a mast does not go up in passing. Our judgement of what is worth naming. */
const quickChange_min = 15;

export interface NamedJob {
  readonly id: Id;
  readonly job: Job;
}
export interface NamedStep {
  readonly id: Id;
  readonly step: Step;
}

/** steps by their job, once for each state of the book's steps */
const stepsByJob = new WeakMap<Book['steps'], ReadonlyMap<Id, readonly NamedStep[]>>();

/** The steps of a job in their order. */
export function stepsOf({ steps }: Pick<Book, 'steps'>, job: Id): readonly NamedStep[] {
  let byJob = stepsByJob.get(steps);
  if (byJob === undefined) {
    byJob = grouped(steps);
    stepsByJob.set(steps, byJob);
  }
  return byJob.get(job) ?? [];
}

function grouped(steps: Book['steps']): ReadonlyMap<Id, readonly NamedStep[]> {
  const byJob = new Map<Id, NamedStep[]>();
  for (const [id, step] of Object.entries(steps)) {
    const known = byJob.get(step.job);
    if (known === undefined) byJob.set(step.job, [{ id, step }]);
    else known.push({ id, step });
  }
  for (const named of byJob.values()) named.sort((a, b) => a.step.order - b.step.order || a.id.localeCompare(b.id));
  return byJob;
}

/** Hands-on minutes still to do, by the likely figure: its own minutes, whatever hands it takes. */
export function minutesLeft(steps: readonly NamedStep[]): number {
  return steps.reduce((sum, { step }) => (step.progress.kind === 'done' ? sum : sum + step.minutes.likely), 0);
}

/** Open jobs, the gravest consequence first, then by their own date, then by age. */
export function openJobs(book: Book): readonly NamedJob[] {
  return Object.entries(book.jobs)
    .filter(([, job]) => job.state === 'open')
    .map(([id, job]) => ({ id, job }))
    .sort(
      (a, b) =>
        consequences.indexOf(a.job.consequence) - consequences.indexOf(b.job.consequence) ||
        (a.job.due ?? '9999').localeCompare(b.job.due ?? '9999') ||
        a.job.opened.localeCompare(b.job.opened) ||
        a.job.title.localeCompare(b.job.title),
    );
}

export interface JobWaits {
  /** stores its open steps need that are not on hand, with the day they are expected */
  readonly stores: readonly { readonly name: string; readonly expected: string | null }[];
  /** titles of open jobs that come first */
  readonly jobs: readonly string[];
  /** an open step is not to be done alone, or takes more than one pair of hands */
  readonly secondHand: boolean;
  /** set-ups its next step needs that are otherwise now and take a while to change: 'mast down' */
  readonly setUps: readonly string[];
}

/** What keeps a job from being done right now. Weather and hours are the plan's to say. */
export function waitsFor(book: Book, { job }: NamedJob, steps: readonly NamedStep[]): JobWaits {
  const open = steps.filter(({ step }) => step.progress.kind === 'open');
  const stores = new Map<Id, { name: string; expected: string | null }>();
  for (const { step } of open)
    for (const id of step.stores) {
      const store = book.stores[id];
      if (store && !store.onHand) stores.set(id, { name: store.name, expected: store.expected });
    }
  return {
    stores: [...stores.values()],
    jobs: job.afterJobs.flatMap((id) => {
      const other = book.jobs[id];
      return other?.state === 'open' ? [other.title] : [];
    }),
    secondHand: open.some(({ step }) => step.notAlone || step.hands > 1),
    setUps: (open[0]?.step.setUps ?? []).flatMap(({ setUp, states }) => {
      const known = book.setUps[setUp];
      if (!known || states.includes(known.now)) return [];
      const minutes = known.changes
        .filter((change) => change.from === known.now && states.includes(change.to))
        .map((change) => change.minutes);
      if (minutes.length > 0 && Math.min(...minutes) <= quickChange_min) return [];
      const names = known.states.filter((state) => states.includes(state.id)).map((state) => state.name);
      return names.length > 0
        ? [`${known.name.charAt(0).toLowerCase()}${known.name.slice(1)} ${names.join(' or ')}`]
        : [];
    }),
  };
}
