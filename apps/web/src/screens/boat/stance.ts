import type { Book } from '#boat-book';

/**
 * How she is drawn, from the set-ups called mast and board as they stand; null where she has none of that name, or
 * where the state's name says neither up nor down.
 */
export function stanceOf(book: Book): { readonly mastUp: boolean | null; readonly boardDown: boolean | null } {
  return {
    mastUp: standing(book, 'mast', /\bup\b|stepped|raised/i, /\bdown\b|lowered|unstepped|off\b/i),
    boardDown: standing(book, 'board', /\bdown\b|lowered/i, /\bup\b|housed|raised|removed|\bout\b/i),
  };
}

function standing(book: Book, name: string, yes: RegExp, no: RegExp): boolean | null {
  const setUp = Object.values(book.setUps).find((one) => new RegExp(`\\b${name}\\b`, 'i').test(one.name));
  const state = setUp?.states.find(({ id }) => id === setUp.now)?.name ?? '';
  if (no.test(state)) return false;
  return yes.test(state) ? true : null;
}
