import type { PlanPicture } from './plan-report.ts';

/** How good the plan is, in a sentence, with its mark. */
export function VerdictLine({ picture }: { readonly picture: PlanPicture }) {
  const { kind } = picture.outcome.verdict;
  return (
    <div className="days-verdict" role="status">
      <p>
        {kind === 'proved best' && <span className="days-go">✓ </span>}
        {kind === 'impossible, because' && <span className="days-danger">▲ </span>}
        {picture.verdict}
      </p>
    </div>
  );
}
