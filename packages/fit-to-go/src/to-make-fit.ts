import type { Finding, Remedy } from './finding.ts';

/** One piece of work, with the findings it mends. */
export interface Mend extends Remedy {
  /** ids of the findings that stop her and that it mends */
  readonly mends: readonly string[];
}

/** A choice of work that leaves nothing that stops her. */
export interface LeastWork {
  readonly work: readonly Mend[];
  /** hands-on work of all of it as far as it is known, and of how many pieces it is not. [min] */
  readonly minutes: number;
  readonly notKnown: number;
  /** ids of what she then may still go only by: the conditions there are, and what a remedy leaves of what stopped her */
  readonly conditions: readonly string[];
}

/** One piece of work that mends several things is told once, by its words. What is in hand first, then the least of it. */
export function mendsOf(stops: readonly Finding[]): readonly Mend[] {
  const mends = new Map<string, Mend>();
  for (const { id, remedies } of stops)
    for (const remedy of remedies) {
      const known = mends.get(remedy.words);
      mends.set(remedy.words, {
        ...remedy,
        // where it leaves a condition of one of them, that is told
        leaves: known?.leaves === 'condition' ? 'condition' : remedy.leaves,
        mends: [...(known?.mends ?? []), id],
      });
    }
  return [...mends.values()].sort(
    (a, b) =>
      Number(b.inHand) - Number(a.inHand) ||
      (a.minutes ?? Number.MAX_SAFE_INTEGER) - (b.minutes ?? Number.MAX_SAFE_INTEGER),
  );
}

/**
 * Goes through the work from the least up and takes what mends something that nothing taken mends; then leaves away, from the
 * most down, what the rest of it mends as well.
 */
export function leastWork(
  stops: readonly Finding[],
  conditions: readonly Finding[],
  toMakeFit: readonly Mend[],
): LeastWork | null {
  if (stops.length === 0 || stops.some(({ remedies }) => remedies.length === 0)) return null;
  const mended = new Set<string>();
  let work: Mend[] = [];
  for (const mend of toMakeFit) {
    if (mend.mends.every((id) => mended.has(id))) continue;
    work.push(mend);
    for (const id of mend.mends) mended.add(id);
  }
  for (const mend of [...work].reverse()) {
    const rest = work.filter((other) => other !== mend);
    if (mend.mends.every((id) => rest.some((other) => other.mends.includes(id)))) work = rest;
  }
  const left = stops.filter(({ id }) => !work.some(({ mends, leaves }) => leaves === 'nothing' && mends.includes(id)));
  return {
    work,
    minutes: work.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
    notKnown: work.filter(({ minutes }) => minutes === null).length,
    conditions: [...left, ...conditions].map(({ id }) => id),
  };
}
