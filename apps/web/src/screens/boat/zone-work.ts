/** What is to be pinned at each zone: its jury rigs and open jobs, the gravest first. */
import type { Book, Id } from '#boat-book';
import { seenFirst, standingRigs } from '#reckoning';
import type { Meaning } from '../../parts/mark.tsx';
import { openJobs } from '../../reading/open-work.ts';

export interface PinnedThing {
  readonly meaning: Meaning;
  readonly title: string;
}

export interface ZoneWork {
  readonly zone: Id;
  readonly things: readonly PinnedThing[];
  /** the meaning of the dot: nothing else is coloured */
  readonly dot: 'danger' | 'jury rig' | 'work';
  /** the gravest of the things */
  readonly gravest: Meaning;
}

export function workByZone(book: Book, today: string): readonly ZoneWork[] {
  const rigs = standingRigs(book, today);
  const jobs = openJobs(book);
  return Object.keys(book.zones).flatMap((zone): ZoneWork[] => {
    const things: PinnedThing[] = [
      ...rigs
        .filter(({ rig }) => rig.zone === zone)
        .map(
          (trust): PinnedThing => ({
            meaning: seenFirst(trust) ? 'danger' : 'jury rig',
            title: `${trust.rig.title}: jury rig`,
          }),
        ),
      ...jobs
        .filter(({ job }) => job.zone === zone)
        .map(({ job }): PinnedThing => ({ meaning: job.consequence, title: job.title })),
    ];
    if (things.length === 0) return [];
    const has = (meaning: Meaning) => things.some((thing) => thing.meaning === meaning);
    const dot = has('danger') ? 'danger' : has('jury rig') ? 'jury rig' : 'work';
    return [{ zone, things, dot, gravest: dot === 'work' ? (things[0]?.meaning ?? 'comfort') : dot }];
  });
}
