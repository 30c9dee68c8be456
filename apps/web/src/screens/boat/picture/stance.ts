/** How she stands, as the book has it, and how she is drawn by that. */
import type { Book, Id } from '#boat-book';
import type { Stance } from '#picture';

/** null: she has no set-up of that name, or the name of its state says neither */
interface Standing {
  readonly mastUp: boolean | null;
  readonly board: Stance['board'] | null;
  readonly coverOn: boolean | null;
  /** true: she is on her trailer; null: nobody said */
  readonly onTrailer: boolean | null;
}

/** How she stands, from the set-ups called mast, board (or keel), cover and boat. */
export function standingOf(book: Book): Standing {
  const mast = stateOf(book, /\bmast\b/i);
  const board = stateOf(book, /\b(board|keel|centreboard|centerboard|daggerboard)\b/i);
  const cover = stateOf(book, /\b(cover|tent|tarpaulin)\b/i);
  const boat = stateOf(book, /\b(boat|trailer|afloat)\b/i);
  return {
    mastUp: said(mast, /\bup\b|stepped|raised/i, /\bdown\b|lowered|unstepped|off\b/i),
    board:
      board === null
        ? null
        : /removed|taken out|\bout\b/i.test(board)
          ? 'removed'
          : /\bdown\b|lowered/i.test(board)
            ? 'down'
            : /\bup\b|housed|raised/i.test(board)
              ? 'up'
              : null,
    coverOn: said(cover, /\bon\b/i, /\boff\b|\bopen\b/i),
    onTrailer: said(boat, /trailer/i, /afloat|water|mooring|berth|propped|off\b/i),
  };
}

/** As she is drawn where nothing is said: rigged, board up, cover off. */
export function stanceOf(book: Book): Stance {
  const { mastUp, board, coverOn } = standingOf(book);
  return { mastUp: mastUp ?? true, board: board ?? 'up', coverOn: coverOn ?? false };
}

function stateOf(book: Book, name: RegExp): string | null {
  const setUp = Object.values(book.setUps).find((one) => name.test(one.name));
  return setUp?.states.find(({ id }: { readonly id: Id }) => id === setUp.now)?.name ?? null;
}

function said(state: string | null, yes: RegExp, no: RegExp): boolean | null {
  if (state === null || no.test(state)) return state === null ? null : false;
  return yes.test(state) ? true : null;
}
