/** Steps or jobs that wait for each other round in a ring, so that none of them could ever begin. */
import type { Id, Job, Step } from './records.ts';

/** The first ring found, each named once in the order it waits; null where there is none. */
export function firstRing(waitsFor: ReadonlyMap<Id, Iterable<Id>>): readonly Id[] | null {
  const over = new Set<Id>();
  for (const start of waitsFor.keys()) {
    // a walk kept in our own list: a long chain must not run out of call stack
    const path: { readonly id: Id; readonly rest: Iterator<Id> }[] = [];
    const onPath = new Set<Id>();
    const enter = (id: Id): void => {
      onPath.add(id);
      path.push({ id, rest: (waitsFor.get(id) ?? [])[Symbol.iterator]() });
    };
    if (!over.has(start)) enter(start);
    while (path.length > 0) {
      const { id, rest } = path.at(-1)!;
      const next = rest.next();
      if (next.done) {
        path.pop();
        onPath.delete(id);
        over.add(id);
      } else if (onPath.has(next.value)) {
        return path.map((one) => one.id).slice(path.findIndex((one) => one.id === next.value));
      } else if (!over.has(next.value)) enter(next.value);
    }
  }
  return null;
}

/** What each open step waits for: what it follows, or else the step before it in its job; and the jobs before its own. */
export function waitsOf(steps: Iterable<[Id, Step]>, jobs: Iterable<[Id, Job]>): Map<Id, Set<Id>> {
  const jobsById = new Map(jobs);
  const ofJob = new Map<Id, [Id, Step][]>();
  for (const entry of steps) ofJob.set(entry[1].job, [...(ofJob.get(entry[1].job) ?? []), entry]);
  const waits = new Map<Id, Set<Id>>();
  for (const [jobId, list] of ofJob) {
    list.sort(byOrder);
    list.forEach(([id, step], i) => {
      const before =
        step.follows === null ? list.slice(Math.max(0, i - 1), i).map(([one]) => one) : step.follows.map((f) => f.step);
      const earlier = (jobsById.get(jobId)?.afterJobs ?? []).flatMap((job) =>
        (ofJob.get(job) ?? []).map(([one]) => one),
      );
      waits.set(id, new Set([...before, ...earlier]));
    });
  }
  return waits;
}

/** Steps of a job in the order they are done. */
export function byOrder([idA, a]: readonly [Id, Step], [idB, b]: readonly [Id, Step]): number {
  return a.order - b.order || (idA < idB ? -1 : 1);
}
