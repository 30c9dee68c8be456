import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { questions } from '../apps/cli/src/questions.ts';
import {
  handbookFolder,
  handbookHere,
  keptFile,
  readme,
  runFolder,
  runKeptRows,
  runOthers,
} from '../checks/all-checks.ts';
import { choicesARun, stillToCome } from '../checks/battery/estimate-asked.ts';
import { folderInLines, judgeFolder, runHolds } from '../checks/battery/measured-batteries.ts';
import { outsideRunInLines, tableInMarkdown } from '../checks/report.ts';
import { judgeFolder as judgeSuns } from '../checks/solar/judge-suns.ts';
import { fileHolds, folderInLines as sunsInLines } from '../checks/solar/suns-in-lines.ts';
import { subjects } from '../checks/subjects.ts';
import { heavierBoard } from './heavier-board.ts';
import { reference } from './reference.ts';

const usage = `npm run check                     the kept rows, the handbook where it lies beside the project, and the rest
npm run check -- --rows FOLDER    any folder of JSON files of rows in the handbook's form
npm run check -- --battery FOLDER any folder of measured batteries: what was still to come, held against the estimate
npm run check -- --solar FOLDER   any folder of measured sun: each day’s energy, held against the clear sky and the band
npm run check -- --readme         the same as the first, and writes checks/README.md, docs/reference.md and docs/heavier-board.md
npm run check -- --keep           takes the mapped rows of the handbook into checks/<subject>/rows.json`;

const say = (line: string) => process.stdout.write(`${line}\n`);

function main(args: readonly string[]): number {
  const [flag, folder, ...more] = args;
  if (flag === '--rows' && folder !== undefined && more.length === 0) return runRows(folder);
  if (flag === '--battery' && folder !== undefined && more.length === 0) return runBatteries(folder);
  if (flag === '--solar' && folder !== undefined && more.length === 0) return runSuns(folder);
  if (flag === '--keep' && folder === undefined) return keep();
  if (flag === undefined || (flag === '--readme' && folder === undefined)) return runAll(flag === '--readme');
  say(`cannot read '${args.join(' ')}'`);
  say(usage);
  return 1;
}

function runRows(folder: string): number {
  try {
    const run = runFolder(folder);
    for (const line of outsideRunInLines(run)) say(line);
    return run.results.every(({ comparison }) => comparison.passed) ? 0 : 1;
  } catch (cause) {
    say(`${folder} cannot be run: ${cause instanceof Error ? cause.message : String(cause)}`);
    return 1;
  }
}

function runBatteries(folder: string): number {
  try {
    const judged = judgeFolder(folder, choicesARun, stillToCome);
    for (const line of folderInLines(judged)) say(line);
    if (judged.runs.length + judged.curves.length === 0) say('There is nothing to judge in it.');
    return judged.runs.every(runHolds) ? 0 : 1;
  } catch (cause) {
    say(`${folder} cannot be run: ${cause instanceof Error ? cause.message : String(cause)}`);
    return 1;
  }
}

function runSuns(folder: string): number {
  try {
    const judged = judgeSuns(folder);
    for (const line of sunsInLines(judged)) say(line);
    if (judged.files.length === 0) say('There is nothing to judge in it.');
    return judged.files.every(fileHolds) ? 0 : 1;
  } catch (cause) {
    say(`${folder} cannot be run: ${cause instanceof Error ? cause.message : String(cause)}`);
    return 1;
  }
}

function runAll(write: boolean): number {
  const results = runKeptRows();
  const others = runOthers();
  for (const line of tableInMarkdown(results, others)) say(line);
  let sound =
    results.every(({ comparison }) => comparison.passed) && others.every((other) => other.worst <= other.allowed);
  if (handbookHere) {
    const run = runFolder(handbookFolder);
    say('## The whole handbook');
    for (const line of outsideRunInLines(run)) say(line);
    if (run.unknown.length > 0) say('A family of the handbook is neither mapped nor listed with its reason.');
    sound &&= run.unknown.length === 0 && run.unmapped.length === 0;
    sound &&= run.results.every(({ comparison }) => comparison.passed);
  } else say('The whole handbook: skipped: no data');
  if (write) {
    writeFileSync(fileURLToPath(new URL('../checks/README.md', import.meta.url)), readme(results, others));
    writeFileSync(fileURLToPath(new URL('../docs/reference.md', import.meta.url)), reference(questions()));
    writeFileSync(fileURLToPath(new URL('../docs/heavier-board.md', import.meta.url)), heavierBoard(questions()));
  }
  say(sound ? 'All checks hold.' : 'A check does not hold.');
  return sound ? 0 : 1;
}

function keep(): number {
  if (!handbookHere) {
    say('There is no handbook beside the project: nothing to keep.');
    return 1;
  }
  const run = runFolder(handbookFolder);
  for (const subject of subjects) {
    const rows = run.results.map(({ row }) => row).filter((row) => row.id.startsWith(`${subject}.`));
    writeFileSync(keptFile(subject), `${JSON.stringify(rows, null, 1)}\n`);
    say(`${subject}: ${rows.length} rows kept`);
  }
  return 0;
}

// a reader that stops early (head, a pager that is left) is no fault of the checks
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code !== 'EPIPE') throw cause;
});
process.exitCode = main(process.argv.slice(2));
