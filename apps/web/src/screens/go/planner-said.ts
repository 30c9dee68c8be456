/** The plan in hand as the answer takes it: what is left out and why, the odds, or why there is nothing to plan. */
import type { PlannerKnows } from '#reckoning';
import type { PlanInHand } from '../days/planner.ts';

/** null: it has not got so far yet */
export function plannerSaid({ state, picture, reasons, odds, words }: PlanInHand): PlannerKnows | null {
  if (state === 'nothing to plan' || state === 'failed')
    return { leftOut: {}, odds: null, nothing: words ?? 'no plan could be made' };
  if (picture === null) return null;
  return {
    leftOut: Object.fromEntries(
      picture.leftOut.map(({ job, reasons: why }) => {
        const way = reasons?.ways.find((each) => each.job === job)?.ways[0]?.words;
        return [job, { why: why[0]?.why ?? 'The plan leaves it out.', gain: way ?? why[0]?.gain ?? null }];
      }),
    ),
    odds,
    nothing: null,
  };
}

/** How far the planner is, for the line under the answer; null: it is done. */
export function plannerAtWork({ state, odds, progress }: PlanInHand): string | null {
  switch (state) {
    case 'none':
    case 'planning':
      return progress === null
        ? 'The plan is being made.'
        : `The plan is being made: ${Math.floor(progress.elapsed_ms / 1000)} s.`;
    case 'settled':
    case 'stopped':
      return odds === null ? 'The odds of the plan are being worked out.' : null;
    default:
      return null;
  }
}
