import type { PlainCase } from './plain-case.ts';

/** A bound from below on the finish of the plain case: the longest chain, and the work of each resource. */
export function finishBound(plain: PlainCase): number {
  const { count, duration, resources, capacity, request, beforeFrom, before } = plain;
  const head = new Int32Array(count);
  let longest = 0;
  for (let i = 0; i < count; i++) {
    for (let b = beforeFrom[i]!; b < beforeFrom[i + 1]!; b++)
      head[i] = Math.max(head[i]!, head[before[b]!]! + duration[before[b]!]!);
    longest = Math.max(longest, head[i]! + duration[i]!);
  }
  for (let k = 0; k < resources; k++) {
    let work = 0;
    for (let i = 0; i < count; i++) work += duration[i]! * request[i * resources + k]!;
    if (capacity[k]! > 0) longest = Math.max(longest, Math.ceil(work / capacity[k]!));
  }
  return longest;
}
