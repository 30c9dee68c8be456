/** Where a thing is kept, in words, and the places there are in the order they stand inside each other. */
import type { Book, Id, Stowage } from '#boat-book';

/** A place and the places it is in, the outermost first; empty where it is none. Places inside each other end it. */
export function stowagePath(stowages: Book['stowages'], id: Id | null | undefined): readonly Stowage[] {
  const path: Stowage[] = [];
  const seen = new Set<Id>();
  for (let at = id ?? null; at !== null && !seen.has(at); ) {
    seen.add(at);
    const stowage = stowages[at];
    if (stowage === undefined) break;
    path.unshift(stowage);
    at = stowage.within;
  }
  return path;
}

interface Kept {
  readonly keptAt: string;
  readonly stowage?: Id | null;
}

/** `garage, shelf 2, behind the oars`; null: no place is written down. */
export function keptInWords(stowages: Book['stowages'], { stowage, keptAt }: Kept): string | null {
  const words = [...stowagePath(stowages, stowage).map(({ name }) => name), keptAt.trim()].filter(
    (each) => each !== '',
  );
  return words.length === 0 ? null : words.join(', ');
}

/** Whether it is kept on board; null: not known, no place of the list is said. */
export function keptAboard(stowages: Book['stowages'], { stowage }: Kept): boolean | null {
  return stowagePath(stowages, stowage)[0]?.aboard ?? null;
}

export interface StowageInOrder {
  readonly id: Id;
  readonly stowage: Stowage;
  /** how many places it is in; 0: in none */
  readonly depth: number;
}

/** Every place once, what is on board first, each after the one it is in, by name. */
export function stowagesInOrder(stowages: Book['stowages']): readonly StowageInOrder[] {
  const inside = new Map<Id | null, [Id, Stowage][]>();
  for (const entry of Object.entries(stowages)) {
    // a place in one that is gone stands by itself
    const within = entry[1].within !== null && stowages[entry[1].within] !== undefined ? entry[1].within : null;
    inside.set(within, [...(inside.get(within) ?? []), entry]);
  }
  const found: StowageInOrder[] = [];
  const seen = new Set<Id>();
  const walk = (within: Id | null, depth: number) => {
    const here = (inside.get(within) ?? []).sort(
      ([, a], [, b]) => Number(b.aboard) - Number(a.aboard) || a.name.localeCompare(b.name),
    );
    for (const [id, stowage] of here) {
      if (seen.has(id)) continue;
      seen.add(id);
      found.push({ id, stowage, depth });
      walk(id, depth + 1);
    }
  };
  walk(null, 0);
  // two devices can bring places inside each other about: they still stand in the list
  for (const [id, stowage] of Object.entries(stowages)) if (!seen.has(id)) found.push({ id, stowage, depth: 0 });
  return found;
}

/** The place of the list that words name: its own name, or its whole path; null: none. */
export function stowageNamed(stowages: Book['stowages'], words: string): Id | null {
  const said = plain(words);
  if (said === '') return null;
  const found = Object.entries(stowages).find(
    ([id, { name }]) =>
      plain(name) === said ||
      plain(
        stowagePath(stowages, id)
          .map((each) => each.name)
          .join(' '),
      ) === said,
  );
  return found?.[0] ?? null;
}

const plain = (words: string) => (words.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).join(' ');
