// Makes sure the packages of package-lock.json are installed. Zero dependencies: runs on a clone without node_modules.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
const mark = join(root, 'node_modules', '.installed-for');

/** Installs when the lock file or the major version of Node is another than at the last install; else does nothing. */
export function ensureInstalled() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    fail(`Fettle needs Node 20.19 or newer; this is ${process.versions.node}.`);
  }
  const wanted = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(`node ${major} ${process.platform} ${process.arch}`)
    .digest('hex');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === wanted) return;
  console.log('Installing what is needed (about half a minute the first time) …');
  const run = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (run.status !== 0) fail('npm ci did not succeed; see above. A network is needed the first time.');
  writeFileSync(mark, wanted);
}

/** Says why and ends the process. */
export function fail(why) {
  console.error(why);
  process.exit(1);
}
