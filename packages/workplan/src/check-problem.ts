import type { z } from 'zod/mini';
import type { Problem } from './problem.ts';
import { type Fault, faultsBetween } from './problem-faults.ts';
import { problemSchema } from './problem-schema.ts';

export type CheckedProblem =
  | { readonly kind: 'sound'; readonly problem: Problem }
  | { readonly kind: 'refused'; readonly faults: readonly Fault[] };

/**
 * Whether a value is a plan problem: of the form of `problem.ts`, its names known and given once, its spans in
 * order. Faults of form are told first; the rest is looked at when there are none.
 *
 * Not faults, but answers of the planner: steps that wait for each other in a ring, a step longer than any day, a
 * deadline that cannot be met, more hands asked for than there are.
 *
 * @param value  anything, as read from a file
 * @returns      the problem, or at most 50 faults: each where, what is wrong, what would be right
 */
export function checkProblem(value: unknown): CheckedProblem {
  const parsed = problemSchema.safeParse(value);
  const faults = parsed.success
    ? faultsBetween(parsed.data)
    : parsed.error.issues.map((issue) => faultOf(issue, value));
  if (!parsed.success || faults.length > 0) return { kind: 'refused', faults: faults.slice(0, 50) };
  return { kind: 'sound', problem: parsed.data };
}

function faultOf(issue: z.core.$ZodIssue, value: unknown): Fault {
  const places = issue.path.map((part) => (typeof part === 'number' ? `${part + 1}.` : String(part)));
  return {
    where: places.join(' › ') || 'the problem',
    wrong: wrongOf(issue, at(value, issue.path)),
    right: rightOf(issue),
  };
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  let here = value;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}

function wrongOf(issue: z.core.$ZodIssue, given: unknown): string {
  if (issue.code === 'unrecognized_keys') return `it has ${issue.keys.map((key) => `‘${key}’`).join(', ')}`;
  if (given === undefined) return 'it is missing';
  if (Array.isArray(given)) return `it is a list of ${given.length}`;
  if (typeof given === 'object' && given !== null) return 'it is a group of fields';
  return `it is ${typeof given === 'string' ? `‘${given.slice(0, 60)}’` : String(given)}`;
}

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of fields',
};

function rightOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? issue.expected;
    case 'too_small': {
      const least = `${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`;
      if (issue.origin === 'string') return `${least} characters`;
      return issue.origin === 'array' ? `${least} in the list` : least;
    }
    case 'too_big':
      if (issue.origin === 'string') return `at most ${issue.maximum} characters`;
      return issue.origin === 'array' ? `at most ${issue.maximum} in the list` : `at most ${issue.maximum}`;
    case 'not_multiple_of':
      return `a multiple of ${issue.divisor}`;
    case 'invalid_value':
      return `one of ${issue.values.map((value) => (typeof value === 'string' ? `‘${value}’` : String(value))).join(', ')}`;
    case 'unrecognized_keys':
      return 'only the fields of the form';
    case 'invalid_union':
      return `a kind that there is${issue.discriminator === undefined ? '' : `, in its field ${issue.discriminator}`}`;
    default:
      return issue.message;
  }
}
