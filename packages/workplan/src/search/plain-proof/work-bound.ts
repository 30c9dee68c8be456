import type { ProofCase } from './proof-case.ts';

/**
 * A bound from below on the finish, from how much work there is: what cannot start before minute a and has a chain of
 * b minutes behind it must fit, on each resource, between a and b minutes before the end.
 *
 * @param head  soonest start of each activity
 * @param tail  the longest chain behind each activity, its own time not counted
 */
export function workBound(
  plain: ProofCase,
  duration: Int32Array,
  head: ArrayLike<number>,
  tail: ArrayLike<number>,
): number {
  const { count, resources, capacity, request } = plain;
  const byTail = Array.from({ length: count }, (_, i) => i).sort((i, j) => tail[j]! - tail[i]!);
  const heads = new Set(byTail.map((i) => head[i]!));
  const work = new Float64Array(resources);
  let bound = 0;
  for (const a of heads) {
    work.fill(0);
    for (const i of byTail) {
      if (head[i]! < a || duration[i] === 0) continue;
      for (let k = 0; k < resources; k++) {
        if (capacity[k] === 0) continue;
        work[k]! += duration[i]! * request[i * resources + k]!;
        if (work[k]! > 0) bound = Math.max(bound, a + tail[i]! + Math.ceil(work[k]! / capacity[k]!));
      }
    }
  }
  return bound;
}
