// Builds the web app when its sources are others than at the last build.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fail, root } from './installed.mjs';

const sources = ['apps/web', 'packages', 'examples', 'package-lock.json', 'package.json', 'tsconfig.json'];
export const dist = join(root, 'apps', 'web', 'dist');
const mark = join(dist, '.built-from');

export function ensureBuilt() {
  const wanted = hashOf(sources);
  if (existsSync(mark) && readFileSync(mark, 'utf8') === wanted) return;
  console.log('Building the app …');
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const run = spawnSync(process.execPath, [vite, 'build', '-c', 'apps/web/vite.config.ts', '--logLevel', 'warn'], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (run.status !== 0) fail('The build did not succeed; see above.');
  writeFileSync(mark, wanted);
}

function hashOf(paths) {
  const hash = createHash('sha256');
  const add = (path) => {
    const full = join(root, path);
    let entries;
    try {
      entries = readdirSync(full, { withFileTypes: true });
    } catch {
      hash.update(path).update(readFileSync(full));
      return;
    }
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (['node_modules', 'dist', 'e2e'].includes(entry.name) || /\.test\.tsx?$/.test(entry.name)) continue;
      add(`${path}/${entry.name}`);
    }
  };
  for (const path of paths) add(path);
  return hash.digest('hex');
}
