/**
 * The plain case against PSPLIB: how far the finish lies over the published reference, how much is proved, and that
 * no plan breaks a rule.
 *
 * Source of instances and references: R. Kolisch, A. Sprecher, "PSPLIB - a project scheduling problem library",
 * European Journal of Operational Research 96 (1996/97), 205-216; the folder given says where its copies are from.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { readPsplib, startSearch, violations } from '#workplan';

export interface Reference {
  readonly makespan: number;
  readonly isOptimum: boolean;
}

export interface PsplibResult {
  readonly set: string;
  readonly seconds: number;
  readonly instances: number;
  /** mean of (finish − reference) / critical path. [%] */
  readonly excess_pct: number;
  /** mean of (finish − critical path) / critical path. [%] */
  readonly overCriticalPath_pct: number;
  readonly proved: number;
  readonly above: number;
  readonly violations: number;
  readonly iterationsPerSecond: number;
  /** proofs that a reference contradicts; must be empty */
  readonly wrongProofs: readonly string[];
}

/**
 * Runs all instances of a folder, or of a `.tar.gz` of one, each for so many seconds of processor time on one core.
 *
 * @param take  only so many instances, spread evenly over the set; null: all
 * @throws RangeError  where the folder has no instance or no reference for one of them
 */
export function runPsplib(
  set: string,
  seconds: number,
  take: number | null,
  say: (line: string) => void,
): PsplibResult {
  const unpacked = set.endsWith('.tar.gz') ? unpack(set) : null;
  try {
    const folder = folderOfInstances(unpacked ?? set);
    const references = readReferences(folder, set);
    const all = readdirSync(folder)
      .filter((name) => name.endsWith('.sm'))
      .sort(byNumbers);
    if (all.length === 0) throw new RangeError(`no .sm files in ${set}`);
    const count = take === null ? all.length : Math.min(take, all.length);
    const names = Array.from({ length: count }, (_, n) => all[Math.floor((n * all.length) / count)]!);
    const sums = { excess: 0, over: 0, proved: 0, above: 0, violations: 0, rate: 0 };
    const wrongProofs: string[] = [];
    names.forEach((name, n) => {
      const reference = references.get(name.replace(/\.sm$/, ''));
      if (reference === undefined) throw new RangeError(`references.csv has no row for ${name}`);
      const { problem, criticalPath } = readPsplib(readFileSync(join(folder, name), 'utf8'));
      const started = process.cpuUsage();
      const search = startSearch(problem, { seed: 1 });
      let progress = search.advance(20);
      while (!progress.finished && spentSince_s(started) < seconds) progress = search.advance(100);
      const spent_s = spentSince_s(started);
      const { plan, worth, verdict } = search.outcome();
      const breaches = violations(plan, problem).length;
      const proved = verdict.kind === 'proved best' && verdict.finishToo;
      sums.excess += (100 * (worth.lastFinish - reference.makespan)) / criticalPath;
      sums.over += (100 * (worth.lastFinish - criticalPath)) / criticalPath;
      sums.violations += breaches;
      sums.rate += progress.iterations / spent_s;
      if (proved) sums.proved++;
      if (worth.lastFinish > reference.makespan) sums.above++;
      if (proved && worth.lastFinish > reference.makespan)
        wrongProofs.push(`${name}: proved ${worth.lastFinish}, reference ${reference.makespan}`);
      if (reference.isOptimum && worth.lastFinish < reference.makespan)
        wrongProofs.push(`${name}: ${worth.lastFinish} is under the optimum ${reference.makespan}`);
      if ((n + 1) % 20 === 0)
        say(`${n + 1} of ${count}: excess ${(sums.excess / (n + 1)).toFixed(3)} %, proved ${sums.proved}`);
    });
    return {
      set: basename(set),
      seconds,
      instances: count,
      excess_pct: sums.excess / count,
      overCriticalPath_pct: sums.over / count,
      proved: sums.proved,
      above: sums.above,
      violations: sums.violations,
      iterationsPerSecond: sums.rate / count,
      wrongProofs,
    };
  } finally {
    if (unpacked !== null) rmSync(unpacked, { recursive: true, force: true });
  }
}

/** The result as a row of the table, and the table's head. */
export const psplibHead = [
  '| set | processor seconds each | instances | excess over reference | over critical path | proved | above reference | violations |',
  '| --- | --- | --- | --- | --- | --- | --- | --- |',
];

export function psplibRow(result: PsplibResult): string {
  const share = ((100 * result.proved) / result.instances).toFixed(1);
  return `| ${result.set} | ${result.seconds} | ${result.instances} | ${result.excess_pct.toFixed(3)} % | ${result.overCriticalPath_pct.toFixed(2)} % | ${result.proved} (${share} %) | ${result.above} | ${result.violations} |`;
}

/** Processor time of this process since then, so that what else the machine does counts for nothing. [s] */
function spentSince_s(started: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(started);
  return (user + system) / 1e6;
}

export function unpack(archive: string): string {
  if (!existsSync(archive)) throw new RangeError(`there is no ${archive}`);
  const folder = mkdtempSync(join(tmpdir(), 'fettle-psplib-'));
  execFileSync('tar', ['xzf', archive, '-C', folder]);
  return folder;
}

/** The folder itself, or the only folder in it that holds `.sm` files. */
export function folderOfInstances(folder: string): string {
  if (!existsSync(folder) || !statSync(folder).isDirectory()) throw new RangeError(`there is no folder ${folder}`);
  const names = readdirSync(folder);
  if (names.some((name) => name.endsWith('.sm'))) return folder;
  const inner = names
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isDirectory() && readdirSync(path).some((name) => name.endsWith('.sm')));
  if (inner.length !== 1) throw new RangeError(`${folder} must hold .sm files, or one folder of them`);
  return inner[0]!;
}

/** `references.csv` in the folder, beside it, or beside the archive. */
export function readReferences(folder: string, set: string): Map<string, Reference> {
  const places = [folder, dirname(folder), dirname(set)].map((place) => join(place, 'references.csv'));
  const path = places.find((place) => existsSync(place));
  if (path === undefined) throw new RangeError(`no references.csv in ${set} or beside it`);
  const [head, ...rows] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const columns = head!.split(',');
  const [name, makespan, optimum] = ['instance', 'reference_makespan', 'is_proven_optimum'].map((column) => {
    const at = columns.indexOf(column);
    if (at < 0) throw new RangeError(`${path} has no column ${column}`);
    return at;
  });
  return new Map(
    rows.map((row) => {
      const cells = row.split(',');
      return [cells[name!]!, { makespan: Number(cells[makespan!]), isOptimum: cells[optimum!] === '1' }];
    }),
  );
}

export function byNumbers(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}
