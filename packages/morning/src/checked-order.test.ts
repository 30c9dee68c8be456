import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules, checkedOrder, movedLine, type OrderRule } from './checked-order.ts';

const rule = (before: string, after: string): OrderRule => ({
  before,
  after,
  because: `${before} first`,
  holds: 'always',
});
const ids = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const anyOrder = fc.shuffledSubarray(ids, { minLength: 1 });
const anyRules = fc.array(
  fc
    .tuple(fc.constantFrom(...ids, 'not there'), fc.constantFrom(...ids))
    .filter(([before, after]) => before !== after)
    .map(([before, after]) => rule(before, after)),
  { maxLength: 12 },
);

/** Every order there is, by trying them all: 7 lines have 5,040. */
function orders(of: readonly string[]): string[][] {
  if (of.length === 0) return [[]];
  return of.flatMap((first) => orders(of.filter((other) => other !== first)).map((rest) => [first, ...rest]));
}

describe('checkedOrder', () => {
  it('leaves an order that breaks nothing as it was', () => {
    expect(checkedOrder(['a', 'b', 'c'], [rule('a', 'c')])).toEqual({ kind: 'order', ids: ['a', 'b', 'c'] });
  });

  it('takes what must come first to the front, the rest as wanted', () => {
    // d must come before a: b and c were wanted first, and nothing holds them up
    expect(checkedOrder(['a', 'b', 'c', 'd'], [rule('d', 'a')])).toEqual({ kind: 'order', ids: ['b', 'c', 'd', 'a'] });
  });

  it('does without a line that is not there', () => {
    expect(checkedOrder(['a', 'c'], [rule('b', 'a'), rule('c', 'b')])).toEqual({ kind: 'order', ids: ['a', 'c'] });
  });

  it('names the lines of a ring, each before the next', () => {
    const rules = [rule('a', 'b'), rule('b', 'c'), rule('c', 'a')];
    const found = checkedOrder(['d', 'b', 'a', 'c'], rules);
    expect(found.kind).toBe('ring');
    const ring = found.kind === 'ring' ? found.ring : [];
    expect([...ring].sort()).toEqual(['a', 'b', 'c']);
    ring.forEach((id, i) => {
      expect(rules.some(({ before, after }) => before === id && after === ring[(i + 1) % 3])).toBe(true);
    });
  });

  it('refuses a line that stands twice', () => {
    expect(() => checkedOrder(['a', 'a'], [])).toThrow('stands twice');
  });

  it('keeps every rule in every order, or there is no such order at all', () => {
    fc.assert(
      fc.property(anyOrder, anyRules, (wanted, rules) => {
        const found = checkedOrder(wanted, rules);
        if (found.kind === 'order') {
          expect([...found.ids].sort()).toEqual([...wanted].sort());
          expect(brokenRules(found.ids, rules)).toEqual([]);
        } else {
          const { ring } = found;
          ring.forEach((id, i) => {
            const next = ring[(i + 1) % ring.length];
            expect(rules.some(({ before, after }) => before === id && after === next)).toBe(true);
          });
        }
      }),
    );
  });

  it('agrees with trying every order: it finds one where there is one, and the one that comes first as wanted', () => {
    const few = fc.shuffledSubarray(ids.slice(0, 5), { minLength: 1 });
    fc.assert(
      fc.property(few, anyRules, (wanted, rules) => {
        // in the order of the wanted places, so that the first that will do is the one wanted most
        const first = orders(wanted).find((order) => brokenRules(order, rules).length === 0);
        expect(checkedOrder(wanted, rules)).toMatchObject(
          first === undefined ? { kind: 'ring' } : { kind: 'order', ids: first },
        );
      }),
    );
  });

  it('comes to the same when it is done again, and whatever order the rules stand in', () => {
    fc.assert(
      fc.property(anyOrder, anyRules, (wanted, rules) => {
        const found = checkedOrder(wanted, rules);
        expect(checkedOrder(wanted, [...rules].reverse()).kind).toBe(found.kind);
        if (found.kind !== 'order') return;
        expect(checkedOrder(found.ids, rules)).toEqual(found);
        expect(checkedOrder(wanted, [...rules, ...rules].reverse())).toEqual(found);
      }),
    );
  });
});

describe('movedLine', () => {
  it('puts a line elsewhere', () => {
    expect(movedLine(['a', 'b', 'c'], 'c', 0, [rule('a', 'b')])).toEqual({ kind: 'moved', ids: ['c', 'a', 'b'] });
  });

  it('refuses what breaks a rule, and says which and why', () => {
    const [first] = [rule('a', 'b')];
    expect(movedLine(['a', 'b', 'c'], 'b', 0, [first])).toEqual({ kind: 'against', rules: [first] });
    expect(movedLine(['a', 'b', 'c'], 'a', 2, [first])).toEqual({ kind: 'against', rules: [first] });
  });

  it('does not lay an old breach to a new move', () => {
    expect(movedLine(['b', 'a', 'c'], 'c', 0, [rule('a', 'b')])).toEqual({ kind: 'moved', ids: ['c', 'b', 'a'] });
  });

  it('refuses a line or a place that there is not', () => {
    expect(() => movedLine(['a'], 'x', 0, [])).toThrow('no line x');
    expect(() => movedLine(['a'], 'a', 1, [])).toThrow('a place from 0 to 0');
  });

  it('moves or tells why: never an order that breaks a rule the one before kept', () => {
    fc.assert(
      fc.property(anyOrder, anyRules, fc.nat(), fc.nat(), (wanted, rules, which, where) => {
        const checked = checkedOrder(wanted, rules);
        if (checked.kind === 'ring') return;
        const id = wanted[which % wanted.length]!;
        const moved = movedLine(checked.ids, id, where % wanted.length, rules);
        if (moved.kind === 'moved') {
          expect(moved.ids.indexOf(id)).toBe(where % wanted.length);
          // and it stands so: put in order again it is the same
          expect(checkedOrder(moved.ids, rules)).toEqual({ kind: 'order', ids: moved.ids });
        } else expect(moved.rules.every(({ before, after }) => before === id || after === id)).toBe(true);
      }),
    );
  });
});
