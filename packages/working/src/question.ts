import type { Answer } from './answer.ts';
import type { Field, ReferenceRow, ValueOf } from './field.ts';

export type Fields = Readonly<Record<string, Field<unknown>>>;
export type Values<F extends Fields> = { readonly [K in keyof F]: ValueOf<F[K]> };

/** What is wrong with one part of what was given, where, and what would be right. */
export interface Fault {
  readonly where: string;
  readonly wrong: string;
  readonly right: string;
}

/** A question of the trade: fields in, an answer with its working out. Pure. */
export interface Question<F extends Fields = Fields> {
  /** in the trade's words: 'sky.sun-position' */
  readonly id: string;
  readonly title: string;
  readonly fields: F;
  /** what is wrong with values that are each right alone, or null */
  conflict(values: Values<F>): Fault | null;
  answer(values: Values<F>): Answer;
}

/** States a question. Nothing is registered: a program lists the packages whose questions it knows. */
export function question<F extends Fields>(stated: {
  readonly id: string;
  readonly title: string;
  readonly fields: F;
  readonly conflict?: (values: Values<F>) => Fault | null;
  readonly answer: (values: Values<F>) => Answer;
}): Question<F> {
  if (!/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/.test(stated.id))
    throw new RangeError(`a question's id is subject.question in lower case, as in sky.dew-point; got '${stated.id}'`);
  return { conflict: () => null, ...stated };
}

/** What was given for a question, read; or everything that is wrong with it. */
export type Asked =
  | {
      readonly kind: 'answered';
      readonly answer: Answer;
      /** fields nobody gave, with what stood in and why */
      readonly assumed: readonly { readonly field: string; readonly shown: string; readonly because: string }[];
    }
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] };

/**
 * Asks a question with what was typed or stored. Every fault is named at once: a field that is missing, one that the
 * question does not have, one that cannot be read, values that do not go together.
 *
 * @param given  text or numbers by field; a number is in the field's own unit
 */
export function ask<F extends Fields>(asked: Question<F>, given: Readonly<Record<string, unknown>>): Asked {
  const faults: Fault[] = [];
  const values: Record<string, unknown> = {};
  const assumed: { field: string; shown: string; because: string }[] = [];
  const names = Object.keys(asked.fields);
  for (const name of Object.keys(given))
    if (!names.includes(name))
      faults.push({
        where: name,
        wrong: `${asked.id} has no field '${name}'`,
        right: `its fields are: ${names.join(', ')}`,
      });
  for (const [name, field] of Object.entries<Field<unknown>>(asked.fields)) {
    if (given[name] === undefined) {
      if (field.assumed) {
        values[name] = field.assumed.value;
        assumed.push({ field: name, shown: field.assumed.shown, because: field.assumed.because });
      } else
        faults.push({ where: name, wrong: `${field.meaning}: nothing given`, right: `give ${field.reference.takes}` });
      continue;
    }
    const reading = field.read(given[name]);
    if (reading.kind === 'read') values[name] = reading.value;
    else faults.push({ where: name, wrong: `${field.meaning}: ${reading.wrong}`, right: reading.right });
  }
  if (faults.length > 0) return { kind: 'refused', faults };
  const read = values as Values<F>;
  const conflict = asked.conflict(read);
  if (conflict) return { kind: 'refused', faults: [conflict] };
  return { kind: 'answered', answer: asked.answer(read), assumed };
}

/** The written reference of a question: one row a field. */
export function referenceRows(
  asked: Question,
): readonly (ReferenceRow & { readonly field: string; readonly assumed: string | null })[] {
  return Object.entries(asked.fields).map(([field, spec]) => ({
    field,
    ...spec.reference,
    assumed: spec.assumed ? `${spec.assumed.shown}: ${spec.assumed.because}` : null,
  }));
}
