/** Over the plan: how much there is to get and what is to be ordered first. */
import type { Book } from '#boat-book';
import { toGet, toGetAtAGlance } from '#reckoning';
import { todayAt, zoneOf } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';
import type { PlanInHand } from './planner.ts';

export function ToGetLine({ book, inHand }: { readonly book: Book; readonly inHand: PlanInHand }) {
  const { problem, picture } = inHand;
  if (problem === null || picture === null) return null;
  const lines = toGet(book, {
    planned: { problem, outcome: picture.outcome },
    now: Date.now(),
    timeZone: zoneOf(book),
  });
  const words = toGetAtAGlance(lines, todayAt(book));
  if (words === null) return null;
  return (
    <p className="days-to-get">
      {lines.some(({ late }) => late !== null) && <span className="days-danger">▲ </span>}
      {words}{' '}
      <a className="no-print" href={address('stores')}>
        See what and for what
      </a>
    </p>
  );
}
