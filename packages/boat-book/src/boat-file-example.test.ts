import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readBoatFile } from './boat-file.ts';
import { checkBook } from './check-book.ts';

test('the example in docs/boat-file.md opens, and is sound', () => {
  const page = readFileSync(new URL('../../../docs/boat-file.md', import.meta.url), 'utf8');
  const example = /```json\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
  expect(checkBook(JSON.parse(example))).toEqual([]);
  expect(readBoatFile(new TextEncoder().encode(example.trim()))).toMatchObject({ kind: 'book', notes: [] });
});
