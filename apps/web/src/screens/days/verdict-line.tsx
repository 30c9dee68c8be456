import type { PlanPicture } from './plan-report.ts';

/** How good the plan is, in a sentence, with its mark. */
export function VerdictLine({ picture, settled }: { readonly picture: PlanPicture; readonly settled: boolean }) {
  const { kind } = picture.outcome.verdict;
  return (
    <div className="days-verdict" role="status">
      <p>
        {settled && kind === 'proved best' && <span className="days-go">✓ </span>}
        {kind === 'impossible, because' && <span className="days-danger">▲ </span>}
        {picture.verdict}
      </p>
    </div>
  );
}
