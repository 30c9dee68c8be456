import type { Book, Id, Outing, Step, WaitRecord } from '#boat-book';
import type { Remedy } from '#fit-to-go';
import { lengthInWords } from '../when-in-words.ts';
import type { OutingTime } from './outing-time.ts';
import { type PlannerKnows, plannedInTime } from './planner-knows.ts';

/** What the outing’s remedies are worked out from. */
export interface OutingMatter {
  readonly book: Book;
  readonly id: Id;
  readonly outing: Outing;
  readonly time: OutingTime;
  /** null: the planner was not asked, or has not answered yet */
  readonly knows: PlannerKnows | null;
}

/** The work that is left of a job, in the same words wherever it would mend something. */
export function doJob({ book, outing, time, knows }: OutingMatter, id: Id): Remedy {
  const { title } = book.jobs[id]!;
  const open = Object.values(book.steps).filter((step) => step.job === id && step.progress.kind !== 'done');
  const work = workOf(open);
  return {
    words:
      work.minutes === null
        ? `${title}: say it is done, or give it steps.`
        : `${title}: ${lengthInWords(work.minutes)} of work.`,
    ...work,
    inHand: true,
    inTime: plannedInTime(book, id, outing, time, knows),
    leaves: 'nothing',
    of: { collection: 'jobs', id },
  };
}

/** Minutes of steps, and what must be waited for besides. */
export function workOf(
  steps: readonly (Pick<Step, 'minutes'> & { readonly waits: readonly Pick<WaitRecord, 'title' | 'law'>[] })[],
): Pick<Remedy, 'minutes' | 'waits'> {
  const waits = steps.flatMap((step) => step.waits.flatMap((wait) => waitInWords(wait)));
  return {
    minutes: steps.length === 0 ? null : steps.reduce((sum, { minutes }) => sum + minutes.likely, 0),
    waits: waits.length === 0 ? '' : `Then it waits: ${waits.join('; ')}.`,
  };
}

/** `Sealant skins, 24 h at 20 °C`; what never cures is waited for by nobody. */
function waitInWords({ title, law }: Pick<WaitRecord, 'title' | 'law'>): readonly string[] {
  switch (law.kind) {
    case 'never cures':
      return [];
    case 'set time':
      return [`${title}, ${lengthInWords(law.minutes)}`];
    case 'moisture':
      return [`${title}, ${lengthInWords((law.depth_mm / law.firstDay_mm) ** 2 * 1440)} at ${law.reference_C} °C`];
    default:
      return [`${title}, ${lengthInWords(law.atReference_min)} at ${law.reference_C} °C`];
  }
}
