import type { Book, Id } from '#boat-book';
import { powerTold } from '#reckoning';

/**
 * One battery as it is printed, in the sentences that the app tells.
 *
 * @param now     epoch ms
 * @param nights  nights looked at from now. 1–7
 * @param withWorking  how the figures are worked out goes below
 */
export function powerLines(book: Book, id: Id, now: number, nights: number, withWorking: boolean): string[] {
  const told = powerTold(book, id, now, nights);
  if (told === null) return [`There is no battery '${id}' in the book.`];
  const part = (title: string, lines: readonly string[]) => ['', title, ...lines.map((line) => `  ${line}`)];
  return [
    told.label,
    ...told.full.map((line) => `  ${line}`),
    ...told.parts.flatMap(({ title, lines }) => part(title, lines)),
    ...part('Take care', told.cautions),
    ...(withWorking ? told.working.flatMap(({ title, lines }) => part(title, lines)) : []),
  ];
}
