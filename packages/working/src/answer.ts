/** One figure of an answer: what it is, its value and how sure it is. */
export interface Figure {
  /** as the formulas write it, or a word: 'h', 'sunset' */
  readonly symbol: string;
  readonly meaning: string;
  /** a number of `unit`, or words where the answer is a choice */
  readonly value: number | string;
  /** the ends of the band, where the value is uncertain; in `unit` */
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  /** the same in everyday form, where the number alone is not: '06:12' */
  readonly inWords?: string;
}

/** A figure on the way, with how it came about. */
export interface WorkingLine extends Figure {
  readonly formula: string;
}

/** Where a formula or a figure is from, and whether the source was read or is recalled. */
export interface Source {
  readonly title: string;
  readonly seen: 'read' | 'read second-hand' | 'recalled' | 'common practice' | 'our derivation' | 'our assumption';
}

interface Shown {
  readonly working: readonly WorkingLine[];
  readonly sources: readonly Source[];
  /** where the model stops being true */
  readonly limits: readonly string[];
  /** what can hurt, at the step it belongs to */
  readonly cautions: readonly string[];
}

/** An answer with figures; the first result is the one asked for. */
export interface FoundAnswer extends Shown {
  readonly kind: 'found';
  readonly results: readonly [Figure, ...Figure[]];
}

/**
 * A truth about the world that is not a figure: the sun stays up, no hour suits, it never reaches its strength.
 * `results` holds what can still be said.
 */
export interface TruthAnswer extends Shown {
  readonly kind: 'truth';
  readonly statement: string;
  readonly because: string;
  readonly results: readonly Figure[];
}

export type Answer = FoundAnswer | TruthAnswer;

/** The figure of an answer with this symbol, results before working; undefined when it has none. */
export function figureOf(answer: Answer, symbol: string): Figure | undefined {
  return [...answer.results, ...answer.working].find((figure) => figure.symbol === symbol);
}
