import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const packages = fileURLToPath(new URL('../packages/', import.meta.url));
const folders = readdirSync(packages)
  .map((name) => join(packages, name, 'tables'))
  .filter((folder) => existsSync(folder));
const tables = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((file) => /\.(ts|csv|json)$/.test(file))
    .map((file) => [file, folder] as const),
);

describe('tables of figures from outside', () => {
  it('are found', () => {
    expect(tables.length).toBeGreaterThanOrEqual(2);
  });

  it.each(tables)('%s says where it is from, and has not changed since', (file, folder) => {
    const hash = createHash('sha256')
      .update(readFileSync(join(folder, file)))
      .digest('hex');
    const sources = readdirSync(folder)
      .filter((name) => name.endsWith('.source.md'))
      .map((name) => readFileSync(join(folder, name), 'utf8'));
    const named = sources.filter((source) => source.includes(`\`${file}\``));
    expect(named, `a .source.md that names ${file}`).toHaveLength(1);
    expect(named[0]).toContain(hash);
    for (const part of ['**Source**', '**How got**', '**Units**', '**Changed**', '**Terms**'])
      expect(named[0]).toContain(part);
  });
});
