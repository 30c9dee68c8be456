import type { Book } from '#boat-book';
import { localMinute, toGet, toGetAtAGlance, toGetInWords, toGetName } from '#reckoning';
import type { Outcome, Problem } from '#workplan';

/** What is to be got, by when and to be ordered by when, a line a thing; empty where all is on hand. */
export function toGetLines(outcome: Outcome, problem: Problem, book: Book): string[] {
  const now = Date.parse(problem.startsAt) + problem.now * 60_000;
  const lines = toGet(book, { planned: { outcome, problem }, now, timeZone: problem.timeZone });
  const today = localMinute(problem.now, problem).day;
  const atAGlance = toGetAtAGlance(lines, today);
  if (atAGlance === null) return [];
  return [
    `To get. ${atAGlance}`,
    ...lines.flatMap((line) => {
      const { need, how } = toGetInWords(line, today);
      const because = line.because === null ? [] : [`    ${line.because}`];
      return [`  ${toGetName(line)}, ${need}`, ...because, `    ${how}`];
    }),
  ];
}
