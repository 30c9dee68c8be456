import { expect, it } from 'vitest';
import { figureOf, lineInWords, told } from './told-line.ts';

it('a sentence keeps its words and knows its figures', () => {
  const line = told`About ${figureOf('charge')('72 %')} full, over ${'50 %'}.`;
  expect(line).toEqual(['About ', { figure: '72 %', of: 'charge' }, ' full, over ', '50 %', '.']);
  expect(lineInWords(line)).toBe('About 72 % full, over 50 %.');
  expect(lineInWords('Nothing is missing now.')).toBe('Nothing is missing now.');
});
