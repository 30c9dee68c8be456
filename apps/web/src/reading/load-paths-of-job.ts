/** The load paths that a job is about. */
import type { Book, Id, LoadPathRecord } from '#boat-book';

/**
 * Those whose name the job's title says; and of those where the job is, those whose name or parts it says a word of. Words of
 * three letters and fewer, and sizes, say nothing.
 */
export function loadPathsOfJob(
  { loadPaths }: Pick<Book, 'loadPaths'>,
  { title, zone }: { readonly title: string; readonly zone: Id | null },
): readonly { readonly id: Id; readonly name: string }[] {
  const said = wordsOf(title);
  return Object.entries(loadPaths)
    .filter(
      ([, path]) =>
        title.toLowerCase().includes(path.name.toLowerCase()) ||
        (zone !== null && path.zone === zone && namesIn(path).some((word) => said.has(word))),
    )
    .map(([id, { name }]) => ({ id, name }));
}

const namesIn = ({ name, parts }: LoadPathRecord): readonly string[] => [
  ...wordsOf([name, ...parts.flatMap((part) => [part.name, part.kind])].join(' ')),
];

const wordsOf = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(/\p{L}{4,}/gu) ?? []);
