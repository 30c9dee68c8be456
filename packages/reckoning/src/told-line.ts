/** Sentences whose figures know what they are worked out by, so that a screen can open the working of each. */

/** What a figure of a battery is: each has a working of its own. */
export type FigureOf =
  | 'charge'
  | 'over floor'
  | 'capacity'
  | 'chance'
  | 'floor reached'
  | 'night draw'
  | 'morning charge'
  | 'morning volts'
  | 'floor volts'
  | 'sun'
  | 'charger'
  | 'draw'
  | 'next reading'
  | 'load test'
  | 'foretold';

export interface ToldFigure {
  /** as it stands in the sentence: `72 %`, `62 to 81 %` */
  readonly figure: string;
  readonly of: FigureOf;
}

/** A sentence: plain words, or words and figures in turn. */
export type ToldLine = string | readonly (string | ToldFigure)[];

/** How a figure is worked out, in rows of one kind after another. Whole sentences. */
export interface FigureWorking {
  readonly of: FigureOf;
  readonly title: string;
  readonly rows: readonly WorkingRow[];
}

export interface WorkingRow {
  /** what goes in, how, from where (recalled and assumed figures are said to be), how far it may be off, what can hurt */
  readonly kind: 'goes in' | 'how' | 'from' | 'margin' | 'take care';
  readonly words: string;
}

/** A sentence with its figures in place: told`About ${figure} full.` */
export function told(words: TemplateStringsArray, ...parts: readonly (string | ToldFigure)[]): ToldLine {
  return words.flatMap((each, i) => [each, ...(i < parts.length ? [parts[i]!] : [])]).filter((part) => part !== '');
}

/** Makes figures of one kind. */
export const figureOf =
  (of: FigureOf) =>
  (figure: string): ToldFigure => ({ figure, of });

/** The sentence as plain words. */
export const lineInWords = (line: ToldLine): string =>
  typeof line === 'string' ? line : line.map((part) => (typeof part === 'string' ? part : part.figure)).join('');
