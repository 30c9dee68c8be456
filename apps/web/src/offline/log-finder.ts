/** The search over the open book, in the Worker that holds it: built when first asked for, in pieces, and kept up after. */
import type { Book, RecordPatch } from '#boat-book';
import type { LogFound, LogQuery, LogSearch } from '#log';

export interface LogFinder {
  /** Finds in the book, which is read through first where it was not yet. */
  find(query: LogQuery): Promise<readonly LogFound[]>;
  changed(patches: readonly RecordPatch[]): void;
  /** Another book is open, or none. */
  forget(): void;
}

/** So many things at a time: an operation asked for meanwhile waits no longer than these take. */
const piece = 100;

/**
 * @param book   the open book as it stands; null: none
 * @param later  calls back after so many milliseconds
 */
export function logFinder(book: () => Book | null, later: (then: () => void, wait_ms: number) => void): LogFinder {
  let search: LogSearch | null = null;
  let building: Promise<void> | null = null;

  async function build(): Promise<void> {
    const { logSearch } = await import('#log');
    const now = book();
    if (now === null) return;
    const made = logSearch(now);
    // known from here on, so that changes made while it is built go to it too
    search = made;
    while (search === made && !made.build(piece)) await new Promise<void>((then) => later(then, 0));
  }

  return {
    async find(query) {
      building ??= build();
      await building;
      return search?.find(query) ?? [];
    },
    changed(patches) {
      const now = book();
      if (search !== null && now !== null && patches.length > 0) search.changed(now, patches);
    },
    forget() {
      search = null;
      building = null;
    },
  };
}
