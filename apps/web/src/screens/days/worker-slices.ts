/** How the planner's Worker goes about long work: in slices, between which it hears a stop or a newer request. */
import type { Book } from '#boat-book';
import type { Outcome, Problem } from '#workplan';
import type { PlanTelling } from './plan-report.ts';

/** between two slices the Worker hears a stop. [ms] */
const slice_ms = 30;

/** How many iterations take about one slice, going by how long the last ones took. */
export function nextSlice(iterations: number, took_ms: number): number {
  const fitting = (iterations * slice_ms) / Math.max(took_ms, 0.1);
  return Math.max(1, Math.min(Math.round(fitting), iterations * 4, 100_000));
}

let restsUntil_ms = 0;

/** Has the Worker do nothing for so long: the page has something to answer, on a device with few cores. 0: on at once. */
export function rest(for_ms: number): void {
  restsUntil_ms = performance.now() + for_ms;
}

/** Lets messages in: a stop, a newer request, or a rest. */
export async function breath(): Promise<void> {
  await new Promise<void>((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      channel.port1.close();
      resolve();
    };
    channel.port2.postMessage(null);
  });
  while (performance.now() < restsUntil_ms) await new Promise((later) => setTimeout(later, 25));
}

/** What is worked out of a plan once it has settled: of what, and whom to tell. */
export interface SettledPlan {
  readonly book: Book;
  readonly problem: Problem;
  readonly outcome: Outcome;
  readonly seed: number;
  /** the keeper ended the search */
  readonly stopped: boolean;
  readonly tell: (telling: PlanTelling) => void;
  /** false once a newer request has come: then nothing more is told */
  readonly isCurrent: () => boolean;
}
