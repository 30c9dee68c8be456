// Finds a Chromium for the journeys, or installs Debian's. Zero dependencies.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { fail } from './installed.mjs';

const usual = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/local/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

export function chromiumPath() {
  return [process.env.CHROME_PATH, ...usual].find((path) => path && runnable(path)) ?? null;
}

export function ensureChromium() {
  const found = chromiumPath();
  if (found) return found;
  const can = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (!can) {
    fail('The tests need a Chromium. Install one (sudo apt-get install -y chromium), or set CHROME_PATH to yours.');
  }
  console.log('Installing Debian’s chromium for the journeys (about a minute) …');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'poppler-utils'],
  ]) {
    const run = spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env });
    if (run.status !== 0) fail(`apt-get ${args.join(' ')} did not succeed; see above.`);
  }
  return chromiumPath() ?? fail('chromium was installed but is not where it is expected; set CHROME_PATH.');
}

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
