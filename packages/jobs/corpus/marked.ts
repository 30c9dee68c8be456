/** How lines and pages are marked by hand: what a person who knows the boat would take from them. */
import type { LineConditions, LineConsequence } from '../src/index.ts';

/** A part left out was not said. */
export interface MarkedParts {
  readonly zone?: string;
  readonly fitting?: string;
  /** likely, or low, likely and high */
  readonly minutes?: number | readonly [low: number, likely: number, high: number];
  readonly hands?: number;
  readonly notAlone?: true;
  readonly setUps?: Readonly<Record<string, string>>;
  readonly conditions?: LineConditions;
  readonly consequence?: LineConsequence;
  readonly due?: string;
  readonly outing?: string;
  readonly temporary?: true;
}

export type MarkedLine = readonly [
  line: string,
  marks: MarkedParts & {
    /** words that must be left standing in the title */
    readonly what: string;
  },
];

export interface MarkedPage {
  readonly name: string;
  readonly page: string;
  readonly marks: readonly PageMark[];
}

export interface PageMark {
  readonly kind: 'job' | 'jury rig' | 'reading' | 'store';
  /** where it is said: words that stand in the page once; a proposal is found there if its words meet them */
  readonly at: string;
  /** the parts that a person is sure of; those not named are not judged */
  readonly parts: Omit<MarkedParts, 'temporary'>;
}
