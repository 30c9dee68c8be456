import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ask, type Field, fieldSchema, type Question } from '#working';
import { questions } from './questions.ts';

/** What each field takes; lists cut to one length and a start to its hour, so that most of it goes together. */
const given = (question: Question) =>
  fc
    .record(
      Object.fromEntries(
        Object.entries<Field<unknown>>(question.fields).map(([name, field]) => [name, field.raw(fc)]),
      ) as Record<string, fc.Arbitrary<unknown>>,
    )
    .map((fields) => {
      const lists = Object.values(fields).filter((value): value is unknown[] => Array.isArray(value));
      const shortest = Math.min(...lists.map((list) => list.length));
      return Object.fromEntries(
        Object.entries(fields).map(([name, value]) => [
          name,
          Array.isArray(value)
            ? value.slice(0, shortest)
            : name === 'start'
              ? `${String(value).slice(0, 13)}:00Z`
              : value,
        ]),
      );
    });

describe.each(questions().map((question) => [question.id, question] as const))('%s', (_, question) => {
  it('answers everything its fields take, with figures that are numbers', () => {
    let answered = 0;
    fc.assert(
      fc.property(given(question), (fields) => {
        for (const [name, field] of Object.entries<Field<unknown>>(question.fields))
          expect(fieldSchema(field).safeParse(fields[name]).success, `${name} ${String(fields[name])}`).toBe(true);
        const asked = ask(question, fields);
        if (asked.kind === 'refused') {
          // values right alone may not go together; then exactly one fault says so
          expect(asked.faults).toHaveLength(1);
          return;
        }
        answered++;
        for (const figure of [...asked.answer.results, ...asked.answer.working]) {
          if (typeof figure.value === 'number') expect(Number.isFinite(figure.value), figure.symbol).toBe(true);
          expect(figure.meaning).not.toBe('');
        }
        expect(asked.answer.sources.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
    expect(answered).toBeGreaterThan(5);
  });

  it('refuses a question put with nothing, naming every field that is needed', () => {
    const asked = ask(question, {});
    const needed = Object.entries<Field<unknown>>(question.fields).filter(([, field]) => !field.assumed);
    expect(asked.kind).toBe('refused');
    if (asked.kind === 'refused') expect(asked.faults.map(({ where }) => where)).toEqual(needed.map(([name]) => name));
  });
});

it('no two questions share an id', () => {
  const ids = questions().map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
