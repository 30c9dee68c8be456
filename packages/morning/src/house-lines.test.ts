import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules, checkedOrder } from './checked-order.ts';
import { houseLines, linesFor, rulesOf } from './house-lines.ts';
import { morningLists, type Trait } from './morning-line.ts';

const traits = [...new Set(morningLists.flatMap((list) => houseLines[list].flatMap(({ of }) => of)))];

describe.each(morningLists)('the lines of %s', (list) => {
  const lines = houseLines[list];
  const ids = lines.map(({ id }) => id);

  it('have an id, words, a source, and what is done where they fail', () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, text, from, fails } of lines) {
      // what was changed of a line names it: ids are ids of a boat book
      expect(id).toMatch(/^[a-z][a-z-]*[a-z]$/);
      expect(
        [text, from, fails.title].every((words) => words.trim() !== ''),
        id,
      ).toBe(true);
    }
  });

  it('stand in an order that works, and come after lines there are', () => {
    for (const { before, because } of rulesOf(list)) {
      expect(ids).toContain(before);
      expect(because).toMatch(/^[A-Z].*\.$/);
    }
    expect(brokenRules(ids, rulesOf(list))).toEqual([]);
  });

  it('keep every rule for any boat, whatever order was wanted', () => {
    const anyTraits = fc.subarray(traits).map((some): ReadonlySet<Trait> => new Set(some));
    fc.assert(
      fc.property(anyTraits, fc.infiniteStream(fc.nat()), (has, shuffle) => {
        const here = linesFor(list, has).map(({ id }) => id);
        const wanted = here
          .map((id) => ({ id, at: shuffle.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ id }) => id);
        const found = checkedOrder(wanted, rulesOf(list));
        expect(found.kind).toBe('order');
        if (found.kind === 'order') expect(brokenRules(found.ids, rulesOf(list))).toEqual([]);
      }),
    );
  });
});

/** Index of a line for a boat that has everything. */
const full = new Set(traits);
const order = (list: (typeof morningLists)[number]) => linesFor(list, full).map(({ id }) => id);

describe('what hurts', () => {
  it.each([
    ['rig', 'lines-overhead', 'mast-up'],
    ['rig', 'heel', 'shrouds'],
    ['rig', 'forestay', 'raising-gear-off'],
    ['launch', 'drain-plugs', 'back-down'],
    ['launch', 'look-in', 'winch-off'],
    ['recover', 'lines-overhead', 'forestay-off'],
    ['recover', 'out', 'drain-out'],
    ['tow', 'coupling', 'chocks'],
  ] as const)('%s: %s stands before %s, and always does', (list, first, then) => {
    expect(order(list).indexOf(first)).toBeLessThan(order(list).indexOf(then));
    expect(rulesOf(list).find(({ before, after }) => before === first && after === then)?.holds).toBe('always');
  });

  it('a mast, a board, a winch and an engine are never named without their caution', () => {
    for (const list of morningLists)
      for (const { id, text, cautions } of houseLines[list])
        if (/^Mast (up|down into)|^Board (up|down|let)|^Drawn up|running, water/.test(text))
          expect(cautions.length, `${list} ${id}`).toBeGreaterThan(0);
  });

  it('a boat with no mast is asked nothing of one', () => {
    const has = new Set(traits.filter((trait) => trait !== 'mast'));
    for (const list of morningLists) for (const { text } of linesFor(list, has)) expect(text).not.toMatch(/\bmast\b/i);
  });
});
