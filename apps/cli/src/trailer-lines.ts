import type { Book, Id } from '#boat-book';
import { trailerTold } from '#reckoning';

const gravityInWords = {
  danger: 'DANGER',
  unlawful: 'NOT ALLOWED',
  worsens: 'to see to',
  unknown: 'not looked at',
} as const;

/**
 * One trailer as it is printed, in the sentences that the app tells.
 *
 * @param today  YYYY-MM-DD, for the age of its tyres
 * @param withWorking  how the figures are worked out goes below each
 */
export function trailerLines(book: Book, id: Id, today: string, withWorking: boolean): string[] {
  const record = book.trailers[id];
  if (record === undefined) return [`There is no trailer '${id}' in the book.`];
  const told = trailerTold(book, id, record, today);
  const part = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
  return [
    record.name,
    `  ${told.verdict}`,
    `  ${told.ball}`,
    ...told.figures.flatMap(({ title, figure, note, working }) => [
      `  ${title}: ${figure}; ${note}`,
      ...(withWorking
        ? working.flatMap((each) => [`    ${each.title}`, ...each.lines.map((line) => `      ${line}`)])
        : []),
    ]),
    ...part(
      'What was found',
      told.findings.flatMap(({ gravity, wrong, right, because }) => [
        `${gravityInWords[gravity]}: ${wrong}`,
        ...(right === null ? [] : [`  ${right}`]),
        ...(withWorking ? because.map((line) => `  ${line}`) : []),
      ]),
    ),
    ...part(
      'What to move',
      told.mendings.map(({ words }) => words),
    ),
    ...part('The ball weighed', told.weighed),
    ...part('Tyres', told.tyres),
    ...part(
      'Lashings',
      told.lashings.map(({ words }) => words),
    ),
    ...part('Take care', told.cautions),
  ];
}
