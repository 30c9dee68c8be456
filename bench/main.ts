/**
 * What is timed. `npm run bench -- psplib --set FOLDER --seconds S [--take N]` runs the plain case against PSPLIB;
 * `peers` runs our search beside a general solver on the same problems; `plan [--seconds S]` times the demo's plan and invented keeper's problems, in two threads where there are two cores, `longer` what thirty times as long brings to those of 60 jobs, `book` a large boat book, `parts` the
 * judging of a plan and the reading of a line, `app` the built app in a real browser, `taps [NAME]` taps in it at a slower CPU, `readings` 200,000 readings in it, `battery` the estimate and the odds of nights, `log` the search over a log of 5,000 entries. Each
 * prints its table and writes
 * it into `bench/latest.md` under its own heading.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type BesideThread, besideThread } from '../apps/cli/src/beside/beside-thread.ts';
import { appTimeHead, appTimes } from './app.ts';
import { readingsTimes } from './app-readings.ts';
import { tapTimes } from './app-taps.ts';
import { batteryTimeHead, batteryTimes } from './battery-times.ts';
import { bookTimeHead, bookTimes } from './boat-book.ts';
import { logTimeHead, logTimes } from './log-times.ts';
import { longerSearches, longerSearchHead, longerSearchRow, longerSearchSum } from './longer-search.ts';
import { peerSections } from './peers.ts';
import { planTimeHead, planTimeRow, planTimes } from './plan-times.ts';
import { psplibHead, psplibRow, runPsplib } from './psplib.ts';
import { replanTimeHead, replanTimeRows, replanTimes } from './replan-times.ts';
import { partTimeHead, partTimes } from './small-parts.ts';

const usage = [
  'npm run bench -- psplib --set FOLDER --seconds S [--take N]',
  '    FOLDER holds .sm files, with references.csv in it or beside it; a .tar.gz of such a folder will do',
  'npm run bench -- plan [--seconds S]',
  'npm run bench -- longer [--take N]',
  '    2 s against 60 s on N problems, 8 unless told; some 70 s each',
  'npm run bench -- peers [--seconds S] [--take N] [--parallel 1|2] [--only j30,j60,j120,keeper,hints] [--set FOLDER]',
  '    our search against a general solver, both by processor time; FOLDER holds j30.tar.gz and so on',
  'npm run bench -- book',
  'npm run bench -- parts',
  'npm run bench -- app',
  'npm run bench -- taps [NAME]',
  '    NAME is part of a name: only those taps, and nothing is written down',
  'npm run bench -- readings',
  'npm run bench -- battery',
  'npm run bench -- log',
].join('\n');

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      set: { type: 'string' },
      seconds: { type: 'string' },
      take: { type: 'string' },
      parallel: { type: 'string' },
      only: { type: 'string' },
    },
  });
  const [what, ...more] = positionals;
  if (what === 'taps' && more.length === 1) {
    console.log(aligned([...appTimeHead, ...(await tapTimes(more[0]))]).join('\n'));
    return 0;
  }
  if (more.length > 0) throw new RangeError(`'${more[0]}' is one word too many`);
  if (what === 'psplib') {
    if (values.set === undefined) throw new RangeError('--set FOLDER is missing: the folder of .sm files');
    if (values.seconds === undefined) throw new RangeError('--seconds S is missing: the seconds for each instance');
    const seconds = positive('--seconds', values.seconds);
    const take = values.take === undefined ? null : Math.floor(positive('--take', values.take));
    const result = runPsplib(values.set, seconds, take, (line) => console.log(line));
    const rows = aligned([...psplibHead, psplibRow(result)]);
    console.log(rows.join('\n'));
    keep(`PSPLIB ${result.set}, ${seconds} s`, rows);
    for (const wrong of result.wrongProofs) console.error(`refused: ${wrong}`);
    return result.wrongProofs.length > 0 || result.violations > 0 ? 1 : 0;
  }
  if (what === 'plan') {
    const seconds = values.seconds === undefined ? 2 : positive('--seconds', values.seconds);
    // as in the app, where it is up before a plan is made again
    const beside = besideThread();
    await beside?.isUp;
    const times = planTimes(seconds, beside);
    const rows = aligned([...planTimeHead, ...times.map(planTimeRow)]);
    console.log(rows.join('\n'));
    keep(`Plans, ${seconds} s`, rows, coresOf(beside));
    const again = replanTimes([1, 2, 3, 4, 5], [200, 1000], beside);
    beside?.close();
    const againRows = aligned([...replanTimeHead, ...again.flatMap(replanTimeRows)]);
    console.log(againRows.join('\n'));
    keep(
      'The demo planned again at 11:40 on its first day, a step an hour longer and a wet afternoon',
      againRows,
      coresOf(beside),
    );
    return [...times, ...again].some((row) => row.violations > 0) ? 1 : 0;
  }
  if (what === 'longer') {
    const beside = besideThread();
    await beside?.isUp;
    const take = values.take === undefined ? 8 : Math.ceil(positive('--take', values.take));
    const searched = longerSearches(take, { soon: 2, late: 60 }, beside, (line) => console.log(line));
    beside?.close();
    const rows = aligned([...longerSearchHead, ...searched.map(longerSearchRow)]);
    const lines = [...rows, '', longerSearchSum(searched)];
    console.log(lines.join('\n'));
    keep('60 jobs, 250 steps: 2 s against 60 s', lines, coresOf(beside));
    return 0;
  }
  if (what === 'peers') {
    const sections = await peerSections(
      {
        seconds: values.seconds === undefined ? 30 : positive('--seconds', values.seconds),
        take: values.take === undefined ? null : Math.floor(positive('--take', values.take)),
        parallel: values.parallel === undefined ? 1 : Math.min(2, Math.floor(positive('--parallel', values.parallel))),
        only: values.only?.split(',') ?? null,
        folder: values.set ?? fileURLToPath(new URL('../../shared/data/psplib', import.meta.url)),
      },
      (line) => console.log(line),
    );
    for (const { heading, note, rows, notes } of sections) {
      const table = aligned(rows);
      console.log(['', heading, ...table, ...notes].join('\n'));
      keep(heading, [...table, ...(notes.length > 0 ? ['', ...notes] : [])], note);
    }
    return sections.some(({ faults }) => faults.length > 0) ? 1 : 0;
  }
  const table = await tableOf(what);
  if (table !== null) {
    const rows = aligned(table.rows);
    console.log(rows.join('\n'));
    keep(table.heading, rows);
    return 0;
  }
  throw new RangeError(what === undefined ? 'what to time is missing' : `there is nothing to time called '${what}'`);
}

async function tableOf(what: string | undefined): Promise<{ heading: string; rows: readonly string[] } | null> {
  if (what === 'book') return { heading: 'A book of 500 jobs', rows: [...bookTimeHead, ...bookTimes()] };
  if (what === 'parts') return { heading: 'Small parts', rows: [...partTimeHead, ...partTimes()] };
  if (what === 'battery') return { heading: 'The battery', rows: [...batteryTimeHead, ...batteryTimes()] };
  if (what === 'log') return { heading: 'A log of 5,000 entries', rows: [...logTimeHead, ...logTimes()] };
  if (what === 'readings')
    return { heading: '200,000 readings in the app', rows: [...appTimeHead, ...(await readingsTimes())] };
  if (what === 'app') return { heading: 'The app in a browser', rows: [...appTimeHead, ...(await appTimes())] };
  if (what === 'taps') return { heading: 'Taps at a 4× slower CPU', rows: [...appTimeHead, ...(await tapTimes())] };
  return null;
}

function coresOf(beside: BesideThread | null): string {
  return beside === null ? 'one core.' : 'two cores, a search on each.';
}

function positive(name: string, text: string): number {
  const figure = Number(text);
  if (!(figure > 0)) throw new RangeError(`${name} must be a figure over 0, got '${text}'`);
  return figure;
}

/** Rows of a table with their columns padded to one width. */
function aligned(rows: readonly string[]): string[] {
  const cells = rows.map((row) =>
    row
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
  const widths = cells[0]!.map((_, column) => Math.max(3, ...cells.map((row) => row[column]!.length)));
  return cells.map((row, at) => {
    const padded = row.map((cell, column) => (at === 1 ? '-'.repeat(widths[column]!) : cell.padEnd(widths[column]!)));
    return `| ${padded.join(' | ')} |`;
  });
}

/** Writes a table into `bench/latest.md`, in place of the one of the same heading. */
function keep(heading: string, rows: readonly string[], note = 'one core.'): void {
  const path = fileURLToPath(new URL('latest.md', import.meta.url));
  const machine = `${cpus().length} × ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`;
  const section = `## ${heading}\n\n${new Date().toISOString().slice(0, 10)}, ${machine}, ${note}\n\n${rows.join('\n')}\n`;
  const title = '# Benchmarks, as last run\n';
  const old = existsSync(path) ? readFileSync(path, 'utf8') : title;
  const sections = old.split(/^(?=## )/m);
  const kept = sections.slice(1).filter((other) => !other.startsWith(`## ${heading}\n`));
  writeFileSync(
    path,
    `${[title, ...[...kept, section].map((part) => part.trim())].join('\n\n').replace('\n\n\n', '\n\n')}\n`,
  );
}

try {
  process.exitCode = await main();
} catch (error) {
  if (!(error instanceof RangeError || (error instanceof Error && 'code' in error))) throw error;
  console.error(`${error.message}\n\n${usage}`);
  process.exitCode = 1;
}
