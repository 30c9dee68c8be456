import { expect, it } from 'vitest';
import { glossary, rowsOf } from './glossary.ts';
import { neverMarked, onlyOn, termMarks } from './term-marks.ts';
import { termFinder } from './terms-in.ts';

const marked = (text: string, path = 'work') => {
  const found = termFinder(path)(text);
  return found.reduceRight(
    (told, { from, to }) => `${told.slice(0, from)}[${told.slice(from, to)}]${told.slice(to)}`,
    text,
  );
};

it('every row of the glossary is read, and a word of two rows has both meanings', () => {
  expect(glossary.length).toBeGreaterThan(150);
  expect(rowsOf('margin')).toEqual(rowsOf('dew point'));
  expect(rowsOf('gap').length).toBe(2);
  expect(rowsOf('starboardness')).toEqual([]);
  const written = glossary.map(({ words, meaning }) => `${words}: ${meaning}`);
  expect(new Set(written).size).toBe(written.length);
});

it('every word of the glossary is marked on some screen, but for the told exceptions, which are words of the glossary', () => {
  const words = [...new Set(glossary.flatMap((row) => row.words))];
  const told = new Set(termMarks.map(({ of }) => of));
  expect(words.filter((word) => !told.has(word) && !neverMarked.has(word))).toEqual([]);
  expect([...neverMarked, ...Object.keys(onlyOn)].filter((word) => !words.includes(word))).toEqual([]);
});

it('finds a term in any number and form, with a hyphen or without', () => {
  expect(marked('Two set-ups change. Set up it is; rebedded, not glued.')).toBe(
    'Two [set-ups] change. [Set up] it is; [rebedded], not glued.',
  );
});

it('leaves a term inside another word alone, and of two that overlap takes the longer', () => {
  expect(marked('Weighted by the ground tackle and the tackles', 'days')).toBe(
    'Weighted by the [ground tackle] and the [tackles]',
  );
});

it('a word that is a term on some screens only is plain English on the others', () => {
  expect(marked('Held by its floor.', 'boat/battery/house')).toBe('Held by its [floor].');
  expect(marked('Held by its floor.', 'days/plan')).toBe('[Held] by its floor.');
});
