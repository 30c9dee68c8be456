// `npm test`: everything that must hold, on a bare machine; ends in `N passed, N failed, N skipped`.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { ensureBuilt } from './built.mjs';
import { ensureChromium } from './chromium.mjs';
import { ensureInstalled, root } from './installed.mjs';

ensureInstalled();
process.env.CHROME_PATH = ensureChromium();
ensureBuilt();

const count = { passed: 0, failed: 0, skipped: 0 };
const skips = [];
const failures = [];
const bin = (name) => join(root, 'node_modules', '.bin', name);

check('formatting and lint', bin('biome'), ['check', '--error-on-warnings', '.']);
check('types', bin('tsc'), ['-p', '.']);
check('direction of imports', bin('depcruise'), [
  'packages',
  'apps',
  'checks',
  'bench',
  'examples',
  'scripts',
  '--output-type',
  'err',
]);
check('nothing unused', bin('knip'), []);
const words = join(root, '..', 'shared', 'tools', 'foreign-names');
if (existsSync(words)) check('no foreign names', words, [root]);
else skip('no foreign names: the word list is not there');

const report = join(root, '.cache', 'tests.json');
mkdirSync(join(root, '.cache'), { recursive: true });
rmSync(report, { force: true });
const only = process.argv.slice(2);
console.log('\n— tests');
spawnSync(
  process.execPath,
  [
    join(root, 'node_modules', 'vitest', 'vitest.mjs'),
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...only,
  ],
  { cwd: root, stdio: 'inherit' },
);
if (existsSync(report)) {
  const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
  for (const file of testResults) {
    const name = relative(root, file.name);
    // a file that could not be run has no tests of its own to count
    if (file.status === 'failed' && file.assertionResults.length === 0) failed(`${name}: ${file.message}`);
    for (const test of file.assertionResults) {
      const title = `${name}: ${test.fullName}`;
      if (test.status === 'passed') count.passed += 1;
      else if (test.status === 'failed') failed(title);
      else skip(title);
    }
  }
} else {
  failed('vitest wrote no report');
}

if (skips.length) console.log(`\nSkipped:\n${skips.map((line) => `  ${line}`).join('\n')}`);
if (failures.length) console.log(`\nFailed:\n${failures.map((line) => `  ${line}`).join('\n')}`);
console.log(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
process.exit(count.failed || !count.passed ? 1 : 0);

function check(what, command, args) {
  console.log(`\n— ${what}`);
  const run = spawnSync(command, args, { cwd: root, stdio: 'inherit' });
  if (run.status === 0) count.passed += 1;
  else failed(what);
}

function failed(what) {
  count.failed += 1;
  failures.push(what);
}

function skip(what) {
  count.skipped += 1;
  skips.push(what);
}
