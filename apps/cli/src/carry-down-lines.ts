import type { Book } from '#boat-book';
import { carriedInWords, carryDown, localMinute } from '#reckoning';
import type { Outcome, Problem, ProblemDay } from '#workplan';

/** What a job day touches, in order of first use, a line a place; empty where it touches nothing. */
export function carryDownLines({ plan }: Outcome, problem: Problem, book: Book, day: ProblemDay): string[] {
  const stops = carryDown(problem, plan, book, day);
  if (stops.length === 0) return [];
  const today = localMinute(problem.now, problem).day;
  return [
    '  Carry down, in order of use:',
    ...stops.flatMap(({ keptAt, things }) => [
      `    ${keptAt ?? 'place not written down'}`,
      ...things.map((thing) => {
        const { name, about } = carriedInWords(thing, problem, today);
        return `      ${name}: ${about}`;
      }),
    ]),
  ];
}
