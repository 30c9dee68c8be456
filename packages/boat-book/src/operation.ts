/** The form of a named operation. Button, key and command all use the same one. */
import { z } from 'zod/mini';
import type { Edit } from './edit.ts';
import type { OperationFields, OperationName } from './operation-fields.ts';
import type { Id } from './records.ts';

export interface Operation<N extends OperationName> {
  /** what a button or the undo line calls it */
  readonly title: string;
  /** what it does, in one sentence */
  readonly does: string;
  /** whether undo takes it back; what cannot be undone is written to be lasting */
  readonly undoes: boolean;
  readonly fields: z.core.$ZodType;
  /** Changes records through `edit`; returns the id of what it put in, if anything. */
  readonly run: (fields: OperationFields<N>, edit: Edit) => Id | null;
}

export type Operations = { readonly [N in OperationName]: Operation<N> };

/** Any object of fields: the record as it would stand is checked as a whole after the operation has run. */
export const someOf = <S extends z.ZodMiniObject>(schema: S, without: readonly (keyof S['shape'] & string)[] = []) => {
  const shape: Record<string, z.core.$ZodType> = {};
  for (const [field, form] of Object.entries(schema.shape)) {
    if (!without.includes(field)) shape[field] = z.exactOptional(form as z.core.$ZodType);
  }
  return shape;
};

/** The fields of an object less its own id. */
export function withoutId<T extends { readonly id?: Id }>(fields: T): Omit<T, 'id'> {
  const { id: _, ...rest } = fields;
  return rest;
}

/** The shape of an object less some fields. */
export function without<S extends z.ZodMiniObject, K extends keyof S['shape'] & string>(
  schema: S,
  fields: readonly K[],
) {
  return Object.fromEntries(
    Object.entries(schema.shape).filter(([field]) => !(fields as readonly string[]).includes(field)),
  ) as Omit<S['shape'], K>;
}
