/** How far the search is, once it has run for a second, and the button that ends it. */
import type { PlanInHand } from './planner.ts';
import { stopPlanning } from './planner.ts';

/** a search shorter than this is not worth a word. [ms] */
const worthAWord_ms = 1000;

export function PlanProgress({ inHand }: { readonly inHand: PlanInHand }) {
  const { state, progress } = inHand;
  if (state !== 'planning' || !progress || progress.elapsed_ms < worthAWord_ms) return null;
  const seconds = Math.floor(progress.elapsed_ms / 1000);
  return (
    <div className="days-progress">
      <p>
        Looking for a better plan: {seconds} s, {progress.iterations.toLocaleString('en-GB')} tries.{' '}
        {progress.weight === null
          ? 'No whole plan yet.'
          : `The plan so far does ${share(progress.weight, progress.bound)} of the most that can be hoped for.`}
      </p>
      <button type="button" onClick={stopPlanning}>
        Stop and keep this
      </button>
    </div>
  );
}

/** Weight done of the bound, as a share rounded down. */
function share(weight: number, bound: number): string {
  return bound <= 0 ? 'all' : `${Math.floor((weight / bound) * 1000) / 10} %`;
}
