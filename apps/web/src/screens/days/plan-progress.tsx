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
          : `The plan below does ${round(progress.weight)} of at most ${round(progress.bound)} in weight.`}
      </p>
      <button type="button" onClick={stopPlanning}>
        Stop and keep this
      </button>
    </div>
  );
}

const round = (weight: number) => String(Math.round(weight * 10) / 10);
