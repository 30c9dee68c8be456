/** Everything a book tells of one fitting: the page one wants open before taking it off. */
import { type Book, type Id, type Job, type JuryRig, type LogEntry, type PaperRecord, standingLog } from '#boat-book';

export interface FittingStory {
  /** what the last entry that says so was bedded with, and when; what the fitting itself says where none does */
  readonly bedded: { readonly with: string; readonly at: string | null } | null;
  /** what the fitting itself says of its bedding, where that is something else */
  readonly saidOfBedding: string | null;
  /** standing entries about it, newest first */
  readonly entries: readonly (readonly [Id, LogEntry])[];
  /** open first, then as they were closed, latest first */
  readonly jobs: readonly (readonly [Id, Job])[];
  readonly rigs: readonly (readonly [Id, JuryRig])[];
  readonly papers: readonly (readonly [Id, PaperRecord])[];
  readonly photos: readonly (readonly [Id, Book['photos'][string]])[];
  /** one a currency, as it was spent on it */
  readonly costs: readonly { readonly currency: string; readonly amount: number }[];
  /** hands-on minutes that were written down */
  readonly spent_min: number;
}

/** The story of a fitting; null where there is no such fitting. */
export function fittingStory(book: Book, fitting: Id): FittingStory | null {
  const record = book.fittings[fitting];
  if (record === undefined) return null;
  const jobs = Object.entries(book.jobs).filter(([, job]) => job.fitting === fitting);
  const jobIds = new Set(jobs.map(([id]) => id));
  const ofIt = (about: { readonly fitting?: Id | null; readonly job: Id | null }): boolean =>
    about.fitting === fitting || (about.job !== null && jobIds.has(about.job));
  const entries = [...standingLog(book.log)].filter(([, entry]) => ofIt(entry)).sort(latestFirst);
  const entryIds = new Set(entries.map(([id]) => id));
  const shown = new Set(entries.flatMap(([, { photos = [] }]) => photos));
  const bedding = entries.find(([, { kind, with: used }]) => kind === 'bedded' && (used ?? []).length > 0)?.[1];
  const beddedWith = (bedding?.with ?? []).map(({ name }) => name).join(', ') || record.beddedWith;
  const costs = new Map<string, number>();
  let spent_min = 0;
  for (const [, { cost, spent_min: spent }] of entries) {
    spent_min += spent ?? 0;
    if (cost !== undefined) costs.set(cost.currency, (costs.get(cost.currency) ?? 0) + cost.amount);
  }
  return {
    bedded: beddedWith === '' ? null : { with: beddedWith, at: bedding?.at ?? null },
    saidOfBedding: record.beddedWith === '' || record.beddedWith === beddedWith ? null : record.beddedWith,
    entries,
    jobs: jobs.sort(([, a], [, b]) => (closedOf(a) < closedOf(b) ? 1 : -1)),
    rigs: Object.entries(book.juryRigs).filter(([, rig]) => rig.job !== null && jobIds.has(rig.job)),
    papers: Object.entries(book.papers).filter(([, paper]) => ofIt(paper)),
    photos: Object.entries(book.photos)
      .filter(([id, photo]) => ofIt(photo) || shown.has(id) || (photo.entry !== null && entryIds.has(photo.entry)))
      .sort(([, a], [, b]) => (a.taken < b.taken ? -1 : 1)),
    costs: [...costs].map(([currency, amount]) => ({ currency, amount: Math.round(amount * 100) / 100 })),
    spent_min,
  };
}

const closedOf = (job: Job): string => job.closed ?? '9999';

function latestFirst([, a]: readonly [Id, LogEntry], [, b]: readonly [Id, LogEntry]): number {
  return a.at < b.at ? 1 : a.at > b.at ? -1 : (b.order ?? 0) - (a.order ?? 0);
}
