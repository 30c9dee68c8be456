/** What of the rig a job is about. */
import type { Book, Id, Job } from '#boat-book';

/** A page of the rig, by its words in the address after `loads`. */
export interface RigPage {
  readonly name: string;
  readonly at: readonly string[];
}

/**
 * The stays that the job's title names; where it is, those it says most words of. And the mast, where an open step of it
 * wants the mast otherwise than it stands. Words of three letters and fewer say nothing.
 */
export function rigOfJob(
  book: Pick<Book, 'stays' | 'masts' | 'setUps' | 'steps'>,
  { id, job }: { readonly id: Id; readonly job: Pick<Job, 'title' | 'zone'> },
): readonly RigPage[] {
  const said = wordsOf(job.title);
  const stays = Object.entries(book.stays).map(([stay, { name, zone }]) => ({
    stay,
    name,
    named: job.title.toLowerCase().includes(name.toLowerCase()),
    words: job.zone !== null && zone === job.zone ? [...wordsOf(name)].filter((word) => said.has(word)).length : 0,
  }));
  const most = Math.max(1, ...stays.map(({ words }) => words));
  const anyNamed = stays.some(({ named }) => named);
  return [
    ...stays
      .filter(({ named, words }) => named || (!anyNamed && words === most))
      .map(({ stay, name }) => ({ name, at: ['stays', stay] })),
    ...(Object.keys(book.masts).length > 0 && movesMast(book, id) ? [{ name: 'Mast up and down', at: ['mast'] }] : []),
  ];
}

function movesMast({ setUps, steps }: Pick<Book, 'setUps' | 'steps'>, job: Id): boolean {
  return Object.values(steps).some(
    (step) =>
      step.job === job &&
      step.progress.kind !== 'done' &&
      step.setUps.some(({ setUp, states }) => {
        const of = setUps[setUp];
        return of !== undefined && /\bmast\b/i.test(of.name) && !states.includes(of.now);
      }),
  );
}

const wordsOf = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(/\p{L}{4,}/gu) ?? []);
