/** What a schema found wrong, said in plain words: where, what is wrong with what was given, what would be right. */
import type { z } from 'zod/mini';
import type { Refusal } from './operation-fields.ts';

type Issue = z.core.$ZodIssue;

/** How what was given looks in a sentence, cut short. */
export function asGiven(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  if (typeof value === 'string') return value === '' ? 'an empty text' : `‘${shortened(value)}’`;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group of fields';
  return `a ${typeof value}`;
}

const shortened = (value: string): string => (value.length > 60 ? `${value.slice(0, 60)}…` : value);

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'yes or no (true or false)',
  array: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
  null: 'nothing (null)',
};

function right(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? issue.expected;
    case 'too_small':
      if (issue.origin === 'array') return `at least ${issue.minimum} in the list`;
      return issue.inclusive === false ? `more than ${issue.minimum}` : `at least ${issue.minimum}`;
    case 'too_big':
      if (issue.origin === 'string') return `at most ${issue.maximum} characters`;
      if (issue.origin === 'array') return `at most ${issue.maximum} in the list`;
      return `at most ${issue.maximum}`;
    case 'invalid_value':
      return issue.values.length === 1 ? asGiven(issue.values[0]) : `one of ${issue.values.map(asGiven).join(', ')}`;
    case 'unrecognized_keys':
      return 'only the fields that there are';
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options)
        ? `one of ${issue.options.map(asGiven).join(', ')}`
        : 'one of the forms that there are';
    default:
      return issue.message;
  }
}

function wrong(issue: Issue, given: unknown): string {
  if (issue.code === 'unrecognized_keys') return `unknown: ${issue.keys.map(asGiven).join(', ')}`;
  if (given === undefined) return 'it is missing';
  if (issue.code === 'too_big' && issue.origin === 'string' && typeof given === 'string') {
    return `it has ${given.length} characters`;
  }
  if (issue.code === 'invalid_type' && issue.expected === 'int' && typeof given === 'number') {
    return `${asGiven(given)} is not whole`;
  }
  return `${asGiven(given)} does not do`;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let here = value;
  for (const key of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}

/** A path in words: `steps › 2. › minutes`; places in lists are counted from 1. */
export function whereOf(path: readonly PropertyKey[], under = ''): string {
  const parts = path.map((part) => (typeof part === 'number' ? `${part + 1}.` : shortened(String(part))));
  return [under, ...parts].filter((part) => part !== '').join(' › ');
}

/** Every fault that a schema found in `value`, at most 50. `under` stands before each place. */
export function faultsOf(issues: readonly Issue[], value: unknown, under = ''): Refusal[] {
  return issues.slice(0, 50).map((issue) => {
    const path =
      issue.code === 'invalid_union' && issue.discriminator ? [...issue.path, issue.discriminator] : issue.path;
    const unique = path.at(-1) === path.at(-2) ? path.slice(0, -1) : path;
    return {
      where: whereOf(unique, under),
      wrong: wrong(issue, valueAt(value, unique)),
      right: right(issue),
    };
  });
}
