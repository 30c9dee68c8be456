/**
 * Our search beside a general solver (Chuffed, by MiniZinc) on the same problems, in the same run on the same machine:
 * the plain case on PSPLIB and invented keeper's problems. Each run has a process of its own and is timed by the
 * processor time of the thread that searches, so that what else the machine does counts for neither; the solver's
 * time to compile its model is told apart and not counted.
 *
 * Source of instances and references: as in `psplib.ts`.
 */
import { execFile } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readPsplib } from '#workplan';
import { solverName } from '../checks/workplan/general-solver.ts';
import { assumedWindows } from './keeper-model.ts';
import { keeperSizes } from './keeper-problems.ts';
import type { PeerResult, PeerTask } from './peer-task.ts';
import { searchHints } from './plain-model.ts';
import { byNumbers, folderOfInstances, type Reference, readReferences, unpack } from './psplib.ts';

export interface PeerOptions {
  /** of searching, for each run */
  readonly seconds: number;
  /** instances a set, and seeds a keeper's size; null: 20 and 3 */
  readonly take: number | null;
  /** how many runs at once */
  readonly parallel: number;
  /** of j30, j60, j120, keeper, hints; null: all but hints */
  readonly only: readonly string[] | null;
  /** with j30.tar.gz, j60.tar.gz, j120.tar.gz and references.csv in it */
  readonly folder: string;
}

export interface PeerSection {
  readonly heading: string;
  readonly note: string;
  readonly rows: readonly string[];
  readonly notes: readonly string[];
  /** rules broken and proofs contradicted; must be empty */
  readonly faults: readonly string[];
}

type Say = (line: string) => void;
type Noted = PeerResult['noted'][number];

/** The search that came out best on the four J60 instances below, of those in `searchHints`. */
export const bestHint = 'smallest start, Luby restarts, free';
/** hard ones, none of them among the twenty that are compared */
const hintInstances = ['j609_4', 'j6013_2', 'j6029_2', 'j6045_4'];
const sets = ['j30', 'j60', 'j120'];

/**
 * Runs what was asked for.
 *
 * @throws RangeError where `only` names something else, or an instance is not there
 */
export async function peerSections(options: PeerOptions, say: Say): Promise<PeerSection[]> {
  const asked = options.only ?? [...sets, 'keeper'];
  const known = [...sets, 'keeper', 'hints'];
  for (const one of asked)
    if (!known.includes(one)) throw new RangeError(`--only takes ${known.join(', ')}; got '${one}'`);
  const sections: PeerSection[] = [];
  if (asked.includes('hints')) sections.push(await hintSection(options, say));
  const plain = sets.filter((set) => asked.includes(set));
  if (plain.length > 0) sections.push(await plainSection(plain, options, say));
  if (asked.includes('keeper')) sections.push(await keeperSection(options, say));
  return sections;
}

const notedAt = (seconds: number) =>
  [...new Set([1, 5, 10, seconds])].filter((at) => at <= seconds).sort((a, b) => a - b);

function runNote({ parallel }: PeerOptions, load: number): string {
  const many = parallel === 1 ? 'one run at a time' : `${parallel} runs at a time, each on a core`;
  return `${many}; when it began ${load.toFixed(1)} other processes wanted to run.`;
}

async function plainSection(wanted: readonly string[], options: PeerOptions, say: Say): Promise<PeerSection> {
  const load = loadavg()[0]!;
  const { seconds } = options;
  const marks = notedAt(seconds);
  const hint = searchHints.findIndex(({ name }) => name === bestHint);
  const rows = [
    `| set | instances | who | ${marks.map((at) => `excess at ${at} s`).join(' | ')} | proved | compile, median | better / same / worse than the solver at ${marks.at(-2) ?? seconds} s | at ${seconds} s |`,
    `| ${Array.from({ length: marks.length + 7 }, () => '---').join(' | ')} |`,
  ];
  const faults: string[] = [];
  for (const set of wanted) {
    await withInstances(set, options, options.take ?? 20, async (instances) => {
      const tasks = instances.flatMap(({ file }) =>
        (['ours', 'solver'] as const).map(
          (who): PeerTask => ({ kind: 'plain', who, file, hint, seconds, notedAt_s: marks }),
        ),
      );
      const results = await runAll(tasks, options.parallel, (done) => say(`${set}: ${done} of ${tasks.length} runs`));
      const of = (who: number) => instances.map((_, n) => results[2 * n + who]!);
      const excess = (who: number, mark: number) => {
        const found = of(who).flatMap((result, n) => {
          const noted = result.noted[mark] ?? null;
          const { reference, criticalPath } = instances[n]!;
          return noted === null ? [] : [(100 * (noted.lastFinish - reference.makespan)) / criticalPath];
        });
        const none = instances.length - found.length;
        const mean = found.reduce((sum, one) => sum + one, 0) / Math.max(1, found.length);
        return `${mean.toFixed(3)} %${none > 0 ? ` (none yet: ${none})` : ''}`;
      };
      for (const [who, name] of ['ours', 'solver'].entries()) {
        const proved = of(who).filter((result) => result.proved).length;
        const compared = [marks.length - 2, marks.length - 1].map((mark) =>
          who === 1 || mark < 0 ? '' : tally(of(0), of(1), mark, (a, b) => a.lastFinish - b.lastFinish),
        );
        const compile = who === 1 ? `${median(of(1).map(({ compile_s }) => compile_s)).toFixed(1)} s` : '';
        const excesses = marks.map((_, mark) => excess(who, mark)).join(' | ');
        rows.push(
          `| ${set} | ${instances.length} | ${name} | ${excesses} | ${proved} | ${compile} | ${compared.join(' | ')} |`,
        );
      }
      for (const [n, { name, reference }] of instances.entries())
        for (const [who, whose] of ['ours', 'solver'].entries()) {
          const { noted, proved, violations } = results[2 * n + who]!;
          const finish = noted.at(-1)?.lastFinish ?? Number.POSITIVE_INFINITY;
          if (violations > 0) faults.push(`${name}, ${whose}: ${violations} rules broken`);
          if (proved && finish > reference.makespan)
            faults.push(`${name}, ${whose}: ${finish} said to be proved, reference ${reference.makespan}`);
          if (reference.isOptimum && finish < reference.makespan)
            faults.push(`${name}, ${whose}: ${finish} is under the optimum`);
        }
    });
  }
  return {
    heading: `Beside a general solver: PSPLIB, ${seconds} s`,
    note: runNote(options, load),
    rows,
    notes: [
      `Excess: mean of (finish − reference) / critical path. Solver: ${solverName}, one cumulative a resource, search '${bestHint}'. By processor time; the solver's compiling not counted.`,
      ...faults.map((fault) => `Wrong: ${fault}.`),
    ],
    faults,
  };
}

async function keeperSection(options: PeerOptions, say: Say): Promise<PeerSection> {
  const load = loadavg()[0]!;
  const { seconds } = options;
  const marks = notedAt(seconds);
  const compared = marks.slice(-2);
  const seeds = Array.from({ length: options.take ?? 3 }, (_, n) => n + 1);
  const problems = keeperSizes.flatMap((size, at) => seeds.map((seed) => ({ size, at, seed })));
  const tasks = problems.flatMap(({ at, seed }) =>
    (['ours', 'solver'] as const).map(
      (who): PeerTask => ({ kind: 'keeper', who, size: at, seed, seconds, notedAt_s: marks }),
    ),
  );
  const results = await runAll(tasks, options.parallel, (done) => say(`keeper: ${done} of ${tasks.length} runs`));
  const worth = (noted: Noted) =>
    noted === null ? 'no plan yet' : `${noted.weight.toFixed(1)}, ${noted.missed.toFixed(1)}, ${noted.setUp_min}`;
  const rows = [
    `| jobs / steps | seed | who | ${compared.map((at) => `weight, missed, set-up min at ${at} s`).join(' | ')} | ours is, at ${compared.join(' and ')} s | proved | compile | memory |`,
    `| ${Array.from({ length: compared.length + 7 }, () => '---').join(' | ')} |`,
  ];
  const faults: string[] = [];
  for (const [n, { size, seed }] of problems.entries())
    for (const [who, name] of ['ours', 'solver'].entries()) {
      const result = results[2 * n + who]!;
      const at = (mark: number) => result.noted[marks.indexOf(mark)] ?? null;
      const other = results[2 * n + 1]!;
      const standing = compared.map((mark) => aheadOf(at(mark), other.noted[marks.indexOf(mark)] ?? null)).join(', ');
      if (result.violations > 0)
        faults.push(`${size.jobs}/${size.steps}, seed ${seed}, ${name}: ${result.violations} rules broken`);
      const told = compared.map((mark) => worth(at(mark))).join(' | ');
      const compile = who === 0 ? '' : result.because === null ? `${result.compile_s.toFixed(1)} s` : result.because;
      rows.push(
        `| ${size.jobs} / ${size.steps} | ${seed} | ${name} | ${told} | ${who === 0 ? standing : ''} | ${result.proved ? `yes, after ${result.search_s.toFixed(1)} s` : 'no'} | ${compile} | ${result.memory_MB.toFixed(0)} MB |`,
      );
    }
  const { cover, mast, board } = assumedWindows;
  return {
    heading: `Beside a general solver: keeper's problems, ${seconds} s`,
    note: runNote(options, load),
    rows,
    notes: [
      `Solver: ${solverName}, free search after jobs by weight and soonest starts. Its model (bench/keeper-model.ts) states every rule in these problems, but goes by five minutes, allows at most ${cover} openings of the cover, ${mast} raising of the mast and ${board} changes of the board a day, keeps the cover shut between the first and last rain of a wait, and counts a needed job tenfold; so 'proved' is for that model. Its plans are written back and judged by the same rules as ours.`,
      ...faults.map((fault) => `Wrong: ${fault}.`),
    ],
    faults,
  };
}

/** Each way of searching that was tried for the solver, on a few hard instances of J60. */
async function hintSection(options: PeerOptions, say: Say): Promise<PeerSection> {
  const load = loadavg()[0]!;
  const { seconds } = options;
  const marks = notedAt(seconds);
  const rows: string[] = [];
  await withInstances('j60', options, null, async (all) => {
    const instances = all.filter(({ name }) => hintInstances.includes(name));
    const tasks = searchHints.flatMap((_, hint) =>
      instances.map(({ file }): PeerTask => ({ kind: 'plain', who: 'solver', file, hint, seconds, notedAt_s: marks })),
    );
    const results = await runAll(tasks, options.parallel, (done) => say(`hints: ${done} of ${tasks.length} runs`));
    const heads = instances.flatMap(({ name, reference }) => `${name} (reference ${reference.makespan})`);
    rows.push(`| search | ${heads.join(' | ')} |`, `| ${['', ...heads].map(() => '---').join(' | ')} |`);
    for (const [hint, { name }] of searchHints.entries()) {
      const own = results.slice(hint * instances.length, (hint + 1) * instances.length);
      rows.push(`| ${name} | ${own.map(({ noted }) => noted.at(-1)?.lastFinish ?? 'none').join(' | ')} |`);
    }
  });
  return {
    heading: `Which search suits the general solver, ${seconds} s`,
    note: runNote(options, load),
    rows,
    notes: [
      "Finish after that much processor time. The energetic filtering is the solver's own time-table edge-finding.",
    ],
    faults: [],
  };
}

interface Instance {
  readonly name: string;
  readonly file: string;
  readonly reference: Reference;
  readonly criticalPath: number;
}

async function withInstances(
  set: string,
  { folder }: PeerOptions,
  take: number | null,
  use: (instances: readonly Instance[]) => Promise<void>,
): Promise<void> {
  const archive = join(folder, `${set}.tar.gz`);
  if (!existsSync(archive)) throw new RangeError(`there is no ${set}.tar.gz in ${folder}; name its folder with --set`);
  const unpacked = unpack(archive);
  try {
    const inner = folderOfInstances(unpacked);
    const references = readReferences(inner, archive);
    const all = readdirSync(inner)
      .filter((name) => name.endsWith('.sm'))
      .sort(byNumbers);
    const count = Math.min(take ?? all.length, all.length);
    const names = Array.from({ length: count }, (_, n) => all[Math.floor((n * all.length) / count)]!);
    await use(
      names.map((file) => {
        const name = file.replace(/\.sm$/, '');
        const reference = references.get(name);
        if (reference === undefined) throw new RangeError(`references.csv has no row for ${name}`);
        const path = join(inner, file);
        return { name, file: path, reference, criticalPath: readPsplib(readFileSync(path, 'utf8')).criticalPath };
      }),
    );
  } finally {
    rmSync(unpacked, { recursive: true, force: true });
  }
}

/** How often the first is better, the same, worse; no answer is worse than any. */
function tally(
  ours: readonly PeerResult[],
  others: readonly PeerResult[],
  mark: number,
  compare: (a: NonNullable<Noted>, b: NonNullable<Noted>) => number,
): string {
  const counts = [0, 0, 0];
  for (const [n, one] of ours.entries()) {
    const [a, b] = [one.noted[mark] ?? null, others[n]!.noted[mark] ?? null];
    const order = a === null ? (b === null ? 0 : 1) : b === null ? -1 : compare(a, b);
    counts[Math.sign(order) + 1]!++;
  }
  return counts.join(' / ');
}

/** By what counts first: missed, weight, set-up minutes. */
function aheadOf(a: Noted, b: Noted): string {
  if (a === null) return b === null ? 'level' : 'behind';
  if (b === null) return 'ahead';
  // weights are tenths: sums of them differ in the last digits only
  const order = [b.missed - a.missed, a.weight - b.weight, b.setUp_min - a.setUp_min].find((by) => Math.abs(by) > 1e-6);
  return order === undefined ? 'level' : order > 0 ? 'ahead' : 'behind';
}

function median(of: readonly number[]): number {
  const sorted = [...of].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** Runs every task in a process of its own, so many at once; the results in the tasks' order. */
async function runAll(
  tasks: readonly PeerTask[],
  parallel: number,
  say: (done: number) => void,
): Promise<PeerResult[]> {
  const results: PeerResult[] = [];
  let next = 0;
  let done = 0;
  const lane = async () => {
    while (next < tasks.length) {
      const at = next++;
      results[at] = await runOne(tasks[at]!);
      if (++done % 10 === 0 || done === tasks.length) say(done);
    }
  };
  await Promise.all(Array.from({ length: parallel }, lane));
  return results;
}

function runOne(task: PeerTask): Promise<PeerResult> {
  const script = fileURLToPath(new URL('peer-run.ts', import.meta.url));
  return new Promise((resolve, reject) => {
    execFile(
      process.execPath,
      ['--max-old-space-size=4096', '--import', 'tsx', script, JSON.stringify(task)],
      { maxBuffer: 2 ** 26, cwd: fileURLToPath(new URL('..', import.meta.url)) },
      (error, out) => {
        if (error === null) resolve(JSON.parse(out) as PeerResult);
        else reject(new Error(`${JSON.stringify(task)}: ${error.message}`));
      },
    );
  });
}
