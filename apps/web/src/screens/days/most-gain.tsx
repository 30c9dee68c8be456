/** The one change that would gain most, and how far the looking for reasons is. */
import type { Book } from '#boat-book';
import type { Problem } from '#workplan';
import { ChangeLine } from './change-line.tsx';
import type { PlanReasons } from './plan-report.ts';

export function MostGain({
  reasons,
  problem,
  book,
  readOnly,
}: {
  readonly reasons: PlanReasons | null;
  readonly problem: Problem;
  readonly book: Book;
  readonly readOnly: boolean;
}) {
  if (reasons === null) return null;
  if (reasons.gain === null) {
    if (!reasons.finished || reasons.ways.length === 0) return null;
    return (
      <section className="days-most">
        <h2>What would gain most</h2>
        <p>No single change that was looked at would let more be done.</p>
      </section>
    );
  }
  return (
    <section className="days-most">
      <h2>What would gain most</h2>
      <ChangeLine change={reasons.gain} problem={problem} book={book} readOnly={readOnly} />
    </section>
  );
}

/** `Looking for what would let them in: 3 of 6 looked at.`; empty once all is known. */
export function ReasonsProgress({
  reasons,
  settled,
}: {
  readonly reasons: PlanReasons | null;
  readonly settled: boolean;
}) {
  const words = reasonsProgress(reasons, settled);
  return (
    <p className="small soft days-looking" role="status">
      {words}
    </p>
  );
}

function reasonsProgress(reasons: PlanReasons | null, settled: boolean): string {
  if (!settled) return 'What would let them in is looked for once the plan has settled.';
  if (reasons === null) return 'Looking for what would let them in.';
  return reasons.finished ? '' : `Looking for what would let them in: ${reasons.done} of ${reasons.of} parts done.`;
}
