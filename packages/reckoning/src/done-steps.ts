import type { Book, Id, Step } from '#boat-book';
import type { PlanHour } from '#workplan';
import { type Link, type LinkedStep, waitsOver } from './plan-steps.ts';

const msInMinute = 60_000;
const msInHour = 3_600_000;
const msInDay = 86_400_000;

/** How far back a plan looks for a finished step whose wait still runs or whose recoat window still counts. */
export const lookBackDays = 60;

export interface DoneStep {
  readonly id: Id;
  readonly record: Step;
  /** epoch ms */
  readonly started: number;
  readonly finished: number;
  /** a wait of it is not over at now */
  readonly waiting: boolean;
  /** an open step may only start within some time of it */
  readonly timed: boolean;
}

/**
 * The finished steps of the book that may still matter: those finished in the last 60 days.
 *
 * @param open     the open and begun steps that are to be planned, with what they wait for
 * @param hoursOf  the weather of so many hours from an instant on a whole hour
 */
export function doneStepsThatMatter(
  book: Book,
  open: readonly LinkedStep[],
  nowMs: number,
  hoursOf: (fromMs: number, count: number) => readonly PlanHour[],
): DoneStep[] {
  const timedBefore = new Set(
    open.flatMap((step) => step.links.filter((link) => link.greatest_min !== null).map((link) => link.before)),
  );
  const done: DoneStep[] = [];
  for (const [id, record] of Object.entries(book.steps)) {
    const progress = record.progress;
    if (progress.kind !== 'done') continue;
    // a device's clock may run ahead: nothing is finished after now
    const finished = Math.min(Date.parse(progress.finished), nowMs);
    const started = Math.min(Date.parse(progress.started), finished - msInMinute);
    if (finished < nowMs - lookBackDays * msInDay) continue;
    done.push({ id, record, started, finished, timed: timedBefore.has(id), waiting: false });
  }
  const waited = done.filter((step) => step.record.waits.length > 0);
  if (waited.length === 0) return done;
  const first = Math.floor(Math.min(...waited.map((step) => step.finished)) / msInHour) * msInHour;
  const hours = hoursOf(first, Math.ceil((nowMs - first) / msInHour) + 1);
  return done.map((step) => {
    if (step.record.waits.length === 0) return step;
    const over = waitsOver(step.record.waits, hours, Math.ceil((step.finished - first) / msInMinute));
    return { ...step, waiting: over === null || first + over * msInMinute > nowMs };
  });
}

/**
 * A link from a finished step that lies before the plan's first minute, rewritten so that the step may stand as
 * done in minute 0 to 1: what is left of its lags counts from there. Null where nothing is left to keep to.
 *
 * @param over_min  when the step, or its wait, was over, in minutes after the plan's first. ≤ 0
 */
export function linkFromBefore(link: Link, over_min: number): Link | null {
  const least_min = Math.max(0, over_min + link.least_min - 1);
  if (link.greatest_min === null && least_min === 0) return null;
  return {
    ...link,
    wait: null,
    least_min,
    greatest_min: link.greatest_min === null ? null : Math.max(0, over_min + link.greatest_min - 1),
  };
}
