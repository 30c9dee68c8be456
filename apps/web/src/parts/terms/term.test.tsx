import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { WithTerms } from './term.tsx';

const marked = (text: string, terms: Parameters<typeof WithTerms>[0]['terms']) =>
  renderToStaticMarkup(<WithTerms text={text} terms={terms} />).replaceAll(/<button[^>]*>([^<]*)<\/button>/g, '[$1]');

it('the first of each term is marked, in any number, and nothing else of the text is changed', () => {
  expect(marked('Two set-ups change; a set-up takes minutes. Waits run on.', ['set-up', 'wait'])).toBe(
    'Two [set-ups] change; a set-up takes minutes. [Waits] run on.',
  );
});

it('a term inside another word is left alone, and of two that overlap the longer counts', () => {
  expect(marked('Weighted by weight.', ['weight'])).toBe('Weighted by [weight].');
  expect(marked('The ball load is 46 kg.', ['ball load'])).toBe('The [ball load] is 46 kg.');
});

it('a text without any is the text', () => {
  expect(marked('Nothing here.', ['gap'])).toBe('Nothing here.');
});
