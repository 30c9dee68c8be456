/** How bad a finding is, as its mark says it; and several of them, counted. */
import type { Book } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { listInWords } from '../../parts/in-words.ts';
import type { Meaning } from '../../parts/mark.tsx';

export interface FindingMark {
  readonly of: Meaning;
  readonly said: string;
}

export function findingMark(book: Book, { bearing, subject, of }: Finding): FindingMark {
  if (bearing === 'sound') return { of: 'go', said: 'looked at' };
  if (subject === 'jury rigs')
    return bearing === 'stops'
      ? { of: 'danger', said: 'not to be trusted for this' }
      : { of: 'jury rig', said: 'jury rig' };
  const consequence =
    of?.collection === 'jobs'
      ? book.jobs[of.id]?.consequence
      : of?.collection === 'dues'
        ? book.dues[of.id]?.consequence
        : undefined;
  if (consequence) return { of: consequence, said: consequence };
  return bearing === 'stops' ? { of: 'stops-sailing', said: 'stops her' } : { of: 'worsens', said: 'condition' };
}

/** The worst first; what is as bad keeps its place. */
const gravest: readonly Meaning[] = ['danger', 'unlawful', 'stops-sailing', 'jury rig', 'worsens', 'comfort', 'go'];
const counted: Readonly<Record<Meaning, readonly [string, string]>> = {
  danger: ['is a danger', 'are dangers'],
  unlawful: ['is unlawful', 'are unlawful'],
  'stops-sailing': ['stops her', 'stop her'],
  'jury rig': ['is a jury rig', 'are jury rigs'],
  worsens: ['is a condition', 'are conditions'],
  comfort: ['is for comfort', 'are for comfort'],
  go: ['is sound', 'are sound'],
  wait: ['waits', 'wait'],
};

export const worstFirst = (book: Book, findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted((a, b) => gravest.indexOf(findingMark(book, a).of) - gravest.indexOf(findingMark(book, b).of));

/** `12 more: 3 are dangers, 2 are unlawful and 7 stop her` */
export function moreInWords(book: Book, findings: readonly Finding[]): string {
  const marks = findings.map((finding) => findingMark(book, finding).of);
  const parts = gravest.flatMap((mark) => {
    const count = marks.filter((each) => each === mark).length;
    return count === 0 ? [] : [`${count} ${counted[mark][count === 1 ? 0 : 1]}`];
  });
  return `${findings.length} more: ${listInWords(parts)}`;
}
