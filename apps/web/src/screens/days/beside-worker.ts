/** The search beside the planner's, in a Worker of its own: it looks until it is told to end, and says each better plan. */
import { SearchBeside, type ToldBeside } from '#workplan';
import { breath, nextSlice, rest } from './worker-slices.ts';

/** What the planner says to it: what the search is to hear, and when a finger is down. */
export type SaidToBeside = ToldBeside | { readonly kind: 'rest'; readonly for_ms: number };

const beside = new SearchBeside((found) => postMessage(found));
let isLooking = false;

addEventListener('message', ({ data }: MessageEvent<SaidToBeside>) => {
  if (data.kind === 'rest') {
    rest(data.for_ms);
    return;
  }
  beside.hear(data);
  // a fault is told as any other of a Worker: the planner goes on without this one
  if (data.kind === 'begin' && !isLooking) look().catch(reportError);
});

async function look(): Promise<void> {
  isLooking = true;
  let iterations = 1;
  for (;;) {
    const began = performance.now();
    if (!beside.advance(iterations)) break;
    iterations = nextSlice(iterations, performance.now() - began);
    await breath();
  }
  isLooking = false;
}
