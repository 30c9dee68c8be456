/** What the parts of the constraint model write into: MiniZinc text under construction, and the terms it speaks in. */
import type { Problem, ProblemStep, SetUpAspect, SetUpChange, Wait } from '#workplan';

/** A stretch of time [from, to) that counts only where `on` is true. All three are MiniZinc terms. */
export interface Stretch {
  readonly on: string;
  readonly from: string;
  readonly to: string;
  /** it can be of no minutes; it then shares none with anything */
  readonly mayBeEmpty: boolean;
}

/** Work that keeps hands busy. `hands[h]` is the term that says hand h is at it. */
export interface Work extends Stretch {
  readonly name: string;
  readonly hands: readonly string[];
}

export interface WaitTerms extends Stretch {
  readonly name: string;
  readonly wait: Wait;
  /** false: it has begun and goes on past the horizon, where `to` is the horizon */
  readonly over: boolean;
  /** the soonest minute it can start in */
  readonly earliest: number;
}

export interface StepTerms extends Work {
  readonly step: ProblemStep;
  readonly open: boolean;
  /** minutes of abrading at its start */
  readonly abrade: string;
  readonly waits: readonly WaitTerms[];
}

/** The k-th change of an aspect's set-up, or none. */
export interface SlotTerms extends Work {
  readonly aspect: SetUpAspect;
  /** 0 where unused, else the place of the change in `aspect.changes` plus 1 */
  readonly kind: string;
  /** minutes, 0 where unused */
  readonly length: string;
  /** the change that each kind stands for */
  readonly changes: readonly SetUpChange[];
}

export interface Draft {
  readonly problem: Problem;
  /** writes a comment above what follows: the rule it is for */
  rule(name: string): void;
  /** declares a variable over a domain written in MiniZinc; returns its name */
  variable(domain: string, name: string): string;
  constraint(text: string): void;
  /** a term that, where true, makes the first stretch end before the second starts. Asked twice, the same term. */
  before(first: Stretch, second: Stretch): string;
  text(objective: string): string;
}

export function newDraft(problem: Problem): Draft {
  const lines: string[] = [];
  const orders = new Map<string, string>();
  return {
    problem,
    rule: (name) => void lines.push(`% ${name}`),
    variable(domain, name) {
      lines.push(`var ${domain}: ${name};`);
      return name;
    },
    constraint: (text) => void lines.push(`constraint ${text};`),
    before(first, second) {
      const key = `${first.to} <= ${second.from}`;
      const known = orders.get(key);
      if (known) return known;
      const name = `order_${orders.size}`;
      orders.set(key, name);
      lines.push(`var bool: ${name};`, `constraint ${name} -> ${key};`);
      return name;
    },
    text: (objective) => [...lines, objective, ''].join('\n'),
  };
}

/** Whole numbers in order, as a MiniZinc set. */
export function setText(numbers: readonly number[]): string {
  const runs: string[] = [];
  for (let index = 0; index < numbers.length; ) {
    const from = numbers[index]!;
    let to = from;
    while (numbers[++index] === to + 1) to++;
    runs.push(`${from}..${to}`);
  }
  return runs.length === 0 ? '{}' : runs.join(' union ');
}

/** Sum of terms; 0 for none. */
export const sumText = (terms: readonly string[]) => (terms.length === 0 ? '0' : terms.join(' + '));
