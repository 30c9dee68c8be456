import type { Book } from '#boat-book';
import { assumedWilling, jobsByWeight, liesAt, standingWindow, windowInWords } from '#reckoning';
import { localAt } from '#units';

/** With no job day booked: the next hours that would suit each open job, the heaviest first. */
export function windowLines(book: Book, now: string): string[] {
  const at = Date.parse(now);
  const place = liesAt(book, at);
  const where = place === null ? undefined : book.places[place];
  if (where === undefined)
    return ['Add the place where she lies, and the next hours that would suit each job are shown.'];
  const today = localAt(at, where.timeZone).day;
  return [
    `The next hours that would suit each job, at ${where.name}, from ${assumedWilling.from} to ${assumedWilling.to} (our assumption), the heaviest first:`,
    ...jobsByWeight(book, today).flatMap((id) => {
      const window = standingWindow(book, id, { now, place, willing: assumedWilling });
      const { answer, before, also } = windowInWords(window, assumedWilling, today);
      return [`  ${window.title}`, ...[answer, ...before, ...also].map((line) => `    ${line}`)];
    }),
  ];
}
