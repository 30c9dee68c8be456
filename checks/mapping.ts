import type { Expected } from './compare.ts';
import type { OutsideRow, RowKind } from './row.ts';

/** A row put as a question, or why it cannot be. */
export type Asking =
  | {
      readonly question: string;
      readonly fields: Readonly<Record<string, string | number>>;
      /** symbol of the figure in the answer */
      readonly pick: string;
    }
  | { readonly unmapped: string };

/** How the rows of one family of ids become questions. A family is the start of an id, up to a dot. */
export interface FamilyMapping {
  readonly family: string;
  readonly kind: RowKind;
  readonly asking: (row: OutsideRow, inputs: Readonly<Record<string, unknown>>) => Asking;
}

/** A family that nothing asks yet, with the reason. */
export interface UnaskedFamily {
  readonly family: string;
  readonly because: string;
}

/** The longest family an id belongs to. */
export function familyOf<F extends { readonly family: string }>(families: readonly F[], id: string): F | undefined {
  return families
    .filter(({ family }) => id === family || id.startsWith(`${family}.`))
    .sort((a, b) => b.family.length - a.family.length)[0];
}

/** An input that must be a number of the row. @throws Error naming row and input */
export function numberIn(row: OutsideRow, inputs: Readonly<Record<string, unknown>>, name: string): number {
  const value = inputs[name];
  if (typeof value !== 'number') throw new Error(`${row.id}: its input ${name} is not a number`);
  return value;
}

/** The expected value in the form that is compared. @throws Error naming the row */
export function expectedOf(row: OutsideRow): Expected {
  const { expected } = row;
  if (typeof expected === 'number' || typeof expected === 'string') return expected;
  if (Array.isArray(expected) && expected.length >= 2 && expected.every((each) => typeof each === 'number'))
    return expected;
  throw new Error(`${row.id}: its expected value is neither a number, a text nor a row of numbers`);
}
