/** The load paths that a job is about, and what else is worked out of the loads it is about. */
import type { Book, Id, LoadPathRecord } from '#boat-book';

/** A page under Boat, Loads: its name, and the words of its address after `loads`. */
interface LoadsPage {
  readonly name: string;
  readonly at: readonly string[];
}

type Loads = Pick<Book, 'loadPaths' | 'boardHoists' | 'rodes'>;

/** The pages beside the load paths: what is in the book for each, and what a job about it says. */
const pages: readonly { readonly page: LoadsPage; readonly of: keyof Loads; readonly says: RegExp }[] = [
  {
    page: { name: 'The board’s hoist', at: ['hoist'] },
    of: 'boardHoists',
    says: /\b(hoist|winch|pendant)|\bboard\b.*\bwire\b|\bwire\b.*\bboard\b/i,
  },
  { page: { name: 'Ground tackle', at: ['rode'] }, of: 'rodes', says: /\b(anchor|rode|kedge)\b/i },
];

/**
 * The load paths whose name the job's title says; and of those where the job is, those whose name or parts it says a word of.
 * Words of three letters and fewer, and sizes, say nothing. Then the pages of what its title is about, where the book has any.
 */
export function loadsOfJob(
  loads: Loads,
  { title, zone }: { readonly title: string; readonly zone: Id | null },
): readonly LoadsPage[] {
  const said = wordsOf(title);
  const paths = Object.entries(loads.loadPaths)
    .filter(
      ([, path]) =>
        title.toLowerCase().includes(path.name.toLowerCase()) ||
        (zone !== null && path.zone === zone && namesIn(path).some((word) => said.has(word))),
    )
    .map(([id, { name }]): LoadsPage => ({ name, at: ['path', id] }));
  const others = pages.filter(({ of, says }) => says.test(title) && Object.keys(loads[of]).length > 0);
  return [...paths, ...others.map(({ page }) => page)];
}

const namesIn = ({ name, parts }: LoadPathRecord): readonly string[] => [
  ...wordsOf([name, ...parts.flatMap((part) => [part.name, part.kind])].join(' ')),
];

const wordsOf = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(/\p{L}{4,}/gu) ?? []);
