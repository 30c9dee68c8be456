import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rules } from '../rules.ts';

describe('the list of rules', () => {
  const folder = new URL('./', import.meta.url);
  const tests = readdirSync(folder)
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => readFileSync(new URL(name, folder), 'utf8'))
    .join('\n');
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

  it.each(rules)('%s has a smallest plan that breaks it and nothing else, and a line in the README', (rule) => {
    expect(tests.includes(`.toEqual(['${rule}'])`)).toBe(true);
    expect(readme.includes(`**${rule}**`)).toBe(true);
  });
});
