import { expect, it } from 'vitest';
import { meaningsOf } from './glossary.ts';
import { termNames } from './term-names.ts';

it('every term that can be tapped has its meaning in the glossary', () => {
  expect(termNames.filter((of) => meaningsOf(of).length === 0)).toEqual([]);
});

it('a row of two words explains both, and a word of two rows has both meanings', () => {
  expect(meaningsOf('margin')).toEqual(meaningsOf('dew point'));
  expect(meaningsOf('gap').length).toBe(2);
  expect(meaningsOf('word')).not.toContain('---');
});

it('a word that is in no row has none', () => {
  expect(meaningsOf('starboardness')).toEqual([]);
});
