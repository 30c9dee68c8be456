import type { Book, Id } from '#boat-book';
import { type CircuitTold, circuitsTold, lineInWords, powerTold, readBlocks, type ToldLine } from '#reckoning';

/**
 * One battery as it is printed, in the sentences that the app tells.
 *
 * @param now     epoch ms
 * @param nights  nights looked at from now. 1–7
 * @param withWorking  how the figures are worked out goes below
 * @param blobs  of the boat file: readings from files are among them
 */
export function powerLines(
  book: Book,
  id: Id,
  now: number,
  nights: number,
  withWorking: boolean,
  blobs: ReadonlyMap<string, Uint8Array>,
): string[] {
  const told = powerTold(book, id, now, nights, readBlocks(blobs));
  if (told === null) return [`There is no battery '${id}' in the book.`];
  const part = (title: string, lines: readonly ToldLine[]) => [
    '',
    title,
    ...lines.map((line) => `  ${lineInWords(line)}`),
  ];
  return [
    told.label,
    ...told.full.map((line) => `  ${lineInWords(line)}`),
    ...told.parts.flatMap(({ title, lines }) => part(title, lines)),
    ...part('Take care', told.cautions),
    ...(withWorking
      ? told.working.flatMap(({ title, rows }) =>
          part(
            title,
            rows.map(({ kind, words }) => `${capital(kind)}: ${words}`),
          ),
        )
      : []),
  ];
}

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/**
 * Every circuit of the book as it is printed: its wire, fuse and drop, what is wrong with it and what would be right.
 *
 * @param withWorking  how the figures are worked out goes below each
 */
export function circuitLines(book: Book, withWorking: boolean): string[] {
  const told = circuitsTold(book);
  return [
    'Circuits',
    `  ${told.verdict}`,
    ...told.batteries.flatMap(({ name, label, lines, findings, circuits }) => [
      '',
      `${name}: ${label}`,
      ...lines.map((line) => `  ${line}`),
      ...findingLines(findings),
      ...circuits.flatMap((circuit) => circuitInLines(circuit, withWorking)),
    ]),
    '',
    'Take care',
    ...told.cautions.map((line) => `  ${line}`),
  ];
}

const gravityInWords = { danger: 'CAN BURN', worse: 'FAULT', unknown: 'not looked at' } as const;

const findingLines = (findings: CircuitTold['findings']) =>
  findings.flatMap(({ gravity, wrong, right }) => [
    `    ${gravityInWords[gravity]}: ${wrong}`,
    ...(right === null ? [] : [`      ${right}`]),
  ]);

function circuitInLines({ name, words, findings, working }: CircuitTold, withWorking: boolean): string[] {
  const { draws, on, wire, fuse, drop, arrives } = words;
  return [
    `  ${name}: ${[draws, on, wire, fuse, drop, arrives].filter((part) => part !== null).join('; ')}`,
    ...findingLines(findings),
    ...(withWorking
      ? working.flatMap(({ title, lines }) => [`      ${title}`, ...lines.map((line) => `        ${line}`)])
      : []),
  ];
}
