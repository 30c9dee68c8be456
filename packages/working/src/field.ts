import type * as fastCheck from 'fast-check';
import * as z from 'zod/mini';

/** What a field made of what was typed. */
export type Reading<T> =
  | { readonly kind: 'read'; readonly value: T }
  | { readonly kind: 'not clear'; readonly wrong: string; readonly right: string };

/** How a form asks for a field. */
export type Control =
  | {
      readonly control: 'number';
      readonly unit: string;
      readonly units: readonly string[];
      readonly low: number;
      readonly high: number;
    }
  | { readonly control: 'whole number'; readonly low: number; readonly high: number }
  | { readonly control: 'choice'; readonly choices: readonly { readonly id: string; readonly title: string }[] }
  | { readonly control: 'text' }
  | { readonly control: 'day' }
  | { readonly control: 'instant' }
  | { readonly control: 'time zone' }
  | { readonly control: 'series'; readonly each: string; readonly least: number; readonly most: number };

/** One row of the written reference. */
export interface ReferenceRow {
  readonly meaning: string;
  readonly unit: string;
  readonly takes: string;
  readonly example: string;
}

/** The part of fast-check that makes values; handed in by tests, so that the app carries none of it. */
export type Generators = Pick<typeof fastCheck, 'array' | 'constantFrom' | 'date' | 'double' | 'integer' | 'oneof'>;

/**
 * One field of a question: the single spec from which its type, its schema, its form control, its row in the
 * reference and the values for property tests are all made.
 */
export interface Field<T> {
  readonly meaning: string;
  /** reads what was typed (text) or stored (a number in the field's own unit) */
  readonly read: (raw: unknown) => Reading<T>;
  readonly control: Control;
  readonly reference: ReferenceRow;
  /** raw values that `read` takes, as text or numbers */
  readonly raw: (fc: Generators) => fastCheck.Arbitrary<unknown>;
  /** what is taken where nothing is given: shown with every answer, never silent */
  readonly assumed?: { readonly value: T; readonly shown: string; readonly because: string };
}

/** The type a field reads to. */
export type ValueOf<F> = F extends Field<infer T> ? T : never;

/** The zod schema of a field: takes what `read` takes, gives what it gives, fails with the same words. */
export function fieldSchema<T>(field: Field<T>) {
  return z.pipe(
    z.unknown(),
    z.transform((raw: unknown, context): T => {
      const reading = field.read(raw);
      if (reading.kind === 'read') return reading.value;
      context.issues.push({ code: 'custom', message: `${reading.wrong}; ${reading.right}`, input: raw });
      return z.NEVER;
    }),
  );
}

/** The same field with a value that stands in where none is given. The answer says so. */
export function assuming<T>(field: Field<T>, value: T, shown: string, because: string): Field<T> {
  return { ...field, assumed: { value, shown, because } };
}

export const unclear = (wrong: string, right: string) => ({ kind: 'not clear', wrong, right }) as const;
export const readAs = <T>(value: T) => ({ kind: 'read', value }) as const;
